import { build } from '../../geometry/build.ts';
import type { Job } from '../../geometry/job.ts';
import { freshId } from './keep/fresh-id.ts';
import { type Beginning, type Built, type State, untouched } from './state.ts';

/** What a job gives: its numbers, or its problems beside the last that could be built. */
export const settle = (job: Job, before: Built | undefined): Pick<State, 'job' | 'solved' | 'built'> => {
  const solved = build(job);
  return { job, solved, built: solved.ok ? solved : before };
};

/** How the bench stands at first. */
export const begin = ({ job, id = freshId(), isFresh = true, built, notices = [], folds = {} }: Beginning): State => ({
  ...untouched,
  id,
  isFresh,
  ...settle(job, built && settle(built, undefined).built),
  notices,
  folds,
});
