import 'fake-indexeddb/auto';
import { IDBFactory } from 'fake-indexeddb';
import { beforeEach, describe, expect, it } from 'vitest';
import { changesBetween } from '../../../geometry/changes.ts';
import { setAt } from '../../../geometry/fields.ts';
import type { Job } from '../../../geometry/job.ts';
import { commit, type Known, mostStates, readOn } from '../../../src/app/keep/commit.ts';
import { type Database, openDatabase } from '../../../src/app/keep/database.ts';
import {
  addJob,
  binKeeps,
  cardsOf,
  clearBin,
  jobOf,
  putIn,
  recall,
  remember,
  removeJobs,
  statesOf,
} from '../../../src/app/keep/shelf.ts';
import { seeded } from '../../seeded.ts';
import { workedExample } from '../../solved.ts';

let db: Database;
beforeEach(async () => {
  globalThis.indexedDB = new IDBFactory();
  db = await openDatabase();
});

const day = 24 * 3600_000;
const put = (job: Job, path: string, value: unknown): Job => setAt(job, path, value);
const onShelf = (job = workedExample()): Promise<Known> => addJob(db, { job, now: 1000, name: 'New job' });
const change = (known: Known, to: Job, name = 'Thickness', now = 2000) =>
  commit(db, { known, changes: changesBetween(known.job, to), name, now });
const must = <T>(value: T | undefined): T => {
  if (value === undefined) throw new Error('it is gone');
  return value;
};

describe('a job on the shelf', () => {
  it('comes back as it was put there, with its card', async () => {
    const { id, job } = await onShelf();
    expect((await jobOf(db, id))?.job).toEqual(job);
    const [card] = await cardsOf(db);
    expect(card).toMatchObject({ id, name: job.name, date: job.date, place: 'shelf', changed: 1000 });
    expect(card?.picture?.d).toMatch(/^M/);
  });

  it('holds every change, whatever the clock says', async () => {
    const known = await onShelf();
    const once = must(await change(known, put(known.job, 'bridge.thickness', 8.6), 'Thickness', 500));
    const twice = must(await change(once, put(once.job, 'name', 'Other'), 'Job', 100));
    expect(twice.seq).toBe(3);
    expect((await jobOf(db, known.id))?.job).toEqual(put(put(known.job, 'bridge.thickness', 8.6), 'name', 'Other'));
    expect((await cardsOf(db))[0]).toMatchObject({ name: 'Other', changed: 1000 });
  });

  it('is left as it was by a change that fails on the way', async () => {
    const known = await onShelf();
    const unclonable = { path: ['workshop'], after: () => {} };
    await expect(commit(db, { known, changes: [unclonable], name: 'x', now: 1 })).rejects.toThrow();
    expect(await jobOf(db, known.id)).toEqual(known);
    expect(await statesOf(db, known.id)).toHaveLength(1);
  });

  it('that can no longer be read says so, and gives what stands there', async () => {
    const known = await onShelf();
    await db.put('bodies', { id: known.id, seq: 9, job: { format: 'sagitta-job', version: 'torn' } });
    await expect(jobOf(db, known.id)).rejects.toMatchObject({ name: 'UnreadableError', value: { version: 'torn' } });
    await expect(readOn(db, known)).rejects.toMatchObject({ name: 'UnreadableError' });
  });
});

describe('a database that an older window holds', () => {
  it('is told of, and not waited for', async () => {
    const raw = await new Promise<IDBDatabase>((done, fail) => {
      const asked = indexedDB.open('stuck', 1);
      asked.onsuccess = () => done(asked.result);
      asked.onerror = () => fail(asked.error);
    });
    await expect(openDatabase({}, 'stuck', 2)).rejects.toMatchObject({ name: 'TimeoutError' });
    raw.close();
  });

  it('is let go to a newer one, which is said', async () => {
    let isTaken = false;
    await openDatabase(
      {
        onTaken: () => {
          isTaken = true;
        },
      },
      'shared',
    );
    await openDatabase({}, 'shared', 2);
    expect(isTaken).toBe(true);
  });
});

describe('a job that cannot be built', () => {
  it('says so on its card, which keeps the picture of what could', async () => {
    const known = await onShelf();
    await change(known, put(known.job, 'bridge.frontToSaddle', 38), 'Front edge');
    const [card] = await cardsOf(db);
    expect(card?.problems).toBeGreaterThan(0);
    expect(card?.picture?.d).toMatch(/^M/);
  });
});

