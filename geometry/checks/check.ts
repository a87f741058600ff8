import type { Design } from '../design.ts';
import type { Settled } from '../settle.ts';
import type { CheckId, Range } from './ranges.ts';

export type Level = 'right' | 'doubtful' | 'wrong';

/** One number that a check looks at, and where: a string's name, an end, a side. In the stored unit of the check's range. */
export interface Fact {
  readonly where?: string;
  readonly value: number;
}

/** What a check's sentence is made from. */
export interface Found {
  /** The fact that decides the level. */
  readonly worst: Fact;
  readonly level: Level;
  /** Every fact, worst first. */
  readonly facts: readonly Fact[];
  readonly range: Range;
  /** Says a value of this check in the reader's unit, with as many digits as keep it on its side of each limit that is shown. */
  readonly say: (value: number) => string;
  readonly job: Settled;
  readonly design: Design;
}

/** One check: what it looks at, what it says, and what can be done. A new check is a file beside this one, a line in index.ts and its range. */
export interface Check {
  readonly id: CheckId;
  /** What it looks at; none where it does not apply to this job. */
  readonly facts: (job: Settled, design: Design) => readonly Fact[];
  /** What is found, as a heading that names the number, such as “Saddle stands 4.65 mm out at E2”. */
  readonly says: (found: Found) => string;
  /** What it means where it is not right, in a short clause, by the side on which it is out. */
  readonly means: { readonly low?: string; readonly high?: string };
  /** The field that is looked at first, to be shown beside the finding. */
  readonly path: string;
  /** What advice aims at within what is right, where only just right is not what a person would type. */
  readonly aim?: Range;
  /** Fields that can bring it right, best first; those of one group are changed together. In a path `*` stands for every string. */
  readonly fixes: readonly (readonly string[])[];
}

/** What a check found. */
export interface Finding {
  readonly check: CheckId;
  readonly title: string;
  readonly level: Level;
  /** The sentence: what was found, with its number. */
  readonly says: string;
  /** What that means; empty where it is right. */
  readonly means: string;
  /** The range that is right, with its unit: “usual 2.0 to 4.5 mm”, or “your range …” where the job has its own. */
  readonly range: string;
  /** Where that range comes from. */
  readonly source: string;
  readonly isOwnRange: boolean;
  readonly path: string;
  /** Worst first. */
  readonly facts: readonly Fact[];
}

/** One field to change, and to what: `value` as stored, a number or a choice; `text` as it can be typed into the field with its unit, or the choice's name. */
export interface Change {
  readonly path: string;
  readonly value: number | string;
  readonly text: string;
}

/** A way to bring a finding right: all its changes together. Solved with the same solver, tried, and found to make it right. */
export interface Advice {
  readonly changes: readonly Change[];
  /** The sentence, such as “Make the thickness at the centre 9.5 mm.” */
  readonly says: string;
  /** Checks that it makes worse. */
  readonly worsens: readonly CheckId[];
}
