import { risesUnder } from '../bridge/existing.ts';
import type { Check } from './check.ts';
import { unsigned } from './say.ts';

/** How far the top stands off its dome under the bridge: a belly, or a dip if negative. */
export const topRise: Check = {
  id: 'topRise',
  path: 'top.rises',
  facts: (job, design) => risesUnder(job, design).map(({ height }) => ({ value: height })),
  says: ({ worst, say }) =>
    worst.value < 0
      ? `Under the bridge the top dips ${unsigned(say(worst.value))} below its dome`
      : `Under the bridge the top stands ${say(worst.value)} above its dome`,
  means: {
    low: 'The underside must be fitted to the dip, or the top pressed flat first: a bridge that bridges a gap comes off.',
    high: 'The underside must be fitted to the belly, or the top pressed flat first: a bridge that rocks comes off.',
  },
  fixes: [],
};
