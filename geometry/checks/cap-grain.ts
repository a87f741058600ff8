import { apartNeeded, plateCap } from '../bridge/plate-cap.ts';
import type { Check } from './check.ts';
import { unsigned } from './say.ts';

/** What a grain line of the plate cap keeps between the edges of two pin holes. */
export const capGrain: Check = {
  id: 'capGrain',
  path: 'plate.grain',
  facts: (job, design) => {
    const cap = plateCap(job, design);
    return cap === undefined || !Number.isFinite(cap.apart) ? [] : [{ value: cap.apart - job.pins.hole }];
  },
  says: ({ worst, level, say, job, design }) => {
    if (level === 'right') return `Along the cap’s grain pin holes clear each other by ${say(worst.value)}`;
    const stagger = plateCap(job, design)?.stagger ?? 0;
    const apart =
      worst.value < 0
        ? `Pin holes overlap by ${unsigned(say(worst.value))} along the cap’s grain`
        : `Along the cap’s grain pin holes clear each other by only ${say(worst.value)}`;
    return `${apart}: staggered ${say(stagger)} farther apart, to ${say(apartNeeded(job))}, each would have grain lines of its own`;
  },
  means: { low: 'Holes in line along the grain split the cap: turn its grain, or stagger them.' },
  fixes: [['pins.spread'], ['pins.hole']],
};
