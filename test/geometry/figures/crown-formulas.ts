import { drop, mean, sum, type Values } from './values.ts';

/** A crown of a radius laid over heights by least squares: its height and tilt in the middle. */
export const laid = (v: Values, radius: number | 'flat') => {
  const [y, z] = [v.all('y'), v.all('z')];
  const raised = y.map((one, k) => (z[k] ?? 0) + drop(radius, one));
  const [my, mv] = [mean(y), mean(raised)];
  const m = sum(y.map((one, k) => (one - my) * ((raised[k] ?? 0) - mv))) / sum(y.map((one) => (one - my) ** 2));
  const c = mv - m * my;
  const at = (one: number) => c + m * one - drop(radius, one);
  return { m, at, misses: y.map((one, k) => at(one) - (z[k] ?? 0)) };
};

export const worst = (v: Values, radius: number | 'flat') => Math.max(...laid(v, radius).misses.map(Math.abs));

export const squares = (v: Values, radius: number | 'flat') => sum(laid(v, radius).misses.map((miss) => miss ** 2));

/** Height of the saddle above its bottom at u along its face, on the arc through the outer strings. */
const onArc = (v: Values) => {
  const stretch = Math.hypot(1, v.n('m'));
  const [a, b] = [v.n('y_b') * stretch, v.n('y_t') * stretch];
  const [za, zb] = [v.n('z_b'), v.n('z_t')];
  const radius = v.radius('R');
  const chord = Math.hypot(b - a, zb - za);
  if (radius === 'flat') return { at: (u: number) => za + ((zb - za) * (u - a)) / (b - a), middle: undefined };
  const rise = Math.sqrt(radius ** 2 - chord ** 2 / 4);
  const centre = { u: (a + b) / 2 + (rise * (zb - za)) / chord, z: (za + zb) / 2 - (rise * (b - a)) / chord };
  return { at: (u: number) => centre.z + Math.sqrt(radius ** 2 - (u - centre.u) ** 2), middle: centre.u };
};

/** How much lower the ends of a bottom lie that follows the dome. */
const fallen = (v: Values): number => (v.has('R_t') ? drop(v.radius('R_t'), v.n('l') / 2) : 0);

export const endOf = (v: Values, side: -1 | 1): number => {
  const half = v.n('l') / 2;
  if (!v.has('t')) return onArc(v).at(side * half) - v.n('z_0') + fallen(v);
  const at = (side * half) / Math.hypot(1, v.n('m'));
  const y = v.n('y');
  return v.n('z_s') + v.n('t') * (at - y) - drop(v.radius('R'), at) + drop(v.radius('R'), y) - v.n('z_0') + fallen(v);
};

export const highestOf = (v: Values): number => {
  if (v.has('R')) {
    const { at, middle } = onArc(v);
    const half = v.n('l') / 2;
    const places = [-half, half, ...(middle !== undefined && Math.abs(middle) < half ? [middle] : [])];
    return Math.max(...places.map(at)) - v.n('z_0') + fallen(v);
  }
  const heights = [v.n('H_b'), ...v.all('z').map((z) => z - v.n('z_0') + fallen(v)), v.n('H_t')];
  return Math.max(...heights);
};
