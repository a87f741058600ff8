import { fieldAt, setAt } from '../../geometry/fields.ts';
import type { Job, JobString } from '../../geometry/job.ts';
import { noteName } from '../../geometry/units.ts';

export type Side = 'bass' | 'treble';

const freeKey = (list: readonly JobString[]): string => {
  const taken = new Set(list.map(({ id }) => id));
  let n = list.length + 1;
  while (taken.has(`string-${n}`)) n += 1;
  return `string-${n}`;
};

/** A fourth: five semitones of equal temperament. */
const fourth = 2 ** (5 / 12);

/** The job with one more string on one side, a fourth beyond the outer one and otherwise its twin, and the key that it has of its own. */
export const withString = (job: Job, side: Side): { readonly job: Job; readonly id: string } => {
  const { list } = job.strings;
  const twin = (side === 'bass' ? list[0] : list.at(-1)) as JobString;
  const wanted = side === 'bass' ? twin.pitch / fourth : twin.pitch * fourth;
  const field = fieldAt('strings.list.*.pitch');
  const pitch = Math.min(field?.max ?? wanted, Math.max(field?.min ?? wanted, wanted));
  const id = freeKey(list);
  const added = { ...twin, id, pitch, name: noteName(pitch) ?? `${twin.name}′` };
  return { job: setAt(job, 'strings.list', side === 'bass' ? [added, ...list] : [...list, added]), id };
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
