// A cutter's way round every template: of every starter against another library, and of random jobs with nothing lost and nothing thrown.
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { build } from '../../geometry/build.ts';
import { layOut, sayWith } from '../../geometry/layout.ts';
import { pathLength } from '../../geometry/shape/measure.ts';
import { starters } from '../../src/jobs/index.ts';
import { contoursOf } from '../../templates/cutter/contour.ts';
import { kerfBeside, leavesPart } from '../../templates/cutter/kerf.ts';
import { withoutTabs } from '../../templates/cutter/tabs.ts';
import { drawnPieces } from '../drawn.ts';
import { randomJob } from '../random-job.ts';
import { built, jobOf } from '../solved.ts';
import { holdKerfs } from './kerfs.ts';

describe.each(starters)('$id', ({ text }) => {
  const { job, design } = built(jobOf(text));

  it.each(drawnPieces(job, design).map((drawing) => [drawing.id, drawing] as const))(
    '%s: within 0.01 mm',
    (_, drawing) => {
      holdKerfs(drawing, [0.15, 1, 2.9]);
    },
  );
});

it('takes every contour of random jobs’ templates, or says why not; tabs and what is cut make up the whole', () => {
  const check = fc.property(
    randomJob(),
    fc.constantFrom(0.15, 1.5, 3),
    fc.integer({ min: 1, max: 9 }),
    (asked, tool, count) => {
      const made = build(asked);
      fc.pre(made.ok);
      if (!made.ok) return;
      const say = sayWith(made.job.show);
      for (const { marks, title } of drawnPieces(made.job, made.design)) {
        const strokes = layOut(marks, { em: 3.5, say }).filter((p) => p.kind === 'stroke');
        for (const contour of contoursOf(strokes.filter(({ purpose }) => purpose === 'cut' || purpose === 'drill'))) {
          const kerf = kerfBeside(contour, tool);
          if (!kerf.ok && kerf.narrowest !== undefined) expect(kerf.narrowest).toBeLessThan(tool);
          if (!kerf.ok || contour.bounds === 'line') continue;
          expect(typeof leavesPart(contour, tool, 'waste')).toBe('boolean');
          const tabs = { count, spacing: 'any', gap: 1 + tool } as const;
          const parts = withoutTabs(kerf.path, tabs);
          const gaps = parts[0]?.closed ? 0 : parts.length;
          const whole = parts.reduce((sum, part) => sum + pathLength(part), gaps * tabs.gap);
          expect(Math.abs(whole - pathLength(kerf.path)), `${title}: ${contour.stroke.id}`).toBeLessThan(1e-5);
        }
      }
    },
  );
  fc.assert(check, { numRuns: 200, seed: 2026, endOnFailure: true });
});
