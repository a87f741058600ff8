import { fretAt } from '../../instrument/frets.ts';
import type { Settled } from '../../settle.ts';
import type { Change } from '../check.ts';

/** By how much a neck has to turn before anyone would take it off, degrees [practice]. */
const leastTurn = 0.1;

/** What a neck reset takes: the neck's turn, degrees, + back; and what comes off the heel, `heel depth·Δh/(L − x_b)` [def], mm, or off the joint's upper edge if negative. */
export const resetTo = (
  { value }: Change,
  { guitar }: Settled,
): { readonly turn: number; readonly offHeel: number } => {
  const raise = Number(value) - guitar.neckPlaneHeight;
  const reach = guitar.scale - fretAt(guitar.scale, guitar.bodyJoint);
  return { turn: (Math.atan(raise / reach) * 180) / Math.PI, offHeel: (guitar.heelDepth * raise) / reach };
};

/** Whether changes reset the neck by so little that nobody would. */
export const isIdleReset = (changes: readonly Change[], settled: Settled): boolean =>
  changes.some(
    (change) => change.path === 'guitar.neckPlaneHeight' && Math.abs(resetTo(change, settled).turn) < leastTurn,
  );
