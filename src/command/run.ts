import { readFile } from 'node:fs/promises';
import { resolve } from 'node:path';
import { build } from '../../geometry/build.ts';
import type { Job } from '../../geometry/job.ts';
import { jobJsonSchema, readJob } from '../../geometry/job-file.ts';
import { cleanName } from '../../geometry/names.ts';
import type { Problem } from '../../geometry/problem.ts';
import { type Asked, help, readOptions } from './options.ts';
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
      terminal.say(`${JSON.stringify(jobJsonSchema(), null, 2)}\n`);
      return;
    case 'wrong':
      return { code: 2, lines: [asked.says, 'See npm run draft -- --help.'] };
    case 'draft':
      return draft(asked, terminal);
  }
}

type Draft = Extract<Asked, { kind: 'draft' }>;

async function draft({ from, out, paper }: Draft, { say, complain, standing }: Terminal): Promise<Refused | undefined> {
  const fromHere = (path: string) => resolve(standing, path);
  let text: string;
  try {
    text = 'starter' in from ? from.starter.text : await readFile(fromHere(from.file), 'utf8');
  } catch (error) {
    const file = 'file' in from ? from.file : '';
    return refused(
      `The job file ${file} cannot be read: ${reasonFor(error)}. Give the path of a job file, or none for the demo.`,
    );
  }
  const read = readJob(text);
  if (!read.ok) return refused('The job cannot be read; nothing was written.', ...read.problems.map(inWords));
  if (read.unknown.length > 0)
    complain(`Kept in the job, but not known to Sagitta: ${read.unknown.map(cleanName).join(', ')}.\n`);
  const solved = build(read.job);
  if (!solved.ok) return refused('The job cannot be built; nothing was written.', ...solved.problems.map(inWords));
  // The writers are loaded only once there is something to write: they take longer than all that comes before.
  const { makeFiles } = await import('./make-files.ts');
  const made = await makeFiles(solved.job, solved.design, paper, read.job);
  if (!made.ok) return refused(made.says, 'Nothing was written.');
  try {
    await writeFiles(fromHere(out), made.files);
  } catch (error) {
    return refused(`The folder ${out} cannot be written: ${reasonFor(error)}. Choose another with --out.`);
  }
  const names = made.files.map(({ name }) => name);
  say(`${told(read.job, out, names)}\n`);
  return;
}

const told = (job: Job, out: string, names: readonly string[]) =>
  [`Drafted ${cleanName(job.name) || 'the job'} into ${out}:`, ...names.map((name) => `  ${name}`)].join('\n');

/** A problem on a line: the field's path, what stands there, and what is allowed. Many say all of it themselves. */
const inWords = ({ path, value, says }: Problem): string =>
  says.startsWith(path) ? `  ${says}` : `  ${cleanName(path)} = ${JSON.stringify(value) ?? 'nothing'}: ${says}`;
