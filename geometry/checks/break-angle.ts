import type { Check } from './check.ts';
import { listed } from './say.ts';

/** How much each string turns over the crown. */
export const breakAngle: Check = {
  id: 'breakAngle',
  path: 'pins.fromSaddle',
  facts: (_, { strings }) => strings.map(({ name, breakAngle }) => ({ where: name, value: breakAngle })),
  says: (found) => `Break angle ${listed(found)}`,
  means: {
    low: 'The strings press weakly on the saddle: they may buzz on it and sound thin.',
    high: 'The strings wear on the crown, and push the saddle on the slot’s front wall.',
  },
  fixes: [
    ['pins.fromSaddle'],
    ['pins.leaves'],
    ['pins.below'],
    ['pins.rampDepth'],
    ['pins.ramp', 'pins.rampDepth'],
    ['bridge.thickness'],
    ['bridge.tilt'],
    ['bridge.topRadius'],
    ['pins.fromSaddle', 'bridge.thickness'],
    ['pins.leaves', 'bridge.thickness'],
    ['pins.fromSaddle', 'bridge.thickness', 'bridge.tilt'],
    ['action.bass', 'action.treble'],
    ['guitar.neckPlaneHeight'],
    ['pins.fromSaddle', 'bridge.thickness', 'bridge.topRadius'],
    ['pins.leaves', 'bridge.thickness', 'bridge.topRadius'],
    ['pins.fromSaddle', 'bridge.depth', 'bridge.thickness', 'bridge.topRadius'],
  ],
};
