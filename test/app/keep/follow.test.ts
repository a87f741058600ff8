import 'fake-indexeddb/auto';
import { IDBFactory } from 'fake-indexeddb';
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import type { Job } from '../../../geometry/job.ts';
import { newJob } from '../../../geometry/job-file.ts';
import { type Database, openDatabase } from '../../../src/app/keep/database.ts';
import { type Channel, follow } from '../../../src/app/keep/follow.ts';
import { addJob, cardsOf, jobOf, removeJobs, statesOf } from '../../../src/app/keep/shelf.ts';
import { createBench } from '../../../src/app/store.ts';
import { seeded } from '../../seeded.ts';
import { workedExample } from '../../solved.ts';

let db: Database;
let open: Channel[] = [];
let following: { stop: () => void }[] = [];

beforeEach(async () => {
  globalThis.indexedDB = new IDBFactory();
  db = await openDatabase();
  open = [];
});
afterEach(() => {
  for (const one of following) one.stop();
  following = [];
});

/** A channel as the browser's: what one says all others hear, a moment later. */
const channelOf = (): Channel => {
  const channel: Channel = {
    onmessage: null,
    postMessage(word) {
      for (const other of open)
        if (other !== channel) setTimeout(() => other.onmessage?.({ data: word } as MessageEvent), 0);
    },
  };
  open.push(channel);
  return channel;
};

interface Opened {
  readonly job?: Job;
  readonly id?: string;
  readonly database?: Database;
}

/** A window with a job of the shelf, or with a fresh one. */
const windowOf = async ({ job = workedExample(), id, database = db }: Opened = {}) => {
  const known = id === undefined ? undefined : await jobOf(db, id);
  const bench = createBench({ job: known?.job ?? job, ...(known && { id: known.id, isFresh: false }) });
  const troubles: unknown[] = [];
  const keep = follow(bench, {
    db: database,
    channel: channelOf(),
    known,
    now: () => 5000,
    nameFirst: 'as it came',
    nameForeign: (path) => `elsewhere: ${path.join('.')}`,
    onTrouble: (why) => troubles.push(why),
  });
  following.push(keep);
  return { bench, keep, troubles, job: () => bench.getState().job };
};
/** Until all that was said and done has come about. */
const settled = async (windows: readonly { keep: { flush: () => Promise<void> } }[]) => {
  for (let round = 0; round < 3; round += 1) {
    for (const { keep } of windows) await keep.flush();
    await new Promise((done) => setTimeout(done, 15));
  }
};
const shared = async () => {
  const { id } = await addJob(db, { job: workedExample(), now: 1, name: 'New job' });
  return [await windowOf({ id }), await windowOf({ id })] as const;
};

describe('a job at the bench', () => {
  it('goes on the shelf with its first change, not before', async () => {
    const one = await windowOf();
    await settled([one]);
    expect(await cardsOf(db)).toEqual([]);
    one.bench.put('bridge.thickness', 8.6);
    await settled([one]);
    const [card] = await cardsOf(db);
    expect((await jobOf(db, card?.id ?? ''))?.job).toEqual(one.job());
    expect(one.bench.getState().id).toBe(card?.id);
  });

  it('is kept as it is when its first change is taken back', async () => {
    const one = await windowOf();
    one.bench.put('bridge.thickness', 8.6);
    await settled([one]);
    one.bench.undo();
    await settled([one]);
    expect((await jobOf(db, one.bench.getState().id))?.job).toEqual(workedExample());
  });

  it('stays on the shelf when another one is opened, and comes back by undo as that very job', async () => {
    const one = await windowOf();
    one.bench.put('bridge.thickness', 8.6);
    const first = one.bench.getState().id;
    one.bench.startNew(newJob('2026-01-01'));
    one.bench.put('name', 'Second');
    await settled([one]);
    expect((await cardsOf(db)).map(({ name }) => name).sort()).toEqual([workedExample().name, 'Second'].sort());
    one.bench.undo();
    one.bench.undo();
    expect(one.bench.getState().id).toBe(first);
    one.bench.put('bridge.thickness', 8.7);
    await settled([one]);
    expect((await jobOf(db, first))?.job.bridge.thickness).toBe(8.7);
  });

  it('is kept once a hand that drags a number pauses, and not at each step on the way', async () => {
    const one = await windowOf();
    const path = 'bridge.thickness';
    const later = (ms: number) => new Promise((done) => setTimeout(done, ms));
    one.bench.hold(path);
    for (let k = 1; k <= 16; k += 1) {
      one.bench.drag(path, [{ path, value: 8 + k / 100 }], 'Thickness, centre');
      await later(60);
    }
    expect(await cardsOf(db)).toEqual([]);
    await later(400);
    const [card] = await cardsOf(db);
    expect((await jobOf(db, card?.id ?? ''))?.job.bridge.thickness).toBe(8.16);
    one.bench.letGo();
  });

  it('has a state to go back to for each step, by its name', async () => {
    const one = await windowOf();
    one.bench.put('bridge.thickness', 8.6);
    await settled([one]);
    one.bench.put('slot.depth', 4.2);
    await settled([one]);
    const states = await statesOf(db, one.bench.getState().id);
    expect(states.map(({ name }) => name)).toEqual(['Slot depth', 'Thickness, centre', 'as it came']);
  });
});

