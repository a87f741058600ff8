import { describe, expect, it } from 'vitest';
import { setAt } from '../../../geometry/fields.ts';
import {
  breakPoint,
  crownEdgeKept,
  crownReach,
  saddleThickness,
  thicknessNeeded,
} from '../../../geometry/saddle/break-points.ts';
import { seeded } from '../../seeded.ts';
import { solved, workedExample } from '../../solved.ts';

const line = { x: 642, slant: -0.04 };
/** Distance of a point from a line: |ax + by + c| over √(a² + b²), of y = x₀ + slant·x. */
const fromLine = (x: number, y: number) => (y - line.slant * x - line.x) / Math.sqrt(1 + line.slant ** 2);

describe('a break point', () => {
  it('lies where it is needed, measured square from the front face, if the crown carries it', () => {
    for (const off of [-1, 0, 0.7]) {
      const y = 642 - 0.04 * 20 + off;
      const point = breakPoint(line, 20, y, 3);
      expect(point).toMatchObject({ neededX: y, breakX: y, missed: 0 });
      expect(point.fromFront).toBeCloseTo(1.5 + fromLine(20, y), 12);
    }
  });

  // [practice] 0.4 mm of the crown stand before and behind every break point.
  it('keeps 0.4 mm from each edge, and says how far it is off', () => {
    const { even } = seeded(2);
    expect(crownEdgeKept).toBe(0.4);
    for (let k = 0; k < 300; k += 1) {
      const [across, needed, thickness] = [even(-30, 30), even(637, 647), even(1.5, 6)];
      const point = breakPoint(line, across, needed, thickness);
      expect(point.fromFront).toBeGreaterThanOrEqual(0.4 - 1e-12);
      expect(point.fromFront).toBeLessThanOrEqual(thickness - 0.4 + 1e-12);
      expect(point.missed).toBeCloseTo(needed - point.breakX, 12);
      // Where it lies is what it says of itself, on the saddle's own face.
      expect(point.fromFront).toBeCloseTo(thickness / 2 + fromLine(across, point.breakX), 9);
      const beyond = Math.abs(fromLine(across, needed)) > thickness / 2 - 0.4;
      expect(point.missed !== 0).toBe(beyond);
      if (beyond) expect(Math.sign(point.missed)).toBe(Math.sign(fromLine(across, needed)));
    }
  });

  it('stays in the middle of a saddle too thin to keep anything', () => {
    expect(crownReach(0.7)).toBe(0);
    expect(breakPoint(line, 0, 643, 0.7)).toMatchObject({ breakX: 642, fromFront: 0.35, missed: 1 });
  });
});

describe('the thickness needed', () => {
  const { even } = seeded(9);

  it('just reaches every string: a hair less does not', () => {
    for (let k = 0; k < 50; k += 1) {
      const points = [-28, -17, -5, 6, 17, 28].map((across) => ({
        across,
        neededX: 642 - 0.04 * across + even(-2, 2),
      }));
      const needed = thicknessNeeded(line, points);
      const missed = (thickness: number) =>
        points.filter(({ across, neededX }) => breakPoint(line, across, neededX, thickness).missed !== 0).length;
      expect(missed(needed + 1e-9)).toBe(0);
      expect(missed(needed - 1e-6)).toBe(1);
    }
  });

  it('as a slot’s width, play added, makes a design in which no string is missed', () => {
    const thin = setAt(setAt(workedExample(), 'slot.width', 1.8), 'strings.list.G3.setback', 0.6);
    const before = solved(thin);
    expect(before.strings.filter((s) => s.missed !== 0).map((s) => s.name)).toContain('G3');
    const width = before.saddle.thicknessNeeded + thin.saddle.play + 1e-9;
    const after = solved(setAt(thin, 'slot.width', width));
    expect(after.strings.every((s) => s.missed === 0)).toBe(true);
    expect(after.strings.map((s) => s.setback)).toEqual(after.strings.map((s) => s.neededSetback));
  });

  it('the saddle is as thick as its slot is wide, less the play', () => {
    const job = setAt(setAt(workedExample(), 'slot.width', 3.2), 'saddle.play', 0.04);
    expect(saddleThickness(job)).toBeCloseTo(3.16, 12);
    expect(solved(job).saddle.thickness).toBeCloseTo(3.16, 12);
  });
});
