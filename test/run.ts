import { spawn } from 'node:child_process';
import { mkdtemp, readFile, rm } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { delimiter, join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { sum, type Tally, tallyVitest, tallyWhole } from './tally.ts';

/*
 * Runs every check of the project, one after the other and each even if one before it failed, and ends with one line that adds them up.
 */

const root = fileURLToPath(new URL('..', import.meta.url));

/** Runs a tool of node_modules with its output passed straight through; its exit code, or null if it could not be run or was killed. */
function run(tool: string, ...args: string[]): Promise<number | null> {
  console.log(`\n> ${[tool, ...args].join(' ')}`);
  const path = join(root, 'node_modules', '.bin') + delimiter + (process.env.PATH ?? '');
  return new Promise((done) => {
    const child = spawn(tool, args, {
      cwd: root,
      stdio: 'inherit',
      env: { ...process.env, PATH: path },
      shell: process.platform === 'win32',
    });
    child.on('error', (error) => {
      console.error(`${tool} could not be run: ${error.message}. Run npm ci first.`);
      done(null);
    });
    child.on('close', (code) => done(code));
  });
}

async function whole(tool: string, ...args: string[]): Promise<Tally> {
  return tallyWhole(await run(tool, ...args));
}

async function vitest(folder: string, ...projects: readonly string[]): Promise<Tally> {
  const file = join(folder, `${projects.join('-')}.json`);
  const reporters = ['--reporter=default', '--reporter=json', `--outputFile.json=${file}`];
  const code = await run('vitest', 'run', ...projects.flatMap((name) => ['--project', name]), ...reporters);
  return tallyVitest(await readFile(file, 'utf8').catch(() => undefined), code);
}

const folder = await mkdtemp(join(tmpdir(), 'sagitta-test-'));
const total = sum([
  await whole('tsc', '-b'),
  await whole('biome', 'check', '.'),
  await vitest(folder, 'unit', 'app'),
  await vitest(folder, 'browser'),
]);
await rm(folder, { recursive: true, force: true });
process.exitCode = total.failed === 0 ? 0 : 1;
console.log(`\n${total.passed} passed, ${total.failed} failed`);
