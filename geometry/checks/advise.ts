import { setAt } from '../fields.ts';
import type { Job } from '../job.ts';
import { type Axis, axesAt } from './advice/axis.ts';
import { isIdleReset } from './advice/reset.ts';
import { type Row, rowsFrom, together } from './advice/rows.ts';
import { rangesOf, type Trial, tryOut, worsened } from './advice/trial.ts';
import { findWay, type Way } from './advice/way.ts';
import { lateness, sentence } from './advice/words.ts';
import type { Advice, Change } from './check.ts';
import { checks } from './index.ts';
import type { CheckId } from './ranges.ts';

const mostWays = 3;

/** Once so many jobs were solved no further fields are looked at: advice has to come while it is still wanted. */
const mostTrials = 48;

/** The axes of a group of fields, `*` made out for every string; undefined where one of them may not be changed. */
const axesOf = (group: readonly string[], { job, solved }: Trial): readonly Axis[] | undefined => {
  const paths = group.map((path) =>
    path.includes('*') ? job.strings.list.map(({ id }) => path.replace('*', id)) : [path],
  );
  const axes = axesAt(job, solved.job, paths.flat());
  const isFree = (part: readonly string[]) => axes.some(({ path }) => part.includes(path));
  return paths.every(isFree) ? axes : undefined;
};

/** Whether a way changes only fields among these: then more of them need not be changed. */
const isWithin = ({ changes }: Way, axes: readonly Axis[]): boolean =>
  changes.every(({ path }) => path === 'guitar.rise' || axes.some((axis) => axis.path === path));

/** Break points that a slot, as it is, cannot carry: whether one that is filled and cut anew could. */
const cutAnew = (job: Job, id: CheckId, tried: (job: Job) => Trial | undefined, before: Trial): readonly Advice[] => {
  if (id !== 'intonation' || job.slot.line !== 'typed') return [];
  const after = tried(setAt(job, 'slot.line', 'least'));
  if (after === undefined || after.levels.get(id) !== 'right') return [];
  const says =
    job.work === 'saddle'
      ? 'Fill the slot, and cut it anew where the largest miss over all strings is least.'
      : 'Place the slot where the largest miss over all strings is least.';
  const change: Change = { path: 'slot.line', value: 'least', text: 'least miss over all' };
  return [{ changes: [change], says, worsens: worsened(before, after) }];
};

/**
 * Up to three ways to bring a finding right, each solved with the same solver as the drawing: its texts, typed into the fields, make that finding right; those that make no other check worse first, then what a bench
 * can change before wanted actions, a neck reset and readings to take again, then the smallest change. Empty where the finding is right, where the job cannot be built, or where nothing that may be changed brings it right.
 */
export const advise = (job: Job, id: CheckId): readonly Advice[] => {
  const check = checks.find((one) => one.id === id);
  const ranges = rangesOf(job);
  const before = tryOut(job, ranges);
  if (check === undefined || before === undefined || (before.levels.get(id) ?? 'right') === 'right') return [];

  let trials = 0;
  const attempt = (changes: readonly Change[]) => {
    trials += 1;
    return tryOut(
      changes.reduce((changed, { path, value }) => setAt(changed, path, value), job),
      ranges,
    );
  };
  const known = new Map<string, readonly Row[] | undefined>();
  /** How the checks' numbers run along one axis from where the job is now; looked at once. */
  const along = (axis: Axis): readonly Row[] | undefined => {
    if (!known.has(axis.path)) known.set(axis.path, rowsFrom([axis], [0], before, attempt));
    return known.get(axis.path);
  };
  const good: Way[] = [];
  const others: Way[] = [];
  for (const group of check.fixes) {
    if (good.length >= mostWays || trials >= mostTrials) break;
    const axes = axesOf(group, before);
    if (axes === undefined || good.some((way) => isWithin(way, axes))) continue;
    const rows = together(axes.map(along));
    if (rows === undefined) continue;
    const search = { mended: check, before, ranges, axes, rows, attempt };
    const worthIt = (way: Way | undefined) =>
      way === undefined || isIdleReset(way.changes, before.solved.job) ? undefined : way;
    const way = worthIt(findWay(search, true));
    if (way !== undefined) good.push(way);
    else if (!others.some((one) => isWithin(one, axes))) {
      const other = worthIt(findWay(search, false));
      if (other !== undefined) others.push(other);
    }
  }
  const inOrder = (ways: readonly Way[]) =>
    [...ways].sort(
      (a, b) =>
        a.worsens.length - b.worsens.length || lateness(a.changes, job) - lateness(b.changes, job) || a.size - b.size,
    );
  const anew = cutAnew(job, id, (changed) => tryOut(changed, ranges), before);
  const ways = inOrder([...good, ...others]).map(({ changes, worsens }) => ({
    changes,
    says: sentence(changes, job, before.solved.job),
    worsens,
  }));
  return [...anew, ...ways]
    .sort((a, b) => Number(a.worsens.length > 0) - Number(b.worsens.length > 0))
    .slice(0, mostWays);
};
