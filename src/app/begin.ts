import { build } from '../../geometry/build.ts';
import type { Job } from '../../geometry/job.ts';
import { type Beginning, type Built, type State, untouched } from './state.ts';

/** What a job gives: its numbers, or its problems beside the last that could be built. */
export const settle = (job: Job, before: Built | undefined): Pick<State, 'job' | 'solved' | 'built'> => {
  const solved = build(job);
  return { job, solved, built: solved.ok ? solved : before };
};

/** How the bench stands at first. */
export const begin = ({ job, built, kept = [], isSaved = true, notices = [], folds = {} }: Beginning): State => ({
  ...untouched,
  ...settle(job, built && settle(built, undefined).built),
  saved: isSaved ? job : undefined,
  kept,
  notices,
  folds,
});
