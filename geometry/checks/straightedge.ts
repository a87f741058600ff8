import type { Check } from './check.ts';
import { unsigned } from './say.ts';

/** The light between a straightedge on the frets and the bridge at its centre, strings off. */
export const straightedge: Check = {
  id: 'straightedge',
  path: 'bridge.thickness',
  facts: (_, { straightedgeClearance }) => [{ value: straightedgeClearance }],
  says: ({ worst: { value }, say }) =>
    value < 0
      ? `The straightedge would run ${unsigned(say(value))} below the bridge’s top`
      : `The straightedge clears the bridge by ${say(value)}`,
  means: {
    low: 'The neck angle is low for this bridge.',
    high: 'The bridge is low for this neck, or the saddle has to be tall.',
  },
  fixes: [['bridge.thickness'], ['guitar.neckPlaneHeight']],
};
