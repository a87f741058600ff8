// @vitest-environment jsdom
import './quick.ts';
import { cleanup, render, screen, waitFor, within } from '@testing-library/react';
import { userEvent } from '@testing-library/user-event';
import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest';
import { advise } from '../../geometry/checks/advise.ts';
import type { Job } from '../../geometry/job.ts';
import type { AdviceAsk } from '../../src/app/advice.worker.ts';
import { Findings } from '../../src/app/findings/Findings.tsx';
import { findingsOf } from '../../src/app/findings/findings-of.ts';
import { isReading } from '../../src/app/findings/reading.ts';
import { adviseFirst } from '../../src/app/findings/use-advice.ts';
import { createBench } from '../../src/app/store.ts';
import { BenchContext } from '../../src/app/use-bench.ts';
import { demoBench, starterJob } from './bench.ts';
import { labelled } from './labelled.ts';

vi.setConfig({ testTimeout: 30_000 });

/** What was asked of the worker. */
let asked: Job[] = [];
/** Answers as the worker does, with the same solver, but in this thread: jsdom has no workers. */
class Here {
  onmessage: ((event: { data: unknown }) => void) | null = null;
  postMessage({ turn, job, checks }: AdviceAsk) {
    asked.push(job);
    for (const check of checks)
      setTimeout(() => this.onmessage?.({ data: { turn, check, advice: advise(job, check) } }));
  }
  terminate() {}
}
vi.mock('../../src/app/workers.ts', () => ({ adviceWorker: () => new Here() }));
beforeEach(() => {
  asked = [];
});
afterEach(cleanup);

const open = (bench = demoBench()) => {
  render(
    <BenchContext value={bench}>
      <Findings />
    </BenchContext>,
  );
  return { bench, user: userEvent.setup() };
};
const finding = (check: string) => {
  const found = document.querySelector<HTMLElement>(`.finding[data-check="${check}"]`);
  if (found === null) throw new Error(`no finding ${check}`);
  return found;
};
const order = () => [...document.querySelectorAll<HTMLElement>('.open > .finding')].map(({ dataset }) => dataset.check);
const waysOf = (check: string) => waitFor(() => within(finding(check)).getByRole('list'), { timeout: 10_000 });

describe('a range that is being changed', () => {
  it('keeps its field, and its finding its place, whatever the level becomes', async () => {
    const { user, bench } = open();
    const before = order();
    expect(before[0]).toBe('exposure');
    await user.click(screen.getByRole('button', { name: 'Change the range: Exposure' }));
    const to = labelled('Exposure, right to');
    await user.click(to);
    // The demo's saddle stands 4.61 mm out at E2: with 4.7 it is right, on the way to 4.75.
    await user.keyboard('4.75');
    expect(bench.getState().job.limits.exposure?.to).toBe(4.75);
    expect(to.value).toBe('4.75');
    expect(document.activeElement).toBe(to);
    expect(finding('exposure').dataset.level).toBe('right');
    expect(order()).toEqual(before);
    await user.click(screen.getByRole('button', { name: 'Change the range: Exposure' }));
    expect(order()).not.toContain('exposure');
  });

  it('stays in the list of those that are right too, and in its place among worse ones', async () => {
    const { user } = open();
    await user.click(screen.getByText(/checks are right$/));
    await user.click(screen.getByRole('button', { name: 'Change the range: Relief' }));
    const from = labelled('Relief, right from');
    await user.type(from, '0.2');
    expect(finding('relief').dataset.level).not.toBe('right');
    expect(finding('relief').closest('.right')).not.toBeNull();
    expect(from.value).toBe('0.2');

    const before = order();
    expect(before.indexOf('inSlot')).toBeGreaterThan(0);
    await user.click(screen.getByRole('button', { name: 'Change the range: Saddle in the slot' }));
    // The demo has 49.6 % of it in the slot.
    await user.type(labelled('Saddle in the slot, doubtful from'), '49.8');
    expect(finding('inSlot').dataset.level).toBe('wrong');
    expect(order()).toEqual(before);
  });
});

