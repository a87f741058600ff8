import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { free } from '../../../geometry/bridge/footprints/free.ts';
import { area, bounds, isSimple, type Path, polyline, segmentStart } from '../../../geometry/shape/index.ts';
import { distanceTo } from '../../../geometry/shape/nearest.ts';
import { type Bridge, bridges, outlineOf, pointsOf, problemsOf, trebleHalf } from '../../footprint-bridges.ts';
import { seeded } from '../../seeded.ts';

const based: Bridge = { ...(bridges['free, mirrored'] as Bridge), mirrored: 'no' };

/** Every point lies on the outline, all of them moved along alike. */
const runsThrough = (bridge: Bridge, outline: Path) => {
  const { depth } = free.size?.(bridge) ?? { depth: Number.NaN };
  const starts = outline.segments.map(segmentStart);
  const [first] = bridge.points;
  const begun = starts.find(({ x }) => Math.abs(x - (first?.across ?? 0)) < 1e-9);
  if (!first || !begun) throw new Error('the first point is not on the outline');
  const moved = begun.y - first.along;
  for (const { across, along } of bridge.points)
    expect(distanceTo(outline, { x: across, y: along + moved })).toBeLessThan(1e-9);
  expect(bounds(outline).minY).toBeCloseTo(0, 9);
  expect(bounds(outline).maxY).toBeCloseTo(depth, 9);
};

