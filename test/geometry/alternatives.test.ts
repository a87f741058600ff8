import { describe, expect, it } from 'vitest';
import {
  alternativeAt,
  asPresent,
  differences,
  freeLetters,
  isChosen,
  jobOf,
  withAlternative,
  withoutAlternative,
} from '../../geometry/alternatives.ts';
import { build } from '../../geometry/build.ts';
import { fieldGroups, setAt } from '../../geometry/fields.ts';
import type { Job } from '../../geometry/job.ts';
import { readJob, writeJob } from '../../geometry/job-file.ts';
import { jobFile, solved, workedExampleFile } from '../solved.ts';

const worked = jobFile(workedExampleFile);
const set = (job: Job, values: Readonly<Record<string, unknown>>): Job =>
  Object.entries(values).reduce((so, [path, value]) => setAt(so, path, value), job);

const flatter = set(worked, { 'bridge.topRadius': 406.4, 'bridge.thickness': 8.8 });
const two = withAlternative(withAlternative(worked, 'tighter', flatter), 'tied', set(worked, { 'pins.hold': 'tied' }));
const at = (job: Job, letter: string) => {
  const found = alternativeAt(job, letter);
  if (found === undefined) throw new Error(`no ${letter}`);
  return jobOf(job, found);
};

describe('an alternative', () => {
  it('is the design it was made from, whatever becomes of the present one', () => {
    const moved = set(withAlternative(worked, 'as it was'), { 'bridge.thickness': 7.5, 'slot.depth': 4 });
    expect(writeJob({ ...at(moved, 'A'), alternatives: worked.alternatives })).toBe(writeJob(worked));
  });

  it('goes by the first free letter, and the list by the letters', () => {
    expect(two.alternatives.list.map(({ id, name }) => [id, name])).toEqual([
      ['A', 'tighter'],
      ['B', 'tied'],
    ]);
    const again = withAlternative(withoutAlternative(two, 'A'), 'again');
    expect(again.alternatives.list.map(({ id }) => id)).toEqual(['A', 'B']);
    expect(alternativeAt(again, 'A')?.name).toBe('again');
    expect(freeLetters(again)).toEqual(['C', 'D', 'E', 'F']);
  });

  it('is one of six at most', () => {
    const full = [1, 2, 3, 4, 5, 6].reduce((so, n) => withAlternative(so, `${n}`), worked);
    expect(() => withAlternative(full, 'seventh')).toThrow('at most 6 alternatives; remove one first');
    expect(readJob(writeJob(full)).ok).toBe(true);
    const twice = { ...full.alternatives, list: [...full.alternatives.list.slice(1), full.alternatives.list[1]] };
    const read = readJob(JSON.stringify({ ...full, alternatives: twice }));
    expect(!read.ok && read.problems[0]?.says).toContain('“B”, as that of an earlier item of the list');
  });

  it('is kept in the job’s file', () => {
    const read = readJob(writeJob(two));
    expect(read).toEqual({ ok: true, job: two, unknown: [] });
    const bad = readJob(writeJob(setAt(two, 'alternatives.list.A.bridge.thickness', 99)));
    expect(!bad.ok && bad.problems[0]).toMatchObject({
      path: 'alternatives.list.A.bridge.thickness',
      says: expect.stringContaining('99 mm; it may be from 2 to 30 mm'),
    });
  });

  it('in the present one’s place leaves that one in its own, and twice done changes nothing', () => {
    const swapped = asPresent(two, 'A');
    expect(swapped.alternatives.present).toBe('tighter');
    expect(swapped.bridge).toEqual(flatter.bridge);
    expect(alternativeAt(swapped, 'A')).toMatchObject({ name: 'first design', bridge: worked.bridge });
    expect(alternativeAt(swapped, 'B')).toBe(alternativeAt(two, 'B'));
    expect(writeJob(asPresent(swapped, 'A'))).toBe(writeJob(two));
    expect(() => asPresent(two, 'F')).toThrow('the letter F');
  });
});

