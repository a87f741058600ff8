import { setAt } from '../../../geometry/fields.ts';
import { type Job, notTaken } from '../../../geometry/job.ts';
import { freeKey } from '../free-key.ts';

/** How many readings of the strung guitar a job may hold, and how many strings each. */
export const mostPasses = 60;
const mostStrings = 24;

const empty = (id: string) => ({ id, action: notTaken, cents: notTaken }) as const;

/** The job with one more reading of the strung guitar, nothing taken yet, one place for each string; and the key that it has of its own. */
export const withPass = (job: Job): { readonly job: Job; readonly id: string } => {
  const { log } = job.setup;
  const id = freeKey(log, 'pass');
  const pass = { id, note: '', readings: job.strings.list.map((string) => empty(string.id)) };
  return { job: setAt(job, 'setup.log', [...log, pass]), id };
};

/** The job without the reading of this key. */
export const withoutPass = (job: Job, id: string): Job =>
  setAt(
    job,
    'setup.log',
    job.setup.log.filter((pass) => pass.id !== id),
  );

/** The job with a place for what a path of the set-up's log leads to: a string that came later has none in the readings before it. Else the job itself. */
export const withReading = (job: Job, path: string): Job => {
  const [group, list, passId, , stringId] = path.split('.');
  const pass = group === 'setup' && list === 'log' ? job.setup.log.find(({ id }) => id === passId) : undefined;
  if (pass === undefined || stringId === undefined || pass.readings.some(({ id }) => id === stringId)) return job;
  // Where there is no more room, the readings of strings that are gone make it.
  const isStrung = ({ id }: { readonly id: string }) => job.strings.list.some((string) => string.id === id);
  const kept = pass.readings.length < mostStrings ? pass.readings : pass.readings.filter(isStrung);
  return setAt(job, `setup.log.${pass.id}.readings`, [...kept, empty(stringId)]);
};
