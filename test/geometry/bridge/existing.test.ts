import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { insideOf, scarOutline, scarProblems } from '../../../geometry/bridge/cover.ts';
import { existing, fromBrace, isKept } from '../../../geometry/bridge/existing.ts';
import { footprints } from '../../../geometry/bridge/footprints/index.ts';
import { apartSquareTo, capToBrace, plateCap } from '../../../geometry/bridge/plate-cap.ts';
import { build } from '../../../geometry/build.ts';
import { setAt } from '../../../geometry/fields.ts';
import type { Job } from '../../../geometry/job.ts';
import { bounds } from '../../../geometry/shape/index.ts';
import { pointOn } from '../../../geometry/shape/measure.ts';
import { built, workedExample } from '../../solved.ts';
import { oldTop } from '../../templates/full-job.ts';

const { job, design } = built(oldTop());

describe('what is there already', () => {
  const there = existing(job, design);

  it('tells holes that are kept from those that are plugged, with or without being moved', () => {
    expect(there.kept.map(({ hole }) => hole.id)).toEqual(job.top.holes.filter(isKept).map(({ id }) => id));
    expect(there.plugged.map(({ id }) => id)).toEqual(['astray', 'shifted']);
    expect(there.registerApart).toBe(116);
    expect(there.risesUnder.map(({ id }) => id)).toEqual(['belly', 'dip']);
  });

  it('measures the wood round a hole by hand: to the tip, to the front edge, to the slot and to a pin', () => {
    const wall = (across: number, fromNut: number) => {
      const moved = built(setAt(setAt(oldTop(), 'top.holes.bolt.across', across), 'top.holes.bolt.fromNut', fromNut));
      return existing(moved.job, moved.design).kept.find(({ hole }) => hole.id === 'bolt')?.wall;
    };
    const front = design.saddleLine.x - 9.6;
    // A bolt hole 6 wide; the tips at 76, the saddle line's slant the example's.
    expect(wall(-70, front + 12)).toBeCloseTo(76 - 70 - 3, 9);
    expect(wall(-60, front + 4.5)).toBeCloseTo(4.5 - 3, 9);
    const { x, slant } = design.saddleLine;
    expect(wall(10, x + slant * 10 - 5)).toBeCloseTo(5 / Math.hypot(1, slant) - 1.6 - 3, 9);
    const [bass] = design.strings;
    expect(wall((bass?.pin.x ?? 0) - 7, bass?.pin.y ?? 0)).toBeCloseTo(7 - 2.5 - 3, 9);
    expect(wall(-90, front + 12)).toBeLessThan(0);
  });

  it('pairs each kept pin hole with the pin nearest to it, and none where strings are tied', () => {
    expect(there.meetings.map(({ hole, string }) => hole.id === `old-${string.id}`)).toEqual(Array(6).fill(true));
    for (const { hole, string, miss } of there.meetings)
      expect(miss).toBeCloseTo(Math.hypot(hole.across - string.pin.x, hole.fromNut - string.pin.y), 12);
    const tied = built(setAt(setAt(oldTop(), 'pins.hold', 'behind'), 'pins.hole', 3));
    expect(existing(tied.job, tied.design).meetings).toEqual([]);
  });

  it('measures from a brace’s edge, beyond its ends from its end', () => {
    const brace = { id: 'a', name: '', across: 0, fromNut: 600, acrossTo: 30, fromNutTo: 640, width: 8 };
    // Along (3, 4)/5: a point 10 aside of the middle, and one 10 beyond the end.
    expect(fromBrace(brace, { x: 15 + 8, y: 620 - 6 })).toBeCloseTo(6, 9);
    expect(fromBrace(brace, { x: 36, y: 648 })).toBeCloseTo(6, 9);
    expect(fromBrace(brace, { x: 15, y: 620 })).toBeCloseTo(-4, 9);
  });
});

