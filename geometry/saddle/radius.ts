import { drop } from '../shape/sagitta.ts';
import type { Point } from '../shape/types.ts';

/** A crown line `z = c + t·y − drop(R, y)` laid over the wanted heights, mm; `misses` are crown less wanted, point by point. */
export interface CrownFit {
  readonly radius: number | 'flat';
  readonly c: number;
  readonly t: number;
  readonly misses: readonly number[];
  /** The largest miss, either way. */
  readonly worst: number;
}

/** Height of a fitted crown line at y, mm. */
export const crownHeight = (fit: Pick<CrownFit, 'radius' | 'c' | 't'>, y: number): number =>
  fit.c + fit.t * y - drop(fit.radius, y);

const withMisses = (points: readonly Point[], radius: number | 'flat', c: number, t: number): CrownFit => {
  const line = { radius, c, t };
  const misses = points.map((p) => crownHeight(line, p.x) - p.y);
  const worst = misses.reduce((most, miss) => Math.max(most, Math.abs(miss)), 0);
  return { radius, c, t, misses, worst };
};

/**
 * A crown of a given radius laid over the heights (x across, y the height, mm) so that the squares of the vertical misses are least: only its
 * height and tilt are free, as when a radius gauge is rocked over the strings. Throws a RangeError when a point lies farther out than the radius.
 */
export const fitRadius = (points: readonly Point[], radius: number | 'flat'): CrownFit => {
  const n = points.length;
  let [meanX, meanY] = [0, 0];
  for (const { x, y } of points) {
    meanX += x / n;
    meanY += (y + drop(radius, x)) / n;
  }
  let [sxx, sxy] = [0, 0];
  for (const { x, y } of points) {
    sxx += (x - meanX) ** 2;
    sxy += (x - meanX) * (y + drop(radius, x) - meanY);
  }
  const t = sxx === 0 ? 0 : sxy / sxx;
  return withMisses(points, radius, meanY - t * meanX, t);
};

/** A crown that turns by less than this angle (radians) from its middle to the outermost string is flat: 28 mm out it would drop under 5 µm, less than anyone can file. An angle, so that larger and smaller instruments are judged alike. */
export const straightTurn = 3.6e-4;

/**
 * The best circle through the heights, vertical least squares in height, tilt and radius: `z = c + t·y − drop(R, y)`. `flat` when the heights lie on a straight
 * line (it turns by less than `straightTurn`) or on a hollow curve. The curvature is found by Gauss–Newton steps from the best parabola's; with curvature κ, ∂drop/∂κ = y²/(s(1 + s)), s = √(1 − κ²y²).
 */
export const bestRadius = (points: readonly Point[]): CrownFit => {
  const reach = Math.max(...points.map((p) => Math.abs(p.x)));
  const limit = 0.999 / reach;
  let curvature = 0;
  for (let step = 0; step < 60; step += 1) {
    const radius = curvature === 0 ? 'flat' : 1 / curvature;
    const bend = points.map((p) => {
      const s = Math.sqrt(1 - (curvature * p.x) ** 2);
      return p.x ** 2 / (s * (1 + s));
    });
    // With height and tilt eliminated (Frisch–Waugh), what is left is a regression of the misses on the bend's own misses.
    const left = fitRadius(points, radius).misses;
    const direction = fitRadius(
      points.map((p, k) => ({ x: p.x, y: bend[k] ?? 0 })),
      'flat',
    ).misses;
    const square = direction.reduce((sum, d) => sum + d * d, 0);
    if (square === 0) break;
    const change = -left.reduce((sum, miss, k) => sum + miss * (direction[k] ?? 0), 0) / square;
    const next = Math.min(limit, Math.max(0, curvature + change));
    const done = Math.abs(next - curvature) <= 1e-15 + 1e-13 * curvature;
    curvature = next;
    if (done) break;
  }
  return fitRadius(points, curvature * reach < straightTurn ? 'flat' : 1 / curvature);
};
