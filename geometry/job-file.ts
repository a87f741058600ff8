import * as z from 'zod/mini';
import { fieldAt, schemaAt } from './fields.ts';
import { type Job, type JobString, jobFormat, jobSchema, jobVersion, notTaken } from './job.ts';
import { refusal } from './job-words.ts';
import { migrate } from './migrations/index.ts';
import type { Problem } from './problem.ts';
import { cut, faultsIn, longestFile, readJson } from './read-json.ts';
import { jsonSchemaOf } from './schema/json-schema.ts';
import { inOrder, presets, problemAt, problemsOf, repeatedKeys, unknownKeys } from './schema-walk.ts';
import { MM_PER_INCH } from './units.ts';

export type ReadJob =
  | { readonly ok: true; readonly job: Job; readonly unknown: readonly string[] }
  | { readonly ok: false; readonly problems: readonly Problem[] };

const mostProblems = 50;

type Bag = Readonly<Record<string, unknown>>;
const isBag = (value: unknown): value is Bag => typeof value === 'object' && value !== null && !Array.isArray(value);

const refuse = (problems: readonly Problem[]): ReadJob => ({ ok: false, problems: problems.slice(0, mostProblems) });
const refuseFor = (problem: Problem): ReadJob => refuse([problem]);
const wholeFile = (value: unknown, says: string): ReadJob => refuseFor({ path: '', value: cut(value), says });

/** Whether a job says that it is of a version to come. */
export const isNewer = (version: unknown): version is number =>
  Number.isSafeInteger(version) && Number(version) > jobVersion;

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
  const { traps, infinities } = faultsIn(value);
  if (traps.length > 0) return refuse(traps);
  if (value.format !== jobFormat) {
    return wholeFile(
      value.format,
      `This is no Sagitta job: it would say "format": "${jobFormat}" of itself. It may belong to another program. Choose a file that Sagitta saved.`,
    );
  }
  const { version } = value;
  if (isNewer(version)) {
    return refuseFor({
      path: 'version',
      value: version,
      says: `The job was written by a newer Sagitta, in version ${version} of its format; this one reads version ${jobVersion}. Open it with a newer Sagitta.`,
    });
  }
  const now = migrate(value, jobVersion);
  if (now === undefined) {
    return refuseFor({
      path: 'version',
      value: version,
      says: `The job’s version is ${Number.isFinite(version) ? version : 'not given as a number'}; Sagitta reads versions 1 to ${jobVersion}.`,
    });
  }

  const read = z.safeParse(jobSchema, now);
  if (!read.success) {
    return refuse(problemsOf(read.error.issues, mostProblems, (path) => problemAt(jobSchema, now, path)));
  }
  const job = read.data as Job;
  const repeated = repeatedKeys(jobSchema, job, []);
  if (repeated.length > 0) return refuse(repeated);
  if (infinities.length > 0) return refuse(infinities);
  const { length } = JSON.stringify(job);
  if (length > longestFile)
    return wholeFile(
      '…',
      `Written to a file, the job would have ${length} characters; a job has at most ${longestFile}. Take out of it what Sagitta does not know.`,
    );
  return { ok: true, job, unknown: unknownKeys(jobSchema, now) };
}

/** Reads a job file's text. What it is not is said first; then every problem in it. Never throws. */
export function readJob(text: string): ReadJob {
  const read = readJson(text, 'job');
  return read.ok ? validateJob(read.value) : refuseFor(read.problem);
}

/** A job file's text: JSON by the line (on one line where it would else be too long to be read again), in the schema's order, unknown keys last; it ends in a line break. */
export function writeJob(job: Job): string {
  const ordered = inOrder(jobSchema, job);
  const text = `${JSON.stringify(ordered, null, 2)}\n`;
  return text.length > longestFile ? JSON.stringify(ordered) : text;
}

/** Why a value is refused at its field of a job (or of what else `root` describes), in one sentence; undefined if it may stand there. Throws a RangeError where no field is. */
export function checkField(path: string, value: unknown, root: z.core.$ZodType = jobSchema): string | undefined {
  const schema = schemaAt(path, root);
  const field = fieldAt(path, root);
  if (schema === undefined || field === undefined) throw new RangeError(`${path} is no field.`);
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

/** A new job of this day (year-month-day): every field at its preset, with six steel strings. */
export function newJob(today: string): Job {
  const preset = presets(jobSchema) as Job;
  const strings = { ...preset.strings, list: steelSet.map(newString) };
  return inOrder(jobSchema, { ...preset, format: jobFormat, version: jobVersion, date: today, strings }) as Job;
}

/** The JSON Schema (draft 2020-12) of a job file, with each field's label, help and preset. */
export const jobJsonSchema = (): Readonly<Record<string, unknown>> =>
  jsonSchemaOf(jobSchema, 'Sagitta job', 'Lengths in mm, tilt in mm per mm, pitch in Hz.');
