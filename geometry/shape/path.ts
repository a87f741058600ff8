import { arcEnd, arcFromTo, arcStart } from './arc.ts';
import { distance } from './point.ts';
import type { Path, Point, Segment } from './types.ts';

/** Two ends no farther apart than this (mm) are one point. */
export const joinTolerance = 1e-6;

export const segmentStart = (s: Segment): Point => (s.kind === 'arc' ? arcStart(s) : s.from);

export const segmentEnd = (s: Segment): Point => (s.kind === 'arc' ? arcEnd(s) : s.to);

const first = (segments: readonly Segment[]): Segment => {
  const s = segments[0];
  if (!s) throw new RangeError('A path has no segments; it needs at least one.');
  return s;
};

const last = (segments: readonly Segment[]): Segment => segments.at(-1) ?? first(segments);

/** The path's first point. Throws RangeError when it has no segments. */
export const start = (p: Path): Point => segmentStart(first(p.segments));

/** The path's last point. Throws RangeError when it has no segments. */
export const end = (p: Path): Point => segmentEnd(last(p.segments));

const mustMeet = (a: Point, b: Point, where: string): void => {
  const gap = distance(a, b);
  if (!(gap <= joinTolerance))
    throw new RangeError(
      `A path is torn ${where}: (${a.x}, ${a.y}) and (${b.x}, ${b.y}) are ${gap} mm apart, at most ${joinTolerance} mm is allowed; begin each segment where the one before ends.`,
    );
};

/** A path from its segments. Throws RangeError when there are none or they do not join up within 1e-6 mm. */
export const path = (segments: readonly Segment[], closed: boolean): Path => {
  first(segments);
  segments.forEach((s, i) => {
    const before = segments[i - 1];
    if (before) mustMeet(segmentEnd(before), segmentStart(s), `between segments ${i} and ${i + 1}`);
  });
  if (closed) mustMeet(segmentEnd(last(segments)), segmentStart(first(segments)), 'where it should close');
  return { segments, closed };
};

export const reverseSegment = (s: Segment): Segment => {
  switch (s.kind) {
    case 'line':
      return { kind: 'line', from: s.to, to: s.from };
    case 'arc':
      return { ...s, start: s.start + s.sweep, sweep: -s.sweep };
    case 'cubic':
      return { kind: 'cubic', from: s.to, c1: s.c2, c2: s.c1, to: s.from };
  }
};

/** The same path, run the other way. */
export const reversePath = (p: Path): Path => ({
  segments: p.segments.toReversed().map(reverseSegment),
  closed: p.closed,
});

/** Draws a path segment by segment. Each step gives a new pen; none changes the one before it. */
export interface Pen {
  /** Where the pen stands. */
  readonly at: Point;
  /** A straight line; none is drawn to where the pen already stands. */
  line(to: Point): Pen;
  /** The minor arc of a radius, `turn` + from +x towards +y. Throws RangeError as arcFromTo does. */
  arc(to: Point, radius: number, turn: 1 | -1): Pen;
  cubic(c1: Point, c2: Point, to: Point): Pen;
  /** The closed path: a closing line is added unless the pen already stands at the beginning. */
  close(): Path;
  /** The open path so far. */
  path(): Path;
}

const penAt = (from: Point, at: Point, drawn: readonly Segment[]): Pen => {
  const draw = (s: Segment, to: Point): Pen => penAt(from, to, [...drawn, s]);
  const line = (to: Point): Pen =>
    distance(at, to) <= 1e-9 ? penAt(from, at, drawn) : draw({ kind: 'line', from: at, to }, to);
  return {
    at,
    line,
    arc: (to, radius, turn) => draw(arcFromTo(at, to, radius, turn), to),
    cubic: (c1, c2, to) => draw({ kind: 'cubic', from: at, c1, c2, to }, to),
    close: () =>
      distance(at, from) <= joinTolerance
        ? path(drawn, true)
        : path([...drawn, { kind: 'line', from: at, to: from }], true),
    path: () => path(drawn, false),
  };
};

/** A pen set down at a point. */
export const pen = (from: Point): Pen => penAt(from, from, []);

/** Straight lines from point to point; a closed one returns to the first. Throws RangeError for fewer than two different points. */
export const polyline = (points: readonly Point[], closed: boolean): Path => {
  const [from, ...rest] = points;
  if (!from) throw new RangeError('A polyline has no points; it needs at least two.');
  const drawn = rest.reduce((p, to) => p.line(to), pen(from));
  return closed ? drawn.close() : drawn.path();
};
