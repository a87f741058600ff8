import type { Job } from '../../geometry/job.ts';
import { jobFormat, jobVersion } from '../../geometry/job-format.ts';
import { solve } from '../../geometry/solve.ts';
import demo from '../jobs/heron.json' with { type: 'json' };
import { keys } from './keys.ts';
import { type State, untouched } from './state.ts';

/** A job that this page wrote itself; one of an earlier format, or whatever else stands there, is left to the reader. */
const ownJob = (text: string): Job | undefined => {
  const read = JSON.parse(text);
  return read?.format === jobFormat && read.version === jobVersion ? read : undefined;
};

/**
 * How the bench stands as far as a first drawing asks: the job as it was left, taken at its word, else the demo. The reader, which looks closely, comes with the rest of the page. Undefined where only that can tell
 * what to show: a job that it has to bring up to date, or that cannot be built. Never throws.
 */
export const firstLook = (getStorage: () => Storage): State | undefined => {
  try {
    const storage = getStorage();
    const text = storage.getItem(keys.job);
    if (storage.getItem(keys.built) !== null) return undefined;
    const job = text === null ? (demo as unknown as Job) : ownJob(text);
    if (job === undefined) return undefined;
    const solved = solve(job);
    return solved.ok ? { ...untouched, job, solved, built: solved, saved: job } : undefined;
  } catch {
    return undefined;
  }
};
