import { tipOf } from '../bridge/surface.ts';
import type { Check } from './check.ts';

/** The thickness of the wing tips. */
export const tip: Check = {
  id: 'tip',
  path: 'bridge.tipThickness',
  facts: ({ bridge }) =>
    bridge.tipTreble === 'same'
      ? [{ value: bridge.tipThickness }]
      : [
          { where: 'bass', value: tipOf(bridge, -1) },
          { where: 'treble', value: tipOf(bridge, 1) },
        ],
  says: ({ worst, say }) =>
    worst.where === undefined
      ? `Tips ${say(worst.value)} thick`
      : `Tip ${say(worst.value)} thick on the ${worst.where} side`,
  means: { low: 'Thin tips break or curl up off the top.', high: 'Thick tips stiffen the top more than they hold.' },
  fixes: [['bridge.tipThickness'], ['bridge.tipTreble'], ['bridge.tipThickness', 'bridge.tipTreble']],
};
