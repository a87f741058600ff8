import type { Design } from '../../geometry/design.ts';
import type { Job } from '../../geometry/job.ts';
import type { Settled } from '../../geometry/settle.ts';
import type { Solved } from '../../geometry/solve.ts';

/** What stands in a field while it differs from the stored value; `says` tells why it is refused. */
export interface Draft {
  readonly text: string;
  readonly says?: string;
}

/** A change that can be taken back: what it changed, and on its other side the job with the last of its numbers that could be built. */
export interface Step {
  readonly name: string;
  readonly path: string;
  readonly job: Job;
  readonly built: Built | undefined;
}

/** How all stood before anything was typed at a field: what is refused there puts it back. */
export interface Entry extends Pick<State, 'job' | 'solved' | 'built' | 'past' | 'future'> {
  readonly path: string;
}

/** Something said to the person until they put it away. */
export interface Notice {
  readonly id: string;
  readonly says: string;
  readonly details: readonly string[];
  /** Nothing is wrong: it is only said. */
  readonly fine?: boolean;
}

/** A job that could be built, its readings settled, and its numbers. */
export interface Built {
  readonly job: Settled;
  readonly design: Design;
}

export interface State {
  readonly job: Job;
  readonly solved: Solved;
  /** The last numbers of this job that could be built: those that it has now when they can. */
  readonly built: Built | undefined;
  readonly drafts: Readonly<Record<string, Draft>>;
  readonly past: readonly Step[];
  readonly future: readonly Step[];
  /** How all stood before the field that is being typed at: all that is typed there is one step from it. */
  readonly entry: Entry | undefined;
  /** The job as it was last loaded or saved: while it is the job itself there is nothing to lose. */
  readonly saved: Job | undefined;
  /** Jobs that another one was put in place of, unsaved edits and all; the last one is offered back first. */
  readonly kept: readonly Job[];
  /** The path of the field in focus, and of the one that was last. */
  readonly focus: string | undefined;
  readonly lastFocus: string | undefined;
  /** The path of the field whose number is pointed at on the drawing. */
  readonly pointed: string | undefined;
  /** The path of the number that a hand holds on the drawing and has not let go of: what takes time waits for it. */
  readonly held: string | undefined;
  readonly notices: readonly Notice[];
  /** Which parts of the page that can be folded the person has opened or closed, by their keys. */
  readonly folds: Readonly<Record<string, boolean>>;
}

/** What the bench begins with. */
export interface Beginning {
  readonly job: Job;
  /** The last job that could be built, where this one cannot. */
  readonly built?: Job | undefined;
  readonly kept?: readonly Job[];
  /** Whether the job is as some file has it. */
  readonly isSaved?: boolean;
  readonly notices?: readonly Notice[];
  readonly folds?: State['folds'];
}

/** How a bench stands at which nothing was done yet. */
export const untouched = {
  drafts: {},
  past: [],
  future: [],
  entry: undefined,
  kept: [],
  focus: undefined,
  lastFocus: undefined,
  pointed: undefined,
  held: undefined,
  notices: [],
  folds: {},
} satisfies Partial<State>;
