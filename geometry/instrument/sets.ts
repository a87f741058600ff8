import type { Job, JobString } from '../job.ts';
import { notTaken } from '../schema/field.ts';
import { parseQuantity } from '../units.ts';
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

type Wound = readonly [note: string, gauge: number, core: number];
type Plain = readonly [note: string, gauge: number];

const steel = ([note, gauge, core]: Wound | Plain): SetString => ({
  note,
  gauge,
  core: core ?? 'plain',
  material: 'steel',
  wrap: 'phosphor bronze',
});
const nylon = ([note, gauge, core]: Wound | Plain): SetString => ({
  note,
  gauge,
  core: core ?? 'plain',
  material: 'nylon',
  wrap: 'silvered copper',
});

/**
 * Sets to start from, invented: round numbers within what is usual [practice], of no maker's table. In pairs the octave string lies on the bass side of its course [practice], and the two trebles are unisons.
 */
export const stringSets = {
  light: {
    title: 'six steel strings, light',
    courses: 'single',
    strings: (
      [
        ['E2', 1.32, 0.46],
        ['A2', 1.05, 0.41],
        ['D3', 0.8, 0.37],
        ['G3', 0.6, 0.31],
        ['B3', 0.4],
        ['E4', 0.3],
      ] as const
    ).map(steel),
  },
  medium: {
    title: 'six steel strings, medium',
    courses: 'single',
    strings: (
      [
        ['E2', 1.4, 0.48],
        ['A2', 1.1, 0.43],
        ['D3', 0.82, 0.38],
        ['G3', 0.61, 0.33],
        ['B3', 0.43],
        ['E4', 0.33],
      ] as const
    ).map(steel),
  },
  twelve: {
    title: 'twelve steel strings in pairs',
    courses: 'pairs',
    strings: (
      [
        ['E3', 0.6, 0.32],
        ['E2', 1.16, 0.42],
        ['A3', 0.42],
        ['A2', 0.9, 0.38],
        ['D4', 0.3],
        ['D3', 0.66, 0.34],
        ['G4', 0.22],
        ['G3', 0.5, 0.3],
        ['B3', 0.36],
        ['B3', 0.36],
        ['E4', 0.26],
        ['E4', 0.26],
      ] as const
    ).map(steel),
  },
  nylon: {
    title: 'six nylon strings',
    courses: 'single',
    strings: (
      [
        ['E2', 1.12, 0.58],
        ['A2', 0.88, 0.5],
        ['D3', 0.72, 0.46],
        ['G3', 1.02],
        ['B3', 0.82],
        ['E4', 0.7],
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
