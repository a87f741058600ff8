import { describe, expect, it } from 'vitest';
import { circle } from '../../../geometry/shape/arc.ts';
import { hatch } from '../../../geometry/shape/hatch.ts';
import { area, contains, lengthOf } from '../../../geometry/shape/measure.ts';
import { distanceTo } from '../../../geometry/shape/nearest.ts';
import { pen, polyline } from '../../../geometry/shape/path.ts';
import { distance, lerp, point } from '../../../geometry/shape/point.ts';

const box = (x: number, y: number, w: number, h: number) =>
  polyline([point(x, y), point(x + w, y), point(x + w, y + h), point(x, y + h)], true);

describe('hatch', () => {
  it('of a square at 45° has the lengths that geometry gives', () => {
    // Lines x − y = k·√2·s clip the unit-10 square to √2·(10 − |k|·√2·s).
    const s = 1.5;
    const lines = hatch(box(0, 0, 10, 10), [], s, Math.PI / 4);
    const wanted = [-4, -3, -2, -1, 0, 1, 2, 3, 4].map((k) => Math.SQRT2 * (10 - Math.abs(k) * Math.SQRT2 * s));
    expect(lines.map(lengthOf)).toEqual(wanted.map((w) => expect.closeTo(w, 10)));
  });

  it('ends on the outlines, keeps to the face and leaves the holes', () => {
    const face = pen(point(0, 0))
      .line(point(60, 0))
      .arc(point(60, 20), 15, 1)
      .cubic(point(40, 35), point(20, 5), point(0, 20));
    const outline = face.close();
    const holes = [circle(point(20, 8), 4), box(40, 5, 8, 6)];
    const lines = hatch(outline, holes, 0.7, Math.PI / 4);
    for (const l of lines) {
      for (const p of [l.from, l.to])
        expect(Math.min(...[outline, ...holes].map((path) => distanceTo(path, p)))).toBeLessThan(1e-9);
      const middle = lerp(l.from, l.to, 0.5);
      expect(contains(outline, middle)).toBe(true);
      expect(holes.some((h) => contains(h, middle))).toBe(false);
    }
    // So many lines of so much length, 0.7 apart, cover the face: a midpoint sum.
    const face2 = area(outline) - holes.reduce((sum, h) => sum + Math.abs(area(h)), 0);
    expect((lines.reduce((sum, l) => sum + lengthOf(l), 0) * 0.7) / face2).toBeCloseTo(1, 1);
  });

  it('lines up across neighbouring faces', () => {
    const whole = hatch(box(0, 0, 20, 10), [], 2, 0.6);
    const halves = [...hatch(box(0, 0, 9, 10), [], 2, 0.6), ...hatch(box(9, 0, 11, 10), [], 2, 0.6)];
    const length = (ls: typeof whole) => ls.reduce((sum, l) => sum + lengthOf(l), 0);
    expect(length(halves)).toBeCloseTo(length(whole), 9);
  });

  it('a hole that overlaps another, or leaves the face, takes no more than its own', () => {
    const lines = hatch(box(0, 0, 10, 10), [box(4, -1, 4, 12), box(6, -1, 8, 12)], 2, 0);
    // Level lines at 0 or 10 lie on an edge; those at 2, 4, 6, 8 keep x from 0 to 4.
    for (const l of lines.filter((k) => k.from.y > 1 && k.from.y < 9))
      expect([l.from.x, l.to.x]).toEqual([expect.closeTo(0), expect.closeTo(4)]);
    expect(lines.filter((l) => distance(l.from, l.to) > 4.0001)).toEqual([]);
  });

  it('refuses a spacing of 0 and open paths', () => {
    expect(() => hatch(box(0, 0, 1, 1), [], 0, 0)).toThrow(/0 mm/);
    expect(() => hatch(pen(point(0, 0)).line(point(1, 0)).path(), [], 1, 0)).toThrow(/open path/i);
  });
});
