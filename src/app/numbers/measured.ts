import { getAt, setAt } from '../../../geometry/fields.ts';
import type { Job } from '../../../geometry/job.ts';
import { freeKey } from '../strings.ts';

/** How many measured frets a job may hold. */
export const mostFrets = 40;

/** Frets that lie well apart and are easily reached with a rule, those that say most of the scale among the first. */
const proposals = [5, 7, 12, 17, 3, 9, 15, 19] as const;

/** The fret to measure next: the first that is proposed, on the board and not measured; else the highest that is not. */
export const nextFret = ({ guitar }: Job): number => {
  const isLeft = (fret: number) => fret <= guitar.frets && !guitar.measured.some((one) => one.fret === fret);
  const all = Array.from({ length: guitar.frets }, (_, k) => guitar.frets - k);
  return [...proposals, ...all].find(isLeft) ?? 12;
};

/** The job with one more measured fret, its distance from the nut in mm. */
export const withFret = (job: Job, fret: number, distance: number): Job => {
  const { measured } = job.guitar;
  return setAt(job, 'guitar.measured', [...measured, { id: freeKey(measured, 'fret'), fret, distance }]);
};

/** The job without the measured fret of this key. */
export const withoutFret = (job: Job, id: string): Job =>
  setAt(
    job,
    'guitar.measured',
    job.guitar.measured.filter((one) => one.id !== id),
  );

/** The number of the measured fret of this key; undefined if there is none. */
export const fretOf = (job: Job, id: string): number | undefined => {
  const fret = getAt(job, `guitar.measured.${id}.fret`);
  return typeof fret === 'number' ? fret : undefined;
};
