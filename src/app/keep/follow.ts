import { applyChanges, changesBetween, isSame } from '../../../geometry/changes.ts';
import type { Job } from '../../../geometry/job.ts';
import type { Bench } from '../store.ts';
import { type Committed, commit, type Known, readOn } from './commit.ts';
import type { Database } from './database.ts';
import { addJob } from './shelf.ts';

/** A change is on its way to the database after this long without another one, and after that long at most, ms. */
const rest = 200;
const most = 600;
/** The same while a hand drags a number: it is done once it pauses, or lets go. */
const mostHeld = 3000;
/** What could not be kept is tried again after this long, ms. */
const again = 4000;

/** What one window tells the others: this job has changed. */
interface Word {
  readonly id: string;
}

/** How the other windows are told, and heard. */
export interface Channel {
  postMessage(word: Word): void;
  onmessage: ((event: MessageEvent<Word>) => void) | null;
}

export interface Follow {
  readonly db: Database;
  readonly channel: Channel | undefined;
  /** What the database has of the job that the bench begins with; nothing where it does not lie there. */
  readonly known?: Known | undefined;
  /** ms since 1970. */
  readonly now: () => number;
  /** How the first state of a job is called. */
  readonly nameFirst: string;
  /** How a step of another window is called. */
  readonly nameForeign: (path: readonly string[], job: Job) => string;
  /** Called when something could not be kept, with why, and with nothing once all is kept again. */
  readonly onTrouble: (why: unknown) => void;
  /** Called after each change that is safe. */
  readonly onKept?: (id: string) => void;
}

interface Wanted {
  readonly job: Job;
  readonly name: string;
  /** The job as it came to the bench, where it did not lie on the shelf. */
  readonly from: Job;
}

/**
 * Keeps what is done at the bench in the database, a moment after each change, and brings what other windows do to the same job to the bench. What could not be kept stays wanted, and is
 * tried again. `flush` keeps at once what there is.
 */
export const follow = (bench: Bench, options: Follow) => {
  const { db, channel, now, nameFirst, nameForeign, onTrouble, onKept } = options;
  const known = new Map<string, Known>(options.known ? [[options.known.id, options.known]] : []);
  const wanted = new Map<string, Wanted>();
  let work: Promise<void> = Promise.resolve();
  let timer: ReturnType<typeof setTimeout> | undefined;
  let since: number | undefined;
  let isTroubled = false;

  /** The bench's job with what other windows did, where it is still the one that lies there. */
  const bring = ({ id, job, foreign }: Committed, asked: Job) => {
    const state = bench.getState();
    if (state.id !== id || foreign.length === 0) return;
    const next = applyChanges(job, changesBetween(asked, state.job));
    if (!isSame(next, state.job)) bench.merge(next, foreign, nameForeign(foreign[0]?.path ?? [], job));
  };

  const keepOne = async (id: string, { job, name, from }: Wanted): Promise<void> => {
    // As it came first: a state to go back to, and to draw where what is made of it cannot be built.
    const before = known.get(id) ?? (await addJob(db, { id, job: from, now: now(), name: nameFirst }));
    known.set(id, before);
    const changes = changesBetween(before.job, job);
    if (changes.length > 0) {
      const done = await commit(db, { known: before, changes, name, now: now() });
      // Gone from the shelf for good, in another window, while it was worked at here: what is worked at lives.
      known.set(id, done ?? (await addJob(db, { id, job, now: now(), name })));
      if (done) bring(done, job);
    }
    channel?.postMessage({ id });
    onKept?.(id);
  };

  const keepAll = async () => {
    for (const [id, one] of [...wanted]) {
      try {
        await keepOne(id, one);
        // What was done meanwhile stays wanted.
        if (wanted.get(id) === one) wanted.delete(id);
        if (isTroubled) onTrouble(undefined);
        isTroubled = false;
      } catch (error) {
        isTroubled = true;
        onTrouble(error);
        schedule(again);
        return;
      }
    }
  };

  const flush = (): Promise<void> => {
    clearTimeout(timer);
    timer = undefined;
    since = undefined;
    work = work.then(keepAll);
    return work;
  };

  const schedule = (wait: number) => {
    since ??= performance.now();
    clearTimeout(timer);
    const last = since + (bench.getState().held === undefined ? most : mostHeld);
    timer = setTimeout(flush, Math.max(0, Math.min(wait, isTroubled ? wait : last - performance.now())));
  };

  /** What other windows did to a job that this one has. */
  const look = (id: string): Promise<void> => {
    work = work.then(async () => {
      const before = known.get(id);
      if (before === undefined || wanted.has(id)) return void flush();
      try {
        const read = await readOn(db, before);
        if (read === undefined) return;
        known.set(id, read);
        bring(read, before.job);
      } catch (error) {
        onTrouble(error);
      }
    });
    return work;
  };

  const unsubscribe = bench.subscribe((state, before) => {
    if (state.job === before.job && state.id === before.id && state.isFresh === before.isFresh) return;
    const { id, job, past } = state;
    // What is still as it came goes on the shelf with its first change; what was changed and taken back lies there.
    if (state.isFresh && !known.has(id) && !wanted.has(id)) return;
    const kept = known.get(id)?.job;
    if (kept !== undefined && kept === job && !wanted.has(id)) return;
    const from = past.find((step) => step.id === id && step.isFresh)?.job ?? job;
    wanted.set(id, { job, name: past.at(-1)?.name ?? '', from });
    schedule(rest);
  });

  if (channel)
    channel.onmessage = ({ data }) => {
      if (typeof data?.id === 'string' && known.has(data.id)) void look(data.id);
    };

  return {
    flush,
    look,
    /** The database has this job as this window has just read or put it. */
    learn: (one: Known) => known.set(one.id, one),
    /** Whether all that was done is safe. */
    isKept: () => wanted.size === 0,
    stop: () => {
      clearTimeout(timer);
      unsubscribe();
      if (channel) channel.onmessage = null;
    },
  };
};
