import { execFileSync } from 'node:child_process';
import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import react from '@vitejs/plugin-react';
import { build, type PreviewServer, preview } from 'vite';

const root = fileURLToPath(new URL('../..', import.meta.url));
const bareRoot = fileURLToPath(new URL('bare', import.meta.url));

/** The app and the empty page, built for production by the same tool and served alike. */
export const servePages = async () => {
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
export const runNumbers = async (): Promise<Readonly<Record<'clone' | 'solve' | 'build', number>>> => {
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
