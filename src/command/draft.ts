import { readFile } from 'node:fs/promises';
import { resolve } from 'node:path';
import { build } from '../../geometry/build.ts';
import type { Job } from '../../geometry/job.ts';
import { jobJsonSchema, readJob } from '../../geometry/job-file.ts';
import { cleanName } from '../../geometry/names.ts';
import type { Problem } from '../../geometry/problem.ts';
import type { PaperId } from '../../templates/paper.ts';
import { type Asked, help, readOptions } from './options.ts';
import { reasonFor, writeFiles } from './write-files.ts';

/** npm starts its scripts in the project's folder; what a person types is meant from where they stand. */
const standing = process.env.npm_lifecycle_event === 'draft' ? process.env.INIT_CWD : undefined;
const fromHere = (path: string) => resolve(standing ?? process.cwd(), path);

/** Carries out what was asked; the exit code. */
async function run(asked: Asked): Promise<number> {
  switch (asked.kind) {
    case 'help':
      process.stdout.write(help);
      return 0;
    case 'schema':
      process.stdout.write(`${JSON.stringify(jobJsonSchema(), null, 2)}\n`);
      return 0;
    case 'wrong':
      return refuse(2, asked.says, 'See npm run draft -- --help.');
    case 'draft': {
      const text = 'starter' in asked.from ? asked.from.starter.text : await readText(asked.from.file);
      return text === undefined ? 1 : draft(text, asked.out, asked.paper);
    }
  }
}

async function readText(file: string): Promise<string | undefined> {
  try {
    return await readFile(fromHere(file), 'utf8');
  } catch (error) {
    refuse(
      1,
      `The job file ${file} cannot be read: ${reasonFor(error)}. Give the path of a job file, or none for the demo.`,
    );
    return undefined;
  }
}

async function draft(text: string, out: string, paper: PaperId): Promise<number> {
  const read = readJob(text);
  if (!read.ok) return refuse(1, 'The job cannot be read; nothing was written.', ...read.problems.map(inWords));
  if (read.unknown.length > 0)
    say(`Kept in the job, but not known to Sagitta: ${read.unknown.map(cleanName).join(', ')}.`);
  const solved = build(read.job);
  if (!solved.ok) return refuse(1, 'The job cannot be built; nothing was written.', ...solved.problems.map(inWords));
  // The writers are loaded only once there is something to write: they take longer than all that comes before.
  const { makeFiles } = await import('./make-files.ts');
  const made = await makeFiles(solved.job, solved.design, paper, read.job);
  if (!made.ok) return refuse(1, made.says, 'Nothing was written.');
  try {
    await writeFiles(fromHere(out), made.files);
  } catch (error) {
    return refuse(1, `The folder ${out} cannot be written: ${reasonFor(error)}. Choose another with --out.`);
  }
  process.stdout.write(
    `${told(
      read.job,
      out,
      made.files.map(({ name }) => name),
    )}\n`,
  );
  return 0;
}

const told = (job: Job, out: string, names: readonly string[]) =>
  [`Drafted ${cleanName(job.name) || 'the job'} into ${out}:`, ...names.map((name) => `  ${name}`)].join('\n');

/** A problem on a line: the field's path, what stands there, and what is allowed. Many say all of it themselves. */
const inWords = ({ path, value, says }: Problem): string =>
  says.startsWith(path) ? `  ${says}` : `  ${cleanName(path)} = ${JSON.stringify(value) ?? 'nothing'}: ${says}`;

const say = (line: string) => process.stderr.write(`${line}\n`);

function refuse(code: number, ...lines: readonly string[]): number {
  lines.forEach(say);
  return code;
}

process.exitCode = await run(readOptions(process.argv.slice(2)));
