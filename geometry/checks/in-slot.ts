import type { Check } from './check.ts';
import { listed } from './say.ts';

/** How much of the saddle's whole height stands in its slot at each string: `(height − exposure)/height`. */
export const inSlot: Check = {
  id: 'inSlot',
  path: 'slot.depth',
  facts: (_, { strings }) =>
    strings.map(({ name, exposure, saddleHeight }) => ({
      where: name,
      value: (saddleHeight - exposure) / saddleHeight,
    })),
  says: (found) => `Of the saddle’s height, in the slot: ${listed(found)}`,
  means: { low: 'The saddle rocks, and the slot’s front wall may split.' },
  fixes: [
    ['slot.depth'],
    ['bridge.thickness'],
    ['slot.depth', 'bridge.thickness'],
    ['slot.depth', 'bridge.thickness', 'bridge.tilt'],
    ['slot.depth', 'bridge.thickness', 'bridge.topRadius'],
    ['action.bass', 'action.treble'],
    ['action.bass', 'action.treble', 'slot.depth'],
  ],
};
