import { slotCut } from '../bridge/slot.ts';
import type { Design } from '../design.ts';
import type { Mark } from '../drawing.ts';
import { stroke } from '../marks.ts';
import type { Settled } from '../settle.ts';

/** The slot of a bridge that stays, where it is filled and cut anew elsewhere; nothing otherwise. */
export const oldSlot = (job: Settled, { datum }: Design): readonly Mark[] =>
  job.work === 'saddle' && job.slot.line !== 'typed'
    ? [stroke('slot.old', slotCut(job, datum), { line: 'hidden', purpose: 'show', jobPath: 'slot.fromNut' })]
    : [];
