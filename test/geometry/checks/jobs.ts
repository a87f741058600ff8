import fc from 'fast-check';
import { setAt } from '../../../geometry/fields.ts';
import type { Job, JobString } from '../../../geometry/job.ts';
import { workedExample } from '../../solved.ts';

export type Put = readonly [path: string, value: unknown];

/** A job with these values put in, one after the other. */
export const put = (job: Job, ...values: readonly Put[]): Job =>
  values.reduce((changed, [path, value]) => setAt(changed, path, value), job);

/** An invented nylon set: gauge, core (mm) and setback by string. */
const nylon: Readonly<Record<string, readonly [gauge: number, core: number | 'plain', setback: number]>> = {
  E2: [1.09, 0.7, 1.6],
  A2: [0.86, 0.6, 1.4],
  D3: [0.74, 0.55, 1.2],
  G3: [1.02, 'plain', 2.4],
  B3: [0.82, 'plain', 1.6],
  E4: [0.71, 'plain', 1.1],
};

const softened = (string: JobString): JobString => {
  const [gauge, core, setback] = nylon[string.id] ?? [1, 'plain', 1];
  return { ...string, gauge, core, setback, material: 'nylon', wrap: 'silvered copper' };
};

/** The worked example strung with nylon: a low bridge, a high action, a wide flat board; nothing of it is measured. */
export const nylonJob = (): Job => {
  const job = workedExample();
  return put(
    job,
    ['strings.list', job.strings.list.map(softened)],
    ['guitar.boardRadiusNut', 'flat'],
    ['guitar.boardRadiusEnd', 'flat'],
    ['guitar.nutSpread', 43],
    ['guitar.neckPlaneHeight', 6.8],
    ['strings.spread', 58],
    ['action.bass', 3.7],
    ['action.treble', 3],
    ['action.firstFretBass', 0.7],
    ['action.firstFretTreble', 0.6],
    ['bridge.footprint', 'rectangle'],
    ['bridge.length', 190],
    ['bridge.depth', 29],
    ['bridge.thickness', 8.4],
    ['bridge.topRadius', 'flat'],
    ['bridge.deckWidth', 86],
    ['slot.length', 80],
    ['slot.width', 2.8],
    ['slot.depth', 4.6],
    ['pins.spread', 58],
    ['pins.leaves', 7],
  );
};

const between = (min: number, max: number) => fc.double({ min, max, noNaN: true });
const orWord = (word: string, min: number, max: number) =>
  fc.oneof({ arbitrary: fc.constant(word), weight: 1 }, { arbitrary: between(min, max), weight: 2 });

