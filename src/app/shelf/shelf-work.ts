import type { Job } from '../../../geometry/job.ts';
import { readJob } from '../../../geometry/job-file.ts';
import { commit } from '../keep/commit.ts';
import type { Card, KeptState } from '../keep/database.ts';
import type { Keep } from '../keep/keep.ts';
import { addJob, jobOf } from '../keep/shelf.ts';
import type { Bench } from '../store.ts';
import { words } from '../words.ts';

/*
 * What can be done to the jobs on the shelf, the one at the bench among them. All of it rejects with what the database rejects with, and changes nothing then.
 */

/** Brings a job of the shelf to the bench; the one that stood there is safe before. */
export const openFrom = async (bench: Bench, keep: Keep, id: string): Promise<void> => {
  await keep.flush();
  if (bench.getState().id === id) return;
  const known = await jobOf(keep.db, id);
  if (known === undefined) throw new Error(words.shelf.gone);
  keep.learn(known);
  bench.openKept(known.job, id);
};

/** Gives a job another name, as one step where it stands at the bench. */
export const rename = async (bench: Bench, keep: Keep, id: string, name: string): Promise<void> => {
  if (bench.getState().id === id) {
    bench.putAll([{ path: 'name', value: name }], words.bar.job);
    return keep.flush();
  }
  const known = await jobOf(keep.db, id);
  if (known === undefined) throw new Error(words.shelf.gone);
  const changes = [{ path: ['name'], before: known.job.name, after: name }];
  await commit(keep.db, { known, changes, name: words.bar.job, now: Date.now() });
};

/** A copy of a job beside it, named as one. */
export const duplicate = async (keep: Keep, { id, name }: Card): Promise<void> => {
  await keep.flush();
  const known = await jobOf(keep.db, id);
  if (known === undefined) throw new Error(words.shelf.gone);
  const job = { ...known.job, name: words.shelf.copyOf(name).slice(0, 200) };
  await addJob(keep.db, { job, now: Date.now(), name: words.shelf.copied });
};

/** A job as it stood once, at the bench again as one step; throws an Error where that state can no longer be read. */
export const goBackTo = async (bench: Bench, keep: Keep, { id, job: value, name }: KeptState): Promise<void> => {
  const read = readJob(JSON.stringify(value));
  if (!read.ok) throw new Error(read.problems.map(({ says }) => says).join(' '));
  await openFrom(bench, keep, id);
  bench.become(read.job as Job, '', words.shelf.backTo(name));
  await keep.flush();
};
