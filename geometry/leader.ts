import { arrowHalf, arrowLength } from './dimension.ts';
import type { Stroke, Text } from './drawing.ts';
import { polyline } from './shape/path.ts';
import { distance, lerp } from './shape/point.ts';
import type { Point } from './shape/types.ts';
import { wordBox } from './text-box.ts';

/** What a leader line leaves between itself and its word, in ems. */
const gap = 0.25;

const nearest = (value: number, low: number, high: number): number => Math.min(high, Math.max(low, value));

/**
 * A leader line from a word to what it names, with an arrowhead there (ISO 128-2; `to` in the drawing's mm, `em` the text height). Their ids are the text's with `.leader` and `.leader-arrow`; nothing where the word stands
 * at its point.
 */
export const leader = (text: Text, to: Point, em: number): readonly Stroke[] => {
  const { minX, minY, maxX, maxY } = wordBox(text);
  const edge = { x: nearest(to.x, minX, maxX), y: nearest(to.y, minY, maxY) };
  const far = distance(edge, to);
  if (far <= (gap + arrowLength) * em) return [];
  const from = lerp(edge, to, (gap * em) / far);
  const way = { x: (to.x - edge.x) / far, y: (to.y - edge.y) / far };
  const neck = { x: to.x - way.x * arrowLength * em, y: to.y - way.y * arrowLength * em };
  const aside = { x: -way.y * arrowHalf * em, y: way.x * arrowHalf * em };
  const stroke = (part: string, points: readonly Point[], isFilled: boolean): Stroke => ({
    kind: 'stroke',
    id: `${text.id}.${part}`,
    path: polyline(points, isFilled),
    line: 'thin',
    purpose: 'show',
    ...(isFilled && { matter: 'ink' }),
    ...(text.jobPath !== undefined && { jobPath: text.jobPath }),
  });
  return [
    stroke('leader', [from, to], false),
    stroke(
      'leader-arrow',
      [to, { x: neck.x + aside.x, y: neck.y + aside.y }, { x: neck.x - aside.x, y: neck.y - aside.y }],
      true,
    ),
  ];
};
