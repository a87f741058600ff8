import {
  curveBasis,
  curveBasisClosed,
  curveCatmullRom,
  curveCatmullRomClosed,
  curveLinear,
  curveMonotoneX,
  curveNatural,
} from 'd3-shape';
import { describe, expect, it } from 'vitest';
import { pointOn } from '../../../geometry/shape/along.ts';
import { recorder, throughPoints } from '../../../geometry/shape/curve.ts';
import { area, isSimple, pathLength } from '../../../geometry/shape/measure.ts';
import { nearestOn } from '../../../geometry/shape/nearest.ts';
import { end, start } from '../../../geometry/shape/path.ts';
import { distance, point } from '../../../geometry/shape/point.ts';

const wave = [point(0, 0), point(10, 5), point(20, 4), point(31, -3), point(40, 0)];
const ring = [point(10, 0), point(7, 7), point(0, 10), point(-8, 6), point(-10, 0), point(0, -9)];

describe('throughPoints', () => {
  it.each([
    ['Catmull–Rom', curveCatmullRom],
    ['natural', curveNatural],
    ['monotone', curveMonotoneX],
    ['straight', curveLinear],
  ])('a %s curve meets every point exactly', (_, curve) => {
    const p = throughPoints(wave, curve);
    expect(p.closed).toBe(false);
    expect(p.segments).toHaveLength(wave.length - 1);
    for (const [i, w] of wave.slice(0, -1).entries()) {
      const s = p.segments[i];
      if (!s) throw new Error('a segment is missing');
      expect(pointOn(s, 0)).toEqual(w);
    }
    expect(end(p)).toEqual(wave.at(-1));
  });

  it('a basis curve only ends at the end points, and is the cubic B-spline between', () => {
    const p = throughPoints(wave, curveBasis);
    expect(distance(start(p), point(0, 0))).toBe(0);
    // The uniform cubic B-spline passes (a + 4b + c)/6 at each inner knot.
    const third = point((10 + 80 + 31) / 6, (5 + 16 - 3) / 6);
    expect(Math.min(...p.segments.map((s) => nearestOn(s, third).distance))).toBeLessThan(1e-12);
  });

  it.each([
    ['Catmull–Rom', curveCatmullRomClosed],
    ['basis', curveBasisClosed],
  ])('a closed %s curve is closed, of cubics only', (_, curve) => {
    const p = throughPoints(ring, curve, { closed: true });
    expect(p.closed).toBe(true);
    expect(p.segments.map((s) => s.kind)).toEqual(ring.map(() => 'cubic'));
    expect(isSimple(p)).toBe(true);
    expect(area(p)).toBeGreaterThan(150);
  });

  it('an open curve closed by hand gets a line', () => {
    const p = throughPoints(wave, curveNatural, { closed: true });
    expect(p.closed).toBe(true);
    expect(p.segments.at(-1)).toEqual({ kind: 'line', from: wave.at(-1), to: wave[0] });
  });

  it('drops points that repeat, also round the end of a closed curve', () => {
    const doubled = wave.flatMap((p) => [p, p]);
    expect(throughPoints(doubled, curveCatmullRom)).toEqual(throughPoints(wave, curveCatmullRom));
    const open = throughPoints(ring, curveCatmullRomClosed, { closed: true });
    const shut = throughPoints([...ring, ring[0] ?? point(0, 0)], curveCatmullRomClosed, { closed: true });
    expect(area(shut)).toBeCloseTo(area(open), 10);
    expect(shut.segments).toHaveLength(open.segments.length);
  });

  it('refuses too few points, and what the curve cannot draw', () => {
    expect(() => throughPoints([point(1, 1), point(1, 1)], curveNatural)).toThrow(/1 different points.*at least 2/);
    expect(() => throughPoints(ring.slice(0, 2), curveCatmullRomClosed, { closed: true })).toThrow(/at least 3/);
    expect(() => throughPoints([point(0, 0), point(1, Number.NaN), point(2, 0)], curveNatural)).toThrow(/finite/);
  });
});

describe('recorder', () => {
  it('raises a quadratic to the cubic that is the same curve', () => {
    const r = recorder();
    r.moveTo(0, 0);
    r.quadraticCurveTo(1, 2, 4, 0);
    const [p] = r.paths();
    // At the middle: (P₀ + 2P₁ + P₂)/4.
    expect(p?.segments[0] && pointOn(p.segments[0], 0.5)).toEqual({ x: 1.5, y: 1 });
  });

  it('draws arcs as the canvas does: joined by a line, the short or the long way', () => {
    const r = recorder();
    r.moveTo(0, 0);
    r.arc(5, 0, 2, 0, Math.PI / 2);
    r.moveTo(20, 0);
    r.arc(20, 0, 2, 0, Math.PI / 2, true);
    r.moveTo(32, 0);
    r.arc(30, 0, 2, 0, 2 * Math.PI);
    const [short, long, whole] = r.paths();
    if (!short || !long || !whole) throw new Error('a path is missing');
    expect(pathLength(short)).toBeCloseTo(7 + Math.PI, 12);
    expect(pathLength(long)).toBeCloseTo(2 + 3 * Math.PI, 12);
    expect(pathLength(whole)).toBeCloseTo(4 * Math.PI, 12);
  });

  it('rounds a corner, and closes rectangles', () => {
    const r = recorder();
    r.moveTo(0, 0);
    r.arcTo(10, 0, 10, 10, 3);
    r.lineTo(10, 10);
    r.rect(0, 0, 3, -2);
    const [corner, rectangle] = r.paths();
    if (!corner || !rectangle) throw new Error('a path is missing');
    expect(pathLength(corner)).toBeCloseTo(14 + 1.5 * Math.PI, 12);
    expect(corner.segments[1]).toMatchObject({ kind: 'arc', centre: { x: expect.closeTo(7), y: expect.closeTo(3) } });
    expect(area(rectangle)).toBe(-6);
    expect(rectangle.segments).toHaveLength(4);
  });

  it('refuses to draw from nowhere or to no number', () => {
    expect(() => recorder().lineTo(1, 1)).toThrow(/move to its first point/);
    expect(() => recorder().moveTo(Number.POSITIVE_INFINITY, 0)).toThrow(/finite/);
  });
});
