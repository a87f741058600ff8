import type { Point } from '../geometry/shape/types.ts';

/** Knots a centripetal step on: the square root of the chord. */
const step = (a: Point, b: Point): number => Math.sqrt(Math.hypot(b.x - a.x, b.y - a.y));

/**
 * The centripetal Catmull–Rom curve from p1 to p2 at u from 0 to 1, by the pyramid of Barry & Goldman, "A recursive evaluation algorithm for a class of Catmull–Rom splines",
 * SIGGRAPH 1988; its knots as in Yuksel, Schaefer & Keyser, "Parameterization and applications of Catmull–Rom curves", Computer-Aided Design 43 (2011) 747.
 */
export const centripetal = (p0: Point, p1: Point, p2: Point, p3: Point, u: number): Point => {
  const t0 = 0;
  const t1 = t0 + step(p0, p1);
  const t2 = t1 + step(p1, p2);
  const t3 = t2 + step(p2, p3);
  const t = t1 + u * (t2 - t1);
  const between = (a: Point, b: Point, from: number, to: number): Point => {
    const part = (t - from) / (to - from);
    return { x: a.x + (b.x - a.x) * part, y: a.y + (b.y - a.y) * part };
  };
  const [a1, a2, a3] = [between(p0, p1, t0, t1), between(p1, p2, t1, t2), between(p2, p3, t2, t3)];
  return between(between(a1, a2, t0, t2), between(a2, a3, t1, t3), t1, t2);
};
