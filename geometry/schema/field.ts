import * as z from 'zod/mini';
import type { QuantityKind } from '../units.ts';

// The schema library must never compile code at run time: a strict content security policy forbids it.
z.config({ jitless: true });

/** What people need to know of one field: its word, what it means and how it is taken. The types come from the schema itself. */
export interface FieldWords {
  readonly label: string;
  readonly help: string;
  /** How a number is typed and shown; `word` is a choice, `text` free text. */
  readonly kind: QuantityKind | 'word' | 'text';
  /** Least and greatest number allowed, in stored units. */
  readonly min?: number;
  readonly max?: number;
  /** The usual range [practice], in stored units: said, never enforced. */
  readonly usual?: readonly [number, number];
  /** A word that may stand in place of the number. */
  readonly word?: string;
  /** What each choice is called. */
  readonly choices?: Readonly<Record<string, string>>;
  /** Longest text, in UTF-16 units. */
  readonly longest?: number;
  /** What may stand here, for a text that is more than free text: goes on from “it may be”. */
  readonly allows?: string;
  /** What a new job starts from. */
  readonly preset?: number | string;
  /** The field counts only while one of these holds: another field, of the same string where that is a string's, has this word, or any but this. */
  readonly only?: Only | readonly Only[];
}

type Only = { readonly path: string } & ({ readonly is: string } | { readonly isNot: string });

export { notTaken } from './not-taken.ts';

/** The words of every field, kept beside the one schema and keyed by it. */
export const words = z.registry<FieldWords>();

type NumberWords = Omit<FieldWords, 'kind' | 'word' | 'choices' | 'longest'> & {
  kind: QuantityKind;
  min: number;
  max: number;
};

export const number = (w: NumberWords) => {
  const base = w.kind === 'count' ? z.int() : z.number();
  return base.check(z.gte(w.min), z.lte(w.max)).register(words, w);
};

export const numberOr = <const W extends string>(word: W, w: NumberWords) => {
  const schema = z.union([z.literal(word), z.number().check(z.gte(w.min), z.lte(w.max))]);
  words.add(schema, { ...w, word });
  return schema;
};

export const choice = <const C extends Readonly<Record<string, string>>>(
  label: string,
  help: string,
  choices: C,
  preset: keyof C & string,
  only?: FieldWords['only'],
) =>
  z
    .enum(Object.keys(choices) as [keyof C & string, ...(keyof C & string)[]])
    .register(words, { label, help, kind: 'word', choices, preset, ...(only && { only }) });

export const text = (label: string, help: string, longest: number, preset: string) =>
  z.string().check(z.maxLength(longest)).register(words, { label, help, kind: 'text', longest, preset });

/** A key stands inside paths such as `strings.list.E2.gauge`, which people read: so it holds no full stop, blank or asterisk, and nothing that cannot be seen (control characters, halves of surrogate pairs, marks that turn the direction of writing). */
export const keyPattern = /^[^\s.*\p{Cc}\p{Cs}\u061c\u200e\u200f\u202a-\u202e\u2066-\u2069]{1,40}$/u;

/** The key of an item in a list: a job's lists are keyed by `id`, never by position. */
export const listKey = (what: string) =>
  z
    .string()
    .check(z.maxLength(40), z.regex(keyPattern))
    .register(words, {
      label: 'Key',
      help: `What keeps ${what} the same one when the list changes.`,
      kind: 'text',
      longest: 40,
      allows: '1 to 40 characters that can be seen, without blanks, full stops and asterisks',
    });

/** Keys that nobody knows are kept in the value, but the type speaks only of those in the schema. */
export type Known<T> = T extends readonly (infer U)[]
  ? readonly Known<U>[]
  : T extends object
    ? { readonly [K in keyof T as string extends K ? never : K]: Known<T[K]> }
    : T;
