import { describe, expect, it } from 'vitest';
import { setAt } from '../../../geometry/fields.ts';
import type { Job } from '../../../geometry/job.ts';
import { gapLine, gapOver } from '../../../geometry/saddle/gap.ts';
import { built, workedExample } from '../../solved.ts';

const make = (values: Readonly<Record<string, unknown>>) =>
  built(Object.entries(values).reduce<Job>((job, [path, value]) => setAt(job, path, value), workedExample()));

/** Places and exposures of the worked example in trade.md, which an independent program computed; mm. */
const places = [-27.75, -16.65, -5.55, 5.55, 16.65, 27.75];
const exposures = [4.6477, 4.5895, 4.4481, 4.2235, 3.9189, 3.5223];

describe('the gap between crown and bridge top', () => {
  it('is each string’s exposure where the crown follows each string’s own height', () => {
    const { job, design } = make({ 'saddle.crown': 'heights' });
    const gap = gapOver(job, design);
    places.forEach((y, k) => {
      expect(gap(y)).toBeCloseTo(exposures[k] ?? Number.NaN, 4);
    });
  });

  it('is the exposure and what the crown misses it by where it has one radius', () => {
    const { job, design } = make({ 'saddle.crown': 'best' });
    const gap = gapOver(job, design);
    places.forEach((y, k) => {
      expect(Math.abs(gap(y) - (exposures[k] ?? 0))).toBeLessThan(0.02);
      // The arc that is cut goes through the outer fitted heights: between them it leaves the fitted line, which its tilt shears, by a micrometre.
      expect(Math.abs(gap(y) - (exposures[k] ?? 0) - (design.crown.misses[k] ?? 0))).toBeLessThan(0.002);
    });
  });

  it('runs between two circles: R − √(R² − y²) each, the top’s of 508 mm and the crown’s', () => {
    const { job, design } = make({ 'saddle.crown': 'best' });
    const { radius, c, t } = design.crown;
    if (radius === 'flat') throw new Error('flat');
    const drop = (r: number, y: number) => r - Math.sqrt(r * r - y * y);
    const line = gapLine(job, design);
    expect(line.length).toBeGreaterThan(50);
    // Between the strings the arc through the outer fitted heights leaves the fitted line, whose tilt shears it, by some micrometres.
    for (const { x, y } of line.filter((p) => Math.abs(p.x) <= 27.75))
      expect(y).toBeCloseTo(c + t * x - drop(radius, x) - (-10 + 0.5 + 9.3 - drop(508, x)), 2);
  });

  it('goes from end to end of the saddle, over every string', () => {
    const { job, design } = make({});
    const line = gapLine(job, design);
    const half = job.slot.length / 2 - job.saddle.play / 2;
    // Across the guitar, of a saddle that lies along its slanted slot.
    const across = half / Math.hypot(1, design.saddleLine.slant);
    expect([line[0]?.x, line.at(-1)?.x].map((x) => x?.toFixed(9))).toEqual([(-across).toFixed(9), across.toFixed(9)]);
    for (const y of places) expect(line.some(({ x }) => Math.abs(x - y) < 1e-9)).toBe(true);
  });
});
