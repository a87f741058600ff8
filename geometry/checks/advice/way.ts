import { fieldAt } from '../../fields.ts';
import type { Job } from '../../job.ts';
import type { Change, Check } from '../check.ts';
import type { CheckId } from '../ranges.ts';
import { type Axis, type Fineness, typed } from './axis.ts';
import { type Bound, nearest } from './nearest.ts';
import { boundsOf, type Row, rowsFrom } from './rows.ts';
import { type Ranges, type Trial, worsened } from './trial.ts';

/** A way that was tried and makes the finding right. */
export interface Way {
  readonly changes: readonly Change[];
  readonly worsens: readonly CheckId[];
  /** How much is changed, as mm of wood at an outer string. */
  readonly size: number;
}

export interface Search {
  readonly mended: Check;
  readonly before: Trial;
  readonly ranges: Ranges;
  readonly axes: readonly Axis[];
  /** How the checks' numbers run from where the job is now. */
  readonly rows: readonly Row[];
  /** Solves the job with these changes; undefined where it cannot be built. */
  readonly attempt: (changes: readonly Change[]) => Trial | undefined;
}

/** Rounds of looking again which way things go: most of what the checks look at runs nearly straight. */
const mostRounds = 6;
const hair = 1e-9;
/** A step so small, mm of wood, that it is none. */
const still = 1e-6;
/** Parts of a step by which a number may miss one and still be it. */
const onStep = 1e-8;

interface Candidate {
  readonly steps: readonly number[];
  readonly changes: readonly Change[];
}

const finenessOf = ({ finenesses }: Axis, k: number): Fineness =>
  finenesses[Math.min(k, finenesses.length - 1)] as Fineness;

/** What is typed for one axis: nothing where it stays. */
const changeTo = (axis: Axis, value: number, { digits }: Fineness, show: Job['show']): Change | 'stays' | undefined =>
  value === axis.now ? 'stays' : typed(axis.field, value, show, digits);

/** Values typed axis by axis; undefined if a field would not take one, or none changes. */
const candidate = (
  axes: readonly Axis[],
  values: readonly number[],
  k: number,
  show: Job['show'],
): Candidate | undefined => {
  const all = axes.map((axis, j) => changeTo(axis, values[j] ?? axis.now, finenessOf(axis, k), show));
  const changes = all.filter((one): one is Change => typeof one === 'object');
  if (all.includes(undefined) || changes.length === 0) return undefined;
  const steps = all.map((one, j) => (typeof one === 'object' ? (axes[j]?.stepTo(Number(one.value)) ?? 0) : 0));
  return { steps, changes };
};

/** The first number on a step at or beyond where a step leads, going away from what stands there; what stands there itself where it leads nowhere. */
const awayFrom = (axis: Axis, to: number, step: number, farther = 0): number => {
  const wanted = axis.valueAt(to);
  if (Math.abs(to) < still) return axis.now;
  return wanted > axis.now
    ? (Math.ceil(wanted / step - onStep) + farther) * step
    : (Math.floor(wanted / step + onStep) - farther) * step;
};

const keeps = ({ along, limit }: Bound, steps: readonly number[]): boolean =>
  along.reduce((sum, a, j) => sum + a * (steps[j] ?? 0), 0) <= limit + hair;

/** One field: the first number as a person types it that lies within the bounds, going away from what stands there; `farther` whole steps beyond it. */
const alongOne = (
  axis: Axis,
  bounds: readonly Bound[],
  k: number,
  farther: number,
  show: Job['show'],
): Candidate | undefined => {
  let [low, high] = axis.reach;
  for (const {
    along: [rise = 0],
    limit,
  } of bounds) {
    if (Math.abs(rise) < hair) {
      if (limit < -hair) return undefined;
    } else if (rise > 0) high = Math.min(high, limit / rise);
    else low = Math.max(low, limit / rise);
  }
  if (low > high + hair) return undefined;
  const { step } = finenessOf(axis, k);
  const value = awayFrom(axis, Math.min(high, Math.max(low, 0)), step, farther);
  const to = axis.stepTo(value);
  return to < low - hair || to > high + hair ? undefined : candidate([axis], [value], k, show);
};

