import { applies, type FieldInfo, fieldAt, fieldGroups, getAt, setAt } from '../../../geometry/fields.ts';
import { fewestFrets } from '../../../geometry/instrument/scale.ts';
import { type StringSetId, withSet } from '../../../geometry/instrument/sets.ts';
import type { Job } from '../../../geometry/job.ts';
import { newJob } from '../../../geometry/job-file.ts';
import type { DecimalMark, LengthUnit, ShowUnits } from '../../../geometry/units.ts';
import { settledNumber } from '../numbers/settled.ts';
import { withChoice } from '../numbers/with-choice.ts';
import { absenceOf, readField, shown, stands } from '../typing.ts';
import { words } from '../words.ts';
import { onInchRule, withInchRule } from './inch-rule.ts';

/** What is measured on the guitar and cannot be guessed, in bench order. */
export const measures = [
  'guitar.scale',
  'guitar.boardRadiusNut',
  'guitar.boardRadiusEnd',
  'strings.spread',
  'guitar.neckPlaneHeight',
] as const;
export type Measure = (typeof measures)[number];

/** A fret and how far it lies from the nut, as typed. */
export interface TypedFret {
  readonly fret: string;
  readonly distance: string;
}

/** All that a new job asks, as it stands in the dialog. */
export interface Asked {
  readonly name: string;
  readonly hand: Job['hand'];
  readonly length: LengthUnit;
  readonly typed: Readonly<Record<Measure, string>>;
  /** Whether the scale is worked out from measured frets. */
  readonly isByFrets: boolean;
  readonly frets: readonly TypedFret[];
  readonly set: StringSetId;
  readonly footprint: Job['bridge']['footprint'];
}

/** How the dialog stands at first: nothing measured. */
export const nothingAsked: Asked = {
  name: '',
  hand: 'right',
  length: 'mm',
  typed: {
    'guitar.scale': '',
    'guitar.boardRadiusNut': '',
    'guitar.boardRadiusEnd': '',
    'strings.spread': '',
    'guitar.neckPlaneHeight': '',
  },
  isByFrets: false,
  frets: [
    { fret: '5', distance: '' },
    { fret: '7', distance: '' },
    { fret: '12', distance: '' },
  ],
  set: 'light',
  footprint: 'belly',
};

export const fieldOf = (path: string): FieldInfo => fieldAt(path) as FieldInfo;
export const fretPath = (k: number): string => `guitar.measured.${k}`;

type Changes = readonly (readonly [path: string, value: number | string])[];

/** What of the presets, made for a belly behind the saddle, does not suit another footprint: invented, within what is usual [practice]. */
const ofFootprint: Readonly<Partial<Record<Asked['footprint'], Changes>>> = {
  bellyBefore: [
    ['bridge.depth', 48],
    ['bridge.wingDepth', 34],
    ['bridge.frontToSaddle', 18],
  ],
  waisted: [
    ['bridge.waistDepth', 31],
    ['bridge.waistWidth', 124],
  ],
};

/** What of the presets, made for six steel strings, does not suit another set: two rows of pins lie nearer together, and nylon is tied [practice]. */
const ofSet: Readonly<Partial<Record<StringSetId, Changes>>> = {
  twelve: [
    ['pins.fromSaddle', 9.4],
    ['pins.secondRow', 5.8],
  ],
  nylon: [['pins.hold', 'tied']],
};

/** Presets of this day (year-month-day), set by the rule on which they will be read. */
const presetJob = (today: string, show: Job['show']): Job => withInchRule({ ...newJob(today), show });

/** What stands in for a measure that is left empty: what is preset; for the board's end what the nut has, as on a cylinder. */
const assumedOf = (path: Measure, job: Job): number | string =>
  path === 'guitar.boardRadiusEnd'
    ? job.guitar.boardRadiusNut
    : (getAt(presetJob(job.date, job.show), path) as number | string);

export interface ReadAsked {
  readonly job: Job;
  /** Why what is typed is refused, by the path of its field. */
  readonly refused: Readonly<Record<string, string>>;
  /** What was not measured, each by its name and with the value that stands in. */
  readonly assumed: readonly string[];
}

