import { setAt } from '../../geometry/fields.ts';
import type { Job } from '../../geometry/job.ts';
import { workedExample } from '../solved.ts';

/**
 * The worked example with everything on it that a drawing can show: a slot cut anew in a bridge that stays, an element with its wire hole, an old scar, a crown by gauge, break points out of reach, and a
 * reading of the strung guitar that takes something off and moves two break points. Invented.
 */
export const fullJob = (): Job => {
  const job = workedExample();
  const setbacks = [5.6, 2.4, 2.2, 1, 3.2, 0.6];
  return {
    ...job,
    work: 'saddle',
    strings: {
      ...job.strings,
      setbacks: 'typed',
      list: job.strings.list.map((s, k) => ({ ...s, setback: setbacks[k] ?? 0 })),
    },
    slot: { ...job.slot, line: 'least', fromNut: 640.4, slant: -0.02 },
    saddle: { ...job.saddle, crown: 'gauge', play: 0.05, proud: 1.2, under: 1.5, wireHole: 2.5, wireAcross: -31 },
    scar: { outline: 'belly', fromNut: 632.5, length: 147, depth: 39, wingDepth: 24, bellyWidth: 130 },
    setup: {
      log: [
        {
          id: 'first',
          note: '',
          readings: job.strings.list.map(({ id }, k) => ({
            id,
            action: 2.9 - 0.12 * k,
            cents: k === 0 ? -2 : k === 3 ? 3 : 'not taken',
          })),
        },
      ],
    },
  };
};

/** The same with twelve strings, long names and its crown through each string's height. Invented. */
export const twelveStrings = (): Job => {
  const job = fullJob();
  const pairs = job.strings.list.flatMap((s, k) => [
    s,
    { ...s, id: `${s.id}-octave`, name: `${s.name} octave`, gauge: k < 4 ? 0.3 : s.gauge, core: 'plain' as const },
  ]);
  const readings = pairs.map(({ id }, k) => ({
    id,
    action: 2.45 - 0.06 * k,
    cents: k === 5 ? 4 : ('not taken' as const),
  }));
  const wide = {
    ...job,
    setup: { log: [{ id: 'first', note: '', readings }] },
    strings: { ...job.strings, list: pairs },
    saddle: { ...job.saddle, crown: 'heights' as const },
  };
  return setAt(setAt(wide, 'pins.row', 'slanted'), 'hand', 'left');
};
