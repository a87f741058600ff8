import { joined, partBetween } from '../bridge/graph.ts';
import type { Mark } from '../drawing.ts';
import { edgeAt, edgeBetween, lightAt, type Rest } from '../gauge/rest.ts';
import type { Surface } from '../gauge/surfaces.ts';
import { forHand, showLine, stroke } from '../marks.ts';
import { end, reverseSegment, segmentEnd, segmentStart, start } from '../shape/path.ts';
import type { Segment } from '../shape/types.ts';

/** How far the gauge is drawn beyond the surface, mm, and where light is drawn as such. */
const BEYOND = 4;
const someLight = 1e-6;

/** A radius gauge on a surface, laid over the view from the tail: its edge, and the light under it hatched; places as in that view, mirrored for a left-handed guitar. */
export const gaugeLaid = ({ line, strings }: Surface, rest: Rest, hand: 'right' | 'left'): readonly Mark[] => {
  const [from, to] = [start(line).x, end(line).x];
  // Between the places where it touches, and beyond them.
  const parts = [from, ...rest.touches.map(({ x }) => x), to];
  const lights = parts.slice(1).flatMap((b, k): readonly Mark[] => {
    const a = parts[k] as number;
    if (b - a < 1e-6 || lightAt(line, rest, (a + b) / 2) < someLight) return [];
    const under = partBetween(line, a, b);
    const over = reverseSegment(edgeBetween(rest.lying, a, b));
    const first = under[0] as Segment;
    return [
      stroke(
        `gauge.light.${k + 1}`,
        {
          segments: joined([...under, over, { kind: 'line', from: segmentEnd(over), to: segmentStart(first) }]),
          closed: true,
        },
        { line: 'thin', purpose: 'show', hatch: { holes: [] } },
      ),
    ];
  });
  return forHand(
    [
      ...lights,
      stroke('gauge.surface', line, { line: 'thin', purpose: 'show' }),
      stroke(
        'gauge.edge',
        { segments: [edgeBetween(rest.lying, from - BEYOND, to + BEYOND)], closed: false },
        { line: 'outline', purpose: 'show' },
      ),
      ...strings.map(({ id, across }) => {
        const at = { x: across, y: edgeAt(rest.lying, across) };
        return showLine(`gauge.at.${id}`, at, { x: across, y: at.y + lightAt(line, rest, across) });
      }),
    ],
    hand,
  );
};
