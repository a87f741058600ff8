import { pointOn } from './along.ts';
import { bernsteinProduct, bernsteinTouches } from './bernstein.ts';
import { boundsApart, boundsOfSegment } from './bounds.ts';
import { coordinates } from './cubic.ts';
import { cubicMeetings } from './cubics.ts';
import { arcParameter, nearestOn } from './nearest.ts';
import { add, cross, distance, dot, scale, subtract } from './point.ts';
import type { Arc, Cubic, Line, Path, Point, Segment } from './types.ts';

/** A place that two segments share: at t of the first, u of the second. */
export interface Meeting {
  readonly t: number;
  readonly u: number;
  readonly point: Point;
}

/** A place where the two curves meet, which may still lie beyond the ends of one. */
type Pair = readonly [t: number, u: number];

/** An end this near to the other segment touches it, mm. */
const touch = 1e-9;
/** Curves this near at their nearest are taken to touch in one place, mm. */
const graze = 1e-10;
/** Places nearer to each other than this are one, mm. */
const same = 1e-6;

const lineParameter = (l: Line, p: Point): number => {
  const d = subtract(l.to, l.from);
  return dot(subtract(p, l.from), d) / dot(d, d);
};

const lineLine = (a: Line, b: Line): readonly Pair[] => {
  const da = subtract(a.to, a.from);
  const db = subtract(b.to, b.from);
  const sine = cross(da, db);
  // Parallel lines share at most a stretch, which the ends tell.
  if (Math.abs(sine) <= 1e-13 * Math.hypot(da.x, da.y) * Math.hypot(db.x, db.y)) return [];
  const gap = subtract(b.from, a.from);
  return [[cross(gap, db) / sine, cross(gap, da) / sine]];
};

/** The two places at a distance `to` along a unit vector from `from`, and as far to either side as the radius allows. */
const chordEnds = (radius: number, from: Point, way: Point, to: number): readonly Point[] => {
  const spare = radius - Math.abs(to);
  if (spare < -graze) return [];
  const foot = add(from, scale(way, to));
  if (spare <= graze) return [foot];
  const half = Math.sqrt(spare * (radius + Math.abs(to)));
  const side = { x: -way.y * half, y: way.x * half };
  return [add(foot, side), subtract(foot, side)];
};

const lineArc = (a: Line, b: Arc): readonly Pair[] => {
  const d = subtract(a.to, a.from);
  const size = Math.hypot(d.x, d.y);
  if (size === 0) return [];
  const normal = { x: -d.y / size, y: d.x / size };
  return chordEnds(b.radius, b.centre, normal, dot(subtract(a.from, b.centre), normal)).map((p) => [
    lineParameter(a, p),
    arcParameter(b, p),
  ]);
};

const arcArc = (a: Arc, b: Arc): readonly Pair[] => {
  const between = subtract(b.centre, a.centre);
  const apart = Math.hypot(between.x, between.y);
  // Circles about one centre share all or nothing; a shared stretch is told by the ends.
  if (apart <= touch) return [];
  const along = (apart + ((a.radius - b.radius) * (a.radius + b.radius)) / apart) / 2;
  return chordEnds(a.radius, a.centre, scale(between, 1 / apart), along).map((p) => [
    arcParameter(a, p),
    arcParameter(b, p),
  ]);
};

const cubicLine = (a: Cubic, b: Line): readonly Pair[] => {
  const d = subtract(b.to, b.from);
  const size = Math.hypot(d.x, d.y);
  if (size === 0) return [];
  const height = [a.from, a.c1, a.c2, a.to].map((p) => cross(d, subtract(p, b.from)) / size);
  return bernsteinTouches(height, graze).map((t) => [t, lineParameter(b, pointOn(a, t))]);
};

const cubicArc = (a: Cubic, b: Arc): readonly Pair[] => {
  // (|P − centre|² − r²)/2r, near the circle the distance from it.
  const { x, y } = coordinates(a);
  const dx = x.map((v) => v - b.centre.x);
  const dy = y.map((v) => v - b.centre.y);
  const yy = bernsteinProduct(dy, dy);
  const off = bernsteinProduct(dx, dx).map((v, i) => (v + (yy[i] as number) - b.radius * b.radius) / (2 * b.radius));
  return bernsteinTouches(off, graze).map((t) => [t, arcParameter(b, pointOn(a, t))]);
};

const swap = (pairs: readonly Pair[]): readonly Pair[] => pairs.map(([t, u]) => [u, t]);

const curvesMeet = (a: Segment, b: Segment): readonly Pair[] => {
  if (a.kind === 'line') {
    if (b.kind === 'line') return lineLine(a, b);
    return b.kind === 'arc' ? lineArc(a, b) : swap(cubicLine(b, a));
  }
  if (a.kind === 'arc') {
    if (b.kind === 'line') return swap(lineArc(b, a));
    return b.kind === 'arc' ? arcArc(a, b) : swap(cubicArc(b, a));
  }
  if (b.kind === 'line') return cubicLine(a, b);
  return b.kind === 'arc' ? cubicArc(a, b) : cubicMeetings(a, b);
};

/** The ends of one segment that lie on the other. */
const endsOn = (a: Segment, b: Segment): readonly Pair[] =>
  [0, 1].flatMap((t): Pair[] => {
    const near = nearestOn(b, pointOn(a, t));
    return near.distance <= touch ? [[t, near.t]] : [];
  });

/**
 * Where two segments meet: crossings, touches, and ends that rest on the other within 1e-9 mm; of a shared stretch, its
 * two ends. Places within 1e-6 mm of each other are told once, an end before what lies beside it.
 */
export const meetings = (a: Segment, b: Segment): readonly Meeting[] => {
  if (boundsApart(boundsOfSegment(a), boundsOfSegment(b), touch)) return [];
  const within = (t: number): boolean => t >= 0 && t <= 1;
  const crossings = curvesMeet(a, b).filter(([t, u]) => within(t) && within(u));
  const found: Meeting[] = [];
  for (const [t, u] of [...endsOn(a, b), ...swap(endsOn(b, a)), ...crossings]) {
    const point = t === 0 || t === 1 || (u !== 0 && u !== 1) ? pointOn(a, t) : pointOn(b, u);
    if (!found.some((m) => distance(m.point, point) <= same)) found.push({ t, u, point });
  }
  return found.sort((p, q) => p.t - q.t);
};

/** The points that two segments share, in the first one's order; of a shared stretch, its two ends. */
export const intersections = (a: Segment, b: Segment): Point[] => meetings(a, b).map((m) => m.point);

/** The points that two paths share, in the first one's order; a point at a joint is told once. */
export const pathIntersections = (a: Path, b: Path): Point[] => {
  const found: Point[] = [];
  const boxes = b.segments.map((segment) => ({ segment, box: boundsOfSegment(segment) }));
  for (const s of a.segments) {
    const box = boundsOfSegment(s);
    for (const point of boxes
      .filter((other) => !boundsApart(box, other.box, touch))
      .flatMap(({ segment }) => meetings(s, segment))
      .sort((p, q) => p.t - q.t)
      .map((m) => m.point))
      if (!found.some((p) => distance(p, point) <= same)) found.push(point);
  }
  return found;
};
