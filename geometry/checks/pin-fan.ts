import type { Check } from './check.ts';
import { listed } from './say.ts';

/** How far each string turns aside on its way to its pin, seen from above. */
export const pinFan: Check = {
  id: 'pinFan',
  path: 'pins.spread',
  facts: (_, { strings }) => strings.map(({ name, fan }) => ({ where: name, value: Math.abs(fan) })),
  says: (found) =>
    `Strings turn aside to their ${found.job.pins.hold === 'pins' ? 'pins' : 'holes'} by ${listed(found)}`,
  means: { high: 'The strings pull sideways on the crown, and may creep along it.' },
  fixes: [
    ['pins.spread'],
    ['strings.spread'],
    ['pins.fromSaddle'],
    ['pins.spread', 'strings.spread'],
    ['pins.secondAside'],
  ],
};
