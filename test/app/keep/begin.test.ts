import 'fake-indexeddb/auto';
import { IDBFactory } from 'fake-indexeddb';
import { beforeEach, describe, expect, it } from 'vitest';
import { setAt } from '../../../geometry/fields.ts';
import { writeJob } from '../../../geometry/job-file.ts';
import { begin, remembered } from '../../../src/app/keep/begin.ts';
import { type Database, openDatabase } from '../../../src/app/keep/database.ts';
import { addJob, cardsOf, jobOf, remember } from '../../../src/app/keep/shelf.ts';
import { createBench } from '../../../src/app/store.ts';
import { starters } from '../../../src/jobs/index.ts';
import { workedExample } from '../../solved.ts';
import { starterJob } from '../bench.ts';

let db: Database;
let local: Storage;
let session: Storage;

/** A small storage of texts. */
const storageOf = (): Storage => {
  const held = new Map<string, string>();
  return {
    getItem: (key) => held.get(key) ?? null,
    setItem: (key, text) => void held.set(key, text),
    removeItem: (key) => void held.delete(key),
    clear: () => held.clear(),
    key: (at) => [...held.keys()][at] ?? null,
    get length() {
      return held.size;
    },
  };
};
const denied = (): never => {
  throw new DOMException('The operation is insecure.', 'SecurityError');
};

beforeEach(async () => {
  globalThis.indexedDB = new IDBFactory();
  db = await openDatabase();
  local = storageOf();
  session = storageOf();
});
const start = () => begin({ open: async () => db, local: () => local, session: () => session, now: () => 9 });

describe('the bench begins', () => {
  it('with the demo, which is on no shelf yet', async () => {
    const { beginning, known } = await start();
    expect(beginning.job).toEqual(starterJob('heron'));
    expect(known).toBeUndefined();
    expect(await cardsOf(db)).toEqual([]);
  });

  it('with the job that stood last in this window, else on this device, its folds as they were', async () => {
    const [one, other] = [
      await addJob(db, { job: setAt(workedExample(), 'name', 'One'), now: 1, name: 'x' }),
      await addJob(db, { job: setAt(workedExample(), 'name', 'Other'), now: 1, name: 'x' }),
    ];
    await remember(db, remembered.last, one.id);
    await remember(db, remembered.folds, { id: one.id, folds: { strung: false, torn: 'ajar' } });
    expect((await start()).beginning).toMatchObject({ id: one.id, isFresh: false, folds: { strung: false } });
    expect(Object.keys((await start()).beginning.folds ?? {})).toEqual(['strung']);
    session.setItem(remembered.open, other.id);
    expect((await start()).beginning).toMatchObject({ id: other.id, job: { name: 'Other' }, folds: {} });
    session.setItem(remembered.open, 'gone');
    expect((await start()).beginning.job.name).toBe(starterJob('heron').name);
  });

  it('with a job that cannot be built, and what could be built of it last beside it', async () => {
    const { db: _, known } = { db, known: await addJob(db, { job: workedExample(), now: 1, name: 'x' }) };
    const { commit } = await import('../../../src/app/keep/commit.ts');
    await commit(db, {
      known,
      changes: [{ path: ['bridge', 'frontToSaddle'], before: known.job.bridge.frontToSaddle, after: 38 }],
      name: 'Front edge',
      now: 2,
    });
    await remember(db, remembered.last, known.id);
    const state = createBench((await start()).beginning).getState();
    expect(state.job.bridge.frontToSaddle).toBe(38);
    expect(state.solved.ok).toBe(false);
    expect(state.built?.job.bridge.frontToSaddle).toBe(workedExample().bridge.frontToSaddle);
  });

  it('with the demo and what is kept as a file where the job can no longer be read; nothing is written over', async () => {
    const { id } = await addJob(db, { job: workedExample(), now: 1, name: 'x' });
    await db.put('bodies', { id, seq: 3, job: { torn: 'in two' } });
    await remember(db, remembered.last, id);
    const { beginning } = await start();
    expect(beginning.job).toEqual(starterJob('heron'));
    expect(beginning.id).toBeUndefined();
    expect(beginning.notices?.[0]?.file?.text).toContain('"torn": "in two"');
    expect((await db.get('bodies', id))?.job).toEqual({ torn: 'in two' });
  });
});

describe('what an earlier version kept', () => {
  const mine = setAt(workedExample(), 'name', 'Mine');
  const aside = setAt(workedExample(), 'name', 'Aside');

  it('goes on the shelf once, the job that stood at its bench standing there again', async () => {
    local.setItem('sagitta.job', writeJob(mine));
    local.setItem('sagitta.kept', JSON.stringify([writeJob(aside)]));
    local.setItem('sagitta.unread.1', '{"half a job');
    const { beginning, known } = await start();
    expect(beginning.job).toEqual(mine);
    expect((await cardsOf(db)).map(({ name }) => name).sort()).toEqual(['Aside', 'Mine']);
    expect((await jobOf(db, known?.id ?? ''))?.job).toEqual(mine);
    expect(local.getItem('sagitta.job')).toBeNull();
    expect(local.getItem('sagitta.unread.1')).toBe('{"half a job');
    await start();
    expect(await cardsOf(db)).toHaveLength(2);
  });

  it('stays where it is when it cannot be read', async () => {
    local.setItem('sagitta.job', '{"half a job');
    local.setItem('sagitta.kept', JSON.stringify([writeJob(aside), 'torn']));
    await start();
    expect((await cardsOf(db)).map(({ name }) => name)).toEqual(['Aside']);
    expect(local.getItem('sagitta.job')).toBe('{"half a job');
    expect(JSON.parse(local.getItem('sagitta.kept') ?? '')).toEqual(['torn']);
    await start();
    expect(await cardsOf(db)).toHaveLength(1);
  });

  it('is nothing where it was a starter as it came', async () => {
    local.setItem('sagitta.job', starters[2]?.text ?? '');
    expect((await start()).beginning.job).toEqual(starterJob('heron'));
    expect(await cardsOf(db)).toEqual([]);
  });
});

describe('a browser that keeps nothing', () => {
  it('is told of, with the job as a file, and the work goes on', async () => {
    const begun = await begin({ open: async () => denied(), local: denied, session: denied, now: () => 0 });
    expect(begun.db).toBeUndefined();
    expect(begun.beginning.job).toEqual(starterJob('heron'));
    expect(begun.beginning.notices?.[0]).toMatchObject({ file: {}, says: expect.stringContaining('switched off') });
  });

  it('that denies only its small storages is asked nothing of them', async () => {
    const begun = await begin({ open: async () => db, local: denied, session: denied, now: () => 0 });
    expect(begun.beginning.notices).toBeUndefined();
  });
});
