import { cleanName } from '../../../geometry/names.ts';
import type { Solved } from '../../../geometry/solve.ts';
import { solvedAlternatives } from '../alternatives.ts';
import type { State } from '../store.ts';
import { words } from '../words.ts';

/** A design beside others: the present one has no letter. */
export interface Compared {
  readonly letter: string | undefined;
  readonly name: string;
  /** What it is called in a sentence. */
  readonly called: string;
  readonly solved: Solved;
}

/** The present design, then each alternative by its letter. */
export const designsOf = ({ job, solved }: Pick<State, 'job' | 'solved'>): readonly Compared[] => [
  {
    letter: undefined,
    name: cleanName(job.alternatives.present),
    called: words.compare.calledPresent(cleanName(job.alternatives.present)),
    solved,
  },
  ...solvedAlternatives(job).map(({ letter, name, solved: own }) => ({
    letter,
    name: cleanName(name),
    called: words.compare.called(letter, cleanName(name)),
    solved: own,
  })),
];
