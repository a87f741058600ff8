import type { Job } from '../job.ts';
import { rounded } from '../shape/rounded.ts';
import type { Path, Point } from '../shape/types.ts';
import type { SaddleLine } from './slot.ts';

/** What cuts the slot and what leads it, mm: the cutter's diameter; the diameter of the round bush or base that runs inside the window, or the side of a square base. */
export interface Led {
  readonly cutter: number;
  readonly guide: number;
  readonly shape: 'round' | 'square';
}

/** A window to rout a slot through, from above (x across, y the distance from the nut), mm. */
export interface SlotWindow {
  readonly outline: Path;
  /** Along the saddle line, and square to it. */
  readonly length: number;
  readonly width: number;
  /** How much larger it is than what is cut, all round: `(guide − cutter)/2`. */
  readonly larger: number;
}

/** A rectangle about the middle of the saddle line, its corners rounded, closed. */
const along = (line: SaddleLine, length: number, width: number, corner: number): Path => {
  const cos = 1 / Math.hypot(1, line.slant);
  const sin = line.slant * cos;
  const at = (u: number, v: number): Point => ({ x: u * cos - v * sin, y: line.x + u * sin + v * cos });
  return rounded(at, length, width, corner);
};

/** How far the cutter's outermost edge goes along the saddle line, from end to end, mm: the slot's length; of an open one so far that both walls run on to the shoulders, before the cutter's round end. */
const cutLength = ({ slot, bridge }: Pick<Job, 'slot' | 'bridge'>, line: SaddleLine, cutter: number): number =>
  slot.ends === 'through'
    ? bridge.deckWidth * Math.hypot(1, line.slant) + slot.width * Math.abs(line.slant) + cutter
    : slot.length;

/**
 * The window in which what leads the cutter runs while it cuts the slot: the places of the cutter's middle (the slot less half the cutter all round), and half the guide round each of them [def]. Round slot ends give round ends, of the slot's own radius and so much
 * more; square ones rounded corners, of the guide's radius: there the cutter leaves its own radius for the chisel. Throws a RangeError where the cutter is wider than the slot, or the guide no wider than the cutter: `windowProblem` says that first.
 */
export const slotWindow = (job: Pick<Job, 'slot' | 'bridge'>, line: SaddleLine, led: Led): SlotWindow => {
  const { cutter, guide, shape } = led;
  if (cutter > job.slot.width || guide <= cutter)
    throw new RangeError(
      `A cutter ${cutter} mm wide, led by ${guide} mm, cannot cut a slot ${job.slot.width} mm wide.`,
    );
  const larger = (guide - cutter) / 2;
  const length = cutLength(job, line, cutter) + 2 * larger;
  const width = job.slot.width + 2 * larger;
  const corner = shape === 'square' ? 0 : job.slot.ends === 'round' ? width / 2 : guide / 2;
  return { outline: along(line, length, width, corner), length, width, larger };
};

/** Why no window leads this cutter through this slot: what is wrong, and the way out; undefined where one does. `mm` says a length in the reader's unit. */
export const windowProblem = (
  { slot }: Pick<Job, 'slot'>,
  { cutter, guide }: Led,
  mm: (value: number) => string,
): readonly [says: string, wayOut: string] | undefined => {
  if (cutter > slot.width)
    return [
      `The cutter is ${mm(cutter)} wide, the slot only ${mm(slot.width)}.`,
      `Take a cutter of at most ${mm(slot.width)}.`,
    ];
  if (guide <= cutter)
    return [
      `The guide is ${mm(guide)} wide, the cutter ${mm(cutter)}: it cannot lead it.`,
      `Take a guide wider than ${mm(cutter)}, or a narrower cutter.`,
    ];
  return undefined;
};
