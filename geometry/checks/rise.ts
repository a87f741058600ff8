import type { Check } from './check.ts';

const from = { typed: '', readings: ', by the readings', assumed: ', assumed' } as const;

/** How far the neck plane comes down to the top when the strings are brought to pitch. */
export const rise: Check = {
  id: 'rise',
  path: 'guitar.rise',
  facts: ({ guitar }) => [{ value: guitar.rise }],
  says: ({ worst, say, design }) => `Rise under tension ${say(worst.value)}${from[design.readings.riseFrom]}`,
  means: {
    low: 'Top and neck hardly give under the strings: measure again with the strings at pitch and off.',
    high: 'Top or neck gives more than is usual: measure again, and look for loose braces and a moving joint.',
  },
  fixes: [['guitar.rise'], ['strung.light'], ['strung.exposure'], ['strung.thickness']],
};
