import { curveMonotoneX } from 'd3-shape';
import { floorRadius } from '../bridge/surface.ts';
import type { Design, SolvedString } from '../design.ts';
import type { Job } from '../job.ts';
import type { Settled } from '../settle.ts';
import { arcFromTo } from '../shape/arc.ts';
import { throughPoints } from '../shape/curve.ts';
import { path, segmentEnd, segmentStart } from '../shape/path.ts';
import { drop } from '../shape/sagitta.ts';
import type { Path, Point, Segment } from '../shape/types.ts';
import { crownEdge } from './crown.ts';
import { crownHeight } from './radius.ts';

/**
 * How the saddle is looked at: `across` the guitar, as the view from the tail shows it, or square to its own face, `along` the slanted slot, as it is sawn.
 */
export type Look = 'across' | 'along';

type Laid = Pick<Design, 'strings' | 'crown' | 'cut' | 'saddleLine' | 'saddle'>;

/** How much longer a distance across the guitar is when it is laid off along the slanted saddle: `√(1 + slant²)`. */
const slantFactor = (design: Pick<Design, 'saddleLine'>): number => Math.hypot(1, design.saddleLine.slant);

/** Where a place across the guitar stands on the saddle's face, mm from its middle. */
export const onFace = (design: Pick<Design, 'saddleLine'>, across: number, look: Look): number =>
  look === 'along' ? across * slantFactor(design) : across;

/** Half of a length along the slot or the saddle, in this look, mm. */
const halfOf = (length: number, design: Pick<Design, 'saddleLine'>, look: Look): number =>
  length / 2 / (look === 'along' ? 1 : slantFactor(design));

/** Half the saddle's length in this look, mm. */
export const halfSaddle = (design: Pick<Design, 'saddle' | 'saddleLine'>, look: Look): number =>
  halfOf(design.saddle.length, design, look);

/** Half the slot's length in this look, mm. */
export const halfSlot = (job: Job, design: Pick<Design, 'saddleLine'>, look: Look): number =>
  halfOf(job.slot.length, design, look);

/** The crown through each string's own height, carried on to the ends as the best radius would run: a smooth curve that nowhere overshoots (Steffen 1990). */
const throughHeights = (design: Laid, look: Look, half: number): readonly Segment[] => {
  const { strings, crown } = design;
  const [bass, treble] = [strings[0], strings.at(-1)];
  if (bass === undefined || treble === undefined) return [];
  const end = (side: -1 | 1, from: SolvedString): Point => {
    const across = (side * half) / onFace(design, 1, look);
    const miss = from.heightAboveFretPlane - crownHeight(crown, from.acrossAtSaddle);
    return { x: side * half, y: -(crownHeight(crown, across) + miss) };
  };
  const own = strings.map((s) => ({ x: onFace(design, s.acrossAtSaddle, look), y: -s.heightAboveFretPlane }));
  return throughPoints([end(-1, bass), ...own, end(1, treble)], curveMonotoneX).segments;
};

/** Whether an arc of the crown's radius reaches the saddle's ends. */
const reaches = (design: Laid, look: Look, half: number): boolean => {
  const { radius } = design.crown;
  return radius === 'flat' || half / onFace(design, 1, look) < radius;
};

/**
 * The crown's edge over the whole saddle (x along it, y DOWN from the fret plane, mm): an exact arc of the radius that is cut, through the outer strings' fitted heights; or the curve through each string's own
 * height. Between the two looks the slant would change that radius by about a part in a thousand, and the crown by two micrometres: the radius is kept. Undefined when it cannot reach the ends.
 */
export const crownEdgeOf = (design: Laid, look: Look): readonly Segment[] | undefined => {
  const { cut } = design;
  const half = halfSaddle(design, look);
  if (cut === undefined) return reaches(design, look, half) ? throughHeights(design, look, half) : undefined;
  const at = (k: number): Point => {
    const across = design.strings.at(k)?.acrossAtSaddle ?? 0;
    return { x: onFace(design, across, look), y: -crownHeight(cut, across) };
  };
  const edge = crownEdge([at(0), at(-1)], cut.radius, -half, half);
  return edge && [edge];
};

/** A level line over ±half (y DOWN), or an arc of a radius that bulges up to the same height in the middle, run in the sense of +x or back. */
const floorLine = (half: number, height: number, radius: number | 'flat', way: 1 | -1): Segment => {
  const y = -height + drop(radius, half);
  const [from, to] = [
    { x: -way * half, y },
    { x: way * half, y },
  ];
  return radius === 'flat' ? { kind: 'line', from, to } : arcFromTo(from, to, radius, way);
};

/** The slot's floor over its whole length, seen from the tail (y DOWN from the fret plane, mm): level, or an exact arc of the radius of the dome that it follows; between the two looks that radius is kept, as the crown's is. */
export const slotFloorLine = (job: Settled, design: Design, look: Look): Segment =>
  floorLine(
    job.slot.ends === 'through' ? onFace(design, job.bridge.deckWidth / 2, look) : halfSlot(job, design, look),
    design.slotFloor,
    floorRadius(job),
    1,
  );

/** What lies in the slot under the saddle, seen from the tail (y DOWN from the fret plane, mm); closed. */
export const underSaddle = (job: Settled, design: Design, look: Look): Path => {
  const half = halfSlot(job, design, look);
  const upper = floorLine(half, design.saddle.bottom, floorRadius(job), 1);
  const lower = floorLine(half, design.slotFloor, floorRadius(job), -1);
  return path(
    [
      upper,
      { kind: 'line', from: segmentEnd(upper), to: segmentStart(lower) },
      lower,
      { kind: 'line', from: segmentEnd(lower), to: segmentStart(upper) },
    ],
    true,
  );
};

/**
 * The saddle's outline, seen from the tail: x + treble, y DOWN from the fret plane, mm; closed. Its bottom lies on the slot's floor: level, or an exact arc of that floor's radius. Throws a RangeError when the crown does not reach its
 * ends; `build` refuses that first.
 */
export const saddleOutline = (design: Laid, look: Look, bottomRadius: number | 'flat' = 'flat'): Path => {
  const edge = crownEdgeOf(design, look);
  const [first, last] = [edge?.[0], edge?.at(-1)];
  if (edge === undefined || first === undefined || last === undefined)
    throw new RangeError('The crown does not reach the saddle’s ends.');
  const bottom = floorLine(halfSaddle(design, look), design.saddle.bottom, bottomRadius, -1);
  return path(
    [
      { kind: 'line', from: segmentEnd(bottom), to: segmentStart(first) },
      ...edge,
      { kind: 'line', from: segmentEnd(last), to: segmentStart(bottom) },
      bottom,
    ],
    true,
  );
};
