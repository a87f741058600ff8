import type { Job, JobString } from '../job.ts';
import { notTaken } from '../schema/field.ts';
import { MM_PER_INCH, parseQuantity } from '../units.ts';
import { courseOf } from './courses.ts';
import { stretchSetback } from './intonation.ts';

/** One string of a set, by what it is made of; mm. */
export interface SetString {
  readonly note: string;
  readonly gauge: number;
  readonly core: JobString['core'];
  readonly material: JobString['material'];
  readonly wrap: JobString['wrap'];
}

export interface StringSet {
  readonly title: string;
  readonly courses: Job['strings']['courses'];
  /** Bass first; of a pair the string on the bass side first. */
  readonly strings: readonly SetString[];
}

/** Gauge and core in thousandths of an inch, by which strings are bought. */
type Wound = readonly [note: string, gauge: number, core: number];
type Plain = readonly [note: string, gauge: number];

/** Thousandths of an inch in mm, without the last places' noise. */
const thousandths = (of: number): number => Math.round(of * MM_PER_INCH * 10) / 10_000;

const thick = ([note, gauge, core]: Wound | Plain) => ({
  note,
  gauge: thousandths(gauge),
  core: core === undefined ? ('plain' as const) : thousandths(core),
});
const steel = (of: Wound | Plain): SetString => ({
  ...thick(of),
  material: 'steel',
  wrap: 'phosphor bronze',
});
const nylon = (of: Wound | Plain): SetString => ({
  ...thick(of),
  material: 'nylon',
  wrap: 'silvered copper',
});

/**
 * Sets to start from, invented: whole thousandths of an inch within what is usual [practice], of no maker's table. In pairs the octave string lies on the bass side of its course [practice], and the two trebles are unisons.
 */
export const stringSets = {
  light: {
    title: 'six steel strings, light',
    courses: 'single',
    strings: (
      [
        ['E2', 52, 18],
        ['A2', 41, 16],
        ['D3', 31, 15],
        ['G3', 24, 12],
        ['B3', 16],
        ['E4', 12],
      ] as const
    ).map(steel),
  },
  medium: {
    title: 'six steel strings, medium',
    courses: 'single',
    strings: (
      [
        ['E2', 55, 19],
        ['A2', 43, 17],
        ['D3', 32, 15],
        ['G3', 24, 13],
        ['B3', 17],
        ['E4', 13],
      ] as const
    ).map(steel),
  },
  twelve: {
    title: 'twelve steel strings in pairs',
    courses: 'pairs',
    strings: (
      [
        ['E3', 24, 13],
        ['E2', 46, 17],
        ['A3', 17],
        ['A2', 35, 15],
        ['D4', 12],
        ['D3', 26, 13],
        ['G4', 9],
        ['G3', 20, 12],
        ['B3', 14],
        ['B3', 14],
        ['E4', 10],
        ['E4', 10],
      ] as const
    ).map(steel),
  },
  nylon: {
    title: 'six nylon strings',
    courses: 'single',
    strings: (
      [
        ['E2', 44, 23],
        ['A2', 35, 20],
        ['D3', 28, 18],
        ['G3', 40],
        ['B3', 32],
        ['E4', 28],
      ] as const
    ).map(nylon),
  },
} as const satisfies Readonly<Record<string, StringSet>>;

export type StringSetId = keyof typeof stringSets;

/** A note's pitch in equal temperament, Hz, to a thousandth. Throws a RangeError for what is no note. */
const pitchOf = (note: string): number => {
  const read = parseQuantity(note, 'frequency', 'mm');
  if (!read.ok || typeof read.value !== 'number') throw new RangeError(`${note} is no note.`);
  return Math.round(read.value * 1000) / 1000;
};

/** The scale that setbacks are worked out for where the job has none typed, mm [practice]. */
const commonScale = 645;

/**
 * The job strung with a set: its strings, single or in pairs; of two of one note the second's key and name are marked. Each string's setback is worked out from its stretch and stiffness with the job's action and finger's
 * allowance, to a tenth of a millimetre, for a job that has its setbacks typed. Places that were typed give way to equal centres. Spread and action stay as they are.
 */
export const withSet = <J extends Job>(job: J, id: StringSetId): J => {
  const { courses, strings: chosen }: StringSet = stringSets[id];
  const { action, guitar, strings } = job;
  const scale = typeof guitar.scale === 'number' ? guitar.scale : commonScale;
  const last = courseOf({ courses }, chosen.length - 1);
  const list = chosen.map(({ note, ...made }, k): JobString => {
    const isAgain = chosen.slice(0, k).some((other) => other.note === note);
    const pitch = pitchOf(note);
    const height = action.bass + ((action.treble - action.bass) * courseOf({ courses }, k)) / last;
    const setback = stretchSetback({ ...made, pitch }, scale, height) + strings.finger;
    return {
      ...made,
      id: isAgain ? `${note}-2` : note,
      name: isAgain ? `${note}′` : note,
      pitch,
      nutPlace: 0,
      saddlePlace: 0,
      setback: Math.min(20, Math.max(-5, Math.round(setback * 10) / 10)),
      cents: notTaken,
    };
  });
  const spacing = strings.spacing === 'typed' ? 'centres' : strings.spacing;
  return { ...job, strings: { ...strings, spacing, courses, list } };
};
