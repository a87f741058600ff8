import type { Design } from '../../geometry/design.ts';
import type { Job } from '../../geometry/job.ts';
import type { Problem } from '../../geometry/problem.ts';
import type { Settled } from '../../geometry/settle.ts';
import type { Solved } from '../../geometry/solve.ts';
import type { Decimals } from './decimal.ts';

/** What stands in a field while it differs from the stored value; `says` tells why it is refused. */
export interface Draft {
  readonly text: string;
  readonly says?: string;
}

/** A change that can be taken back: what it changed, and on its other side the job with the last of its numbers that could be built. */
export interface Step {
  readonly name: string;
  readonly path: string;
  /** Which job of the shelf it was, and whether it was as it came. */
  readonly id: string;
  readonly isFresh: boolean;
  readonly job: Job;
  readonly built: Built | undefined;
}

/** How all stood before anything was typed at a field: what is refused there puts it back. */
export interface Entry extends Pick<State, 'job' | 'isFresh' | 'solved' | 'built' | 'past' | 'future'> {
  readonly path: string;
}

/** Something said to the person until they put it away. */
export interface Notice {
  readonly id: string;
  readonly says: string;
  readonly details: readonly string[];
  /** Nothing is wrong: it is only said. */
  readonly fine?: boolean;
  /** Something that it offers to do. */
  readonly act?: { readonly says: string; readonly run: () => void };
  /** A file that it offers to save: what it says, its name and text; the job as it is where it has none of its own. */
  readonly file?: { readonly says?: string; readonly name?: string; readonly text?: string };
}

/** A job that could be built, its readings settled, and its numbers. */
export interface Built {
  readonly job: Settled;
  readonly design: Design;
}

export interface State {
  /** Which job of the shelf it is. */
  readonly id: string;
  /** It is a starter or a new job as it came: it goes on the shelf with its first change. */
  readonly isFresh: boolean;
  readonly job: Job;
  /** With which decimal mark numbers are read on this device; what is built says its numbers so. */
  readonly decimals: Decimals;
  readonly solved: Solved;
  /** The last numbers of this job that could be built: those that it has now when they can. */
  readonly built: Built | undefined;
  readonly drafts: Readonly<Record<string, Draft>>;
  readonly past: readonly Step[];
  readonly future: readonly Step[];
  /** How all stood before the field that is being typed at: all that is typed there is one step from it. */
  readonly entry: Entry | undefined;
  /** The path of the field in focus, and of the one that was last. */
  readonly focus: string | undefined;
  readonly lastFocus: string | undefined;
  /** The path of the field whose number is pointed at on the drawing. */
  readonly pointed: string | undefined;
  /** The path of the number that a hand holds on the drawing and has not let go of: what takes time waits for it. */
  readonly held: string | undefined;
  /** What kept the number that was dragged or stepped last from going on. */
  readonly barred: Barred | undefined;
  readonly notices: readonly Notice[];
  /** Whether the drawer with the numbers is open, where there is one. */
  readonly isDrawerOpen: boolean;
  /** Which parts of the page that can be folded the person has opened or closed, by their keys. */
  readonly folds: Readonly<Record<string, boolean>>;
}

/** A number that went as far as it can be built: farther, this is in the way. */
export interface Barred {
  readonly path: string;
  /** It holds for this job only. */
  readonly job: Job;
  readonly problem: Problem;
}

/** What the bench begins with. */
export interface Beginning {
  readonly job: Job;
  /** Its key on the shelf; a fresh one where it does not lie there. */
  readonly id?: string;
  readonly isFresh?: boolean;
  /** The last job that could be built, where this one cannot. */
  readonly built?: Job | undefined;
  readonly notices?: readonly Notice[];
  readonly folds?: State['folds'];
  readonly decimals?: Decimals;
}

/** How a bench stands at which nothing was done yet. */
export const untouched = {
  decimals: { chosen: 'browser', mark: 'point' },
  drafts: {},
  past: [],
  future: [],
  entry: undefined,
  focus: undefined,
  lastFocus: undefined,
  pointed: undefined,
  held: undefined,
  barred: undefined,
  notices: [],
  isDrawerOpen: false,
  folds: {},
} satisfies Partial<State>;
