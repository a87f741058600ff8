import type { Job } from '../job.ts';

type Spacing = 'centres' | 'gaps';

const sum = (values: readonly number[]) => values.reduce((total, value) => total + value, 0);

/** Half of two neighbours' diameters together: what they take of the way from centre to centre. */
const halves = (gauges: readonly number[]): readonly number[] =>
  gauges.slice(1).map((gauge, k) => (gauge + (gauges[k] ?? 0)) / 2);

/**
 * Places of single strings across, mm, bass first, the two outer ones at ∓spread/2. `centres`: equal from centre to centre.
 * `gaps`: equal clear gaps, `g = (S − Σ(d_k + d_{k+1})/2)/(n − 1)`, the strings' own diameters taken out.
 */
export const placesAcross = (spread: number, gauges: readonly number[], spacing: Spacing): readonly number[] => {
  const last = gauges.length - 1;
  const taken = halves(gauges).map((half) => (spacing === 'gaps' ? half : 0));
  const gap = (spread - sum(taken)) / last;
  const places = [-spread / 2];
  for (const half of taken) places.push((places.at(-1) ?? 0) + gap + half);
  places[last] = spread / 2;
  return places;
};

/**
 * Places of strings in pairs across, mm, bass first, the two outer strings at ∓spread/2 and those of each pair `within` apart. `centres`: the courses' middles equally spaced. `gaps`: equal clear gaps
 * from course to course, the pairs' own widths taken out: `g = (S − m·p − Σ(d_2j + d_{2j+1})/2)/(m − 1)` for m courses, p within each.
 */
export const pairsAcross = (
  spread: number,
  gauges: readonly number[],
  spacing: Spacing,
  within: number,
): readonly number[] => {
  const courses = gauges.length / 2;
  // Of the ways from string to string every second one lies between two courses.
  const taken = halves(gauges)
    .filter((_, k) => k % 2 === 1)
    .map((half) => (spacing === 'gaps' ? half : 0));
  const gap = (spread - courses * within - sum(taken)) / (courses - 1);
  const places = [-spread / 2, -spread / 2 + within];
  for (const half of taken) {
    const next = (places.at(-1) ?? 0) + gap + half;
    places.push(next, next + within);
  }
  places[gauges.length - 1] = spread / 2;
  return places;
};

/** Where all strings lie across, mm, bass first. */
export interface Places {
  readonly nut: readonly number[];
  readonly saddle: readonly number[];
}

/** The strings' places at the nut and over the saddle, mm: as typed, or spread evenly; the pairs' own spacing at the nut is in the proportion of the two spreads. An odd number in pairs, which `solve` refuses, stands singly. */
export const stringPlaces = ({
  guitar: { nutSpread },
  strings,
}: {
  readonly guitar: Pick<Job['guitar'], 'nutSpread'>;
  readonly strings: Job['strings'];
}): Places => {
  const { spacing, courses, spread, pairGap, list } = strings;
  if (spacing === 'typed')
    return { nut: list.map(({ nutPlace }) => nutPlace), saddle: list.map(({ saddlePlace }) => saddlePlace) };
  const gauges = list.map(({ gauge }) => gauge);
  const over = (wide: number) =>
    courses === 'pairs' && list.length % 2 === 0
      ? pairsAcross(wide, gauges, spacing, (pairGap * wide) / spread)
      : placesAcross(wide, gauges, spacing);
  return { nut: over(nutSpread), saddle: over(spread) };
};

/** A job's strings with the places that they have now as places that are typed, mm: nothing moves, and each can then be moved by itself. */
export const withTypedPlaces = <J extends Pick<Job, 'guitar' | 'strings'>>(job: J): J => {
  const { nut, saddle } = stringPlaces(job);
  const list = job.strings.list.map((string, k) => ({
    ...string,
    nutPlace: nut[k] ?? string.nutPlace,
    saddlePlace: saddle[k] ?? string.saddlePlace,
  }));
  return { ...job, strings: { ...job.strings, spacing: 'typed', list } };
};

/** From the first place to the last, mm. */
export const spreadOf = (places: readonly number[]): number => (places.at(-1) ?? 0) - (places[0] ?? 0);

/** The clear gap from each string to the next at these places, mm; negative where two would touch. */
export const clearGaps = (places: readonly number[], gauges: readonly number[]): readonly number[] =>
  halves(gauges).map((half, k) => (places[k + 1] ?? 0) - (places[k] ?? 0) - half);

/** The smallest clear gap between neighbours at these places, mm; negative when two strings would touch. */
export const smallestGap = (places: readonly number[], gauges: readonly number[]): number =>
  Math.min(...clearGaps(places, gauges));
