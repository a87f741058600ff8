import { describe, expect, it } from 'vitest';
import { area, pathLength } from '../../../geometry/shape/measure.ts';
import { end, path, pen, polyline, reversePath, segmentEnd, start } from '../../../geometry/shape/path.ts';
import { distance, point } from '../../../geometry/shape/point.ts';

describe('path', () => {
  const one = { kind: 'line', from: point(0, 0), to: point(1, 0) } as const;

  it('refuses segments that do not join, naming where and how far', () => {
    const torn = { kind: 'line', from: point(1, 0.5), to: point(2, 0) } as const;
    expect(() => path([one, torn], false)).toThrow(/between segments 1 and 2.*0\.5 mm apart/);
    expect(() => path([one], true)).toThrow(/where it should close/);
    expect(() => path([], false)).toThrow(/no segments/);
  });

  it('allows a rounding error at the joints', () => {
    expect(path([one, { ...one, from: point(1 + 5e-7, 0), to: point(2, 0) }], false).segments).toHaveLength(2);
  });
});

describe('pen', () => {
  it('draws a stadium of lines and arcs', () => {
    const p = pen(point(0, 0))
      .line(point(10, 0))
      .arc(point(10, 4), 2, 1)
      .line(point(0, 4))
      .arc(point(0, 0), 2, 1)
      .close();
    expect(p.segments.map((s) => s.kind)).toEqual(['line', 'arc', 'line', 'arc']);
    expect(area(p)).toBeCloseTo(40 + 4 * Math.PI, 6);
    expect(pathLength(p)).toBeCloseTo(20 + 4 * Math.PI, 6);
  });

  it('closes with a line only where one is missing', () => {
    const corner = pen(point(0, 0)).line(point(3, 0)).line(point(3, 4));
    expect(corner.close().segments).toHaveLength(3);
    expect(corner.line(point(0, 0)).close().segments).toHaveLength(3);
    expect(corner.path()).toMatchObject({ closed: false });
    expect(corner.path().segments).toHaveLength(2);
  });

  it('never changes a pen that is already there, and draws no line to where it stands', () => {
    const from = pen(point(0, 0)).line(point(1, 0));
    from.line(point(2, 0));
    from.line(point(1, 0));
    expect(from.path().segments).toHaveLength(1);
    expect(from.line(point(1, 0)).path().segments).toHaveLength(1);
  });
});

describe('polyline and its way round', () => {
  it('closes itself and reverses exactly', () => {
    const p = polyline([point(0, 0), point(2, 0), point(2, 3)], true);
    expect(p.segments).toHaveLength(3);
    expect(area(p)).toBe(3);
    expect(area(reversePath(p))).toBe(-3);
    expect(() => polyline([point(1, 1)], false)).toThrow(/at least one/);
  });

  it('a reversed path of all three kinds runs from the end to the start', () => {
    const p = pen(point(0, 0))
      .line(point(5, 0))
      .arc(point(8, 3), 4, 1)
      .cubic(point(8, 5), point(6, 9), point(2, 7))
      .path();
    const r = reversePath(p);
    expect(distance(start(r), end(p))).toBeLessThan(1e-12);
    expect(distance(end(r), start(p))).toBeLessThan(1e-12);
    expect(pathLength(r)).toBeCloseTo(pathLength(p), 10);
    expect(r.segments.map((s) => s.kind)).toEqual(['cubic', 'arc', 'line']);
    const arc = r.segments[1];
    if (!arc) throw new Error('no arc');
    expect(distance(segmentEnd(arc), point(5, 0))).toBeLessThan(1e-12);
  });
});
