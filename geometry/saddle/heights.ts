import { crownAt } from '../instrument/board.ts';
import { courseCount, courseOf } from '../instrument/courses.ts';
import { fretAt } from '../instrument/frets.ts';
import type { Job } from '../job.ts';
import type { Settled } from '../settle.ts';

/** One string's line in the fret plane's frame, mm: across at the nut and at its break point, and its height there. */
export interface StringLine {
  readonly acrossAtNut: number;
  readonly acrossAtSaddle: number;
  /** Distance of the break point from the nut: `L + setback`. */
  readonly breakX: number;
  /** Rise per mm on the way to the saddle. */
  readonly slope: number;
  /** Height of the string's underside at its break point: the saddle's height there. */
  readonly heightAboveFretPlane: number;
}

/** Where a string runs across at a distance x from the nut, mm: straight from its place at the nut to its place at the break point. */
export const acrossAt = (line: Pick<StringLine, 'acrossAtNut' | 'acrossAtSaddle' | 'breakX'>, x: number): number =>
  line.acrossAtNut + ((line.acrossAtSaddle - line.acrossAtNut) * x) / line.breakX;

/** Action at fret 12 and clearance at fret 1 of string k, mm: they run linearly from bass to treble by the courses' numbers, which single strings each are; both strings of a pair take their course's. */
export const wantedAt = ({ action, strings }: Job, k: number): { action: number; firstFret: number } => {
  const { bass, treble, firstFretBass, firstFretTreble } = action;
  const part = courseOf(strings, k) / (courseCount(strings) - 1);
  return { action: bass + (treble - bass) * part, firstFret: firstFretBass + (firstFretTreble - firstFretBass) * part };
};

/**
 * The line of string k with its break point at `breakX`: across, straight from its place at the nut to its place at the break point; upwards, through
 * (x_1, crown + first-fret clearance) and (x_12, crown + action), carried on to the break point.
 */
export const stringLine = (
  job: Settled,
  k: number,
  acrossAtNut: number,
  acrossAtSaddle: number,
  breakX: number,
): StringLine => {
  const { guitar } = job;
  const across = (x: number) => acrossAt({ acrossAtNut, acrossAtSaddle, breakX }, x);
  const wanted = wantedAt(job, k);
  const x1 = fretAt(guitar.scale, 1);
  const x12 = fretAt(guitar.scale, 12);
  const z1 = crownAt(guitar, x1, across(x1)) + wanted.firstFret;
  const z12 = crownAt(guitar, x12, across(x12)) + wanted.action;
  const slope = (z12 - z1) / (x12 - x1);
  return { acrossAtNut, acrossAtSaddle, breakX, slope, heightAboveFretPlane: z1 + slope * (breakX - x1) };
};
