import { sayFor } from '../say.ts';
import type { Check } from './check.ts';
import { listed } from './say.ts';

/** A thickness that is enough: up to the next hundredth of a millimetre. */
const enough = (thickness: number): number => Math.ceil(thickness * 100 - 1e-9) / 100;

/** How far the break point that each string needs lies off what the crown can carry. */
export const intonation: Check = {
  id: 'intonation',
  path: 'slot.width',
  facts: (_, { strings }) => strings.map(({ name, missed }) => ({ where: name, value: Math.abs(missed) })),
  says: (found) => {
    const { mm } = sayFor(found.job);
    return found.level === 'right'
      ? 'Every break point lies on the crown, clear of its edges'
      : `Break point off the crown by ${listed(found)}: a saddle ${mm(enough(found.design.saddle.thicknessNeeded))} thick along this line would carry them all`;
  },
  means: { high: 'These strings will not play in tune up the neck.' },
  fixes: [
    ['slot.fromNut'],
    ['slot.slant'],
    ['slot.fromNut', 'slot.slant'],
    ['slot.width'],
    ['slot.width', 'slot.length'],
    ['slot.width', 'pins.fromSaddle'],
    ['slot.fromNut', 'slot.slant', 'slot.width'],
    ['slot.fromNut', 'slot.slant', 'slot.width', 'slot.length'],
    ['slot.width', 'bridge.frontToSaddle', 'bridge.depth'],
  ],
};
