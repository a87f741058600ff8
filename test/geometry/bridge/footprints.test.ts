import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { sayLength } from '../../../geometry/bridge/footprints/say-length.ts';
import { footprintOutline } from '../../../geometry/bridge/outline.ts';
import { build } from '../../../geometry/build.ts';
import { fieldAt, setAt } from '../../../geometry/fields.ts';
import type { Job } from '../../../geometry/job.ts';
import {
  area,
  bounds,
  isSimple,
  mirrorX,
  type Path,
  pathIntersections,
  polyline,
  segmentEnd,
  segmentStart,
  tangentOn,
} from '../../../geometry/shape/index.ts';
import { distanceTo } from '../../../geometry/shape/nearest.ts';
import { parseQuantity, type ShowUnits } from '../../../geometry/units.ts';
import { type Bridge, bridges, footprintOf, outlineOf } from '../../footprint-bridges.ts';
import { built, workedExample } from '../../solved.ts';

const units: readonly ShowUnits[] = (['mm', 'in', 'fraction'] as const).map((length) => ({
  length,
  radius: 'in',
  gauge: 'in',
}));
const [inMm] = units as [ShowUnits];
const problems = (bridge: Bridge, show = inMm) => footprintOf(bridge).problems(bridge, sayLength(show));

/** Angles between neighbouring segments, degrees; round the joint where the outline closes too. */
const turns = ({ segments }: Path): readonly number[] =>
  segments.map((segment, k) => {
    const before = segments.at(k - 1);
    if (!before) throw new Error('no segment');
    const [a, b] = [tangentOn(before, 1), tangentOn(segment, 0)];
    return (Math.atan2(a.x * b.y - a.y * b.x, a.x * b.x + a.y * b.y) * 180) / Math.PI;
  });

/** How deep an outline is from front to rear at a distance from the centre line, as a caliper spans it, mm. */
const caliper = (outline: Path, across: number): number => {
  const ray = polyline(
    [
      { x: across, y: -100 },
      { x: across, y: 200 },
    ],
    false,
  );
  const hits = pathIntersections(ray, outline).map(({ y }) => y);
  return Math.max(...hits) - Math.min(...hits);
};

const whole = (bridge: Bridge) => ({ ...bridge, ...footprintOf(bridge).size?.(bridge) });

describe.each(Object.entries(bridges))('%s', (_, bridge) => {
  const outline = outlineOf(bridge);

  it('is closed, simple, and turns from +x towards +y', () => {
    expect(problems(bridge)).toEqual([]);
    expect(outline.closed).toBe(true);
    expect(isSimple(outline)).toBe(true);
    expect(area(outline)).toBeGreaterThan(1000);
    outline.segments.forEach((segment, k) => {
      const before = outline.segments.at(k - 1);
      if (!before) throw new Error('no segment');
      const [a, b] = [segmentEnd(before), segmentStart(segment)];
      expect(Math.hypot(a.x - b.x, a.y - b.y)).toBeLessThan(1e-9);
    });
  });

  it('is as long and deep as the caliper says, and begins at 0', () => {
    const { length, depth } = whole(bridge);
    const box = bounds(outline);
    expect(2 * Math.max(-box.minX, box.maxX)).toBeCloseTo(length, 9);
    expect(box.maxY - box.minY).toBeCloseTo(depth, 9);
    expect(box.minY).toBeCloseTo(0, 9);
  });

  it('is put with its front edge on the centre line as far before the saddle line as was measured', () => {
    const { job, design } = built(
      Object.entries({ bridge, 'slot.length': 66, 'bridge.deckWidth': 70 }).reduce(
        (job: Job, [path, value]) => setAt(job, path, value),
        workedExample(),
      ),
    );
    const placed = footprintOutline(job, design);
    const ray = polyline(
      [
        { x: 0, y: 0 },
        { x: 0, y: 1000 },
      ],
      false,
    );
    const front = Math.min(...pathIntersections(ray, placed).map(({ y }) => y));
    expect(design.datum.x - front).toBeCloseTo(bridge.frontToSaddle, 9);
    expect(design.bridgeFront).toBeCloseTo(bounds(placed).minY, 9);
    expect(design.bridgeRear).toBeCloseTo(bounds(placed).maxY, 9);
  });

  it('is the same on both sides, unless each has its own points', () => {
    const other = mirrorX(outline);
    const far = outline.segments.map((s) => distanceTo(other, segmentStart(s)));
    if (bridge.footprint === 'free' && bridge.mirrored === 'no') expect(Math.max(...far)).toBeGreaterThan(1);
    else expect(Math.max(...far)).toBeLessThan(1e-9);
  });
});