describe('the plate cap', () => {
  const cap = plateCap(job, design);
  if (cap === undefined) throw new Error('no cap');

  it('is as long and as deep as asked, eased by 2 mm, with the pin row in its middle', () => {
    const { minX, maxX, minY, maxY } = bounds(cap.outline);
    expect([maxX - minX, maxY - minY].map((n) => Number(n.toFixed(9)))).toEqual([85, 24]);
    const ys = design.strings.map(({ pin }) => pin.y);
    expect((minY + maxY) / 2).toBeCloseTo((Math.min(...ys) + Math.max(...ys)) / 2, 9);
    expect(cap.outline.segments.filter((s) => s.kind === 'arc' && s.radius === 2)).toHaveLength(4);
    expect(cap.holes.map(({ at }) => at)).toEqual(design.strings.map(({ pin }) => pin));
    expect(plateCap(workedExample(), design)).toBeUndefined();
  });

  it('finds how far holes stand apart square to the grain, by hand', () => {
    const square = [
      { x: 0, y: 0 },
      { x: 10, y: 2 },
      { x: 20, y: 5 },
    ];
    expect(apartSquareTo({ x: 1, y: 0 }, square)).toBe(2);
    expect(apartSquareTo({ x: 0, y: 1 }, square)).toBe(10);
    expect(apartSquareTo({ x: Math.SQRT1_2, y: Math.SQRT1_2 }, square)).toBeCloseTo(7 * Math.SQRT1_2, 12);
  });

  it('staggered by what it says, has one hole on each grain line', () => {
    // A rule with each hole moved on along the guitar by what is missing, one after the other.
    const staggered = cap.holes.map(({ at }, k) => ({ x: at.x, y: at.y - k * cap.stagger }));
    expect(apartSquareTo({ x: 1, y: 0 }, staggered)).toBeCloseTo(5 + 1, 9);
  });

  it('measures to a brace from every side as a fine search does', () => {
    const place = fc.record({
      across: fc.double({ min: -80, max: 80, noNaN: true }),
      fromNut: fc.double({ min: 620, max: 690, noNaN: true }),
      acrossTo: fc.double({ min: -80, max: 80, noNaN: true }),
      fromNutTo: fc.double({ min: 620, max: 690, noNaN: true }),
    });
    fc.assert(
      fc.property(place, (at) => {
        const brace = { ...at, id: 'a', name: '', width: 6 };
        const line = {
          kind: 'line' as const,
          from: { x: at.across, y: at.fromNut },
          to: { x: at.acrossTo, y: at.fromNutTo },
        };
        const away = Array.from({ length: 401 }, (_, k) => -insideOf(cap.outline)(pointOn(line, k / 400)));
        const found = capToBrace(cap, brace);
        expect(found).toBeLessThanOrEqual(Math.min(...away) - 3 + 1e-6);
        expect(found).toBeGreaterThan(Math.min(...away) - 3 - 0.5);
      }),
      { seed: 7, numRuns: 60 },
    );
  });
});

describe('a scar', () => {
  const withScar = (values: Readonly<Record<string, unknown>>): Job =>
    Object.entries(values).reduce<Job>((changed, [key, value]) => setAt(changed, `scar.${key}`, value), oldTop());

  it.each([
    [{ bellyWidth: 160, length: 150 }, 'scar.bellyWidth', '150.0 mm'],
    [{ wingDepth: 37 }, 'scar.wingDepth', 'rectangular'],
    [{ wingDepth: 10, bellyWidth: 40 }, 'scar.bellyWidth', '54.0 mm'],
  ])('whose numbers make no outline is a problem that names the way out: %j', (values, path, way) => {
    for (const outline of ['belly', 'bellyBefore']) {
      const result = build(withScar({ ...values, outline }));
      if (result.ok) throw new Error('it can be built');
      expect(result.problems).toEqual([expect.objectContaining({ path, says: expect.stringContaining(way) })]);
    }
    expect(build(withScar({ ...values, outline: 'rectangle' })).ok).toBe(true);
    expect(build(withScar({ ...values, outline: 'none' })).ok).toBe(true);
  });

  it('makes an outline exactly where a bridge of its numbers would', () => {
    const numbers = fc.record({
      outline: fc.constantFrom('belly' as const, 'bellyBefore' as const),
      length: fc.double({ min: 60, max: 260, noNaN: true }),
      depth: fc.double({ min: 12, max: 90, noNaN: true }),
      wingDepth: fc.double({ min: 8, max: 80, noNaN: true }),
      bellyWidth: fc.double({ min: 20, max: 260, noNaN: true }),
    });
    fc.assert(
      fc.property(numbers, (scar) => {
        const bridge = { ...job.bridge, ...scar, footprint: scar.outline };
        const own = { scar: { ...job.scar, ...scar }, bridge: job.bridge };
        const isDrawn = footprints[scar.outline].problems(bridge, (mm) => `${mm}`).length === 0;
        expect(scarProblems(own, String).length === 0).toBe(isDrawn);
        expect(scarOutline(own) !== undefined).toBe(isDrawn);
      }),
      { seed: 11, numRuns: 300 },
    );
  });

  it('of a rectangle keeps its square corners whatever the new bridge’s ends are', () => {
    const eased = withScar({ outline: 'rectangle' });
    const outline = scarOutline({ ...eased, bridge: { ...eased.bridge, ends: 'eased' } });
    expect(outline?.segments.map(({ kind }) => kind)).toEqual(['line', 'line', 'line', 'line']);
  });
});
