import { rad, sum, type Values } from './values.ts';

/** ∫f over a stretch, by Simpson's rule on a fine division. */
const simpson = (f: (t: number) => number, from: number, to: number): number => {
  const n = 2000;
  const h = (to - from) / n;
  return (
    (h / 3) * sum(Array.from({ length: n + 1 }, (_, i) => (i === 0 || i === n ? 1 : i % 2 ? 4 : 2) * f(from + i * h)))
  );
};

/** ∫g(depth) across a belly bridge’s footprint, where depth is how far back from the straight front edge it reaches. */
const across = (v: Values, g: (depth: number) => number): number => {
  const [a, b] = [v.n('w') / 2, v.n('d') - v.n('d_t')];
  const radius = (a ** 2 + b ** 2) / (4 * b);
  const turn = Math.asin(a / 2 / radius);
  // Of each half of the belly the inner part is round, the outer hollow; both by the angle from the arc's level end.
  const part = (depth: (fall: number) => number) =>
    simpson((t) => g(depth(radius * (1 - Math.cos(t)))) * radius * Math.cos(t), 0, turn);
  const round = part((fall) => v.n('d') - fall);
  const hollow = part((fall) => v.n('d_t') + fall);
  return (v.n('l') - 2 * a) * g(v.n('d_t')) + 2 * (round + hollow);
};

export const areaByParts = (v: Values): number => (v.has('w') ? across(v, (depth) => depth) : v.n('l') * v.n('d'));

export const centreOf = (v: Values): number =>
  v.n('x_f') + (v.has('w') ? across(v, (depth) => depth ** 2 / 2) / v.n('A') : v.n('d') / 2);

export const secondMomentOf = (v: Values): number => {
  if (!v.has('w')) return (v.n('l') * v.n('d') ** 3) / 12;
  const c = v.n('x_c') - v.n('x_f');
  return across(v, (depth) => ((depth - c) ** 3 + c ** 3) / 3);
};

export const share = (v: Values): number =>
  v.n('T') * Math.cos(rad(v.n('θ'))) * (v.n('z_s') - v.n('z_t')) -
  v.n('T') * Math.sin(rad(v.n('θ'))) * (v.n('x_s') - v.n('x_c')) -
  (v.has('x_e') ? v.n('T') * (v.n('x_e') - v.n('x_c')) : 0);

export const down = (v: Values, hasPins: boolean): number =>
  sum(v.all('T').map((T, k) => T * (Math.sin(rad(v.all('θ')[k] ?? 0)) + (hasPins ? 1 : 0))));

export const momentOf = (v: Values): number =>
  sum(
    v.all('T').map((T, k) => {
      const of = (symbol: string) => v.all(symbol)[k] ?? Number.NaN;
      const crown = Math.cos(rad(of('θ'))) * (of('z') - v.n('z_t')) - Math.sin(rad(of('θ'))) * (of('s') - v.n('x_c'));
      return T * (crown - (v.has('e_1') ? of('e') - v.n('x_c') : 0));
    }),
  );

export const shearOf = (v: Values): number =>
  sum(v.all('T').map((T, k) => T * Math.cos(rad(v.all('θ')[k] ?? 0)))) / v.n('A');
