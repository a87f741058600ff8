import { jobOf, type Letter } from '../../geometry/alternatives.ts';
import { build } from '../../geometry/build.ts';
import type { Alternative, Job } from '../../geometry/job.ts';
import type { Solved } from '../../geometry/solve.ts';
import type { LaidOver } from '../../geometry/views/laid-over.ts';
import { overlay } from '../../geometry/views/overlay.ts';
import type { Built, State } from './state.ts';

/** An alternative with its numbers, or with what keeps it from being built. */
export interface SolvedAlternative {
  readonly letter: Letter;
  readonly name: string;
  readonly solved: Solved;
}

/** What of a job leaves an alternative's numbers as they are. */
const idle: ReadonlySet<string> = new Set(['name', 'date', 'setup', 'alternatives', 'slot']);

/** Whether two jobs that an alternative was put into ask for the same numbers: their groups are shared while nothing in them changes. */
const asksTheSame = (a: Job, b: Job): boolean =>
  (Object.keys(a) as (keyof Job)[]).every((key) => idle.has(key) || a[key] === b[key]) &&
  a.slot.fromNut === b.slot.fromNut &&
  a.slot.slant === b.slot.slant &&
  // Where the bridge stays the slot is measured, and the job's own.
  (a.work === 'bridge' || a.slot === b.slot);

const known = new WeakMap<Alternative, { readonly asked: Job; readonly solved: Solved }>();

/** An alternative's numbers, worked out when they are first asked for, and again only once something changes that they come from. */
const solvedOf = (job: Job, alternative: Alternative): Solved => {
  const asked = jobOf(job, alternative);
  const before = known.get(alternative);
  if (before !== undefined && asksTheSame(before.asked, asked)) return before.solved;
  const solved = build(asked);
  known.set(alternative, { asked, solved });
  return solved;
};

/** Every alternative of a job with its numbers. One that cannot be built says why, and keeps none of the others from it. */
export const solvedAlternatives = (job: Job): readonly SolvedAlternative[] =>
  job.alternatives.list.map((alternative) => ({
    letter: alternative.id,
    name: alternative.name,
    solved: solvedOf(job, alternative),
  }));

/** The key under which it is kept whether an alternative is laid over the present design. */
export const overKey = (letter: Letter): string => `over.${letter}`;

/** What lies over a design: every alternative of the job that can be built and is not hidden. */
export const othersOf = (built: Built, job: Job, folds: State['folds']): LaidOver =>
  overlay(
    built,
    solvedAlternatives(job).flatMap(({ letter, solved }) =>
      solved.ok && folds[overKey(letter)] !== false ? [{ letter, job: solved.job, design: solved.design }] : [],
    ),
  );
