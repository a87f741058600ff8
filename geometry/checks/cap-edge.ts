import { plateCap } from '../bridge/plate-cap.ts';
import type { Check } from './check.ts';

/** The wood in the plate cap between the pin holes and its edge. */
export const capEdge: Check = {
  id: 'capEdge',
  path: 'plate.depth',
  facts: (job, design) => {
    const cap = plateCap(job, design);
    return cap === undefined ? [] : [{ value: cap.wall }];
  },
  says: ({ worst, say }) =>
    worst.value < 0 ? 'Pin holes run out of the plate cap' : `Wood round the pin holes in the cap: ${say(worst.value)}`,
  means: { low: 'The ball ends need wood to bear on before and beside each hole.' },
  fixes: [['plate.depth'], ['plate.length'], ['plate.length', 'plate.depth']],
};
