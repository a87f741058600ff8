import type { Job } from '../../../geometry/job.ts';

/** Frets that lie well apart and are easily reached with a rule, those that say most of the scale among the first. */
const proposals = [5, 7, 12, 17, 3, 9, 15, 19] as const;

/** The fret to measure next: the first that is proposed, on the board and not measured; else the highest that is not. */
export const nextFret = ({ guitar }: Job): number => {
  const isLeft = (fret: number) => fret <= guitar.frets && !guitar.measured.some((one) => one.fret === fret);
  const all = Array.from({ length: guitar.frets }, (_, k) => guitar.frets - k);
  return [...proposals, ...all].find(isLeft) ?? 12;
};
