// @vitest-environment jsdom
import './quick.ts';
import { cleanup, render, screen, within } from '@testing-library/react';
import { userEvent } from '@testing-library/user-event';
import { afterEach, describe, expect, it, vi } from 'vitest';
import { readJob, writeJob } from '../../geometry/job-file.ts';
import { SetUp } from '../../src/app/setup/SetUp.tsx';
import { type Built, createBench } from '../../src/app/store.ts';
import { BenchContext } from '../../src/app/use-bench.ts';
import { demoBench, starterJob } from './bench.ts';
import { labelled } from './labelled.ts';

afterEach(cleanup);
vi.setConfig({ testTimeout: 120_000 });

/** The set-up of the demo: wanted actions 2.4 and 1.8 mm. */
const open = (bench = demoBench()) => {
  render(
    <BenchContext value={bench}>
      <SetUp />
    </BenchContext>,
  );
  return { bench, log: () => bench.getState().job.setup.log, user: userEvent.setup() };
};
type User = ReturnType<typeof userEvent.setup>;
const field = (label: string) => labelled(label);
const newReading = (user: User) => user.click(screen.getByRole('button', { name: 'New reading' }));
const type = async (user: User, label: string, text: string) => {
  await user.clear(field(label));
  if (text !== '') await user.type(field(label), text);
};
const fold = (n: number) => {
  const found = [...document.querySelectorAll<HTMLDetailsElement>('[data-fold]')].find(({ textContent }) =>
    textContent?.startsWith(`Reading ${n}`),
  );
  if (found === undefined) throw new Error(`no reading ${n}`);
  return found;
};
const sentences = (n: number) => within(fold(n)).getByRole('status').textContent ?? '';
/** The cells of a string's row, by their column's head. */
const cells = (n: number, string: string): Readonly<Record<string, string>> => {
  const table = within(fold(n)).getByRole('table');
  const heads = [...table.querySelectorAll('thead th')].map((th) => th.firstChild?.textContent?.trim() ?? '');
  const row = within(table).getByRole('rowheader', { name: string }).closest('tr');
  return Object.fromEntries([...(row?.children ?? [])].map((cell, k) => [heads[k] ?? '', cell.textContent ?? '']));
};

