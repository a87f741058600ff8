import type { Check } from './check.ts';
import { listed } from './say.ts';
import { fromLine, slotSpine } from './slot-walls.ts';

/** The wood between the slot's outline and the edge of each pin hole. */
export const pinWood: Check = {
  id: 'pinWood',
  path: 'pins.fromSaddle',
  facts: (job, design) => {
    const { spine, off } = slotSpine(job, design);
    return design.strings.map(({ name, pin }) => ({
      where: name,
      value: fromLine(spine, pin) - off - job.pins.hole / 2,
    }));
  },
  says: (found) => `Wood between slot and pin holes: ${listed(found)}`,
  means: { low: 'The bridge may split along its pins.' },
  fixes: [
    ['pins.fromSaddle'],
    ['pins.hole'],
    ['slot.width'],
    ['pins.fromSaddle', 'bridge.depth'],
    ['pins.fromSaddle', 'bridge.thickness'],
  ],
};
