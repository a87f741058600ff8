import { spawnSync } from 'node:child_process';
import { mkdtemp, rm } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { preview } from 'vite';
import type { TestProject } from 'vitest/node';
import { provideChromium } from '../chromium.ts';

declare module 'vitest' {
  interface ProvidedContext {
    /** Where the built app is served, with a slash at its end. */
    url: string;
    /** The folder that it was built into. */
    built: string;
    /** The browser's program file. */
    chromium: string;
  }
}

const root = fileURLToPath(new URL('../..', import.meta.url));

/** Builds the app once, as a user does but beside `dist`, serves it on a free port and finds a Chromium; returns what undoes it all. */
export default async function setup(project: TestProject): Promise<() => Promise<void>> {
  project.provide('chromium', provideChromium());
  const outDir = await mkdtemp(join(tmpdir(), 'sagitta-app-'));
  build(outDir);
  project.provide('built', outDir);
  const server = await preview({
    root,
    configFile: join(root, 'vite.config.ts'),
    logLevel: 'warn',
    build: { outDir },
    preview: { host: '127.0.0.1', port: 0 },
  });
  const url = server.resolvedUrls?.local[0];
  if (url === undefined) throw new Error('The preview server did not say its address.');
  project.provide('url', url);
  return async () => {
    await server.close();
    await rm(outDir, { recursive: true, force: true });
  };
}

/** In a process of its own: in this one vitest has set NODE_ENV to `test`, and React would be built for development. */
function build(outDir: string): void {
  const vite = fileURLToPath(new URL('../../node_modules/vite/bin/vite.js', import.meta.url));
  const { NODE_ENV: _, VITEST: __, ...env } = process.env;
  const args = [vite, 'build', '--outDir', outDir, '--emptyOutDir', '--logLevel', 'warn'];
  const { status } = spawnSync(process.execPath, args, { cwd: root, stdio: ['ignore', 'inherit', 'inherit'], env });
  if (status !== 0) throw new Error('The app could not be built: see above.');
}
