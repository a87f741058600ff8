import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { pointOn } from '../../../geometry/shape/along.ts';
import type { Bounds, Point, Segment } from '../../../geometry/shape/types.ts';
import { stretchesWithin } from '../../../geometry/shape/within.ts';

const box: Bounds = { minX: -3, minY: -2, maxX: 4, maxY: 1 };

const place = fc.record({
  x: fc.double({ min: -8, max: 8, noNaN: true }),
  y: fc.double({ min: -8, max: 8, noNaN: true }),
});
const turn = (a: Point, b: Point, c: Point): number => (b.x - a.x) * (c.y - a.y) - (b.y - a.y) * (c.x - a.x);
const segment: fc.Arbitrary<Segment> = fc.oneof(
  fc.record({ kind: fc.constant('line' as const), from: place, to: place }),
  fc.record({
    kind: fc.constant('arc' as const),
    centre: place,
    radius: fc.double({ min: 0.5, max: 9, noNaN: true }),
    start: fc.double({ min: -3, max: 3, noNaN: true }),
    sweep: fc.double({ min: 0.1, max: 6, noNaN: true }),
  }),
  // Not one that runs back over itself: it meets an edge twice in one place, which is told once.
  fc
    .record({ kind: fc.constant('cubic' as const), from: place, c1: place, c2: place, to: place })
    .filter(({ from, c1, c2, to }) => Math.abs(turn(from, c1, c2)) + Math.abs(turn(from, c2, to)) > 0.1),
);

describe('the stretches of a segment within a box', () => {
  it('are those whose points lie in it', () => {
    fc.assert(
      fc.property(segment, (one) => {
        const stretches = stretchesWithin(one, box);
        for (let k = 0; k <= 60; k++) {
          const { x, y } = pointOn(one, k / 60);
          const depth = Math.min(x - box.minX, box.maxX - x, y - box.minY, box.maxY - y);
          // At the edge itself either will do.
          if (Math.abs(depth) < 1e-6) continue;
          expect(stretches.some(([from, to]) => from <= k / 60 && k / 60 <= to)).toBe(depth > 0);
        }
      }),
      { numRuns: 300 },
    );
  });

  it('are one of the whole where all of it lies in the box, none where it only touches it', () => {
    expect(stretchesWithin({ kind: 'line', from: { x: -1, y: 0 }, to: { x: 1, y: 0 } }, box)).toEqual([[0, 1]]);
    expect(stretchesWithin({ kind: 'line', from: { x: 3, y: 2 }, to: { x: 5, y: 0 } }, box)).toEqual([]);
    expect(stretchesWithin({ kind: 'arc', centre: { x: 0, y: 4 }, radius: 3, start: 0, sweep: 6 }, box)).toEqual([]);
  });
});
