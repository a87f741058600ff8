import { writeJob } from '../../../geometry/job-file.ts';
import { fileName } from '../../../geometry/names.ts';
import type { Bench } from '../store.ts';
import { saveText } from './files.ts';

/** Hands the job at the bench to the browser as a file. */
export const saveJob = (bench: Bench): void => {
  const { job } = bench.getState();
  bench.markSaved();
  saveText(writeJob(job), 'application/json', `${fileName(job.name)}.json`);
};
