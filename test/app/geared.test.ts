import { describe, expect, it } from 'vitest';
import { fieldAt, setAt } from '../../geometry/fields.ts';
import { gaugeRadii, isMarkedIn } from '../../geometry/saddle/gauges.ts';
import type { ShowUnits } from '../../geometry/units.ts';
import { gripsOf, putOnSheet } from '../../geometry/views/grips/index.ts';
import { type GearedGrip, geared, isGeared } from '../../src/app/sheet/grips/geared.ts';
import { snapped, stopped } from '../../src/app/sheet/grips/step.ts';
import { built } from '../solved.ts';
import { starterJob } from './bench.ts';

const inch = 25.4;
const field = fieldAt('bridge.topRadius');
if (field === undefined) throw new Error('no field');
const show = (radius: 'mm' | 'in'): ShowUnits => ({ ...starterJob('heron').show, radius });

const known = new Map<string, GearedGrip>();
/** The grip of the demo's top radius, its heights drawn so many times as large. */
const gripAt = (radius: number | 'flat', heights: number): GearedGrip => {
  const before = known.get(`${radius} ${heights}`);
  if (before) return before;
  const { job, design } = built(setAt(starterJob('heron'), 'bridge.topRadius', radius));
  const grip = putOnSheet(gripsOf('tail', job, design), { place: { x: 12, y: -7 }, heights }).find(
    ({ id }) => id === 'topRadius',
  );
  if (grip === undefined || !isGeared(grip)) throw new Error('the top radius has no grip that is geared');
  known.set(`${radius} ${heights}`, grip);
  return grip;
};

/** The radius to which a hand drags that has gone so many px down. */
const dragged = (radius: number | 'flat', px: number, heights: number, scale: number, unit: 'mm' | 'in') => {
  const grip = gripAt(radius, heights);
  return geared(grip, { x: grip.at.x + 3, y: grip.at.y + px / scale }, scale, show(unit));
};
const rests = (radius: number | 'flat', px: number, heights: number, scale: number, unit: 'mm' | 'in') =>
  stopped(field, snapped(field, dragged(radius, px, heights, scale, unit), show(unit)));

describe('a hand that drags the top radius', () => {
  // At true size, 96 px to the inch; and as the demo is seen at 1440 px, heights three times as large.
  it.each([
    ['in', 1, 96 / inch],
    ['mm', 1, 96 / inch],
    ['in', 3, 1.8],
    ['mm', 3, 1.8],
  ] as const)(
    'has some 12 px for each gauge in %s, heights %d times as large, %d px per mm',
    (unit, heights, scale) => {
      const found = new Map<number | 'flat', number>();
      for (let px = -400; px <= 400; px += 0.5) {
        const radius = rests(18 * inch, px, heights, scale, unit);
        found.set(radius, (found.get(radius) ?? 0) + 0.5);
      }
      const gauges = gaugeRadii.filter((radius) => isMarkedIn(radius, unit));
      for (const gauge of gauges) expect(found.get(gauge) ?? 0, `${gauge}`).toBeGreaterThanOrEqual(11.5);
      // Between the largest gauge and flat it rests on whole inches, or centimetres.
      const largest = Math.max(...gauges.filter((radius) => typeof radius === 'number'));
      const beyond = [...found].filter(([radius]) => typeof radius === 'number' && radius > largest);
      expect(beyond.reduce((sum, [, px]) => sum + px, 0)).toBeGreaterThan(25);
    },
  );

  it('goes to flat and back, to less as it goes down, and where it began it is the radius that was there', () => {
    expect(dragged(18 * inch, 0, 3, 1.8, 'in')).toBeCloseTo(18 * inch, 9);
    expect(rests(18 * inch, -100, 3, 1.8, 'in')).toBe('flat');
    expect(dragged('flat', 0, 3, 1.8, 'in')).toBe(Number.POSITIVE_INFINITY);
    expect(rests('flat', -30, 3, 1.8, 'in')).toBe('flat');
    // 48 px from flat to 20 in, and a gauge more every 12 px.
    expect(rests('flat', 48, 3, 1.8, 'in')).toBe(20 * inch);
    expect(rests('flat', 72, 3, 1.8, 'in')).toBe(15 * inch);
    let before = Number.POSITIVE_INFINITY;
    for (let px = -40; px < 200; px += 1) {
      const now = dragged(18 * inch, px, 3, 1.8, 'in');
      expect(now, `${px} px`).toBeLessThanOrEqual(before);
      before = now;
    }
  });

  it('stays on the arc where that itself goes as far from gauge to gauge', () => {
    // Looked at so closely that 15 and 16 in lie 0.15 mm · 3 · 40 = 18 px apart.
    const scale = 40;
    for (const px of [-30, -8, 5, 40]) {
      const grip = gripAt(15.5 * inch, 3);
      const own = grip.value({ x: grip.at.x, y: grip.at.y + px / scale });
      // By curvature rather than by height, which differ by (s/2R)², some percent of the way.
      expect(1 / dragged(15.5 * inch, px, 3, scale, 'in')).toBeCloseTo(1 / own, 5);
    }
  });
});
