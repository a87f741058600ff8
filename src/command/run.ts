import { readFile } from 'node:fs/promises';
import { resolve } from 'node:path';
import { build } from '../../geometry/build.ts';
import type { Job } from '../../geometry/job.ts';
import { jobJsonSchema, readJob } from '../../geometry/job-file.ts';
import { cleanName } from '../../geometry/names.ts';
import type { Problem } from '../../geometry/problem.ts';
import { readAs } from '../../geometry/read-as.ts';
import { newShop, readShop, type Shop, shopJsonSchema } from '../../templates/shop/index.ts';
import { askedShop } from './asked-shop.ts';
import { type Asked, type Draft, help, readOptions } from './options.ts';
import { reasonFor, writeFiles } from './write-files.ts';

/** Where the command is typed: what it says and complains of there, and the folder that paths are meant from. */
export interface Terminal {
  readonly say: (text: string) => void;
  readonly complain: (text: string) => void;
  readonly standing: string;
}

/** What keeps the command from its work, line by line, and the exit code that tells of it. */
interface Refused {
  readonly code: 1 | 2;
  readonly lines: readonly string[];
}

const seeHelp = 'See npm run draft -- --help.';

const refused = (...lines: readonly string[]): Refused => ({ code: 1, lines });

/** Carries out what these arguments ask; the exit code. */
export async function run(args: readonly string[], terminal: Terminal): Promise<number> {
  const answer = await carryOut(readOptions(args), terminal);
  if (answer === undefined) return 0;
  for (const line of answer.lines) terminal.complain(`${line}\n`);
  return answer.code;
}

async function carryOut(asked: Asked, terminal: Terminal): Promise<Refused | undefined> {
  switch (asked.kind) {
    case 'help':
      terminal.say(help);
      return;
    case 'schema':
      terminal.say(`${JSON.stringify(asked.of === 'job' ? jobJsonSchema() : shopJsonSchema(), null, 2)}\n`);
      return;
    case 'wrong':
      return { code: 2, lines: [asked.says, seeHelp] };
    case 'draft':
      return draft(asked, terminal);
  }
}

/** A file's bytes, or why they cannot be had. */
const readBytes = async (file: string, standing: string): Promise<Uint8Array | Error> => {
  try {
    return await readFile(resolve(standing, file));
  } catch (error) {
    return new Error(reasonFor(error));
  }
};

/** The job's text, its own way to be read in. */
const jobText = async ({ from }: Draft, standing: string): Promise<string | Refused> => {
  if ('starter' in from) return from.starter.text;
  const bytes = await readBytes(from.file, standing);
  return bytes instanceof Error
    ? refused(
        `The job file ${from.file} cannot be read: ${bytes.message}. Give the path of a job file, or none for the demo.`,
      )
    : new TextDecoder().decode(bytes);
};

/** The settings that a draft is made with. */
const shopOf = async (asked: Draft, { complain, standing }: Terminal): Promise<Shop | Refused> => {
  const file = asked.settings;
  let shop = newShop();
  if (file !== undefined) {
    const bytes = await readBytes(file, standing);
    if (bytes instanceof Error)
      return refused(
        `The settings file ${file} cannot be read: ${bytes.message}. Give the path of one that Sagitta saved, or leave it out.`,
      );
    const read = readShop(new TextDecoder().decode(bytes));
    if (!read.ok) return refused('The settings cannot be read; nothing was written.', ...read.problems.map(inWords));
    if (read.unknown.length > 0)
      complain(`In the settings, but not known to Sagitta: ${read.unknown.map(cleanName).join(', ')}.\n`);
    shop = read.shop;
  }
  const answer = askedShop(shop, asked);
  return answer.ok ? answer.shop : { code: 2, lines: [answer.says, seeHelp] };
};

const isRefused = (answer: object | string | undefined): answer is Refused =>
  typeof answer === 'object' && 'lines' in answer;

async function draft(asked: Draft, terminal: Terminal): Promise<Refused | undefined> {
  const { say, complain, standing } = terminal;
  const shop = await shopOf(asked, terminal);
  if (isRefused(shop)) return shop;
  const text = await jobText(asked, standing);
  if (isRefused(text)) return text;
  const read = readJob(text);
  if (!read.ok) return refused('The job cannot be read; nothing was written.', ...read.problems.map(inWords));
  if (read.unknown.length > 0)
    complain(`Kept in the job, but not known to Sagitta: ${read.unknown.map(cleanName).join(', ')}.\n`);
  const solved = build(readAs(read.job, asked.decimal));
  if (!solved.ok) return refused('The job cannot be built; nothing was written.', ...solved.problems.map(inWords));
  // The writers are loaded only once there is something to write: they take longer than all that comes before.
  const { readFace } = await import('../../templates/set-line.ts');
  const other = asked.font === undefined ? undefined : await readBytes(asked.font, standing);
  const noFont = (why: string) =>
    refused(
      `The font ${asked.font} cannot be read: ${why}. Give a TrueType or OpenType file, or leave it out.`,
      'Nothing was written.',
    );
  if (other instanceof Error) return noFont(other.message);
  try {
    if (other) readFace(other);
  } catch {
    return noFont('it is no font');
  }
  const { makeFiles } = await import('./make-files.ts');
  const made = await makeFiles({ ...solved, asRead: read.job, shop, other }, asked);
  if (!made.ok) return refused(...made.lines, 'Nothing was written.');
  try {
    await writeFiles(resolve(standing, asked.out), made.files);
  } catch (error) {
    return refused(`The folder ${asked.out} cannot be written: ${reasonFor(error)}. Choose another with --out.`);
  }
  for (const note of made.notes) complain(`${note}\n`);
  const names = made.files.map(({ name }) => name);
  say(`${told(read.job, asked.out, names)}\n`);
  return;
}

const told = (job: Job, out: string, names: readonly string[]) =>
  [`Drafted ${cleanName(job.name) || 'the job'} into ${out}:`, ...names.map((name) => `  ${name}`)].join('\n');

/** A problem on a line: the field's path, what stands there, and what is allowed. Many say all of it themselves. */
const inWords = ({ path, value, says }: Problem): string =>
  says.startsWith(path) ? `  ${says}` : `  ${cleanName(`${path} = ${JSON.stringify(value) ?? 'nothing'}`)}: ${says}`;
