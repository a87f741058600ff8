import type { Job } from '../job.ts';
import { pen } from '../shape/path.ts';
import type { Path, Point } from '../shape/types.ts';

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
 * The line whose largest miss over these points (x across, y the distance from the nut) is least, mm: Chebyshev's. Of every three points in a row the line that misses them by turns by the same amount
 * is looked at; the three with the largest such miss decide [de la Vallée Poussin]. Throws nothing for two or more points that differ across.
 */
export const leastMissLine = (points: readonly Point[]): SaddleLine => {
  const sorted = [...points].sort((a, b) => a.x - b.x);
  const [first, last] = [sorted[0] as Point, sorted.at(-1) as Point];
  const chord = (a: Point, b: Point): SaddleLine => {
    const slant = (b.y - a.y) / (b.x - a.x);
    return { slant, x: a.y - slant * a.x };
  };
  let line = chord(first, last);
  let worst = -1;
  sorted.forEach((a, i) => {
    sorted.slice(i + 2).forEach((b, k) => {
      const through = chord(a, b);
      sorted.slice(i + 1, i + 2 + k).forEach((between) => {
        const miss = (between.y - saddleLineAt(through, between.x)) / 2;
        if (Math.abs(miss) <= worst) return;
        worst = Math.abs(miss);
        line = { slant: through.slant, x: through.x + miss };
      });
    });
  });
  return line;
};

/** The slot's centre line: by the strings' needed break points (x across, y the distance from the nut), bass first, or as it was measured. */
export const slotLine = (slot: Job['slot'], needed: readonly Point[]): SaddleLine => {
  if (slot.line === 'typed') return { x: slot.fromNut, slant: slot.slant };
  if (slot.line === 'least') return leastMissLine(needed);
  const [bass, treble] = [needed[0] as Point, needed.at(-1) as Point];
  return saddleLineThrough({ acrossAtSaddle: bass.x, breakX: bass.y }, { acrossAtSaddle: treble.x, breakX: treble.y });
};

/** What a slot's outline is drawn from; one that says nothing of its ends has round ones. */
export type SlotSize = Pick<Job['slot'], 'length' | 'width'> & Partial<Pick<Job['slot'], 'ends'>>;

/** Whether the slot's length lies wholly between its walls, or its round ends take half its width off each: how long the walls run, mm. */
export const wallLength = ({ length, width, ends }: SlotSize): number =>
  ends === undefined || ends === 'round' ? length - width : length;

/**
 * The slot's outline from above (x across, y the distance from the nut), closed, mm. Round ends are as round as the cutter that makes them, so half circles of the slot's own width; square ones stand square to its walls. A slot that
 * is open at both ends runs on over the deck, `deckWidth` wide, and stops at its shoulders, where the wings fall away; without a deck it stops at the saddle's ends. Throws a RangeError when round ends do not fit into its length; `solve` refuses that first.
 */
export const slotOutline = (slot: SlotSize, line: SaddleLine, deckWidth?: number): Path => {
  const { width, ends } = slot;
  const half = wallLength(slot) / 2;
  if (half <= 0) throw new RangeError(`A slot ${slot.length} mm long cannot be ${slot.width} mm wide.`);
  const cos = 1 / Math.hypot(1, line.slant);
  const sin = line.slant * cos;
  const r = width / 2;
  if (ends === 'through' && deckWidth !== undefined) {
    const wall = (x: number, side: -1 | 1) => ({ x, y: saddleLineAt(line, x) + (side * r) / cos });
    const shoulder = deckWidth / 2;
    return pen(wall(-shoulder, -1)).line(wall(shoulder, -1)).line(wall(shoulder, 1)).line(wall(-shoulder, 1)).close();
  }
  const at = (along: number, across: number) => ({
    x: along * cos - across * sin,
    y: line.x + along * sin + across * cos,
  });
  const isRound = ends === undefined || ends === 'round';
  const front = pen(at(-half, -r)).line(at(half, -r));
  const treble = isRound ? front.arc(at(half + r, 0), r, 1).arc(at(half, r), r, 1) : front.line(at(half, r));
  const rear = treble.line(at(-half, r));
  return (isRound ? rear.arc(at(-half - r, 0), r, 1).arc(at(-half, -r), r, 1) : rear).close();
};

/** A job's slot as it is cut, from above (x across, y the distance from the nut), closed, mm. */
export const slotCut = ({ slot, bridge }: Pick<Job, 'slot' | 'bridge'>, line: SaddleLine): Path =>
  slotOutline(slot, line, bridge.deckWidth);
