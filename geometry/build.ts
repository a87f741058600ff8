import type { Job } from './job.ts';
import { type Solved, solve } from './solve.ts';
import { unbuildable } from './unbuildable.ts';

/**
 * A job's numbers as `solve` gives them, if what they describe can be drawn and made: a slot, pin holes and wings that do not fit the bridge are problems too. Whatever draws, reports or advises goes by
 * this. Throws nothing for a valid job.
 */
export const build = (job: Job): Solved => {
  const solved = solve(job);
  if (!solved.ok) return solved;
  const problems = unbuildable(solved.job, solved.design);
  return problems.length > 0 ? { ok: false, problems } : solved;
};
