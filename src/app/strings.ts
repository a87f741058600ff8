import { fieldAt, setAt } from '../../geometry/fields.ts';
import { type Job, type JobString, notTaken } from '../../geometry/job.ts';
import { noteName } from '../../geometry/units.ts';
import { freeKey } from './free-key.ts';
import { isListPath, itemsOf, type ListPath } from './numbers/lists.ts';
import { words } from './words.ts';

export type Side = 'bass' | 'treble';

/** A key that no string has, nor any that was read in a set-up before it was removed: its readings are not a new one's. */
const freeStringKey = ({ strings, setup }: Job): string => {
  const read = setup.log.flatMap(({ readings }) => readings);
  return freeKey([...strings.list, ...read], 'string', strings.list.length + 1);
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
  const id = freeStringKey(job);
  const added = { ...twin, id, pitch, name: noteName(pitch) ?? `${twin.name}′`, cents: notTaken } as const;
  return { job: setAt(job, 'strings.list', side === 'bass' ? [added, ...list] : [...list, added]), id };
};

/** The job without the string of this key. */
export const withoutString = (job: Job, id: string): Job =>
  setAt(
    job,
    'strings.list',
    job.strings.list.filter((string) => string.id !== id),
  );

/** What a person calls an item of a list that is typed row by row: “fret 5”, “hole 2”. */
export const itemName = (job: Job, list: ListPath, id: string): string => {
  const items = itemsOf(job, list);
  const place = items.findIndex((item) => item.id === id);
  return words.numbers.lists[list].name(items[place] ?? {}, place + 1);
};

/** The item of a job's list that a path leads through, named as a person would. */
const itemTitle = (job: Job, keys: readonly string[]): readonly string[] => {
  const [group, key, id, , inner] = keys;
  const list = `${group}.${key}`;
  const stringName = (of: string | undefined) => job.strings.list.find((one) => one.id === of)?.name;
  const named = (...names: readonly (string | undefined)[]) => names.filter((name) => name !== undefined);
  if (isListPath(list)) {
    const isThere = itemsOf(job, list).some((item) => item.id === id);
    return id !== undefined && isThere ? [itemName(job, list, id)] : [];
  }
  switch (list) {
    case 'strings.list':
      return named(stringName(id));
    case 'alternatives.list':
      return named(id === undefined ? id : words.compare.alternative(id));
    case 'alternatives.present':
      return named(words.compare.present);
    case 'setup.log': {
      const place = job.setup.log.findIndex((pass) => pass.id === id);
      return named(stringName(inner), place < 0 ? undefined : words.setUp.inTitle(place + 1));
    }
    default:
      return [];
  }
};

/** What a person calls the field at a path, the string, fret or reading named whose it is: “Gauge, E2”, “Action measured, E2, reading 1”. */
export const fieldTitle = (job: Job, path: string): string =>
  [fieldAt(path)?.label ?? path, ...itemTitle(job, path.split('.'))].join(', ');
