import { fieldAt } from '../../../geometry/fields.ts';
import type { Job } from '../../../geometry/job.ts';
import { leaveLook } from '../first-look.ts';
import type { Bench } from '../store.ts';
import { fieldTitle } from '../strings.ts';
import { words } from '../words.ts';
import { type Begun, reasonOf, remembered } from './begin.ts';
import type { Database } from './database.ts';
import { type Channel, follow } from './follow.ts';
import { remember } from './shelf.ts';

/** What keeps the bench's job: the database, and the hand that brings it there. */
export interface Keep extends ReturnType<typeof follow> {
  readonly db: Database;
}

const nameForeign = (path: readonly string[], job: Job): string => {
  const at = path.join('.');
  return words.keep.elsewhere(fieldAt(at) ? fieldTitle(job, at) : undefined);
};

interface Storages {
  readonly session: () => Storage;
  readonly local: () => Storage;
}

const rememberOpen = (bench: Bench, db: Database, { session, local }: Storages) => {
  const state = bench.getState();
  leaveLook(state, session, local);
  try {
    session().setItem(remembered.open, state.id);
  } catch {
    // Without it the window finds the job that stood last on the device.
  }
  // It only spares a search when the page is opened again: that it fails is told by the job's own keeping.
  remember(db, remembered.last, state.id).catch(() => {});
};

/** Keeps the bench's job from now on, and what is open of the page; undefined where the browser keeps nothing. */
export const keepBench = (bench: Bench, { db, known }: Begun, storages: Storages): Keep | undefined => {
  if (db === undefined) return undefined;
  const channel = typeof BroadcastChannel === 'undefined' ? undefined : (new BroadcastChannel('sagitta') as Channel);
  const keep = follow(bench, {
    db,
    channel,
    known,
    now: Date.now,
    nameFirst: words.keep.first,
    nameForeign,
    onTrouble: (why) => {
      if (why === undefined) bench.dismiss('keep');
      else bench.note({ id: 'keep', says: words.keep.trouble(reasonOf(why)), details: [], file: {} });
    },
    onKept: (id) => {
      if (bench.getState().id === id) rememberOpen(bench, db, storages);
    },
  });
  bench.subscribe(({ id, isFresh, folds }, before) => {
    if (id !== before.id && !isFresh) rememberOpen(bench, db, storages);
    if (folds !== before.folds) remember(db, remembered.folds, { id, folds }).catch(() => {});
  });
  // A page may be gone without another word once it is hidden; one that comes back may have missed what others said.
  const leave = () => void keep.flush();
  window.addEventListener('pagehide', leave);
  document.addEventListener('visibilitychange', () => {
    leave();
    if (document.visibilityState === 'visible') void keep.look(bench.getState().id);
  });
  return { ...keep, db };
};
