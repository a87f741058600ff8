import { describe, expect, it } from 'vitest';
import { arc, circle } from '../../../geometry/shape/arc.ts';
import {
  area,
  bounds,
  boundsOf,
  contains,
  isSimple,
  joinBounds,
  lengthOf,
  pathLength,
  pointOn,
  tangentOn,
} from '../../../geometry/shape/measure.ts';
import { pen, polyline, reversePath } from '../../../geometry/shape/path.ts';
import { distance, point } from '../../../geometry/shape/point.ts';
import { translate } from '../../../geometry/shape/transform.ts';
import type { Cubic, Segment } from '../../../geometry/shape/types.ts';

const square = polyline([point(0, 0), point(4, 0), point(4, 4), point(0, 4)], true);
/** y = x² from 0 to 2 as an exact cubic: a parabola raised by a degree. */
const parabola: Cubic = {
  kind: 'cubic',
  from: point(0, 0),
  c1: point(2 / 3, 0),
  c2: point(4 / 3, 4 / 3),
  to: point(2, 4),
};

describe('along a segment', () => {
  it('points and unit tangents follow the curve', () => {
    expect(pointOn(parabola, 0.25)).toEqual({ x: 0.5, y: expect.closeTo(0.25, 14) });
    const t = tangentOn(parabola, 0.5);
    expect(t.y / t.x).toBeCloseTo(2, 12);
    expect(Math.hypot(t.x, t.y)).toBeCloseTo(1, 14);
    expect(tangentOn(arc(point(0, 0), 3, 0, -1), 0)).toEqual({ x: expect.closeTo(0), y: -1 });
  });

  it('a cubic with a handle drawn in still has a direction at its ends', () => {
    const drawnIn: Cubic = { kind: 'cubic', from: point(0, 0), c1: point(0, 0), c2: point(3, 4), to: point(3, 4) };
    for (const t of [0, 1]) {
      expect(tangentOn(drawnIn, t).x).toBeCloseTo(0.6, 9);
      expect(tangentOn(drawnIn, t).y).toBeCloseTo(0.8, 9);
    }
    expect(() => tangentOn({ kind: 'line', from: point(1, 1), to: point(1, 1) }, 0)).toThrow(/no length/);
  });
});

describe('lengths', () => {
  it('of a parabola against its closed form', () => {
    // ∫₀² √(1 + 4x²) dx = √17 + asinh(4)/4
    expect(lengthOf(parabola)).toBeCloseTo(Math.sqrt(17) + Math.asinh(4) / 4, 9);
  });

  it('of a cubic with a cusp', () => {
    // (t², t³) from −1 to 1 is the semicubical parabola: 2·(13√13 − 8)/27.
    const cusp: Cubic = {
      kind: 'cubic',
      from: point(1, -1),
      c1: point(-1 / 3, 1),
      c2: point(-1 / 3, -1),
      to: point(1, 1),
    };
    expect(lengthOf(cusp)).toBeCloseTo((2 * (13 * Math.sqrt(13) - 8)) / 27, 9);
  });

  it('of arcs whichever way they turn', () => {
    expect(lengthOf(arc(point(0, 0), 3, 1, -2))).toBe(6);
    expect(pathLength(circle(point(0, 0), 1))).toBeCloseTo(2 * Math.PI, 14);
  });
});

describe('area', () => {
  it('under a parabola is exact', () => {
    const under = pen(point(0, 0)).line(point(2, 0)).line(point(2, 4));
    const p = under.cubic(parabola.c2, parabola.c1, point(0, 0)).close();
    expect(area(p)).toBeCloseTo(8 / 3, 13);
    expect(area(reversePath(p))).toBeCloseTo(-8 / 3, 13);
  });

  it('of a thin segment of a very large circle keeps its digits', () => {
    const p = pen(point(-50, 0)).line(point(50, 0)).arc(point(-50, 0), 1e6, 1).close();
    // Chord c, R ≫ c: c³/12R, the next term is smaller by 3c²/40R².
    expect(area(p) / (100 ** 3 / 12e6)).toBeCloseTo(1, 6);
  });

  it('does not depend on where the path lies', () => {
    expect(area(translate(square, 1e6, -3e6))).toBeCloseTo(16, 9);
    expect(area(translate(circle(point(0, 0), 2), 12345, 678))).toBeCloseTo(4 * Math.PI, 9);
    expect(() => area(pen(point(0, 0)).line(point(1, 1)).path())).toThrow(/open path/i);
  });
});