describe('what a caliper reads', () => {
  const numbers = bridges.belly as Bridge;

  it.each([
    ['belly', 1],
    ['belly before', -1],
  ] as const)('%s: tips, and full depth in the middle', (name, way) => {
    const bridge = bridges[name] as Bridge;
    const outline = outlineOf(bridge);
    for (const side of [-1, 1]) {
      expect(caliper(outline, side * (bridge.length / 2 - 0.01))).toBeCloseTo(bridge.wingDepth, 9);
      expect(caliper(outline, side * (bridge.bellyWidth / 2 + 0.1))).toBeCloseTo(bridge.wingDepth, 9);
      expect(caliper(outline, side * (bridge.bellyWidth / 2 - 0.5))).toBeGreaterThan(bridge.wingDepth + 1e-4);
      // A quarter of its width in, an S stands at half its depth.
      expect(caliper(outline, (side * bridge.bellyWidth) / 4)).toBeCloseTo((bridge.wingDepth + bridge.depth) / 2, 9);
    }
    expect(caliper(outline, 0)).toBeCloseTo(bridge.depth, 9);
    // The straight edge is the front one, or the rear one where the belly is before the slot.
    const straight = outline.segments.filter((s) => s.kind === 'line').map((s) => Math.abs(s.to.x - s.from.x));
    expect(Math.max(...straight)).toBeCloseTo(bridge.length, 9);
    const long = outline.segments.find((s) => s.kind === 'line' && Math.abs(s.to.x - s.from.x) > bridge.length - 1);
    expect(long && segmentStart(long).y).toBeCloseTo(way > 0 ? 0 : bridge.depth, 9);
  });

  it('waisted: full depth at the ends, the waist in the middle', () => {
    const bridge = bridges.waisted as Bridge;
    const outline = outlineOf(bridge);
    expect(caliper(outline, 0)).toBeCloseTo(bridge.waistDepth, 9);
    for (const side of [-1, 1]) {
      expect(caliper(outline, (side * bridge.waistWidth) / 4)).toBeCloseTo((bridge.waistDepth + bridge.depth) / 2, 9);
      expect(caliper(outline, side * (bridge.waistWidth / 2 + 0.1))).toBeCloseTo(bridge.depth, 9);
    }
  });

  it('eased corners touch both edges a radius from where they would meet; the diagonal is cut by (√2 − 1)r', () => {
    const bridge = bridges['rectangle, eased'] as Bridge;
    const outline = outlineOf(bridge);
    const [x, y] = [bridge.length / 2, bridge.depth];
    expect(distanceTo(outline, { x, y })).toBeCloseTo((Math.SQRT2 - 1) * bridge.cornerRadius, 9);
    expect(distanceTo(outline, { x: x - bridge.cornerRadius, y: 0 })).toBeCloseTo(0, 9);
    expect(distanceTo(outline, { x, y: bridge.cornerRadius })).toBeCloseTo(0, 9);
  });

  it('half-round ends are half circles, and so are eased ones of half the depth', () => {
    const round = outlineOf(bridges['rectangle, half-round'] as Bridge);
    const { length, depth } = numbers;
    const centre = { x: (length - depth) / 2, y: depth / 2 };
    for (const angle of [-89, -30, 0, 45, 89]) {
      const a = (angle * Math.PI) / 180;
      const p = { x: centre.x + (depth / 2) * Math.cos(a), y: centre.y + (depth / 2) * Math.sin(a) };
      expect(distanceTo(round, p)).toBeLessThan(1e-9);
    }
    expect(outlineOf(bridges['rectangle, eased to half its depth'] as Bridge)).toEqual(round);
  });

  it('is a circle where half-round ends meet, and where eased corners do', () => {
    for (const ends of ['round', 'eased'] as const) {
      const bridge: Bridge = { ...numbers, footprint: 'rectangle', ends, length: 70, depth: 70, cornerRadius: 35 };
      expect(problems(bridge)).toEqual([]);
      const outline = outlineOf(bridge);
      expect(isSimple(outline)).toBe(true);
      expect(area(outline)).toBeCloseTo(Math.PI * 35 ** 2, 6);
      expect(outline.segments.every((s) => s.kind === 'arc')).toBe(true);
    }
  });

  it.each([0.1, 0.3, 0.7, 1 / 3])('corners of half a depth of %d + 30 mm, as rounding leaves it, draw', (part) => {
    const depth = 30 + part;
    for (const cornerRadius of [depth / 2, depth / 2 - 2e-16, depth / 2 - 4e-10, depth / 2 + 4e-10, depth / 2 - 1e-6]) {
      const bridge: Bridge = { ...numbers, footprint: 'rectangle', ends: 'eased', depth, cornerRadius };
      expect(problems(bridge)).toEqual([]);
      expect(isSimple(outlineOf(bridge))).toBe(true);
      expect(bounds(outlineOf(bridge)).maxY).toBeCloseTo(depth, 9);
    }
  });

  it('draws what one inch measure and one in millimetres leave of a belly or waist, or refuses it', () => {
    // 1.5 in is 38.099999999999994 mm in floating point.
    const nothing: Bridge = { ...numbers, depth: 38.1, wingDepth: 1.5 * 25.4, waistDepth: 1.5 * 25.4 };
    expect(problems(nothing)[0]?.path).toBe('bridge.wingDepth');
    expect(problems({ ...nothing, footprint: 'waisted' })[0]?.path).toBe('bridge.waistDepth');
    const little: Bridge = { ...numbers, depth: 38.1, wingDepth: 38, waistDepth: 37.9 };
    for (const bridge of [little, { ...little, footprint: 'waisted' as const }]) {
      expect(problems(bridge)).toEqual([]);
      expect(isSimple(outlineOf(bridge))).toBe(true);
      expect(bounds(outlineOf(bridge)).maxY).toBeCloseTo(38.1, 9);
    }
  });
});

