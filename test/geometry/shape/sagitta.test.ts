import { describe, expect, it } from 'vitest';
import { drop, radiusFromSagitta, sagitta } from '../../../geometry/shape/sagitta.ts';

describe('drop', () => {
  it('is the fall of a circle from its top', () => {
    expect(drop(5, 3)).toBeCloseTo(1, 14);
    expect(drop(5, -4)).toBeCloseTo(2, 14);
    expect(drop(5, 5)).toBe(5);
    expect(drop('flat', 1000)).toBe(0);
  });

  it('keeps its digits when the radius is large', () => {
    // y²/2R + y⁴/8R³, what follows is below 1e-24.
    expect(drop(1e9, 1)).toBeCloseTo(5e-10, 24);
    expect(drop(50000, 0.01) / (0.01 ** 2 / 1e5)).toBeCloseTo(1, 12);
  });

  it('names both numbers when the arc does not reach so far', () => {
    expect(() => drop(100, -101.5)).toThrow(/100 mm.*101\.5 mm/);
    expect(() => drop(100, Number.NaN)).toThrow(RangeError);
    expect(() => drop(0, 0)).toThrow(/more than 0/);
  });
});

describe('sagitta and radius', () => {
  it.each([
    [355.6, 55.5],
    [508, 152],
    [7600, 152],
    [10, 20],
  ])('radius %d over a chord of %d comes back from its sagitta', (radius, chord) => {
    expect(radiusFromSagitta(chord, sagitta(radius, chord))).toBeCloseTo(radius, 8);
  });

  it('refuses a chord longer than the diameter and numbers that are not above 0', () => {
    expect(() => sagitta(10, 21)).toThrow(RangeError);
    expect(() => radiusFromSagitta(10, 0)).toThrow(/sagitta is 0 mm/);
    expect(() => radiusFromSagitta(-1, 1)).toThrow(/chord is -1 mm/);
  });
});
