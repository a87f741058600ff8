import type { Stroke } from '../../../geometry/drawing.ts';
import { digits } from '../../../geometry/path-data.ts';
import { dashes, lineWidth } from '../../../templates/style.ts';

/** A pen's mm on paper, in px on screen: the wide lines 1.75, the narrow ones 0.9. */
const pen = 5;

/** A stroke's width on screen, px. */
export const widthOf = (stroke: Stroke): number => Number(digits(lineWidth[stroke.line] * pen));

/** Its dashes and gaps, px; undefined where it is continuous. */
export const dashOf = (stroke: Stroke): string | undefined => {
  // A dot thinner than a pixel would vanish.
  const dash = dashes[stroke.line].map((mm) => digits(Math.max(1, mm * pen)));
  return dash.length === 0 ? undefined : dash.join(' ');
};

/** What the style knows it by. */
export const classOf = (stroke: Stroke, lit: boolean): string =>
  [stroke.line, stroke.matter && `of-${stroke.matter}`, stroke.id.includes('.hatch.') && 'hatch', lit && 'lit']
    .filter(Boolean)
    .join(' ');

/** A length of a text, mm, in as many digits as show. */
export const round = (value: number): number => Number(value.toFixed(4));

/** How wide the edge of paper round a text is, as a part of its size. */
export const edge = 0.28;

/** How a text stands turned, degrees, about its place. */
export const turnAbout = (turn: number, x: number, y: number): string => `rotate(${turn} ${x} ${y})`;
