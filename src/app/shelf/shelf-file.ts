import type { Job } from '../../../geometry/job.ts';
import { validateJob } from '../../../geometry/job-file.ts';
import { quote } from '../../../geometry/names.ts';
import { deepestFile, readJson } from '../../../geometry/read-json.ts';
import type { Place } from '../keep/database.ts';
import { version } from '../version.ts';
import { words } from '../words.ts';

/*
 * Many jobs as one file, to be put away or carried to another device. Each job in it is a whole job file of its own.
 */

export const shelfFormat = 'sagitta-shelf';
export const shelfVersion = 1;
/** The longest such file, in UTF-16 units. */
export const longestShelf = 60_000_000;
const mostJobs = 20_000;
/** How deep in it a job lies. */
const around = 3;

/** A job as the shelf holds it. */
export interface Shelved {
  readonly job: Job;
  readonly place: Place;
}

export type ReadShelf =
  | { readonly ok: true; readonly jobs: readonly Shelved[]; readonly refused: readonly string[] }
  | { readonly ok: false; readonly says: string };

/** The text of such a file; `saved` is the day, as year-month-day. */
export const writeShelf = (jobs: readonly { readonly job: unknown; readonly place: Place }[], saved: string): string =>
  `${JSON.stringify({ format: shelfFormat, version: shelfVersion, program: `Sagitta ${version}`, saved, about: words.shelf.fileSays, jobs }, null, 1)}\n`;

const says = new RegExp(`"format"\\s*:\\s*"${shelfFormat}"`);
/** Whether a text says of itself that it is such a file; the reader looks closer. */
export const isShelf = (text: string): boolean => says.test(text.slice(0, 200));

const isPlace = (value: unknown): value is Place => value === 'shelf' || value === 'archive' || value === 'bin';
const isBag = (value: unknown): value is Readonly<Record<string, unknown>> =>
  typeof value === 'object' && value !== null && !Array.isArray(value);

/** Reads such a file: every job in it that can be read, and why each other one cannot. `pause` is awaited between jobs, so that a large one holds nothing up. Never rejects. */
export const readShelf = async (text: string, pause: () => Promise<void>): Promise<ReadShelf> => {
  const says = (what: string): ReadShelf => ({ ok: false, says: what });
  const read = readJson(text, 'shelf', { longest: longestShelf, deepest: deepestFile + around });
  if (!read.ok) return says(read.problem.says);
  const { value } = read;
  if (!isBag(value) || value.format !== shelfFormat || !Array.isArray(value.jobs)) return says(words.shelf.noShelf);
  if (value.version !== shelfVersion)
    return says(
      Number.isSafeInteger(value.version) && Number(value.version) > shelfVersion
        ? words.shelf.newerShelf(String(value.version), shelfVersion)
        : words.shelf.oddShelf(shelfVersion),
    );
  if (value.jobs.length > mostJobs) return says(words.shelf.tooMany(value.jobs.length, mostJobs));
  const jobs: Shelved[] = [];
  const refused: string[] = [];
  for (const [k, one] of value.jobs.entries()) {
    await pause();
    const job = isBag(one) ? validateJob(one.job) : undefined;
    if (job?.ok && isBag(one)) jobs.push({ job: job.job, place: isPlace(one.place) ? one.place : 'shelf' });
    else {
      const name = isBag(one) && isBag(one.job) && typeof one.job.name === 'string' ? quote(one.job.name) : '';
      const why = (job?.ok === false ? job.problems[0]?.says : undefined) ?? words.shelf.noJob;
      refused.push(words.shelf.refused(k + 1, name, why));
    }
  }
  return { ok: true, jobs, refused };
};
