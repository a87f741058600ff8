import type { DimensionMark, Primitive, Stroke, Text } from './drawing.ts';
import { polyline } from './shape/path.ts';
import type { Point } from './shape/types.ts';
import { textWidth } from './text.ts';

/*
 * Proportions in ems. ISO 129-1 has extension lines begin a small gap from the outline and run a little past the dimension line
 * (some eight line widths [memory]), arrowheads of 15° or 30°, and values above the line, read from the bottom or the right.
 */
const gap = 0.4;
const overrun = 0.4;
export const arrowLength = 0.8;
export const arrowHalf = arrowLength * Math.tan((7.5 * Math.PI) / 180);
/** What an outside arrow's line runs on behind its head. */
const tail = 0.8;
/** From the dimension line up to its value, and from an arrow to a value that stands beside it. */
const lift = 0.3;
const aside = 0.5;
/** Least shaft between two inside arrowheads, and least room at either end of a value that stands between them. */
const shaft = 0.6;
const margin = 0.2;

/**
 * The lines, arrowheads and value of a dimension. `em` is the text height in the drawing's mm, `text` the value as it is shown.
 * Their ids are the mark's with `.from` and `.to` (extension lines), `.line`, `.from-arrow`, `.to-arrow` and `.value`; extension lines
 * that would be shorter than their gap are left out.
 */
export const dimensionParts = (mark: DimensionMark, text: string, em: number): Primitive[] => {
  const { id, jobPath } = mark;
  const across = mark.along === 'x';
  // Everything is worked out in the value's own frame: u runs the way it is read, v is the page's other coordinate.
  // `0 - u`, so that no negative zero arises.
  const at = (u: number, v: number): Point => (across ? { x: u, y: v } : { x: v, y: 0 - u });
  const frame = (p: Point) => (across ? { u: p.x, v: p.y } : { u: 0 - p.y, v: p.x });
  const line = mark.at.base + mark.at.ems * em;
  const from = frame(mark.from);
  const to = frame(mark.to);
  const low = Math.min(from.u, to.u);
  const high = Math.max(from.u, to.u);

  const stroke = (part: string, points: readonly Point[], filled = false): Stroke => ({
    kind: 'stroke',
    id: `${id}.${part}`,
    path: polyline(points, filled),
    line: 'thin',
    purpose: 'show',
    ...(filled && { matter: 'ink' }),
    ...(jobPath !== undefined && { jobPath }),
  });

  const extension = (part: string, feature: { u: number; v: number }): Stroke[] => {
    const away = Math.sign(line - feature.v);
    if (Math.abs(line - feature.v) <= gap * em) return [];
    return [stroke(part, [at(feature.u, feature.v + away * gap * em), at(feature.u, line + away * overrun * em)])];
  };

  const width = textWidth(text, em);
  const span = high - low;
  const arrowsInside = span >= (2 * arrowLength + shaft) * em;
  const valueBetween = span >= width + 2 * margin * em;
  const reach = arrowsInside ? 0 : (arrowLength + tail) * em;
  const beside = high + reach + aside * em;
  const lineStart = low - reach;
  const lineEnd = valueBetween ? high + reach : beside + width;

  // An inside arrow's body lies towards the other end, an outside one's away from it.
  const arrow = (part: string, feature: { u: number }, other: { u: number }, fallback: 1 | -1): Stroke => {
    const inward = Math.sign(other.u - feature.u) || fallback;
    const body = feature.u + (arrowsInside ? inward : -inward) * arrowLength * em;
    const tip = at(feature.u, line);
    return stroke(part, [tip, at(body, line - arrowHalf * em), at(body, line + arrowHalf * em)], true);
  };

  const value: Text = {
    kind: 'text',
    id: `${id}.value`,
    at: at(valueBetween ? (low + high) / 2 : beside, line - lift * em),
    text,
    size: em,
    anchor: valueBetween ? 'middle' : 'start',
    turn: across ? 0 : -90,
    bold: false,
    ...(jobPath !== undefined && { jobPath }),
  };

  return [
    ...extension('from', from),
    ...extension('to', to),
    stroke('line', [at(lineStart, line), at(lineEnd, line)]),
    arrow('from-arrow', from, to, 1),
    arrow('to-arrow', to, from, -1),
    value,
  ];
};
