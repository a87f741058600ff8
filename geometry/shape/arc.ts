import { cross, distance, dot, polar, subtract } from './point.ts';
import type { Arc, Path, Point } from './types.ts';

const fullTurn = 2 * Math.PI;

/**
 * An arc from its centre, radius (mm), first angle and sweep (radians, + from +x towards +y).
 * Throws RangeError unless the radius is more than 0 and the sweep at most one full turn.
 */
export const arc = (centre: Point, radius: number, start: number, sweep: number): Arc => {
  if (!(radius > 0 && Number.isFinite(radius)))
    throw new RangeError(`An arc’s radius is ${radius} mm; it must be a number above 0 mm.`);
  if (!(Math.abs(sweep) <= fullTurn + 1e-12))
    throw new RangeError(`An arc’s sweep is ${sweep} radians; it must be at most one full turn (2π).`);
  return { kind: 'arc', centre, radius, start, sweep: Math.max(-fullTurn, Math.min(fullTurn, sweep)) };
};

/** The arc's first point. */
export const arcStart = (a: Arc): Point => polar(a.centre, a.radius, a.start);

/** The arc's last point. */
export const arcEnd = (a: Arc): Point => polar(a.centre, a.radius, a.start + a.sweep);

const spot = (p: Point): string => `(${p.x}, ${p.y})`;

/**
 * The minor arc of a radius (mm) between two points; `turn` is the sense in which it runs, + from +x towards +y.
 * Throws RangeError when the radius is less than half the chord, or when the two points are one.
 */
export const arcFromTo = (from: Point, to: Point, radius: number, turn: 1 | -1): Arc => {
  const chord = distance(from, to);
  if (!(chord > 0)) throw new RangeError(`No one arc runs from ${spot(from)} to itself; give two different points.`);
  const half = chord / 2;
  // A semicircle's radius may arrive a rounding error short of half its chord.
  if (!(radius >= half * (1 - 1e-12)))
    throw new RangeError(
      `An arc of radius ${radius} mm cannot span a chord of ${chord} mm; its radius must be at least ${half} mm.`,
    );
  const r = Math.max(radius, half);
  const rise = Math.sqrt((r - half) * (r + half));
  const centre = {
    x: (from.x + to.x) / 2 - (turn * rise * (to.y - from.y)) / chord,
    y: (from.y + to.y) / 2 + (turn * rise * (to.x - from.x)) / chord,
  };
  return arc(centre, r, Math.atan2(from.y - centre.y, from.x - centre.x), turn * 2 * Math.asin(Math.min(1, half / r)));
};

/** The arc from a through b to c. Throws RangeError when the three lie on one line, or two of them are one. */
export const arcThrough = (a: Point, b: Point, c: Point): Arc => {
  const ab = subtract(b, a);
  const ac = subtract(c, a);
  const twice = cross(ab, ac);
  const span = Math.hypot(ab.x, ab.y) * Math.hypot(ac.x, ac.y);
  if (!(Math.abs(twice) > 1e-12 * span) || distance(b, c) === 0)
    throw new RangeError(
      `No arc runs through ${spot(a)}, ${spot(b)} and ${spot(c)}: they lie on one line; move the middle point off it.`,
    );
  // The circumcentre, seen from a.
  const bb = dot(ab, ab);
  const cc = dot(ac, ac);
  const ux = (ac.y * bb - ab.y * cc) / (2 * twice);
  const uy = (ab.x * cc - ac.x * bb) / (2 * twice);
  const start = Math.atan2(-uy, -ux);
  const end = Math.atan2(ac.y - uy, ac.x - ux);
  const sense = Math.sign(twice);
  let sweep = end - start;
  if (sense * sweep <= 0) sweep += sense * fullTurn;
  return arc({ x: a.x + ux, y: a.y + uy }, Math.hypot(ux, uy), start, sweep % fullTurn);
};

/** A whole circle as a closed path, turning from +x towards +y. */
export const circle = (centre: Point, radius: number): Path => ({
  segments: [arc(centre, radius, 0, fullTurn)],
  closed: true,
});
