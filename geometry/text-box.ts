import type { Text } from './drawing.ts';
import { rotate } from './shape/point.ts';
import type { Bounds } from './shape/types.ts';
import { ascent, descent, textWidth } from './text.ts';

/** The upright box (mm) around a text as it is turned and anchored, accents and descenders included. */
export const textBox = (text: Text): Bounds => {
  const width = textWidth(text.text, text.size, text.bold);
  const left = text.anchor === 'start' ? 0 : text.anchor === 'middle' ? -width / 2 : -width;
  const top = -ascent * text.size;
  const bottom = descent * text.size;
  const angle = (text.turn * Math.PI) / 180;
  const corners = [
    { x: left, y: top },
    { x: left + width, y: top },
    { x: left + width, y: bottom },
    { x: left, y: bottom },
  ].map((corner) => rotate(corner, angle));
  const xs = corners.map(({ x }) => text.at.x + x);
  const ys = corners.map(({ y }) => text.at.y + y);
  return { minX: Math.min(...xs), minY: Math.min(...ys), maxX: Math.max(...xs), maxY: Math.max(...ys) };
};