describe('ways out', () => {
  it('are not asked for while the job cannot be built, and it is said when they come', async () => {
    const { bench } = open();
    await waysOf('exposure');
    bench.type('bridge.frontToSaddle', '38');
    await waitFor(() => expect(screen.getByText(/^Ways to bring them right come once/)).toBeTruthy());
    expect(bench.getState().solved.ok).toBe(false);
    const before = asked.length;
    // Longer than the job has to rest before anything is asked.
    await new Promise((resolve) => setTimeout(resolve, 500));
    expect(asked).toHaveLength(before);
    expect(within(finding('exposure')).queryByRole('list')).toBeNull();
    expect(screen.queryByText(/^Nothing that may be changed/)).toBeNull();
    bench.type('bridge.frontToSaddle', '9.8');
    await waysOf('exposure');
    expect(screen.queryByText(/^Ways to bring them right come once/)).toBeNull();
  });

  it('that are measured have no button: a reading is not typed by a program', async () => {
    const bench = demoBench();
    bench.put('guitar.neckPlaneHeight', 5.9);
    open(bench);
    const ways = await waysOf('neck');
    expect(ways.textContent).toMatch(/Reset the neck/);
    expect(ways.textContent).toContain('Type it once it is measured.');
    expect(within(ways).queryAllByRole('button')).toEqual([]);
    const others = await waysOf('exposure');
    expect(within(others).getAllByRole('button', { name: /^Do it: Make / }).length).toBeGreaterThan(0);
  });

  it.each([
    ['guitar.neckPlaneHeight', true],
    ['guitar.relief', true],
    ['strung.light', true],
    ['setup.log.pass-1.readings.E2.action', true],
    ['strings.list.E2.cents', true],
    ['scar.length', true],
    ['strings.list.E2.gauge', false],
    ['bridge.thickness', false],
    ['slot.depth', false],
  ])('changes of %s are measured: %s', (path, is) => expect(isReading(path)).toBe(is));
});

describe('what needs no range or no bridge', () => {
  it('says nothing in place of a range that is none', () => {
    open();
    const text = finding('intonation').textContent ?? '';
    expect(text).toMatch(/clear of its edges ?common practice, from memory/);
    expect(text).not.toContain('none');
  });

  it('says at the top that the neck has to be reset, whether or not a bridge can be built', () => {
    const job = starterJob('heron');
    const bench = createBench({
      job: { ...job, guitar: { ...job.guitar, neckPlaneHeight: 5.5 }, slot: { ...job.slot, depth: 12 } },
    });
    expect(bench.getState().built).toBeUndefined();
    open(bench);
    expect(document.querySelector('.verdict')?.textContent).toMatch(/^No usual bridge suits this neck angle: reset/);
    cleanup();
    open();
    expect(document.querySelector('.verdict')).toBeNull();
  });
});

describe('ways that are looked for as the page begins', () => {
  it('stand there with what they are for, and are not looked for again', async () => {
    const bench = demoBench();
    const { job, built } = bench.getState();
    await adviseFirst(job, built ? findingsOf(built) : []);
    open(bench);
    expect(within(finding('exposure')).getByRole('list')).toBeDefined();
    await new Promise((done) => setTimeout(done, 400));
    expect(asked).toEqual([job]);
  });

  it('are waited for a second at most, and then looked for as ever', async () => {
    const bench = demoBench();
    const { job, built } = bench.getState();
    const answer = vi.spyOn(Here.prototype, 'postMessage').mockImplementationOnce(() => {});
    await adviseFirst(job, built ? findingsOf(built) : []);
    answer.mockRestore();
    open(bench);
    expect(within(finding('exposure')).queryByRole('list')).toBeNull();
    await waysOf('exposure');
  });
});
