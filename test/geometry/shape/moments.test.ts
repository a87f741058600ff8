import { Polygon } from '@flatten-js/core';
import { describe, expect, it } from 'vitest';
import { bounds, circle, pathIntersections, pointOn, polyline } from '../../../geometry/shape/index.ts';
import { moments } from '../../../geometry/shape/moments.ts';
import { pen } from '../../../geometry/shape/path.ts';
import { translate } from '../../../geometry/shape/transform.ts';
import type { Path } from '../../../geometry/shape/types.ts';
import { bridges, outlineOf } from '../../footprint-bridges.ts';

/** Area, middle and second moment by thin slices across: how wide the figure is at a height comes from where a level line cuts it. */
const bySlices = (path: Path) => {
  const box = bounds(path);
  const n = 2000;
  const dy = (box.maxY - box.minY) / n;
  const slices = Array.from({ length: n }, (_, k) => {
    const y = box.minY + (k + 0.5) * dy;
    const level = polyline(
      [
        { x: box.minX - 1, y },
        { x: box.maxX + 1, y },
      ],
      false,
    );
    const xs = pathIntersections(level, path)
      .map((p) => p.x)
      .sort((a, b) => a - b);
    // Where the line leaves the figure and comes in again, as at a waist, each stretch counts.
    return { y, da: xs.reduce((sum, x, i) => sum + (i % 2 === 0 ? -x : x), 0) * dy };
  });
  const area = slices.reduce((sum, { da }) => sum + da, 0);
  const middle = slices.reduce((sum, { y, da }) => sum + y * da, 0) / area;
  return { area, middle, second: slices.reduce((sum, { y, da }) => sum + (y - middle) ** 2 * da, 0) };
};

// Section formulas [memory of Machinery's Handbook, moments of inertia and section moduli]; about the axis through the centroid.
describe('moments of plane figures by the handbook', () => {
  it('a rectangle b × d: I = bd³/12', () => {
    const found = moments(
      polyline(
        [
          { x: -76, y: 634 },
          { x: 76, y: 634 },
          { x: 76, y: 666 },
          { x: -76, y: 666 },
        ],
        true,
      ),
    );
    expect(found.area).toBeCloseTo(152 * 32, 8);
    expect(found.centroid.x).toBeCloseTo(0, 9);
    expect(found.centroid.y).toBeCloseTo(650, 9);
    expect(found.secondY).toBeCloseTo((152 * 32 ** 3) / 12, 5);
  });

  it('a triangle b × d: centroid at d/3, I = bd³/36', () => {
    const found = moments(
      polyline(
        [
          { x: 3, y: 10 },
          { x: 15, y: 10 },
          { x: 5, y: 19 },
        ],
        true,
      ),
    );
    expect(found.area).toBeCloseTo(54, 10);
    expect(found.centroid.y).toBeCloseTo(13, 10);
    expect(found.centroid.x).toBeCloseTo(23 / 3, 10);
    expect(found.secondY).toBeCloseTo((12 * 9 ** 3) / 36, 9);
  });

  it('a circle: I = πd⁴/64, however far off it lies', () => {
    for (const centre of [
      { x: 0, y: 0 },
      { x: -40, y: 643 },
    ]) {
      const found = moments(circle(centre, 6));
      expect(found.area).toBeCloseTo(Math.PI * 36, 9);
      expect(found.centroid.y).toBeCloseTo(centre.y, 9);
      expect(found.secondY).toBeCloseTo((Math.PI * 12 ** 4) / 64, 7);
    }
  });

  it('a half circle: centroid at 4r/3π, I = 0.1098 r⁴', () => {
    const found = moments(pen({ x: -10, y: 0 }).arc({ x: 0, y: -10 }, 10, 1).arc({ x: 10, y: 0 }, 10, 1).close());
    expect(found.area).toBeCloseTo((Math.PI * 100) / 2, 9);
    expect(found.centroid.y).toBeCloseTo(-40 / (3 * Math.PI), 9);
    expect(found.secondY / 10 ** 4).toBeCloseTo(0.1098, 4);
  });

  // [memory of Machinery's Handbook, segments of circles of radius 1]: centre angle, chord, area.
  it.each([
    [60, 1.0, 0.09059],
    [120, 1.73205, 0.61418],
  ])('a segment of %s°: its area, and its centroid c³/12A from the centre', (degrees, chord, area) => {
    const half = (degrees * Math.PI) / 360;
    const found = moments(
      pen({ x: -Math.sin(half), y: -Math.cos(half) })
        .arc({ x: Math.sin(half), y: -Math.cos(half) }, 1, 1)
        .close(),
    );
    expect(found.area).toBeCloseTo(area, 4);
    expect(-found.centroid.y).toBeCloseTo(chord ** 3 / (12 * area), 3);
  });
});

describe('moments of the footprints', () => {
  it.each(Object.entries(bridges))('%s: as by thin slices, and as by another library', (_, bridge) => {
    const path = translate(outlineOf(bridge), 0, 633.3);
    const found = moments(path);
    const sliced = bySlices(path);
    expect(found.area / sliced.area).toBeCloseTo(1, 4);
    expect(found.centroid.y).toBeCloseTo(sliced.middle, 3);
    expect(found.secondY / sliced.second).toBeCloseTo(1, 4);
    // Straight pieces so short that a curve keeps its area to a few parts in a million.
    const corners = path.segments.flatMap((s) =>
      Array.from({ length: s.kind === 'line' ? 1 : 400 }, (__, k): [number, number] => {
        const { x, y } = pointOn(s, k / 400);
        return [x, y];
      }),
    );
    expect(found.area / new Polygon(corners).area()).toBeCloseTo(1, 4);
  });

  it('are the same whichever way round the outline runs', () => {
    const there = moments(
      polyline(
        [
          { x: 0, y: 0 },
          { x: 9, y: 1 },
          { x: 4, y: 7 },
        ],
        true,
      ),
    );
    const back = moments(
      polyline(
        [
          { x: 4, y: 7 },
          { x: 9, y: 1 },
          { x: 0, y: 0 },
        ],
        true,
      ),
    );
    expect(back.area).toBeCloseTo(there.area, 12);
    expect(back.secondY).toBeCloseTo(there.secondY, 10);
    expect(back.centroid.y).toBeCloseTo(there.centroid.y, 12);
  });
});

it('an open path encloses nothing', () => {
  expect(() =>
    moments(
      polyline(
        [
          { x: 0, y: 0 },
          { x: 1, y: 0 },
          { x: 0, y: 1 },
        ],
        false,
      ),
    ),
  ).toThrow(RangeError);
});
