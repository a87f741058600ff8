import { cubicSpeed } from './cubic.ts';
import { segmentEnd, segmentStart, start } from './path.ts';
import { cross, distance, subtract } from './point.ts';
import { translateSegment } from './transform.ts';
import type { Cubic, Path, Segment } from './types.ts';

export { pointOn, tangentOn } from './along.ts';
export { bounds, boundsOf, joinBounds } from './bounds.ts';
export { contains } from './crossing.ts';
export { isSimple } from './simple.ts';

/** Gauss–Legendre abscissas and weights for eight points [Abramowitz & Stegun, Handbook of Mathematical Functions, table 25.4]. */
const gauss = [
  [0.1834346424956498, 0.362683783378362],
  [0.525532409916329, 0.3137066458778873],
  [0.7966664774136267, 0.2223810344533745],
  [0.9602898564975363, 0.1012285362903763],
] as const;

const glance = (c: Cubic, t0: number, t1: number): number => {
  const middle = (t0 + t1) / 2;
  const half = (t1 - t0) / 2;
  const speed = (t: number): number => {
    const v = cubicSpeed(c, t);
    return Math.hypot(v.x, v.y);
  };
  return half * gauss.reduce((sum, [x, w]) => sum + w * (speed(middle - half * x) + speed(middle + half * x)), 0);
};

/** Halves the stretch until both halves together agree with the whole. */
const cubicLength = (c: Cubic, t0: number, t1: number, whole: number, tolerance: number, depth: number): number => {
  const middle = (t0 + t1) / 2;
  const left = glance(c, t0, middle);
  const right = glance(c, middle, t1);
  if (Math.abs(left + right - whole) <= tolerance || depth === 0) return left + right;
  return (
    cubicLength(c, t0, middle, left, tolerance / 2, depth - 1) +
    cubicLength(c, middle, t1, right, tolerance / 2, depth - 1)
  );
};

/** A segment's length, mm: exact for lines and arcs, within 1e-9 mm for cubics. */
export const lengthOf = (s: Segment): number => {
  switch (s.kind) {
    case 'line':
      return distance(s.from, s.to);
    case 'arc':
      return s.radius * Math.abs(s.sweep);
    case 'cubic':
      return cubicLength(s, 0, 1, glance(s, 0, 1), 1e-10, 24);
  }
};

/** The path's whole length, mm. */
export const pathLength = (path: Path): number => path.segments.reduce((sum, s) => sum + lengthOf(s), 0);

/** x − sin x, without cancellation when x is small. */
const lessSine = (x: number): number => {
  if (Math.abs(x) > 0.5) return x - Math.sin(x);
  const xx = x * x;
  let term = (x * xx) / 6;
  let sum = 0;
  for (let k = 4; sum + term !== sum; k += 2) {
    sum += term;
    term *= -xx / (k * (k + 1));
  }
  return sum;
};

/** ½∮(x dy − y dx) along one segment: what it sweeps as seen from the origin. */
const swept = (s: Segment): number => {
  const from = segmentStart(s);
  const to = segmentEnd(s);
  switch (s.kind) {
    case 'line':
      return cross(from, to) / 2;
    case 'arc':
      return cross(from, to) / 2 + (s.radius * s.radius * lessSine(s.sweep)) / 2;
    case 'cubic': {
      const { c1, c2 } = s;
      return (
        (6 * cross(from, c1) +
          3 * cross(from, c2) +
          cross(from, to) +
          3 * cross(c1, c2) +
          3 * cross(c1, to) +
          6 * cross(c2, to)) /
        20
      );
    }
  }
};

/**
 * The area inside a closed path, mm², by Green's theorem: exact for lines, arcs and cubics; + when the path turns from +x towards +y.
 * Throws RangeError when the path is open.
 */
export const area = (path: Path): number => {
  if (!path.closed) throw new RangeError('An open path holds no area; close it first.');
  // Seen from the path's own beginning, so that a far-off path loses no digits.
  const from = subtract({ x: 0, y: 0 }, start(path));
  return path.segments.reduce((sum, s) => sum + swept(translateSegment(s, from.x, from.y)), 0);
};
