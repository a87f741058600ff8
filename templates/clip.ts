import type { Primitive, Stroke } from '../geometry/drawing.ts';
import { partOf, pointOn } from '../geometry/shape/along.ts';
import { bounds } from '../geometry/shape/bounds.ts';
import { meetings } from '../geometry/shape/intersect.ts';
import type { Bounds, Line, Path, Point, Segment } from '../geometry/shape/types.ts';

const edgesOf = ({ minX, minY, maxX, maxY }: Bounds): readonly Line[] => {
  const corners: readonly Point[] = [
    { x: minX, y: minY },
    { x: maxX, y: minY },
    { x: maxX, y: maxY },
    { x: minX, y: maxY },
  ];
  return corners.map((from, i) => ({ kind: 'line', from, to: corners[(i + 1) % 4] as Point }));
};

/** Whether a box lies within a window, to within a millionth of a mm. */
export const isWithin = (box: Bounds, window: Bounds): boolean =>
  box.minX >= window.minX - 1e-6 &&
  box.minY >= window.minY - 1e-6 &&
  box.maxX <= window.maxX + 1e-6 &&
  box.maxY <= window.maxY + 1e-6;

const holds = (window: Bounds, { x, y }: Point): boolean => isWithin({ minX: x, minY: y, maxX: x, maxY: y }, window);

/** The segment cut where it crosses the window's edges, each part with whether it lies inside. */
const cut = (segment: Segment, window: Bounds, edges: readonly Line[]) => {
  const ts = edges.flatMap((edge) => meetings(segment, edge).map(({ t }) => t));
  const cuts = [...new Set([0, ...ts, 1])].sort((a, b) => a - b);
  return cuts.slice(1).map((to, i) => {
    const from = cuts[i] as number;
    const part = from === 0 && to === 1 ? segment : partOf(segment, from, to);
    return { part, inside: holds(window, pointOn(part, 0.5)) };
  });
};

/**
 * What of a path lies inside an upright window: the path itself where it lies wholly inside, else open runs of it. Lines, arcs and cubics stay what they are and end exactly on the window's
 * edge.
 */
export const clipPath = (path: Path, window: Bounds): readonly Path[] => {
  const box = bounds(path);
  if (isWithin(box, window)) return [path];
  const edges = edgesOf(window);
  const parts = path.segments.flatMap((segment) => cut(segment, window, edges));
  const runs: Segment[][] = [];
  parts.forEach(({ part, inside }, i) => {
    if (!inside) return;
    if (i > 0 && parts[i - 1]?.inside) runs.at(-1)?.push(part);
    else runs.push([part]);
  });
  // A closed path that begins inside the window is one run over its beginning.
  const [first] = runs;
  const last = runs.at(-1);
  if (path.closed && first && last && first !== last && parts[0]?.inside && parts.at(-1)?.inside) {
    runs[0] = [...last, ...first];
    runs.pop();
  }
  return runs.map((segments) => ({ segments, closed: false }));
};

/** A stroke's parts inside a window; the first keeps its id, each further one has a number behind it. */
export const clipStroke = (stroke: Stroke, window: Bounds): readonly Primitive[] =>
  clipPath(stroke.path, window).map((path, i) => ({
    ...stroke,
    id: i === 0 ? stroke.id : `${stroke.id}.${i + 1}`,
    path,
  }));