/** The frets that are typed, or why one of them is refused. */
const readFrets = (frets: readonly TypedFret[], show: ShowUnits) => {
  const refused: Record<string, string> = {};
  const measured = frets.flatMap(({ fret, distance }, k) => {
    if (distance.trim() === '') return [];
    const [at, far] = (['fret', 'distance'] as const).map((key) => {
      const read = readField(fieldOf(`guitar.measured.*.${key}`), key === 'fret' ? fret : distance, show);
      if (!read.ok) refused[`${fretPath(k)}.${key}`] = read.says;
      return read.ok ? (read.value as number) : Number.NaN;
    });
    return [{ id: `fret-${k + 1}`, fret: at as number, distance: far as number }];
  });
  if (Object.keys(refused).length === 0 && measured.length < fewestFrets)
    refused['guitar.scale'] = words.newJob.moreFrets(fewestFrets - measured.length);
  return { measured, refused };
};

/** What is measured on a guitar, in bench order. */
const measuredFields = fieldGroups.find(({ id }) => id === 'measured')?.fields ?? [];

/** Each number of a new job that is measured on the guitar and was not typed, with the value that stands in. */
const assumedIn = (job: Job, isTyped: ReadonlySet<string>, show: ShowUnits): readonly string[] =>
  measuredFields.flatMap((field) => {
    const { path, kind, label } = field;
    const value = settledNumber(job, path) ?? getAt(job, path);
    const isNone = value === undefined || value === absenceOf(field) || kind === 'word';
    return isNone || isTyped.has(path) || !applies(field, job)
      ? []
      : [words.newJob.assumedOne(label, stands(field, value, show))];
  });

/** A job of what was asked, of this day (year-month-day): presets where nothing was, and what is refused; that has its preset in the job. What is said of it has the decimal mark of whoever reads it. */
export const readAsked = (asked: Asked, today: string, decimal?: DecimalMark): ReadAsked => {
  const { name, hand, length, typed, isByFrets, frets, set, footprint } = asked;
  const own = { ...newJob(today).show, length };
  const show: ShowUnits = { ...own, ...(decimal && { decimal }) };
  const refused: Record<string, string> = {};
  const isTyped = new Set<string>();
  let job: Job = { ...presetJob(today, own), hand };
  if (name.trim() !== '') {
    const read = readField(fieldOf('name'), name, show);
    if (read.ok) job = setAt(job, 'name', read.value);
    else refused.name = read.says;
  }
  for (const path of measures) {
    if (path === 'guitar.scale' && isByFrets) {
      const read = readFrets(frets, show);
      Object.assign(refused, read.refused);
      if (Object.keys(read.refused).length === 0)
        job = setAt(setAt(job, 'guitar.measured', read.measured), 'guitar.scale', 'frets');
      isTyped.add(path);
      continue;
    }
    const field = fieldOf(path);
    const isEmpty = typed[path].trim() === '';
    const read = isEmpty ? { ok: true as const, value: assumedOf(path, job) } : readField(field, typed[path], show);
    if (!isEmpty) isTyped.add(path);
    if (read.ok) job = setAt(job, path, read.value);
    else refused[path] = read.says;
  }
  job = withSet(withChoice(job, 'bridge.footprint', footprint), set);
  for (const [path, value] of [...(ofFootprint[footprint] ?? []), ...(ofSet[set] ?? [])])
    job = setAt(job, path, typeof value === 'number' && length !== 'mm' ? onInchRule(value, 'length') : value);
  return { job, refused, assumed: assumedIn(job, isTyped, show) };
};

/** What stands in for a measure while nothing is typed, as it is said in its empty field. */
export const standIn = (path: Measure, job: Job): string => {
  const value = assumedOf(path, job);
  return words.newJob.standIn(shown(fieldOf(path), value, job.show));
};

/** What is typed, in another unit: a number without a unit of its own stays as long as it was. */
export const inUnit = (asked: Asked, length: LengthUnit, today: string, decimal?: DecimalMark): Asked => {
  const show: ShowUnits = { ...readAsked(asked, today).job.show, ...(decimal && { decimal }) };
  const again = (path: string, text: string) => {
    const field = fieldOf(path);
    const read = readField(field, text, show);
    return read.ok && field.kind === 'length' && text.trim() !== ''
      ? shown(field, read.value, { ...show, length })
      : text;
  };
  const typed = Object.fromEntries(measures.map((path) => [path, again(path, asked.typed[path])]));
  const frets = asked.frets.map((one) => ({ ...one, distance: again('guitar.measured.*.distance', one.distance) }));
  return { ...asked, length, typed: typed as Asked['typed'], frets };
};
