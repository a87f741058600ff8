import { curveCatmullRom, curveCatmullRomClosed } from 'd3-shape';
import type { Job } from '../../job.ts';
import type { Problem } from '../../problem.ts';
import { throughPoints } from '../../shape/curve.ts';
import { pathIntersections } from '../../shape/intersect.ts';
import { area, bounds, isSimple } from '../../shape/measure.ts';
import { path, polyline, reversePath } from '../../shape/path.ts';
import { translate } from '../../shape/transform.ts';
import type { Path, Point } from '../../shape/types.ts';
import type { Footprint } from './footprint.ts';

type Bridge = Job['bridge'];

interface Turning {
  readonly point: Point;
  readonly isCorner: boolean;
}

/** The fewest points that the whole outline needs. */
const fewest = 3;

/** The points all the way round: as they are, or the treble half's followed by its mirror image, where those on the centre line stand once. */
const allRound = ({ points, mirrored }: Pick<Bridge, 'points' | 'mirrored'>): readonly Turning[] => {
  const given = points.map(({ across, along, turn }) => ({
    point: { x: across, y: along },
    isCorner: turn === 'corner',
  }));
  if (mirrored === 'no') return given;
  const image = given
    .filter(({ point }) => point.x !== 0)
    .toReversed()
    .map(({ point, isCorner }) => ({ point: { x: -point.x, y: point.y }, isCorner }));
  return [...given, ...image];
};

/** From one corner to the next, smoothly through the points between them: a straight line where there are none. */
const run = (points: readonly Point[]) => throughPoints(points, curveCatmullRom).segments;

/** The outline where its points put it, turning from +x towards +y. Centripetal Catmull–Rom curves (Catmull & Rom 1974; Yuksel et al. 2011) as exact cubics. Throws a RangeError for too few points. */
const drawn = (bridge: Pick<Bridge, 'points' | 'mirrored'>): Path => {
  const turnings = allRound(bridge);
  const corner = turnings.findIndex(({ isCorner }) => isCorner);
  const outline = (): Path => {
    if (corner < 0)
      return throughPoints(
        turnings.map(({ point }) => point),
        curveCatmullRomClosed,
        { closed: true },
      );
    const round = [...turnings.slice(corner), ...turnings.slice(0, corner + 1)];
    const corners = round.flatMap(({ isCorner }, k) => (isCorner ? [k] : []));
    const segments = corners
      .slice(1)
      .flatMap((to, k) => run(round.slice(corners[k], to + 1).map(({ point }) => point)));
    return path(segments, true);
  };
  const found = outline();
  return area(found) < 0 ? reversePath(found) : found;
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

const tooFew = (bridge: Pick<Bridge, 'points' | 'mirrored'>): boolean => {
  const distinct = new Set(allRound(bridge).map(({ point }) => `${point.x} ${point.y}`));
  return distinct.size < fewest;
};

/** An outline through points of its own: smooth or with corners, its treble half mirrored or each side by itself. */
export const free: Footprint = {
  style: 'free',
  problems: (bridge): readonly Problem[] => {
    const at = { path: 'bridge.points', value: bridge.points.length };
    if (tooFew(bridge))
      return [
        {
          ...at,
          says: `A free outline needs at least ${fewest} different points; it has ${bridge.points.length}. Add points, or choose another footprint.`,
        },
      ];
    const off = bridge.mirrored === 'yes' && bridge.points.find(({ across }) => across < 0);
    if (off)
      return [
        {
          path: `bridge.points.${off.id}.across`,
          value: off.across,
          says: 'A point on the bass side has no place in a treble half that is mirrored. Give it a distance of 0 or more, or let each side have its own points.',
        },
      ];
    const outline = drawn(bridge);
    if (!isSimple(outline) || Math.abs(area(outline)) < 1)
      return [
        {
          ...at,
          says: 'The outline through these points crosses or touches itself. Give the points in their order round the bridge.',
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
