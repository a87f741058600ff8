import { curveCatmullRomClosed } from 'd3-shape';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { pointOn } from '../../../geometry/shape/along.ts';
import { circle } from '../../../geometry/shape/arc.ts';
import { throughPoints } from '../../../geometry/shape/curve.ts';
import { area, bounds, contains, isSimple, pathLength } from '../../../geometry/shape/measure.ts';
import { distanceTo } from '../../../geometry/shape/nearest.ts';
import { offset } from '../../../geometry/shape/offset.ts';
import { pen, polyline, reversePath } from '../../../geometry/shape/path.ts';
import { distance, point } from '../../../geometry/shape/point.ts';
import type { Path } from '../../../geometry/shape/types.ts';

const box = (w: number, h: number) => polyline([point(0, 0), point(w, 0), point(w, h), point(0, h)], true);

/** A rectangle with rounded corners, drawn by arcs. */
const rounded = (w: number, h: number, r: number): Path =>
  pen(point(r, 0))
    .line(point(w - r, 0))
    .arc(point(w, r), r, 1)
    .line(point(w, h - r))
    .arc(point(w - r, h), r, 1)
    .line(point(r, h))
    .arc(point(0, h - r), r, 1)
    .line(point(0, r))
    .arc(point(r, 0), r, 1)
    .close();

/** A bridge-like outline: straight front, arcs, and a belly of cubics with corners that close. */
const belly: Path = pen(point(-76, 0))
  .line(point(76, 0))
  .arc(point(78, 2), 2, 1)
  .line(point(78, 24))
  .cubic(point(60, 24), point(66, 38), point(0, 38.5))
  .cubic(point(-66, 38), point(-60, 24), point(-78, 24))
  .line(point(-78, 2))
  .arc(point(-76, 0), 2, 1)
  .close();

/** What bulges into a mouth 4 wide between arcs of radius 3 about its corners: 2∫₀²(3 − √(9 − u²)) du. */
const mouth = 2 * (6 - (Math.sqrt(5) + 4.5 * Math.asin(2 / 3)));

const total = (paths: readonly Path[]) => paths.reduce((sum, p) => sum + area(p), 0);

/** Every sampled place on the result lies at the distance; every probe of the plane is on the side it should be. */
const holds = (path: Path, d: number, seed = 1) => {
  const found = offset(path, d);
  for (const p of found) {
    expect(p.closed).toBe(true);
    for (const s of p.segments)
      for (const t of [0, 0.17, 0.5, 0.83, 1])
        expect(Math.abs(distanceTo(path, pointOn(s, t)) - Math.abs(d))).toBeLessThan(1e-3);
  }
  const b = bounds(path);
  const margin = Math.max(d, 0) + 2;
  let state = seed;
  const random = () => {
    state = (state * 48271) % 2147483647;
    return state / 2147483647;
  };
  for (let i = 0; i < 60; i++) {
    const q = point(
      b.minX - margin + (b.maxX - b.minX + 2 * margin) * random(),
      b.minY - margin + (b.maxY - b.minY + 2 * margin) * random(),
    );
    const away = distanceTo(path, q);
    if (Math.abs(away - Math.abs(d)) < 2e-3) continue;
    const wanted = d > 0 ? contains(path, q) || away < d : contains(path, q) && away > -d;
    expect(found.filter((p) => contains(p, q)).length % 2 === 1).toBe(wanted);
  }
  return found;
};

