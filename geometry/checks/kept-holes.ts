import { keptHoles as kept } from '../bridge/existing.ts';
import type { Check } from './check.ts';
import { listed } from './say.ts';

const named = { pin: 'a pin hole', screw: 'a screw hole', other: 'a hole' } as const;

/** The wood in the new bridge round each hole that is kept. */
export const keptHoles: Check = {
  id: 'keptHoles',
  path: 'top.holes',
  facts: (job, design) =>
    kept(job, design).map(({ hole, wall }) => ({
      where: `${named[hole.what]}${hole.plan === 'register' ? ' for a register pin' : ''}`,
      value: wall,
    })),
  says: (found) => {
    const outside = kept(found.job, found.design).filter(({ isInside }) => !isInside).length;
    const lost = outside === 0 ? '' : `; ${outside === 1 ? 'one lies' : `${outside} lie`} outside the footprint`;
    return `Wood round kept holes: ${listed(found)}${lost}`;
  },
  means: {
    low: 'The hole runs out of the bridge, into the slot or into a pin hole, or splits off the wood between: plug it, or draw the bridge over it.',
  },
  fixes: [
    ['bridge.frontToSaddle'],
    ['bridge.depth'],
    ['bridge.length'],
    ['bridge.wingDepth'],
    ['pins.fromSaddle'],
    ['bridge.frontToSaddle', 'bridge.depth'],
    ['bridge.depth', 'bridge.wingDepth'],
    ['slot.length'],
    ['pins.spread'],
  ],
};
