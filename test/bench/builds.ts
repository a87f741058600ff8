import { execFileSync } from 'node:child_process';
import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import react from '@vitejs/plugin-react';
import { build, type PreviewServer, preview } from 'vite';
import { type Row, times } from './row.ts';

const root = fileURLToPath(new URL('../..', import.meta.url));
const bareRoot = fileURLToPath(new URL('bare', import.meta.url));

/** The app and the empty page, built for production by the same tool and served alike: where they stand. */
export interface Pages {
  readonly app: string;
  readonly bare: string;
  readonly close: () => Promise<void>;
}

export const servePages = async (): Promise<Pages> => {
  const folder = mkdtempSync(join(tmpdir(), 'sagitta-bench-'));
  const [app, bare] = [join(folder, 'app'), join(folder, 'bare')];
  const target = 'es2022';
  await build({ root, logLevel: 'error', build: { outDir: app } });
  await build({
    root: bareRoot,
    configFile: false,
    base: './',
    logLevel: 'error',
    plugins: [react()],
    build: { target, outDir: bare, modulePreload: { polyfill: false } },
  });
  const servers: PreviewServer[] = [];
  const serve = async (outDir: string): Promise<string> => {
    const server = await preview({
      root,
      configFile: false,
      logLevel: 'error',
      build: { outDir },
      preview: { host: '127.0.0.1', port: 0 },
    });
    servers.push(server);
    return server.resolvedUrls?.local[0] as string;
  };
  return {
    app: await serve(app),
    bare: await serve(bare),
    close: async () => {
      await Promise.all(servers.map((server) => server.close()));
      rmSync(folder, { recursive: true, force: true });
    },
  };
};

/** What `numbers.ts` measures in Node, built as the app is: the loader that runs the rest of the tests wraps each function. */
const runNumbers = async (): Promise<Readonly<Record<'clone' | 'solve' | 'build', number>>> => {
  const folder = mkdtempSync(join(tmpdir(), 'sagitta-bench-'));
  try {
    await build({
      root,
      configFile: false,
      logLevel: 'error',
      ssr: { noExternal: true },
      build: {
        ssr: fileURLToPath(new URL('numbers.ts', import.meta.url)),
        outDir: folder,
        target: 'es2022',
        rolldownOptions: { output: { entryFileNames: 'numbers.mjs' } },
      },
    });
    return JSON.parse(execFileSync(process.execPath, [join(folder, 'numbers.mjs')], { encoding: 'utf8' }));
  } finally {
    rmSync(folder, { recursive: true, force: true });
  }
};

/** What a job's numbers take against a copy of the job. */
export const benchNumbers = async (): Promise<readonly Row[]> => {
  const { clone, solve, build } = await runNumbers();
  const us = (value: number) => `${value.toFixed(0)} µs`;
  const row = (what: string, value: number, wanted: string): Row => ({
    what,
    measured: us(value),
    against: `${us(clone)} structuredClone(job)`,
    ratio: times(value, clone),
    wanted,
  });
  return [row('numbers: solve', solve, '3 ×'), row('numbers that can be made: build', build, '')];
};
