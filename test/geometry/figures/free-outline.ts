// A free outline from its points, written anew: the pyramid of straight lines that Barry & Goldman (1988) gave for a Catmull–Rom curve, on knots as far apart as the root of the points' distance (Yuksel, Schaefer & Keyser 2011).
import { simpson, sum, type Values, whereLeast } from './values.ts';

type Point = readonly [across: number, along: number];
interface Turning {
  readonly at: Point;
  readonly isCorner: boolean;
}

/** A stretch of the outline by a parameter from 0 to 1. */
type Stretch = (t: number) => Point;

const apart = (a: Point, b: Point): number => Math.hypot(b[0] - a[0], b[1] - a[1]);

/** Neighbours on one spot as one point, a corner if either is. */
const merged = (turnings: readonly Turning[]): readonly Turning[] => {
  const double = turnings.findIndex((one, k) => apart(one.at, (turnings.at(k - 1) ?? one).at) < 1e-6);
  if (double < 0) return turnings;
  const before = (double + turnings.length - 1) % turnings.length;
  const isCorner = [double, before].some((k) => turnings[k]?.isCorner);
  return merged(turnings.map((one, k) => (k === before ? { ...one, isCorner } : one)).filter((_, k) => k !== double));
};

/** Between b and c, on the way from a to d; an end that is doubled has its two knots together, and its line is that one point. */
const between = (a: Point, b: Point, c: Point, d: Point): Stretch => {
  const t0 = -Math.sqrt(apart(a, b));
  const t2 = Math.sqrt(apart(b, c));
  const t3 = t2 + Math.sqrt(apart(c, d));
  const mix = (p: Point, q: Point, from: number, to: number, t: number): Point => {
    const share = to === from ? 0 : (t - from) / (to - from);
    return [p[0] + (q[0] - p[0]) * share, p[1] + (q[1] - p[1]) * share];
  };
  return (part) => {
    const t = part * t2;
    const [ab, bc, cd] = [mix(a, b, t0, 0, t), mix(b, c, 0, t2, t), mix(c, d, t2, t3, t)];
    return mix(mix(ab, bc, t0, t2, t), mix(bc, cd, 0, t3, t), 0, t2, t);
  };
};

/** Every stretch of the outline, from point to point. */
const stretches = (v: Values): readonly Stretch[] => {
  const along = v.all('s');
  const corners = v.all('c');
  const turnings = merged(
    v.all('a').map((x, k): Turning => ({ at: [x, along[k] ?? Number.NaN], isCorner: corners[k] === 1 })),
  );
  const n = turnings.length;
  const one = (k: number) => turnings[(k + n) % n] as Turning;
  return turnings.map((b, k) => {
    const c = one(k + 1);
    return between((b.isCorner ? b : one(k - 1)).at, b.at, c.at, (c.isCorner ? c : one(k + 2)).at);
  });
};

/** How fast a cubic runs along, by five points: exact up to the fourth power. */
const alongSpeed = (stretch: Stretch, t: number): number => {
  const h = 0.1;
  const step = (far: number) => stretch(t + far)[1] - stretch(t - far)[1];
  return (8 * step(h) - step(2 * h)) / (12 * h);
};

/** The least of a measure of the outline's places: the least of many, then sought about it. */
const leastOf = (outline: readonly Stretch[], measure: (place: Point) => number): number => {
  const n = 100;
  const leasts = outline.map((stretch) => {
    const at = (t: number) => measure(stretch(t));
    const places = Array.from({ length: n + 1 }, (_, i) => i / n);
    const best = places.reduce((one, t) => (at(t) < at(one) ? t : one));
    return Math.min(at(best), at(whereLeast(at, [Math.max(0, best - 1 / n), Math.min(1, best + 1 / n)])));
  });
  return Math.min(...leasts);
};

/** How far along the outline begins. */
const foremost = (outline: readonly Stretch[]): number => leastOf(outline, ([, along]) => along);

/** Twice the farthest that the outline lies from the centre line. */
export const lengthOf = (v: Values): number => -2 * leastOf(stretches(v), ([across]) => -Math.abs(across));

/** From the outline's foremost place to its rearmost. */
export const depthOf = (v: Values): number => -leastOf(stretches(v), ([, along]) => -along) - foremost(stretches(v));

/** ∮x·f(y) dy round the outline, y from its foremost place, the way that makes its area positive. */
export const round = (v: Values, f: (y: number) => number): number => {
  const outline = stretches(v);
  const least = foremost(outline);
  const integral = (g: (y: number) => number) =>
    sum(
      outline.map((stretch) =>
        simpson(
          (t) => {
            const [x, y] = stretch(t);
            return x * g(y - least) * alongSpeed(stretch, t);
          },
          0,
          1,
          400,
        ),
      ),
    );
  return integral(f) * Math.sign(integral(() => 1));
};
