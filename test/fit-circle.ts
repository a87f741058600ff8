import type { Cubic, Point } from '../geometry/shape/types.ts';

/** The point of a cubic at t, from Bernstein's polynomials. */
export const pointAt = ({ from, c1, c2, to }: Cubic, t: number): Point => {
  const mix = (key: 'x' | 'y') =>
    from[key] * (1 - t) ** 3 + 3 * c1[key] * t * (1 - t) ** 2 + 3 * c2[key] * t * t * (1 - t) + to[key] * t ** 3;
  return { x: mix('x'), y: mix('y') };
};

/** Centre and radius by least squares on x² + y² = 2ax + 2by + c (Kåsa 1976), about the points' mean. */
export const fitCircle = (points: readonly Point[]) => {
  const n = points.length;
  const mx = points.reduce((sum, p) => sum + p.x, 0) / n;
  const my = points.reduce((sum, p) => sum + p.y, 0) / n;
  const sum = (f: (u: number, v: number) => number) => points.reduce((s, p) => s + f(p.x - mx, p.y - my), 0);
  const uu = sum((u) => u * u);
  const vv = sum((_, v) => v * v);
  const uv = sum((u, v) => u * v);
  const pu = sum((u, v) => u * (u * u + v * v)) / 2;
  const pv = sum((u, v) => v * (u * u + v * v)) / 2;
  const determinant = uu * vv - uv * uv;
  const a = (pu * vv - pv * uv) / determinant;
  const b = (uu * pv - uv * pu) / determinant;
  return { x: a + mx, y: b + my, radius: Math.sqrt(a * a + b * b + (uu + vv) / n) };
};
