// Every number on the drawing can be typed where it stands, or be asked how it came about.
import { describe, expect, it } from 'vitest';
import { setAt } from '../../geometry/fields.ts';
import type { Job } from '../../geometry/job.ts';
import { sayWith } from '../../geometry/layout.ts';
import { threeViews } from '../../geometry/views/index.ts';
import { askable } from '../../src/app/sheet/typed/askable.ts';
import { typable } from '../../src/app/sheet/typed/typable.ts';
import { built, workedExample } from '../solved.ts';
import { everyJob } from '../templates/every-job.ts';
import { footprintJobs } from '../templates/full-job.ts';

const off = (job: Job): Job => setAt(setAt(job, 'show.sectionAcross', -31.3), 'show.sectionAlong', 21);

const jobs: readonly (readonly [string, Job])[] = [
  ...everyJob,
  ['sections off the middle', off(workedExample())],
  ['a pyramid, sections off the middle', off(footprintJobs.pyramid?.() ?? workedExample())],
];

describe.each(jobs)('%s', (_, asked) => {
  it('has no number on its drawing that is neither', () => {
    const one = built(asked);
    const { marks } = threeViews(one.job, one.design, 3.5, sayWith(one.job.show));
    const typed = typable(marks, one.job);
    const asks = askable(marks, one, typed);
    const mute = marks.flatMap((mark) => {
      if (mark.kind === 'path' || !mark.label.some((part) => typeof part === 'object')) return [];
      // Under the view from above a line sums up what many old holes are.
      if (mark.id.startsWith('above.more.')) return [];
      const text = mark.kind === 'note' ? mark.id : `${mark.id}.value`;
      return typed.has(text) || asks.has(text) ? [] : [text];
    });
    expect(mute).toEqual([]);
  });
});
