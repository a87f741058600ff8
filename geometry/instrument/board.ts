import type { Settled } from '../settle.ts';
import { drop } from '../shape/sagitta.ts';
import { fretAt } from './frets.ts';

type Guitar = Settled['guitar'];

/**
 * Radius across the fret crowns at a distance x from the nut, mm: `R_nut + (R_end − R_nut)·x/x_end`, x_end the last fret, a cone when
 * the two differ. `flat` when the board is flat at both ends; a board flat at one end only is no cone and is refused by `solve`.
 */
export const boardRadius = (guitar: Guitar, x: number): number | 'flat' => {
  const { boardRadiusNut: nut, boardRadiusEnd: end } = guitar;
  if (nut === 'flat' || end === 'flat') return 'flat';
  return nut + ((end - nut) * x) / fretAt(guitar.scale, guitar.frets);
};

/**
 * How far the fret crowns sag below the fret plane at x, mm: a parabola of depth `relief` between fret 1 and the body joint,
 * `4·relief·(x − x_1)(x_b − x)/(x_b − x_1)²`, and nothing outside it.
 */
export const sag = (guitar: Guitar, x: number): number => {
  const first = fretAt(guitar.scale, 1);
  const joint = fretAt(guitar.scale, guitar.bodyJoint);
  if (x <= first || x >= joint) return 0;
  return (4 * guitar.relief * (x - first) * (joint - x)) / (joint - first) ** 2;
};

/** Height of the fret crown at (x, y) above the fret plane, mm: `−drop(R(x), y) − sag(x)`. Throws a RangeError when |y| > R(x). */
export const crownAt = (guitar: Guitar, x: number, y: number): number =>
  -drop(boardRadius(guitar, x), y) - sag(guitar, x);
