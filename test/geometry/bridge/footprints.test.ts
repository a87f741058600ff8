import { describe, expect, it } from 'vitest';
import { belly } from '../../../geometry/bridge/footprints/belly.ts';
import { footprints } from '../../../geometry/bridge/footprints/index.ts';
import { rectangle } from '../../../geometry/bridge/footprints/rectangle.ts';
import { area, bounds, isSimple, tangentOn } from '../../../geometry/shape/index.ts';
import { workedExample } from '../../solved.ts';

const { bridge } = workedExample();

describe('every footprint', () => {
  it.each(Object.values(footprints))('$style measures what the caliper was told', (footprint) => {
    const outline = footprint.outline(bridge);
    const box = bounds(outline);
    expect(box.maxX - box.minX).toBeCloseTo(bridge.length, 9);
    expect(box.maxY - box.minY).toBeCloseTo(bridge.depth, 9);
    expect(box.minY).toBeCloseTo(0, 9);
    expect(outline.closed).toBe(true);
    expect(isSimple(outline)).toBe(true);
    expect(area(outline)).toBeGreaterThan(0);
  });
});

describe('rectangle', () => {
  it('covers its length times its depth', () => {
    expect(area(rectangle.outline(bridge))).toBeCloseTo(bridge.length * bridge.depth, 9);
  });
});

describe('belly', () => {
  it('runs without a corner from wing to wing along its rear edge', () => {
    const arcs = belly.outline(bridge).segments.filter((s) => s.kind === 'arc');
    expect(arcs).toHaveLength(4);
    arcs.slice(1).forEach((arc, k) => {
      const before = arcs[k];
      if (!before) throw new Error('no arc');
      const [a, b] = [tangentOn(before, 1), tangentOn(arc, 0)];
      expect(a.x).toBeCloseTo(b.x, 9);
      expect(a.y).toBeCloseTo(b.y, 9);
    });
    // Level where it leaves the wing, and level again at the rearmost point.
    const first = arcs[0];
    const third = arcs[2];
    if (!first || !third) throw new Error('no arc');
    expect(tangentOn(first, 0).y).toBeCloseTo(0, 9);
    expect(tangentOn(third, 0).y).toBeCloseTo(0, 9);
  });

  // The two halves of an S of equal arcs swap places when turned by half a turn: what the belly adds is half its box.
  it('adds half of its width times its depth to the wings’ rectangle', () => {
    const added = area(belly.outline(bridge)) - bridge.length * bridge.wingDepth;
    expect(added).toBeCloseTo((bridge.bellyWidth * (bridge.depth - bridge.wingDepth)) / 2, 6);
  });
});
