import type { Design } from '../design.ts';
import type { Settled } from '../settle.ts';
import type { Point } from '../shape/types.ts';
import { type Half, tipOf, undersideHeight } from './surface.ts';

/** A pyramid on one end, looked at half-way along the guitar: places outwards from the centre line, heights above the fret plane, mm. */
export interface Pyramid {
  readonly foot: Point;
  readonly ridge: Point;
  readonly tip: Point;
  /** How far the ridge stands above the straight line from foot to tip. */
  readonly rise: number;
}

/** The pyramid of one end. Foot and tip are as thick as the wing's tip, the ridge as thick as it was told, and in the middle of the width. */
export const pyramidOf = (job: Settled, half: Half): Pyramid => {
  const { length, pyramidWidth, pyramidThickness } = job.bridge;
  const at = (x: number, thickness: number): Point => ({ x, y: undersideHeight(job, x) + thickness });
  const end = length / 2;
  const foot = at(end - pyramidWidth, tipOf(job.bridge, half));
  const tip = at(end, tipOf(job.bridge, half));
  const ridge = at(end - pyramidWidth / 2, pyramidThickness);
  return { foot, ridge, tip, rise: ridge.y - (foot.y + tip.y) / 2 };
};

/** How far from the front and from the rear edge the facets there reach the ridge's height, mm: as far as those on the other two sides do, or half-way where the pyramid is wider than it is deep. */
export const pyramidRun = ({ pyramidWidth, depth }: Settled['bridge']): number => Math.min(pyramidWidth, depth) / 2;

/** How high the front and rear facets have come at a distance x from the nut, as a share of the ridge's rise: 0 at the edges, 1 along the ridge. */
export const pyramidShare = (
  job: Settled,
  { bridgeFront, bridgeRear }: Pick<Design, 'bridgeFront' | 'bridgeRear'>,
  x: number,
): number => Math.max(0, Math.min(1, Math.min(x - bridgeFront, bridgeRear - x) / pyramidRun(job.bridge)));

/** The pyramid's line from its foot out to the tip, cut where the front and rear facets have come so far (a share of the ridge's rise): the whole facets at 1, a level cut through them below. Heights, as in `Pyramid`. */
export const pyramidLine = ({ foot, tip, rise }: Pyramid, share: number): readonly Point[] => {
  const base = (x: number) => foot.y + ((tip.y - foot.y) * (x - foot.x)) / (tip.x - foot.x);
  const half = (tip.x - foot.x) / 2;
  const at = (x: number): Point => ({ x, y: base(x) + rise * share });
  if (share <= 0) return [foot, tip];
  const [inner, outer] = [at(foot.x + half * share), at(tip.x - half * share)];
  return share >= 1 ? [foot, inner, tip] : [foot, inner, outer, tip];
};

/**
 * The edges of the pyramids from above (x across, y the distance from the nut, mm), bass end first: the foot, the ridge where it has a length, `max(0, depth − width)`, and the four edges from the corners to its ends. None
 * for another footprint.
 */
export const pyramidLines = (
  { bridge }: Settled,
  { bridgeFront, bridgeRear }: Pick<Design, 'bridgeFront' | 'bridgeRear'>,
): readonly (readonly [Point, Point])[] => {
  if (bridge.footprint !== 'pyramid') return [];
  const tip = bridge.length / 2;
  const foot = tip - bridge.pyramidWidth;
  const middle = tip - bridge.pyramidWidth / 2;
  const run = pyramidRun(bridge);
  const [first, last] = [bridgeFront + run, bridgeRear - run];
  const line = (half: Half, ax: number, ay: number, bx: number, by: number): readonly [Point, Point] => [
    { x: half * ax, y: ay },
    { x: half * bx, y: by },
  ];
  return ([-1, 1] as const).flatMap((half) => [
    line(half, foot, bridgeFront, foot, bridgeRear),
    line(half, foot, bridgeFront, middle, first),
    line(half, tip, bridgeFront, middle, first),
    line(half, foot, bridgeRear, middle, last),
    line(half, tip, bridgeRear, middle, last),
    ...(last - first > 1e-9 ? [line(half, middle, first, middle, last)] : []),
  ]);
};
