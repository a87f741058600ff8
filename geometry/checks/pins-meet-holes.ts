import { meetings } from '../bridge/existing.ts';
import type { Check } from './check.ts';
import { listed } from './say.ts';

/** How far the new pin nearest to each kept pin hole misses it. */
export const pinsMeetHoles: Check = {
  id: 'pinsMeetHoles',
  path: 'pins.spread',
  facts: (job, design) => meetings(job, design).map(({ string, miss }) => ({ where: string.name, value: miss })),
  says: (found) =>
    found.level === 'right'
      ? `New pins meet the kept holes within ${found.say(found.worst.value)}`
      : `New pins miss the kept holes by ${listed(found)}`,
  means: { high: 'The reamer would cut through the hole’s side: meet the holes, or plug them.' },
  fixes: [
    ['pins.fromSaddle'],
    ['pins.spread'],
    ['pins.spread', 'pins.fromSaddle'],
    ['pins.fromSaddle', 'bridge.depth'],
    ['pins.spread', 'pins.fromSaddle', 'bridge.depth'],
    ['pins.arcRise'],
    ['pins.spread', 'pins.fromSaddle', 'pins.arcRise'],
  ],
};
