import { EndType, inflatePathsD, JoinType, type PathD } from 'clipper2-ts';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { pointOn } from '../../geometry/shape/along.ts';
import { area, isSimple, lengthOf } from '../../geometry/shape/measure.ts';
import { distanceTo } from '../../geometry/shape/nearest.ts';
import { offset } from '../../geometry/shape/offset.ts';
import type { Path, Point, Segment } from '../../geometry/shape/types.ts';
import { type Bridge, bridges, outlineOf, problemsOf } from '../footprint-bridges.ts';

/*
 * Every footprint's offsets against clipper2-ts 2.0 (github.com/countertype/clipper2-ts, after Angus Johnson's Clipper2), a general library for clipping
 * and offsetting polygons: it is given the outline as many short lines, and rounds corners that open with arcs of many short lines.
 */

/** How near the two have to be, mm. */
const within = 0.01;

/** Lines of at most this length along curves: at 5 mm radius they leave a curve by 0.0016 mm. */
const shortest = 0.25;

const steps = (s: Segment): number => (s.kind === 'line' ? 1 : Math.max(8, Math.ceil(lengthOf(s) / shortest)));

const dense = (path: Path): PathD =>
  path.segments.flatMap((s) => {
    const n = steps(s);
    return Array.from({ length: n }, (_, k) => ({ ...pointOn(s, k / n), z: 0 }));
  });

const reference = (path: Path, by: number): readonly PathD[] =>
  inflatePathsD([dense(path)], by, JoinType.Round, EndType.Polygon, 2, 5, 5e-4);

const toLine = (a: Point, b: Point, p: Point): number => {
  const [dx, dy] = [b.x - a.x, b.y - a.y];
  const size = dx * dx + dy * dy;
  const t = size > 0 ? Math.max(0, Math.min(1, ((p.x - a.x) * dx + (p.y - a.y) * dy) / size)) : 0;
  return Math.hypot(a.x + t * dx - p.x, a.y + t * dy - p.y);
};

const toPolygons = (polygons: readonly PathD[], p: Point): number =>
  Math.min(
    ...polygons.map((polygon) =>
      polygon.reduce(
        (least, b, k) => Math.min(least, toLine(polygon.at(k - 1) as Point, b, p)),
        Number.POSITIVE_INFINITY,
      ),
    ),
  );

const polygonArea = (polygon: PathD): number =>
  polygon.reduce((sum, b, k) => {
    const a = polygon.at(k - 1) as Point;
    return sum + (a.x * b.y - b.x * a.y) / 2;
  }, 0);

/** Both offsets of an outline, compared both ways; the largest distance between them. */
const compare = (outline: Path, by: number): number => {
  const ours = offset(outline, by);
  const theirs = reference(outline, by);
  expect(ours).toHaveLength(theirs.length);
  if (ours.length === 0) return 0;
  for (const path of ours) expect(isSimple(path)).toBe(true);
  const sum = (values: readonly number[]) => values.reduce((total, value) => total + value, 0);
  const perimeter = sum(ours.flatMap(({ segments }) => segments.map(lengthOf)));
  expect(Math.abs(sum(ours.map(area)) - sum(theirs.map(polygonArea)))).toBeLessThan(perimeter * 0.002);
  const back = ours.flatMap(({ segments }) =>
    segments.flatMap((s) => [0, 0.2, 0.4, 0.6, 0.8].map((t) => toPolygons(theirs, pointOn(s, t)))),
  );
  const there = theirs.flat().map((p) => Math.min(...ours.map((path) => distanceTo(path, p))));
  return Math.max(...there, ...back);
};

const distances = [-5, -2, -0.5, 0.5, 2, 5];

describe('offsets against clipper2-ts', { timeout: 60_000 }, () => {
  for (const [name, bridge] of Object.entries(bridges))
    it(`${name}: within ${within} mm, inwards and outwards`, () => {
      for (const by of distances) expect(compare(outlineOf(bridge), by), `${by} mm`).toBeLessThan(within);
    });

  it('of footprints of other sizes', () => {
    const some = fc.record({
      which: fc.constantFrom(...Object.values(bridges)),
      length: fc.integer({ min: 120, max: 200 }),
      depth: fc.integer({ min: 30, max: 50 }),
      wingDepth: fc.integer({ min: 18, max: 29 }),
      bellyWidth: fc.integer({ min: 70, max: 120 }),
      waistDepth: fc.integer({ min: 15, max: 29 }),
      waistWidth: fc.integer({ min: 40, max: 120 }),
      cornerRadius: fc.integer({ min: 1, max: 15 }),
      by: fc.integer({ min: -50, max: 50 }).filter((by) => Math.abs(by) >= 5),
    });
    fc.assert(
      fc.property(some, ({ which, by, ...numbers }) => {
        const bridge: Bridge = { ...which, ...numbers };
        fc.pre(problemsOf(bridge).length === 0);
        expect(compare(outlineOf(bridge), by / 10)).toBeLessThan(within);
      }),
      { numRuns: 40, seed: 2026, endOnFailure: true },
    );
  });
});
