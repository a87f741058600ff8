import { pointOn, tangentOn } from './along.ts';
import { arc } from './arc.ts';
import { cubicAcceleration, cubicAt, cubicPart, cubicSpeed } from './cubic.ts';
import { nearestOn } from './nearest.ts';
import { segmentEnd } from './path.ts';
import { add, cross, distance, dot, lerp, scale, subtract } from './point.ts';
import type { Arc, Cubic, Point, Segment } from './types.ts';

/** A piece of curve that runs beside a path. */
export interface Beside {
  readonly segment: Segment;
  /** The place that the piece's point at t stands for: at exactly the wanted distance, even where the piece is only fitted. */
  readonly truly: (t: number) => Point;
  /** Whether the piece is the true curve or only fitted to it. */
  readonly exact: boolean;
}

/** How far a fitted cubic may stray from the true curve, mm: well inside the 0.001 promised. */
export const stray = 5e-5;

/** The point at `side` mm to the right of the segment at t; right as seen running along it with +y to the left of +x. */
const besidePoint = (s: Segment, t: number, side: number): Point => {
  const along = tangentOn(s, t);
  return add(pointOn(s, t), { x: side * along.y, y: -side * along.x });
};

const exact = (segment: Segment): Beside => ({ segment, truly: (t) => pointOn(segment, t), exact: true });

const besideArc = (s: Arc, side: number): readonly Beside[] => {
  const radius = s.radius + side * Math.sign(s.sweep);
  // An arc drawn in past its own centre stands too near to the path everywhere.
  return radius > 1e-9 ? [exact(arc(s.centre, radius, s.start, s.sweep))] : [];
};

/** How much faster the place beside the cubic moves than the cubic itself: 1 + side × curvature; below 0 where it runs backwards. */
const stretchAt = (c: Cubic, t: number, side: number): number => {
  const v = cubicSpeed(c, t);
  const size = Math.hypot(v.x, v.y);
  return size > 0 ? 1 + (side * cross(v, cubicAcceleration(c, t))) / (size * size * size) : 1;
};

/**
 * One cubic beside a cubic: it sets out and arrives with the true curve's speeds (Hermite), both then stretched alike until the middle, too, lies
 * on the true curve; this wins two orders in the step on curves that bend one way.
 */
const fitted = (c: Cubic, side: number): Cubic => {
  const from = besidePoint(c, 0, side);
  const to = besidePoint(c, 1, side);
  const out = scale(cubicSpeed(c, 0), stretchAt(c, 0, side) / 3);
  const back = scale(cubicSpeed(c, 1), stretchAt(c, 1, side) / 3);
  const along = tangentOn(c, 0.5);
  const bulge = 0.375 * cross(along, subtract(out, back));
  const wanted = cross(along, subtract(besidePoint(c, 0.5, side), lerp(from, to, 0.5)));
  const k = wanted / bulge;
  const by = k > 0.8 && k < 1.25 ? k : 1;
  return { kind: 'cubic', from, c1: add(from, scale(out, by)), c2: subtract(to, scale(back, by)), to };
};

const probes = [0.125, 0.25, 0.375, 0.5, 0.625, 0.75, 0.875];

/** Cubics are halved until each fits; parts that run backwards are left out, since they stand nearer to the path than `side`. */
const besideCubic = (c: Cubic, side: number, depth: number): readonly Beside[] => {
  const stretches = [0, ...probes, 1].map((t) => stretchAt(c, t, side));
  if (stretches.every((k) => k <= 0)) return [];
  const fit = fitted(c, side);
  const strays = (t: number): boolean =>
    Math.abs(nearestOn(c, cubicAt(fit, t)).distance - Math.abs(side)) > stray ||
    distance(cubicAt(fit, t), besidePoint(c, t, side)) > 100 * stray;
  if (depth === 0 || (stretches.every((k) => k >= 0) && !probes.some(strays)))
    return [{ segment: fit, truly: (t) => besidePoint(c, t, side), exact: false }];
  return [...besideCubic(cubicPart(c, 0, 0.5), side, depth - 1), ...besideCubic(cubicPart(c, 0.5, 1), side, depth - 1)];
};

/** The pieces that run `side` mm to the right of a segment. */
export const besideSegment = (s: Segment, side: number): readonly Beside[] => {
  switch (s.kind) {
    case 'line':
      return [exact({ kind: 'line', from: besidePoint(s, 0, side), to: besidePoint(s, 1, side) })];
    case 'arc':
      return besideArc(s, side);
    case 'cubic':
      return besideCubic(s, side, 12);
  }
};

/** The arc about a corner from the one segment's side to the next one's, where the corner opens towards that side. */
export const cornerArc = (before: Segment, after: Segment, side: number): Beside | undefined => {
  const a = tangentOn(before, 1);
  const b = tangentOn(after, 0);
  const turn = Math.atan2(cross(a, b), dot(a, b));
  // A smooth joint needs none: the gap is within what joins.
  if (turn * side <= 1e-7) return undefined;
  const from = { x: side * a.y, y: -side * a.x };
  return exact(arc(segmentEnd(before), Math.abs(side), Math.atan2(from.y, from.x), turn));
};
