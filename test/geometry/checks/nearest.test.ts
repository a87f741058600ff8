import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { nearest } from '../../../geometry/checks/advice/nearest.ts';

describe('nearest', () => {
  test('the foot on a line, on a corner, and nothing where bounds exclude each other', () => {
    // The foot of the perpendicular on 3x + 4y = 25 is (3, 4).
    expect(nearest(2, [{ along: [-3, -4], limit: -25 }])?.map((d) => Number(d.toFixed(6)))).toEqual([3, 4]);
    const corner = nearest(2, [
      { along: [-1, 0], limit: -2 },
      { along: [0, -1], limit: -1 },
      { along: [1, 1], limit: 10 },
    ]);
    expect(corner?.map((d) => Number(d.toFixed(6)))).toEqual([2, 1]);
    expect(nearest(2, [{ along: [1, 1], limit: 3 }])).toEqual([0, 0]);
    expect(
      nearest(1, [
        { along: [1], limit: 1 },
        { along: [-1], limit: -2 },
      ]),
    ).toBeUndefined();
    expect(nearest(2, [{ along: [0, 0], limit: -1 }])).toBeUndefined();
  });

  test('no point of the half-spaces is nearer', () => {
    const number = fc.double({ min: -3, max: 3, noNaN: true });
    const bound = fc
      .record({
        angle: fc.double({ min: 0, max: 2 * Math.PI, noNaN: true }),
        size: fc.double({ min: 0.3, max: 3, noNaN: true }),
        limit: fc.double({ min: -2, max: 4, noNaN: true }),
      })
      .map(({ angle, size, limit }) => ({ along: [size * Math.cos(angle), size * Math.sin(angle)] as const, limit }));
    fc.assert(
      fc.property(fc.array(bound, { minLength: 1, maxLength: 5 }), fc.tuple(number, number), (bounds, other) => {
        const holds = (p: readonly number[], room: number) =>
          bounds.every(({ along, limit }) => along[0] * (p[0] ?? 0) + along[1] * (p[1] ?? 0) <= limit + room);
        const found = nearest(2, bounds);
        if (found === undefined) return;
        expect(holds(found, 1e-5)).toBe(true);
        if (holds(other, 0)) expect(Math.hypot(...found)).toBeLessThanOrEqual(Math.hypot(...other) + 1e-3);
      }),
      { seed: 4, numRuns: 500 },
    );
  });
});
