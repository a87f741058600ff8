import { describe, expect, it } from 'vitest';
import { setAt } from '../../../geometry/fields.ts';
import type { Job } from '../../../geometry/job.ts';
import { lifeLeft } from '../../../geometry/saddle/life.ts';
import { starters } from '../../../src/jobs/index.ts';
import { built, jobOf, workedExample } from '../../solved.ts';

/** The job with its action lowered by d at fret 12 and its nut left alone: each string pivots there, so its first-fret clearance falls by x_1/x_12 of it. */
const lowered = (job: Job, d: number): Job => {
  const share = 2 * (1 - 2 ** (-1 / 12));
  const { bass, treble, firstFretBass, firstFretTreble } = job.action;
  return {
    ...job,
    action: {
      bass: bass - d,
      treble: treble - d,
      firstFretBass: firstFretBass - d * share,
      firstFretTreble: firstFretTreble - d * share,
    },
  };
};

const cases: readonly (readonly [string, Job, number, number])[] = [
  // The least of the usual exposure and break angle of steel strings [practice].
  ['the worked example', workedExample(), 2, 15],
  ...starters.map(({ id, text }) => [id, setAt(jobOf(text), 'strings.setbacks', 'typed'), 2, 15] as const),
  ['a job that wants break angles of 22° and more', setAt(workedExample(), 'limits.breakAngle', { from: 22 }), 2, 22],
  ['a job with a limit of its own, 3.8 mm', setAt(workedExample(), 'limits.exposure', { from: 3.8 }), 3.8, 15],
];

describe.each(cases)('life left in %s', (_, job, exposure, angle) => {
  const { job: settled, design } = built(job);
  const life = lifeLeft(settled, design);

  it('brings the limit exactly, and passes no other, when the strings are solved again that much lower', () => {
    life.forEach(({ atFret12, limit }, k) => {
      const string = built(lowered(job, atFret12)).design.strings[k];
      if (!string) throw new Error('no string');
      if (limit === 'exposure') expect(string.exposure).toBeCloseTo(exposure, 8);
      else expect(string.breakAngle).toBeCloseTo(angle, 6);
      expect(string.exposure).toBeGreaterThan(exposure - 1e-8);
      expect(string.breakAngle).toBeGreaterThan(angle - 1e-6);
    });
  });

  it('is at the saddle as much more as the break point lies farther from the nut', () => {
    life.forEach(({ atFret12, atSaddle }, k) => {
      expect(atSaddle / atFret12).toBeCloseTo((design.strings[k]?.breakX ?? 0) / (settled.guitar.scale / 2), 9);
    });
  });
});

it('is met by exposure and by break angle, each where it comes first', () => {
  const limits = cases.map(([, job]) => {
    const { job: settled, design } = built(job);
    return lifeLeft(settled, design).map(({ limit }) => limit);
  });
  expect(new Set(limits.flat())).toEqual(new Set(['exposure', 'breakAngle']));
});

it('is negative where a limit is passed already', () => {
  const { job, design } = built(setAt(workedExample(), 'bridge.thickness', 11.5));
  const life = lifeLeft(job, design);
  expect(design.strings.at(-1)?.exposure).toBeLessThan(2);
  expect(life.at(-1)?.atFret12).toBeLessThan(0);
});
