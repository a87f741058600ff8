import { curveCatmullRom, curveCatmullRomClosed } from 'd3-shape';
import type { Job } from '../../job.ts';
import type { Problem } from '../../problem.ts';
import { throughPoints } from '../../shape/curve.ts';
import { pathIntersections } from '../../shape/intersect.ts';
import { area, bounds } from '../../shape/measure.ts';
import { path, polyline, reversePath } from '../../shape/path.ts';
import { distance } from '../../shape/point.ts';
import { ownMeeting } from '../../shape/simple.ts';
import { translate } from '../../shape/transform.ts';
import type { Path, Point } from '../../shape/types.ts';
import type { Footprint } from './footprint.ts';

type Bridge = Job['bridge'];
type Given = Pick<Bridge, 'points' | 'mirrored'>;

interface Turning {
  readonly point: Point;
  readonly isCorner: boolean;
}

/** The fewest points that the whole outline needs. */
const fewest = 3;

/** Points no farther apart than this (mm) are one. */
const same = 1e-6;

/** The least area worth the name of an outline, mm². */
const leastArea = 1;

/** Points that repeat their neighbour stand once; a corner, if either is one. */
const withoutRepeats = (turnings: readonly Turning[]): readonly Turning[] => {
  const kept: Turning[] = [];
  for (const turning of turnings) {
    const before = kept.at(-1);
    if (before === undefined || distance(before.point, turning.point) > same) kept.push(turning);
    else if (turning.isCorner) kept[kept.length - 1] = { ...before, isCorner: true };
  }
  const [first] = kept;
  const last = kept.at(-1);
  if (first === undefined || last === undefined || last === first || distance(first.point, last.point) > same)
    return kept;
  return [{ ...first, isCorner: first.isCorner || last.isCorner }, ...kept.slice(1, -1)];
};

/** The points all the way round: as they are, or the treble half's followed by its mirror image; where that begins or ends on the centre line, both halves share the point. */
const allRound = ({ points, mirrored }: Given): readonly Turning[] => {
  const given = points.map(({ across, along, turn }) => ({
    point: { x: across, y: along },
    isCorner: turn === 'corner',
  }));
  const image = given.toReversed().map(({ point, isCorner }) => ({ point: { x: 0 - point.x, y: point.y }, isCorner }));
  return withoutRepeats(mirrored === 'yes' ? [...given, ...image] : given);
};

/** From one corner to the next, smoothly through the points between them: a straight line where there are none. */
const run = (points: readonly Point[]) => throughPoints(points, curveCatmullRom).segments;

/** Through the points all the way round. */
const round = (turnings: readonly Turning[]): Path => {
  const corner = turnings.findIndex(({ isCorner }) => isCorner);
  if (corner < 0)
    return throughPoints(
      turnings.map(({ point }) => point),
      curveCatmullRomClosed,
      { closed: true },
    );
  const fromCorner = [...turnings.slice(corner), ...turnings.slice(0, corner + 1)];
  const corners = fromCorner.flatMap(({ isCorner }, k) => (isCorner ? [k] : []));
  const runs = corners.slice(1).map((to, k) => run(fromCorner.slice(corners[k], to + 1).map(({ point }) => point)));
  return path(runs.flat(), true);
};

/** What was drawn through these points once, mirrored or not: one job asks for it many times. */
const known = { yes: new WeakMap<Bridge['points'], Path>(), no: new WeakMap<Bridge['points'], Path>() };

/**
 * The outline where its points put it, turning from +x towards +y, in exact cubics: centripetal Catmull–Rom curves [Catmull & Rom 1974; Yuksel, Schaefer & Keyser 2011].
 * Throws a RangeError for too few points.
 */
const drawn = (bridge: Given): Path => {
  const { points, mirrored } = bridge;
  const before = known[mirrored].get(points);
  if (before) return before;
  const found = round(allRound(bridge));
  const turned = area(found) < 0 ? reversePath(found) : found;
  known[mirrored].set(points, turned);
  return turned;
};

/** Where the outline meets the centre line first, coming from the front; its foremost point where it never does. */
const centreFront = (outline: Path): number => {
  const { minY, maxY } = bounds(outline);
  const ray = polyline(
    [
      { x: 0, y: minY - 1 },
      { x: 0, y: maxY + 1 },
    ],
    false,
  );
  const hits = pathIntersections(ray, outline).map(({ y }) => y);
  return hits.length === 0 ? minY : Math.min(...hits);
};

/** Where a free outline's front edge meets the centre line, in the measure of its points, mm. Throws a RangeError for too few points. */
export const freeFront = (bridge: Given): number => centreFront(drawn(bridge));

const tooFew = (bridge: Given): boolean => allRound(bridge).length < fewest;

/** An outline through points of its own: smooth or with corners, its treble half mirrored or each side by itself. */
export const free: Footprint = {
  name: 'free, by points',
  problems: (bridge, mm): readonly Problem[] => {
    const at = { path: 'bridge.points', value: bridge.points.length };
    if (tooFew(bridge))
      return [
        {
          ...at,
          says: `A free outline needs at least ${fewest} different points; it has ${allRound(bridge).length}. Add points, or choose another footprint.`,
        },
      ];
    const off = bridge.mirrored === 'yes' && bridge.points.find(({ across }) => across < 0);
    if (off)
      return [
        {
          path: `bridge.points.${off.id}.across`,
          value: off.across,
          says: `A point ${mm(-off.across)} from the centre line on the bass side has no place in a treble half that is mirrored. Give it a distance of 0 or more, or let each side have its own points.`,
        },
      ];
    const outline = drawn(bridge);
    const meeting = ownMeeting(outline);
    if (meeting) {
      const side = meeting.x < 0 ? 'on the bass side' : 'on the treble side';
      const place =
        Math.abs(meeting.x) < 0.05 ? 'on the centre line' : `${mm(Math.abs(meeting.x))} from the centre line ${side}`;
      return [
        {
          ...at,
          says: `The outline through these points crosses or touches itself ${place}, ${mm(meeting.y)} behind the front. Give the points in their order round the bridge${bridge.mirrored === 'yes' ? ', those on the centre line first and last' : ''}.`,
        },
      ];
    }
    if (Math.abs(area(outline)) < leastArea)
      return [
        {
          ...at,
          says: `The outline through these points encloses less than ${leastArea} mm². Move them apart, or choose another footprint.`,
        },
      ];
    return [];
  },
  outline: (bridge) => {
    const outline = drawn(bridge);
    return translate(outline, 0, -bounds(outline).minY);
  },
  frontAtCentre: (bridge) => {
    const outline = drawn(bridge);
    return centreFront(outline) - bounds(outline).minY;
  },
  size: (bridge) => {
    if (tooFew(bridge)) return undefined;
    const { minX, maxX, minY, maxY } = bounds(drawn(bridge));
    return { length: 2 * Math.max(-minX, maxX), depth: maxY - minY };
  },
};
