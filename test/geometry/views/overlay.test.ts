import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { jobOf } from '../../../geometry/alternatives.ts';
import { build } from '../../../geometry/build.ts';
import type { Mark } from '../../../geometry/drawing.ts';
import { setAt } from '../../../geometry/fields.ts';
import type { Job } from '../../../geometry/job.ts';
import { layOut, sayWith } from '../../../geometry/layout.ts';
import { bounds } from '../../../geometry/shape/index.ts';
import { distanceTo } from '../../../geometry/shape/nearest.ts';
import { threeViews, views } from '../../../geometry/views/index.ts';
import { nothingOver } from '../../../geometry/views/laid-over.ts';
import { overlay } from '../../../geometry/views/overlay.ts';
import { randomJob } from '../../random-job.ts';
import { built, workedExample } from '../../solved.ts';

const present = built(workedExample());
const other = (letter: 'A' | 'B', values: Readonly<Record<string, unknown>>, from: Job = workedExample()) => ({
  letter,
  ...built(Object.entries(values).reduce<Job>((job, [path, value]) => setAt(job, path, value), from)),
});
const ids = (marks: readonly Mark[]) => marks.map(({ id }) => id);
const pathOf = (marks: readonly Mark[], id: string) => {
  const mark = marks.find((one) => one.id === id);
  if (mark?.kind !== 'path') throw new Error(`no path ${id}`);
  return mark.path;
};

describe('alternatives laid over the present design', () => {
  it('draws nothing of an alternative that is the present design again', () => {
    expect(overlay(present, [])).toBe(nothingOver);
    expect(overlay(present, [other('A', {})])).toEqual(nothingOver);
  });

  it('draws of each only the outlines that differ, thin and unfilled, each with its letter', () => {
    const over = overlay(present, [other('A', { 'bridge.length': 160 }), other('B', { 'bridge.topRadius': 355.6 })]);
    expect(ids(over.above)).toEqual(['alternative.A.bridge.outline.1', 'alternative.A.bridge.outline.letter']);
    expect(ids(over.tail)).toEqual([
      'alternative.A.bridge.profile.1',
      'alternative.A.bridge.profile.letter',
      'alternative.B.bridge.profile.1',
      'alternative.B.bridge.profile.letter',
    ]);
    // On the centre line a tighter top is as high as before: its section there is no other.
    expect(over.middle).toEqual([]);
    for (const mark of [...over.above, ...over.tail]) {
      expect(mark.alternative).toMatch(/^[AB]$/);
      if (mark.kind === 'path') expect(mark).toMatchObject({ line: 'thin', purpose: 'show' });
      expect(mark).not.toHaveProperty('matter');
      expect(mark).not.toHaveProperty('hatch');
    }
    const { minX, maxX } = bounds(pathOf(over.above, 'alternative.A.bridge.outline.1'));
    expect([minX, maxX]).toEqual([-80, 80]);
    // The underside is the present one's, and is not drawn again: what is left ends at the tips' tops.
    const whole = bounds(pathOf(views.tail(present.job, present.design).marks, 'bridge.profile'));
    expect(bounds(pathOf(over.tail, 'alternative.B.bridge.profile.1')).maxY).toBeLessThan(whole.maxY - 2);
  });

  it('sets each letter on its own line, apart from the present one, and apart from the other letters', () => {
    const radii = [other('A', { 'bridge.topRadius': 355.6 }), other('B', { 'bridge.topRadius': 406.4 })];
    const { tail } = overlay(present, radii);
    const now = pathOf(views.tail(present.job, present.design).marks, 'bridge.profile');
    const places = (['A', 'B'] as const).map((letter) => {
      const mark = tail.find(({ id }) => id === `alternative.${letter}.bridge.profile.letter`);
      if (mark?.kind !== 'note') throw new Error('no letter');
      expect(distanceTo(pathOf(tail, `alternative.${letter}.bridge.profile.1`), mark.at)).toBeLessThan(1e-9);
      // The top drops at ±42, the shoulders, by R − √(R² − 42²): 2.49 mm at 14 in against 1.74 at 20 in.
      expect(distanceTo(now, mark.at)).toBeGreaterThan(0.2);
      return mark.at.x;
    });
    expect(Math.abs((places[0] ?? 0) - (places[1] ?? 0))).toBeGreaterThan(10);
  });

  it('is stretched with the heights, mirrored for the left hand, and laid out as any mark', () => {
    const over = overlay(present, [other('A', { 'bridge.thickness': 8 })]);
    const say = sayWith(present.job.show);
    const { marks } = threeViews(present.job, present.design, 3.5, say, 3, over);
    const drawn = bounds(pathOf(marks, 'tail.alternative.A.bridge.profile.1'));
    const plain = bounds(pathOf(over.tail, 'alternative.A.bridge.profile.1'));
    expect(drawn.maxY - drawn.minY).toBeCloseTo(3 * (plain.maxY - plain.minY), 6);
    const laid = layOut(marks, { em: 3.5, say });
    expect(laid.find(({ id }) => id === 'middle.alternative.A.bridge.section.1')).toMatchObject({ alternative: 'A' });
    expect(laid.find(({ id }) => id === 'middle.alternative.A.bridge.section.letter')).toMatchObject({
      text: 'A',
      alternative: 'A',
    });

    const left = built(setAt(workedExample(), 'hand', 'left'));
    const tilted = { 'bridge.tipTreble': 2.6 };
    const [right, mirrored] = [
      overlay(present, [other('A', tilted)]),
      overlay(left, [other('A', tilted, setAt(workedExample(), 'hand', 'left'))]),
    ];
    const [r, l] = [right, mirrored].map(({ tail }) => pathOf(tail, 'alternative.A.bridge.profile.1'));
    if (r === undefined || l === undefined) throw new Error('no profile');
    const xs = (path: typeof r) =>
      path.segments.flatMap((s) => (s.kind === 'line' ? [s.from.x] : [])).sort((a, b) => a - b);
    expect(xs(l)).toEqual(
      xs(r)
        .map((x) => -x)
        .sort((a, b) => a - b),
    );
  });

  it('of any job has each letter on a line of its own, and every number finite', () => {
    let seen = 0;
    fc.assert(
      fc.property(randomJob(), (job) => {
        const now = build(job);
        if (!now.ok) return;
        const others = job.alternatives.list.flatMap((alternative) => {
          const solved = build(jobOf(job, alternative));
          return solved.ok ? [{ ...solved, letter: alternative.id }] : [];
        });
        const all = Object.values(overlay(now, others)).flat();
        for (const mark of all) {
          if (mark.kind === 'path') {
            expect(Object.values(bounds(mark.path)).every(Number.isFinite)).toBe(true);
            continue;
          }
          if (mark.kind !== 'note') throw new Error('no dimension is laid over');
          seen += 1;
          const own = all.flatMap((one) =>
            one.kind === 'path' && one.id.startsWith(mark.id.replace(/letter$/, '')) ? [one.path] : [],
          );
          expect(Math.min(...own.map((path) => distanceTo(path, mark.at)))).toBeLessThan(1e-6);
        }
      }),
      { numRuns: 60, seed: 20264 },
    );
    expect(seen).toBeGreaterThan(40);
  });
});
