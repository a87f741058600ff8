import { applyChanges, type Change, changesBetween } from '../../../geometry/changes.ts';
import type { Job } from '../../../geometry/job.ts';
import { validateJob } from '../../../geometry/job-file.ts';
import type { Body, Card, Database, KeptState } from './database.ts';
import { pictureOf } from './picture.ts';

/** How many states of a job are kept to go back to. */
export const mostStates = 50;
/** Changes of one name within this long are one state, ms. */
const sameState = 60_000;

/** What a window has of a job. */
export interface Known {
  readonly id: string;
  readonly seq: number;
  readonly job: Job;
}

export interface Committed extends Known {
  /** What other windows changed since this one last looked, before its own changes. */
  readonly foreign: readonly Change[];
}

/** A job that is kept, but can no longer be read: its place among the problems, and what stands there. */
export class UnreadableError extends Error {
  override name = 'UnreadableError';
  readonly value: unknown;
  constructor(says: string, value: unknown) {
    super(says);
    this.value = value;
  }
}

const jobIn = (body: Body): Job => {
  const read = validateJob(body.job);
  if (!read.ok) throw new UnreadableError(read.problems.map(({ says }) => says).join(' '), body.job);
  return read.job;
};

/**
 * What two windows do may not go together, as when each takes out another one of the fewest strings that there must be: changes that would leave no job are left out, the same in every window as
 * each reads what came of it.
 */
const withChanges = (job: Job, changes: readonly Change[]): Job => {
  const read = validateJob(applyChanges(job, changes));
  return read.ok ? read.job : job;
};

/** What has become of a job that this window knows; undefined where it is gone for good. Rejects with an UnreadableError, or with what the database rejects with. */
export const readOn = async (db: Database, known: Known): Promise<Committed | undefined> => {
  const body = await db.get('bodies', known.id);
  if (body === undefined) return undefined;
  if (body.seq === known.seq) return { ...known, foreign: [] };
  const job = jobIn(body);
  return { id: known.id, seq: body.seq, job, foreign: changesBetween(known.job, job) };
};

export interface Commit {
  readonly known: Known;
  readonly changes: readonly Change[];
  /** What they are called. */
  readonly name: string;
  /** ms since 1970, for people. */
  readonly now: number;
}

/**
 * Puts a window's changes on what stands in the database, in one transaction, and gives what comes of it. Undefined where the job is gone for good. Rejects with an
 * UnreadableError, or with what the database rejects with; nothing is kept then.
 */
export const commit = async (db: Database, { known, changes, name, now }: Commit): Promise<Committed | undefined> => {
  const { id } = known;
  // Strict: told to be kept only once it is safe on the disk, whatever happens to the power.
  const tx = db.transaction(['cards', 'bodies', 'states'], 'readwrite', { durability: 'strict' });
  const [cards, bodies, states] = [tx.objectStore('cards'), tx.objectStore('bodies'), tx.objectStore('states')];
  const work = async (): Promise<Committed | undefined> => {
    const [card, body] = await Promise.all([cards.get(id), bodies.get(id)]);
    if (card === undefined || body === undefined) return undefined;
    const stood = body.seq === known.seq ? known.job : jobIn(body);
    const job = withChanges(stood, changes);
    const seq = body.seq + 1;
    await bodies.put({ id, seq, job });
    await cards.put(cardOf(job, { ...card, changed: Math.max(now, card.changed) }));
    const keys = await states.getAllKeys(IDBKeyRange.bound([id, 0], [id, Number.POSITIVE_INFINITY]));
    const lastKey = keys.at(-1);
    const last = lastKey && (await states.get(lastKey));
    const isGoingOn = last?.name === name && Math.abs(now - last.at) < sameState;
    const state: KeptState = { id, seq, name, at: isGoingOn ? last.at : now, job };
    const over = isGoingOn ? keys.slice(-1) : keys.slice(0, Math.max(0, keys.length + 1 - mostStates));
    for (const key of over) await states.delete(key);
    await states.put(state);
    return { id, seq, job, foreign: changesBetween(known.job, stood) };
  };
  try {
    const done = await work();
    await tx.done;
    return done;
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

/** A job's card, brought up to what the job is now; one that cannot be built keeps the picture of what could. */
export const cardOf = (job: Job, card: Omit<Card, 'problems'>): Card => ({
  ...card,
  name: job.name,
  date: job.date,
  ...pictureOf(job),
});