describe('what is measured', () => {
  it('is shared: a change of it moves every design by as much', () => {
    // h down by 0.4 takes each exposure down by 0.4 less nothing: z_b rises by 0.4 (trade: z_b = −h + rise + T_c − drop + tilt·y).
    const lower = setAt(two, 'guitar.neckPlaneHeight', (two.guitar.neckPlaneHeight as number) - 0.4);
    for (const letter of ['A', 'B']) {
      const [before, after] = [solved(at(two, letter)), solved(at(lower, letter))];
      before.strings.forEach(({ exposure }, k) => {
        expect(after.strings[k]?.exposure).toBeCloseTo(exposure - 0.4, 9);
      });
    }
  });

  it('shows in exposures as the formula has it: thickness and top radius are the alternative’s own', () => {
    // e = z_s − z_b, z_b = −h + rise + T_c − (R − √(R² − y²)): h 10, rise 0.5, T_c 8.8, R 16 in; heights and places from trade.md’s worked example.
    const heights = [3.6892, 4.1166, 4.2178, 3.9931, 3.446, 2.5638];
    const places = [-27.75, -16.65, -5.55, 5.55, 16.65, 27.75];
    solved(at(two, 'A')).strings.forEach(({ exposure }, k) => {
      const y = places[k] ?? 0;
      const deck = -10 + 0.5 + 8.8 - (406.4 - Math.sqrt(406.4 ** 2 - y * y));
      expect(exposure).toBeCloseTo((heights[k] ?? 0) - deck, 3);
    });
  });

  it('is all but bridge, slot, saddle, pins and stock; where a slot lies that is cut already is measured too', () => {
    const groups = fieldGroups
      .filter(({ id }) => !['job', 'sections', 'setup', 'limits'].includes(id))
      .map(({ id, fields }) => [id, new Set(fields.map(({ path }) => isChosen(worked, path)))] as const);
    expect(groups).toEqual([
      ['strung', new Set([false])],
      ['measured', new Set([false])],
      ['scar', new Set([false])],
      ['action', new Set([false])],
      ['bridge', new Set([false, true])],
      ['slot', new Set([true])],
      ['saddle', new Set([true])],
      ['pins', new Set([true])],
      ['plate', new Set([false])],
      ['stock', new Set([true])],
      ['strings', new Set([false])],
    ]);
    expect(['slot.fromNut', 'slot.slant', 'bridge.thickness'].map((path) => isChosen(worked, path))).toEqual([
      false,
      false,
      true,
    ]);
  });

  it('is the bridge and its slot too where a saddle alone is made', () => {
    const saddleOnly = set(two, { work: 'saddle', 'bridge.thickness': 8, 'saddle.crown': 'gauge' });
    expect(isChosen(saddleOnly, 'bridge.thickness')).toBe(false);
    expect(isChosen(saddleOnly, 'saddle.crown')).toBe(true);
    expect(at(saddleOnly, 'A').bridge.thickness).toBe(8);
    expect(at(saddleOnly, 'A').saddle.crown).toBe('best');
    expect(differences(saddleOnly).map(({ field }) => field.path)).toEqual(['saddle.crown']);
    const swapped = asPresent(saddleOnly, 'A');
    expect([swapped.bridge.thickness, swapped.saddle.crown]).toEqual([8, 'best']);
    expect(alternativeAt(swapped, 'A')?.bridge).toEqual(flatter.bridge);
    expect(writeJob(asPresent(swapped, 'A'))).toBe(writeJob(saddleOnly));
  });

  it('leaves a design that cannot be built beside one that can', () => {
    const odd = withAlternative(worked, 'odd', set(worked, { 'slot.length': 199, 'bridge.length': 100 }));
    expect([build(odd).ok, build(at(odd, 'A')).ok]).toEqual([true, false]);
  });
});

describe('what differs', () => {
  const rows = (job: Job) => differences(job).map(({ field, point, values }) => [field.label, point, ...values]);

  it('is only that, the present design first, and nothing where a field does not count', () => {
    expect(differences(worked)).toEqual([]);
    expect(differences(withAlternative(worked, 'same'))).toEqual([]);
    expect(rows(two)).toEqual([
      ['Thickness, centre', undefined, 9.3, 8.8, 9.3],
      ['Bridge top radius', undefined, 508, 406.4, 508],
      ['Strings held by', undefined, 'pins', 'pins', 'tied'],
      ['Tie hole below the deck', undefined, undefined, undefined, 3],
      ['Pin taper', undefined, 0.05, 0.05, undefined],
      ['Pin, diameter under the head', undefined, 5.3, 5.3, undefined],
      ['Ramp before each pin', undefined, 'none', 'none', undefined],
      ['String leaves the bridge', undefined, 9, 9, undefined],
    ]);
    expect(differences(two)[0]?.group).toBe('The bridge');
  });

  it('tells a free outline point by point', () => {
    const points = [
      { id: 'p', across: 70, along: 0, turn: 'corner' },
      { id: 'q', across: 70, along: 26, turn: 'smooth' },
    ];
    const free = set(worked, { 'bridge.footprint': 'free', 'bridge.points': points });
    const wider = withAlternative(free, 'wider', setAt(free, 'bridge.points.q.across', 74));
    expect(rows(wider)).toEqual([['Across', 2, 70, 74]]);
  });
});
