import { curveMonotoneX } from 'd3-shape';
import type { Design, SolvedString } from '../design.ts';
import type { Job } from '../job.ts';
import { throughPoints } from '../shape/curve.ts';
import { path, segmentEnd, segmentStart } from '../shape/path.ts';
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

/** The saddle's outline, seen from the tail: x + treble, y DOWN from the fret plane, mm; closed. Throws a RangeError when the crown does not reach its ends; `solve` refuses that first. */
export const saddleOutline = (design: Laid, look: Look): Path => {
  const edge = crownEdgeOf(design, look);
  const [first, last] = [edge?.[0], edge?.at(-1)];
  if (edge === undefined || first === undefined || last === undefined)
    throw new RangeError('The crown does not reach the saddle’s ends.');
  const half = halfSaddle(design, look);
  const left = segmentStart(first);
  const right = segmentEnd(last);
  const corner = (x: number): Point => ({ x, y: -design.saddle.bottom });
  return path(
    [
      { kind: 'line', from: corner(-half), to: left },
      ...edge,
      { kind: 'line', from: right, to: corner(half) },
      { kind: 'line', from: corner(half), to: corner(-half) },
    ],
    true,
  );
};
