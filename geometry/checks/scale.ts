import { sayFor } from '../say.ts';
import type { Check } from './check.ts';

/** How far a typed scale length lies from the one that the measured frets give. */
export const scale: Check = {
  id: 'scale',
  path: 'guitar.scale',
  facts: ({ guitar }, { readings: { frets, scaleFrom } }) =>
    scaleFrom !== 'typed' || frets === undefined ? [] : [{ value: Math.abs(guitar.scale - frets.scale) }],
  says: ({ worst, say, job, design }) =>
    `Scale length typed ${say(worst.value)} off what the frets give, ${sayFor(job).mm(design.readings.frets?.scale ?? 0)}`,
  means: { high: 'Every distance from the nut would be out: measure again, or go by the frets.' },
  aim: { to: 0.06 },
  fixes: [['guitar.scale']],
};
