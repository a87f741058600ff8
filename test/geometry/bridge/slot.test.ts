import { describe, expect, it } from 'vitest';
import { pinCentres } from '../../../geometry/bridge/pins.ts';
import { saddleLineAt, saddleLineThrough, slotOutline } from '../../../geometry/bridge/slot.ts';
import { area, isSimple, pathLength } from '../../../geometry/shape/index.ts';
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
