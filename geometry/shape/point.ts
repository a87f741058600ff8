import type { Point } from './types.ts';

export const point = (x: number, y: number): Point => ({ x, y });

export const add = (a: Point, b: Point): Point => ({ x: a.x + b.x, y: a.y + b.y });

export const subtract = (a: Point, b: Point): Point => ({ x: a.x - b.x, y: a.y - b.y });

export const scale = (p: Point, k: number): Point => ({ x: p.x * k, y: p.y * k });

export const dot = (a: Point, b: Point): number => a.x * b.x + a.y * b.y;

/** Twice the signed area of the triangle 0ab: + when b is turned from a by going from +x towards +y. */
export const cross = (a: Point, b: Point): number => a.x * b.y - a.y * b.x;

/** The distance between two points, mm. */
export const distance = (a: Point, b: Point): number => Math.hypot(b.x - a.x, b.y - a.y);

/** The point at t on the straight line from a (t = 0) to b (t = 1); both ends are met exactly. */
export const lerp = (a: Point, b: Point, t: number): Point => ({
  x: a.x * (1 - t) + b.x * t,
  y: a.y * (1 - t) + b.y * t,
});

/** The point turned by an angle in radians, + from +x towards +y, about a point or about the origin. */
export const rotate = (p: Point, angle: number, about: Point = { x: 0, y: 0 }): Point => {
  const c = Math.cos(angle);
  const s = Math.sin(angle);
  const dx = p.x - about.x;
  const dy = p.y - about.y;
  return { x: about.x + c * dx - s * dy, y: about.y + s * dx + c * dy };
};

/** The point at a distance from a centre, in the direction of an angle in radians. */
export const polar = (centre: Point, radius: number, angle: number): Point => ({
  x: centre.x + radius * Math.cos(angle),
  y: centre.y + radius * Math.sin(angle),
});
