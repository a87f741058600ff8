// The bridge's upper line off the middle, part by part, from the numbers of each alone.
import { drop, type Values } from './values.ts';

type Place = readonly [x: number, z: number];

/** Height at x on the shorter arc of a radius between two places: round with its middle below them, or hollow with it above. */
const onArc = (x: number, radius: number, [a, b]: readonly [Place, Place], bend: 'round' | 'hollow'): number => {
  const [dx, dz] = [b[0] - a[0], b[1] - a[1]];
  const chord = Math.hypot(dx, dz);
  const below = (bend === 'round' ? -1 : 1) * Math.sqrt(radius ** 2 - (chord / 2) ** 2);
  const [middle, height] = [(a[0] + b[0]) / 2 - (below * dz) / chord, (a[1] + b[1]) / 2 + (below * dx) / chord];
  return height + (bend === 'round' ? 1 : -1) * Math.sqrt(radius ** 2 - (x - middle) ** 2);
};

const deck = (v: Values): number => {
  const half = v.n('w') / 2;
  const shoulders = [
    [-half, v.n('z_1')],
    [half, v.n('z_2')],
  ] as const;
  const radius = v.radius('R_b');
  return radius === 'flat'
    ? v.n('z_1') + ((v.n('z_2') - v.n('z_1')) * (v.n('y') + half)) / v.n('w')
    : onArc(v.n('y'), radius, shoulders, 'round');
};

const endAt = (v: Values, out: number, thick: string): number => v.n('z_t') - drop(v.radius('R_t'), out) + v.n(thick);

const wing = (v: Values): number => {
  const e = v.n('l') / 2 - (v.has('p') ? v.n('p') : 0);
  const [s, u] = [e - v.n('w') / 2, Math.abs(v.n('y')) - v.n('w') / 2];
  const [from, to]: readonly [Place, Place] = [
    [0, v.n('z_s')],
    [s, endAt(v, e, 'T_t')],
  ];
  if (v.has('R_o')) return onArc(u, v.n('R_o'), [from, to], 'round');
  if (v.has('R_h')) return onArc(u, v.n('R_h'), [from, to], 'hollow');
  if (v.has('R')) return onArc(u, v.n('R'), [from, to], 'hollow');
  const middle: Place = [s / 2, (from[1] + to[1]) / 2];
  if (v.has('R_g'))
    return u <= s / 2 ? onArc(u, v.n('R_g'), [from, middle], 'round') : onArc(u, v.n('R_g'), [middle, to], 'hollow');
  return from[1] + ((to[1] - from[1]) * u) / s;
};

const pyramid = (v: Values): number => {
  const [l, p, out] = [v.n('l') / 2, v.n('p'), Math.abs(v.n('y'))];
  const places: readonly Place[] = [
    [l - p, endAt(v, l - p, 'T_t')],
    [l, endAt(v, l, 'T_t')],
  ];
  const [foot, tip] = places as readonly [Place, Place];
  const ridge: Place = [l - p / 2, endAt(v, l - p / 2, 'T_r')];
  const [a, b] = out < ridge[0] ? [foot, ridge] : [ridge, tip];
  return a[1] + ((b[1] - a[1]) * (out - a[0])) / (b[0] - a[0]);
};

const rounded = (v: Values): number =>
  v.has('r')
    ? v.n('z_m') + Math.sqrt(v.n('r') ** 2 - (v.n('y') - v.n('y_m')) ** 2)
    : v.n('z_m') - Math.sqrt(v.n('r_h') ** 2 - (v.n('y') - v.n('y_m')) ** 2);

/** Height of the bridge's top where a section cuts it. */
export const sectionTop = (v: Values): number => {
  if (v.has('y_m')) return rounded(v);
  if (v.has('T_r')) return pyramid(v);
  return v.has('z_s') ? wing(v) : deck(v);
};
