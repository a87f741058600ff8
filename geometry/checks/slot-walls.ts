import { wallLength } from '../bridge/slot.ts';
import type { Design } from '../design.ts';
import type { Settled } from '../settle.ts';
import { pointOn } from '../shape/measure.ts';
import { distance, dot, subtract } from '../shape/point.ts';
import type { Line, Point } from '../shape/types.ts';

/** The slot's middle line between the ends of its walls, which are those of its cutter's way where they are round, and how far the walls stand off it, mm. */
export const slotSpine = (
  { slot, bridge }: Settled,
  { saddleLine }: Design,
): { readonly spine: Line; readonly off: number } => {
  const cos = 1 / Math.hypot(1, saddleLine.slant);
  const half = (slot.ends === 'through' ? bridge.deckWidth / cos : wallLength(slot)) / 2;
  const at = (along: number): Point => ({
    x: along * cos,
    y: saddleLine.x + along * saddleLine.slant * cos,
  });
  return { spine: { kind: 'line', from: at(-half), to: at(half) }, off: slot.width / 2 };
};

/** How far a point lies from a straight line between its ends, mm. */
export const fromLine = ({ from, to }: Line, p: Point): number => {
  const along = subtract(to, from);
  const t = Math.min(1, Math.max(0, dot(subtract(p, from), along) / dot(along, along)));
  return distance(p, { x: from.x + t * along.x, y: from.y + t * along.y });
};

/** Points evenly along a line, its ends included. */
export const pointsAlong = (line: Line, count: number): readonly Point[] =>
  Array.from({ length: count }, (_, k) => pointOn(line, k / (count - 1)));
