import { once } from '../once.ts';
import { partOf, pointOn } from './along.ts';
import { bernsteinRoots } from './bernstein.ts';
import { quarterTurns } from './bounds.ts';
import { coordinates, cubicTurns } from './cubic.ts';
import { distanceTo } from './nearest.ts';
import type { Path, Point, Segment } from './types.ts';

/** Where a path crosses a level line: the x there, and whether it goes up (+1, towards +y) or down (−1). */
export interface Crossing {
  readonly x: number;
  readonly way: 1 | -1;
}

/** A part of a path that runs one way along y, from y0 to y1. */
interface Flight {
  readonly y0: number;
  readonly y1: number;
  readonly part: Segment;
}

/**
 * The path cut into parts that run one way along y. Each takes its first y from the last y of the one before, so that
 * a level line crosses a closed path an even number of times, whatever rounding did at the joints. Cut once, as it is
 * asked for many points and lines.
 */
const flights = once((path: Path): readonly Flight[] => {
  const parts = path.segments.flatMap((s) => {
    const turns = s.kind === 'arc' ? quarterTurns(s.start, s.sweep) : s.kind === 'cubic' ? cubicTurns(s).y : [];
    const cuts = [0, ...turns, 1];
    return cuts.slice(1).map((to, i) => partOf(s, cuts[i] as number, to));
  });
  const ends = parts.map((part) => pointOn(part, 1).y);
  return parts.map((part, i) => ({
    y0: i > 0 || path.closed ? (ends.at(i - 1) as number) : pointOn(part, 0).y,
    y1: ends[i] as number,
    part,
  }));
});

const xAt = ({ part, y0, y1 }: Flight, y: number): number => {
  switch (part.kind) {
    case 'line':
      return part.from.x + ((part.to.x - part.from.x) * (y - y0)) / (y1 - y0);
    case 'arc': {
      const dy = y - part.centre.y;
      const dx = Math.sqrt(Math.max(0, (part.radius - dy) * (part.radius + dy)));
      return part.centre.x + (Math.cos(part.start + part.sweep / 2) < 0 ? -dx : dx);
    }
    case 'cubic': {
      const [t] = bernsteinRoots(coordinates(part).y.map((v) => v - y));
      // None only when rounding moved an end across the line: it is that end.
      return pointOn(part, t ?? (Math.abs(y - y0) < Math.abs(y - y1) ? 0 : 1)).x;
    }
  }
};

/** Finds, for any y, where the path crosses the level line at that y; an end that rests on the line counts as below it. */
export const levelCrossings = (path: Path): ((y: number) => readonly Crossing[]) => {
  const all = flights(path);
  return (y) =>
    all
      .filter(({ y0, y1 }) => y0 <= y !== y1 <= y)
      .map((flight) => ({ x: xAt(flight, y), way: flight.y1 > flight.y0 ? 1 : -1 }));
};

/** Whether a point lies inside a closed path, or on it within 1e-9 mm. Throws RangeError when the path is open. */
export const contains = (path: Path, p: Point): boolean => {
  if (!path.closed) throw new RangeError('An open path has no inside; close it first.');
  const winding = levelCrossings(path)(p.y).reduce((sum, { x, way }) => (x > p.x ? sum + way : sum), 0);
  return winding !== 0 || distanceTo(path, p) <= 1e-9;
};
