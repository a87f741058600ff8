import type { Job } from '../job.ts';
import { pen } from '../shape/path.ts';
import type { Path } from '../shape/types.ts';

/** The slot's centre line seen from above: where it crosses the guitar's centre line, and how it slants, + treble nearer the tail. */
export interface SaddleLine {
  /** Distance from the nut on the centre line, mm. */
  readonly x: number;
  /** mm along the guitar per mm across. */
  readonly slant: number;
}

/** Distance from the nut of the saddle line at y, mm. */
export const saddleLineAt = (line: SaddleLine, y: number): number => line.x + line.slant * y;

/** The saddle line through the outer strings' break points, mm. */
export const saddleLineThrough = (
  bass: { acrossAtSaddle: number; breakX: number },
  treble: { acrossAtSaddle: number; breakX: number },
): SaddleLine => {
  const slant = (treble.breakX - bass.breakX) / (treble.acrossAtSaddle - bass.acrossAtSaddle);
  return { slant, x: bass.breakX - slant * bass.acrossAtSaddle };
};

/**
 * The slot's outline from above (x across, y the distance from the nut): closed, with ends as round as the cutter that makes it, so a
 * half circle of its own width. Throws a RangeError when it is no longer than wide; `solve` refuses that first.
 */
export const slotOutline = (slot: Job['slot'], line: SaddleLine): Path => {
  const half = (slot.length - slot.width) / 2;
  if (half <= 0) throw new RangeError(`A slot ${slot.length} mm long cannot be ${slot.width} mm wide.`);
  const cos = 1 / Math.hypot(1, line.slant);
  const sin = line.slant * cos;
  const at = (along: number, across: number) => ({
    x: along * cos - across * sin,
    y: line.x + along * sin + across * cos,
  });
  const r = slot.width / 2;
  return pen(at(-half, -r))
    .line(at(half, -r))
    .arc(at(half + r, 0), r, 1)
    .arc(at(half, r), r, 1)
    .line(at(-half, r))
    .arc(at(-half - r, 0), r, 1)
    .arc(at(-half, -r), r, 1)
    .close();
};
