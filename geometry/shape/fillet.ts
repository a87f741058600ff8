import { partOf, tangentOn } from './along.ts';
import { arc } from './arc.ts';
import { besideSegment } from './beside.ts';
import { meetings } from './intersect.ts';
import { nearestOn } from './nearest.ts';
import { segmentEnd } from './path.ts';
import { cross, distance, dot, subtract } from './point.ts';
import type { Arc, Segment } from './types.ts';

/** Two segments that meet in a corner, with the corner rounded: what is left of each, and the arc between. */
export interface Fillet {
  readonly before: Segment;
  /** Undefined where the two meet without a corner, so that there is nothing to round. */
  readonly arc: Arc | undefined;
  readonly after: Segment;
}

/** An arc no longer than this (mm) rounds nothing: its ends would be one point. */
const noArc = 1e-6;
/** What has to be left of a segment, as a share of it. */
const least = 1e-9;

/**
 * The corner where one line or arc ends and the next begins, rounded by an exact arc of a radius (mm) that touches both: its centre lies where the two curves that run at that radius beside them meet. Undefined when it
 * would touch one of them beyond its end.
 */
export const fillet = (before: Segment, after: Segment, radius: number): Fillet | undefined => {
  const [into, out] = [tangentOn(before, 1), tangentOn(after, 0)];
  const turn = Math.atan2(cross(into, out), dot(into, out));
  if (Math.abs(turn) * radius <= noArc) return { before, arc: undefined, after };
  const side = -Math.sign(turn) * radius;
  const [besideBefore, besideAfter] = [besideSegment(before, side), besideSegment(after, side)];
  const corner = segmentEnd(before);
  const centre = besideBefore
    .flatMap((a) => besideAfter.flatMap((b) => meetings(a.segment, b.segment).map(({ point }) => point)))
    .toSorted((p, q) => distance(p, corner) - distance(q, corner))[0];
  if (centre === undefined) return undefined;
  const [from, to] = [nearestOn(before, centre), nearestOn(after, centre)];
  if (!(from.t > least && to.t < 1 - least)) return undefined;
  const [a, b] = [subtract(from.point, centre), subtract(to.point, centre)];
  return {
    before: partOf(before, 0, from.t),
    arc: arc(centre, radius, Math.atan2(a.y, a.x), Math.atan2(cross(a, b), dot(a, b))),
    after: partOf(after, to.t, 1),
  };
};
