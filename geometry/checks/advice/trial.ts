import { build } from '../../build.ts';
import type { Job } from '../../job.ts';
import type { Solved } from '../../solve.ts';
import type { Fact, Level } from '../check.ts';
import { checks } from '../index.ts';
import { rank, worstLevel } from '../level.ts';
import { type CheckId, checkIds, type Range, rangeOf } from '../ranges.ts';
import { roomOf } from './room.ts';

/** A job as it was asked for, solved, with all that its checks look at. */
export interface Trial {
  readonly job: Job;
  readonly solved: Extract<Solved, { ok: true }>;
  readonly facts: ReadonlyMap<CheckId, readonly Fact[]>;
  readonly levels: ReadonlyMap<CheckId, Level>;
  /** How far it is from what could not be built. */
  readonly room: readonly number[];
}

export type Ranges = ReadonlyMap<CheckId, Range>;

/** The range of each check in this job. */
export const rangesOf = (job: Job): Ranges => new Map(checkIds.map((id) => [id, rangeOf(job, id).range]));

/** Solves a job and looks at it with every check; undefined where it cannot be built. */
export const tryOut = (job: Job, ranges: Ranges): Trial | undefined => {
  const solved = build(job);
  if (!solved.ok) return undefined;
  const facts = new Map(checks.map(({ id, facts }) => [id, facts(solved.job, solved.design)]));
  const levels = new Map([...facts].map(([id, of]) => [id, worstLevel(ranges.get(id) ?? {}, of)]));
  return { job, solved, facts, levels, room: roomOf(solved.job, solved.design) };
};

/** The checks that are worse after than before. */
export const worsened = (before: Trial, after: Trial): readonly CheckId[] =>
  checkIds.filter((id) => rank[after.levels.get(id) ?? 'right'] > rank[before.levels.get(id) ?? 'right']);
