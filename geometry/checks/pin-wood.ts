import { slotCut } from '../bridge/slot.ts';
import { contains } from '../shape/measure.ts';
import { distanceTo } from '../shape/nearest.ts';
import type { Check } from './check.ts';
import { listed } from './say.ts';

/** The wood between the slot's outline and the edge of each hole behind it; a tie block's holes stand in no deck. */
export const pinWood: Check = {
  id: 'pinWood',
  path: 'pins.fromSaddle',
  facts: (job, design) => {
    if (job.pins.hold === 'tied') return [];
    const slot = slotCut(job, design.saddleLine);
    return design.strings.map(({ name, pin }) => ({
      where: name,
      value: distanceTo(slot, pin) * (contains(slot, pin) ? -1 : 1) - job.pins.hole / 2,
    }));
  },
  says: (found) => `Wood between slot and ${found.job.pins.hold === 'pins' ? 'pin holes' : 'holes'}: ${listed(found)}`,
  means: { low: 'The bridge may split along its holes.' },
  fixes: [
    ['pins.fromSaddle'],
    ['pins.hole'],
    ['slot.width'],
    ['pins.fromSaddle', 'bridge.depth'],
    ['pins.fromSaddle', 'bridge.thickness'],
  ],
};
