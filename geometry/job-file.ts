import * as z from 'zod/mini';
import { fieldAt, itemOf, schemaAt, shapeOf } from './fields.ts';
import { type Job, type JobString, jobFormat, jobSchema, jobVersion, keyPattern, notTaken, words } from './job.ts';
import { groupRefusal, refusal } from './job-words.ts';
import { migrate } from './migrations/index.ts';
import { quote } from './names.ts';
import type { Problem } from './problem.ts';
import { MM_PER_INCH } from './units.ts';

export type ReadJob =
  | { readonly ok: true; readonly job: Job; readonly unknown: readonly string[] }
  | { readonly ok: false; readonly problems: readonly Problem[] };

const longestFile = 2_000_000;
const deepest = 50;
const mostProblems = 50;

type Schema = z.core.$ZodType;
type Bag = Readonly<Record<string, unknown>>;
const isBag = (value: unknown): value is Bag => typeof value === 'object' && value !== null && !Array.isArray(value);

/** A value cut short for a person. */
function cut(value: unknown): unknown {
  if (typeof value === 'string') return value.length > 40 ? `${value.slice(0, 40)}…` : value;
  return typeof value === 'object' && value !== null ? '…' : value;
}

const refuse = (...problems: Problem[]): ReadJob => ({ ok: false, problems: problems.slice(0, mostProblems) });
const wholeFile = (value: unknown, says: string): ReadJob => refuse({ path: '', value: cut(value), says });

/** How deep the brackets of a JSON text nest, counted without reading it, so that a hostile one costs no stack. */
function depthOf(json: string): number {
  let depth = 0;
  let most = 0;
  let inText = false;
  for (let i = 0; i < json.length; i++) {
    const mark = json[i];
    if (inText) {
      if (mark === '\\') i++;
      else if (mark === '"') inText = false;
    } else if (mark === '"') inText = true;
    else if (mark === '[' || mark === '{') most = Math.max(most, ++depth);
    else if (mark === ']' || mark === '}') depth--;
  }
  return most;
}

/** Where a JSON parser stopped, as far as its message tells. */
function placeIn(text: string, error: unknown): string {
  const message = error instanceof Error ? error.message : '';
  const named = /line (\d+),? column (\d+)/.exec(message);
  if (named) return ` at line ${named[1]}, column ${named[2]}`;
  const position = /position (\d+)/.exec(message);
  if (!position) return '';
  const before = text.slice(0, Number(position[1])).split('\n');
  return ` at line ${before.length}, column ${(before.at(-1) ?? '').length + 1}`;
}

/** Values nested too deeply (or for ever), and keys that would reach an object's prototype, told by their path. */
function traps(value: unknown, path: readonly string[]): Problem[] {
  if (typeof value !== 'object' || value === null) return [];
  const at = path.join('.');
  if (path.length > deepest) {
    return [{ path: at, value: '…', says: `The values are nested more than ${deepest} deep; a job never is.` }];
  }
  return Object.entries(value).flatMap(([key, part]) =>
    key === '__proto__'
      ? [
          {
            path: [...path, key].join('.'),
            value: '…',
            says: 'A key may not be called “__proto__”; take it out of the file.',
          },
        ]
      : traps(part, [...path, key]),
  );
}

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

function problemAt(whole: unknown, issuePath: readonly PropertyKey[]): Problem {
  const { path, value } = follow(whole, issuePath);
  const field = fieldAt(path);
  const says = field
    ? refusal(`${field.label} (${path})`, field, value)
    : groupRefusal(path, itemOf(schemaAt(path)) !== undefined, value);
  return { path, value: cut(value), says };
}

