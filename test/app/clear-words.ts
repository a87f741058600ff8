import { grown } from '../../geometry/berths.ts';
import type { Primitive } from '../../geometry/drawing.ts';
import { bounds, boundsApart } from '../../geometry/shape/bounds.ts';
import { pathIntersections } from '../../geometry/shape/intersect.ts';
import { polyline, start } from '../../geometry/shape/path.ts';
import type { Bounds, Point } from '../../geometry/shape/types.ts';
import { textBox, wordBox } from '../../geometry/text-box.ts';

/** What two boxes may share, in ems: they hold a line's whole height, accents and descenders too. */
const shared = 0.1;

/** Each pair of texts of which one stands over the other. */
export const overEachOther = (primitives: readonly Primitive[]): readonly string[] => {
  const words = primitives.flatMap((p) => (p.kind === 'text' ? [{ ...p, box: textBox(p) }] : []));
  return words.flatMap((a, k) =>
    words.slice(k + 1).flatMap((b) => {
      const may = shared * Math.min(a.size, b.size);
      const across = Math.min(a.box.maxX, b.box.maxX) - Math.max(a.box.minX, b.box.minX);
      const up = Math.min(a.box.maxY, b.box.maxY) - Math.max(a.box.minY, b.box.minY);
      return across > may && up > may ? [`${a.id} “${a.text}” and ${b.id} “${b.text}”`] : [];
    }),
  );
};

/** How far a line may come into a word's box, in ems: less than its own width. */
const hair = 0.05;

const corners = ({ minX, minY, maxX, maxY }: Bounds): readonly Point[] => [
  { x: minX, y: minY },
  { x: maxX, y: minY },
  { x: maxX, y: maxY },
  { x: minX, y: maxY },
];

const isIn = (p: Point, box: Bounds): boolean => p.x > box.minX && p.x < box.maxX && p.y > box.minY && p.y < box.maxY;

/** Each word with a line over it, whatever the line is; exact paths against what shows of the word. */
export const crossedByLines = (primitives: readonly Primitive[]): readonly string[] => {
  const strokes = primitives.flatMap((p) => (p.kind === 'stroke' ? [{ ...p, box: bounds(p.path) }] : []));
  return primitives.flatMap((text) => {
    if (text.kind !== 'text' || text.text === '') return [];
    const box = grown(wordBox(text), -hair * text.size);
    const edge = polyline(corners(box), true);
    return strokes
      .filter((stroke) => !boundsApart(box, stroke.box, 0))
      .filter(({ path }) => isIn(start(path), box) || pathIntersections(edge, path).length > 0)
      .map(({ id }) => `${text.id} “${text.text}” by ${id}`);
  });
};
