import { fromBrace } from '../bridge/existing.ts';
import { pinHoles } from '../bridge/pins.ts';
import type { Check } from './check.ts';
import { listed } from './say.ts';

/** From the pin holes' edges to each brace's. */
export const bracesClear: Check = {
  id: 'bracesClear',
  path: 'top.braces',
  facts: (job, design) => {
    const holes = pinHoles(job, design);
    if (holes.length === 0) return [];
    return job.top.braces.map((brace, k) => ({
      where: brace.name || `brace ${k + 1}`,
      value: Math.min(...holes.map(({ at, diameter }) => fromBrace(brace, at) - diameter / 2)),
    }));
  },
  says: (found) => `Pin holes clear the braces by ${listed(found)}`,
  means: { low: 'The drill would cut into the brace, and the ball ends would not seat.' },
  fixes: [
    ['pins.fromSaddle'],
    ['pins.spread'],
    ['pins.hole'],
    ['pins.spread', 'pins.fromSaddle'],
    ['pins.fromSaddle', 'bridge.depth'],
    ['pins.spread', 'pins.fromSaddle', 'bridge.depth'],
  ],
};
