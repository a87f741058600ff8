// @vitest-environment jsdom
import { afterEach, expect, it } from 'vitest';
import { newJob, readJob, writeJob } from '../../geometry/job-file.ts';
import { firstLook } from '../../src/app/first-look.ts';
import { keys } from '../../src/app/keys.ts';
import { restore } from '../../src/app/memory.ts';
import { createBench } from '../../src/app/store.ts';
import { starters } from '../../src/jobs/index.ts';

const storage = () => window.localStorage;
afterEach(() => window.localStorage.clear());

/** What the reader makes of the same storage. */
const read = () => createBench(restore(storage)).getState();

it('shows the demo where nothing was left, as the reader does', () => {
  const { job, built } = read();
  expect(firstLook(storage)).toMatchObject({ job, built });
});

it.each(starters)('shows $id as it was left, as the reader does', ({ text }) => {
  window.localStorage.setItem(keys.job, text);
  const { job, built } = read();
  expect(built).toBeDefined();
  expect(firstLook(storage)).toMatchObject({ job, built });
});

it.each([
  ['another program’s', '{"format":"other","version":3}'],
  ['no JSON', '{'],
  ['null', 'null'],
  ['of an earlier format', writeJob(newJob('2026-01-01')).replace(/"version": \d+/, '"version": 1')],
  ['a job with a part missing', writeJob(newJob('2026-01-01')).replace('"slot"', '"slit"')],
  [
    'a job whose numbers cannot be worked out',
    writeJob(newJob('2026-01-01')).replace('"scale": 640', '"scale": "frets"'),
  ],
])('leaves what is %s to the reader', (_, text) => {
  window.localStorage.setItem(keys.job, text);
  expect(firstLook(storage)).toBeUndefined();
});

it('leaves a job that cannot be built to the reader: what is drawn is the last that could', () => {
  const read = readJob(starters[0]?.text ?? '');
  if (!read.ok) throw new Error('the demo was not read');
  window.localStorage.setItem(keys.job, writeJob(read.job));
  window.localStorage.setItem(keys.built, writeJob(read.job));
  expect(firstLook(storage)).toBeUndefined();
});

it('leaves all to the reader where there is no storage', () => {
  const none = () => {
    throw new Error('denied');
  };
  expect(firstLook(none)).toBeUndefined();
});
