import { describe, expect, it } from 'vitest';
import { pointOn } from '../../../geometry/shape/along.ts';
import { arc, arcEnd, arcFromTo, arcStart, arcThrough, circle } from '../../../geometry/shape/arc.ts';
import { distance, point } from '../../../geometry/shape/point.ts';

describe('arcFromTo', () => {
  it('runs the minor arc in the sense asked for', () => {
    // A quarter of the unit circle, from +x towards +y and the other way about the mirrored centre.
    const there = arcFromTo(point(1, 0), point(0, 1), 1, 1);
    expect(distance(there.centre, point(0, 0))).toBeLessThan(1e-15);
    expect(there.sweep).toBeCloseTo(Math.PI / 2, 14);
    const other = arcFromTo(point(1, 0), point(0, 1), 1, -1);
    expect(distance(other.centre, point(1, 1))).toBeLessThan(1e-15);
    expect(other.sweep).toBeCloseTo(-Math.PI / 2, 14);
    for (const a of [there, other]) {
      expect(distance(arcStart(a), point(1, 0))).toBeLessThan(1e-15);
      expect(distance(arcEnd(a), point(0, 1))).toBeLessThan(1e-15);
    }
  });

  it('makes a semicircle of half the chord, and names the least radius when it is less', () => {
    expect(arcFromTo(point(0, 0), point(4, 0), 2, 1).sweep).toBeCloseTo(Math.PI, 7);
    expect(() => arcFromTo(point(0, 0), point(4, 0), 1.9, 1)).toThrow(/1\.9 mm.*4 mm.*2 mm/);
    expect(() => arcFromTo(point(1, 2), point(1, 2), 3, 1)).toThrow(/two different points/);
  });

  it('still meets its ends at a radius of 50 m', () => {
    const a = arcFromTo(point(-76, 10), point(76, 10), 50000, -1);
    expect(distance(arcStart(a), point(-76, 10))).toBeLessThan(1e-9);
    expect(distance(arcEnd(a), point(76, 10))).toBeLessThan(1e-9);
  });
});

describe('arcThrough', () => {
  it.each([
    [point(1, 0), point(0, 1), point(-1, 0), Math.PI],
    [point(1, 0), point(0, -1), point(-1, 0), -Math.PI],
    [point(1, 0), point(-1, 0), point(0, -1), 1.5 * Math.PI],
    [point(0, 1), point(1, 0), point(-Math.SQRT1_2, Math.SQRT1_2), -1.75 * Math.PI],
  ])('passes its three points in order (%#)', (a, b, c, sweep) => {
    const found = arcThrough(a, b, c);
    expect(found.sweep).toBeCloseTo(sweep, 12);
    expect(found.radius).toBeCloseTo(1, 12);
    expect(distance(arcStart(found), a)).toBeLessThan(1e-12);
    expect(distance(arcEnd(found), c)).toBeLessThan(1e-12);
  });

  it('refuses three points on a line', () => {
    expect(() => arcThrough(point(0, 0), point(1, 1), point(2, 2))).toThrow(/one line/);
    expect(() => arcThrough(point(0, 0), point(1, 1), point(1, 1))).toThrow(RangeError);
  });
});

describe('arc and circle', () => {
  it('refuse a radius of 0 and more than a full turn', () => {
    expect(() => arc(point(0, 0), 0, 0, 1)).toThrow(/radius is 0 mm/);
    expect(() => arc(point(0, 0), 1, 0, 7)).toThrow(/7 radians/);
  });

  it('a circle is one arc, from +x towards +y', () => {
    const c = circle(point(2, 3), 4);
    expect(c.closed).toBe(true);
    expect(c.segments).toHaveLength(1);
    const [s] = c.segments;
    if (!s) throw new Error('empty');
    expect(distance(pointOn(s, 0.25), point(2, 7))).toBeLessThan(1e-14);
  });
});
