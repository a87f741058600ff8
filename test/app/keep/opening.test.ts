import 'fake-indexeddb/auto';
import { IDBFactory } from 'fake-indexeddb';
import { beforeEach, describe, expect, it } from 'vitest';
import { setAt } from '../../../geometry/fields.ts';
import { type Job, jobVersion } from '../../../geometry/job.ts';
import { readJob, writeJob } from '../../../geometry/job-file.ts';
import { type Database, openDatabase } from '../../../src/app/keep/database.ts';
import { addJob, cardsOf, jobOf, statesOf } from '../../../src/app/keep/shelf.ts';
import { differenceOf } from '../../../src/app/shelf/difference.ts';
import { namesFor } from '../../../src/app/shelf/folder.ts';
import { openFiles, openText } from '../../../src/app/shelf/opening.ts';
import { readShelf, writeShelf } from '../../../src/app/shelf/shelf-file.ts';
import { duplicate, goBackTo, openFrom, rename } from '../../../src/app/shelf/shelf-work.ts';
import { workedExample } from '../../solved.ts';
import { keptBench } from './kept-bench.ts';

let db: Database;
beforeEach(async () => {
  globalThis.indexedDB = new IDBFactory();
  db = await openDatabase();
});

const named = (name: string, job = workedExample()): Job => setAt(job, 'name', name);
const atBench = () => {
  const { bench, keep } = keptBench(db);
  const notice = (id: string) => bench.getState().notices.find((one) => one.id === id);
  return { bench, keep, notice };
};
const names = async () => (await cardsOf(db)).map(({ name }) => name).sort();
const nothing = () => Promise.resolve();

describe('a job file that is opened', () => {
  it('comes in beside what lies on the shelf, and tells in what it differs from its namesake', async () => {
    await addJob(db, { job: named('Parlour'), now: 1, name: 'x' });
    const { bench, keep, notice } = atBench();
    const other = setAt(named('Parlour'), 'bridge.thickness', 8.6);
    await openText(bench, keep, writeJob(other), 'parlour.json');
    await keep.flush();
    expect(await names()).toEqual(['Parlour', 'Parlour']);
    expect(bench.getState().job).toEqual(other);
    const was = workedExample().bridge.thickness.toFixed(1);
    expect(notice('beside')?.details).toEqual([`Thickness, centre: 8.6 mm, there ${was} mm`]);
  });

  it('leaves the job that stood at the bench on the shelf', async () => {
    const { bench, keep } = atBench();
    bench.put('bridge.thickness', 8.6);
    await openText(bench, keep, writeJob(named('Other')), 'other.json');
    await keep.flush();
    expect(await names()).toEqual([workedExample().name, 'Other'].sort());
  });

  it('of a newer version is opened only when the person says so', async () => {
    const { bench, keep, notice } = atBench();
    const before = bench.getState().job;
    const text = JSON.stringify({ ...named('Newer'), version: jobVersion + 1 });
    await openText(bench, keep, text, 'newer.json');
    expect(bench.getState().job).toBe(before);
    expect(notice('open')?.says).toContain('newer Sagitta');
    notice('open')?.act?.run();
    expect(bench.getState().job.name).toBe('Newer');
  });

  it('that is none, or too large, is refused, and nothing is lost', async () => {
    const { bench, keep, notice } = atBench();
    const before = bench.getState().job;
    await openText(bench, keep, '{"half', 'half.json');
    expect(notice('open')?.details.join()).toContain('not JSON');
    const huge = { name: 'huge.json', size: 90_000_000, text: () => Promise.reject(new Error('read it')) };
    await openFiles(bench, keep, [huge as unknown as File]);
    expect(notice('open')?.details.join()).toContain('90 MB');
    expect(bench.getState().job).toBe(before);
    expect(await names()).toEqual([]);
  });
});

describe('a job that is called as a shelf’s file', () => {
  it('is opened as the job it is', async () => {
    const { bench, keep } = atBench();
    await openText(bench, keep, writeJob(named('sagitta-shelf')), 'sagitta-shelf.json');
    expect(bench.getState().job.name).toBe('sagitta-shelf');
  });
});

