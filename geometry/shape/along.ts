import { cubicAcceleration, cubicAt, cubicPart, cubicSpeed } from './cubic.ts';
import { distance, lerp, polar, scale, subtract } from './point.ts';
import type { Point, Segment } from './types.ts';

/** The point at t of a segment, from its start (t = 0) to its end (t = 1). Even in length for lines and arcs only. */
export const pointOn = (segment: Segment, t: number): Point => {
  switch (segment.kind) {
    case 'line':
      return lerp(segment.from, segment.to, t);
    case 'arc':
      return polar(segment.centre, segment.radius, segment.start + segment.sweep * t);
    case 'cubic':
      return cubicAt(segment, t);
  }
};

const heading = (segment: Segment, t: number): Point => {
  switch (segment.kind) {
    case 'line':
      return subtract(segment.to, segment.from);
    case 'arc': {
      const a = segment.start + segment.sweep * t;
      const sense = Math.sign(segment.sweep);
      return { x: -sense * Math.sin(a), y: sense * Math.cos(a) };
    }
    case 'cubic': {
      const { from, c1, c2, to } = segment;
      const size = Math.max(distance(from, c1), distance(c1, c2), distance(c2, to));
      const speed = cubicSpeed(segment, t);
      if (Math.hypot(speed.x, speed.y) > 1e-9 * size) return speed;
      // A handle drawn in, or a cusp: the curve sets out with its acceleration and arrives against it.
      const bend = cubicAcceleration(segment, t);
      if (Math.hypot(bend.x, bend.y) > 1e-9 * size) return scale(bend, t < 0.5 ? 1 : -1);
      return subtract(to, from);
    }
  }
};

/** The unit vector along a segment at t, in the sense in which it runs. Throws RangeError when the segment has no length. */
export const tangentOn = (segment: Segment, t: number): Point => {
  const h = heading(segment, t);
  const size = Math.hypot(h.x, h.y);
  if (!(size > 0)) throw new RangeError(`A ${segment.kind} has no length, so it has no direction; leave it out.`);
  return { x: h.x / size, y: h.y / size };
};

/** The part of a segment from t0 to t1, 0 ≤ t0 < t1 ≤ 1. */
export const partOf = (segment: Segment, t0: number, t1: number): Segment => {
  switch (segment.kind) {
    case 'line':
      return { kind: 'line', from: lerp(segment.from, segment.to, t0), to: lerp(segment.from, segment.to, t1) };
    case 'arc':
      return { ...segment, start: segment.start + segment.sweep * t0, sweep: segment.sweep * (t1 - t0) };
    case 'cubic':
      return cubicPart(segment, t0, t1);
  }
};
