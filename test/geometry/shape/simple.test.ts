import { describe, expect, it } from 'vitest';
import { circle, isSimple, polyline } from '../../../geometry/shape/index.ts';
import { pen } from '../../../geometry/shape/path.ts';
import { ownMeeting } from '../../../geometry/shape/simple.ts';

const polygon = (...corners: readonly (readonly [number, number])[]) =>
  polyline(
    corners.map(([x, y]) => ({ x, y })),
    true,
  );

describe('where a path meets itself', () => {
  it('nowhere, on a simple one', () => {
    for (const path of [polygon([0, 0], [9, 0], [9, 5], [0, 5]), circle({ x: 1, y: 2 }, 3)]) {
      expect(ownMeeting(path)).toBeUndefined();
      expect(isSimple(path)).toBe(true);
    }
  });

  it('at the crossing of a bow', () => {
    const found = ownMeeting(polygon([0, 0], [10, 10], [10, 0], [0, 10]));
    expect(found?.x).toBeCloseTo(5, 12);
    expect(found?.y).toBeCloseTo(5, 12);
  });

  it('where a corner touches a side', () => {
    expect(ownMeeting(polygon([0, 0], [10, 0], [10, 8], [5, 0], [0, 8]))).toEqual({ x: 5, y: 0 });
  });

  it('along a line run there and back', () => {
    const found = ownMeeting(polygon([0, 0], [10, 0], [10, 5], [10, 0]));
    expect(found?.x).toBe(10);
  });

  it('in the loop of one cubic', () => {
    const loop = pen({ x: 0, y: 0 }).cubic({ x: 30, y: 20 }, { x: -20, y: 20 }, { x: 10, y: 0 }).path();
    const found = ownMeeting(loop);
    expect(found?.x).toBeCloseTo(5, 9);
    expect(isSimple(loop)).toBe(false);
  });
});
