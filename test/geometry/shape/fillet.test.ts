import { describe, expect, it } from 'vitest';
import { fillet } from '../../../geometry/shape/fillet.ts';
import { type Line, lengthOf, tangentOn } from '../../../geometry/shape/index.ts';
import { segmentEnd, segmentStart } from '../../../geometry/shape/path.ts';
import { distance, polar } from '../../../geometry/shape/point.ts';
import type { Segment } from '../../../geometry/shape/types.ts';

const line = (x0: number, y0: number, x1: number, y1: number): Line => ({
  kind: 'line',
  from: { x: x0, y: y0 },
  to: { x: x1, y: y1 },
});

/** Lines that turn by an angle (radians) at the origin. */
const corner = (turn: number): readonly [Line, Line] => {
  const to = polar({ x: 0, y: 0 }, 40, turn);
  return [line(-40, 0, 0, 0), line(0, 0, to.x, to.y)];
};

const isSmooth = (a: Segment, b: Segment): void => {
  expect(distance(segmentEnd(a), segmentStart(b))).toBeLessThan(1e-9);
  const [p, q] = [tangentOn(a, 1), tangentOn(b, 0)];
  expect(Math.hypot(p.x - q.x, p.y - q.y)).toBeLessThan(1e-7);
};

describe('fillet', () => {
  // Tangents to a circle of radius r from a corner that turns by τ are r·tan(τ/2) long.
  it.each([0.01, 0.5, Math.PI / 2, -1.2, -2.5])('of two lines that turn by %d takes r·tan(turn/2) off each', (turn) => {
    const [a, b] = corner(turn);
    const radius = 4;
    const found = fillet(a, b, radius);
    if (!found?.arc) throw new Error('nothing was rounded');
    const off = radius * Math.tan(Math.abs(turn) / 2);
    expect(lengthOf(found.before)).toBeCloseTo(40 - off, 9);
    expect(lengthOf(found.after)).toBeCloseTo(40 - off, 9);
    expect(found.arc.radius).toBe(radius);
    expect(found.arc.sweep).toBeCloseTo(turn, 9);
    isSmooth(found.before, found.arc);
    isSmooth(found.arc, found.after);
  });

  it('of a line and an arc touches both', () => {
    const found = fillet(
      { kind: 'arc', centre: { x: 0, y: 100 }, radius: 100, start: -2, sweep: 2 - Math.PI / 2 },
      line(0, 0, 30, 20),
      6,
    );
    if (!found?.arc) throw new Error('nothing was rounded');
    isSmooth(found.before, found.arc);
    isSmooth(found.arc, found.after);
  });

  it('leaves a corner alone that is none: an arc of next to no length would tangle its neighbours', () => {
    for (const turn of [0, 1e-12, 4.6e-9, -1e-7]) {
      const [a, b] = corner(turn);
      expect(fillet(a, b, 1.4)).toEqual({ before: a, arc: undefined, after: b });
    }
  });

  it('fits no radius that would touch beyond an end', () => {
    const [a, b] = corner(Math.PI / 2);
    expect(fillet(a, b, 39.9)).toBeDefined();
    expect(fillet(a, b, 40.1)).toBeUndefined();
  });
});
