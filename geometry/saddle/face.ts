import type { Design } from '../design.ts';
import type { Job } from '../job.ts';
import { path, segmentEnd, segmentStart } from '../shape/path.ts';
import type { Arc, Line, Path, Point } from '../shape/types.ts';
import { crownEdge } from './crown.ts';
import { crownHeight } from './radius.ts';

/**
 * How the saddle is looked at: `across` the guitar, as the view from the tail shows it, or square to its own face, `along` the slanted slot, as it is sawn.
 */
export type Look = 'across' | 'along';

type Laid = Pick<Design, 'strings' | 'crown' | 'saddleLine'>;

/** How much longer a distance across the guitar is when it is laid off along the slanted saddle: `√(1 + slant²)`. */
const slantFactor = (design: Laid): number => Math.hypot(1, design.saddleLine.slant);

/** Where a place across the guitar stands on the saddle's face, mm from its middle. */
export const onFace = (design: Laid, across: number, look: Look): number =>
  look === 'along' ? across * slantFactor(design) : across;

/** Half the saddle's length in this look, mm. */
export const halfSaddle = (job: Job, design: Laid, look: Look): number =>
  job.slot.length / 2 / (look === 'along' ? 1 : slantFactor(design));

/**
 * The crown's edge over the whole saddle (x along it, y DOWN from the fret plane, mm): an exact arc of the best radius through the outer strings' fitted heights. Between the two looks the slant
 * would change that radius by about a part in a thousand, and the crown by two micrometres: the radius is kept. Undefined when it cannot reach the ends.
 */
export const crownEdgeOf = (job: Job, design: Laid, look: Look): Arc | Line | undefined => {
  const at = (k: number): Point => {
    const across = design.strings.at(k)?.acrossAtSaddle ?? 0;
    return { x: onFace(design, across, look), y: -crownHeight(design.crown, across) };
  };
  const half = halfSaddle(job, design, look);
  return crownEdge([at(0), at(-1)], design.crown.radius, -half, half);
};

/** The saddle's outline, seen from the tail: x + treble, y DOWN from the fret plane, mm; closed. Throws a RangeError when the crown does not reach its ends; `solve` refuses that first. */
export const saddleOutline = (job: Job, design: Design, look: Look): Path => {
  const edge = crownEdgeOf(job, design, look);
  if (edge === undefined) throw new RangeError('The crown does not reach the saddle’s ends.');
  const half = halfSaddle(job, design, look);
  const left = segmentStart(edge);
  const right = segmentEnd(edge);
  const corner = (x: number): Point => ({ x, y: -design.slotFloor });
  return path(
    [
      { kind: 'line', from: corner(-half), to: left },
      edge,
      { kind: 'line', from: right, to: corner(half) },
      { kind: 'line', from: corner(half), to: corner(-half) },
    ],
    true,
  );
};
