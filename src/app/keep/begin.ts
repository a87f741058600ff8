import { build } from '../../../geometry/build.ts';
import type { Job } from '../../../geometry/job.ts';
import { readJob } from '../../../geometry/job-file.ts';
import { starters } from '../../jobs/index.ts';
import type { Beginning, Notice, State } from '../state.ts';
import { openKey } from '../stored-keys.ts';
import { words } from '../words.ts';
import { type Known, UnreadableError } from './commit.ts';
import type { Database } from './database.ts';
import { leftIn } from './old-storage.ts';
import { addJobs, jobOf, recall, statesOf } from './shelf.ts';

/** Under which names the device, and the window for as long as it is open, remember what stood at the bench. */
export const remembered = { last: 'last', folds: 'folds', open: openKey } as const;

export interface Places {
  /** Rejects where the browser has no database, or denies it. */
  readonly open: () => Promise<Database>;
  /** What earlier versions kept jobs in, and what a window keeps while it is open; either may throw. */
  readonly local: () => Storage;
  readonly session: () => Storage;
  /** ms since 1970. */
  readonly now: () => number;
}

export interface Begun {
  readonly beginning: Beginning;
  /** Where the job is kept from now on; nothing where the browser keeps nothing. */
  readonly db: Database | undefined;
  /** What lies there of the job at the bench. */
  readonly known: Known | undefined;
}

const demo = (): Job => {
  const read = readJob(starters[0]?.text ?? '');
  if (!read.ok) throw new Error(read.problems[0]?.says);
  return read.job;
};

const inSession = (session: () => Storage): string | undefined => {
  try {
    return session().getItem(remembered.open) ?? undefined;
  } catch {
    return undefined;
  }
};

const foldsFor = (value: unknown, id: string): State['folds'] => {
  if (typeof value !== 'object' || value === null || !('id' in value) || value.id !== id || !('folds' in value))
    return {};
  return Object.fromEntries(Object.entries(value.folds ?? {}).filter(([, isOpen]) => typeof isOpen === 'boolean'));
};

/** The last state of a job that can be built, for one that cannot. */
const lastBuilt = async (db: Database, { id, job }: Known): Promise<Job | undefined> => {
  if (build(job).ok) return undefined;
  for (const { job: value } of await statesOf(db, id)) {
    const read = readJob(JSON.stringify(value));
    if (read.ok && build(read.job).ok) return read.job;
  }
  return undefined;
};

/** What an earlier version left goes on the shelf; the job that stood at its bench stands here again. */
const takeOver = async (db: Database, { local, now }: Places): Promise<Known | undefined> => {
  const left = leftIn(local);
  if (left === undefined) return undefined;
  const jobs = [...left.aside, ...(left.job ? [left.job] : [])].map((job) => ({ job }));
  const made = await addJobs(db, jobs, { now: now(), name: words.keep.takenOver });
  left.clear();
  return left.job && made.at(-1);
};

const unreadable = (error: UnreadableError): Notice => ({
  id: 'restore',
  says: words.keep.unreadable,
  details: [error.message],
  file: {
    says: words.keep.saveUnreadable,
    name: 'unread-job.json',
    text: `${JSON.stringify(error.value, null, 2)}\n`,
  },
});

/** What the bench begins with: the job that stood there last in this window, or on this device, else the demo; and what is to be said of it. Never rejects. */
export const begin = async (places: Places): Promise<Begun> => {
  let db: Database;
  try {
    db = await places.open();
  } catch (error) {
    const left = leftIn(places.local)?.job;
    const notice: Notice = { id: 'keep', says: words.keep.none(reasonOf(error)), details: [], file: {} };
    return {
      beginning: { job: left ?? demo(), isFresh: left === undefined, notices: [notice] },
      db: undefined,
      known: undefined,
    };
  }
  try {
    const id = inSession(places.session) ?? (await recall(db, remembered.last));
    const known = (typeof id === 'string' ? await jobOf(db, id) : undefined) ?? (await takeOver(db, places));
    if (known === undefined) return { beginning: { job: demo() }, db, known };
    const { job } = known;
    const built = await lastBuilt(db, known);
    const folds = foldsFor(await recall(db, remembered.folds), known.id);
    return { beginning: { job, id: known.id, isFresh: false, folds, ...(built && { built }) }, db, known };
  } catch (error) {
    const notice: Notice =
      error instanceof UnreadableError
        ? unreadable(error)
        : { id: 'keep', says: words.keep.none(reasonOf(error)), details: [], file: {} };
    return { beginning: { job: demo(), notices: [notice] }, db, known: undefined };
  }
};

/** Why a browser's storage failed, in a few words. */
export const reasonOf = (error: unknown): string => {
  const name = error instanceof Error || error instanceof DOMException ? error.name : '';
  return (
    words.keep.reasons[name as keyof typeof words.keep.reasons] ??
    (error instanceof Error ? error.message : String(error))
  );
};
