import { getAt, mostItems, setAt } from '../../../geometry/fields.ts';
import type { Job } from '../../../geometry/job.ts';
import { freeKey } from '../free-key.ts';
import { withPoint } from './points.ts';

/** A job's lists whose items are typed row by row, and what the key of an item begins with. */
const kinds = {
  'guitar.measured': 'fret',
  'top.holes': 'hole',
  'top.rises': 'rise',
  'top.braces': 'brace',
  'bridge.points': 'point',
} as const;
export type ListPath = keyof typeof kinds;
export const isListPath = (path: string): path is ListPath => Object.hasOwn(kinds, path);

type Item = Readonly<Record<string, number | string>> & { readonly id: string };
export type Values = Readonly<Record<string, number | string>>;

/** What a list of the job holds. */
export const itemsOf = (job: Job, list: ListPath): readonly Item[] => getAt(job, list) as readonly Item[];

export const isFull = (job: Job, list: ListPath): boolean =>
  itemsOf(job, list).length >= (mostItems(list) ?? Number.POSITIVE_INFINITY);

/** The job with one more item, under a key of its own: a point goes where it belongs in the outline, all else at the end. */
export const withItem = (job: Job, list: ListPath, values: Values): Job => {
  const items = itemsOf(job, list);
  const added = { ...values, id: freeKey(items, kinds[list]) };
  return list === 'bridge.points'
    ? setAt(job, list, withPoint(job.bridge, added as unknown as Job['bridge']['points'][number]))
    : setAt(job, list, [...items, added]);
};

/** The job without the item of this key. */
export const withoutItem = (job: Job, list: ListPath, id: string): Job =>
  setAt(
    job,
    list,
    itemsOf(job, list).filter((item) => item.id !== id),
  );