describe('bounds', () => {
  it('of an arc reach its quarter turns, of a cubic its own extremes', () => {
    expect(bounds(circle(point(1, 2), 3))).toEqual({ minX: -2, minY: -1, maxX: 4, maxY: 5 });
    const hump = pen(point(0, 0)).cubic(point(0, 4), point(4, 4), point(4, 0)).path();
    expect(bounds(hump)).toEqual({ minX: 0, minY: 0, maxX: 4, maxY: 3 });
    const a: Segment = arc(point(0, 0), 2, Math.PI / 4, -Math.PI / 2);
    expect(bounds({ segments: [a], closed: false }).maxX).toBe(2);
    expect(bounds({ segments: [a], closed: false }).minX).toBeCloseTo(Math.SQRT2, 14);
  });

  it('join', () => {
    expect(joinBounds(bounds(square), bounds(circle(point(10, 1), 1)))).toEqual(
      boundsOf([square, circle(point(10, 1), 1)]),
    );
    expect(boundsOf([square, circle(point(10, 1), 1)])).toEqual({ minX: 0, minY: 0, maxX: 11, maxY: 4 });
    expect(() => boundsOf([])).toThrow(RangeError);
  });
});

describe('contains', () => {
  const moon = pen(point(0, -5)).arc(point(5, 0), 5, 1).arc(point(0, 5), 5, 1).arc(point(0, -5), 7, -1).close();

  it('tells inside from outside, also level with corners and joints', () => {
    for (const y of [0.001, 1, 3.999]) expect(contains(square, point(2, y))).toBe(true);
    expect(contains(square, point(-1, 0))).toBe(false);
    expect(contains(square, point(-1, 4))).toBe(false);
    expect(contains(square, point(5, 4))).toBe(false);
    expect(contains(moon, point(4, 0))).toBe(true);
    expect(contains(moon, point(1, 0))).toBe(false);
    expect(contains(moon, point(-1, 0))).toBe(false);
  });

  it('counts the line itself as inside', () => {
    expect(contains(square, point(4, 2))).toBe(true);
    expect(contains(square, point(0, 0))).toBe(true);
    expect(contains(circle(point(0, 0), 3), point(0, -3))).toBe(true);
    expect(contains(circle(point(0, 0), 3), point(0, -3.00001))).toBe(false);
    expect(() => contains(pen(point(0, 0)).line(point(1, 1)).path(), point(0, 0))).toThrow(/open path/i);
  });
});

describe('isSimple', () => {
  it('holds for outlines that only meet at their joints', () => {
    const slot = pen(point(0, 0)).line(point(10, 0)).arc(point(10, 4), 2, 1).line(point(0, 4)).arc(point(0, 0), 2, 1);
    for (const p of [square, circle(point(0, 0), 1), slot.close(), pen(point(0, 0)).line(point(1, 0)).path()])
      expect(isSimple(p)).toBe(true);
  });

  it('fails for crossings, touches, loops and lines run twice', () => {
    expect(isSimple(polyline([point(0, 0), point(4, 4), point(4, 0), point(0, 4)], true))).toBe(false);
    expect(isSimple(polyline([point(0, 0), point(4, 0), point(4, 4), point(2, 0), point(0, 4)], true))).toBe(false);
    expect(isSimple(pen(point(0, 0)).cubic(point(12, 8), point(-8, 8), point(4, 0)).path())).toBe(false);
    expect(isSimple(polyline([point(0, 0), point(4, 0), point(1, 0)], false))).toBe(false);
    expect(isSimple(pen(point(0, 0)).line(point(4, 0)).close())).toBe(false);
  });
});

it('distance helper agrees with the length of a line', () => {
  expect(lengthOf({ kind: 'line', from: point(1, 2), to: point(4, 6) })).toBe(distance(point(1, 2), point(4, 6)));
});
