import type { Change, Check, Fact } from '../check.ts';
import { doubtfulIn, rightIn } from '../level.ts';
import type { CheckId } from '../ranges.ts';
import type { Axis } from './axis.ts';
import type { Bound } from './nearest.ts';
import type { Ranges, Trial } from './trial.ts';

/** One number that a check looks at, as it runs along the axes: its value here, and its rise per mm of wood along each. */
export interface Row {
  /** The check; or which of the rooms to build in it is. */
  readonly of: CheckId | number;
  readonly value: number;
  readonly rises: readonly number[];
}

/** How far a step is taken to see which way things go, mm of wood. */
const small = 0.01;

/** The fact that stands in the same place after a change. */
const sameFact = (facts: readonly Fact[] | undefined, { where }: Fact, k: number): Fact | undefined =>
  facts?.[k]?.where === where ? facts?.[k] : facts?.find((one) => one.where === where);

/** Changes that take each axis to these steps, as exact numbers. */
const exactly = (axes: readonly Axis[], steps: readonly number[]): readonly Change[] =>
  axes.map(({ path, valueAt }, j) => ({ path, value: valueAt(steps[j] ?? 0), text: '' }));

/** How every number that the checks look at runs along the axes, from `here` on; undefined where no step can be taken. */
export const rowsFrom = (
  axes: readonly Axis[],
  at: readonly number[],
  here: Trial,
  attempt: (changes: readonly Change[]) => Trial | undefined,
): readonly Row[] | undefined => {
  const nexts: { readonly step: number; readonly trial: Trial }[] = [];
  for (const [j, { reach }] of axes.entries()) {
    const next = [small, -small]
      .filter((step) => (at[j] ?? 0) + step <= reach[1] && (at[j] ?? 0) + step >= reach[0])
      .map((step) => ({ step, trial: undefined as Trial | undefined }))
      .find((one) => {
        one.trial = attempt(exactly(axes, at.with(j, (at[j] ?? 0) + one.step)));
        return one.trial !== undefined;
      });
    if (next?.trial === undefined) return undefined;
    nexts.push({ step: next.step, trial: next.trial });
  }
  const rooms = here.room.map((value, k) => ({
    of: k,
    value,
    rises: nexts.map(({ step, trial }) => ((trial.room[k] ?? value) - value) / step),
  }));
  const looked = [...here.facts].flatMap(([check, facts]) =>
    facts.map((fact, k) => ({
      of: check,
      value: fact.value,
      rises: nexts.map(({ step, trial }) => {
        const next = sameFact(trial.facts.get(check), fact, k);
        return next === undefined ? 0 : (next.value - fact.value) / step;
      }),
    })),
  );
  return [...looked, ...rooms];
};

/** Rows along one axis each, from the same place, as rows along all of them; undefined where one of them could not be looked along. */
export const together = (parts: readonly (readonly Row[] | undefined)[]): readonly Row[] | undefined =>
  parts.includes(undefined)
    ? undefined
    : parts[0]?.map((row, i) => ({ ...row, rises: parts.flatMap((part) => part?.[i]?.rises ?? []) }));

/** What is to be brought right, and what has to be minded meanwhile. */
export interface Minded {
  readonly mended: Check;
  readonly before: Trial;
  readonly ranges: Ranges;
  /** Whether no other check may get worse. */
  readonly mindsOthers: boolean;
}

/** Between what a check's numbers have to stay: right for the one that is mended; for the others no worse than before, if they are minded. */
const kept = (of: Row['of'], minded: Minded): readonly [number, number] | undefined => {
  const { mended, before, ranges, mindsOthers } = minded;
  // Where there is next to no room now there need not be more.
  if (typeof of === 'number') return [Math.min(0, before.room[of] ?? 0), Number.POSITIVE_INFINITY];
  const range = ranges.get(of) ?? {};
  if (of === mended.id) {
    const [low, high] = rightIn(range);
    const { from = low, to = high } = mended.aim ?? {};
    return [Math.max(low, from), Math.min(high, to)];
  }
  const level = before.levels.get(of);
  return !mindsOthers || level === 'wrong' ? undefined : level === 'doubtful' ? doubtfulIn(range) : rightIn(range);
};

/** The bounds that the steps have to keep, each with room for half a step of rounding along every axis. */
export const boundsOf = (
  rows: readonly Row[],
  at: readonly number[],
  halves: readonly number[],
  minded: Minded,
): readonly Bound[] =>
  rows.flatMap(({ of, value, rises }) => {
    const limits = kept(of, minded);
    if (limits === undefined) return [];
    const [low, high] = limits;
    const base = value - rises.reduce((sum, rise, j) => sum + rise * (at[j] ?? 0), 0);
    const room = rises.reduce((sum, rise, j) => sum + Math.abs(rise) * (halves[j] ?? 0), 0);
    return [
      ...(high === Number.POSITIVE_INFINITY ? [] : [{ along: rises, limit: high - base - room }]),
      ...(low === Number.NEGATIVE_INFINITY ? [] : [{ along: rises.map((rise) => -rise), limit: base - low - room }]),
    ];
  });
