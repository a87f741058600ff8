import { pointOn } from './along.ts';
import { arc } from './arc.ts';
import { cubicSpeed } from './cubic.ts';
import { start } from './path.ts';
import type { Path, Point, Segment } from './types.ts';

/** An area, its middle, and its second moment about the line through the middle along x. */
export interface Moments {
  /** mm² */
  readonly area: number;
  readonly centroid: Point;
  /** `∫(y − y_c)² dA`, mm⁴. */
  readonly secondY: number;
}

/** Gauss–Legendre abscissas and weights for eight points [Abramowitz & Stegun, Handbook of Mathematical Functions, table 25.4]. */
const gauss = [
  [0.1834346424956498, 0.362683783378362],
  [0.525532409916329, 0.3137066458778873],
  [0.7966664774136267, 0.2223810344533745],
  [0.9602898564975363, 0.1012285362903763],
] as const;

/** Arcs in parts of at most an eighth of a turn, on which eight points are exact to the last digits; on lines and cubics they always are. */
const parts = (segment: Segment): readonly Segment[] => {
  if (segment.kind !== 'arc') return [segment];
  const n = Math.max(1, Math.ceil(Math.abs(segment.sweep) / (Math.PI / 4)));
  const { centre, radius, start: from, sweep } = segment;
  return Array.from({ length: n }, (_, k) => arc(centre, radius, from + (sweep * k) / n, sweep / n));
};

/** How fast a point runs along a segment as its parameter runs from 0 to 1. */
const velocity = (s: Segment, t: number): Point => {
  switch (s.kind) {
    case 'line':
      return { x: s.to.x - s.from.x, y: s.to.y - s.from.y };
    case 'arc': {
      const angle = s.start + s.sweep * t;
      return { x: -s.radius * Math.sin(angle) * s.sweep, y: s.radius * Math.cos(angle) * s.sweep };
    }
    case 'cubic':
      return cubicSpeed(s, t);
  }
};

/** Area, centroid and second moment of what a closed path encloses, by Green's theorem. Throws RangeError when the path is open. */
export const moments = (path: Path): Moments => {
  if (!path.closed) throw new RangeError('An open path encloses nothing; close it first.');
  // Seen from the path's own beginning, so that a far-off path loses no digits.
  const from = start(path);
  let area = 0;
  let sx = 0;
  let sy = 0;
  let syy = 0;
  for (const part of path.segments.flatMap(parts)) {
    for (const [abscissa, weight] of gauss) {
      for (const t of [(1 - abscissa) / 2, (1 + abscissa) / 2]) {
        const at = pointOn(part, t);
        const [x, y] = [at.x - from.x, at.y - from.y];
        const v = velocity(part, t);
        const w = weight / 2;
        area += (w * (x * v.y - y * v.x)) / 2;
        sx += (w * x * x * v.y) / 2;
        sy -= (w * y * y * v.x) / 2;
        syy -= (w * y ** 3 * v.x) / 3;
      }
    }
  }
  const [cx, cy] = [sx / area, sy / area];
  return {
    area: Math.abs(area),
    centroid: { x: from.x + cx, y: from.y + cy },
    secondY: Math.abs(syy - area * cy * cy),
  };
};
