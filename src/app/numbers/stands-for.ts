import type { Job } from '../../../geometry/job.ts';
import { settledNumber } from './settled.ts';

/** The number that a word means in this job, where it is a plain other number of it, mm. */
const means: Readonly<Record<string, (job: Job) => number>> = {
  'bridge.tipTreble': ({ bridge }) => bridge.tipThickness,
  'show.sectionAlong': ({ bridge }) => bridge.frontToSaddle,
  'pins.leaves': ({ pins }) => pins.fromSaddle - pins.hole / 2,
};

/** What a word in a field stands for: the number that the readings give, or another one of the job; undefined where it is neither. */
export const standsFor = (job: Job, path: string): number | undefined => settledNumber(job, path) ?? means[path]?.(job);
