import { pinHoles } from '../bridge/pins.ts';
import { distance } from '../shape/point.ts';
import type { Check, Fact } from './check.ts';
import { listed } from './say.ts';

/** Wood between pin holes: of each, to the nearest of those after it. */
export const pinGap: Check = {
  id: 'pinGap',
  path: 'pins.spread',
  facts: (job, design) => {
    const holes = pinHoles(job, design);
    const name = (k: number) => design.strings[k]?.name ?? '';
    return holes.slice(0, -1).map((hole, k): Fact => {
      const gaps = holes.slice(k + 1).map((other, j) => ({
        where: `${name(k)} and ${name(k + 1 + j)}`,
        value: distance(hole.at, other.at) - (hole.diameter + other.diameter) / 2,
      }));
      return gaps.reduce((least, gap) => (gap.value < least.value ? gap : least));
    });
  },
  says: (found) => `Wood between neighbouring pin holes: ${listed(found)}`,
  means: { low: 'The bridge splits from hole to hole.' },
  fixes: [['pins.spread'], ['pins.secondRow'], ['pins.hole'], ['pins.spread', 'pins.hole']],
};
