// @vitest-environment jsdom
import { cleanup, render, screen, waitFor } from '@testing-library/react';
import { afterEach, describe, expect, it, vi } from 'vitest';
import { setAt } from '../../geometry/fields.ts';
import { figureAt } from '../../geometry/figures/index.ts';
import type { Job } from '../../geometry/job.ts';
import { inputText } from '../../src/app/figures/figure-text.ts';
import { Help } from '../../src/app/numbers/Help.tsx';
import { Outcome } from '../../src/app/outcome/Outcome.tsx';
import { type Built, createBench } from '../../src/app/store.ts';
import { BenchContext } from '../../src/app/use-bench.ts';
import { demoBench, starterJob, unreadJob } from './bench.ts';

afterEach(cleanup);
vi.setConfig({ testTimeout: 30_000 });

const open = (bench = demoBench()) => {
  render(
    <BenchContext value={bench}>
      <Outcome />
    </BenchContext>,
  );
  return bench;
};
const withAll = (job: Job, values: Readonly<Record<string, unknown>>): Job =>
  Object.entries(values).reduce((made, [path, value]) => setAt(made, path, value), job);
/** What stands under “Neck or bridge”, up to the next head. */
const neck = (): string => {
  let at = screen.getByRole('heading', { name: 'Neck or bridge' }).nextElementSibling;
  const texts: string[] = [];
  for (; at !== null && at.tagName !== 'H3' && !at.classList.contains('stale'); at = at.nextElementSibling)
    texts.push(at.textContent ?? '');
  return texts.join('\n');
};
const asks = (name: RegExp) => screen.queryAllByRole('button', { name });

describe('neck or bridge', () => {
  // trade.md: straightedge clearance is the height less the thickness; 0 to 1 mm of it is usual, so a height of 10 suits 9 to 10 mm.
  it('names the thicknesses that suit the neck, its numbers to be asked how', () => {
    open(createBench({ job: withAll(starterJob('heron'), { 'guitar.neckPlaneHeight': 10 }) }));
    expect(neck()).toContain('A bridge 9.0 to 10.0 mm thick suits this neck angle.');
    expect(asks(/^Thinnest bridge that suits the neck: 9\.00 mm\. How/)).toHaveLength(1);
  });

  it('is said first of all where the clearance is, which hangs on the thickness', () => {
    open(
      createBench({ job: withAll(starterJob('heron'), { 'guitar.neckPlaneHeight': 10, 'bridge.thickness': 10.2 }) }),
    );
    expect(document.querySelector('[data-of="straightedgeClearance"]')?.textContent).toBe(
      'A straightedge, strings off, would run that far below the bridge’s top at the centre. A bridge 9.0 to 10.0 mm thick suits this neck angle.',
    );
  });

  it('blames no bridge of a nylon guitar for a straightedge that runs below its top, as it usually does', () => {
    // trade.md: nylon, −5 to −1 mm is usual.
    const job = withAll(starterJob('avocet'), { 'guitar.neckPlaneHeight': 6, 'bridge.thickness': 8 });
    expect(job.strings.list.every(({ material }) => material === 'nylon')).toBe(true);
    open(createBench({ job }));
    const says = document.querySelector('[data-of="straightedgeClearance"]')?.textContent;
    expect(says).toContain('would run that far below the bridge’s top');
    expect(says).toMatch(/A bridge .* thick suits this neck angle\.$/);
    expect(says).not.toMatch(/too high/i);
  });

  it('is said beside the field of the thickness too', () => {
    const bench = createBench({ job: withAll(starterJob('heron'), { 'guitar.neckPlaneHeight': 10 }) });
    bench.enter('bridge.thickness');
    render(
      <BenchContext value={bench}>
        <Help />
      </BenchContext>,
    );
    expect(document.querySelector('.help')?.textContent).toContain(
      '. A bridge 9.0 to 10.0 mm thick suits this neck angle.',
    );
  });

  it('names of them only what is usual, or else doubtful, as a bridge', () => {
    open(createBench({ job: withAll(starterJob('heron'), { 'guitar.neckPlaneHeight': 11 }) }));
    expect(neck()).toContain('A bridge 10.0 to 10.5 mm thick suits');
    cleanup();
    // 6 mm is the least that is doubtful, 7 the least that is usual.
    open(createBench({ job: withAll(starterJob('heron'), { 'guitar.neckPlaneHeight': 6.8 }) }));
    expect(neck()).toContain('Only a bridge 6.0 to 6.8 mm thick, at the edge of what is usual, suits');
  });

  it('stands where nothing was ever built, as plain numbers', () => {
    const bench = open(
      createBench({ job: withAll(starterJob('heron'), { 'guitar.neckPlaneHeight': 5.5, 'slot.depth': 12 }) }),
    );
    expect(bench.getState().built).toBeUndefined();
    expect(neck()).toContain('No usual bridge suits this neck angle: reset the neck');
    expect(neck()).toMatch(/Thickest bridge that suits the neck5\.50 mm/);
    expect(asks(/How\?$/)).toEqual([]);
  });

  it('is of the numbers as they are, not of the last that could be built', async () => {
    const bench = open();
    bench.put('slot.depth', 12);
    bench.put('guitar.neckPlaneHeight', 5.5);
    expect(bench.getState().solved.ok).toBe(false);
    await waitFor(() => expect(neck()).toContain('No usual bridge suits this neck angle'));
    expect(neck()).toMatch(/Thickest bridge that suits the neck5\.50 mm/);
    expect(asks(/^Thickest bridge that suits the neck/)).toEqual([]);
    // The rest can still be asked: it is of the last that could be built.
    expect(asks(/^Straightedge clearance: /)).toHaveLength(1);
  });

  it('says which readings of the strung guitar are missing once they are begun', async () => {
    const bench = open(createBench({ job: unreadJob() }));
    expect(neck()).not.toContain('Still to read');
    bench.put('strung.thickness', 9.1);
    bench.put('strung.actionBass', 3.2);
    await waitFor(() =>
      expect(neck()).toContain(
        'Still to read on the strung guitar: “Old saddle, exposure”, “Action as it is, treble”, “First fret as it is, bass”, “First fret as it is, treble” and “Relief as it is”.',
      ),
    );
    bench.put('guitar.neckPlaneHeight', 'strung');
    expect(bench.getState().solved.ok).toBe(false);
    await waitFor(() => expect(neck()).toMatch(/^Still to read/));
    // The light over the old bridge is a way by itself.
    bench.put('strung.actionBass', 'not taken');
    bench.put('strung.light', 0.9);
    await waitFor(() => expect(neck()).toMatch(/suits? this neck angle/));
    expect(neck()).not.toContain('Still to read');
  });
});

