import { describe, expect, it } from 'vitest';
import { getAt, setAt } from '../../geometry/fields.ts';
import type { Job } from '../../geometry/job.ts';
import { whatIf } from '../../geometry/what-if.ts';
import { solved, workedExample } from '../solved.ts';

const job = workedExample();
const { strings } = solved(job);
const moved = (path: string, change?: number, of: Job = job) => {
  const found = whatIf(of, path, change);
  if (found === undefined) throw new Error(`${path} cannot be solved`);
  return found;
};

const fret = (n: number) => 640 * (1 - 2 ** (-n / 12));
const deg = (radians: number) => (radians * 180) / Math.PI;

describe('what if', () => {
  it('a thicker bridge takes as much off every exposure', () => {
    const { step, strings: by } = moved('bridge.thickness');
    expect(step).toBe(0.1);
    expect(by.map(({ id }) => id)).toEqual(strings.map(({ id }) => id));
    for (const { exposure } of by) expect(exposure).toBeCloseTo(-0.1, 9);
  });

  // With its setback as typed, a string is the straight line through fret 1 and fret 12, carried on to its break point.
  it('action at fret 12 is carried on to the saddle along the straight string', () => {
    const { strings: by } = moved('action.bass');
    by.forEach(({ exposure }, k) => {
      const s = strings[k];
      const share = 1 - k / (by.length - 1);
      const lever = ((s?.breakX ?? 0) - fret(1)) / (fret(12) - fret(1));
      expect(exposure).toBeCloseTo(0.1 * share * lever, 9);
    });
  });

  it('first-fret clearance works the other way, by the same lever', () => {
    const [bass] = moved('action.firstFretBass').strings;
    const lever = 1 - ((strings[0]?.breakX ?? 0) - fret(1)) / (fret(12) - fret(1));
    expect(bass?.exposure).toBeCloseTo(0.1 * lever, 9);
  });

  it('tilt raises the deck by as much as a string lies across', () => {
    const { step, strings: by } = moved('bridge.tilt');
    by.forEach(({ exposure }, k) => {
      expect(exposure).toBeCloseTo(-step * (strings[k]?.acrossAtSaddle ?? 0), 9);
    });
  });

  // d atan(u)/du = 1/(1 + u²): with e over l behind the crown, a mm of thickness takes 1/l off u. Over a small step the difference is the derivative.
  it('the break angle follows its derivative', () => {
    const { strings: by } = moved('bridge.thickness', 1e-4);
    by.forEach(({ breakAngle }, k) => {
      const u = (strings[k]?.exposure ?? 0) / 9;
      expect(breakAngle / 1e-4).toBeCloseTo(-deg(1 / 9 / (1 + u ** 2)), 6);
    });
  });

  it('what a string does not meet leaves it where it is', () => {
    for (const { exposure, breakAngle } of moved('bridge.tipThickness').strings) {
      expect(exposure).toBe(0);
      expect(breakAngle).toBe(0);
    }
    const [bass, ...others] = moved('strings.list.E2.setback').strings;
    expect(Math.abs(bass?.exposure ?? 0)).toBeGreaterThan(1e-4);
    for (const { exposure } of others) expect(exposure).toBeCloseTo(0, 9);
  });

  it('takes the step a person would turn', () => {
    expect(moved('guitar.boardRadiusNut').step).toBeCloseTo(12.7, 12);
    expect(moved('strings.list.E2.gauge').step).toBeCloseTo(0.0254, 12);
    // Round in the reader's own unit.
    const stepIn = (path: string, kind: string, unit: string) =>
      moved(path, undefined, setAt(job, `show.${kind}`, unit)).step;
    expect(stepIn('bridge.thickness', 'length', 'in') / 25.4).toBeCloseTo(0.005, 12);
    expect(stepIn('bridge.thickness', 'length', 'fraction') / 25.4).toBeCloseTo(1 / 64, 12);
    expect(stepIn('guitar.boardRadiusNut', 'radius', 'mm')).toBe(10);
    expect(moved('guitar.bodyJoint').step).toBe(1);
    expect(moved('bridge.thickness', 0.4).strings[0]?.exposure).toBeCloseTo(-0.4, 9);
  });

  it('looks to one side where a limit or the bridge stands on the other', () => {
    const atLimit = setAt(job, 'guitar.relief', 0);
    const [bass] = moved('guitar.relief', 0.1, atLimit).strings;
    const exposureAt = (relief: number) => solved(setAt(job, 'guitar.relief', relief)).strings[0]?.exposure ?? 0;
    expect(bass?.exposure).toBeCloseTo(exposureAt(0.1) - exposureAt(0), 12);

    // A slot deeper by 1 mm would cut through this bridge, one shallower would not.
    const deep = setAt(job, 'slot.depth', 9);
    expect(getAt(deep, 'slot.depth')).toBe(9);
    expect(moved('slot.depth', 1, deep).strings[0]?.exposure).toBe(0);
  });

  it('says nothing of words, of no field, and of a job that cannot be solved', () => {
    expect(whatIf(job, 'bridge.footprint')).toBeUndefined();
    expect(whatIf(job, 'name')).toBeUndefined();
    expect(whatIf(job, 'bridge.colour')).toBeUndefined();
    expect(whatIf(setAt(job, 'guitar.rise', 'readings'), 'guitar.rise')).toBeUndefined();
    expect(whatIf(setAt(job, 'bridge.length', 61), 'bridge.thickness')).toBeUndefined();
    expect(() => whatIf(job, 'bridge.thickness', 0)).toThrow(RangeError);
  });
});
