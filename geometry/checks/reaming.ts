import { reamDepth } from '../bridge/pins.ts';
import type { Check } from './check.ts';

/** How deep the holes are reamed until the pins seat under their heads: negative where a pin is thinner than its hole. */
export const reaming: Check = {
  id: 'reaming',
  path: 'pins.pinDiameter',
  facts: (job) => {
    const depth = reamDepth(job);
    return depth === undefined ? [] : [{ value: depth }];
  },
  says: ({ worst, say }) =>
    worst.value < 0
      ? `Pins are thinner than their holes: by their taper they would sink ${say(-worst.value)} past their heads`
      : `Pins seat when their holes are reamed ${say(worst.value)} deep`,
  means: {
    low: 'The pins sink into their holes and do not hold.',
    high: 'The reamer would cut through bridge, top and plate, and make the hole in the plate too wide for the ball end.',
  },
  fixes: [['pins.hole'], ['pins.pinDiameter'], ['pins.taper']],
};
