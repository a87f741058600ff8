import type { Job } from '../../../geometry/job.ts';
import { validateJob } from '../../../geometry/job-file.ts';
import { cardOf, type Known, UnreadableError } from './commit.ts';
import type { Card, Database, KeptState, Place } from './database.ts';
import { freshId } from './fresh-id.ts';

/** How long the bin keeps a job, ms: 30 days. */
export const binKeeps = 30 * 24 * 3600_000;

const everything = (id: string) => IDBKeyRange.bound([id, 0], [id, Number.POSITIVE_INFINITY]);

interface Placed {
  /** ms since 1970, for people. */
  readonly now: number;
  /** What its first state is called. */
  readonly name: string;
}

/** Puts jobs on the shelf beside those that are there, all or none; gives what the window then knows of each. A job with a key of its own is put under it, in place of one that lay there. */
export const addJobs = async (
  db: Database,
  jobs: readonly { readonly job: Job; readonly id?: string; readonly place?: Place }[],
  { now, name }: Placed,
): Promise<readonly Known[]> => {
  const tx = db.transaction(['cards', 'bodies', 'states'], 'readwrite', { durability: 'strict' });
  try {
    const made = jobs.map(({ job, id = freshId(), place = 'shelf' }) => {
      const card = cardOf(job, { id, name: job.name, date: job.date, changed: now, place });
      const known: Known = { id, seq: 1, job };
      return { card, known };
    });
    await Promise.all(
      made.flatMap(({ card, known: { id, seq, job } }) => [
        tx.objectStore('cards').put(card),
        tx.objectStore('bodies').put({ id, seq, job }),
        tx.objectStore('states').put({ id, seq, name, at: now, job }),
      ]),
    );
    await tx.done;
    return made.map(({ known }) => known);
  } catch (error) {
    try {
      tx.abort();
    } catch {
      // It had ended by itself.
    }
    await tx.done.catch(() => {});
    throw error;
  }
};

/** Puts one job on the shelf, as `addJobs` does. */
export const addJob = async (
  db: Database,
  { job, id, ...placed }: Placed & { readonly job: Job; readonly id?: string },
): Promise<Known> => (await addJobs(db, [{ job, ...(id !== undefined && { id }) }], placed))[0] as Known;

/** Every job's card, the last changed first. */
export const cardsOf = async (db: Database): Promise<readonly Card[]> =>
  (await db.getAll('cards')).sort((a, b) => b.changed - a.changed);

/** A job as it is kept; undefined where there is none with this id. Rejects with an UnreadableError where it can no longer be read. */
export const jobOf = async (db: Database, id: string): Promise<Known | undefined> => {
  const body = await db.get('bodies', id);
  if (body === undefined) return undefined;
  const read = validateJob(body.job);
  if (!read.ok) throw new UnreadableError(read.problems.map(({ says }) => says).join(' '), body.job);
  return { id, seq: body.seq, job: read.job };
};

/** Puts a job in its place: on the shelf, away, or into the bin. */
export const putIn = async (db: Database, id: string, place: Place, now: number): Promise<void> => {
  const tx = db.transaction('cards', 'readwrite', { durability: 'strict' });
  const card = await tx.store.get(id);
  if (card !== undefined) {
    const { binned: _, ...rest } = card;
    await tx.store.put({ ...rest, place, ...(place === 'bin' && { binned: now }) });
  }
  await tx.done;
};

/** Takes jobs off for good, with all that is kept of them. */
export const removeJobs = async (db: Database, ids: readonly string[]): Promise<void> => {
  const tx = db.transaction(['cards', 'bodies', 'states'], 'readwrite', { durability: 'strict' });
  await Promise.all(
    ids.flatMap((id) => [
      tx.objectStore('cards').delete(id),
      tx.objectStore('bodies').delete(id),
      tx.objectStore('states').delete(everything(id)),
    ]),
  );
  await tx.done;
};

/** Takes what has lain in the bin for longer than it is kept there off for good, and gives the cards that are left of those given. A clock that was set back keeps it longer, never shorter than it says. */
export const clearBin = async (db: Database, cards: readonly Card[], now: number): Promise<readonly Card[]> => {
  const isOver = ({ place, binned }: Card) => place === 'bin' && binned !== undefined && now - binned > binKeeps;
  const over = cards.filter(isOver);
  if (over.length === 0) return cards;
  await removeJobs(
    db,
    over.map(({ id }) => id),
  );
  return cards.filter((card) => !over.includes(card));
};

/** The states of a job that can be gone back to, the newest first. */
export const statesOf = async (db: Database, id: string): Promise<readonly KeptState[]> =>
  (await db.getAll('states', everything(id))).reverse();

/** What the device remembers under a name; undefined where it remembers nothing. */
export const recall = (db: Database, name: string): Promise<unknown> => db.get('device', name);

export const remember = async (db: Database, name: string, value: unknown): Promise<void> => {
  await db.put('device', value, name);
};
