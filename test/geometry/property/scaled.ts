import { fieldAt } from '../../../geometry/fields.ts';
import type { Job } from '../../../geometry/job.ts';

const lengths = new Map<string, boolean>();

/** Whether the field at a path holds a length: asked once for all items of a list. */
const isLength = (path: string, generic: string): boolean => {
  const before = lengths.get(generic);
  if (before !== undefined) return before;
  const kind = fieldAt(path)?.kind;
  const is = kind === 'length' || kind === 'radius' || kind === 'gauge';
  lengths.set(generic, is);
  return is;
};

const scaledValue = (value: unknown, k: number, path: string, generic: string): unknown => {
  const join = (head: string, key: string) => (head === '' ? key : `${head}.${key}`);
  if (typeof value === 'number') return isLength(path, generic) ? value * k : value;
  if (Array.isArray(value))
    return value.map((item) =>
      scaledValue(item, k, join(path, (item as { readonly id: string }).id), join(generic, '*')),
    );
  if (typeof value !== 'object' || value === null) return value;
  return Object.fromEntries(
    Object.entries(value).map(([key, part]) => [key, scaledValue(part, k, join(path, key), join(generic, key))]),
  );
};

/** The job with every length, radius and gauge times k; counts, slopes, pitches and words as they were. */
export const scaledJob = (job: Job, k: number): Job => scaledValue(job, k, '', '') as Job;
