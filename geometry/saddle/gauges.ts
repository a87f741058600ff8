import type { Point } from '../shape/types.ts';
import { MM_PER_INCH } from '../units.ts';
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
