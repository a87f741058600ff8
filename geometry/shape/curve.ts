import { type CurveFactory, line } from 'd3-shape';
import { arc, arcEnd, arcStart } from './arc.ts';
import { joinTolerance, path } from './path.ts';
import { add, cross, distance, dot, lerp, scale, subtract } from './point.ts';
import type { Path, Point, Segment } from './types.ts';

/** What d3-shape draws into, after the HTML canvas's path methods; angles in radians, lengths in mm. */
export interface Recorder {
  moveTo(x: number, y: number): void;
  lineTo(x: number, y: number): void;
  bezierCurveTo(x1: number, y1: number, x2: number, y2: number, x: number, y: number): void;
  /** Raised to the cubic that is the same curve. */
  quadraticCurveTo(x1: number, y1: number, x: number, y: number): void;
  /** Joined by a line to what was drawn before. */
  arc(x: number, y: number, radius: number, startAngle: number, endAngle: number, anticlockwise?: boolean): void;
  /** A line, then an arc that rounds the corner at (x1, y1) on the way to (x2, y2). */
  arcTo(x1: number, y1: number, x2: number, y2: number, radius: number): void;
  rect(x: number, y: number, w: number, h: number): void;
  closePath(): void;
  /** What has been drawn so far, a path for each move. */
  paths(): Path[];
}

/** A turn no finer than this (radians or mm) is none. */
const fine = 1e-9;

const canvasSweep = (start: number, end: number, anticlockwise: boolean): number => {
  const turn = 2 * Math.PI;
  const sense = anticlockwise ? -1 : 1;
  const span = sense * (end - start);
  return sense * (span >= turn ? turn : span - turn * Math.floor(span / turn));
};

/**
 * A recorder for d3-shape's curves: it keeps what is drawn as exact lines, arcs and cubics. Its methods throw RangeError when given a
 * coordinate that is no finite number, or when a line is drawn before any move.
 */
export const recorder = (): Recorder => {
  const done: Path[] = [];
  let from: Point | undefined;
  let at: Point | undefined;
  let segments: Segment[] = [];

  const finite = (x: number, y: number): Point => {
    if (!(Number.isFinite(x) && Number.isFinite(y)))
      throw new RangeError(`A curve passes through (${x}, ${y}); both must be finite numbers of mm.`);
    return { x, y };
  };
  const standing = (): Point => {
    if (!at) throw new RangeError('A curve is drawn before it has a beginning; move to its first point first.');
    return at;
  };
  const finish = (closed: boolean): void => {
    if (segments.length > 0) done.push(path(segments, closed));
    segments = [];
  };
  const moveTo = (x: number, y: number): void => {
    finish(false);
    from = finite(x, y);
    at = from;
  };
  const draw = (s: Segment, to: Point): void => {
    segments.push(s);
    at = to;
  };
  const lineTo = (x: number, y: number): void => {
    const to = finite(x, y);
    const here = standing();
    if (distance(here, to) > fine) draw({ kind: 'line', from: here, to }, to);
  };
  const bezierCurveTo = (x1: number, y1: number, x2: number, y2: number, x: number, y: number): void => {
    const to = finite(x, y);
    draw({ kind: 'cubic', from: standing(), c1: finite(x1, y1), c2: finite(x2, y2), to }, to);
  };
  const closePath = (): void => {
    const here = standing();
    if (!from) return;
    if (segments.length > 0 && distance(here, from) > joinTolerance) draw({ kind: 'line', from: here, to: from }, from);
    finish(true);
    at = from;
  };

  return {
    moveTo,
    lineTo,
    bezierCurveTo,
    quadraticCurveTo(x1, y1, x, y) {
      const a = lerp(standing(), finite(x1, y1), 2 / 3);
      const b = lerp(finite(x, y), { x: x1, y: y1 }, 2 / 3);
      bezierCurveTo(a.x, a.y, b.x, b.y, x, y);
    },
    arc(x, y, radius, startAngle, endAngle, anticlockwise = false) {
      const round = arc(finite(x, y), radius, startAngle, canvasSweep(startAngle, endAngle, anticlockwise));
      const first = arcStart(round);
      if (at) lineTo(first.x, first.y);
      else moveTo(first.x, first.y);
      if (Math.abs(round.sweep) > fine) draw(round, arcEnd(round));
    },
    arcTo(x1, y1, x2, y2, radius) {
      const corner = finite(x1, y1);
      const back = subtract(standing(), corner);
      const on = subtract(finite(x2, y2), corner);
      const turn = Math.PI - Math.abs(Math.atan2(cross(back, on), dot(back, on)));
      if (!(turn > fine) || !(Math.PI - turn > fine) || !(radius > 0)) {
        lineTo(x1, y1);
        return;
      }
      // The tangent points lie r·tan(turn/2) before and after the corner.
      const reach = radius * Math.tan(turn / 2);
      const sense = cross(back, on) < 0 ? 1 : -1;
      const along = scale(back, 1 / Math.hypot(back.x, back.y));
      const touch = add(corner, scale(along, reach));
      const centre = add(touch, { x: sense * radius * along.y, y: -sense * radius * along.x });
      const round = arc(centre, radius, Math.atan2(touch.y - centre.y, touch.x - centre.x), sense * turn);
      lineTo(touch.x, touch.y);
      draw(round, arcEnd(round));
    },
    rect(x, y, w, h) {
      moveTo(x, y);
      lineTo(x + w, y);
      lineTo(x + w, y + h);
      lineTo(x, y + h);
      closePath();
    },
    closePath,
    paths: () => (segments.length > 0 ? [...done, path([...segments], false)] : [...done]),
  };
};

/** Points that repeat the one before add nothing, and make some curves divide by 0. */
const withoutRepeats = (points: readonly Point[], closed: boolean): readonly Point[] =>
  points.filter((p, i) => {
    const before = i > 0 ? points[i - 1] : closed ? points.at(-1) : undefined;
    return points.length === 1 || !before || !(distance(before, p) <= fine);
  });

/**
 * The curve that one of d3-shape's curve factories draws through (or, for a basis curve, near) the points, as exact lines and cubics. A
 * closed one is closed here, with a line if the curve itself does not return: several of d3-shape's closed curves say nothing at their end.
 * Repeated neighbouring points are dropped. Throws RangeError when fewer than two different points are left, three for a closed curve, or
 * when the factory cannot draw them (a monotone curve needs x to run one way).
 */
export const throughPoints = (
  points: readonly Point[],
  curve: CurveFactory,
  { closed = false }: { readonly closed?: boolean } = {},
): Path => {
  const kept = withoutRepeats(points, closed);
  const least = closed ? 3 : 2;
  if (kept.length < least)
    throw new RangeError(`A curve has ${kept.length} different points; it needs at least ${least}. Add points to it.`);
  const drawn = recorder();
  // The recorder has all that d3-shape's curves call of a canvas; its types ask for the whole canvas.
  const context = drawn as unknown as Parameters<ReturnType<typeof line<Point>>['context']>[0];
  line<Point>(
    (p) => p.x,
    (p) => p.y,
  )
    .curve(curve)
    .context(context)([...kept]);
  if (closed && !drawn.paths()[0]?.closed) drawn.closePath();
  const [only] = drawn.paths();
  if (!only) throw new RangeError(`This curve draws nothing through ${kept.length} points; add points to it.`);
  return only;
};
