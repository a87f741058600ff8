import { pyramidLines } from '../bridge/pyramid.ts';
import type { Design } from '../design.ts';
import type { Mark } from '../drawing.ts';
import { showLine, stroke } from '../marks.ts';
import type { Settled } from '../settle.ts';
import { partOf, pointOn } from '../shape/along.ts';
import { meetings, pathIntersections } from '../shape/intersect.ts';
import { bounds, lengthOf } from '../shape/measure.ts';
import { offset } from '../shape/offset.ts';
import { path, polyline, segmentEnd, segmentStart } from '../shape/path.ts';
import type { Line, Path, Point, Segment } from '../shape/types.ts';

/** The deck's two shoulders, where they run between the front and the rear edge, mm; none where they are rounded away. */
const shoulderEdges = ({ bridge }: Settled, outline: Path): readonly (readonly [Point, Point])[] => {
  const { deckWidth, length, shoulder } = bridge;
  if (deckWidth >= length || shoulder !== 'sharp') return [];
  const { minY, maxY } = bounds(outline);
  return [-deckWidth / 2, deckWidth / 2].flatMap((x) => {
    const ray = polyline(
      [
        { x, y: minY - 1 },
        { x, y: maxY + 1 },
      ],
      false,
    );
    const hits = [...pathIntersections(ray, outline)].sort((a, b) => a.y - b.y);
    const [first] = hits;
    const last = hits.at(-1);
    return first && last && last !== first ? [[first, last] as const] : [];
  });
};

/** The parts of a segment that lie between two lines across the page. */
const partsBetween = (segment: Segment, low: Line, high: Line): readonly Segment[] => {
  const cuts = [0, ...[low, high].flatMap((line) => meetings(segment, line).map(({ t }) => t)), 1].sort(
    (a, b) => a - b,
  );
  return cuts.slice(1).flatMap((to, k) => {
    const from = cuts[k] ?? 0;
    if (to - from < 1e-9) return [];
    const part = partOf(segment, from, to);
    const { x } = pointOn(part, 0.5);
    return x > low.from.x && x < high.from.x && lengthOf(part) > 1e-6 ? [part] : [];
  });
};

const isTip = (part: Segment): boolean => {
  const [from, to] = [segmentStart(part), segmentEnd(part)];
  return part.kind === 'line' && Math.abs(to.y - from.y) > Math.abs(to.x - from.x);
};

/** Where a round-over or chamfer of the deck's front and back edges ends on the deck, from above; none where the edges are square. */
const edgeParts = ({ bridge }: Settled, outline: Path): readonly Segment[] => {
  if (bridge.edge === 'square') return [];
  const { minY, maxY } = bounds(outline);
  const upright = (x: number): Line => ({ kind: 'line', from: { x, y: minY - 1 }, to: { x, y: maxY + 1 } });
  const [low, high] = [upright(-bridge.deckWidth / 2), upright(bridge.deckWidth / 2)];
  return offset(outline, -bridge.edgeSize).flatMap(({ segments }) =>
    segments.flatMap((segment) => partsBetween(segment, low, high)).filter((part) => !isTip(part)),
  );
};

/** What is seen on the bridge's upper surface from above: the deck's shoulders, the ends of its worked edges, and a pyramid's ridges. */
export const deckLines = (job: Settled, design: Design, outline: Path): readonly Mark[] => [
  ...shoulderEdges(job, outline).map(([a, b], k) => ({
    ...showLine(`bridge.shoulder.${k === 0 ? 'bass' : 'treble'}`, a, b),
    jobPath: 'bridge.deckWidth',
  })),
  ...edgeParts(job, outline).map((part, k) =>
    stroke(`bridge.edge.${k + 1}`, path([part], false), { line: 'thin', purpose: 'show', jobPath: 'bridge.edge' }),
  ),
  ...pyramidLines(job, design).map(([a, b], k) => ({
    ...showLine(`bridge.pyramid.${k + 1}`, a, b),
    jobPath: 'bridge.pyramidWidth',
  })),
];
