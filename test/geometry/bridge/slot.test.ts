import { describe, expect, it } from 'vitest';
import { pinCentres } from '../../../geometry/bridge/pins.ts';
import {
  leastMissLine,
  type SaddleLine,
  saddleLineAt,
  saddleLineThrough,
  slotCut,
  slotLine,
  slotOutline,
  wallLength,
} from '../../../geometry/bridge/slot.ts';
import { build } from '../../../geometry/build.ts';
import { setAt } from '../../../geometry/fields.ts';
import { area, bounds, isSimple, pathLength } from '../../../geometry/shape/index.ts';
import type { Point } from '../../../geometry/shape/types.ts';
import { seeded } from '../../seeded.ts';
import { solved, workedExample } from '../../solved.ts';

describe('the saddle line', () => {
  it('runs through both outer break points', () => {
    const design = solved(workedExample());
    const [bass, treble] = [design.strings[0], design.strings.at(-1)];
    expect(saddleLineAt(design.saddleLine, -27.75)).toBeCloseTo(644, 9);
    expect(saddleLineAt(design.saddleLine, 27.75)).toBeCloseTo(641.8, 9);
    expect(bass?.behindMiddle).toBeCloseTo(0, 9);
    expect(treble?.behindMiddle).toBeCloseTo(0, 9);
  });

  it('crosses the centre line half-way between them', () => {
    const line = saddleLineThrough({ acrossAtSaddle: -28, breakX: 644 }, { acrossAtSaddle: 28, breakX: 642 });
    expect(line.x).toBeCloseTo(643, 12);
    expect(line.slant).toBeCloseTo(-2 / 56, 12);
  });
});

describe('the slot', () => {
  const slot = { width: 3.2, length: 76 };

  // A stadium: a rectangle and two half circles.
  it('has the area and the way round of a rectangle with two half circles, however it slants', () => {
    for (const slant of [0, -0.04, 0.3]) {
      const outline = slotOutline(slot, { x: 640, slant });
      expect(area(outline)).toBeCloseTo((76 - 3.2) * 3.2 + Math.PI * 1.6 ** 2, 9);
      expect(pathLength(outline)).toBeCloseTo(2 * (76 - 3.2) + Math.PI * 3.2, 9);
      expect(isSimple(outline)).toBe(true);
    }
  });

  it.each([0, -0.04, 0.3])('squared, has four right angles and the area of a rectangle, at a slant of %s', (slant) => {
    const outline = slotOutline({ ...slot, ends: 'square' }, { x: 640, slant });
    expect(area(outline)).toBeCloseTo(76 * 3.2, 9);
    expect(pathLength(outline)).toBeCloseTo(2 * (76 + 3.2), 9);
    expect(outline.segments).toHaveLength(4);
    expect(wallLength({ ...slot, ends: 'square' })).toBe(76);
    expect(wallLength(slot)).toBeCloseTo(72.8, 12);
  });

  it('open at both ends, runs as wide from shoulder to shoulder of the deck, however long its saddle', () => {
    for (const slant of [0, -0.04, 0.3])
      for (const length of [60, 84]) {
        const outline = slotOutline({ ...slot, length, ends: 'through' }, { x: 640, slant }, 84);
        expect([bounds(outline).minX, bounds(outline).maxX]).toEqual([-42, 42]);
        // A parallelogram: 84 across, and along the guitar as deep as its width is aslant.
        expect(area(outline)).toBeCloseTo(84 * 3.2 * Math.hypot(1, slant), 9);
        expect(isSimple(outline)).toBe(true);
      }
  });

  it('open at both ends of a bridge that is all deck, is built, and lies within its outline', () => {
    const job = setAt(setAt(workedExample(), 'bridge.deckWidth', 152), 'slot.ends', 'through');
    const design = solved(job);
    const cut = slotCut(job, design.saddleLine);
    expect(bounds(cut).maxX).toBe(76);
    expect(design.saddle.length).toBeCloseTo(76 - 0.05, 12);
  });

  it('squared, needs no more length than the spread', () => {
    const short = setAt(workedExample(), 'slot.length', 57);
    expect(build(short).ok).toBe(false);
    expect(build(setAt(short, 'slot.ends', 'square')).ok).toBe(true);
  });

  it('cannot be as wide as it is long', () => {
    expect(() => slotOutline({ width: 4, length: 4 }, { x: 0, slant: 0 })).toThrow(/4 mm long/);
  });
});

