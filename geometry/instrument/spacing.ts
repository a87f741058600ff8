import type { Job } from '../job.ts';

/**
 * Places of the strings across, mm, bass first, the two outer ones at ∓spread/2. `centres`: equal from centre to centre.
 * `gaps`: equal clear gaps, `g = (S − Σ(d_k + d_{k+1})/2)/(n − 1)`, the strings' own diameters taken out.
 */
export const placesAcross = (
  spread: number,
  gauges: readonly number[],
  spacing: Job['strings']['spacing'],
): readonly number[] => {
  const last = gauges.length - 1;
  const halves = gauges.slice(1).map((gauge, k) => (spacing === 'gaps' ? (gauge + (gauges[k] ?? 0)) / 2 : 0));
  const gap = (spread - halves.reduce((sum, half) => sum + half, 0)) / last;
  const places = [-spread / 2];
  for (const half of halves) places.push((places.at(-1) ?? 0) + gap + half);
  places[last] = spread / 2;
  return places;
};

/** The smallest clear gap between neighbours at these places, mm; negative when two strings would touch. */
export const smallestGap = (places: readonly number[], gauges: readonly number[]): number =>
  Math.min(...places.slice(1).map((y, k) => y - (places[k] ?? 0) - ((gauges[k] ?? 0) + (gauges[k + 1] ?? 0)) / 2));
