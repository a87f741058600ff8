// @vitest-environment jsdom
import { afterEach, expect, it } from 'vitest';
import { newJob, readJob, writeJob } from '../../geometry/job-file.ts';
import { firstLook, leaveLook } from '../../src/app/first-look.ts';
import { createBench } from '../../src/app/store.ts';
import { lookKey, oldKeys } from '../../src/app/stored-keys.ts';
import { starters } from '../../src/jobs/index.ts';

const local = () => window.localStorage;
const session = () => window.sessionStorage;
const look = () => firstLook(session, local);
afterEach(() => {
  local().clear();
  session().clear();
});

/** What the whole bench makes of a job's text. */
const whole = (text: string) => {
  const read = readJob(text);
  if (!read.ok) throw new Error('the job was not read');
  return createBench({ job: read.job }).getState();
};

it('shows the demo where nothing was left, as the whole bench does', () => {
  const { job, built } = whole(starters[0]?.text ?? '');
  expect(look()).toMatchObject({ job, built });
});

it.each(starters)('shows $id as it was left, as the whole bench does', ({ text }) => {
  const state = whole(text);
  leaveLook(state, session, local);
  expect(state.built).toBeDefined();
  expect(look()).toMatchObject({ job: state.job, built: state.built });
});

it('shows what this window left before what another one did', () => {
  const [mine, other] = [whole(starters[1]?.text ?? ''), whole(starters[2]?.text ?? '')];
  leaveLook(mine, session, local);
  leaveLook(other, () => ({ setItem: () => {} }) as unknown as Storage, local);
  expect(look()?.job).toEqual(mine.job);
  session().clear();
  expect(look()?.job).toEqual(other.job);
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
  local().setItem(lookKey, text);
  expect(look()).toBeUndefined();
});

it('leaves a job that cannot be built to the reader: what is drawn is the last that could', () => {
  const state = whole(starters[0]?.text ?? '');
  leaveLook(state, session, local);
  const bench = createBench({ job: state.job });
  bench.put('bridge.frontToSaddle', 38);
  leaveLook(bench.getState(), session, local);
  expect(look()).toBeUndefined();
});

it('leaves to the reader what an earlier version kept', () => {
  local().setItem(oldKeys.job, starters[0]?.text ?? '');
  expect(look()).toBeUndefined();
});

it('leaves all to the reader where there is no storage', () => {
  const none = () => {
    throw new Error('denied');
  };
  expect(firstLook(none, none)).toBeUndefined();
  leaveLook(whole(starters[0]?.text ?? ''), none, none);
});