describe('a shelf’s file', () => {
  const text = (jobs: readonly unknown[]) => writeShelf(jobs as never, '2026-01-01');

  it('brings every job back in its place', async () => {
    const jobs = [
      { job: named('One'), place: 'shelf' },
      { job: named('Two'), place: 'archive' },
    ] as const;
    expect(await readShelf(text(jobs), nothing)).toEqual({ ok: true, jobs, refused: [] });
    const { bench, keep, notice } = atBench();
    await openText(bench, keep, text(jobs), 'all.json');
    expect((await cardsOf(db)).map(({ name, place }) => `${name}: ${place}`).sort()).toEqual([
      'One: shelf',
      'Two: archive',
    ]);
    expect(notice('open')?.says).toContain('2 jobs');
    expect(bench.getState().job.name).toBe(workedExample().name);
  });

  it('brings back the deepest job that can be opened', async () => {
    const deep = JSON.parse(`${'['.repeat(49)}${']'.repeat(49)}`);
    const job = { ...named('Deep'), other: deep } as Job;
    expect(readJob(writeJob(job)).ok).toBe(true);
    expect(await readShelf(text([{ job, place: 'shelf' }]), nothing)).toMatchObject({ ok: true, refused: [] });
  });

  it('with jobs that cannot be read brings the others, and says why', async () => {
    for (const version of ['', '"version":0,', '"version":"1",'])
      expect(await readShelf(`{"format":"sagitta-shelf",${version}"jobs":[]}`, nothing)).toMatchObject({
        ok: false,
        says: expect.stringContaining('does not say of which version'),
      });
    const bad = { ...named('Bad'), bridge: 3 };
    const read = await readShelf(text([{ job: named('Good'), place: 'shelf' }, { job: bad }, 7]), nothing);
    expect(read).toMatchObject({ ok: true, jobs: [{ job: { name: 'Good' } }] });
    expect(read.ok && read.refused).toEqual([
      expect.stringMatching(/^Job 2, “Bad”: bridge is/),
      'Job 3: no job stands there',
    ]);
  });

  it('that is none or newer is refused in words', async () => {
    for (const [broken, says] of [
      ['{"format":"sagitta-shelf"}', /no file of a shelf/],
      ['{"format":"sagitta-shelf","version":9,"jobs":[]}', /newer/],
      ['{"format":"sagitta-shelf","version":1,"jobs":[', /not JSON/],
    ] as const)
      expect(await readShelf(broken, nothing)).toEqual({ ok: false, says: expect.stringMatching(says) });
  });
});

describe('the jobs on the shelf', () => {
  it('are opened, renamed and duplicated, the one at the bench as a step of its own', async () => {
    const { id } = await addJob(db, { job: named('Other'), now: 1, name: 'x' });
    const { bench, keep } = atBench();
    bench.put('bridge.thickness', 8.6);
    const mine = bench.getState().id;
    await openFrom(bench, keep, id);
    expect(bench.getState().job.name).toBe('Other');
    await rename(bench, keep, id, 'Renamed');
    expect(bench.getState().job.name).toBe('Renamed');
    await rename(bench, keep, mine, 'Mine');
    expect((await jobOf(db, mine))?.job.name).toBe('Mine');
    const card = (await cardsOf(db)).find((one) => one.id === mine);
    if (card) await duplicate(keep, card);
    expect(await names()).toEqual(['Mine', 'Mine (copy)', 'Renamed']);
    await expect(openFrom(bench, keep, 'nowhere')).rejects.toThrow('no longer');
  });

  it('go back to an earlier state as a step that can be taken back', async () => {
    const { bench, keep } = atBench();
    bench.put('bridge.thickness', 8.6);
    await keep.flush();
    bench.put('slot.depth', 4.2);
    await keep.flush();
    const states = await statesOf(db, bench.getState().id);
    const first = states.at(-1);
    if (first) await goBackTo(bench, keep, first);
    expect(bench.getState().job).toEqual(workedExample());
    bench.undo();
    expect(bench.getState().job.slot.depth).toBe(4.2);
  });
});

it('files of jobs with one name are numbered', () => {
  expect(namesFor(['A b', 'a', 'A b', ''])).toEqual(['A-b.json', 'a.json', 'A-b-2.json', 'job.json']);
});

it('differences are told by the fields that count, a few at most', () => {
  const job: Job = workedExample();
  expect(differenceOf(job, job)).toEqual([]);
  const many = job.strings.list.reduce(
    (so, { id }) => setAt(setAt(so, `strings.list.${id}.gauge`, 1), `strings.list.${id}.setback`, 9),
    job,
  );
  const told = differenceOf(many, job);
  expect(told.length).toBeLessThanOrEqual(13);
  expect(told[0]).toMatch(/^Gauge, E2: /);
});
