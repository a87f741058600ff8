import { once } from '../once.ts';
import { pointOn } from './along.ts';
import { cubicTurns } from './cubic.ts';
import type { Bounds, Path, Segment } from './types.ts';

/** The parameters inside an arc at which it is uppermost, lowermost, leftmost or rightmost: the quarter turns. */
export const quarterTurns = (start: number, sweep: number): readonly number[] => {
  const quarter = Math.PI / 2;
  const lo = Math.min(start, start + sweep);
  const hi = Math.max(start, start + sweep);
  const found: number[] = [];
  for (let k = Math.ceil(lo / quarter); k * quarter < hi; k++) {
    const t = (k * quarter - start) / sweep;
    if (t > 0 && t < 1) found.push(t);
  }
  return sweep < 0 ? found.reverse() : found;
};

const extremes = (s: Segment): readonly number[] => {
  switch (s.kind) {
    case 'line':
      return [];
    case 'arc':
      return quarterTurns(s.start, s.sweep);
    case 'cubic': {
      const { x, y } = cubicTurns(s);
      return [...x, ...y];
    }
  }
};

/** The smallest upright rectangle that holds a segment, mm. */
export const boundsOfSegment = (s: Segment): Bounds => {
  const from = pointOn(s, 0);
  const to = pointOn(s, 1);
  let minX = Math.min(from.x, to.x);
  let minY = Math.min(from.y, to.y);
  let maxX = Math.max(from.x, to.x);
  let maxY = Math.max(from.y, to.y);
  for (const t of extremes(s)) {
    const { x, y } = pointOn(s, t);
    minX = Math.min(minX, x);
    minY = Math.min(minY, y);
    maxX = Math.max(maxX, x);
    maxY = Math.max(maxY, y);
  }
  return { minX, minY, maxX, maxY };
};

/** The smallest upright rectangle that holds both. */
export const joinBounds = (a: Bounds, b: Bounds): Bounds => ({
  minX: Math.min(a.minX, b.minX),
  minY: Math.min(a.minY, b.minY),
  maxX: Math.max(a.maxX, b.maxX),
  maxY: Math.max(a.maxY, b.maxY),
});

/** Whether two rectangles lie more than a margin (mm) apart along x or y. */
export const boundsApart = (a: Bounds, b: Bounds, margin: number): boolean =>
  a.minX > b.maxX + margin || b.minX > a.maxX + margin || a.minY > b.maxY + margin || b.minY > a.maxY + margin;

/** The smallest upright rectangle that holds all the paths, mm. Throws RangeError when there is nothing to hold. */
export const boundsOf = (paths: readonly Path[]): Bounds => {
  const all = paths.flatMap((p) => p.segments).map(boundsOfSegment);
  if (all.length === 0) throw new RangeError('Nothing has no bounds; give at least one path with a segment.');
  return all.reduce(joinBounds);
};

/** The smallest upright rectangle that holds the path, mm. A drawing's layout asks for each several times. Throws RangeError when it has no segments. */
export const bounds = once((path: Path): Bounds => boundsOf([path]));
