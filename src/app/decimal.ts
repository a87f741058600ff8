import type { Job } from '../../geometry/job.ts';
import { readAs } from '../../geometry/read-as.ts';
import type { DecimalMark, ShowUnits } from '../../geometry/units.ts';
import type { State } from './state.ts';
import { decimalKey } from './stored-keys.ts';

/*
 * The mark before a number's decimals is the reader's, not the job's: it is kept on the device, and a job that is sent on is read by the next one as they do. Typed numbers are read with either.
 */

/** What a person chooses on a device: as the browser's language has it, or one of the two. */
export const decimalChoices = ['browser', 'point', 'comma'] as const;
export type DecimalChoice = (typeof decimalChoices)[number];

export interface Decimals {
  readonly chosen: DecimalChoice;
  readonly mark: DecimalMark;
}

/** The mark of the first of these languages that the browser knows, among the digits 0 to 9 in which all numbers stand here (Unicode CLDR, through Intl); a point where it is another sign than these two. */
export const markOf = (languages: readonly string[]): DecimalMark => {
  if (languages.length === 0) return 'point';
  try {
    const parts = new Intl.NumberFormat([...languages], { numberingSystem: 'latn' }).formatToParts(0.5);
    return parts.find(({ type }) => type === 'decimal')?.value === ',' ? 'comma' : 'point';
  } catch {
    // A language that is none.
    return 'point';
  }
};

export const decimalsFor = (chosen: DecimalChoice, languages: readonly string[]): Decimals => ({
  chosen,
  mark: chosen === 'browser' ? markOf(languages) : chosen,
});

/** How numbers are read on this device: as was chosen here, else as the browser's languages have it. Never throws. */
export const decimalsHere = (local: () => Storage, languages: readonly string[]): Decimals => {
  let kept: string | null = null;
  try {
    kept = local().getItem(decimalKey);
  } catch {
    // Where there is no storage nothing was chosen.
  }
  return decimalsFor(decimalChoices.find((one) => one === kept) ?? 'browser', languages);
};

/** Keeps the choice on this device; where there is no storage it holds till the page is left. */
export const keepDecimals = (chosen: DecimalChoice, local: () => Storage): void => {
  try {
    if (chosen === 'browser') local().removeItem(decimalKey);
    else local().setItem(decimalKey, chosen);
  } catch {
    // The page has it.
  }
};

const known = { jobs: new WeakMap<Job, Job>(), shows: new WeakMap<Job['show'], Job['show']>() };

/** A job as one reads it who writes decimals so, the same one each time: what has not changed stays as it is, and is not drawn again. */
export const asRead = (job: Job, mark: DecimalMark): Job => {
  if (mark === 'point') return job;
  const before = known.jobs.get(job);
  if (before !== undefined) return before;
  const read = readAs(job, mark);
  const show = known.shows.get(job.show) ?? read.show;
  known.shows.set(job.show, show);
  const now = { ...read, show };
  known.jobs.set(job, now);
  return now;
};

type Reader = Pick<State, 'job' | 'decimals'>;

/** The bench's job as it is read on this device: what shows its numbers goes by this one, what keeps or changes them by the job itself. */
export const jobAsRead = ({ job, decimals }: Reader): Job => asRead(job, decimals.mark);

/** How the bench's numbers are shown on this device. */
export const showAsRead = (state: Reader): Job['show'] & ShowUnits => jobAsRead(state).show;
