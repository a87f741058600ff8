import type { Point } from '../shape/types.ts';
import { type LengthUnit, MM_PER_INCH } from '../units.ts';
import { type CrownFit, fitRadius } from './radius.ts';

/** Radius gauges that a bench commonly has [practice], mm: in inches, and in round millimetres. */
export const gaugeRadii: readonly (number | 'flat')[] = [
  'flat',
  ...[7.25, 9.5, 10, 12, 14, 15, 16, 20].map((inches) => inches * MM_PER_INCH),
  ...[200, 250, 300, 350, 400, 450, 500],
];

/** Every gauge laid over the heights, in the order of `gaugeRadii`; a gauge too tight to span them is left out. */
export const layGauges = (points: readonly Point[]): readonly CrownFit[] => {
  const reach = Math.max(...points.map((p) => Math.abs(p.x)));
  return gaugeRadii.filter((radius) => radius === 'flat' || radius > reach).map((radius) => fitRadius(points, radius));
};

/** The gauge whose largest miss is least. */
export const nearestGauge = (fits: readonly CrownFit[]): CrownFit | undefined =>
  fits.reduce<CrownFit | undefined>(
    (best, fit) => (best === undefined || fit.worst < best.worst ? fit : best),
    undefined,
  );

/** The unit in which a gauge is marked: inches where it is of quarters of an inch, else mm. */
export const markedIn = (radius: number): 'mm' | 'in' => {
  const quarters = (radius / MM_PER_INCH) * 4;
  return Math.abs(quarters - Math.round(quarters)) < 1e-9 ? 'in' : 'mm';
};

/** Whether a gauge is one of those marked in this unit; a straightedge is in any. */
export const isMarkedIn = (radius: number | 'flat', unit: LengthUnit): boolean =>
  radius === 'flat' || markedIn(radius) === (unit === 'mm' ? 'mm' : 'in');

const bend = (radius: number | 'flat'): number => (radius === 'flat' ? 0 : 1 / radius);

/**
 * Gauges whose radii span one: those marked in the unit that lie nearest to it, as many tighter as flatter as far as there are any, `count` in all; tightest first. The radius itself is not among them, nor are those that there are `already`. Nearness goes by
 * how much they bend (1/R), as that is what is seen.
 */
export const gaugesAbout = (
  radius: number | 'flat',
  unit: LengthUnit,
  count: number,
  already: readonly (number | 'flat')[] = [],
): readonly (number | 'flat')[] => {
  const isThere = (one: number | 'flat') =>
    [radius, ...already].some((other) => Math.abs(bend(one) - bend(other)) <= 1e-9);
  const others = gaugeRadii
    .filter((one) => isMarkedIn(one, unit) && !isThere(one))
    .toSorted((a, b) => bend(b) - bend(a));
  const tighter = others.filter((one) => bend(one) > bend(radius));
  const flatter = others.filter((one) => bend(one) < bend(radius));
  const below = Math.min(flatter.length, Math.max(Math.floor(count / 2), count - tighter.length));
  const above = Math.min(tighter.length, count - below);
  return [...tighter.slice(tighter.length - above), ...flatter.slice(0, below)];
};
