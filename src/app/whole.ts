import { decimalsHere, jobAsRead } from './decimal.ts';
import { findingsOf } from './findings/findings-of.ts';
import { adviseFirst } from './findings/use-advice.ts';
import { begin } from './keep/begin.ts';
import { openDatabase } from './keep/database.ts';
import { keepBench } from './keep/keep.ts';
import { tend } from './offline/tend.ts';
import { parts } from './parts.ts';
import { createBench } from './store.ts';
import { words } from './words.ts';

const local = () => window.localStorage;
const session = () => window.sessionStorage;

/** The whole bench with all its parts, at work on the job as it was left; every change of it is kept; and when ways out of what is not right with it are found. */
export const makeWhole = async () => {
  const open = () =>
    openDatabase({
      onTaken: () => bench?.note({ id: 'keep', says: words.keep.taken, details: [], file: {} }),
      onLost: () => bench?.note({ id: 'keep', says: words.keep.lost, details: [], file: {} }),
    });
  const begun = await begin({ open, local, session, now: Date.now });
  const bench = createBench({ ...begun.beginning, decimals: decimalsHere(local, navigator.languages) });
  // Another window may have chosen another mark, and the browser's language may have become another.
  const read = () => bench.read(decimalsHere(local, navigator.languages));
  window.addEventListener('storage', read);
  window.addEventListener('languagechange', read);
  const keep = keepBench(bench, begun, { session, local });
  tend(bench, keep);
  const { built, solved } = bench.getState();
  const advised = adviseFirst(jobAsRead(bench.getState()), built && solved.ok ? findingsOf(built) : []);
  return { page: { bench, parts, keep }, advised };
};
