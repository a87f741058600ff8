import type { LineType, Primitive, Stroke, Text } from '../geometry/drawing.ts';
import { place, placePoint, polyline } from '../geometry/shape/index.ts';
import type { Placing } from '../geometry/shape/transform.ts';
import type { Point } from '../geometry/shape/types.ts';
import { textBox } from '../geometry/text-box.ts';

/** A straight stroke from point to point, only to be seen. */
export const straight = (id: string, from: Point, to: Point, line: LineType = 'thin'): Stroke => ({
  kind: 'stroke',
  id,
  path: polyline([from, to], false),
  line,
  purpose: 'show',
});

/** The outline of a rectangle from its corner; mm. */
export const box = (id: string, at: Point, width: number, height: number, line: LineType): Stroke => {
  const { x, y } = at;
  const corners = [at, { x: x + width, y }, { x: x + width, y: y + height }, { x, y: y + height }];
  return { kind: 'stroke', id, path: polyline(corners, true), line, purpose: 'show' };
};

/** A text on its baseline, from its left end; em size in mm. */
export const line = (id: string, at: Point, text: string, size: number, bold = false): Text => ({
  kind: 'text',
  id,
  at,
  text,
  size,
  anchor: 'start',
  turn: 0,
  bold,
});

/**
 * A primitive moved and turned without any scaling or mirroring. Texts turn with their strokes; one that would stand on its head is
 * turned back where it stands, so that it still reads.
 */
export const placePrimitive = (primitive: Primitive, placing: Omit<Placing, 'mirror'>): Primitive => {
  if (primitive.kind === 'stroke') return { ...primitive, path: place(primitive.path, placing) };
  const turn = primitive.turn + ((placing.turn ?? 0) * 180) / Math.PI;
  const placed = { ...primitive, at: placePoint(primitive.at, placing), turn };
  return Math.cos((turn * Math.PI) / 180) < -1e-9 ? onItsFeet(placed) : placed;
};

const onItsFeet = (text: Text): Text => {
  const { minX, minY, maxX, maxY } = textBox(text);
  return { ...text, at: { x: minX + maxX - text.at.x, y: minY + maxY - text.at.y }, turn: text.turn + 180 };
};