describe('the pins', () => {
  it('stand square to the centre line, or follow the slot', () => {
    const job = workedExample();
    const line = { x: 643, slant: -0.04 };
    const square = pinCentres({ ...job, pins: { ...job.pins, row: 'square' } }, line);
    const slanted = pinCentres({ ...job, pins: { ...job.pins, row: 'slanted' } }, line);
    for (const pin of square) expect(pin.y).toBeCloseTo(643 + job.pins.fromSaddle, 12);
    for (const pin of slanted) expect(pin.y).toBeCloseTo(643 + job.pins.fromSaddle - 0.04 * pin.x, 12);
    expect((square.at(-1)?.x ?? 0) - (square[0]?.x ?? 0)).toBeCloseTo(job.pins.spread, 12);
  });
});

describe('the line of least miss', () => {
  const { even } = seeded(13);
  const clouds = Array.from({ length: 60 }, (_, k) => {
    const n = 4 + (k % 9);
    return Array.from({ length: n }, (__, i) => ({ x: -28 + (56 * i) / (n - 1), y: 640 + even(0, 6) }));
  });
  const misses = (line: SaddleLine, points: readonly Point[]) => points.map((p) => p.y - saddleLineAt(line, p.x));

  /** The least largest miss, searched by halving over the slant: for one slant it is half of what lies between the highest and the lowest. */
  const searched = (points: readonly Point[]): number => {
    const worst = (slant: number) => {
      const left = points.map((p) => p.y - slant * p.x);
      return (Math.max(...left) - Math.min(...left)) / 2;
    };
    let [low, high] = [-2, 2];
    for (let step = 0; step < 200; step += 1) {
      const [a, b] = [low + (high - low) * 0.382, low + (high - low) * 0.618];
      if (worst(a) < worst(b)) high = b;
      else low = a;
    }
    return worst((low + high) / 2);
  };

  it('no line, of all that were searched, misses by less', () => {
    for (const points of clouds) {
      const worst = Math.max(...misses(leastMissLine(points), points).map(Math.abs));
      expect(worst).toBeCloseTo(searched(points), 8);
    }
  });

  // Chebyshev's alternation: a line is best when three points miss it by as much, by turns to either side.
  it('is missed by three points by turns, by as much as by any', () => {
    for (const points of clouds) {
      const left = misses(leastMissLine(points), points);
      const worst = Math.max(...left.map(Math.abs));
      const turns = left.filter((miss) => Math.abs(Math.abs(miss) - worst) < 1e-9).map(Math.sign);
      expect(turns.filter((sign, k) => k === 0 || sign !== turns[k - 1]).length).toBeGreaterThanOrEqual(3);
    }
  });

  it('goes through points on a line, in whatever order they come', () => {
    const points = [3, -28, 28, 11, -14].map((x) => ({ x, y: 642 - 0.04 * x }));
    expect(leastMissLine(points).x).toBeCloseTo(642, 9);
    expect(leastMissLine(points).slant).toBeCloseTo(-0.04, 12);
    expect(leastMissLine(points.slice(0, 2)).slant).toBeCloseTo(-0.04, 12);
  });
});

describe('the slot’s centre line', () => {
  const slot = workedExample().slot;
  const asks = [4, 3.2, 2.6, 2.2, 2.6, 1.8].map((setback, k) => ({ x: -27.75 + 11.1 * k, y: 640 + setback }));

  it('is the best over all strings, or through the outer ones, or as measured', () => {
    expect(slotLine({ ...slot, line: 'least' }, asks)).toEqual(leastMissLine(asks));
    const outer = slotLine({ ...slot, line: 'outer' }, asks);
    expect([saddleLineAt(outer, -27.75), saddleLineAt(outer, 27.75)].map((y) => y.toFixed(9))).toEqual([
      '644.000000000',
      '641.800000000',
    ]);
    expect(slotLine({ ...slot, line: 'typed', fromNut: 641, slant: -0.02 }, asks)).toEqual({ x: 641, slant: -0.02 });
  });
});
