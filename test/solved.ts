import { readFileSync } from 'node:fs';
import type { Design } from '../geometry/design.ts';
import type { Job } from '../geometry/job.ts';
import { readJob } from '../geometry/job-file.ts';
import { solve } from '../geometry/solve.ts';

/** A job file read for a test; throws what the reader says when it refuses it. */
export const jobFile = (file: URL): Job => {
  const read = readJob(readFileSync(file, 'utf8'));
  if (!read.ok) throw new Error(read.problems.map((p) => p.says).join('\n'));
  return read.job;
};

/** A job solved for a test; throws its problems. */
export const solved = (job: Job): Design => {
  const result = solve(job);
  if (!result.ok) throw new Error(result.problems.map((p) => p.says).join('\n'));
  return result.design;
};

export const solvedFile = (file: URL): { job: Job; design: Design } => {
  const job = jobFile(file);
  return { job, design: solved(job) };
};

export const workedExample = (): Job => jobFile(new URL('./jobs/worked-example.json', import.meta.url));