describe('a free outline', () => {
  it.each([3, 4, 7, 23, 40])('runs through all of %d points', (count) => {
    const { even } = seeded(count);
    const points = pointsOf(
      Array.from({ length: count }, (_, k) => {
        const angle = (2 * Math.PI * k) / count;
        const r = even(0.8, 1);
        return [75 * r * Math.cos(angle), 20 + 19 * r * Math.sin(angle), even(0, 1) < 0.2 ? 'corner' : 'smooth'];
      }),
    );
    const bridge = { ...based, points };
    expect(problemsOf(bridge)).toEqual([]);
    const outline = outlineOf(bridge);
    expect(outline.segments).toHaveLength(count);
    expect(isSimple(outline)).toBe(true);
    runsThrough(bridge, outline);
  });

  it('turns from +x towards +y whichever way its points run', () => {
    const there = { ...based, points: bridges['free, each side its own']?.points ?? [] };
    const back = { ...there, points: there.points.toReversed() };
    expect(area(outlineOf(there))).toBeGreaterThan(1000);
    expect(area(outlineOf(back))).toBeCloseTo(area(outlineOf(there)), 9);
  });

  it('is the polygon itself where every point is a corner', () => {
    const corners = [
      [-70, 2],
      [10, 0],
      [68, 4],
      [60, 30],
      [-5, 41],
      [-66, 28],
    ] as const;
    const outline = outlineOf({ ...based, points: pointsOf(corners.map(([x, y]) => [x, y, 'corner'])) });
    expect(outline).toEqual(
      polyline(
        corners.map(([x, y]) => ({ x, y })),
        true,
      ),
    );
    expect(outline.segments.every(({ kind }) => kind === 'line')).toBe(true);
  });

  it('takes a repeated point once, as a corner if either is one', () => {
    const points = bridges['free, each side its own']?.points ?? [];
    const doubled = points.flatMap((p) => [p, { ...p, id: `${p.id}again` }]);
    const clean = { ...based, points };
    for (const twice of [
      doubled,
      [...points, ...points.slice(0, 1)],
      doubled.map((p, k) => (k % 2 ? { ...p, turn: 'smooth' as const } : p)),
    ]) {
      const bridge = { ...based, points: twice };
      expect(problemsOf(bridge)).toEqual([]);
      expect(outlineOf(bridge)).toEqual(outlineOf(clean));
    }
    const corners = points.map((p) => ({ ...p, turn: 'corner' as const }));
    expect(outlineOf({ ...based, points: corners.flatMap((p) => [p, p]) })).toEqual(
      outlineOf({ ...based, points: corners }),
    );
    // Apart by less than a caliper, or any curve, tells.
    const nearly = points.flatMap((p) => [p, { ...p, along: p.along + 1e-10 }]);
    expect(outlineOf({ ...based, points: nearly }).segments).toHaveLength(points.length);
  });

  it('with one corner only has that corner, and runs smoothly everywhere else', () => {
    const tear = {
      ...based,
      points: pointsOf([
        [0, 0, 'corner'],
        [60, 12],
        [40, 34],
        [-40, 34],
        [-60, 12],
      ]),
    };
    expect(problemsOf(tear)).toEqual([]);
    const outline = outlineOf(tear);
    expect(outline.segments).toHaveLength(5);
    expect(isSimple(outline)).toBe(true);
    // Begun at the corner, wherever that stands in the list.
    const turned = { ...tear, points: [...tear.points.slice(2), ...tear.points.slice(0, 2)] };
    expect(outlineOf(turned)).toEqual(outline);
  });

  it('mirrored, shares the points on the centre line', () => {
    const outline = outlineOf({ ...based, mirrored: 'yes', points: trebleHalf });
    // Seven points, two of them on the centre line: 2 + 2 · 5.
    expect(outline.segments).toHaveLength(12);
    const off = outlineOf({ ...based, mirrored: 'yes', points: trebleHalf.slice(1, -1) });
    expect(off.segments).toHaveLength(10);
  });

  it('mirrored, lies as far out on both sides', () => {
    const box = bounds(outlineOf({ ...based, mirrored: 'yes', points: trebleHalf }));
    expect(box.minX).toBeCloseTo(-box.maxX, 9);
  });

  it('knows its front edge on the centre line, where that is not its foremost', () => {
    const horned = {
      ...based,
      mirrored: 'yes' as const,
      points: pointsOf([
        [0, 3, 'corner'],
        [60, -4, 'corner'],
        [60, 30, 'corner'],
        [0, 36, 'corner'],
      ]),
    };
    expect(free.frontAtCentre?.(horned)).toBeCloseTo(7, 9);
    expect(free.size?.(horned)).toEqual({ length: 120, depth: 40 });
    const aside = {
      ...based,
      points: pointsOf([
        [10, 0, 'corner'],
        [60, 0, 'corner'],
        [60, 30, 'corner'],
      ]),
    };
    expect(free.frontAtCentre?.(aside)).toBe(0);
    expect(free.size?.(aside)?.length).toBe(120);
  });

  describe('is refused, in words,', () => {
    const says = (changes: Partial<Bridge>) =>
      problemsOf({ ...based, ...changes }).map(({ path, says: s }) => `${path}: ${s}`);

    it('for too few different points', () => {
      const two = pointsOf([
        [0, 0],
        [60, 20],
        [0, 0],
        [60, 20, 'corner'],
        [60, 20],
      ]);
      expect(says({ points: two.slice(0, 3) })[0]).toMatch(/bridge\.points: .*at least 3 different points; it has 2\./);
      expect(says({ points: [] })[0]).toMatch(/it has 0/);
      expect(free.size?.({ ...based, points: two.slice(0, 2) })).toBeUndefined();
      // Mirrored, two points off the centre line are four.
      expect(says({ points: two.slice(0, 2), mirrored: 'yes' })).toEqual([]);
      expect(says({ points: two.slice(1, 2), mirrored: 'yes' })[0]).toMatch(/it has 2/);
    });

    it('where it crosses itself, and says where', () => {
      const bow = pointsOf([
        [-60, 0, 'corner'],
        [60, 30, 'corner'],
        [60, 0, 'corner'],
        [-60, 30, 'corner'],
      ]);
      expect(says({ points: bow })[0]).toMatch(/bridge\.points: .*on the centre line, 15 mm behind the front/);
      const aside = bow.map((p) => ({ ...p, across: p.across - 20 }));
      expect(says({ points: aside })[0]).toMatch(/20 mm from the centre line on the bass side/);
    });

    it('where it touches itself, or runs there and back', () => {
      const eight = pointsOf([
        [-60, 0, 'corner'],
        [0, 15, 'corner'],
        [60, 0, 'corner'],
        [60, 30, 'corner'],
        [0, 15, 'corner'],
        [-60, 30, 'corner'],
      ]);
      expect(says({ points: eight })[0]).toMatch(/touches itself/);
      const line = pointsOf([
        [-60, 10, 'corner'],
        [0, 15, 'corner'],
        [60, 20, 'corner'],
      ]);
      expect(says({ points: line })[0]).toMatch(/itself/);
      expect(
        says({
          points: pointsOf([
            [-60, 10],
            [0, 15],
            [60, 20],
          ]),
        })[0],
      ).toMatch(/itself/);
    });

    it('where a mirrored half comes to the centre line on its way', () => {
      const pinched = pointsOf([
        [0, 0],
        [60, 2],
        [0, 18],
        [60, 36],
        [0, 40],
      ]);
      expect(says({ points: pinched, mirrored: 'yes' })[0]).toMatch(/those on the centre line first and last/);
    });

    it('where a mirrored half has a point on the bass side', () => {
      const bass = pointsOf([
        [0, 0],
        [-12, 4],
        [60, 20],
        [0, 40],
      ]);
      expect(says({ points: bass, mirrored: 'yes' })[0]).toMatch(
        /bridge\.points\.p1\.across: A point 12 mm.*0 or more/,
      );
      expect(says({ points: bass.map((p) => ({ ...p, across: Math.abs(p.across) })), mirrored: 'yes' })).toEqual([]);
    });

    it('where it encloses next to nothing', () => {
      expect(
        says({
          points: pointsOf([
            [0, 0],
            [0.5, 0],
            [0.2, 0.5],
          ]),
        })[0],
      ).toMatch(/less than 1 mm²/);
    });
  });

  it('through any points at all is drawn simple, or refused: nothing is thrown', () => {
    const coordinate = fc.oneof(fc.integer({ min: -2, max: 2 }), fc.double({ min: -60, max: 60, noNaN: true }));
    const point = fc.tuple(coordinate, coordinate, fc.constantFrom('smooth' as const, 'corner' as const));
    let drawn = 0;
    fc.assert(
      fc.property(fc.array(point, { maxLength: 9 }), fc.constantFrom('yes', 'no'), (given, mirrored) => {
        const bridge: Bridge = { ...based, mirrored, points: pointsOf(given) };
        free.size?.(bridge);
        if (problemsOf(bridge).length > 0) return;
        drawn += 1;
        const outline = outlineOf(bridge);
        expect(isSimple(outline)).toBe(true);
        expect(area(outline)).toBeGreaterThan(1 - 1e-9);
        const { depth } = free.size?.(bridge) ?? { depth: Number.NaN };
        const front = free.frontAtCentre?.(bridge) ?? Number.NaN;
        expect(front).toBeGreaterThanOrEqual(-1e-9);
        expect(front).toBeLessThanOrEqual(depth);
      }),
      { numRuns: 800, seed: 1974, endOnFailure: true },
    );
    expect(drawn).toBeGreaterThan(50);
  });
});
