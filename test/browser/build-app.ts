import { spawnSync } from 'node:child_process';
import { fileURLToPath } from 'node:url';

const root = fileURLToPath(new URL('../..', import.meta.url));

/** Builds the app into a folder as a user does; `single` as one file. In a process of its own: in this one vitest has set NODE_ENV to `test`, and React would be built for development. */
export function buildApp(outDir: string, mode: 'production' | 'single' = 'production'): void {
  const vite = fileURLToPath(new URL('../../node_modules/vite/bin/vite.js', import.meta.url));
  const { NODE_ENV: _, VITEST: __, ...env } = process.env;
  const args = [vite, 'build', '--mode', mode, '--outDir', outDir, '--emptyOutDir', '--logLevel', 'warn'];
  const { status } = spawnSync(process.execPath, args, { cwd: root, stdio: ['ignore', 'inherit', 'inherit'], env });
  if (status !== 0) throw new Error('The app could not be built: see above.');
}
