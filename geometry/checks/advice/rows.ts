import type { Change, Check, Fact } from '../check.ts';
import { doubtfulIn, rightIn } from '../level.ts';
import type { CheckId } from '../ranges.ts';
import type { Axis } from './axis.ts';
import type { Bound } from './nearest.ts';
import type { Ranges, Trial } from './trial.ts';

/** One number that a check looks at, as it runs along the axes: its value here, and its rise per mm of wood along each. */
export interface Row {
  readonly check: CheckId;
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
  const nexts: { readonly step: number; readonly facts: Trial['facts'] }[] = [];
  for (const [j, { reach }] of axes.entries()) {
    const next = [small, -small]
      .filter((step) => (at[j] ?? 0) + step <= reach[1] && (at[j] ?? 0) + step >= reach[0])
      .map((step) => ({ step, trial: undefined as Trial | undefined }))
      .find((one) => {
        one.trial = attempt(exactly(axes, at.with(j, (at[j] ?? 0) + one.step)));
        return one.trial !== undefined;
      });
    if (next?.trial === undefined) return undefined;
    nexts.push({ step: next.step, facts: next.trial.facts });
  }
  return [...here.facts].flatMap(([check, facts]) =>
    facts.map((fact, k) => ({
      check,
      value: fact.value,
      rises: nexts.map(({ step, facts: all }) => {
        const next = sameFact(all.get(check), fact, k);
        return next === undefined ? 0 : (next.value - fact.value) / step;
      }),
    })),
  );
};

/** Between what a check's numbers have to stay: right for the one that is mended; for the others no worse than before, if they are minded. */
const kept = (check: CheckId, mended: Check, before: Trial, ranges: Ranges, mindsOthers: boolean) => {
  const range = ranges.get(check) ?? {};
  if (check === mended.id) {
    const [low, high] = rightIn(range);
    const { from = low, to = high } = mended.aim ?? {};
    return [Math.max(low, from), Math.min(high, to)] as const;
  }
  const level = before.levels.get(check);
  return !mindsOthers || level === 'wrong' ? undefined : level === 'doubtful' ? doubtfulIn(range) : rightIn(range);
};

/** The bounds that the steps have to keep, each with room for half a step of rounding along every axis. */
export const boundsOf = (
  rows: readonly Row[],
  at: readonly number[],
  halves: readonly number[],
  of: { readonly mended: Check; readonly before: Trial; readonly ranges: Ranges; readonly mindsOthers: boolean },
): readonly Bound[] =>
  rows.flatMap(({ check, value, rises }) => {
    const limits = kept(check, of.mended, of.before, of.ranges, of.mindsOthers);
    if (limits === undefined) return [];
    const [low, high] = limits;
    const base = value - rises.reduce((sum, rise, j) => sum + rise * (at[j] ?? 0), 0);
    const room = rises.reduce((sum, rise, j) => sum + Math.abs(rise) * (halves[j] ?? 0), 0);
    return [
      ...(high === Number.POSITIVE_INFINITY ? [] : [{ along: rises, limit: high - base - room }]),
      ...(low === Number.NEGATIVE_INFINITY ? [] : [{ along: rises.map((rise) => -rise), limit: base - low - room }]),
    ];
  });