/** Fields together: the nearest steps that keep the bounds, rounded away from what stands there if the bounds are kept so; else those that keep them with room to round, rounded. */
const alongAll = (
  { axes, before }: Search,
  at: readonly number[],
  boundsWith: (halves: readonly number[]) => readonly Bound[],
  k: number,
): Candidate | undefined => {
  const halves = axes.map((axis, j) => {
    const value = axis.valueAt(at[j] ?? 0);
    return Number.isFinite(value)
      ? Math.abs(axis.stepTo(value + finenessOf(axis, k).step / 2) - axis.stepTo(value))
      : 0;
  });
  const reach = axes.flatMap(({ reach: [low, high] }, j): readonly Bound[] => {
    const unit = axes.map((_, i) => (i === j ? 1 : 0));
    return [
      { along: unit, limit: high },
      { along: unit.map((one) => -one), limit: -low },
    ];
  });
  const { show } = before.job;
  const exact = [...boundsWith(axes.map(() => 0)), ...reach];
  const shortest = nearest(axes.length, exact);
  if (shortest === undefined) return undefined;
  const outward = candidate(
    axes,
    axes.map((axis, j) => awayFrom(axis, shortest[j] ?? 0, finenessOf(axis, k).step)),
    k,
    show,
  );
  if (outward !== undefined && exact.every((bound) => keeps(bound, outward.steps))) return outward;
  const roomy = nearest(axes.length, [...boundsWith(halves), ...reach]);
  if (roomy === undefined) return undefined;
  const values = axes.map((axis, j) => {
    const { step } = finenessOf(axis, k);
    const value = axis.valueAt(roomy[j] ?? 0);
    return Math.abs(value - axis.now) <= step / 2 ? axis.now : Math.round(value / step) * step;
  });
  return candidate(axes, values, k, show);
};

/** A neck that is reset rises under tension as before: where the rise is worked out from readings it has to be typed with it. */
const withRise = (changes: readonly Change[], { job, solved }: Trial): readonly Change[] => {
  const { atPitch } = solved.design.readings;
  const isRead = job.guitar.rise === 'readings' && (atPitch.strung ?? atPitch.straightedge) !== undefined;
  const field = fieldAt('guitar.rise');
  if (!isRead || field === undefined || !changes.some(({ path }) => path === 'guitar.neckPlaneHeight')) return changes;
  const rise = typed(field, solved.job.guitar.rise, job.show);
  return rise === undefined ? changes : [...changes, rise];
};

/**
 * The nearest numbers of the axes, as a person types them, that make the finding right; with `mindsOthers` only if no other check gets worse. What the checks look at is taken to run straight from where it was
 * tried last; what is found is tried with the solver, and looked at again from there. Undefined where nothing was found.
 */
export const findWay = (search: Search, mindsOthers: boolean): Way | undefined => {
  const { mended, before, ranges, axes, attempt } = search;
  const { show } = before.job;
  let rows: readonly Row[] | undefined = search.rows;
  let at: readonly number[] = axes.map(() => 0);
  let last = '';
  let farther = 0;
  for (let round = 0; round < mostRounds && rows !== undefined; round += 1) {
    const from = rows;
    const boundsWith = (halves: readonly number[]) =>
      boundsOf(from, at, halves, { mended, before, ranges, mindsOthers });
    const [first] = axes;
    let next: Candidate | undefined;
    for (let k = 0; next === undefined && axes.some(({ finenesses }) => k < finenesses.length); k += 1)
      next =
        axes.length === 1 && first !== undefined
          ? alongOne(first, boundsWith([0]), k, farther, show)
          : alongAll(search, at, boundsWith, k);
    if (next === undefined) return undefined;
    const changes = withRise(next.changes, before);
    const key = changes.map(({ path, text }) => `${path} ${text}`).join();
    farther = key === last ? farther + 1 : 0;
    last = key;
    const trial = attempt(changes);
    if (trial === undefined) return undefined;
    const worsens = worsened(before, trial);
    if (trial.levels.get(mended.id) === 'right' && !(mindsOthers && worsens.length > 0))
      return { changes, worsens, size: next.steps.reduce((sum, step) => sum + Math.abs(step), 0) };
    at = next.steps;
    if (round + 1 < mostRounds) rows = rowsFrom(axes, at, trial, attempt);
  }
  return undefined;
};