describe('offset', () => {
  it('of a convex outline outwards follows Steiner: area A + Pd + πd², perimeter P + 2πd', () => {
    for (const path of [box(40, 30), circle(point(3, 4), 10), rounded(50, 20, 5), reversePath(rounded(50, 20, 5))]) {
      const [grown, ...rest] = holds(path, 2.5);
      if (!grown) throw new Error('nothing is left');
      expect(rest).toEqual([]);
      expect(Math.abs(area(grown))).toBeCloseTo(Math.abs(area(path)) + pathLength(path) * 2.5 + Math.PI * 2.5 ** 2, 6);
      expect(pathLength(grown)).toBeCloseTo(pathLength(path) + 2 * Math.PI * 2.5, 6);
      expect(Math.sign(area(grown))).toBe(Math.sign(area(path)));
    }
  });

  it('keeps lines lines and arcs arcs about the same centre', () => {
    const [grown] = offset(rounded(50, 20, 5), 1);
    expect(grown?.segments.map((s) => s.kind).sort()).toEqual([...Array(4).fill('arc'), ...Array(4).fill('line')]);
    for (const s of grown?.segments ?? []) if (s.kind === 'arc') expect(s.radius).toBeCloseTo(6, 12);
  });

  it('inwards trims corners, and draws in arcs smaller than the distance', () => {
    const [shrunk] = holds(box(40, 30), -4);
    expect(shrunk && area(shrunk)).toBeCloseTo(32 * 22, 9);
    const [drawnIn] = holds(rounded(50, 20, 5), -6);
    expect(drawnIn && area(drawnIn)).toBeCloseTo(38 * 8, 6);
    expect(drawnIn?.segments).toHaveLength(4);
    const [just] = holds(rounded(50, 20, 5), -5);
    expect(just && area(just)).toBeCloseTo(40 * 10, 6);
  });

  it('leaves nothing where nothing fits', () => {
    expect(offset(box(40, 30), -15)).toEqual([]);
    expect(offset(box(40, 30), -16)).toEqual([]);
    expect(offset(circle(point(0, 0), 10), -10)).toEqual([]);
    expect(offset(circle(point(0, 0), 10), -25)).toEqual([]);
    expect(offset(belly, -30)).toEqual([]);
  });

  it('falls in two where the waist is too narrow', () => {
    const dumbbell = polyline(
      [
        [0, 0],
        [20, 0],
        [20, 8],
        [40, 8],
        [40, 0],
        [60, 0],
        [60, 20],
        [40, 20],
        [40, 12],
        [20, 12],
        [20, 20],
        [0, 20],
      ].map(([x, y]) => point(x ?? 0, y ?? 0)),
      true,
    );
    expect(holds(dumbbell, -1)).toHaveLength(1);
    expect(holds(dumbbell, -3)).toHaveLength(2);
    expect(total(offset(dumbbell, -3))).toBeCloseTo(2 * (14 * 14 + mouth), 9);
    // The waist is exactly twice the distance: the line that is left in it bounds nothing; two half rounds of radius 2 bulge into it.
    expect(total(holds(dumbbell, -2))).toBeCloseTo(2 * (16 * 16 + 2 * (4 - Math.PI)), 6);
  });

  it('outwards closes the mouth of a pocket and leaves a hole', () => {
    const jar = polyline(
      [
        [0, 0],
        [40, 0],
        [40, 40],
        [22, 40],
        [22, 30],
        [30, 30],
        [30, 10],
        [10, 10],
        [10, 30],
        [18, 30],
        [18, 40],
        [0, 40],
      ].map(([x, y]) => point(x ?? 0, y ?? 0)),
      true,
    );
    const found = holds(jar, 3);
    expect(found).toHaveLength(2);
    const [hole] = found.filter((p) => area(p) < 0);
    expect(hole && area(hole)).toBeCloseTo(-(14 * 14 + mouth), 9);
  });

  it.each([-12, -6, -3, -0.25, 0.25, 3, 12])('a bridge-like outline at %d mm', (d) => {
    const found = holds(belly, d);
    expect(found).toHaveLength(1);
    expect(found.every(isSimple)).toBe(true);
  });

  it('takes few cubics for what it promises', () => {
    for (const d of [-3, -1, 1, 3]) {
      const cubics = offset(belly, d).flatMap((p) => p.segments.filter((s) => s.kind === 'cubic'));
      expect(cubics.length).toBeLessThanOrEqual(20);
    }
  });

  it('there and back again returns the outline, corners aside', () => {
    const back = offset(belly, 1.5).flatMap((p) => offset(p, -1.5));
    expect(total(back)).toBeCloseTo(area(belly), 1);
  });

  it('of wavy closed curves at random', () => {
    fc.assert(
      fc.property(
        fc.array(fc.double({ min: 6, max: 30, noNaN: true }), { minLength: 5, maxLength: 9 }),
        fc.double({ min: -8, max: 8, noNaN: true }).filter((d) => Math.abs(d) > 0.05),
        fc.integer({ min: 1, max: 1e6 }),
        (radii, d, seed) => {
          const points = radii.map((r, i) => {
            const a = (2 * Math.PI * i) / radii.length;
            return point(r * Math.cos(a), r * Math.sin(a));
          });
          const path = throughPoints(points, curveCatmullRomClosed, { closed: true });
          fc.pre(isSimple(path));
          holds(path, d, seed);
        },
      ),
      { seed: 20240901, numRuns: 30, endOnFailure: true },
    );
  }, 60_000);

  it('of star-shaped polygons at random', () => {
    fc.assert(
      fc.property(
        fc.array(fc.double({ min: 4, max: 30, noNaN: true }), { minLength: 3, maxLength: 12 }),
        fc.double({ min: -8, max: 8, noNaN: true }).filter((d) => Math.abs(d) > 0.05),
        fc.integer({ min: 1, max: 1e6 }),
        (radii, d, seed) => {
          const path = polyline(
            radii.map((r, i) => {
              const a = (2 * Math.PI * i) / radii.length;
              return point(r * Math.cos(a), r * Math.sin(a));
            }),
            true,
          );
          holds(path, d, seed);
        },
      ),
      { seed: 20240902, numRuns: 150, endOnFailure: true },
    );
  }, 60_000);

  it('of outlines of arcs and lines at random, full of round numbers', () => {
    fc.assert(
      fc.property(
        fc.array(
          fc.tuple(fc.integer({ min: 5, max: 30 }), fc.constantFrom(-1, 0, 1), fc.integer({ min: 0, max: 40 })),
          {
            minLength: 3,
            maxLength: 9,
          },
        ),
        fc.integer({ min: -16, max: 16 }).filter((d) => d !== 0),
        fc.integer({ min: 1, max: 1e6 }),
        (sides, half, seed) => {
          const corner = (i: number) => {
            const a = (2 * Math.PI * i) / sides.length;
            const r = sides[i % sides.length]?.[0] ?? 5;
            return point(r * Math.cos(a), r * Math.sin(a));
          };
          const drawn = sides.reduce(
            (p, [, bend, more], i) => {
              const to = corner(i + 1);
              return bend === 0 ? p.line(to) : p.arc(to, distance(p.at, to) / 2 + more, bend > 0 ? 1 : -1);
            },
            pen(corner(0)),
          );
          const path = drawn.close();
          fc.pre(isSimple(path));
          holds(path, half / 2, seed);
        },
      ),
      { seed: 20240903, numRuns: 150, endOnFailure: true },
    );
  }, 60_000);

  it('refuses open and crossing paths, and a distance that is no number', () => {
    expect(() => offset(pen(point(0, 0)).line(point(1, 0)).path(), 1)).toThrow(/open path/i);
    expect(() => offset(polyline([point(0, 0), point(4, 4), point(4, 0), point(0, 4)], true), 1)).toThrow(/crosses/);
    expect(() => offset(box(1, 1), Number.NaN)).toThrow(/finite/);
    expect(offset(belly, 0)).toEqual([belly]);
  });
});
