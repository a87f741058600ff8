import type { NeckPlaneAtPitch } from '../instrument/strung.ts';
import type { Settled } from '../settle.ts';
import { formatQuantity } from '../units.ts';
import type { Check } from './check.ts';

const from = { typed: '', readings: ', by the readings', assumed: ', assumed' } as const;

/** The readings at pitch that the rise is taken from: the old bridge's own numbers, where it is they. */
const pitchWords = ({ strung, show }: Settled, { strung: fromSaddle }: NeckPlaneAtPitch): string => {
  const mm = (value: number | string) => formatQuantity(value, 'length', show, { unit: true });
  return fromSaddle === undefined
    ? `the old bridge, ${mm(strung.thickness)}, with its light, ${mm(strung.light)}, makes`
    : 'old bridge, saddle and action, at pitch, make';
};

/** How far the neck plane comes down to the top when the strings are brought to pitch. */
export const rise: Check = {
  id: 'rise',
  path: 'guitar.rise',
  facts: ({ guitar }) => [{ value: guitar.rise }],
  says: ({ worst, say, level, job, design: { readings } }) => {
    const rise = `Rise under tension ${say(worst.value)}${from[readings.riseFrom]}`;
    if (level === 'right' || readings.riseFrom !== 'readings') return rise;
    // What cannot be a rise is two readings that contradict each other.
    const mm = (value: number) => formatQuantity(value, 'length', job.show, { unit: true });
    const { neckPlaneHeight } = job.guitar;
    return `${rise}: straightedge to top ${mm(neckPlaneHeight)}, but ${pitchWords(job, readings.atPitch)} ${mm(neckPlaneHeight - job.guitar.rise)}`;
  },
  means: {
    low: 'Top and neck hardly give under the strings: measure again with the strings at pitch and off.',
    high: 'Top or neck gives more than is usual: measure again, and look for loose braces and a moving joint.',
  },
  fixes: [['guitar.rise'], ['strung.light'], ['strung.exposure'], ['strung.thickness']],
};
