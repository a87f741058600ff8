import type { Mark } from '../../geometry/drawing.ts';
import { note, stroke } from '../../geometry/marks.ts';
import type { Point } from '../../geometry/shape/types.ts';
import { block } from '../../geometry/views/element.ts';
import { em } from '../block.ts';

/** Em size of a field's name and from line to line of it; of what is explained and from line to line of that, mm. */
export const nameSize = 3.8;
export const nameLeading = 4.6;
export const helpSize = 3;
export const helpLeading = 3.8;
/** The side of a box to tick, and from its edge to its word, mm. */
export const tickSide = 3;
export const tickGap = 1.4;

/** A text on its baseline, em size in mm. */
export const put = (
  id: string,
  at: Point,
  text: string,
  size: number,
  more: { readonly bold?: boolean; readonly end?: boolean } = {},
): Mark =>
  note(id, at, [text], { anchor: more.end ? 'end' : 'start', scale: size / em, ...(more.bold && { bold: true }) });

/** A rectangle to write into. */
export const frame = (id: string, { x, y }: Point, width: number, height: number): Mark =>
  stroke(id, block({ x, y }, { x: x + width, y: y + height }), { line: 'thin', purpose: 'show' });

/** A box to tick and its word behind it, on a baseline. */
export const tick = (id: string, { x, y }: Point, word: string): readonly Mark[] => [
  frame(`${id}.box`, { x, y: y - tickSide + 0.3 }, tickSide, tickSide),
  put(`${id}.word`, { x: x + tickSide + tickGap, y }, word, helpSize),
];
