// The worked example of the trade's notes: steel strings, 25.4 mm to the inch, its table computed by an independent program.
import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { placesAcross } from '../../geometry/instrument/spacing.ts';
import { report } from '../../geometry/report.ts';
import { built, jobFile, workedExampleFile } from '../solved.ts';

const { job, design } = built(jobFile(workedExampleFile));

const table = {
  acrossAtSaddle: ['-27.75', '-16.65', '-5.55', '5.55', '16.65', '27.75'],
  heightAboveFretPlane: ['3.6892', '4.1166', '4.2178', '3.9931', '3.4460', '2.5638'],
  exposure: ['4.6477', '4.5895', '4.4481', '4.2235', '3.9189', '3.5223'],
  breakAngle: ['27.664', '27.385', '26.663', '25.485', '23.841', '21.635'],
  tension: ['111.83', '125.60', '130.89', '131.92', '101.74', '101.97'],
} as const;

const decimals = (text: string) => text.split('.')[1]?.length ?? 0;

describe('the worked example, to its last digit', () => {
  const { strings } = report(job, design);
  for (const key of Object.keys(table) as (keyof typeof table)[]) {
    it(key, () => {
      expect(strings.map((s, k) => s[key].toFixed(decimals(table[key][k] ?? '')))).toEqual(table[key]);
    });
  }

  it('best circle through the six heights: 377.93 mm, 14.88 in', () => {
    const best = report(job, design).bestSaddleRadius;
    expect(Number(best).toFixed(2)).toBe('377.93');
    expect((Number(best) / 25.4).toFixed(2)).toBe('14.88');
  });

  it('equal gaps instead of equal centres', () => {
    const gauges = job.strings.list.map((s) => s.gauge);
    expect(placesAcross(55.5, gauges, 'gaps').map((y) => y.toFixed(3))).toEqual([
      '-27.750',
      '-16.188',
      '-4.892',
      '6.175',
      '17.039',
      '27.750',
    ]);
  });

  it('straightedge clearance: neck plane height less thickness, 0.7 of light', () => {
    expect(design.straightedgeClearance).toBeCloseTo(0.7, 12);
  });

  it('the file is the example, not a variation of it', () => {
    const text = readFileSync(workedExampleFile, 'utf8');
    expect(JSON.parse(text).strings.list.map((s: { setback: number }) => s.setback)).toEqual([
      4, 3.2, 2.6, 2.2, 2.6, 1.8,
    ]);
  });
});
