import Flatten from '@flatten-js/core';
import { describe, expect, it } from 'vitest';
import { area } from '../../geometry/shape/measure.ts';
import { moments } from '../../geometry/shape/moments.ts';
import { distanceTo } from '../../geometry/shape/nearest.ts';
import { segmentStart } from '../../geometry/shape/path.ts';
import type { Path, Point } from '../../geometry/shape/types.ts';
import { centripetal } from '../centripetal.ts';
import { type Bridge, bridges, outlineOf, pointsOf } from '../footprint-bridges.ts';

/** How far an S of two arcs has swung out of `deep` at `x` from where it stands farthest, over a half width `half`: by the circles' equations alone. */
const swung = (half: number, deep: number, x: number): number => {
  const r = (half * half + deep * deep) / (4 * deep);
  if (x >= half) return 0;
  return x <= half / 2 ? deep - (r - Math.sqrt(r * r - x * x)) : r - Math.sqrt(r * r - (half - x) ** 2);
};

/** How deep a footprint is at x from the centre line, from its caliper numbers alone, mm. */
const depthAt = (b: Bridge, x: number): number => {
  const corner = (r: number) => {
    const into = x - (b.length / 2 - r);
    return into <= 0 ? b.depth : b.depth - 2 * (r - Math.sqrt(r * r - into * into));
  };
  switch (b.footprint) {
    case 'belly':
    case 'bellyBefore':
      return b.wingDepth + swung(b.bellyWidth / 2, b.depth - b.wingDepth, x);
    case 'waisted':
      return b.depth - 2 * swung(b.waistWidth / 2, (b.depth - b.waistDepth) / 2, x);
    case 'rectangle':
      return b.ends === 'square' ? b.depth : corner(b.ends === 'eased' ? b.cornerRadius : b.depth / 2);
    default:
      return b.depth;
  }
};

/** Twice the integral over the treble half by the midpoint rule, x bunched towards the tip where a round end falls steeply. */
const integrated = (b: Bridge): number => {
  const steps = 200_000;
  const half = b.length / 2;
  let sum = 0;
  for (let k = 0; k < steps; k += 1) {
    const angle = ((k + 0.5) / steps) * (Math.PI / 2);
    sum += depthAt(b, half * Math.sin(angle)) * half * Math.cos(angle);
  }
  return 2 * sum * (Math.PI / 2 / steps);
};

/** The outline for @flatten-js/core 1.6, a general 2D geometry library, which has no cubics: those as many short lines. */
const asFlatten = (outline: Path, points?: readonly Point[]): Flatten.Polygon =>
  new Flatten.Polygon(
    points
      ? points.map((p) => new Flatten.Point(p.x, p.y))
      : outline.segments.map((s) => {
          if (s.kind === 'cubic') throw new Error('no cubics here');
          return s.kind === 'line'
            ? new Flatten.Segment(new Flatten.Point(s.from.x, s.from.y), new Flatten.Point(s.to.x, s.to.y))
            : new Flatten.Arc(
                new Flatten.Point(s.centre.x, s.centre.y),
                s.radius,
                s.start,
                s.start + s.sweep,
                s.sweep > 0,
              );
        }),
  );

const byNumbers = Object.entries(bridges).filter(([, { footprint }]) => footprint !== 'free');

describe('area', () => {
  it.each(byNumbers)('%s: as @flatten-js/core has it, and as its caliper numbers integrate', (_, bridge) => {
    const outline = outlineOf(bridge);
    expect(area(outline)).toBeCloseTo(asFlatten(outline).area(), 6);
    expect(Math.abs(area(outline) - integrated(bridge))).toBeLessThan(1e-5);
    expect(moments(outline).area).toBeCloseTo(area(outline), 7);
  });
});

/** Points all smooth and closed, each piece by the published formula; as the outline is drawn, from its foremost point. */
const published = (points: readonly Point[], steps: number): readonly Point[] => {
  const at = (k: number) => points[(k + points.length) % points.length] as Point;
  return points.flatMap((_, k) =>
    Array.from({ length: steps }, (__, n) => centripetal(at(k - 1), at(k), at(k + 1), at(k + 2), n / steps)),
  );
};

const smooth = bridges['free, smooth'] as Bridge;

/** A smooth mirrored outline's points all the way round, told out by hand: first and last lie on the centre line. */
const allRound = (bridge: Bridge): readonly Point[] => {
  const half = bridge.points.map(({ across, along }) => ({ x: across, y: along }));
  const image = half.slice(1, -1).map((p) => ({ x: -p.x, y: p.y }));
  return [...half, ...image.reverse()];
};

describe('free outlines', () => {
  const own: Bridge = {
    ...smooth,
    mirrored: 'no',
    points: pointsOf([
      [-72, 6],
      [-30, 0],
      [40, 2],
      [74, 12],
      [50, 29],
      [12, 41],
      [-40, 33],
    ]),
  };

  it.each([
    ['mirrored', smooth, allRound(smooth)],
    ['each side its own', own, own.points.map(({ across, along }) => ({ x: across, y: along }))],
  ])('%s: the centripetal Catmull–Rom curve, as its authors give it', (_, bridge, points) => {
    const outline = outlineOf(bridge);
    const curve = published(points, 2000);
    const foremost = Math.min(...curve.map((p) => p.y));
    for (const p of published(points, 17))
      expect(distanceTo(outline, { x: p.x, y: p.y - foremost })).toBeLessThan(1e-5);
    const wanted = asFlatten(outline, curve).area();
    expect(wanted).toBeGreaterThan(1000);
    expect(Math.abs(area(outline) - wanted)).toBeLessThan(1e-3);
    expect(moments(outline).area).toBeCloseTo(area(outline), 7);
  });

  it('of corners only: as @flatten-js/core has the polygon', () => {
    const cornered = { ...own, points: own.points.map((p) => ({ ...p, turn: 'corner' as const })) };
    const outline = outlineOf(cornered);
    expect(area(outline)).toBeCloseTo(asFlatten(outline, outline.segments.map(segmentStart)).area(), 9);
  });
});
