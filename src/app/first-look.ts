import type { Job } from '../../geometry/job.ts';
import { jobFormat, jobVersion } from '../../geometry/job-format.ts';
import { solve } from '../../geometry/solve.ts';
import demo from '../jobs/heron.json' with { type: 'json' };
import { asRead, decimalsHere } from './decimal.ts';
import { type State, untouched } from './state.ts';
import { lookKey, oldKeys } from './stored-keys.ts';

/** Whether what stands there is the demo, as it came. */
export const isDemo = ({ isFresh, job }: Pick<State, 'isFresh' | 'job'>): boolean => isFresh && job.name === demo.name;

/** A job that this page wrote itself; one of an earlier format, or whatever else stands there, is left to the reader. */
const ownJob = (text: string): Job | undefined => {
  const read = JSON.parse(text);
  return read?.format === jobFormat && read.version === jobVersion ? read : undefined;
};

/** The copy that this window left, else the device's; undefined where there is none. */
const copyIn = (session: () => Storage, local: () => Storage): string | null =>
  session().getItem(lookKey) ?? local().getItem(lookKey);

/**
 * How the bench stands as far as a first drawing asks: the copy of the job as it was left, taken at its word, else the demo. The reader and the database, which look closely, come with the rest of the page. Undefined where only they can
 * tell what to show: a job of an earlier version, or one that cannot be built. Never throws.
 */
export const firstLook = (
  session: () => Storage,
  local: () => Storage,
  languages: readonly string[] = [],
): State | undefined => {
  try {
    const text = copyIn(session, local);
    if (text === null && (local().getItem(oldKeys.job) !== null || local().getItem(oldKeys.kept) !== null))
      return undefined;
    const job = text === null ? (demo as unknown as Job) : ownJob(text);
    if (job === undefined) return undefined;
    const decimals = decimalsHere(local, languages);
    const solved = solve(asRead(job, decimals.mark));
    return solved.ok ? { ...untouched, id: '', isFresh: true, job, decimals, solved, built: solved } : undefined;
  } catch {
    return undefined;
  }
};

/** Leaves a copy of a job for the next first drawing; none of one that cannot be built. Where there is no storage the next first drawing only comes a little later. */
export const leaveLook = (
  { job, solved }: Pick<State, 'job' | 'solved'>,
  session: () => Storage,
  local: () => Storage,
): void => {
  for (const storage of [session, local]) {
    try {
      if (solved.ok) storage().setItem(lookKey, JSON.stringify(job));
      // A text that no reader takes for a job: the next first drawing waits.
      else storage().setItem(lookKey, 'null');
    } catch {
      // The database has it.
    }
  }
};
