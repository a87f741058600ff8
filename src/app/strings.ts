import { fieldAt, setAt } from '../../geometry/fields.ts';
import { type Job, type JobString, notTaken } from '../../geometry/job.ts';
import { noteName } from '../../geometry/units.ts';
import { words } from './words.ts';

export type Side = 'bass' | 'treble';

/** A key of its own for one more item of a list: the kind's name and the first number from `from` on that is free. */
export const freeKey = (list: readonly { readonly id: string }[], kind: string, from = list.length + 1): string => {
  const taken = new Set(list.map(({ id }) => id));
  let n = from;
  while (taken.has(`${kind}-${n}`)) n += 1;
  return `${kind}-${n}`;
};

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

/** The item of a job's list that a path leads through, named as a person would. */
const itemTitle = (job: Job, keys: readonly string[]): readonly string[] => {
  const [group, list, id, , inner] = keys;
  const stringName = (key: string | undefined) => job.strings.list.find((one) => one.id === key)?.name;
  const named = (...names: readonly (string | undefined)[]) => names.filter((name) => name !== undefined);
  switch (`${group}.${list}`) {
    case 'strings.list':
      return named(stringName(id));
    case 'guitar.measured': {
      const fret = job.guitar.measured.find((one) => one.id === id)?.fret;
      return named(fret === undefined ? undefined : words.numbers.frets.title(fret));
    }
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
