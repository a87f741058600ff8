import { readFileSync } from 'node:fs';
import { build } from '../geometry/build.ts';
import type { Design } from '../geometry/design.ts';
import type { Job } from '../geometry/job.ts';
import { readJob } from '../geometry/job-file.ts';
import type { Settled } from '../geometry/settle.ts';

/** A job's text read for a test; throws what the reader says when it refuses it. */
export const jobOf = (text: string): Job => {
  const read = readJob(text);
  if (!read.ok) throw new Error(read.problems.map((p) => p.says).join('\n'));
  return read.job;
};

export const jobFile = (file: URL): Job => jobOf(readFileSync(file, 'utf8'));

/** A job solved for a test, with its readings settled; throws its problems. */
export const built = (job: Job): { readonly job: Settled; readonly design: Design } => {
  const result = build(job);
  if (!result.ok) throw new Error(result.problems.map((p) => p.says).join('\n'));
  return { job: result.job, design: result.design };
};

export const solved = (job: Job): Design => built(job).design;

export const workedExampleFile = new URL('./jobs/worked-example.json', import.meta.url);

export const workedExample = (): Settled => built(jobFile(workedExampleFile)).job;
