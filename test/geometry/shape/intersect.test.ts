import { describe, expect, it } from 'vitest';
import { arc, circle } from '../../../geometry/shape/arc.ts';
import { intersections, pathIntersections } from '../../../geometry/shape/intersect.ts';
import { polyline } from '../../../geometry/shape/path.ts';
import { distance, point } from '../../../geometry/shape/point.ts';
import type { Cubic, Line, Point, Segment } from '../../../geometry/shape/types.ts';

const line = (x0: number, y0: number, x1: number, y1: number): Line => ({
  kind: 'line',
  from: point(x0, y0),
  to: point(x1, y1),
});
const full = (x: number, y: number, r: number): Segment => arc(point(x, y), r, 0, 2 * Math.PI);
/** y = x² for x from −2 to 2. */
const parabola: Cubic = {
  kind: 'cubic',
  from: point(-2, 4),
  c1: point(-2 / 3, -4 / 3),
  c2: point(2 / 3, -4 / 3),
  to: point(2, 4),
};

const expectPoints = (found: readonly Point[], wanted: readonly Point[], within = 1e-9) => {
  expect(found).toHaveLength(wanted.length);
  for (const w of wanted) expect(Math.min(...found.map((p) => distance(p, w)))).toBeLessThan(within);
};

const cases: readonly [string, Segment, Segment, readonly Point[]][] = [
  ['lines that cross', line(0, 0, 4, 4), line(0, 4, 4, 0), [point(2, 2)]],
  ['lines that would cross further on', line(0, 0, 1, 1), line(0, 4, 4, 0), []],
  ['a line that ends on another', line(0, 0, 4, 0), line(1, 0, 1, 5), [point(1, 0)]],
  ['lines that share a stretch', line(0, 0, 4, 0), line(6, 0, 1, 0), [point(1, 0), point(4, 0)]],
  ['parallel lines', line(0, 0, 4, 0), line(0, 1e-6, 4, 1e-6), []],
  ['a line through a circle', line(-9, 3, 9, 3), full(0, 0, 5), [point(-4, 3), point(4, 3)]],
  ['a line that touches a circle', line(-9, 5, 9, 5), full(0, 0, 5), [point(0, 5)]],
  ['a line past a circle', line(-9, 5.001, 9, 5.001), full(0, 0, 5), []],
  ['a line and half a circle', line(-9, 3, 9, 3), arc(point(0, 0), 5, -Math.PI / 2, Math.PI), [point(4, 3)]],
  ['circles that cross', full(0, 0, 5), full(6, 0, 5), [point(3, 4), point(3, -4)]],
  ['circles that touch from outside', full(0, 0, 2), full(5, 0, 3), [point(2, 0)]],
  ['circles that touch from inside', full(0, 0, 5), full(2, 0, 3), [point(5, 0)]],
  ['a circle within another', full(0, 0, 5), full(1, 0, 3), []],
  [
    'arcs of one circle that share a stretch',
    arc(point(1, 1), 2, 0, Math.PI),
    arc(point(1, 1), 2, 1.5 * Math.PI, -Math.PI),
    [point(-1, 1), point(1, 3)],
  ],
  ['a parabola and a line', parabola, line(-3, 1, 3, 1), [point(-1, 1), point(1, 1)]],
  ['a parabola and a line it touches', line(-3, 0, 3, 0), parabola, [point(0, 0)]],
  // x² + (y − 1)² = 1 and y = x²: y² − y = 0.
  ['a parabola and a circle', parabola, full(0, 1, 1), [point(0, 0), point(1, 1), point(-1, 1)]],
  [
    'two parabolas',
    parabola,
    // y = 2 − x²
    { kind: 'cubic', from: point(-2, -2), c1: point(-2 / 3, 10 / 3), c2: point(2 / 3, 10 / 3), to: point(2, -2) },
    [point(-1, 1), point(1, 1)],
  ],
];

describe('intersections', () => {
  it.each(cases)('%s', (_, a, b, wanted) => {
    expectPoints(intersections(a, b), wanted);
    expectPoints(intersections(b, a), wanted);
  });

  it('two cubics cross in nine points', () => {
    // (t, T₃(t)) and (T₃(u), u), T₃ the Chebyshev polynomial: x = T₉(x), so x = cos θ with cos 9θ = cos θ: θ = kπ/4 or kπ/5.
    const a: Cubic = {
      kind: 'cubic',
      from: point(-1, -1),
      c1: point(-1 / 3, 5),
      c2: point(1 / 3, -5),
      to: point(1, 1),
    };
    const b: Cubic = {
      kind: 'cubic',
      from: point(-1, -1),
      c1: point(5, -1 / 3),
      c2: point(-5, 1 / 3),
      to: point(1, 1),
    };
    const angles = [0, 1, 2, 3, 4].map((k) => (k * Math.PI) / 4).concat([1, 2, 3, 4].map((k) => (k * Math.PI) / 5));
    expectPoints(
      intersections(a, b),
      angles.map((w) => point(Math.cos(w), Math.cos(3 * w))),
    );
  });

  it('a cubic with itself, or a part of it, shares the ends of the stretch', () => {
    expectPoints(intersections(parabola, parabola), [parabola.from, parabola.to]);
  });

  it('two cubics that touch meet once', () => {
    // y = −x² stands on its head under y = x².
    const under: Cubic = {
      kind: 'cubic',
      from: point(-2, -4),
      c1: point(-2 / 3, 4 / 3),
      c2: point(2 / 3, 4 / 3),
      to: point(2, -4),
    };
    expectPoints(intersections(parabola, under), [point(0, 0)], 1e-4);
  });
});

describe('pathIntersections', () => {
  it('tells a joint once', () => {
    const square = polyline([point(0, 0), point(4, 0), point(4, 4), point(0, 4)], true);
    const slash = polyline([point(-1, -1), point(2, 2), point(5, 5)], false);
    expectPoints(pathIntersections(square, slash), [point(0, 0), point(4, 4)]);
    expectPoints(pathIntersections(square, circle(point(0, 0), 2)), [point(2, 0), point(0, 2)]);
    expect(pathIntersections(square, circle(point(2, 2), 1))).toEqual([]);
  });
});
