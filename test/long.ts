import { spawn } from 'node:child_process';
import { delimiter, join } from 'node:path';
import { fileURLToPath } from 'node:url';

/*
 * The random jobs again, ten times as many: `npm run long`, or as many as are asked for, `npm run long -- 500000`.
 */

const root = fileURLToPath(new URL('..', import.meta.url));
const count = process.argv[2] ?? '100000';

const child = spawn('vitest', ['run', '--project', 'unit', 'test/geometry/property'], {
  cwd: root,
  stdio: 'inherit',
  env: {
    ...process.env,
    PATH: join(root, 'node_modules', '.bin') + delimiter + (process.env.PATH ?? ''),
    SAGITTA_RANDOM_JOBS: count,
  },
  shell: process.platform === 'win32',
});
child.on('error', (error) => {
  console.error(`vitest could not be run: ${error.message}. Run npm ci first.`);
  process.exitCode = 1;
});
child.on('close', (code) => {
  process.exitCode = code ?? 1;
});
