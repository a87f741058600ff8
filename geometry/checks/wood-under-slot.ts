import { slotWood } from '../bridge/surface.ts';
import type { Check } from './check.ts';

/** The wood left under the slot, least along its length: the bridge's underside follows the top's dome, the floor is level or follows it too. */
export const woodUnderSlot: Check = {
  id: 'woodUnderSlot',
  path: 'slot.depth',
  facts: (job, design) => [{ value: slotWood(job, design) }],
  says: ({ worst, say }) => `Wood left under the slot: ${say(worst.value)}`,
  means: { low: 'The bridge may crack through under the saddle.' },
  fixes: [['slot.depth'], ['bridge.thickness'], ['slot.depth', 'bridge.thickness']],
};