describe('what is left to lower', () => {
  it('is past its limit, where it is, by a number without a sign', () => {
    open(createBench({ job: withAll(starterJob('heron'), { 'limits.exposure.from': 4 }) }));
    const row = document.querySelector('tr[data-string="E4"]');
    expect(row?.textContent).toMatch(/past by 0\.\d\dexposure$/);
    expect(document.querySelector('tr[data-string="E2"]')?.textContent).toMatch(/[^−]0\.\d\dexposure$/);
  });
});

describe('a gauge in a how', () => {
  it('is called by its mark, with the reader’s own unit beside it', () => {
    const bench = demoBench();
    const { job, design } = bench.getState().built as Built;
    const inputs = figureAt('nearestGauge')?.how(job, design, 0).inputs ?? [];
    const texts = inputs.filter(({ kind }) => kind === 'radius').map((input) => inputText(input, job.show));
    // 200 mm is 7.874 in; 1 in = 25.4 mm exactly: international yard and pound agreement, 1959.
    expect(texts).toContain('200 mm (7.87 in)');
    expect(texts).toContain('12 in');
    expect(texts.filter((text) => /^7\.87/.test(text))).toEqual([]);
  });

  it('is not what was typed or reckoned as another radius', () => {
    const show = demoBench().getState().job.show;
    const radius = { symbol: 'R', name: 'Radius', value: 400, kind: 'radius' } as const;
    expect(inputText({ ...radius, path: 'bridge.topRadius' }, show)).toBe('15.748 in');
    expect(inputText({ ...radius, figure: 'boardRadiusAtSaddle' }, show)).toBe('15.748 in');
    expect(inputText({ ...radius, figure: 'nearestGauge' }, show)).toBe('400 mm (15.75 in)');
  });
});

it('says of what was measured where a number comes from that was not typed', () => {
  const rise = () => {
    open(createBench({ job: withAll(unreadJob(), { 'guitar.rise': 'readings' }) }));
    return screen.getByText('Rise under tension').parentElement?.textContent;
  };
  expect(rise()).toContain('0.70 mm assumed: not measured');
});
