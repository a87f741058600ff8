import type { z } from 'zod/mini';
import { isOptional, itemOf, schemaAt, shapeOf } from './fields.ts';
import { keyPattern, words } from './job.ts';
import { groupRefusal, refusal } from './job-words.ts';
import { quote } from './names.ts';
import type { Problem } from './problem.ts';
import { cut, shownPath } from './read-json.ts';

/*
 * What can be told of a plain value by the schema that it should follow: used for jobs and for whatever else is kept in a file.
 */

type Schema = z.core.$ZodType;
type Bag = Readonly<Record<string, unknown>>;
const isBag = (value: unknown): value is Bag => typeof value === 'object' && value !== null && !Array.isArray(value);

/** An item's key in a list, or its place where it has no key of its own, or one that would break the path. */
function itemKey(list: readonly unknown[], index: number): string {
  const id = (item: unknown) => (isBag(item) ? item.id : undefined);
  const own = id(list[index]);
  const alone = typeof own === 'string' && keyPattern.test(own) && list.filter((item) => id(item) === own).length === 1;
  return alone ? own : String(index);
}

/** The path as people read it, and the value that stands there. */
function follow(value: unknown, path: readonly PropertyKey[]): { readonly path: string; readonly value: unknown } {
  const keys: string[] = [];
  let at = value;
  for (const key of path) {
    keys.push(Array.isArray(at) ? itemKey(at, Number(key)) : String(key));
    at = Array.isArray(at) ? at[Number(key)] : isBag(at) ? at[String(key)] : undefined;
  }
  return { path: keys.join('.'), value: at };
}

/** What is wrong at a place of a value that should follow `root`, in a sentence that says what may stand there. */
export function problemAt(root: Schema, whole: unknown, issuePath: readonly PropertyKey[]): Problem {
  const { path, value } = follow(whole, issuePath);
  const schema = schemaAt(path, root);
  const field = schema && words.get(schema);
  const says = field
    ? refusal(`${field.label} (${path})`, field, value)
    : groupRefusal(path, itemOf(schema) !== undefined, value);
  return { path, value: cut(value), says };
}

/** What the schema library found, in sentences: one for each place, and at most so many. */
export function problemsOf(
  issues: readonly { readonly path: readonly PropertyKey[] }[],
  most: number,
  problem: (path: readonly PropertyKey[]) => Problem,
): readonly Problem[] {
  const problems = new Map<string, Problem>();
  for (const { path } of issues) {
    if (problems.size === most) break;
    const at = path.join('.');
    if (!problems.has(at)) problems.set(at, problem(path));
  }
  return [...problems.values()];
}

/** Keys that stand twice in one list. */
export function repeatedKeys(schema: Schema, value: unknown, path: readonly string[]): Problem[] {
  const item = itemOf(schema);
  if (item !== undefined && Array.isArray(value)) {
    const ids = value.map((one) => (isBag(one) ? one.id : undefined));
    return value.flatMap((one, index) => {
      const at = [...path, String(index), 'id'].join('.');
      const says = `${at} is ${quote(String(ids[index]))}, as that of an earlier item of the list; each needs a key of its own.`;
      const isRepeated = ids.indexOf(ids[index]) < index;
      return [
        ...(isRepeated ? [{ path: at, value: ids[index], says }] : []),
        ...repeatedKeys(item, one, [...path, itemKey(value, index)]),
      ];
    });
  }
  const shape = shapeOf(schema);
  if (shape === undefined || !isBag(value)) return [];
  return Object.entries(shape).flatMap(([key, part]) => repeatedKeys(part, value[key], [...path, key]));
}

/** At most so many keys that nobody knows are told by name. */
const mostTold = 50;

/** The paths of keys that the schema does not know, as a person may read them; the first 50 of them. */
export function unknownKeys(schema: Schema, value: unknown): readonly string[] {
  const told = new Set<string>();
  for (const path of unknownIn(schema, value, [])) {
    if (told.size === mostTold) break;
    told.add(shownPath(path));
  }
  return [...told];
}

function* unknownIn(schema: Schema, value: unknown, path: readonly string[]): Generator<string> {
  const item = itemOf(schema);
  if (item !== undefined && Array.isArray(value)) {
    for (const [index, part] of value.entries()) yield* unknownIn(item, part, [...path, itemKey(value, index)]);
  }
  const shape = shapeOf(schema);
  if (shape === undefined || !isBag(value)) return;
  for (const [key, part] of Object.entries(value)) {
    const known = Object.hasOwn(shape, key) ? shape[key] : undefined;
    if (known) yield* unknownIn(known, part, [...path, key]);
    else yield [...path, key].join('.');
  }
}

/** The schema's keys in its order, then those it does not know, all the way down. */
export function inOrder(schema: Schema | undefined, value: unknown): unknown {
  if (Array.isArray(value)) return value.map((part) => inOrder(itemOf(schema), part));
  const shape = shapeOf(schema);
  if (shape === undefined || !isBag(value)) return value;
  const known = Object.keys(shape).filter((key) => Object.hasOwn(value, key));
  const others = Object.keys(value).filter((key) => !Object.hasOwn(shape, key));
  return Object.fromEntries(
    [...known, ...others].map((key) => [key, inOrder(Object.hasOwn(shape, key) ? shape[key] : undefined, value[key])]),
  );
}

/** What a schema's fields are preset to, all the way down; fields without a preset are left out. */
export function presets(schema: Schema): unknown {
  const shape = shapeOf(schema);
  if (itemOf(schema) !== undefined) return [];
  if (shape === undefined) return words.get(schema)?.preset;
  const entries = Object.entries(shape).map(([key, part]) => [key, presets(part)] as const);
  return Object.fromEntries(entries.filter(([, value]) => value !== undefined));
}

/** A value with what is missing of it put in at its preset, all the way down. */
export function filledIn(schema: Schema | undefined, value: unknown): unknown {
  const item = itemOf(schema);
  if (item !== undefined && Array.isArray(value)) return value.map((part) => filledIn(item, part));
  const shape = shapeOf(schema);
  if (schema === undefined || shape === undefined || !isBag(value)) return value;
  const missing = Object.entries(shape).flatMap(([key, part]): [string, unknown][] => {
    if (Object.hasOwn(value, key)) return [[key, filledIn(part, value[key])]];
    // What may be left out stays out.
    const preset = isOptional(part) ? undefined : presets(part);
    return preset === undefined ? [] : [[key, preset]];
  });
  return { ...value, ...Object.fromEntries(missing) };
}
