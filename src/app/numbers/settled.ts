import type { Job } from '../../../geometry/job.ts';
import { once } from '../../../geometry/once.ts';
import { settle } from '../../../geometry/settle.ts';
import { formatQuantity } from '../../../geometry/units.ts';
import { words } from '../words.ts';

const says = words.numbers.from;

/** Settled once for each job: every field asks. */
const settled = once((job: Job) => settle(job));

/** The fields whose word says where the number comes from. */
const keys = { 'guitar.scale': 'scale', 'guitar.neckPlaneHeight': 'neckPlaneHeight', 'guitar.rise': 'rise' } as const;
type Path = keyof typeof keys;
export const settledPaths = Object.keys(keys) as readonly Path[];
/** Whether the number of this field may come from readings. */
export const isFromReadings = (path: string): path is Path => Object.hasOwn(keys, path);

/** The number that the readings give a field at which a word stands for it, mm; undefined where they give none, or the field is no such one. */
export const settledNumber = (job: Job, path: string): number | undefined => {
  if (!isFromReadings(path) || typeof job.guitar[keys[path]] === 'number') return undefined;
  const settling = settled(job);
  return settling.ok ? settling.job.guitar[keys[path]] : undefined;
};

/** Where such a number comes from, in a few words; undefined where there is none. */
export const settledFrom = (job: Job, path: string): string | undefined => {
  const settling = settled(job);
  if (!isFromReadings(path) || !settling.ok || typeof job.guitar[keys[path]] === 'number') return undefined;
  const { frets, atPitch, riseFrom } = settling.readings;
  switch (path) {
    case 'guitar.scale': {
      const error = formatQuantity(frets?.error ?? 0, 'length', job.show, { unit: true });
      return says.frets(job.guitar.measured.length, error);
    }
    case 'guitar.neckPlaneHeight':
      return atPitch.strung === undefined ? says.light : says.action;
    case 'guitar.rise':
      return riseFrom === 'assumed' ? says.assumed : says.both;
  }
};