const numbers: Readonly<Record<string, fc.Arbitrary<number | string>>> = {
  'show.length': fc.constantFrom('mm', 'in', 'fraction'),
  'show.radius': fc.constantFrom('mm', 'in', 'fraction'),
  'guitar.scale': between(600, 660),
  'guitar.neckPlaneHeight': between(7.5, 12.5),
  'guitar.rise': fc.oneof(fc.constant('readings'), between(0, 2)),
  'guitar.relief': between(0, 0.5),
  'guitar.boardRadiusNut': between(230, 450),
  'guitar.boardRadiusEnd': between(300, 560),
  'guitar.boardWidth': orWord('not taken', 52, 60),
  'guitar.topRadius': orWord('flat', 4000, 20000),
  'action.bass': between(1.8, 3.4),
  'action.treble': between(1.3, 2.6),
  'action.firstFretBass': between(0.2, 0.8),
  'strings.spacing': fc.constantFrom('centres', 'gaps'),
  'strings.spread': between(52, 60),
  'strings.setbacks': fc.constantFrom('typed', 'computed', 'heard'),
  'strings.list.E2.setback': between(0, 7),
  'strings.list.B3.cents': orWord('not taken', -6, 8),
  'strings.list.E4.setback': between(0, 5),
  'bridge.footprint': fc.constantFrom('belly', 'rectangle'),
  'bridge.length': between(140, 185),
  'bridge.depth': between(30, 44),
  'bridge.frontToSaddle': between(6, 13),
  'bridge.thickness': between(6, 12),
  'bridge.topRadius': orWord('flat', 280, 900),
  'bridge.tilt': between(-0.012, 0.012),
  'bridge.deckWidth': between(82, 112),
  'bridge.tipThickness': between(1.8, 5.5),
  'bridge.wing': fc.constantFrom('hollow', 'straight'),
  'slot.width': between(2, 5),
  'slot.length': between(66, 90),
  'slot.depth': between(3, 7),
  'slot.line': fc.constantFrom('least', 'outer', 'typed'),
  'slot.slant': between(-0.06, 0),
  'saddle.crown': fc.constantFrom('best', 'gauge', 'heights'),
  'saddle.under': between(0, 1.5),
  'pins.row': fc.constantFrom('square', 'slanted'),
  'pins.spread': between(50, 66),
  'pins.fromSaddle': between(7, 15),
  'pins.leaves': orWord('pins', 5, 14),
  'plate.cap': orWord('none', 0.8, 4),
  'scar.outline': fc.constantFrom('none', 'belly', 'rectangle'),
  'scar.length': between(135, 170),
  'scar.depth': between(26, 40),
  'scar.wingDepth': between(18, 25),
};

/** What hangs together on a guitar, so that it is drawn as what it differs by. */
const differences = {
  slotBeyondScale: between(0, 6),
  scarBeforeScale: between(6, 14),
  scaleByFrets: between(-1.5, 1.5),
  rise: between(-0.2, 2.6),
  light: between(0, 1.2),
  exposureMissed: between(-0.6, 0.6),
};

/** Over the old saddle the middle of the strings stands about so high, with these readings. */
const oldSaddle = 4.9;
const readings: readonly Put[] = [
  ['strung.actionBass', 2.9],
  ['strung.actionTreble', 2.3],
  ['strung.firstFretBass', 0.5],
  ['strung.firstFretTreble', 0.4],
  ['strung.relief', 0.2],
];

/** Jobs of which much is off, mostly constructible; about one in five strung with nylon. Work as given. */
export const roughJob = (work: Job['work']): fc.Arbitrary<Job> =>
  fc
    .record({
      values: fc.record(numbers),
      by: fc.record(differences),
      isNylon: fc.nat(4).map((k) => k === 0),
      isStrung: fc.boolean(),
      hasOwnRange: fc.nat(3).map((k) => k === 0),
    })
    .map(({ values, by, isNylon, isStrung, hasOwnRange }) => {
      const scale = values['guitar.scale'] as number;
      const height = (values['guitar.neckPlaneHeight'] as number) - (isNylon ? 4 : 0);
      const soft = nylonJob();
      const atPitch = height - by.rise;
      const measured = [5, 12, 17].map((fret) => ({
        id: `f${fret}`,
        fret,
        distance: (scale + by.scaleByFrets) * (1 - 2 ** (-fret / 12)),
      }));
      return put(
        workedExample(),
        ...Object.entries(values),
        ['work', work],
        ['guitar.measured', measured],
        ['guitar.neckPlaneHeight', height],
        ['slot.fromNut', scale + by.slotBeyondScale],
        ['scar.fromNut', scale - by.scarBeforeScale],
        ...(hasOwnRange ? [['limits.exposure.to', 4] as const] : []),
        ...(isNylon
          ? ([
              ['strings.list', soft.strings.list],
              ['action', soft.action],
            ] as const)
          : []),
        ...(isStrung
          ? ([
              ...readings,
              ['strung.light', by.light],
              ['strung.thickness', Math.max(1, atPitch - by.light)],
              ['strung.exposure', Math.max(0, by.light + oldSaddle + by.exposureMissed)],
            ] as const)
          : []),
      );
    });
