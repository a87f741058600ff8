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

const puts = (values: Readonly<Record<string, unknown>>): Job =>
  Object.entries(values).reduce<Job>((job, [path, value]) => setAt(job, path, value), workedExample());

/** Every footprint, between them with every wing, edge, end and pin row. Invented. */
export const footprintJobs: Readonly<Record<Job['bridge']['footprint'], () => Job>> = {
  belly: () =>
    puts({
      'bridge.wing': 'round',
      'bridge.edge': 'chamfer',
      'slot.ends': 'square',
      'pins.ramp': 4,
      'pins.leaves': 'pins',
    }),
  bellyBefore: () =>
    puts({
      'bridge.footprint': 'bellyBefore',
      'bridge.frontToSaddle': 20,
      'bridge.wing': 'straight',
      'bridge.tipTreble': 4,
      'pins.row': 'square',
      'pins.leaves': 'pins',
    }),
  rectangle: () =>
    puts({
      'bridge.footprint': 'rectangle',
      'bridge.length': 186,
      'bridge.depth': 29,
      'bridge.ends': 'round',
      'bridge.wing': 'ogee',
      'bridge.edge': 'round',
      'slot.ends': 'through',
      'pins.hold': 'tied',
      'pins.spread': 58,
      'pins.hole': 2.4,
    }),
  pyramid: () =>
    puts({
      'bridge.footprint': 'pyramid',
      'bridge.depth': 30,
      'bridge.deckWidth': 90,
      'bridge.wing': 'hollow',
      'pins.row': 'square',
    }),
  waisted: () =>
    puts({
      'bridge.footprint': 'waisted',
      'bridge.depth': 40,
      'bridge.waistDepth': 33,
      'bridge.shoulder': 6,
      'bridge.edge': 'round',
    }),
  free: () =>
    puts({
      'bridge.footprint': 'free',
      'bridge.points': [
        { id: 'a', across: 0, along: -1.5, turn: 'smooth' },
        { id: 'b', across: 78, along: 4, turn: 'corner' },
        { id: 'c', across: 74, along: 25, turn: 'corner' },
        { id: 'd', across: 30, along: 32, turn: 'smooth' },
        { id: 'e', across: 0, along: 36, turn: 'smooth' },
      ],
      'bridge.wing': 'straight',
      'bridge.edge': 'chamfer',
      'pins.row': 'arc',
      'pins.hold': 'behind',
      'pins.hole': 3,
    }),
};

/** A top with old holes of every kind and plan, a belly and a dip, braces and an old scar, under a new bridge whose worn plate is capped. Invented. */
export const oldTop = (): Job => {
  const job = workedExample();
  const old = job.strings.list.map(({ id }, k) => ({
    id: `old-${id}`,
    what: 'pin',
    across: -27.6 + 11.05 * k,
    fromNut: 656.4 - 0.43 * k,
    diameter: 5,
    plan: 'keep',
  }));
  const hole = (id: string, what: string, across: number, fromNut: number, diameter: number, plan: string) => ({
    id,
    what,
    across,
    fromNut,
    diameter,
    plan,
  });
  return puts({
    'top.holes': [
      ...old,
      hole('left', 'screw', -58, 645, 3, 'register'),
      hole('right', 'screw', 58, 645, 3, 'register'),
      hole('bolt', 'screw', -44, 652, 6, 'keep'),
      hole('astray', 'other', 42, 651, 4, 'plug'),
      hole('shifted', 'other', 48, 652, 4, 'move'),
    ],
    'top.rises': [
      { id: 'belly', across: 20, fromNut: 664, height: 0.8 },
      { id: 'dip', across: -10, fromNut: 637, height: -0.4 },
    ],
    'top.braces': [
      { id: 'bass', name: 'main brace', across: -110, fromNut: 760, acrossTo: 20, fromNutTo: 560, width: 8 },
      { id: 'treble', name: 'main brace', across: 110, fromNut: 760, acrossTo: -20, fromNutTo: 560, width: 8 },
    ],
    'scar.outline': 'belly',
    'scar.fromNut': 633.6,
    'scar.length': 153,
    'plate.state': 'worn',
    'plate.cap': 2,
    'plate.grain': 'across',
  });
};
