import type { FieldInfo } from '../../geometry/fields.ts';
import { notTaken } from '../../geometry/job.ts';
import { checkField } from '../../geometry/job-file.ts';
import {
  formatQuantity,
  noteName,
  type Parsed,
  parseQuantity,
  type QuantityKind,
  type ShowUnits,
  unitFor,
} from '../../geometry/units.ts';
import { words } from './words.ts';

type Schema = Parameters<typeof checkField>[2];

/** How a text is read: in which units, and as a field of what; of a job where nothing else is said. */
interface Reading {
  readonly show: ShowUnits;
  readonly root: Schema | undefined;
}

/** Words that say that there is no number: a field that is left empty says the same. */
const absences: ReadonlySet<string> = new Set([notTaken, 'none', 'usual']);

/** Words that say that the number comes from readings: it is shown as they give it. */
const sources: ReadonlySet<string> = new Set(['frets', 'strung', 'readings']);

/** The word that an empty field stands for; undefined where it must not be empty. */
export const absenceOf = ({ word }: FieldInfo): string | undefined =>
  word !== undefined && absences.has(word) ? word : undefined;

/** A stored value as it stands in its field, in the reader's unit and without it; a pitch by its note where it is one; nothing for a word of absence, and for one that says where the number comes from. */
export const shown = (field: FieldInfo, value: unknown, show: ShowUnits): string => {
  if (value === field.word && (value === absenceOf(field) || sources.has(String(value)))) return '';
  if (typeof value === 'string') return value;
  if (typeof value !== 'number' || field.kind === 'word' || field.kind === 'text') return '';
  const note = field.kind === 'frequency' ? noteName(value) : undefined;
  return note ?? formatQuantity(value, field.kind, show);
};

/** A stored value as it is said in a sentence, with its unit or by its choice's name. */
export const stands = (field: FieldInfo, value: unknown, show: ShowUnits): string => {
  const { kind, choices } = field;
  if (kind === 'text') return `“${value}”`;
  if (kind === 'word') return choices?.[String(value)] ?? String(value);
  const absence = absenceOf(field);
  if (absence !== undefined && (value === undefined || value === absence)) return `“${absence}”`;
  const note = kind === 'frequency' && typeof value === 'number' ? noteName(value) : undefined;
  return note ?? formatQuantity(value as number | string, kind, show, { unit: true });
};

/** What a number without a unit would be in the unit that is not chosen, where it might stand so; undefined where it names its unit or fits neither. */
const inOtherUnit = (field: FieldInfo, text: string, value: number, { show, root }: Reading): string | undefined => {
  const { kind, path } = field;
  if (kind !== 'length' && kind !== 'radius' && kind !== 'gauge') return undefined;
  const other = unitFor(kind, show) === 'mm' ? 'in' : 'mm';
  const read = parseQuantity(text, kind, other);
  if (!read.ok || read.value === value || checkField(path, read.value, root) !== undefined) return undefined;
  return formatQuantity(read.value, kind, { ...show, [kind]: other }, { unit: true });
};

/** Reads a text where a number must stand, or the word in its place. */
const readNumber = (
  field: FieldInfo,
  kind: QuantityKind,
  text: string,
  reading: Reading,
  word: string | undefined,
): Parsed => {
  const { show, root } = reading;
  const read = parseQuantity(text, kind, unitFor(kind, show), {
    decimal: show.decimal,
    ...(word !== undefined && { word }),
  });
  if (!read.ok) return read;
  const says = checkField(field.path, read.value, root);
  if (says === undefined) return read;
  if (typeof read.value !== 'number' || field.min === undefined || field.max === undefined) return { ok: false, says };
  const say = (value: number) => formatQuantity(value, kind, show, { unit: true });
  const refusal = words.outOfRange(field.label, say(read.value), say(field.min), say(field.max), word);
  const meant = inOtherUnit(field, text, read.value, reading);
  return { ok: false, says: meant === undefined ? refusal : `${refusal} ${words.didYouMean(meant)}` };
};

/** What was typed into a field, as the value to store; or why it is refused, in words and in the reader's unit. An empty field gives its word of absence, where it has one. The field is a job’s, or one of what `root` describes. */
export const readField = (field: FieldInfo, text: string, show: ShowUnits, root?: Schema): Parsed => {
  const { kind, path } = field;
  const reading: Reading = { show, root };
  if (kind === 'word' || kind === 'text') {
    const says = checkField(path, text, root);
    return says === undefined ? { ok: true, value: text } : { ok: false, says };
  }
  const absence = absenceOf(field);
  if (absence === undefined) return readNumber(field, kind, text, reading, field.word);
  if (['', absence].includes(text.trim().toLowerCase())) return { ok: true, value: absence };
  const read = readNumber(field, kind, text, reading, undefined);
  return read.ok ? read : { ok: false, says: `${read.says} ${words.numbers.orClear(absence)}` };
};
