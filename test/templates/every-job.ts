import type { Job } from '../../geometry/job.ts';
import { starters } from '../../src/jobs/index.ts';
import { jobOf } from '../solved.ts';
import { footprintJobs, fullJob, oldTop, twelveStrings } from './full-job.ts';

/** What a drawing is held to for every job by its name: the starters, the ones with everything on them, and one for each footprint. */
export const everyJob: readonly (readonly [id: string, job: Job])[] = [
  ...starters.map(({ id, text }) => [id, jobOf(text)] as const),
  ['everything', fullJob()],
  ['twelve', twelveStrings()],
  ['old-top', oldTop()],
  ...Object.entries(footprintJobs).map(([id, asked]) => [id, asked()] as const),
];
