import { heightOn, placeOver } from '../bridge/graph.ts';
import { pointOn, tangentOn } from '../shape/along.ts';
import { arc } from '../shape/arc.ts';
import { farthestOn, foremostOn } from '../shape/nearest.ts';
import { end, start } from '../shape/path.ts';
import { distance, dot, scale, subtract } from '../shape/point.ts';
import { drop } from '../shape/sagitta.ts';
import type { Arc, Line, Path, Point } from '../shape/types.ts';

/*
 * A radius gauge laid over a surface, as the repairer holds it against the light. Both are seen in one plane, x across and y DOWN, mm; the surface is a graph that runs in the sense of +x. The gauge's edge is an arc that
 * bulges up, or straight for `flat`. It is pressed down in the middle of the surface, and slides and tips until it rests: of all ways to lie that nowhere go through the surface, the one in which the
 * gauge is lowest over the middle. So it rests in two places, one to either side, or on the middle alone.
 *
 * On an arc of radius R and a chord c this gives what any handbook has: a gauge of a smaller radius r rests on the ends, and the light in the middle is the difference of the sagittas,
 * s(r) − s(R) with s(R) = R − √(R² − c²/4); a gauge of a larger one rests on the middle, and the light at the ends is that difference turned round.
 */

/** The gauge's edge as it lies: of a circle, its centre, which is below; or straight, a point of it and its direction towards +x, of length 1. */
export type Lying =
  | { readonly kind: 'round'; readonly radius: number; readonly centre: Point }
  | { readonly kind: 'straight'; readonly through: Point; readonly way: Point };

export interface Rest {
  readonly lying: Lying;
  /** Where it touches, from −x to +x: two places, or one. */
  readonly touches: readonly Point[];
}

/** It is through the surface nowhere by more than this, mm; touching places nearer to each other than that many times a million are one. */
const through = 1e-10;
/** Each step lays it on a place that it went through; far fewer are needed. */
const mostSteps = 200;

/** How far a surface sticks out of the gauge's edge, mm, and where it does so most. */
const sticksOut = (surface: Path, lying: Lying): { readonly by: number; readonly point: Point } => {
  const up = lying.kind === 'straight' ? { x: lying.way.y, y: -lying.way.x } : undefined;
  return surface.segments
    .map((s) => {
      if (lying.kind === 'round') {
        const far = farthestOn(s, lying.centre);
        return { by: far.distance - lying.radius, point: far.point };
      }
      const high = foremostOn(s, up as Point);
      return { by: dot(subtract(high.point, lying.through), up as Point), point: high.point };
    })
    .reduce((most, one) => (one.by > most.by ? one : most));
};

/** The gauge on one place, along a direction towards +x. */
const on = (radius: number | 'flat', p: Point, way: Point): Lying =>
  radius === 'flat'
    ? { kind: 'straight', through: p, way }
    : { kind: 'round', radius, centre: { x: p.x - way.y * radius, y: p.y + way.x * radius } };

/** The gauge on two places; undefined where it is too tight to span them. */
const across = (radius: number | 'flat', a: Point, b: Point): Lying | undefined => {
  const chord = distance(a, b);
  const way = scale(subtract(b, a), 1 / chord);
  if (radius === 'flat') return { kind: 'straight', through: a, way };
  const half = chord / 2;
  if (radius < half) return undefined;
  const down = Math.sqrt((radius - half) * (radius + half));
  return {
    kind: 'round',
    radius,
    centre: { x: (a.x + b.x) / 2 - way.y * down, y: (a.y + b.y) / 2 + way.x * down },
  };
};

/** The least radius that spans a surface from end to end, mm: half its chord. */
export const leastRadius = (surface: Path): number => distance(start(surface), end(surface)) / 2;

/**
 * Where a gauge of a radius (mm, or `flat`) comes to rest on a surface, exactly: on the middle, where its edge laid along the surface there goes through it nowhere; else on the two places to either side of the middle between which it hangs. These are
 * found as Remez finds the places where a curve misses most: it is laid on both ends, and each step takes the place where it goes through the surface most in place of the one on that side. Undefined where the radius is less than `leastRadius`.
 */
export const restOf = (surface: Path, radius: number | 'flat'): Rest | undefined => {
  if (radius !== 'flat' && radius < leastRadius(surface)) return undefined;
  let [left, right] = [start(surface), end(surface)];
  const middle = (left.x + right.x) / 2;
  const { segment, t } = placeOver(surface, middle);
  const top = pointOn(segment, t);
  const flush = on(radius, top, tangentOn(segment, t));
  if (sticksOut(surface, flush).by <= through) return { lying: flush, touches: [top] };
  for (let step = 0; step < mostSteps; step += 1) {
    const lying = across(radius, left, right);
    if (lying === undefined) return undefined;
    const { by, point } = sticksOut(surface, lying);
    if (by <= through) return { lying, touches: distance(left, right) < through * 1e6 ? [left] : [left, right] };
    if (point.x < middle) left = point;
    else right = point;
  }
  return undefined;
};

/** The page height of the gauge's edge at x. Throws a RangeError beyond its radius. */
export const edgeAt = (lying: Lying, x: number): number => {
  if (lying.kind === 'straight') {
    const { through: p, way } = lying;
    return p.y + (way.y / way.x) * (x - p.x);
  }
  const { centre, radius } = lying;
  return centre.y - radius + drop(radius, x - centre.x);
};

/** The light between a surface and the gauge at x, straight up, mm. */
export const lightAt = (surface: Path, { lying }: Rest, x: number): number => heightOn(surface, x) - edgeAt(lying, x);

/** The gauge's edge between two places, as far as it reaches. */
export const edgeBetween = (lying: Lying, from: number, to: number): Arc | Line => {
  if (lying.kind === 'straight')
    return {
      kind: 'line',
      from: { x: from, y: edgeAt(lying, from) },
      to: { x: to, y: edgeAt(lying, to) },
    };
  const { centre, radius } = lying;
  const angle = (x: number) => {
    const off = Math.max(-radius, Math.min(radius, x - centre.x));
    return Math.atan2(-Math.sqrt((radius - off) * (radius + off)), off);
  };
  return arc(centre, radius, angle(from), angle(to) - angle(from));
};
