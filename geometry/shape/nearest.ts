import { pointOn } from './along.ts';
import { bernsteinDerivative, bernsteinProduct, bernsteinRoots } from './bernstein.ts';
import { coordinates } from './cubic.ts';
import { distance, dot, subtract } from './point.ts';
import type { Arc, Path, Point, Segment } from './types.ts';

/** The place on a segment nearest to a point: its parameter, itself and how far away it is (mm). */
export interface Nearest {
  readonly t: number;
  readonly point: Point;
  readonly distance: number;
}

/** The parameter at which an arc faces a point; below 0 or above 1 beyond the arc's ends, from the end that is nearer. */
export const arcParameter = (a: Arc, p: Point): number => {
  const turn = 2 * Math.PI;
  const span = Math.abs(a.sweep);
  const raw = (Math.atan2(p.y - a.centre.y, p.x - a.centre.x) - a.start) * (a.sweep < 0 ? -1 : 1);
  const along = raw - turn * Math.floor(raw / turn);
  return along - span > turn - along ? (along - turn) / span : along / span;
};

const candidates = (segment: Segment, p: Point): readonly number[] => {
  switch (segment.kind) {
    case 'line': {
      const d = subtract(segment.to, segment.from);
      const size = dot(d, d);
      return size > 0 ? [dot(subtract(p, segment.from), d) / size] : [];
    }
    case 'arc':
      return segment.sweep === 0 ? [] : [arcParameter(segment, p)];
    case 'cubic': {
      // The way to the point stands square on the curve: (P − p)·P′ = 0, of the fifth degree.
      const { x, y } = coordinates(segment);
      const alongX = bernsteinProduct(
        x.map((v) => v - p.x),
        bernsteinDerivative(x),
      );
      const alongY = bernsteinProduct(
        y.map((v) => v - p.y),
        bernsteinDerivative(y),
      );
      return bernsteinRoots(alongX.map((v, i) => v + (alongY[i] as number)));
    }
  }
};

/** The place on a segment nearest to a point. */
export const nearestOn = (segment: Segment, p: Point): Nearest =>
  [0, 1, ...candidates(segment, p).filter((t) => t > 0 && t < 1)]
    .map((t) => {
      const at = pointOn(segment, t);
      return { t, point: at, distance: distance(at, p) };
    })
    .reduce((best, n) => (n.distance < best.distance ? n : best));

/** The place on a segment farthest from a point. */
export const farthestOn = (segment: Segment, p: Point): Nearest => {
  // Of an arc, the place that faces away from the point.
  const away = segment.kind === 'arc' ? subtract({ x: 2 * segment.centre.x, y: 2 * segment.centre.y }, p) : p;
  return [0, 1, ...candidates(segment, away).filter((t) => t > 0 && t < 1)]
    .map((t) => {
      const at = pointOn(segment, t);
      return { t, point: at, distance: distance(at, p) };
    })
    .reduce((best, n) => (n.distance > best.distance ? n : best));
};

/** The place on a segment that lies farthest in a direction (a unit vector), with how far that is from the origin, mm. */
export const foremostOn = (segment: Segment, way: Point): Nearest => {
  const turns = (): readonly number[] => {
    if (segment.kind === 'line') return [];
    if (segment.kind === 'arc')
      return segment.sweep === 0
        ? []
        : [arcParameter(segment, { x: segment.centre.x + way.x, y: segment.centre.y + way.y })];
    const { x, y } = coordinates(segment);
    return bernsteinRoots(bernsteinDerivative(x.map((v, k) => v * way.x + (y[k] as number) * way.y)));
  };
  return [0, 1, ...turns().filter((t) => t > 0 && t < 1)]
    .map((t) => {
      const at = pointOn(segment, t);
      return { t, point: at, distance: dot(at, way) };
    })
    .reduce((best, n) => (n.distance > best.distance ? n : best));
};

/** The distance from a point to a path's line, mm (not to the area inside). */
export const distanceTo = (path: Path, p: Point): number =>
  path.segments.reduce((least, s) => Math.min(least, nearestOn(s, p).distance), Number.POSITIVE_INFINITY);
