import Flatten from '@flatten-js/core';
import { Bezier } from 'bezier-js';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { pointOn, tangentOn } from '../../geometry/shape/along.ts';
import { arc } from '../../geometry/shape/arc.ts';
import { intersections } from '../../geometry/shape/intersect.ts';
import { area, bounds, contains, isSimple, lengthOf, pathLength } from '../../geometry/shape/measure.ts';
import { distanceTo, nearestOn } from '../../geometry/shape/nearest.ts';
import { offset } from '../../geometry/shape/offset.ts';
import { path, pen, segmentEnd, segmentStart } from '../../geometry/shape/path.ts';
import { distance, point } from '../../geometry/shape/point.ts';
import type { Arc, Bounds, Cubic, Line, Path, Point, Segment } from '../../geometry/shape/types.ts';

/*
 * Lines and arcs against @flatten-js/core 1.6 (a general 2D geometry library, github.com/alexbol99/flatten-js), cubics against bezier-js 6.1
 * (pomax.github.io/bezierjs), both independent of what is tested here. Random, seeded: a failure repeats.
 */
/** No shrinking: it takes minutes, and the first counterexample is as good. */
const once = { seed: 1907, endOnFailure: true };

const coordinate = fc.integer({ min: -50_000, max: 50_000 }).map((k) => k / 1000);
const spot = fc.record({ x: coordinate, y: coordinate });
const angle = fc.integer({ min: -3141, max: 3141 }).map((k) => k / 1000);
const radius = fc.integer({ min: 500, max: 60_000 }).map((k) => k / 1000);
const sweep = fc.integer({ min: 50, max: 6200 }).chain((k) => fc.constantFrom(k / 1000, -k / 1000));

const aLine: fc.Arbitrary<Line> = fc
  .record({ kind: fc.constant('line' as const), from: spot, to: spot })
  .filter((l) => distance(l.from, l.to) > 0.1);
const anArc: fc.Arbitrary<Arc> = fc.tuple(spot, radius, angle, sweep).map(([c, r, a, s]) => arc(c, r, a, s));
const aCubic: fc.Arbitrary<Cubic> = fc.record({
  kind: fc.constant('cubic' as const),
  from: spot,
  c1: spot,
  c2: spot,
  to: spot,
});

const asFlatten = (s: Line | Arc): Flatten.Segment | Flatten.Arc =>
  s.kind === 'line'
    ? new Flatten.Segment(new Flatten.Point(s.from.x, s.from.y), new Flatten.Point(s.to.x, s.to.y))
    : new Flatten.Arc(new Flatten.Point(s.centre.x, s.centre.y), s.radius, s.start, s.start + s.sweep, s.sweep > 0);

const asBezier = (c: Cubic): Bezier => new Bezier(c.from, c.c1, c.c2, c.to);

const sameBounds = (found: Bounds, box: { xmin: number; ymin: number; xmax: number; ymax: number }, digits: number) => {
  expect(found.minX).toBeCloseTo(box.xmin, digits);
  expect(found.minY).toBeCloseTo(box.ymin, digits);
  expect(found.maxX).toBeCloseTo(box.xmax, digits);
  expect(found.maxY).toBeCloseTo(box.ymax, digits);
};

const samePoints = (found: readonly Point[], wanted: readonly Point[], within: number) => {
  expect(found).toHaveLength(wanted.length);
  for (const w of wanted) expect(Math.min(...found.map((p) => distance(p, w)))).toBeLessThan(within);
};

/** Neither touches nor nearly touches: there the reference library's own tolerance (1e-6) decides. */
const clearCut = (a: Line | Arc, b: Line | Arc): boolean => {
  const ends = (s: Segment, t: Segment) =>
    [segmentStart(s), segmentEnd(s)].every((p) => nearestOn(t, p).distance > 1e-3);
  const middles = intersections(a, b).every((p) => {
    const u = tangentOn(a, nearestOn(a, p).t);
    const v = tangentOn(b, nearestOn(b, p).t);
    return Math.abs(u.x * v.y - u.y * v.x) > 1e-2;
  });
  const circles = [a, b].filter((s) => s.kind === 'arc');
  const [c, d] = circles;
  const apart =
    c && d
      ? [c.radius + d.radius, Math.abs(c.radius - d.radius)].every(
          (r) => Math.abs(distance(c.centre, d.centre) - r) > 1e-3,
        )
      : true;
  const passing = [a, b].every((s) => {
    if (s.kind !== 'line' || !c) return true;
    const u = tangentOn(s, 0);
    const off = Math.abs(u.x * (c.centre.y - s.from.y) - u.y * (c.centre.x - s.from.x));
    return Math.abs(off - c.radius) > 1e-3;
  });
  return ends(a, b) && ends(b, a) && middles && apart && passing;
};

