import type { Job } from '../../geometry/job.ts';
import { readJob } from '../../geometry/job-file.ts';
import { createBench } from '../../src/app/store.ts';
import { starters } from '../../src/jobs/index.ts';

/** A starter's job. */
export const starterJob = (id: string): Job => {
  const read = readJob(starters.find((starter) => starter.id === id)?.text ?? '');
  if (!read.ok) throw new Error(read.problems[0]?.says);
  return read.job;
};

/** A bench with the demo on it. */
export const demoBench = () => createBench({ job: starterJob('heron') });
