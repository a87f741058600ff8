import { build } from '../../geometry/build.ts';
import type { Job } from '../../geometry/job.ts';
import { readAs } from '../../geometry/read-as.ts';
import type { DecimalMark } from '../../geometry/units.ts';
import { asRead, type Decimals } from './decimal.ts';
import { freshId } from './keep/fresh-id.ts';
import { type Beginning, type Built, type State, untouched } from './state.ts';

/** What could be built before, as it is read with this mark now: another object, where its texts are others. */
const readAgain = (before: Built, mark: DecimalMark): Built => {
  const job = readAs(before.job, mark);
  return job === before.job ? before : { job, design: { ...before.design } };
};

/** What a job gives, its numbers said with this decimal mark: them, or its problems beside the last that could be built. */
export const settle = (
  job: Job,
  before: Built | undefined,
  { mark }: Decimals,
): Pick<State, 'job' | 'solved' | 'built'> => {
  const solved = build(asRead(job, mark));
  return { job, solved, built: solved.ok ? solved : before && readAgain(before, mark) };
};

/** How the bench stands at first. */
export const begin = ({
  job,
  id = freshId(),
  isFresh = true,
  built,
  notices = [],
  folds = {},
  decimals = untouched.decimals,
}: Beginning): State => ({
  ...untouched,
  id,
  isFresh,
  decimals,
  ...settle(job, built && settle(built, undefined, decimals).built, decimals),
  notices,
  folds,
});