describe('lines and arcs against @flatten-js/core', { timeout: 60_000 }, () => {
  it('lengths, bounds and ends', () => {
    fc.assert(
      fc.property(fc.oneof(aLine, anArc), (s) => {
        const reference = asFlatten(s);
        expect(lengthOf(s)).toBeCloseTo(reference.length, 8);
        sameBounds(bounds({ segments: [s], closed: false }), reference.box, 8);
        expect(distance(segmentStart(s), reference.start)).toBeLessThan(1e-9);
        expect(distance(segmentEnd(s), reference.end)).toBeLessThan(1e-9);
      }),
      { ...once, numRuns: 1000 },
    );
  });

  it('intersections of lines and arcs in every pairing', () => {
    let met = 0;
    fc.assert(
      fc.property(fc.oneof(aLine, anArc), fc.oneof(aLine, anArc), (a, b) => {
        fc.pre(clearCut(a, b));
        const wanted = asFlatten(a).intersect(asFlatten(b));
        met += wanted.length;
        samePoints(intersections(a, b), wanted, 1e-5);
      }),
      { ...once, numRuns: 2000 },
    );
    // The check is worth something only if many of them do meet.
    expect(met).toBeGreaterThan(300);
  });

  it('distances from points', () => {
    fc.assert(
      fc.property(fc.oneof(aLine, anArc), spot, (s, p) => {
        const [wanted] = new Flatten.Point(p.x, p.y).distanceTo(asFlatten(s));
        expect(nearestOn(s, p).distance).toBeCloseTo(wanted, 6);
      }),
      { ...once, numRuns: 1000 },
    );
  });

  /** A star of lines and arcs about the origin; each side bends out (+), in (−) or not at all. */
  const star = fc
    .array(fc.tuple(fc.integer({ min: 8000, max: 30_000 }), fc.constantFrom(-1, 0, 1), radius), {
      minLength: 3,
      maxLength: 10,
    })
    .map((sides): Path => {
      const corner = (i: number): Point => {
        const [r] = sides[i % sides.length] ?? [8000];
        const a = (2 * Math.PI * i) / sides.length + 0.1;
        return point((r / 1000) * Math.cos(a), (r / 1000) * Math.sin(a));
      };
      const drawn = sides.reduce(
        (p, [, bend, r], i) => {
          const to = corner(i + 1);
          return bend === 0 ? p.line(to) : p.arc(to, distance(p.at, to) / 2 + r, bend > 0 ? 1 : -1);
        },
        pen(corner(0)),
      );
      return path(drawn.path().segments, true);
    });

  it('areas, lengths, bounds and insides of closed outlines', () => {
    fc.assert(
      fc.property(star, fc.array(spot, { minLength: 5, maxLength: 5 }), (p, probes) => {
        fc.pre(isSimple(p));
        const reference = new Flatten.Polygon(
          p.segments.map((s) => {
            if (s.kind === 'cubic') throw new Error('no cubics here');
            return asFlatten(s);
          }),
        );
        expect(Math.abs(area(p))).toBeCloseTo(reference.area(), 6);
        expect(area(p)).toBeGreaterThan(0);
        expect(pathLength(p)).toBeCloseTo([...reference.faces][0].perimeter, 6);
        sameBounds(bounds(p), reference.box, 6);
        for (const q of probes)
          if (distanceTo(p, q) > 1e-3) expect(contains(p, q)).toBe(reference.contains(new Flatten.Point(q.x, q.y)));
      }),
      { ...once, numRuns: 400 },
    );
  });
});

