import type { Stroke } from '../../geometry/drawing.ts';
import { contains, pointOn } from '../../geometry/shape/measure.ts';
import type { Path } from '../../geometry/shape/types.ts';

/** A line to be cut or drilled, and what it bounds. */
export interface Contour {
  readonly stroke: Stroke;
  /** Round how many others it lies: 0 for the outline of a part, 1 for a window in it, 2 for an island in the window. */
  readonly depth: number;
  /**
   * What comes loose inside: a part, or waste. `line` bounds nothing: an open cut, or one in a narrow line, which is work on the face (a ramp is filed,
   * not sawn out).
   */
  readonly bounds: 'part' | 'waste' | 'line';
}

const isEdge = ({ path, line, purpose }: Stroke): boolean => purpose === 'cut' && path.closed && line === 'outline';

/** Whether a path lies wholly inside a closed one; one that crosses it does not. */
const isInside = (inner: Path, outer: Path): boolean =>
  inner !== outer && inner.segments.every((s) => [0, 0.5, 1].every((t) => contains(outer, pointOn(s, t))));

/** The strokes to be cut and drilled with their nesting, which tells parts from waste. */
export const contoursOf = (strokes: readonly Stroke[]): readonly Contour[] => {
  const edges = strokes.filter(isEdge);
  return strokes.map((stroke) => {
    const depth = edges.filter(({ path }) => isInside(stroke.path, path)).length;
    if (stroke.purpose === 'drill') return { stroke, depth, bounds: 'waste' };
    if (!isEdge(stroke)) return { stroke, depth, bounds: 'line' };
    return { stroke, depth, bounds: depth % 2 === 0 ? 'part' : 'waste' };
  });
};

/** The same contours in the order of work: what lies inside before what lies round it, so that nothing moves before it is done. */
export const insideFirst = (contours: readonly Contour[]): readonly Contour[] =>
  contours.toSorted((a, b) => b.depth - a.depth);
