// @vitest-environment jsdom
import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest';
import { writeJob } from '../../geometry/job-file.ts';
import { keys } from '../../src/app/keys.ts';
import { keep, restore } from '../../src/app/memory.ts';
import { createBench } from '../../src/app/store.ts';
import { starterJob } from './bench.ts';

const storage = () => window.localStorage;
const noStorage = (): Storage => {
  throw new DOMException('The operation is insecure.', 'SecurityError');
};

beforeEach(() => {
  storage().clear();
  vi.useFakeTimers();
});
afterEach(() => {
  vi.useRealTimers();
});

const begin = () => {
  const bench = createBench(restore(storage));
  return { bench, ...keep(bench, storage) };
};

describe('the job between two visits', () => {
  it('is the demo at first', () => {
    expect(restore(storage).job).toEqual(starterJob('heron'));
  });

  it('is kept within a second of a change and stands there again, with edits that could be lost', () => {
    const { bench } = begin();
    bench.type('bridge.thickness', '8.8');
    vi.advanceTimersByTime(1000);
    const again = restore(storage);
    expect(again.job.bridge.thickness).toBe(8.8);
    expect(again.isSaved).toBe(false);
  });

  it('is kept at once when the page is left', () => {
    const { bench, flush } = begin();
    bench.type('bridge.thickness', '8.7');
    flush();
    expect(restore(storage).job.bridge.thickness).toBe(8.7);
  });

  it('keeps a value that cannot be built, and what was drawn last beside it', () => {
    const { bench, flush } = begin();
    bench.type('bridge.frontToSaddle', '38');
    flush();
    const again = createBench(restore(storage)).getState();
    expect(again.job.bridge.frontToSaddle).toBe(38);
    expect(again.solved.ok).toBe(false);
    expect(again.built?.job.bridge.frontToSaddle).toBe(starterJob('heron').bridge.frontToSaddle);
  });

  it('keeps the jobs put aside', () => {
    const { bench, flush } = begin();
    bench.type('name', 'Mine');
    bench.open(writeJob(starterJob('wren')), 'wren.json');
    flush();
    expect(restore(storage).kept?.map(({ name }) => name)).toEqual(['Mine']);
  });

  it('finds the groups opened and closed as they were left, and as they come with another job', () => {
    const { bench, flush } = begin();
    bench.type('strung.relief', '0.2');
    bench.fold('strung', false);
    flush();
    expect(createBench(restore(storage)).getState().folds).toEqual({ strung: false });
    storage().setItem(keys.folds, '{"strung": "ajar", "plate": true');
    expect(restore(storage).folds).toEqual({});
    storage().setItem(keys.folds, '{"strung": "ajar", "plate": true}');
    expect(restore(storage).folds).toEqual({ plate: true });
    bench.open(writeJob(starterJob('wren')), 'wren.json');
    expect(bench.getState().folds).toEqual({});
  });

  it('is never thrown away when it cannot be read: its text is kept and named', () => {
    storage().setItem(keys.job, '{"half a job');
    const first = restore(storage);
    expect(first.job).toEqual(starterJob('heron'));
    expect(first.notices?.[0]?.says).toContain(`${keys.unread}.1`);
    expect(storage().getItem(`${keys.unread}.1`)).toBe('{"half a job');
    storage().setItem(keys.job, '[]');
    restore(storage);
    expect(storage().getItem(`${keys.unread}.1`)).toBe('{"half a job');
    expect(storage().getItem(`${keys.unread}.2`)).toBe('[]');
  });
});

describe('a storage that fails', () => {
  it('is told of once when it is not there, and work goes on', () => {
    const bench = createBench(restore(noStorage));
    const { flush } = keep(bench, noStorage);
    expect(bench.getState().notices).toHaveLength(1);
    bench.dismiss('storage');
    bench.type('bridge.thickness', '9');
    flush();
    expect(bench.getState().notices).toEqual([]);
    expect(bench.getState().job.bridge.thickness).toBe(9);
  });

  it('is told of once when it is full', () => {
    const bench = createBench(restore(storage));
    const full = () =>
      ({
        ...storage(),
        setItem() {
          throw new DOMException('The quota has been exceeded.', 'QuotaExceededError');
        },
      }) as unknown as Storage;
    const { flush } = keep(bench, full);
    bench.type('bridge.thickness', '9');
    flush();
    expect(bench.getState().notices.map(({ id }) => id)).toEqual(['storage']);
    bench.dismiss('storage');
    bench.type('bridge.thickness', '8');
    flush();
    expect(bench.getState().notices).toEqual([]);
  });
});