/** Keys that stand twice in one list. */
function repeatedKeys(schema: Schema, value: unknown, path: readonly string[]): Problem[] {
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

/** The paths of keys that the schema does not know. */
function unknownKeys(schema: Schema, value: unknown, path: readonly string[]): string[] {
  const item = itemOf(schema);
  if (item !== undefined && Array.isArray(value)) {
    return value.flatMap((part, index) => unknownKeys(item, part, [...path, itemKey(value, index)]));
  }
  const shape = shapeOf(schema);
  if (shape === undefined || !isBag(value)) return [];
  return Object.entries(value).flatMap(([key, part]) => {
    const known = Object.hasOwn(shape, key) ? shape[key] : undefined;
    return known ? unknownKeys(known, part, [...path, key]) : [[...path, key].join('.')];
  });
}

/**
 * A plain value as a job, with the paths of keys nobody knows (they stay in the job); or every problem found in it, at most
 * 50. Numbers are in stored units.
 */
export function validateJob(value: unknown): ReadJob {
  if (!isBag(value))
    return wholeFile(
      value,
      'This is no Sagitta job: a job is a group of values in braces. Choose a file that Sagitta saved.',
    );
  const trapped = traps(value, []);
  if (trapped.length > 0) return refuse(...trapped);
  if (value.format !== jobFormat) {
    return wholeFile(
      value.format,
      `This is no Sagitta job: it would say "format": "${jobFormat}" of itself. It may belong to another program. Choose a file that Sagitta saved.`,
    );
  }
  const { version } = value;
  if (typeof version === 'number' && version > jobVersion) {
    return refuse({
      path: 'version',
      value: version,
      says: `The job was written by a newer Sagitta, in version ${version} of its format; this one reads version ${jobVersion}. Open it with a newer Sagitta.`,
    });
  }
  const now = migrate(value, jobVersion);
  if (now === undefined) {
    return refuse({
      path: 'version',
      value: version,
      says: `The job’s version is ${typeof version === 'number' ? version : 'not given as a number'}; Sagitta reads versions 1 to ${jobVersion}.`,
    });
  }

  const read = z.safeParse(jobSchema, now);
  if (!read.success) {
    const problems = new Map(read.error.issues.map((issue) => [issue.path.join('.'), problemAt(now, issue.path)]));
    return refuse(...problems.values());
  }
  const job = read.data as Job;
  const repeated = repeatedKeys(jobSchema, job, []);
  if (repeated.length > 0) return refuse(...repeated);
  return { ok: true, job, unknown: unknownKeys(jobSchema, now, []) };
}

/** Reads a job file's text. What it is not is said first; then every problem in it. Never throws. */
export function readJob(text: string): ReadJob {
  if (text.length > longestFile) {
    return wholeFile(
      '…',
      `The file has ${text.length} characters; a job has at most ${longestFile}. Choose a job file that Sagitta saved.`,
    );
  }
  const json = text.replace(/^\uFEFF/, '');
  if (json.trim() === '') return wholeFile('', 'The file is empty. Choose a job file that Sagitta saved.');
  if (depthOf(json) > deepest) {
    return wholeFile('…', `The file’s brackets nest more than ${deepest} deep; those of a job never do.`);
  }
  let value: unknown;
  try {
    value = JSON.parse(json);
  } catch (error) {
    return wholeFile(
      json.slice(0, 40),
      `The file is not JSON: it cannot be read${placeIn(json, error)}. Choose a job file that Sagitta saved.`,
    );
  }
  return validateJob(value);
}

/** The schema's keys in its order, then those it does not know, all the way down. */
function inOrder(schema: Schema | undefined, value: unknown): unknown {
  if (Array.isArray(value)) return value.map((part) => inOrder(itemOf(schema), part));
  const shape = shapeOf(schema);
  if (shape === undefined || !isBag(value)) return value;
  const known = Object.keys(shape).filter((key) => Object.hasOwn(value, key));
  const others = Object.keys(value).filter((key) => !Object.hasOwn(shape, key));
  return Object.fromEntries(
    [...known, ...others].map((key) => [key, inOrder(Object.hasOwn(shape, key) ? shape[key] : undefined, value[key])]),
  );
}

/** A job file's text: JSON by the line, in the schema's order, unknown keys last; it ends in a line break. */
export const writeJob = (job: Job): string => `${JSON.stringify(inOrder(jobSchema, job), null, 2)}\n`;

/** Why a value is refused at its field, in one sentence; undefined if it may stand there. Throws a RangeError where no field is. */
export function checkField(path: string, value: unknown): string | undefined {
  const schema = schemaAt(path);
  const field = fieldAt(path);
  if (schema === undefined || field === undefined) throw new RangeError(`${path} is no field of a job.`);
  return z.safeParse(schema, value).success ? undefined : refusal(field.label, field, value);
}

/** A light steel set [practice]: note, Hz in equal temperament at A4 = 440 Hz, gauge and core in inches; setbacks invented, mm. */
const steelSet = [
  ['E2', 82.407, 0.053, 0.018, 3.6],
  ['A2', 110, 0.042, 0.016, 3.1],
  ['D3', 146.832, 0.032, 0.0145, 2.7],
  ['G3', 195.998, 0.024, 0.012, 2.3],
  ['B3', 246.942, 0.016, 'plain', 2.7],
  ['E4', 329.628, 0.012, 'plain', 1.9],
] as const;

const fromInches = (inches: number) => Number((inches * MM_PER_INCH).toPrecision(12));

const newString = ([id, pitch, gauge, core, setback]: (typeof steelSet)[number]): JobString => ({
  id,
  name: id,
  pitch,
  gauge: fromInches(gauge),
  core: core === 'plain' ? core : fromInches(core),
  material: 'steel',
  wrap: 'phosphor bronze',
  setback,
  cents: notTaken,
  nutPlace: 0,
  saddlePlace: 0,
});

/** What a schema's fields are preset to, all the way down; fields without a preset are left out. */
function presets(schema: Schema): unknown {
  const shape = shapeOf(schema);
  if (itemOf(schema) !== undefined) return [];
  if (shape === undefined) return words.get(schema)?.preset;
  const entries = Object.entries(shape).map(([key, part]) => [key, presets(part)] as const);
  return Object.fromEntries(entries.filter(([, value]) => value !== undefined));
}

/** A new job of this day (year-month-day): every field at its preset, with six steel strings. */
export function newJob(today: string): Job {
  const preset = presets(jobSchema) as Job;
  const strings = { ...preset.strings, list: steelSet.map(newString) };
  return inOrder(jobSchema, { ...preset, format: jobFormat, version: jobVersion, date: today, strings }) as Job;
}

/** The JSON Schema (draft 2020-12) of a job file, with each field's label, help and preset. */
export function jobJsonSchema(): Readonly<Record<string, unknown>> {
  const schema = z.toJSONSchema(jobSchema, {
    target: 'draft-2020-12',
    override: ({ zodSchema, jsonSchema }) => {
      const field = words.get(zodSchema);
      if (field === undefined) return;
      jsonSchema.title = field.label;
      jsonSchema.description = field.help;
      if (field.preset !== undefined) jsonSchema.default = field.preset;
    },
  });
  return { ...schema, title: 'Sagitta job', description: 'Lengths in mm, tilt in mm per mm, pitch in Hz.' };
}
