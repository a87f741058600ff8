import { describe, expect, it } from 'vitest';
import { footprintOutline } from '../../../geometry/bridge/outline.ts';
import { bridgeBlank, capBlank } from '../../../geometry/bridge/stock.ts';
import { undersideHeight } from '../../../geometry/bridge/surface.ts';
import { bridgeTopAt } from '../../../geometry/bridge/top-line.ts';
import { setAt } from '../../../geometry/fields.ts';
import type { Job } from '../../../geometry/job.ts';
import { bounds } from '../../../geometry/shape/index.ts';
import { built, workedExample } from '../../solved.ts';

const make = (values: Readonly<Record<string, unknown>>) =>
  built(Object.entries(values).reduce<Job>((job, [path, value]) => setAt(job, path, value), workedExample()));

describe('the bridge’s blank', () => {
  it('is the bridge with the allowance on every side', () => {
    const { job, design } = make({ 'guitar.topRadius': 'flat', 'stock.allowance': 2 });
    const { length, depth, thickness, grain } = bridgeBlank(job, design);
    expect(length).toBeCloseTo(152 + 4, 9);
    expect(depth).toBeCloseTo(38.5 + 4, 9);
    expect(thickness).toBeCloseTo(9.3 + 4, 9);
    expect(grain).toMatch(/along the bridge’s length/);
  });

  it('holds the dome’s corners and a deck that stands highest beside the middle', () => {
    const { job, design } = make({
      'guitar.topRadius': 3000,
      'top.radiusAlong': 2000,
      'bridge.tilt': 0.02,
      'stock.allowance': 0,
    });
    const { thickness } = bridgeBlank(job, design);
    const { minX, maxX, minY, maxY } = bounds(footprintOutline(job, design));
    let [lowest, highest] = [0, Number.NEGATIVE_INFINITY];
    for (let k = 0; k <= 400; k += 1) {
      const y = minX + ((maxX - minX) * k) / 400;
      highest = Math.max(highest, bridgeTopAt(job, y));
      for (const x of [minY, maxY]) lowest = Math.min(lowest, undersideHeight(job, y, x - design.saddleLine.x));
    }
    expect(thickness).toBeCloseTo(highest - lowest, 3);
    expect(thickness).toBeGreaterThan(9.3 + 1);
  });

  it('reaches up to a ridge that stands above the deck', () => {
    const { job, design } = make({
      'guitar.topRadius': 'flat',
      'bridge.footprint': 'pyramid',
      'bridge.pyramidThickness': 11,
      'stock.allowance': 0,
    });
    expect(bridgeBlank(job, design).thickness).toBeCloseTo(11, 9);
  });
});

describe('the cap’s blank', () => {
  it('is the cap with the allowance, its grain as it is asked for; none without a cap', () => {
    expect(capBlank(make({}).job)).toBeUndefined();
    const { job } = make({ 'plate.cap': 2, 'plate.grain': 'slanted', 'stock.allowance': 1.5 });
    expect(capBlank(job)).toEqual({ length: 88, depth: 27, thickness: 5, grain: 'at 45° to the cap’s length' });
  });
});