describe('cubics against bezier-js', { timeout: 60_000 }, () => {
  it('points, lengths and bounds', () => {
    fc.assert(
      fc.property(aCubic, fc.double({ min: 0, max: 1, noNaN: true }), (c, t) => {
        const reference = asBezier(c);
        expect(distance(pointOn(c, t), reference.get(t))).toBeLessThan(1e-9);
        const box = reference.bbox();
        sameBounds(
          bounds({ segments: [c], closed: false }),
          { xmin: box.x.min, xmax: box.x.max, ymin: box.y.min, ymax: box.y.max },
          6,
        );
        // Its length is one Gauss–Legendre sum of 24 points: asked for it in 32 parts, it is rough only near a cusp.
        const parts = [...Array(32).keys()].map((k) => reference.split(k / 32, (k + 1) / 32));
        const speeds = parts.map((part) => {
          const v = part.derivative(0);
          return Math.hypot(v.x, v.y);
        });
        const cusp = Math.min(...speeds) < 0.1 * Math.max(...speeds);
        const wanted = parts.reduce((sum, part) => sum + part.length(), 0);
        expect(Math.abs(lengthOf(c) - wanted)).toBeLessThan(cusp ? 1e-3 : 1e-8);
      }),
      { ...once, numRuns: 800 },
    );
  });

  it('intersections with lines', () => {
    let met = 0;
    fc.assert(
      fc.property(aCubic, aLine, (c, l) => {
        const reference = asBezier(c);
        const wanted = reference.lineIntersects({ p1: l.from, p2: l.to }).map((t) => reference.get(t));
        const found = intersections(c, l);
        // Leave out what nearly touches, and ends that nearly rest on the other.
        const ends = [
          ...[c.from, c.to].map((p) => nearestOn(l, p).distance),
          ...[l.from, l.to].map((p) => nearestOn(c, p).distance),
        ];
        const u = tangentOn(l, 0);
        const steep = [...found, ...wanted].every((p) => {
          const v = tangentOn(c, nearestOn(c, p).t);
          return Math.abs(u.x * v.y - u.y * v.x) > 1e-2;
        });
        fc.pre(steep && Math.min(...ends) > 1e-2);
        met += wanted.length;
        samePoints(found, wanted, 1e-4);
      }),
      { ...once, numRuns: 1000 },
    );
    expect(met).toBeGreaterThan(300);
  });

  it('intersections of two cubics', () => {
    let met = 0;
    fc.assert(
      // Spread evenly: on curves smaller than its boxes bezier-js cannot tell.
      fc.property(fc.noBias(aCubic), fc.noBias(aCubic), (a, b) => {
        const found = intersections(a, b);
        for (const p of found) expect(Math.max(nearestOn(a, p).distance, nearestOn(b, p).distance)).toBeLessThan(1e-8);
        // It reports each place several times over, as pairs of parts whose boxes, 1e-3 wide, overlap.
        const wanted = asBezier(a)
          .intersects(asBezier(b), 1e-3)
          .map((pair) => pointOn(a, Number(String(pair).split('/')[0])));
        const steep = [...found, ...wanted].every((p) => {
          const u = tangentOn(a, nearestOn(a, p).t);
          const v = tangentOn(b, nearestOn(b, p).t);
          return Math.abs(u.x * v.y - u.y * v.x) > 0.1;
        });
        const ends = [
          ...[a.from, a.to].map((p) => nearestOn(b, p).distance),
          ...[b.from, b.to].map((p) => nearestOn(a, p).distance),
        ];
        fc.pre(steep && Math.min(...ends) > 0.1);
        met += found.length;
        for (const p of wanted) expect(Math.min(...found.map((q) => distance(p, q)))).toBeLessThan(0.05);
        for (const q of found) expect(Math.min(...wanted.map((p) => distance(p, q)))).toBeLessThan(0.05);
      }),
      { ...once, numRuns: 400 },
    );
    expect(met).toBeGreaterThan(100);
  });

  it('the outline beside a belly runs through its offset points, outwards and inwards', () => {
    const hump: Cubic = {
      kind: 'cubic',
      from: point(60, 24),
      c1: point(50, 36),
      c2: point(-50, 36),
      to: point(-60, 24),
    };
    const outline = pen(point(-60, 0)).line(point(60, 0)).line(hump.from).cubic(hump.c1, hump.c2, hump.to).close();
    for (const d of [-5, -1, 0.5, 4]) {
      const found = offset(outline, d);
      for (const t of [0.2, 0.35, 0.5, 0.65, 0.8]) {
        // Its normal is the tangent turned from +x towards +y; this outline turns that way too, so that is inside.
        const beside = asBezier(hump).offset(t, -d);
        if (Array.isArray(beside)) throw new Error('a point was asked for');
        expect(Math.min(...found.map((p) => distanceTo(p, beside)))).toBeLessThan(1e-3);
      }
    }
  });
});
