import { setAt } from '../../geometry/fields.ts';
import { type Job, notTaken } from '../../geometry/job.ts';
import { readJob } from '../../geometry/job-file.ts';
import { createBench } from '../../src/app/store.ts';
import { starters } from '../../src/jobs/index.ts';

/** A starter's job. */
export const starterJob = (id: string): Job => {
  const read = readJob(starters.find((starter) => starter.id === id)?.text ?? '');
  if (!read.ok) throw new Error(read.problems[0]?.says);
  return read.job;
};

/** The demo before anything of the old guitar was read: no readings, no measured frets, rise and setbacks typed. */
export const unreadJob = (): Job => {
  const job = starterJob('heron');
  const nothing = Object.fromEntries(Object.keys(job.strung).map((key) => [key, notTaken])) as Job['strung'];
  return Object.entries({
    strung: nothing,
    'guitar.measured': [],
    'guitar.rise': 0.7,
    'strings.setbacks': 'typed',
  } as const).reduce<Job>((made, [path, value]) => setAt(made, path, value), job);
};

/** A bench with the demo on it. */
export const demoBench = () => createBench({ job: starterJob('heron') });
