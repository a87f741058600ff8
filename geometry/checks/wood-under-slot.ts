import { undersideHeight } from '../bridge/surface.ts';
import { halfSlot } from '../saddle/face.ts';
import type { Check } from './check.ts';

/** The wood left under the slot, least along its length: its floor is level, the bridge's underside follows the top's dome. */
export const woodUnderSlot: Check = {
  id: 'woodUnderSlot',
  path: 'slot.depth',
  facts: (job, design) => {
    const end = halfSlot(job, design, 'across');
    const ends = [-end, end].map((y) => design.slotFloor - undersideHeight(job, y));
    return [{ value: Math.min(design.woodUnderSlot, ...ends) }];
  },
  says: ({ worst, say }) => `Wood left under the slot: ${say(worst.value)}`,
  means: { low: 'The bridge may crack through under the saddle.' },
  fixes: [['slot.depth'], ['bridge.thickness'], ['slot.depth', 'bridge.thickness']],
};
