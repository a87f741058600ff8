import * as z from 'zod/mini';
import { itemOf, schemaAt, shapeOf } from './fields.ts';
import { type Job, jobFormat, jobSchema, jobVersion } from './job.ts';
import { isNewer, validateJob } from './job-file.ts';
import { faultsIn, readJson } from './read-json.ts';
import { filledIn, presets } from './schema-walk.ts';

type Bag = Readonly<Record<string, unknown>>;
const isBag = (value: unknown): value is Bag => typeof value === 'object' && value !== null && !Array.isArray(value);

/** A job of a newer version as far as this one understands it. */
export interface Understood {
  readonly job: Job;
  readonly version: number;
  /** The places whose values were not understood: a new job's stand there, and items of lists are left out. */
  readonly replaced: readonly string[];
  /** The paths of keys that nobody here knows; they stay in the job. */
  readonly unknown: readonly string[];
}

/** How often what is wrong is put right before it is given up: putting one thing right may show another. */
const rounds = 4;

/** At most so many places are put right in a round. */
const mostReplaced = 400;

const mostItems = 1000;

/** Whether one of the job's lists holds more than any version's would. */
const hasMasses = (schema: z.core.$ZodType, value: unknown): boolean => {
  const item = itemOf(schema);
  if (item !== undefined && Array.isArray(value))
    return value.length > mostItems || value.some((part) => hasMasses(item, part));
  return isBag(value) && Object.entries(shapeOf(schema) ?? {}).some(([key, part]) => hasMasses(part, value[key]));
};

/** What stands at the place put right: its preset, or, of what has none, nothing. */
const putRight = (value: unknown, keys: readonly PropertyKey[], at: readonly string[]): unknown => {
  const [key, ...rest] = keys;
  const path = [...at, Array.isArray(value) ? '*' : String(key)];
  const schema = schemaAt(path.join('.'), jobSchema);
  if (Array.isArray(value)) {
    const place = Number(key);
    const inside = rest.length > 0 && isBag(value[place]) ? putRight(value[place], rest, path) : undefined;
    return value.flatMap((item, k) => (k !== place ? [item] : inside === undefined ? [] : [inside]));
  }
  if (!isBag(value)) return undefined;
  const isInItem = at.includes('*');
  if (rest.length > 0 && typeof value[String(key)] === 'object' && value[String(key)] !== null) {
    const inside = putRight(value[String(key)], rest, path);
    return inside === undefined && isInItem ? undefined : { ...value, [String(key)]: inside };
  }
  const preset = schema && (itemOf(schema) === undefined ? presets(schema) : []);
  const { [String(key)]: _, ...others } = value;
  // An item that lacks what it must have, as its key, is none.
  if (preset === undefined && isInItem) return undefined;
  return preset === undefined ? others : { ...others, [String(key)]: preset };
};

/**
 * A job's text that a newer Sagitta wrote, as far as this one understands it; undefined where it is none, or where too little of it is understood. To be used only when the person has agreed to that.
 * Never throws.
 */
export function readNewer(text: string): Understood | undefined {
  const read = readJson(text, 'job');
  if (!read.ok || !isBag(read.value)) return undefined;
  const { format, version } = read.value;
  if (format !== jobFormat || !isNewer(version) || faultsIn(read.value).traps.length > 0) return undefined;
  if (hasMasses(jobSchema, read.value)) return undefined;
  let value = filledIn(jobSchema, { ...read.value, version: jobVersion });
  const replaced: string[] = [];
  for (let round = 0; round < rounds; round += 1) {
    const parsed = z.safeParse(jobSchema, value);
    if (parsed.success) {
      const job = validateJob(value);
      return job.ok ? { job: job.job, version, replaced, unknown: job.unknown } : undefined;
    }
    // So much that is not understood is another thing than a job.
    if (parsed.error.issues.length > mostReplaced) return undefined;
    // From the last to the first, so that an item that is left out does not move those before it.
    for (const { path } of parsed.error.issues.toReversed()) {
      if (path.length === 0) return undefined;
      replaced.push(path.join('.'));
      value = putRight(value, path, []);
    }
  }
  return undefined;
}