describe('a reading of the strung guitar', () => {
  it('asks for the two outer strings, and says what to take off as soon as both are measured', async () => {
    const { user, bench, log } = open();
    await newReading(user);
    expect(log()).toHaveLength(1);
    expect(log()[0]?.readings.map(({ id }) => id)).toEqual(['E2', 'A2', 'D3', 'G3', 'B3', 'E4']);
    expect(sentences(1)).toContain('the action at E2 and E4');
    await type(user, 'Action measured, E2, reading 1', '2.7');
    expect(sentences(1)).toContain('the action at E4');
    await type(user, 'Action measured, E4, reading 1', '1.9');
    expect(sentences(1)).toMatch(/^Take 0\.\d\d mm off the bottom at the bass end and 0\.\d\d mm at the treble end\.$/);
    // The string pivots at the nut: `(x_s/x_12)·(action − wanted)`, x_s the scale and the setback, x_12 half the scale.
    const { job, design } = bench.getState().built as Built;
    const [bass, treble] = [design.strings[0]?.setback ?? 0, design.strings.at(-1)?.setback ?? 0];
    const { scale } = job.guitar;
    const e2 = ((scale + bass) / (scale / 2)) * (2.7 - 2.4);
    const e4 = ((scale + treble) / (scale / 2)) * (1.9 - 1.8);
    expect(Number(cells(1, 'E2')['Take off the bottom'])).toBeCloseTo(e2, 2);
    expect(Number(cells(1, 'E4')['Take off the bottom'])).toBeCloseTo(e4, 2);
    expect(Number(cells(1, 'E2')['Action, cut to that line'])).toBeCloseTo(2.4, 2);
    // Squared by what E4 has to lose, E2 comes down by as much at fret 12 as E4 does.
    expect(Number(cells(1, 'E2')['Action, only squared'])).toBeCloseTo(2.7 - 0.1, 2);
    expect(cells(1, 'E2')['Limited by']).toMatch(/^(exposure|break angle)$/);
    expect(fold(1).textContent).toContain('In italics');
  });

  it('says how much too low the saddle is, and shows no line that could not be cut', async () => {
    const { user } = open();
    await newReading(user);
    await type(user, 'Action measured, E2, reading 1', '2.6');
    await type(user, 'Action measured, E4, reading 1', '1.7');
    expect(sentences(1)).toMatch(
      /^The saddle is 0\.20 mm too low at E4: make a new saddle, or lay a shim of 0\.20 mm under this one and measure again\.At E2 it is 0\.40 mm too high\.$/,
    );
    expect(cells(1, 'E4')['Take off the bottom']).toBe('−0.20');
    expect(cells(1, 'E2')['Action, cut to that line']).toBe('');
  });

  it('says that nothing is to be done where both outer strings are as wanted', async () => {
    const { user } = open();
    await newReading(user);
    await type(user, 'Action measured, E2, reading 1', '2.4');
    await type(user, 'Action measured, E4, reading 1', '1.82');
    expect(sentences(1)).toBe('Both outer strings are where they are wanted.');
  });

  it('moves the break point of a string that was heard sharp back, and gives it from the front face', async () => {
    const { user, bench } = open();
    const before = bench.getState().built?.design.strings[1]?.fromFront ?? Number.NaN;
    await newReading(user);
    await type(user, 'Action measured, E2, reading 1', '2.4');
    await type(user, 'Action measured, E4, reading 1', '1.8');
    await type(user, 'Cents heard, A2, reading 1', '2');
    const moves = Number(cells(1, 'A2')['Break point moves']?.match(/^back (\d\.\d\d)$/)?.[1]);
    // At fret 12 about L(q − 1), q = 2^(c/1200).
    expect(moves).toBeCloseTo(Number(bench.getState().job.guitar.scale) * (2 ** (2 / 1200) - 1), 1);
    expect(Number(cells(1, 'A2')['Break point from front']) - before).toBeCloseTo(moves, 1);
    expect(sentences(1)).toContain(`A2 to ${cells(1, 'A2')['Break point from front']} mm`);
    expect(cells(1, 'E2')['Break point moves']).toBe('');
    expect(fold(1).textContent).toContain('best filed once the action is right');
    expect(fold(1).textContent).not.toContain('files away the old peak');
    await type(user, 'Cents heard, A2, reading 1', '20');
    // What the crown carries, 0.4 mm from its rear edge, and the rest that is missing, make up the whole move.
    const { thickness } = (bench.getState().built as Built).design.saddle;
    const [, reached, missing] = (
      cells(1, 'A2')['Break point moves']?.match(/^back (\d\.\d\d), (\d\.\d\d) missing$/) ?? []
    ).map(Number);
    expect(reached).toBeCloseTo(thickness - 0.4 - before, 1);
    expect((reached ?? 0) + (missing ?? 0)).toBeCloseTo(moves * 10, 0);
    expect(sentences(1)).toMatch(
      /A2: file to 2\.55 mm from the front face, as far as this saddle’s crown carries; \d\.\d\d mm further back is missing\.$/,
    );
    expect(sentences(1)).not.toContain('File the break points');
  });

  it('says of a string that was heard flat that its break point moves forward, and what that costs', async () => {
    const { user } = open();
    await newReading(user);
    await type(user, 'Action measured, E2, reading 1', '2.4');
    await type(user, 'Action measured, E4, reading 1', '1.8');
    await type(user, 'Cents heard, E2, reading 1', '-2');
    // At fret 12 about L(1 − q), q = 2^(c/1200), L 645 mm.
    const moves = Number(cells(1, 'E2')['Break point moves']?.match(/^forward (\d\.\d\d)$/)?.[1]);
    expect(moves).toBeCloseTo(645 * (1 - 2 ** (-2 / 1200)), 1);
    expect(fold(1).textContent).toMatch(/moves forward files away the old peak.*leave height for it/);
  });

  it('lets the numbers of the last complete reading be asked how they came about, and of no other', async () => {
    const { user } = open();
    const asks = (n: number) => within(fold(n)).queryAllByRole('button', { name: /How\?$/ });
    await newReading(user);
    await type(user, 'Action measured, E2, reading 1', '2.7');
    expect(asks(1)).toHaveLength(0);
    await type(user, 'Action measured, E4, reading 1', '2.1');
    for (const name of [
      /^Take off at the bass end: 0\.\d\d mm\. How\?$/,
      /^Take off at the treble end: /,
      /^Or take the same off all along: /,
      /^Take off here, A2: /,
      /^Action measured, A2: 2\.58 mm\. How\?$/,
      /^Action after the line, A2: /,
      /^Action if only squared, A2: /,
      /^Break point to file, A2: /,
      /^Life left after the line, A2: /,
    ])
      expect(within(fold(1)).getByRole('button', { name })).toBeTruthy();
    const before = cells(1, 'A2');
    await newReading(user);
    // The second one is begun, not complete.
    await type(user, 'Action measured, E2, reading 2', '2.5');
    expect(asks(1).length).toBeGreaterThan(0);
    await type(user, 'Action measured, E4, reading 2', '1.9');
    expect(asks(1)).toHaveLength(0);
    expect(asks(2).length).toBeGreaterThan(0);
    expect(cells(1, 'A2')).toEqual(before);
  });

  it('says by how much a limit is passed, not that less than nothing is left', async () => {
    const { user, bench } = open();
    bench.put('limits.exposure.from', 4);
    await newReading(user);
    await type(user, 'Action measured, E2, reading 1', '2.4');
    await type(user, 'Action measured, E4, reading 1', '1.8');
    expect(cells(1, 'E4')['Left to lower at 12']).toMatch(/^past by 0\.\d\d$/);
    expect(cells(1, 'E4')['Limited by']).toBe('exposure');
    const past = within(fold(1)).getByRole('button', {
      name: /^Life left after the line, E4: past by 0\.\d\d mm\. How/,
    });
    expect(past.textContent).toBe(cells(1, 'E4')['Left to lower at 12']);
  });

  it('shows what is typed and what to take off first, and goes on to the next string by Enter', async () => {
    const { user } = open();
    await newReading(user);
    expect(Object.keys(cells(1, 'E2')).slice(1, 3)).toEqual(['Action measured', 'Take off the bottom']);
    await user.type(field('Action measured, E2, reading 1'), '2.7{Enter}2.6{Enter}');
    expect(field('Action measured, A2, reading 1').value).toBe('2.6');
    expect(document.activeElement).toBe(field('Action measured, D3, reading 1'));
  });

  it('is read and shown in the job’s own unit', async () => {
    const { user, bench, log } = open();
    bench.put('show.length', 'in');
    await newReading(user);
    await type(user, 'Action measured, E2, reading 1', '7/64');
    await type(user, 'Action measured, E4, reading 1', '.0787');
    // 1 in = 25.4 mm exactly: international yard and pound agreement, 1959.
    expect(log()[0]?.readings[0]?.action).toBeCloseTo((7 / 64) * 25.4, 9);
    expect(sentences(1)).toMatch(/^Take 0\.0\d\d in off the bottom at the bass end/);
  });

  it('refuses what is no action in words, in a row of its own', async () => {
    const { user, log } = open();
    await newReading(user);
    await user.click(field('Action measured, E2, reading 1'));
    await user.paste('high');
    expect(screen.getByRole('alert').textContent).toMatch(/^Action measured, E2, reading 1: “high”/);
    await type(user, 'Action measured, E2, reading 1', '');
    expect(screen.queryByRole('alert')).toBeNull();
    expect(log()[0]?.readings[0]?.action).toBe('not taken');
  });
});

