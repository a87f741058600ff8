import type { FieldInfo } from '../../geometry/fields.ts';
import { checkField } from '../../geometry/job-file.ts';
import { formatQuantity, noteName, type Parsed, parseQuantity, type ShowUnits, unitFor } from '../../geometry/units.ts';
import { words } from './words.ts';

/** A stored value as it stands in its field, in the reader's unit and without it; a pitch by its note where it is one. */
export const shown = (field: FieldInfo, value: unknown, show: ShowUnits): string => {
  if (typeof value === 'string') return value;
  if (typeof value !== 'number' || field.kind === 'word' || field.kind === 'text') return '';
  const note = field.kind === 'frequency' ? noteName(value) : undefined;
  return note ?? formatQuantity(value, field.kind, show);
};

/** What was typed into a field, as the value to store; or why it is refused, in words and in the reader's unit. */
export const readField = (field: FieldInfo, text: string, show: ShowUnits): Parsed => {
  const { kind, path } = field;
  if (kind === 'word' || kind === 'text') {
    const says = checkField(path, text);
    return says === undefined ? { ok: true, value: text } : { ok: false, says };
  }
  const read = parseQuantity(text, kind, unitFor(kind, show), field.word === undefined ? {} : { word: field.word });
  if (!read.ok) return read;
  const says = checkField(path, read.value);
  if (says === undefined) return read;
  if (typeof read.value !== 'number' || field.min === undefined || field.max === undefined) return { ok: false, says };
  const say = (value: number) => formatQuantity(value, kind, show, { unit: true });
  return {
    ok: false,
    says: words.outOfRange(field.label, say(read.value), say(field.min), say(field.max), field.word),
  };
};