describe('smooth joints', () => {
  it.each([
    // Belly: four square corners, its S's joints smooth.
    ['belly', 4],
    ['belly before', 4],
    ['rectangle, square', 4],
    ['pyramid', 4],
    ['waisted', 4],
    ['rectangle, eased', 0],
    ['rectangle, half-round', 0],
    ['free, smooth', 0],
    ['free, mirrored', 4],
    ['free, each side its own', 3],
  ])('%s has %d corners', (name, corners) => {
    const found = turns(outlineOf(bridges[name] as Bridge)).filter((turn) => Math.abs(turn) > 1e-5);
    expect(found).toHaveLength(corners);
  });

  it('at the steepest belly and waist the two arcs are quarter circles', () => {
    const numbers = bridges.belly as Bridge;
    const belly: Bridge = { ...numbers, depth: 60, wingDepth: 20, bellyWidth: 80 };
    const waist: Bridge = { ...numbers, footprint: 'waisted', depth: 60, waistDepth: 20, waistWidth: 40 };
    for (const [bridge, radius] of [
      [belly, 20],
      [waist, 10],
    ] as const) {
      expect(problems(bridge)).toEqual([]);
      const arcs = outlineOf(bridge).segments.flatMap((s) => (s.kind === 'arc' ? [s] : []));
      for (const arc of arcs) {
        expect(arc.radius).toBeCloseTo(radius, 9);
        expect(Math.abs(arc.sweep)).toBeCloseTo(Math.PI / 2, 9);
      }
      expect(isSimple(outlineOf(bridge))).toBe(true);
    }
  });
});

