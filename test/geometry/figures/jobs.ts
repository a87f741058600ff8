import { build } from '../../../geometry/build.ts';
import type { Design } from '../../../geometry/design.ts';
import { setAt } from '../../../geometry/fields.ts';
import type { Job } from '../../../geometry/job.ts';
import { readJob } from '../../../geometry/job-file.ts';
import type { Settled } from '../../../geometry/settle.ts';
import { starters } from '../../../src/jobs/index.ts';
import { workedExample } from '../../solved.ts';

export interface Case {
  readonly name: string;
  readonly job: Settled;
  readonly design: Design;
}

const solvedCase = (name: string, job: Job): Case => {
  const solved = build(job);
  if (!solved.ok) throw new Error(`${name}: ${solved.problems.map(({ says }) => says).join('\n')}`);
  return { name, job: solved.job, design: solved.design };
};

/** The worked example with values put in, all of them invented. */
export const changed = (name: string, values: Readonly<Record<string, unknown>>): Case =>
  solvedCase(
    name,
    Object.entries(values).reduce<Job>((job, [path, value]) => setAt(job, path, value), workedExample()),
  );

const readings = {
  'strung.thickness': 9.1,
  'strung.exposure': 3.6,
  'strung.actionBass': 3.1,
  'strung.actionTreble': 2.4,
  'strung.firstFretBass': 0.6,
  'strung.firstFretTreble': 0.4,
  'strung.relief': 0.2,
};

/** Jobs in which every way to a number is gone at least once. */
export const cases: readonly Case[] = [
  solvedCase('the worked example', workedExample()),
  ...starters.map(({ id, text }) => {
    const read = readJob(text);
    if (!read.ok) throw new Error(id);
    return solvedCase(id, read.job);
  }),
  changed('computed setbacks on a thin saddle', {
    'strings.setbacks': 'computed',
    'strings.spacing': 'gaps',
    'guitar.rise': 'readings',
    'guitar.boardRadiusEnd': 406.4,
    'slot.line': 'least',
    'slot.width': 1.6,
    'saddle.crown': 'gauge',
    'pins.leaves': 'pins',
    'limits.exposure': { from: 3.8 },
  }),
  changed('computed setbacks, nylon, rectangular', {
    'strings.setbacks': 'computed',
    'slot.line': 'least',
    'bridge.footprint': 'rectangle',
    'bridge.topRadius': 'flat',
    'bridge.tilt': 0.004,
    'guitar.topRadius': 'flat',
    'guitar.boardRadiusNut': 'flat',
    'guitar.boardRadiusEnd': 'flat',
    'guitar.bodyJoint': 12,
    'pins.row': 'square',
    'pins.leaves': 'pins',
    'strings.list.B3.material': 'nylon',
    'strings.list.B3.gauge': 0.8128,
    'strings.list.E4.material': 'fluorocarbon',
    'strings.list.E4.gauge': 0.56,
  }),
  changed('a saddle for a strung guitar, heard', {
    ...readings,
    work: 'saddle',
    'guitar.scale': 'frets',
    'guitar.measured': [
      { id: 'a', fret: 5, distance: 160.9 },
      { id: 'b', fret: 12, distance: 320.2 },
      { id: 'c', fret: 14, distance: 355.1 },
      { id: 'd', fret: 19, distance: 426.6 },
    ],
    'guitar.neckPlaneHeight': 'strung',
    'strings.setbacks': 'heard',
    'strings.list.E2.cents': 6,
    'strings.list.G3.cents': -3,
    'slot.line': 'typed',
    'slot.fromNut': 643.2,
    'slot.slant': -0.02,
    'saddle.crown': 'heights',
    'saddle.under': 0.8,
  }),
  changed('rise from readings, the scale checked against the frets', {
    ...readings,
    'strung.light': 0.4,
    'guitar.neckPlaneHeight': 11,
    'guitar.rise': 'readings',
    'guitar.measured': [
      { id: 'a', fret: 7, distance: 212.9 },
      { id: 'b', fret: 12, distance: 320.1 },
      { id: 'c', fret: 17, distance: 400.3 },
    ],
    'slot.line': 'typed',
  }),
  changed('a scar of another kind, a plate capped', {
    'scar.outline': 'bellyBefore',
    'scar.fromNut': 632.2,
    'plate.cap': 2,
    'plate.grain': 'slanted',
  }),
  changed('two passes of setting up', {
    'setup.log': [
      {
        id: 'p1',
        note: '',
        readings: [
          { id: 'E2', action: 3.1, cents: 5 },
          { id: 'G3', action: 'not taken', cents: -2 },
        ],
      },
      {
        id: 'p2',
        note: '',
        readings: [
          { id: 'E2', action: 2.9, cents: 2 },
          { id: 'A2', action: 'not taken', cents: -3 },
          { id: 'D3', action: 2.6, cents: 'not taken' },
          { id: 'E4', action: 2.2, cents: 'not taken' },
        ],
      },
    ],
  }),
  changed('a pass that finds every string too low', {
    'setup.log': [
      {
        id: 'p1',
        note: '',
        readings: [
          { id: 'E2', action: 2.2, cents: 'not taken' },
          { id: 'E4', action: 1.7, cents: 12 },
        ],
      },
    ],
  }),
  changed('rise from a straightedge at pitch', {
    'strung.thickness': 9.1,
    'strung.light': 0.4,
    'guitar.rise': 'readings',
    'guitar.neckPlaneHeight': 10.1,
    work: 'saddle',
    'saddle.crown': 'gauge',
    'show.radius': 'mm',
  }),
  changed('a section through the treble wing', { 'show.sectionAcross': 62.5 }),
  changed('a saddle on a domed floor, a bridge of ebony', {
    'slot.floor': 'dome',
    'saddle.under': 0.6,
    'bridge.wing': 'ogee',
    'bridge.edge': 'round',
    'bridge.tipTreble': 2.8,
    'stock.wood': 'ebony',
    'top.radiusAlong': 9000,
  }),
  changed('the same, its crown through each string’s height', {
    'slot.floor': 'dome',
    'saddle.crown': 'heights',
    'plate.cap': 2,
    'stock.allowance': 1.5,
  }),
];
