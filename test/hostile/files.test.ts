// Files as someone might send them who wants the program to stumble: each is opened as it is, or refused in words. `npm run fuzz` makes twenty times as many.
import 'fake-indexeddb/auto';
import { readFileSync } from 'node:fs';
import { deflateRawSync } from 'node:zlib';
import { IDBFactory } from 'fake-indexeddb';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { withAlternative } from '../../geometry/alternatives.ts';
import { isSame } from '../../geometry/changes.ts';
import { setAt } from '../../geometry/fields.ts';
import { type Job, jobVersion } from '../../geometry/job.ts';
import { readJob, writeJob } from '../../geometry/job-file.ts';
import { readNewer } from '../../geometry/newer.ts';
import { type Database, openDatabase } from '../../src/app/keep/database.ts';
import { addJob } from '../../src/app/keep/shelf.ts';
import { jobInLink } from '../../src/app/share/link.ts';
import { openText } from '../../src/app/shelf/opening.ts';
import { readShelf, writeShelf } from '../../src/app/shelf/shelf-file.ts';
import { starters } from '../../src/jobs/index.ts';
import { newShop, readShop, writeShop } from '../../templates/shop/index.ts';
import { keptBench } from '../app/keep/kept-bench.ts';
import { workedExample } from '../solved.ts';
import { footprintJobs, fullJob, oldTop } from '../templates/full-job.ts';
import { inTime, must, mustBeFit, mustSay, watchPrototypes } from './hold.ts';
import { mutated } from './mutated.ts';

/** How many files all checks here make between them. */
const total = Number(process.env.SAGITTA_HOSTILE_FILES ?? 5000);
const share = (part: number) => Math.ceil(total * part);
const timeout = 30_000 + total * 40;
const seed = Number(process.env.SAGITTA_SEED ?? 20264);

const nothing = () => Promise.resolve();
const whole = (): Job =>
  withAlternative(setAt(fullJob(), 'bridge.points', footprintJobs.free().bridge.points), 'other');
const old = ['version-1', 'version-2'].map((name) =>
  readFileSync(new URL(`../jobs/${name}.json`, import.meta.url), 'utf8'),
);
const newer = writeJob({ ...whole(), version: jobVersion + 1 } as unknown as Job);
const jobs = [...starters.map(({ text }) => text), ...old, newer, ...[whole(), oldTop()].map(writeJob)];
const shelf = writeShelf(
  [
    { job: workedExample(), place: 'shelf' },
    { job: whole(), place: 'bin' },
  ],
  '2026-01-01',
);
const shop = writeShop({
  ...newShop(),
  copies: { footprint: 2, caul: 0 },
  gauges: { besides: 'both', list: [{ id: 'own', radius: 300 }] },
  printers: {
    chosen: 'one',
    list: [
      {
        id: 'one',
        name: 'Back room',
        across: 1.001,
        down: 0.999,
        date: '2026-01-01',
        readings: [{ id: 'r', along: 'across', bar: 100, reads: 100.1 }],
      },
    ],
  },
});

/** Holds a file that claims to be a job to be opened as it is, or refused in words. */
const holdJob = (text: string, mostCpu?: number): boolean => {
  const read = inTime(
    () => text.slice(0, 2000),
    () => readJob(text),
    mostCpu,
  );
  const understood = readNewer(text);
  for (const job of [read.ok ? read.job : undefined, understood?.job]) {
    if (job === undefined) continue;
    const again = readJob(writeJob(job));
    must(again.ok && isSame(again.job, job), () => `it comes back as another: ${text.slice(0, 2000)}`);
  }
  if (read.ok) for (const path of read.unknown) mustBeFit(`Unknown: ${path}`);
  else mustSay(read.problems);
  return read.ok;
};

/** Runs through so many of them, and holds the opened ones to be neither all nor none. */
const tally = (count: number, least: number) => {
  let opened = 0;
  const clean = watchPrototypes();
  return {
    see: (isOpened: boolean) => {
      if (isOpened) opened += 1;
    },
    end: () => {
      clean();
      expect(opened).toBeGreaterThan(count * least);
      expect(opened).toBeLessThan(count * 0.9);
    },
  };
};