describe('the log of readings', () => {
  it('opens the last one, keeps the earlier ones in a line, and lets them be changed and removed', async () => {
    const { user, bench, log } = open();
    await newReading(user);
    await type(user, 'Action measured, E2, reading 1', '2.7');
    await type(user, 'Action measured, E4, reading 1', '2.1');
    await newReading(user);
    expect(fold(1).open).toBe(false);
    expect(fold(1).querySelector('summary')?.textContent).toMatch(/Take 0\.6\d mm off/);
    expect(fold(2).open).toBe(true);
    await user.type(field('Note, reading 2'), 'a day later');
    expect(log()[1]?.note).toBe('a day later');
    await user.click(fold(1).querySelector('summary') as HTMLElement);
    await type(user, 'Action measured, E2, reading 1', '2.4');
    expect(log()[0]?.readings[0]?.action).toBe(2.4);
    await user.click(within(fold(1)).getByRole('button', { name: 'Remove this reading' }));
    expect(log().map(({ note }) => note)).toEqual(['a day later']);
    expect(document.activeElement?.textContent).toBe('New reading');
    expect(bench.getState().past.map(({ name }) => name)).toEqual([
      'a reading added',
      'Action measured, E2, reading 1',
      'Action measured, E4, reading 1',
      'a reading added',
      'Note, reading 2',
      'Action measured, E2, reading 1',
      'reading 1 removed',
    ]);
    bench.undo();
    expect(log()).toHaveLength(2);
    const read = readJob(writeJob(bench.getState().job));
    expect(read.ok && read.job.setup.log).toEqual(log());
  });

  it('gives each reading a key of its own, and takes no more than a job may hold', () => {
    const bench = demoBench();
    for (let n = 0; n < 70; n += 1) bench.addPass();
    const keys = () => bench.getState().job.setup.log.map(({ id }) => id);
    bench.removePass('pass-3');
    expect(bench.addPass()).toBe('pass-61');
    expect(bench.addPass()).toBeUndefined();
    expect(new Set(keys()).size).toBe(60);
    expect(readJob(writeJob(bench.getState().job)).ok).toBe(true);
  });

  it('goes on when strings come and go: a new one has an empty place, and never another’s reading', async () => {
    const bench = createBench({ job: starterJob('heron') });
    bench.addPass();
    bench.type('setup.log.pass-1.readings.E2.action', '2.7');
    bench.type('setup.log.pass-1.readings.E4.action', '2.0');
    const id = bench.addString('bass') as string;
    const { user, log } = open(bench);
    expect(sentences(1)).toContain('the action at B1');
    expect(field('Action measured, B1, reading 1').value).toBe('');
    await type(user, 'Action measured, B1, reading 1', '2.8');
    expect(log()[0]?.readings.at(-1)).toEqual({ id, action: 2.8, cents: 'not taken' });
    expect(sentences(1)).toMatch(/^Take /);
    bench.removeString(id);
    // The key of the one that is gone would bring its reading back.
    expect(bench.addString('bass')).not.toBe(id);
  });

  it('drops what was refused of a string that is removed', () => {
    const bench = demoBench();
    bench.addPass();
    bench.type('setup.log.pass-1.readings.E2.action', 'high');
    bench.leave('setup.log.pass-1.readings.E2.action');
    bench.removeString('E2');
    expect(bench.getState().drafts).toEqual({});
  });
});
