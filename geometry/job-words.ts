import { enumerate } from './enumerate.ts';
import { type FieldWords, stringCount } from './job.ts';
import { quote } from './names.ts';
import type { QuantityKind } from './units.ts';

const units: Readonly<Record<QuantityKind, string>> = {
  length: ' mm',
  radius: ' mm',
  gauge: ' mm',
  angle: '°',
  force: ' N',
  frequency: ' Hz',
  count: '',
  slope: ' %',
  cents: ' cents',
  share: ' %',
  moment: ' N·mm',
  stress: ' MPa',
};

/** Every digit that matters and no more, with a real minus sign, in mm, degrees, N, Hz, or mm over 100 mm. */
function plain(value: number, kind: QuantityKind): string {
  const shown = kind === 'slope' || kind === 'share' ? value * 100 : value;
  return String(Number(shown.toPrecision(12))).replace('-', '\u2212');
}

const isNumeric = (kind: FieldWords['kind']): kind is QuantityKind => kind !== 'word' && kind !== 'text';

/** A value as it was found, in words. */
function found(value: unknown, kind: FieldWords['kind']): string {
  if (typeof value === 'number') {
    if (Number.isNaN(value)) return 'not a number (NaN)';
    if (!Number.isFinite(value)) return 'infinite';
    return isNumeric(kind) ? plain(value, kind) + units[kind] : `the number ${String(value).replace('-', '\u2212')}`;
  }
  if (typeof value === 'string') {
    if (value.length > 40) return `a text of ${value.length} characters, ${quote(value)}`;
    return isNumeric(kind) ? `the text ${quote(value)}` : quote(value);
  }
  if (value === null) return 'empty (null)';
  if (Array.isArray(value)) return 'a list';
  if (typeof value === 'object') return 'a group of values';
  return String(value);
}

/** What may stand in a field: goes on from “it may be”. Lengths in mm. */
export function allowed(field: FieldWords): string {
  if (field.allows !== undefined) return field.allows;
  if (field.choices !== undefined) {
    const all = Object.keys(field.choices).map((choice) => `“${choice}”`);
    return enumerate(all, 'or');
  }
  if (!isNumeric(field.kind)) return `a text of at most ${field.longest} characters`;
  const range = `${plain(field.min ?? 0, field.kind)} to ${plain(field.max ?? 0, field.kind)}${units[field.kind]}`;
  const number = field.kind === 'count' ? `a whole number from ${range}` : `from ${range}`;
  return field.word === undefined ? number : `${number}, or “${field.word}”`;
}

/** The sentence for a refused value of a field: what stands there and what is allowed. `subject` is what the field is called in it. */
export function refusal(subject: string, field: FieldWords, value: unknown): string {
  const is = value === undefined ? 'missing' : found(value, field.kind);
  return `${subject} is ${is}; it may be ${allowed(field)}.`;
}

/** The sentence for a refused group or list of fields. */
export function groupRefusal(subject: string, isList: boolean, value: unknown): string {
  if (isList && Array.isArray(value)) {
    const count = value.length === 1 ? '1 item' : `${value.length} items`;
    return subject === 'strings.list'
      ? `${subject} has ${value.length === 1 ? '1 string' : `${value.length} strings`}; it may have from ${stringCount.min} to ${stringCount.max}.`
      : `${subject} has ${count}: more than a job may hold. Take the oldest out.`;
  }
  const is = value === undefined ? 'missing' : found(value, 'word');
  return `${subject} is ${is}; it must be ${isList ? 'a list' : 'a group of values in braces'}.`;
}
