import type { Check } from './check.ts';
import { listed } from './say.ts';

/** How far the saddle stands out of the bridge at each string. */
export const exposure: Check = {
  id: 'exposure',
  path: 'bridge.thickness',
  facts: (_, { strings }) => strings.map(({ name, exposure }) => ({ where: name, value: exposure })),
  says: (found) => `Saddle stands out by ${listed(found)}`,
  means: {
    low: 'The break angle gets weak, and nothing is left to lower.',
    high: 'The strings lean the saddle forward, and the slot’s front wall is at risk.',
  },
  fixes: [
    ['bridge.thickness'],
    ['bridge.topRadius'],
    ['bridge.tilt'],
    ['bridge.thickness', 'bridge.tilt'],
    ['bridge.thickness', 'bridge.topRadius'],
    ['bridge.thickness', 'slot.depth'],
    ['bridge.thickness', 'bridge.tilt', 'bridge.topRadius'],
    ['bridge.thickness', 'bridge.tilt', 'slot.depth'],
    ['action.bass', 'action.treble'],
    ['guitar.neckPlaneHeight'],
    ['action.bass', 'action.treble', 'bridge.thickness'],
    ['action.bass', 'action.treble', 'bridge.thickness', 'bridge.topRadius'],
  ],
};
