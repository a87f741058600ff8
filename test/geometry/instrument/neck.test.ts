import { describe, expect, it } from 'vitest';
import { setAt } from '../../../geometry/fields.ts';
import { neckOrBridge } from '../../../geometry/instrument/neck.ts';
import type { Job } from '../../../geometry/job.ts';
import { settle } from '../../../geometry/settle.ts';
import { workedExample } from '../../solved.ts';

const withHeight = (height: number, more: Readonly<Record<string, unknown>> = {}) => {
  const job = Object.entries({ 'guitar.neckPlaneHeight': height, ...more }).reduce<Job>(
    (changed, [path, value]) => setAt(changed, path, value),
    workedExample(),
  );
  // A neck may lie so low that no saddle stands above the bridge as it is: it is settled, but not built.
  const result = settle(job);
  if (!result.ok) throw new Error(result.problems[0]?.says);
  return neckOrBridge(result.job);
};

// By the usual ranges [practice]: 0 to 1 mm of light, bridges of 7 to 10.5 mm, doubtful from 6 to 11.5.
describe('neck or bridge', () => {
  it.each([
    // Height, thicknesses that suit it, the one nearest to the 9.3 mm of the example, and what is said.
    [10, 9, 10, 9.3, 'bridge'],
    [9, 8, 9, 9, 'bridge'],
    [11, 10, 11, 10, 'bridge'],
    [7.4, 6.4, 7.4, 7.4, 'bridge'],
    [11.4, 10.4, 11.4, 10.4, 'bridge'],
    [6.8, 5.8, 6.8, undefined, 'either'],
    [12.2, 11.2, 12.2, undefined, 'either'],
  ] as const)('a neck plane %s mm high suits bridges of %s to %s mm', (height, from, to, thickness, says) => {
    const found = withHeight(height);
    expect(found.suits.from).toBeCloseTo(from, 12);
    expect(found.suits.to).toBeCloseTo(to, 12);
    expect(found.thickness).toEqual(thickness === undefined ? undefined : expect.closeTo(thickness, 9));
    expect(found.says).toBe(says);
  });

  it('says “reset” where no bridge would do, even a doubtful one', () => {
    expect(withHeight(5.9).says).toBe('reset');
    expect(withHeight(12.6).says).toBe('reset');
  });

  it('goes by the job’s own ranges', () => {
    const own = { limits: { neck: { from: 10.4 }, straightedge: { to: 0.2 } } };
    expect(withHeight(10, own)).toMatchObject({ suits: { from: 9.8 }, thickness: undefined, says: 'either' });
  });
});

describe('a neck reset', () => {
  it('by hand: 4.25 mm up over the bridge, on a heel 90 mm deep, from the 14th fret of 640 mm', () => {
    const { reset } = withHeight(5);
    // A bridge of 8.75 mm, the middle of what is usual, and half a millimetre of light, want 9.25 mm under the straightedge.
    expect(reset.forThickness).toBeCloseTo(8.75, 12);
    expect(reset.raise).toBeCloseTo(4.25, 12);
    const fret14 = 640 - 640 / 2 ** (14 / 12);
    expect(reset.offHeel).toBeCloseTo((90 * 4.25) / (640 - fret14), 9);
    expect(reset.offHeel).toBeCloseTo(1.34, 2);
    expect(reset.angle).toBeCloseTo(0.854, 3);
  });

  it('turned about the body joint by its angle, brings the fret plane up over the saddle by as much, and opens the heel by as much', () => {
    for (const height of [5.5, 8, 12.9]) {
      const { reset } = withHeight(height);
      const turn = (reset.angle * Math.PI) / 180;
      const joint = 640 * (1 - 2 ** (-14 / 12));
      // The fret plane carried on from the joint to the nominal scale, along the turned neck; the heel's end square to it.
      expect((640 - joint) * Math.tan(turn)).toBeCloseTo(reset.raise, 9);
      expect(90 * Math.tan(turn)).toBeCloseTo(reset.offHeel, 9);
      // With the neck so turned, the bridge it was worked out for shows light in the middle of what is usual, and suits.
      const after = withHeight(height + reset.raise, { 'bridge.thickness': reset.forThickness });
      expect(after).toMatchObject({ says: 'bridge', reset: { raise: expect.closeTo(0, 9) } });
      expect(after.thickness).toBeCloseTo(reset.forThickness, 9);
    }
  });

  it('takes from the joint’s upper edge where the neck lies too high', () => {
    const { reset } = withHeight(12.6);
    expect(reset.raise).toBeCloseTo(-3.35, 9);
    expect(reset.offHeel).toBeLessThan(0);
  });

  it('grows with the heel’s depth', () => {
    const at = (depth: number) => withHeight(12.6, { 'guitar.heelDepth': depth }).reset.offHeel;
    expect(at(120) / at(60)).toBeCloseTo(2, 9);
  });
});
