import type { Text } from './drawing.ts';
import { rotate } from './shape/point.ts';
import type { Bounds } from './shape/types.ts';
import { ascent, capHeight, commaTail, descent, textWidth } from './text.ts';

/** The upright box around a text as it is turned and anchored, from `up` over its baseline to `down` under it, and `ends` beyond either end, in ems. */
const boxOf = (text: Text, up: number, down: number, ends = 0): Bounds => {
  const bare = textWidth(text.text, text.size, text.bold);
  const width = bare + 2 * ends * text.size;
  const left = (text.anchor === 'start' ? 0 : text.anchor === 'middle' ? -bare / 2 : -bare) - ends * text.size;
  const top = -up * text.size;
  const bottom = down * text.size;
  const [right, { x, y }] = [left + width, text.at];
  // Most stand upright.
  if (text.turn === 0) return { minX: x + left, minY: y + top, maxX: x + right, maxY: y + bottom };
  const angle = (text.turn * Math.PI) / 180;
  const corners = [
    { x: left, y: top },
    { x: right, y: top },
    { x: right, y: bottom },
    { x: left, y: bottom },
  ].map((corner) => rotate(corner, angle));
  const xs = corners.map((corner) => x + corner.x);
  const ys = corners.map((corner) => y + corner.y);
  return { minX: Math.min(...xs), minY: Math.min(...ys), maxX: Math.max(...xs), maxY: Math.max(...ys) };
};

/** The upright box (mm) around a text as it is turned and anchored, with room for accents and descenders. */
export const textBox = (text: Text): Bounds => boxOf(text, ascent, descent);

/** Words of capitals, small letters without tails, figures and signs that stand on the line, with what parts numbers. */
const low = /^[A-Za-fh-ik-or-xz0-9 .,;:+−×°⌀·’-]*$/;
const plain = /^[\x20-\x7e−×°⌀·’]*$/;

/** How far a text reaches under the baseline, in ems. A point takes the room of a comma's tail, so that a drawing lies alike with either decimal mark. */
const tailOf = (text: string): number => {
  if (!low.test(text)) return descent;
  return /[.,;]/.test(text) ? commaTail : 0;
};

/** The upright box (mm) around what shows of a text: its capitals, its tails and accents only where it has any, and `ends` (ems) beyond either end. */
export const wordBox = (text: Text, ends = 0): Bounds =>
  boxOf(text, plain.test(text.text) ? capHeight : ascent, tailOf(text.text), ends);
