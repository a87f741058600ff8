import { distance } from '../shape/point.ts';
import type { Check } from './check.ts';
import { listed } from './say.ts';

/** Wood between neighbouring pin holes. */
export const pinGap: Check = {
  id: 'pinGap',
  path: 'pins.spread',
  facts: ({ pins }, { strings }) =>
    strings.slice(1).map((s, k) => {
      const before = strings[k];
      return {
        where: `${before?.name ?? ''} and ${s.name}`,
        value: before === undefined ? 0 : distance(before.pin, s.pin) - pins.hole,
      };
    }),
  says: (found) => `Wood between neighbouring pin holes: ${listed(found)}`,
  means: { low: 'The bridge splits from hole to hole.' },
  fixes: [['pins.spread'], ['pins.hole'], ['pins.spread', 'pins.hole']],
};
