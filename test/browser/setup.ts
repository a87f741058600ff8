import { mkdtemp, rm } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { preview } from 'vite';
import type { TestProject } from 'vitest/node';
import { provideChromium } from '../chromium.ts';
import { buildApp } from './build-app.ts';

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
  buildApp(outDir);
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
