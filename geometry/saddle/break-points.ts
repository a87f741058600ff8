import { type SaddleLine, saddleLineAt } from '../bridge/slot.ts';
import type { Job } from '../job.ts';

/** How far a break point must stay from each edge of the crown, mm [practice]. */
export const crownEdgeKept = 0.4;

/** The saddle's thickness, mm: the slot's width less the play. */
export const saddleThickness = (job: Job): number => job.slot.width - job.saddle.play;

/** How far to each side of its middle a saddle so thick can carry a break point, mm, square to its face. */
export const crownReach = (thickness: number): number => Math.max(0, thickness / 2 - crownEdgeKept);

export interface BreakPoint {
  /** Where it should lie: distance from the nut, mm. */
  readonly neededX: number;
  /** Where it lies: the same, or at the edge of what the crown can carry. */
  readonly breakX: number;
  /** From the saddle's front face back to it, square to the face, mm. */
  readonly fromFront: number;
  /** How far the needed place lies off what the crown can carry, mm along the string; + too far back, 0 where it is reached. */
  readonly missed: number;
}

/** Where a string that needs its break point at `neededX` gets it on a saddle along `line`, at `across`, mm. */
export const breakPoint = (line: SaddleLine, across: number, neededX: number, thickness: number): BreakPoint => {
  const middle = saddleLineAt(line, across);
  const square = 1 / Math.hypot(1, line.slant);
  const reach = crownReach(thickness);
  const wanted = (neededX - middle) * square;
  const off = Math.min(reach, Math.max(-reach, wanted));
  const isReached = off === wanted;
  const breakX = isReached ? neededX : middle + off / square;
  return { neededX, breakX, fromFront: thickness / 2 + off, missed: isReached ? 0 : neededX - breakX };
};

/** The least thickness of a saddle whose crown carries every break point (x across, y distance from the nut), mm. */
export const thicknessNeeded = (
  line: SaddleLine,
  points: readonly { readonly across: number; readonly neededX: number }[],
): number =>
  2 *
  (crownEdgeKept +
    Math.max(
      ...points.map(
        ({ across, neededX }) => Math.abs(neededX - saddleLineAt(line, across)) / Math.hypot(1, line.slant),
      ),
    ));
