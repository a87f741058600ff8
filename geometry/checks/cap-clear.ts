import { capToBrace, plateCap } from '../bridge/plate-cap.ts';
import type { Check } from './check.ts';
import { listed } from './say.ts';

/** From the plate cap's edge to each brace's. */
export const capClear: Check = {
  id: 'capClear',
  path: 'plate.length',
  facts: (job, design) => {
    const cap = plateCap(job, design);
    if (cap === undefined) return [];
    return job.top.braces.map((brace, k) => ({
      where: brace.name || `brace ${k + 1}`,
      value: capToBrace(cap, brace),
    }));
  },
  says: (found) => `Plate cap to the braces: ${listed(found)}`,
  means: { low: 'The cap would not lie flat on the plate.' },
  fixes: [['plate.length'], ['plate.depth'], ['plate.length', 'plate.depth']],
};
