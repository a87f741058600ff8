import type { Job } from '../../geometry/job.ts';
import { readJob, writeJob } from '../../geometry/job-file.ts';
import { starters } from '../jobs/index.ts';
import { keys } from './keys.ts';
import type { Beginning, Bench, Notice, State } from './store.ts';
import { words } from './words.ts';

/** A change is on its way to the storage after this long, ms. */
const rest = 300;

const demo = (): Job => {
  const read = readJob(starters[0]?.text ?? '');
  if (!read.ok) throw new Error(read.problems[0]?.says);
  return read.job;
};

const readKept = (text: string | null): readonly Job[] => {
  if (text === null) return [];
  try {
    const texts: unknown = JSON.parse(text);
    if (!Array.isArray(texts)) return [];
    return texts.flatMap((one) => {
      const read = readJob(String(one));
      return read.ok ? [read.job] : [];
    });
  } catch {
    return [];
  }
};

const readBuilt = (text: string | null): Job | undefined => {
  const read = text === null ? undefined : readJob(text);
  return read?.ok ? read.job : undefined;
};

const readFolds = (text: string | null): State['folds'] => {
  try {
    const folds: unknown = JSON.parse(text ?? '{}');
    if (typeof folds !== 'object' || folds === null) return {};
    return Object.fromEntries(Object.entries(folds).filter(([, isOpen]) => typeof isOpen === 'boolean'));
  } catch {
    return {};
  }
};

/** A key under which nothing stands yet, or this very text: an unread one is never written over. */
const keyFor = (text: string, storage: Storage): string => {
  let n = 1;
  while (![null, text].includes(storage.getItem(`${keys.unread}.${n}`))) n += 1;
  return `${keys.unread}.${n}`;
};

/** What the bench begins with: the job as it was left, else the demo; and what is to be said of it. Never throws. */
export const restore = (getStorage: () => Storage): Beginning => {
  try {
    const storage = getStorage();
    const text = storage.getItem(keys.job);
    if (text === null) return { job: demo(), kept: readKept(storage.getItem(keys.kept)) };
    const kept = readKept(storage.getItem(keys.kept));
    const read = readJob(text);
    if (!read.ok) {
      const key = keyFor(text, storage);
      storage.setItem(key, text);
      const notice: Notice = {
        id: 'restore',
        says: words.notices.notRestored(key),
        details: read.problems.map(({ says }) => says),
      };
      return { job: demo(), kept, notices: [notice] };
    }
    const isSaved = starters.some((starter) => starter.text === text);
    const folds = readFolds(storage.getItem(keys.folds));
    return { job: read.job, built: readBuilt(storage.getItem(keys.built)), kept, isSaved, folds };
  } catch {
    return { job: demo(), notices: [{ id: 'storage', says: words.notices.noStorage, details: [] }] };
  }
};

const write = (storage: Storage, { job, solved, built, kept, folds }: State): void => {
  storage.setItem(keys.job, writeJob(job));
  if (solved.ok || built === undefined) storage.removeItem(keys.built);
  else storage.setItem(keys.built, writeJob(built.job));
  storage.setItem(keys.folds, JSON.stringify(folds));
  if (kept.length === 0) storage.removeItem(keys.kept);
  else storage.setItem(keys.kept, JSON.stringify(kept.map(writeJob)));
};

/**
 * Keeps the job in the storage a moment after each change; `flush` does so at once, as when the page is left. A storage that
 * fails is told of once, and the work goes on.
 */
export const keep = (bench: Bench, getStorage: () => Storage): { readonly flush: () => void } => {
  let timer: ReturnType<typeof setTimeout> | undefined;
  let told = bench.getState().notices.some(({ id }) => id === 'storage');
  const flush = () => {
    if (timer === undefined) return;
    clearTimeout(timer);
    timer = undefined;
    try {
      write(getStorage(), bench.getState());
    } catch {
      if (!told) bench.note({ id: 'storage', says: words.notices.noStorage, details: [] });
      told = true;
    }
  };
  bench.subscribe((now, before) => {
    if (now.job === before.job && now.kept === before.kept && now.folds === before.folds) return;
    clearTimeout(timer);
    timer = setTimeout(flush, rest);
  });
  return { flush };
};
