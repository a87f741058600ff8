import { describe, expect, it } from 'vitest';
import { build } from '../../geometry/build.ts';
import { setAt } from '../../geometry/fields.ts';
import type { Job } from '../../geometry/job.ts';
import { type Report, report } from '../../geometry/report.ts';
import { solved, workedExample } from '../solved.ts';
import { cases } from './figures/jobs.ts';

const reportOf = (job: Job): Report => {
  const found = build(job);
  if (!found.ok) throw new Error(found.problems.map(({ says }) => says).join('\n'));
  return report(found.job, found.design, job);
};
const withValues = (values: Readonly<Record<string, unknown>>): Job =>
  Object.entries(values).reduce<Job>((job, [path, value]) => setAt(job, path, value), workedExample());

/** Every number in it, with its keys. */
const leaves = (value: unknown, path: string): readonly (readonly [string, unknown])[] =>
  typeof value === 'object' && value !== null
    ? Object.entries(value).flatMap(([key, part]) => leaves(part, `${path}.${key}`))
    : [[path, value]];

describe('the report', () => {
  it.each(cases)('of $name is plain JSON, with nothing lost on the way', ({ job, design }) => {
    const made = report(job, design);
    expect(JSON.parse(JSON.stringify(made))).toStrictEqual(made);
    for (const [path, value] of leaves(made, '')) {
      expect(value, path).not.toBeUndefined();
      if (typeof value === 'number') expect(Number.isFinite(value), path).toBe(true);
    }
  });

  it('says where the measured numbers come from', () => {
    expect(reportOf(workedExample()).readings).toMatchObject({
      scale: 640,
      scaleFrom: 'typed',
      scaleError: null,
      neckPlaneFrom: 'typed',
      neckPlaneAtPitch: { strung: null, straightedge: null },
      rise: 0.5,
      riseFrom: 'typed',
    });
    // Three frets of a scale of 650 exactly, the strung guitar's straightedge at 9.1 + 0.4.
    const { readings } = reportOf(
      withValues({
        'guitar.scale': 'frets',
        'guitar.measured': [5, 12, 17].map((fret) => ({
          id: `f${fret}`,
          fret,
          distance: 650 * (1 - 2 ** (-fret / 12)),
        })),
        'guitar.neckPlaneHeight': 10.1,
        'guitar.rise': 'readings',
        'strung.thickness': 9.1,
        'strung.light': 0.4,
      }),
    );
    expect(readings.scale).toBeCloseTo(650, 9);
    expect(readings.scaleError).toBeCloseTo(0, 9);
    expect(readings.neckPlaneAtPitch).toEqual({ strung: null, straightedge: 9.5 });
    expect(readings.rise).toBeCloseTo(0.6, 9);
    expect(readings).toMatchObject({ scaleFrom: 'frets', riseFrom: 'readings' });
  });

  it('tells the neck from the bridge', () => {
    // 10 mm under the straightedge, usual light 0 to 1 [practice]: a bridge 9 to 10 mm thick.
    const { neck } = reportOf(workedExample());
    expect(neck.suits).toEqual({ from: 9, to: 10 });
    expect(neck.thickness).toBe(9.3);
    expect(neck.says).toBe('bridge');
    const low = reportOf(withValues({ 'guitar.neckPlaneHeight': 5.5, 'bridge.thickness': 4.8, 'slot.depth': 3.5 }));
    expect(low.neck).toMatchObject({ thickness: null, says: 'reset' });
  });

  it('puts the slot in its best place, and names the strings it cannot reach', () => {
    const typed = withValues({ 'slot.line': 'typed', 'slot.fromNut': 641, 'slot.slant': 0 });
    const { slot, strings, saddleLine } = reportOf(typed);
    const best = reportOf(setAt(typed, 'slot.line', 'least'));
    expect(saddleLine).toMatchObject({ fromNut: 641, slant: 0 });
    expect(slot.drawn).toMatchObject({ fromNut: 641, slant: 0 });
    expect(slot.fromNut).toBeCloseTo(best.saddleLine.fromNut, 12);
    expect(slot.slant).toBeCloseTo(best.saddleLine.slant, 12);
    expect(slot.thicknessNeeded).toBeLessThan(slot.drawn.thicknessNeeded);
    // A saddle 3.15 thick reaches 1.175 to each side of 641 mm: no break point behind 642.175, which every string but G3 and E4 wants or passes.
    expect(slot.notReached).toEqual(['E2', 'A2', 'D3', 'G3', 'B3']);
    expect(strings.map(({ missed }) => Number(missed.toFixed(3)))).toEqual([1.825, 1.025, 0.425, 0.025, 0.425, 0]);
    for (const { breakPoint } of strings.slice(0, 5)) expect(breakPoint).toBeCloseTo(3.15 - 0.4, 9);
    expect(best.slot.notReached).toEqual([]);
  });

  it('gives the saddle, its blank and the strings’ marks', () => {
    const { saddle, strings } = reportOf(
      withValues({ 'saddle.under': 0.8, 'slot.line': 'typed', 'slot.slant': -0.03 }),
    );
    expect(saddle.thickness).toBeCloseTo(3.15, 12);
    expect(saddle.length).toBeCloseTo(75.95, 12);
    expect(saddle.blank.length).toBe(saddle.length);
    expect(saddle.blank.thickness).toBe(saddle.thickness);
    expect(saddle.blank.height).toBeCloseTo(saddle.heights.highest + 1, 12);
    const tallest = Math.max(...strings.map((s) => s.heightAboveFretPlane + s.crownMiss - saddle.bottomHeight));
    expect(saddle.heights.highest).toBeGreaterThanOrEqual(tallest);
    expect(saddle.heights.highest).toBeLessThan(tallest + 0.1);
    const marks = saddle.strings.map(({ fromBassEnd }) => fromBassEnd);
    const stretch = Math.hypot(1, 0.03);
    expect(marks[0]).toBeCloseTo(75.95 / 2 - 27.75 * stretch, 9);
    expect(marks[5]).toBeCloseTo(75.95 / 2 + 27.75 * stretch, 9);
    expect(saddle.crown).toEqual({ by: 'best', radius: reportOf(workedExample()).bestSaddleRadius });
    expect(reportOf(setAt(workedExample(), 'saddle.crown', 'heights')).saddle.crown.radius).toBeNull();
  });

  it('says how far each string’s crown misses what is wanted', () => {
    const byGauge = reportOf(setAt(workedExample(), 'saddle.crown', 'gauge'));
    expect(byGauge.saddle.crown.radius).toBeCloseTo(15 * 25.4, 9);
    const fit = byGauge.gauges.find(({ radius }) => radius === byGauge.saddle.crown.radius);
    expect(byGauge.strings.map(({ crownMiss }) => crownMiss)).toEqual(fit?.misses);
    const byHeights = reportOf(setAt(workedExample(), 'saddle.crown', 'heights'));
    expect(byHeights.strings.map(({ crownMiss }) => crownMiss)).toEqual([0, 0, 0, 0, 0, 0]);
  });

  // The load check of the trade's notes: the worked example on a rectangle 32 × 152 with its front edge at x = 634, the dome left out.
  it('sums the load on the glue line, with the pins’ help and without', () => {
    const job = withValues({
      'bridge.footprint': 'rectangle',
      'bridge.depth': 32,
      'guitar.topRadius': 'flat',
      'bridge.frontToSaddle': solved(workedExample()).saddleLine.x - 634,
    });
    const { load, totals } = reportOf(job);
    expect(load.area).toBeCloseTo(32 * 152, 6);
    const { pins, wornPlate, tied } = load.cases;
    expect(pins.down.toFixed(2)).toBe('708.07');
    expect(pins.moment.toFixed(1)).toBe('8113.7');
    expect(pins.rearStress.toFixed(3)).toBe('0.167');
    expect(pins.meanShear.toFixed(3)).toBe('0.145');
    expect(wornPlate.down.toFixed(2)).toBe('4.13');
    expect(wornPlate.moment.toFixed(1)).toBe('9337.6');
    expect(wornPlate.rearStress.toFixed(3)).toBe('0.359');
    expect(tied).toEqual(wornPlate);
    expect(load.strings.reduce((sum, { moment }) => sum + moment.pins, 0)).toBeCloseTo(pins.moment, 6);
    expect(load.tension).toBe(totals.tension);
    expect(load.says).toContain('estimate');
  });

  it('says how far each string can still come down, and what stops it', () => {
    const [bass] = reportOf(workedExample()).strings;
    // Lowered at the saddle by 644/320 of it, the string still leaves the crown at the usual least of 15° [practice]: 9 mm behind it, pivoting at the nut.
    const d = (Number(bass?.lifeLeft) * 644) / 320;
    const slope = Math.tan((Number(bass?.slopeAngle) * Math.PI) / 180);
    const angle = Math.atan(slope - d / 644) + Math.atan((4.6477 - d) / 9);
    expect((angle * 180) / Math.PI).toBeCloseTo(15, 3);
    expect(bass?.lifeLimit).toBe('breakAngle');
    // With a flatter angle allowed, exposure is met first: 4.6477 − 2 at the saddle, 320/644 of it at fret 12.
    const [flat] = reportOf(withValues({ 'limits.breakAngle': { doubtfulFrom: 5, from: 8 } })).strings;
    expect(flat?.lifeLimit).toBe('exposure');
    expect(flat?.lifeLeft).toBeCloseTo(((4.6477 - 2) * 320) / 644, 4);
  });

  it('tells what each reading of the strung guitar asks for', () => {
    const job = withValues({
      'setup.log': [
        { id: 'p1', note: '', readings: [{ id: 'E2', action: 2.9, cents: 'not taken' }] },
        {
          id: 'p2',
          note: '',
          readings: [
            { id: 'E2', action: 2.9, cents: 'not taken' },
            { id: 'E4', action: 2.3, cents: 'not taken' },
          ],
        },
      ],
    });
    const [first, second] = reportOf(job).setUp;
    expect(first).toEqual({ ok: false, id: 'p1', missing: ['E4'] });
    if (second?.ok !== true) throw new Error('the second pass is complete');
    expect(second.advice.strings[0]?.takeOff).toBeCloseTo((0.4 * 644) / 320, 9);
  });

  it('lists what every check finds, and what is advised', () => {
    const made = reportOf(workedExample());
    const at = (check: string) => made.findings.find((finding) => finding.check === check);
    // The worked example's two bass strings stand out more than is usual: doubtful, as it should be.
    const exposure = at('exposure');
    expect(exposure?.level).toBe('doubtful');
    expect(exposure?.says).toContain('4.65');
    expect(exposure?.range).toContain('4.5');
    expect(at('straightedge')).toMatchObject({ level: 'right', advice: [] });
    expect(exposure?.advice.length).toBeGreaterThan(0);
    for (const { says, changes } of exposure?.advice ?? []) {
      expect(says).not.toBe('');
      const followed = changes.reduce<Job>((job, { path, value }) => setAt(job, path, value), workedExample());
      expect(reportOf(followed).findings.find(({ check }) => check === 'exposure')?.level).toBe('right');
    }
  });
});
