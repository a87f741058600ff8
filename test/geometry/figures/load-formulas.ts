import { round } from './free-outline.ts';
import { rad, simpson, sum, type Values } from './values.ts';

/**
 * ∫g(depth) across a footprint between two depths that two S of equal arcs join: `outer` beyond a width of 2·a, `inner` in the middle. On a waisted bridge both edges swing, so that the depth changes by twice what either does.
 */
const swinging = (
  { length, a, outer, inner, edges }: Readonly<Record<'length' | 'a' | 'outer' | 'inner' | 'edges', number>>,
  g: (depth: number) => number,
): number => {
  const b = Math.abs(inner - outer) / edges;
  const radius = (a ** 2 + b ** 2) / (4 * b);
  const turn = Math.asin(a / 2 / radius);
  const towards = Math.sign(outer - inner) * edges;
  // Of each half the inner part leaves the middle level, the outer the straight end; both by the angle from the arc's level end.
  const part = (depth: (fall: number) => number) =>
    simpson((t) => g(depth(radius * (1 - Math.cos(t)))) * radius * Math.cos(t), 0, turn);
  const middle = part((fall) => inner + towards * fall);
  const ends = part((fall) => outer - towards * fall);
  return (length - 2 * a) * g(outer) + 2 * (middle + ends);
};

/** ∫g(depth) across the footprint, however it is deep. */
const across = (v: Values, g: (depth: number) => number): number => {
  const length = v.n('l');
  if (v.has('w')) return swinging({ length, a: v.n('w') / 2, outer: v.n('d_t'), inner: v.n('d'), edges: 1 }, g);
  if (v.has('w_w')) return swinging({ length, a: v.n('w_w') / 2, outer: v.n('d'), inner: v.n('d_w'), edges: 2 }, g);
  return length * g(v.n('d'));
};

/** ∫ of a function of the distance from the front over a rectangle whose corners are rounded by `r`, by strips across: between the corners as a whole, in them by the angle. */
const eased = (v: Values, r: number, f: (y: number) => number): number => {
  const [l, d] = [v.n('l'), v.n('d')];
  const corner = (at: (y: number) => number) =>
    simpson((t) => f(at(r - r * Math.cos(t))) * (l - 2 * r + 2 * r * Math.sin(t)) * r * Math.sin(t), 0, Math.PI / 2);
  return corner((y) => y) + corner((y) => d - y) + simpson((y) => f(y) * l, r, d - r);
};

/** Area by the styles' own numbers. */
export const areaOf = (v: Values): number => {
  if (v.has('a_1')) return round(v, () => 1);
  return v.has('r') ? eased(v, v.n('r'), () => 1) : across(v, (depth) => depth);
};

export const centreOf = (v: Values): number => {
  if (v.has('a_1')) return v.n('x_f') + round(v, (y) => y) / v.n('A');
  if (!v.has('A')) return v.n('x_f') + v.n('d') / 2;
  const reach = across(v, (depth) => depth ** 2 / 2) / v.n('A');
  return v.has('x_r') ? v.n('x_r') - reach : v.n('x_f') + reach;
};

export const secondMomentOf = (v: Values): number => {
  if (v.has('a_1')) return round(v, (y) => (y - v.n('x_c') + v.n('x_f')) ** 2);
  if (v.has('r')) return eased(v, v.n('r'), (y) => (y - v.n('d') / 2) ** 2);
  if (!v.has('x_c')) return across(v, (depth) => depth ** 3 / 12);
  const c = v.has('x_r') ? v.n('x_r') - v.n('x_c') : v.n('x_c') - v.n('x_f');
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
