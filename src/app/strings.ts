import { fieldAt, setAt } from '../../geometry/fields.ts';
import type { Job, JobString } from '../../geometry/job.ts';

export type Side = 'bass' | 'treble';

const freeKey = (list: readonly JobString[]): string => {
  const taken = new Set(list.map(({ id }) => id));
  let n = list.length + 1;
  while (taken.has(`string-${n}`)) n += 1;
  return `string-${n}`;
};

/** The job with one more string on one side: the outer one's twin, with a key of its own. */
export const withString = (job: Job, side: Side): Job => {
  const { list } = job.strings;
  const twin = side === 'bass' ? list[0] : list.at(-1);
  if (twin === undefined) return job;
  const added = { ...twin, id: freeKey(list) };
  return setAt(job, 'strings.list', side === 'bass' ? [added, ...list] : [...list, added]);
};

/** The job without the string of this key. */
export const withoutString = (job: Job, id: string): Job =>
  setAt(
    job,
    'strings.list',
    job.strings.list.filter((string) => string.id !== id),
  );

/** What a person calls the field at a path, the string named where it is a string's: “Gauge, E2”. */
export const fieldTitle = (job: Job, path: string): string => {
  const label = fieldAt(path)?.label ?? path;
  const [, , id] = path.startsWith('strings.list.') ? path.split('.') : [];
  const string = job.strings.list.find((one) => one.id === id);
  return string === undefined ? label : `${label}, ${string.name}`;
};
