import { describe, expect, it } from 'vitest';
import {
  bernsteinAt,
  bernsteinDerivative,
  bernsteinProduct,
  bernsteinRoots,
  bernsteinTouches,
} from '../../../geometry/shape/bernstein.ts';

/** (t − r)·k as Bernstein coefficients, multiplied together. */
const withRoots = (...roots: number[]) => roots.map((r) => [-r, 1 - r]).reduce(bernsteinProduct);

describe('roots in Bernstein form', () => {
  it.each([[[0.25]], [[0.1, 0.5, 0.9]], [[0.5, 0.75]], [[0, 0.3, 1]], [[0.2, 0.2000001, 0.7, 0.95, 0.99]]])(
    'finds %j',
    (roots) => {
      const found = bernsteinRoots(withRoots(...roots));
      expect(found).toHaveLength(roots.length);
      for (const [i, r] of roots.entries()) expect(found[i]).toBeCloseTo(r, 8);
    },
  );

  it('leaves out roots beyond 0 to 1 and finds none where there is none', () => {
    expect(bernsteinRoots(withRoots(-0.5, 0.5, 1.5))).toEqual([expect.closeTo(0.5, 14)]);
    expect(bernsteinRoots([1, -1.1, 1])).toHaveLength(2);
    expect(bernsteinRoots([1, -0.9, 1])).toEqual([]);
    expect(bernsteinRoots([0, 0, 0])).toEqual([]);
  });

  it('tells a touch that rounding has lifted off', () => {
    const lifted = withRoots(0.3, 0.3).map((v) => v + 1e-13);
    expect(bernsteinRoots(lifted)).toEqual([]);
    expect(bernsteinTouches(lifted, 1e-10)[0]).toBeCloseTo(0.3, 6);
  });

  it('multiplies and derives', () => {
    // (1 + t)(2 − t) = 2 + t − t²; its derivative is 1 − 2t.
    const p = bernsteinProduct([1, 2], [2, 1]);
    for (const t of [0, 0.3, 1]) {
      expect(bernsteinAt(p, t)).toBeCloseTo(2 + t - t * t, 14);
      expect(bernsteinAt(bernsteinDerivative(p), t)).toBeCloseTo(1 - 2 * t, 14);
    }
  });
});
