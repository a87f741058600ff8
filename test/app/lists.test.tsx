// @vitest-environment jsdom
import './quick.ts';
import { cleanup, render, screen, within } from '@testing-library/react';
import { userEvent } from '@testing-library/user-event';
import { afterEach, describe, expect, it, vi } from 'vitest';
import { footprints } from '../../geometry/bridge/footprints/index.ts';
import { getAt, setAt } from '../../geometry/fields.ts';
import type { Job } from '../../geometry/job.ts';
import { area, bounds, pointOn } from '../../geometry/shape/index.ts';
import { distanceTo } from '../../geometry/shape/nearest.ts';
import { Help } from '../../src/app/numbers/Help.tsx';
import { Numbers } from '../../src/app/numbers/Numbers.tsx';
import { Strings } from '../../src/app/numbers/Strings.tsx';
import { createBench } from '../../src/app/store.ts';
import { BenchContext } from '../../src/app/use-bench.ts';
import { starterJob } from './bench.ts';
import { findLabelled, labelled } from './labelled.ts';

afterEach(cleanup);
vi.setConfig({ testTimeout: 30_000 });

const open = (job = starterJob('heron')) => {
  const bench = createBench({ job });
  render(
    <BenchContext value={bench}>
      <Help />
      <Numbers />
      <Strings />
    </BenchContext>,
  );
  return { bench, job: () => bench.getState().job, user: userEvent.setup() };
};
const list = (name: string) => within(screen.getByRole('region', { name: `${name}, table` }));
const unfold = (id: string) => document.querySelector<HTMLElement>(`[data-fold="${id}"] summary`) as HTMLElement;
const steps = (bench: ReturnType<typeof open>['bench']) => bench.getState().past.map(({ name }) => name);

describe('what is there already', () => {
  it('is typed row by row, joins the job only with all its numbers, and is taken back in steps of its own', async () => {
    const { user, bench, job } = open();
    await user.click(unfold('scar'));
    const holes = list('Holes');
    await user.selectOptions(holes.getByLabelText('What it is, hole to add'), 'screw');
    await user.type(holes.getByLabelText('Across, hole to add'), '-20');
    await user.click(holes.getByRole('button', { name: 'Add' }));
    expect(job().top.holes).toEqual([]);
    expect(screen.getByRole('alert').textContent).toContain('From the nut: ');
    await user.type(holes.getByLabelText('From the nut, hole to add'), '655.5');
    await user.type(holes.getByLabelText('Diameter, hole to add'), '4{Enter}');
    expect(job().top.holes).toEqual([
      { id: 'hole-1', what: 'screw', across: -20, fromNut: 655.5, diameter: 4, plan: 'keep' },
    ]);
    await user.selectOptions(holes.getByLabelText('Plan, hole 1'), 'plug');
    await user.click(holes.getByRole('button', { name: 'Remove hole 1' }));
    expect(job().top.holes).toEqual([]);
    expect(steps(bench)).toEqual(['a hole added', 'Plan, hole 1', 'hole 1 removed']);
    bench.undo();
    expect(job().top.holes[0]?.plan).toBe('plug');
  });

  it('holds readings of the top and braces, and says how many when it is closed', async () => {
    const { user, job } = open();
    await user.click(unfold('scar'));
    const rises = list('Belly or dip of the top');
    await user.type(rises.getByLabelText('Across, reading to add'), '0');
    await user.type(rises.getByLabelText('From the nut, reading to add'), '690');
    await user.type(rises.getByLabelText('Above the dome, reading to add'), '0.9{Enter}');
    const braces = list('Braces');
    await user.type(braces.getByLabelText('Brace, brace to add'), 'cross');
    for (const [label, text] of [
      ['Across, one end', '-90'],
      ['From the nut, one end', '600'],
      ['Across, other end', '80'],
      ['From the nut, other end', '720{Enter}'],
    ] as const)
      await user.type(braces.getByLabelText(`${label}, brace to add`), text);
    expect(job().top.rises).toMatchObject([{ across: 0, fromNut: 690, height: 0.9 }]);
    expect(job().top.braces).toMatchObject([{ name: 'cross', acrossTo: 80, width: 8 }]);
    expect(braces.getByRole('button', { name: 'Remove cross' })).toBeTruthy();
    await user.click(unfold('scar'));
    expect(unfold('scar').textContent).toContain('1 reading of the top, 1 brace');
  });
});

/** How far the one outline strays from the other at most, mm. */
const stray = (a: Job['bridge'], b: Job['bridge']): number => {
  const [first, second] = [a, b].map((bridge) => footprints[bridge.footprint].outline(bridge));
  if (first === undefined || second === undefined) return Number.NaN;
  const places = first.segments.flatMap((s) => Array.from({ length: 9 }, (_, k) => pointOn(s, k / 8)));
  return Math.max(...places.map((p) => distanceTo(second, p)));
};

