import { bernsteinDerivative, bernsteinRoots } from './bernstein.ts';
import { lerp } from './point.ts';
import type { Cubic, Point } from './types.ts';

/** A cubic's four x and its four y: Bernstein coefficients. */
export const coordinates = (c: Cubic): { readonly x: readonly number[]; readonly y: readonly number[] } => {
  const p = [c.from, c.c1, c.c2, c.to];
  return { x: p.map((q) => q.x), y: p.map((q) => q.y) };
};

/** The cubic's two halves, left and right of t. [de Casteljau] */
export const splitCubic = (c: Cubic, t: number): readonly [Cubic, Cubic] => {
  const a = lerp(c.from, c.c1, t);
  const b = lerp(c.c1, c.c2, t);
  const d = lerp(c.c2, c.to, t);
  const ab = lerp(a, b, t);
  const bd = lerp(b, d, t);
  const at = lerp(ab, bd, t);
  return [
    { kind: 'cubic', from: c.from, c1: a, c2: ab, to: at },
    { kind: 'cubic', from: at, c1: bd, c2: d, to: c.to },
  ];
};

/** The part of a cubic from t0 to t1, 0 ≤ t0 < t1 ≤ 1. */
export const cubicPart = (c: Cubic, t0: number, t1: number): Cubic => {
  const head = t1 < 1 ? splitCubic(c, t1)[0] : c;
  return t0 > 0 ? splitCubic(head, t0 / t1)[1] : head;
};

export const cubicAt = (c: Cubic, t: number): Point => {
  const s = 1 - t;
  const w0 = s * s * s;
  const w1 = 3 * s * s * t;
  const w2 = 3 * s * t * t;
  const w3 = t * t * t;
  return {
    x: w0 * c.from.x + w1 * c.c1.x + w2 * c.c2.x + w3 * c.to.x,
    y: w0 * c.from.y + w1 * c.c1.y + w2 * c.c2.y + w3 * c.to.y,
  };
};

/** dP/dt, mm. */
export const cubicSpeed = (c: Cubic, t: number): Point => {
  const s = 1 - t;
  const w0 = 3 * s * s;
  const w1 = 6 * s * t;
  const w2 = 3 * t * t;
  return {
    x: w0 * (c.c1.x - c.from.x) + w1 * (c.c2.x - c.c1.x) + w2 * (c.to.x - c.c2.x),
    y: w0 * (c.c1.y - c.from.y) + w1 * (c.c2.y - c.c1.y) + w2 * (c.to.y - c.c2.y),
  };
};

/** d²P/dt², mm. */
export const cubicAcceleration = (c: Cubic, t: number): Point => ({
  x: 6 * ((1 - t) * (c.from.x - 2 * c.c1.x + c.c2.x) + t * (c.c1.x - 2 * c.c2.x + c.to.x)),
  y: 6 * ((1 - t) * (c.from.y - 2 * c.c1.y + c.c2.y) + t * (c.c1.y - 2 * c.c2.y + c.to.y)),
});

/** Where inside (0, 1) the cubic stands still along x, and along y. */
export const cubicTurns = (c: Cubic): { readonly x: readonly number[]; readonly y: readonly number[] } => {
  const { x, y } = coordinates(c);
  const turns = (b: readonly number[]) => bernsteinRoots(bernsteinDerivative(b)).filter((t) => t > 0 && t < 1);
  return { x: turns(x), y: turns(y) };
};

/** The cubic cut where it turns along x or y: each part runs one way in both, so it cannot cross itself. */
export const monotoneParts = (c: Cubic): readonly Cubic[] => {
  const turns = cubicTurns(c);
  const cuts = [0, ...[...turns.x, ...turns.y].sort((p, q) => p - q), 1];
  return cuts.slice(1).flatMap((to, i) => {
    const from = cuts[i] as number;
    return to - from > 1e-9 ? [cubicPart(c, from, to)] : [];
  });
};
