import { registerApart } from '../bridge/existing.ts';
import type { Check } from './check.ts';

/** Between the register pins for the glue-up. */
export const registerPins: Check = {
  id: 'registerPins',
  path: 'top.holes',
  facts: (job) => {
    const value = registerApart(job);
    return value === undefined ? [] : [{ value }];
  },
  says: ({ worst, say }) =>
    worst.value === 0 ? 'Only one register pin' : `Register pins stand ${say(worst.value)} apart`,
  means: { low: 'The bridge can turn about pins so near each other: keep a second hole farther off for one.' },
  fixes: [],
};