describe('a changed file', { timeout }, () => {
  it(`of a job is opened as it is, or refused in words: ${share(0.7)}`, () => {
    const { see, end } = tally(share(0.7), 0.05);
    fc.assert(
      fc.property(mutated(jobs), (text) => see(holdJob(text))),
      { numRuns: share(0.7), seed, endOnFailure: true },
    );
    end();
  });

  it(`of a shop’s settings is opened as it is, or refused in words: ${share(0.1)}`, () => {
    const { see, end } = tally(share(0.1), 0.05);
    fc.assert(
      fc.property(mutated([shop, writeShop(newShop())]), (text) => {
        const read = inTime(
          () => text.slice(0, 2000),
          () => readShop(text),
        );
        see(read.ok);
        if (!read.ok) return mustSay(read.problems);
        const again = readShop(writeShop(read.shop));
        must(again.ok && isSame(again.shop, read.shop), () => `it comes back as another: ${text}`);
      }),
      { numRuns: share(0.1), seed, endOnFailure: true },
    );
    end();
  });

  it(`of a shelf brings what can be read, and says of each other job why: ${share(0.08)}`, async () => {
    const { see, end } = tally(share(0.08), 0.05);
    await fc.assert(
      fc.asyncProperty(mutated([shelf]), async (text) => {
        const read = await readShelf(text, nothing);
        see(read.ok);
        if (!read.ok) return mustBeFit(read.says);
        for (const says of read.refused) mustBeFit(says);
        const again = await readShelf(writeShelf(read.jobs, '2026-01-01'), nothing);
        must(again.ok && isSame(again.jobs, read.jobs), () => `it comes back as another: ${text.slice(0, 2000)}`);
      }),
      { numRuns: share(0.08), seed, endOnFailure: true },
    );
    end();
  });

  it(`in a link is opened as it is, or refused in words: ${share(0.1)}`, async () => {
    const { see, end } = tally(share(0.1), 0.05);
    const link = fc.record({
      text: mutated(jobs.map((text) => JSON.stringify(JSON.parse(text)))),
      cut: fc.oneof({ weight: 2, arbitrary: fc.constant(1) }, fc.double({ min: 0, max: 1, noNaN: true })),
      put: fc.oneof({ weight: 2, arbitrary: fc.constant('') }, fc.string({ maxLength: 5 }), fc.constant('_-AA')),
    });
    await fc.assert(
      fc.asyncProperty(link, async ({ text, cut, put }) => {
        const packed = deflateRawSync(text).toString('base64url');
        const at = Math.floor(cut * packed.length);
        const read = await jobInLink(`#job=${packed.slice(0, at)}${put}${cut < 0.5 ? packed.slice(at + 2) : ''}`);
        see(read.ok);
        if (!read.ok) return mustSay(read.problems);
        const again = readJob(writeJob(read.job));
        must(again.ok && isSame(again.job, read.job), () => `it comes back as another: ${text.slice(0, 2000)}`);
      }),
      { numRuns: share(0.1), seed, endOnFailure: true },
    );
    end();
  });

  it(`that is refused leaves bench and shelf as they were: ${share(0.02)}`, async () => {
    globalThis.indexedDB = new IDBFactory();
    const db = await openDatabase();
    await addJob(db, { job: workedExample(), now: 1, name: 'x' });
    const { bench, keep } = keptBench(db);
    const shown = async () => JSON.stringify([await everything(db), bench.getState().job]);
    const { see, end } = tally(share(0.02), 0.05);
    await fc.assert(
      fc.asyncProperty(mutated([...jobs, shelf]), async (text) => {
        const before = await shown();
        for (const id of ['open', 'beside']) bench.dismiss(id);
        await openText(bench, keep, text, 'nosj.\u202efile\u0007.json');
        await keep.flush();
        const { notices } = bench.getState();
        const notice = notices.find(({ id }) => id === 'open');
        const isRefused = notice?.says.includes('not opened') === true;
        const isPartly = notice !== undefined && notice.fine !== true;
        see(!isPartly);
        for (const { says, details } of notices) for (const said of [says, ...details]) mustBeFit(said);
        if (isRefused) must((await shown()) === before, () => `refused, and yet something changed: ${text}`);
      }),
      { numRuns: share(0.02), seed, endOnFailure: true },
    );
    end();
    db.close();
  });
});

const everything = async (db: Database) => [
  await db.getAll('cards'),
  await db.getAll('bodies'),
  await db.getAll('states'),
];

describe('a file made to be slow', () => {
  /** Each takes less than 100 ms where nothing else runs; beside other tests, which share its caches, up to twice that. */
  const mostCpu = 250;
  const marked = JSON.stringify({ ...workedExample(), x: '@', strings: { ...workedExample().strings, list: '@@' } });
  const strings = JSON.stringify(workedExample().strings.list);
  const fill = (one: string) => Array.from({ length: Math.floor(480_000 / (one.length + 1)) }, () => one).join();
  const withX = (x: string) => marked.replace('"@"', x).replace('"@@"', strings);
  const withStrings = (list: string) => marked.replace('"@"', '0').replace('"@@"', list);
  const keys = (count: number, key: string) => Array.from({ length: count }, (_, k) => `"${key}${k}":1`).join();

  it.each([
    ['brackets, opened only', '['.repeat(490_000)],
    ['groups, opened only', '{"a":'.repeat(90_000)],
    ['fifty megabytes', ' '.repeat(50_000_000)],
    ['lines that lead nowhere', `${'\n'.repeat(490_000)}x`],
    ['a string that never ends', `{"a":"${'\\"'.repeat(240_000)}`],
    ['a list cut short', `[${fill('1')}`],
    ['strings that are numbers', withStrings(`[${fill('1')}]`)],
    ['strings of one key', withStrings(`[${fill('{"id":"a"}')}]`)],
    ['strings of no key', withStrings(`[${fill('{}')}]`)],
    ['keys that nobody knows', withX(`1,${keys(30_000, 'k')}`)],
    ['keys written with escapes', withX(`{${keys(20_000, '\\u0041')}}`)],
    ['keys that reach the prototype', withX(`[${fill('{"__proto__":1}')}]`)],
    ['numbers without end', withX(`[${fill('1e999')}]`)],
    ['brackets forty deep, side by side', withX(`[${fill('['.repeat(40) + ']'.repeat(40))}]`)],
    ['a long key twice', withX(`{"${'k'.repeat(200_000)}":1,"${'k'.repeat(200_000)}":2}`)],
    ['a long text where a day belongs', marked.replace(workedExample().date, '2'.repeat(480_000))],
    ['version 1 with masses of strings', (old[0] ?? '').replace(/"list": \[/, `"list": [${fill('{"id":"a"}')},`)],
    ['a newer one with masses of strings', newer.replace(/"list": \[/, `"list": [${fill('{"id":"a"}')},`)],
  ])('is told apart at once: %s', (_, text) => {
    holdJob(text, mostCpu);
    inTime(
      () => 'read as a newer one',
      () => readNewer(text),
      mostCpu,
    );
  });
});