/** The first length in a sentence after “at least”, “at most”, “Make the … X or narrower”, as the reader's unit has it; mm. */
const advised = (says: string, show: ShowUnits): number => {
  const number = String.raw`((?:\d+ )?\d+(?:[./]\d+)?) (?:mm|in)`;
  const match =
    new RegExp(`Make [^.]*?at (?:least|most) ${number}`).exec(says) ??
    new RegExp(`Make [^.]*? ${number} or narrower`).exec(says);
  const read = parseQuantity(match?.[1] ?? '', 'length', show.length);
  if (!read.ok || typeof read.value !== 'number') throw new Error(`no number in: ${says}`);
  return read.value;
};

describe('problems', () => {
  const within = (path: string) => {
    const field = fieldAt(path);
    return fc.double({ min: field?.min ?? 0, max: field?.max ?? 0, noNaN: true });
  };
  const styled = fc.constantFrom('belly', 'bellyBefore', 'rectangle', 'pyramid', 'waisted') satisfies fc.Arbitrary<
    Bridge['footprint']
  >;
  const numbers = fc.record({
    footprint: styled,
    length: within('bridge.length'),
    depth: within('bridge.depth'),
    wingDepth: within('bridge.wingDepth'),
    bellyWidth: within('bridge.bellyWidth'),
    waistDepth: within('bridge.waistDepth'),
    waistWidth: within('bridge.waistWidth'),
    ends: fc.constantFrom('square', 'eased', 'round'),
    cornerRadius: within('bridge.cornerRadius'),
    pyramidWidth: within('bridge.pyramidWidth'),
    deckWidth: within('bridge.deckWidth'),
  });

  it('name a number that a field takes, and following it to the letter, in any unit, draws the outline', () => {
    const said = new Map<string, number>();
    fc.assert(
      fc.property(numbers, fc.constantFrom(...units), (values, show) => {
        let bridge: Bridge = { ...(bridges.belly as Bridge), ...values };
        // A wider deck is refused for itself; tips of 80 mm are as deep as their field goes, and inches cannot say them.
        fc.pre(bridge.deckWidth <= bridge.length && bridge.depth - bridge.bellyWidth / 2 < 79.9);
        const seen = problems(bridge, show);
        for (let step = 0; step < 4 && problems(bridge, show).length > 0; step += 1) {
          const [problem] = problems(bridge, show);
          if (!problem) return;
          const key = problem.path.replace('bridge.', '');
          said.set(key, (said.get(key) ?? 0) + 1);
          const value = advised(problem.says, show);
          expect(problem.value).toBe(bridge[key as keyof Bridge]);
          const field = fieldAt(problem.path);
          expect(value).toBeGreaterThanOrEqual((field?.min ?? 0) - 1e-9);
          expect(value).toBeLessThanOrEqual((field?.max ?? 0) + 1e-9);
          bridge = { ...bridge, [key]: value };
        }
        expect(problems(bridge, show)).toEqual([]);
        const outline = outlineOf(bridge);
        expect(isSimple(outline)).toBe(true);
        expect(area(outline)).toBeGreaterThan(1);
        const box = bounds(outline);
        expect(box.maxX - box.minX).toBeCloseTo(bridge.length, 6);
        expect(box.maxY - box.minY).toBeCloseTo(bridge.depth, 6);
        for (const { says } of seen) expect(says).not.toMatch(/NaN|undefined/);
      }),
      { numRuns: 2500, seed: 1913, endOnFailure: true },
    );
    // Each sentence was met more than once.
    const keys = 'bellyWidth wingDepth waistWidth waistDepth cornerRadius depth pyramidWidth deckWidth';
    for (const key of keys.split(' ')) expect(said.get(key) ?? 0, key).toBeGreaterThan(3);
  });

  it('stand in the way of solving', () => {
    const wrong = setAt(setAt(workedExample(), 'bridge.footprint', 'waisted'), 'bridge.waistDepth', 40);
    const result = build(wrong);
    expect(!result.ok && result.problems.map(({ path }) => path)).toEqual(['bridge.waistDepth']);
  });
});
