import { partOf, pointOn } from '../shape/along.ts';
import { arcParameter } from '../shape/nearest.ts';
import { segmentEnd, segmentStart } from '../shape/path.ts';
import { distance } from '../shape/point.ts';
import type { Path, Point, Segment } from '../shape/types.ts';

/*
 * A graph is a path of lines and arcs (and of cubics along which x runs evenly) that runs in the sense of +x and over every x has one height, but for upright steps. The bridge’s top, its slot’s floor and the saddle’s crown are such paths.
 */

/** Places nearer than this are one, mm. */
const hair = 1e-9;

const parameterAt = (s: Segment, x: number): number => {
  const [from, to] = [segmentStart(s), segmentEnd(s)];
  if (x <= from.x) return 0;
  if (x >= to.x) return 1;
  if (s.kind !== 'arc') return (x - from.x) / (to.x - from.x);
  const off = x - s.centre.x;
  const rise = Math.sqrt(Math.max(0, (s.radius - off) * (s.radius + off)));
  const below = Math.sin(s.start + s.sweep / 2) > 0;
  return Math.max(0, Math.min(1, arcParameter(s, { x, y: s.centre.y + (below ? rise : -rise) })));
};

const isUpright = (s: Segment): boolean => segmentEnd(s).x - segmentStart(s).x <= hair;

/** The segment of a graph that lies over x, and the parameter there; beyond its ends, those of the nearer end. */
export const placeOver = (graph: Path, x: number): { readonly segment: Segment; readonly t: number } => {
  const over = graph.segments.filter((s) => !isUpright(s));
  const segment = over.find((one) => segmentEnd(one).x >= x) ?? (over.at(-1) as Segment);
  return { segment, t: parameterAt(segment, x) };
};

/** The page height of a graph at x; beyond its ends, that of the nearer end. */
export const heightOn = (graph: Path, x: number): number => {
  const { segment, t } = placeOver(graph, x);
  return pointOn(segment, t).y;
};

/** The part of a graph from x = a to x = b. */
export const partBetween = (graph: Path, a: number, b: number): readonly Segment[] =>
  graph.segments.flatMap((s): readonly Segment[] => {
    const [from, to] = [segmentStart(s).x, segmentEnd(s).x];
    if (isUpright(s)) return from > a + hair && from < b - hair ? [s] : [];
    if (to <= a + hair || from >= b - hair) return [];
    return [partOf(s, parameterAt(s, a), parameterAt(s, b))];
  });

/** The segments one after the other, with a straight line wherever one does not begin where the one before ends. */
export const joined = (segments: readonly Segment[]): readonly Segment[] =>
  segments.flatMap((s, k): readonly Segment[] => {
    const before = segments[k - 1];
    if (before === undefined) return [s];
    const [from, to]: readonly [Point, Point] = [segmentEnd(before), segmentStart(s)];
    return distance(from, to) <= hair ? [s] : [{ kind: 'line', from, to }, s];
  });
