import { footprints } from '../../../geometry/bridge/footprints/index.ts';
import type { Job } from '../../../geometry/job.ts';
import { partOf } from '../../../geometry/shape/along.ts';
import { distance, lengthOf, pointOn, segmentEnd, segmentStart, tangentOn } from '../../../geometry/shape/index.ts';
import { cross, dot } from '../../../geometry/shape/point.ts';
import type { Point, Segment } from '../../../geometry/shape/types.ts';
import { freeKey } from '../free-key.ts';

type Bridge = Job['bridge'];
type OutlinePoint = Bridge['points'][number];
interface Turning {
  readonly at: Point;
  readonly isCorner: boolean;
}

/** Closer than this to the centre line a point lies on it, mm. */
const onCentre = 1e-6;
/** How far a curve may bulge between two points, mm: a smooth curve through them then strays from it by less than 0.1 mm. */
const mostBulge = 0.15;
/** A turn that is seen as a corner, radians. */
const sharp = 0.01;

const angleBetween = (a: Point, b: Point): number => Math.abs(Math.atan2(cross(a, b), dot(a, b)));

/** Where a segment crosses the centre line, as its parameter, by halving; undefined where its ends lie on the same side. */
const crossing = (s: Segment): number | undefined => {
  const side = Math.sign(segmentStart(s).x);
  if (Math.min(Math.abs(segmentStart(s).x), Math.abs(segmentEnd(s).x)) < onCentre) return undefined;
  if (side === Math.sign(segmentEnd(s).x)) return undefined;
  let [low, high] = [0, 1];
  for (let k = 0; k < 60; k += 1) {
    const middle = (low + high) / 2;
    if (Math.sign(pointOn(s, middle).x) === side) low = middle;
    else high = middle;
  }
  return low;
};

/** The part of a closed outline on the treble side, in the sense in which it runs: from the front to the rear. */
const trebleHalf = (segments: readonly Segment[]): readonly Segment[] => {
  const split = segments.flatMap((s) => {
    const t = crossing(s);
    return t === undefined ? [s] : [partOf(s, 0, t), partOf(s, t, 1)];
  });
  const isTreble = (s: Segment | undefined) => s !== undefined && pointOn(s, 0.5).x > onCentre;
  const first = split.findIndex((s, k) => isTreble(s) && !isTreble(split.at(k - 1)));
  return first < 0 ? [] : [...split.slice(first), ...split.slice(0, first)].filter(isTreble);
};

/** Points on the inside of a segment, close enough for a smooth curve to follow it; none on a line. An arc that turns by a over a length l bulges by about l·a/8. */
const between = (s: Segment): readonly Turning[] => {
  if (s.kind === 'line') return [];
  const turn = s.kind === 'arc' ? Math.abs(s.sweep) : angleBetween(tangentOn(s, 0), tangentOn(s, 1));
  const steps = Math.max(2, Math.ceil(Math.sqrt((lengthOf(s) * turn) / (8 * mostBulge))));
  return Array.from({ length: steps - 1 }, (_, k) => ({ at: pointOn(s, (k + 1) / steps), isCorner: false }));
};

/**
 * The treble half of a bridge's present outline as points of a free one, from the front to the rear: corners where it turns sharply or a straight edge begins or ends, smooth points along its
 * curves, so many that the free outline follows them closely. Empty where the outline cannot be drawn.
 */
export const halfOutline = (bridge: Bridge): readonly OutlinePoint[] => {
  const footprint = footprints[bridge.footprint];
  if (footprint.problems(bridge, String).length > 0) return [];
  const half = trebleHalf(footprint.outline(bridge).segments);
  const front = footprint.frontAtCentre?.(bridge) ?? 0;
  const turnings = half.flatMap((s, k): readonly Turning[] => {
    const before = half[k - 1];
    // On the centre line the mirror image goes on: a line needs no point there.
    const begins =
      before === undefined
        ? s.kind === 'line'
          ? []
          : [{ at: segmentStart(s), isCorner: false }]
        : [
            {
              at: segmentStart(s),
              isCorner:
                before.kind === 'line' ||
                s.kind === 'line' ||
                angleBetween(tangentOn(before, 1), tangentOn(s, 0)) > sharp,
            },
          ];
    const isLast = k === half.length - 1 && s.kind !== 'line';
    return [...begins, ...between(s), ...(isLast ? [{ at: segmentEnd(s), isCorner: false }] : [])];
  });
  return turnings.map(({ at, isCorner }, k) => ({
    id: `point-${k + 1}`,
    across: Math.abs(at.x) < onCentre ? 0 : at.x,
    along: at.y - front,
    turn: isCorner ? 'corner' : 'smooth',
  }));
};

const mirrorOf = <P extends { readonly across: number }>(point: P): P => ({ ...point, across: -point.across });

/** The points of a mirrored treble half followed by its image's, each side its own; those on the centre line stand once. */
export const bothHalves = (points: readonly OutlinePoint[]): readonly OutlinePoint[] => {
  const all = [...points];
  for (const point of points.filter(({ across }) => across !== 0).toReversed())
    all.push({ ...mirrorOf(point), id: freeKey(all, 'point') });
  return all;
};

/** Those points of a whole outline that may be mirrored, from the front to the rear. */
export const trebleOnly = (points: readonly OutlinePoint[]): readonly OutlinePoint[] => {
  const isTreble = (point: OutlinePoint | undefined) => point !== undefined && point.across >= 0;
  const first = points.findIndex((point, k) => isTreble(point) && !isTreble(points.at(k - 1)));
  return [...points.slice(Math.max(0, first)), ...points.slice(0, Math.max(0, first))].filter(isTreble);
};

/** A free outline's points with one more where it lengthens the way round least. */
export const withPoint = ({ points, mirrored }: Bridge, added: OutlinePoint): readonly OutlinePoint[] => {
  const at = ({ across, along }: OutlinePoint): Point => ({ x: across, y: along });
  const [first, last] = [points[0], points.at(-1)];
  if (first === undefined || last === undefined) return [added];
  const [beforeFirst, afterLast] = mirrored === 'yes' ? [mirrorOf(first), mirrorOf(last)] : [last, first];
  const detours = Array.from({ length: points.length + 1 }, (_, k) => {
    const [from, to] = [at(points[k - 1] ?? beforeFirst), at(points[k] ?? afterLast)];
    return distance(from, at(added)) + distance(at(added), to) - distance(from, to);
  });
  const place = detours.indexOf(Math.min(...detours));
  return [...points.slice(0, place), added, ...points.slice(place)];
};