describe('a free outline', () => {
  it.each(['belly', 'bellyBefore', 'rectangle', 'pyramid', 'waisted'] as const)(
    'begins as the %s outline that was there, in one step',
    (style) => {
      const begun = setAt(setAt(starterJob('heron'), 'bridge.footprint', style), 'bridge.ends', 'round');
      const bench = createBench({ job: begun });
      const wasBuilt = bench.getState().solved.ok;
      const front = bench.getState().built?.design.bridgeFront;
      bench.put('bridge.footprint', 'free');
      const { job, solved, past, built } = bench.getState();
      expect(job.bridge.points.length).toBeGreaterThan(1);
      expect(job.bridge.points.length).toBeLessThanOrEqual(40);
      expect(solved.ok).toBe(wasBuilt);
      expect(stray(begun.bridge, job.bridge)).toBeLessThan(0.1);
      expect(stray(job.bridge, begun.bridge)).toBeLessThan(0.1);
      if (wasBuilt) expect(built?.design.bridgeFront).toBeCloseTo(front ?? Number.NaN, 1);
      expect(past).toHaveLength(1);
      bench.undo();
      expect(bench.getState().job.bridge).toEqual(begun.bridge);
    },
  );

  it('keeps its shape when each side gets points of its own, and when the treble half is mirrored again', () => {
    const bench = createBench({ job: starterJob('heron') });
    bench.put('bridge.footprint', 'free');
    const { bridge } = bench.getState().job;
    bench.put('bridge.mirrored', 'no');
    const whole = bench.getState().job.bridge;
    expect(whole.points.length).toBeGreaterThan(bridge.points.length);
    expect(new Set(whole.points.map(({ id }) => id)).size).toBe(whole.points.length);
    expect(stray(bridge, whole)).toBeLessThan(1e-6);
    bench.put('bridge.mirrored', 'yes');
    expect(bench.getState().job.bridge.points).toEqual(bridge.points);
  });

  it('takes a point where it belongs, and puts it there whichever order the points stand in', () => {
    const begun = setAt(starterJob('heron'), 'bridge.footprint', 'rectangle');
    const bench = createBench({ job: begun });
    bench.put('bridge.footprint', 'free');
    const { length, depth } = begun.bridge;
    bench.addItem('bridge.points', { across: length / 2 + 6, along: depth / 2, turn: 'corner' }, 'a point added');
    const { bridge } = bench.getState().job;
    expect(bridge.points.map(({ across }) => across)).toEqual([length / 2, length / 2 + 6, length / 2]);
    const outline = footprints.free.outline(bridge);
    // A rectangle with a triangle 6 mm high on each end.
    expect(Math.abs(area(outline))).toBeCloseTo(length * depth + 6 * depth, 6);
    expect(bounds(outline).maxX).toBeCloseTo(length / 2 + 6, 9);
  });
});

describe('strings whose places are typed', () => {
  it('begin where they are, so that nothing moves, in one step, with columns of their own', async () => {
    const { user, bench } = open(starterJob('kestrel'));
    expect(findLabelled('Place at the saddle, E2')).toBeUndefined();
    const before = bench.getState().built?.design.strings ?? [];
    await user.selectOptions(labelled('Spacing'), 'typed');
    const after = bench.getState().built?.design.strings ?? [];
    after.forEach((string, k) => {
      expect(string.acrossAtNut).toBeCloseTo(before[k]?.acrossAtNut ?? Number.NaN, 9);
      expect(string.acrossAtSaddle).toBeCloseTo(before[k]?.acrossAtSaddle ?? Number.NaN, 9);
    });
    expect(before.length).toBeGreaterThan(0);
    expect(labelled('Place at the saddle, E2')).toBeTruthy();
    // What the places say themselves is no longer asked for.
    expect(findLabelled('String spread at the saddle')).toBeUndefined();
    expect(steps(bench)).toEqual(['Spacing']);
    bench.undo();
    expect(getAt(bench.getState().job, 'strings.spacing')).toBe('gaps');
  });
});

describe('a set of strings', () => {
  it('is put in as one step, and taken back', async () => {
    const { user, bench, job } = open();
    const before = job().strings;
    await user.selectOptions(labelled('Set'), 'twelve');
    await user.click(screen.getByRole('button', { name: 'Put in' }));
    expect(job().strings.list).toHaveLength(12);
    expect(job().strings.courses).toBe('pairs');
    expect(labelled('Within a pair')).toBeTruthy();
    expect(steps(bench)).toEqual(['set: twelve steel strings in pairs']);
    bench.undo();
    expect(job().strings).toEqual(before);
  });
});

describe('a word that stands for another number of the job', () => {
  it('gives that number when it is taken out', async () => {
    const { user, bench, job } = open();
    const { tipThickness } = job().bridge;
    await user.click(screen.getByRole('button', { name: 'Tip thickness, treble: same' }));
    expect(job().bridge.tipTreble).toBe(tipThickness);
    // The scoop that runs out level is the one that “level” draws, rounded up to a millimetre.
    await user.click(screen.getByRole('button', { name: 'Scoop radius: level' }));
    expect(job().bridge.scoop).toBeGreaterThan(50);
    expect(bench.getState().solved.ok).toBe(true);
  });
});

describe('the help', () => {
  it('shows a sketch of where the number in focus is measured, which is not read out; none where there is nothing to measure', async () => {
    const { user } = open();
    expect(document.querySelector('.sketch')).toBeNull();
    await user.click(labelled('Depth at the tips'));
    const sketch = document.querySelector('.sketch');
    expect(sketch?.getAttribute('aria-hidden')).toBe('true');
    expect(sketch?.querySelectorAll('.lit').length).toBeGreaterThan(0);
    await user.click(labelled('Guitar for'));
    expect(document.querySelector('.sketch')).toBeNull();
  });
});