describe('two windows on one job', () => {
  it('show each other’s changes, and keep changes of different numbers made at once', async () => {
    const [a, b] = await shared();
    a.bench.put('bridge.thickness', 8.6);
    b.bench.put('slot.depth', 4.2);
    await settled([a, b]);
    expect(a.job()).toEqual(b.job());
    expect(a.job().bridge.thickness).toBe(8.6);
    expect(a.job().slot.depth).toBe(4.2);
    expect(a.bench.getState().built?.job.slot.depth).toBe(4.2);
  });

  it('that change one number at once: the later one stands in both, the other comes back by undo', async () => {
    const [a, b] = await shared();
    a.bench.put('bridge.thickness', 8.6);
    b.bench.put('bridge.thickness', 8.2);
    await settled([a, b]);
    expect(a.job().bridge.thickness).toBe(8.2);
    expect(b.job().bridge.thickness).toBe(8.2);
    a.bench.undo();
    expect(a.job().bridge.thickness).toBe(8.6);
    await settled([a, b]);
    expect(b.job().bridge.thickness).toBe(8.6);
    expect(b.bench.getState().past.at(-1)?.name).toBe('elsewhere: bridge.thickness');
  });

  it('do not disturb what is being typed: it goes on, and what is refused puts back what the other window made of the rest', async () => {
    const [a, b] = await shared();
    a.bench.enter('bridge.thickness');
    a.bench.type('bridge.thickness', '8');
    b.bench.put('slot.depth', 4.2);
    await settled([b]);
    await settled([a, b]);
    expect(a.job().slot.depth).toBe(4.2);
    a.bench.type('bridge.thickness', '8.4');
    expect(a.job().bridge.thickness).toBe(8.4);
    a.bench.type('bridge.thickness', '8.4 apples');
    expect(a.job().bridge.thickness).toBe(workedExample().bridge.thickness);
    expect(a.job().slot.depth).toBe(4.2);
    a.bench.forget('bridge.thickness');
    await settled([a, b]);
    expect(a.job()).toEqual(b.job());
    a.bench.undo();
    expect(a.job().slot.depth).toBe(workedExample().slot.depth);
  });

  it('go on when the job is taken off for good in one of them', async () => {
    const [a, b] = await shared();
    await removeJobs(db, [a.bench.getState().id]);
    b.bench.put('slot.depth', 4.2);
    await settled([a, b]);
    expect((await jobOf(db, b.bench.getState().id))?.job.slot.depth).toBe(4.2);
  });

  it('end equal after many changes at any pace', async () => {
    const windows = await shared();
    const { even } = seeded(11);
    const paths = ['bridge.thickness', 'slot.depth', 'action.bass', 'action.treble'];
    for (let k = 0; k < 120; k += 1) {
      const who = windows[even(0, 2) < 1 ? 0 : 1];
      const path = paths[Math.floor(even(0, paths.length))] ?? '';
      if (even(0, 8) < 1) who.bench.undo();
      else who.bench.put(path, Number(even(2.1, 3.9).toFixed(2)));
      if (even(0, 3) < 1) void who.keep.flush();
      if (even(0, 6) < 1) await new Promise((done) => setTimeout(done, 1));
    }
    await settled(windows);
    await settled(windows);
    expect(windows[0].job()).toEqual(windows[1].job());
    expect((await jobOf(db, windows[0].bench.getState().id))?.job).toEqual(windows[0].job());
  });
});

describe('a database that fails', () => {
  it('loses nothing: what could not be kept is told, stays wanted and is kept when it works again', async () => {
    let isFull = true;
    const filling = new Proxy(db, {
      get(target, key) {
        if (key === 'transaction' && isFull)
          return () => {
            throw new DOMException('The quota has been exceeded.', 'QuotaExceededError');
          };
        const value = Reflect.get(target, key, target);
        return typeof value === 'function' ? value.bind(target) : value;
      },
    });
    const one = await windowOf({ database: filling });
    one.bench.put('bridge.thickness', 8.6);
    await one.keep.flush();
    expect(one.keep.isKept()).toBe(false);
    expect(String(one.troubles[0])).toContain('quota');
    one.bench.put('slot.depth', 4.2);
    isFull = false;
    await one.keep.flush();
    expect(one.keep.isKept()).toBe(true);
    expect(one.troubles.at(-1)).toBeUndefined();
    expect((await jobOf(db, one.bench.getState().id))?.job).toEqual(one.job());
  });
});