describe('two windows', () => {
  it('that change different numbers both keep theirs, and see each other’s', async () => {
    const known = await onShelf();
    const a = must(await change(known, put(known.job, 'bridge.thickness', 8.6)));
    expect(a.foreign).toEqual([]);
    const b = must(await change(known, put(known.job, 'slot.depth', 4.4)));
    expect(b.foreign).toEqual([{ path: ['bridge', 'thickness'], before: known.job.bridge.thickness, after: 8.6 }]);
    expect(b.job).toEqual(put(put(known.job, 'bridge.thickness', 8.6), 'slot.depth', 4.4));
    const seen = must(await readOn(db, a));
    expect(seen.job).toEqual(b.job);
    expect(seen.foreign).toHaveLength(1);
  });

  it('that change the same number: the later transaction wins, in both', async () => {
    const known = await onShelf();
    const a = must(await change(known, put(known.job, 'bridge.thickness', 8.6)));
    const b = must(await change(known, put(known.job, 'bridge.thickness', 8.2)));
    expect(b.job.bridge.thickness).toBe(8.2);
    expect(must(await readOn(db, a)).job.bridge.thickness).toBe(8.2);
  });

  it('whose changes leave no job together: the later one is left out', async () => {
    const four = workedExample();
    const known = await onShelf({ ...four, strings: { ...four.strings, list: four.strings.list.slice(0, 5) } });
    const without = (k: number): Job => ({
      ...known.job,
      strings: { ...known.job.strings, list: known.job.strings.list.filter((_, at) => at !== k) },
    });
    const a = must(await change(known, without(0)));
    const b = must(await change(known, without(1)));
    expect(b.job).toEqual(a.job);
    expect(b.job.strings.list).toHaveLength(4);
  });

  it('end equal after three hundred interleaved changes, whichever stops on the way', async () => {
    const { even } = seeded(20);
    const upTo = (most: number) => Math.floor(even(0, most));
    const known = await onShelf();
    const windows = [known, known, known];
    const paths = ['bridge.thickness', 'slot.depth', 'action.bass', 'action.treble', 'bridge.tilt'];
    for (let k = 0; k < 300; k += 1) {
      const who = upTo(k < 150 ? 3 : 2);
      const path = paths[upTo(paths.length)] ?? '';
      const window = windows[who] as Known;
      const value = path === 'bridge.tilt' ? even(0, 0.01) : even(2, 4);
      windows[who] = must(await change(window, put(window.job, path, value), path, k));
    }
    const ends = await Promise.all(windows.map((window) => readOn(db, window)));
    const kept = await jobOf(db, known.id);
    for (const end of ends) expect(end?.job).toEqual(kept?.job);
    expect(kept?.seq).toBe(301);
  });
});

describe('what a job was before', () => {
  it('can be gone back to: the last fifty states, changes of one name in a row being one', async () => {
    let known = await onShelf();
    for (let k = 0; k < 60; k += 1)
      known = must(await change(known, put(known.job, 'bridge.thickness', 7 + k / 100), `Change ${k}`, k));
    const states = await statesOf(db, known.id);
    expect(states).toHaveLength(mostStates);
    expect(states[0]).toMatchObject({ name: 'Change 59', job: known.job });
    for (let k = 0; k < 5; k += 1)
      known = must(await change(known, put(known.job, 'bridge.thickness', 8 + k / 100), 'Thickness', 1000 + k));
    const after = await statesOf(db, known.id);
    expect(after.filter(({ name }) => name === 'Thickness')).toHaveLength(1);
    expect(after[0]?.job).toEqual(known.job);
    expect(after[1]?.name).toBe('Change 59');
  });
});

describe('the bin', () => {
  it('keeps a job for thirty days, then it goes with all that is kept of it', async () => {
    const known = await onShelf();
    await putIn(db, known.id, 'bin', 5 * day);
    await clearBin(db, await cardsOf(db), 5 * day + binKeeps);
    expect(await cardsOf(db)).toHaveLength(1);
    await putIn(db, known.id, 'shelf', 6 * day);
    await clearBin(db, await cardsOf(db), 100 * day);
    expect((await cardsOf(db))[0]?.place).toBe('shelf');
    await putIn(db, known.id, 'bin', 100 * day);
    await clearBin(db, await cardsOf(db), 100 * day + binKeeps + 1);
    expect(await cardsOf(db)).toEqual([]);
    expect(await db.count('states')).toBe(0);
    expect(await db.count('bodies')).toBe(0);
    expect(await commit(db, { known, changes: [], name: '', now: 0 })).toBeUndefined();
  });

  it('takes nothing of other jobs', async () => {
    const [one, other] = [await onShelf(), await onShelf()];
    await removeJobs(db, [one.id]);
    expect((await cardsOf(db)).map(({ id }) => id)).toEqual([other.id]);
    expect(await statesOf(db, other.id)).toHaveLength(1);
  });
});

it('remembers what belongs to the device', async () => {
  expect(await recall(db, 'folds')).toBeUndefined();
  await remember(db, 'folds', { scar: true });
  expect(await recall(db, 'folds')).toEqual({ scar: true });
});
