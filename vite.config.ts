import { availableParallelism } from 'node:os';
import { fileURLToPath } from 'node:url';
import react from '@vitejs/plugin-react';
import type { Plugin } from 'vite';
import { defineConfig } from 'vitest/config';
import { compileHint } from './build/compile-hint.ts';
import { installable } from './build/installable.ts';
import { licences } from './build/licences.ts';
import { contentPolicy } from './build/policy.ts';
import { serviceWorker } from './build/service-worker.ts';
import { singleFile } from './build/single.ts';
import { jobJsonSchema } from './geometry/job-file.ts';

/** Says in one line where the built app is served. */
function sayAddress(): Plugin {
  return {
    name: 'say-address',
    configurePreviewServer(server) {
      server.printUrls = () => server.config.logger.info(`Sagitta stands at ${server.resolvedUrls?.local[0]}`);
    },
  };
}

/** Puts the JSON Schema of a job file beside the built app, for editors and other programs. */
function emitSchema(): Plugin {
  return {
    name: 'emit-schema',
    generateBundle() {
      this.emitFile({
        type: 'asset',
        fileName: 'job.schema.json',
        source: `${JSON.stringify(jobJsonSchema(), null, 2)}\n`,
      });
    },
  };
}

type Context = { readonly getModuleInfo: (id: string) => { readonly importedIds: readonly string[] } | null };

/** Everything that the page's beginning asks for without `import()`: one chunk, so that the first drawing comes in one piece. */
function inFirst(id: string, context: Context): boolean {
  if (first.size === 0) {
    const queue = [fileURLToPath(new URL('./src/app/main.ts', import.meta.url))];
    for (const one of queue) {
      if (first.has(one)) continue;
      first.add(one);
      queue.push(...(context.getModuleInfo(one)?.importedIds ?? []));
    }
  }
  return first.has(id);
}
const first = new Set<string>();

/** Room for a busy machine: some tests run the command, or hundreds of random cases, ms. */
const testTimeout = 20_000;

/** How tests in a real browser are run. */
const inBrowser = {
  globalSetup: ['test/browser/setup.ts'],
  testTimeout: 60_000,
  hookTimeout: 120_000,
  // They wait half of the time, for what has to come to rest: half as many again as there are cores share them.
  maxWorkers: Math.ceil(availableParallelism() * 1.5),
};

export default defineConfig(({ mode }) => {
  // `npm run single`: the app as one file.
  const isSingle = mode === 'single';
  const shipped = licences();
  return {
    base: './',
    plugins: [
      react(),
      sayAddress(),
      shipped.page,
      installable(isSingle),
      ...(isSingle ? [singleFile()] : [emitSchema(), compileHint(), contentPolicy(), serviceWorker()]),
    ],
    worker: { plugins: () => [shipped.workers] },
    // If the port is taken, the next free one is used.
    preview: { host: '127.0.0.1', port: 4173 },
    build: {
      target: 'es2022',
      // Every browser that runs this target knows it.
      modulePreload: { polyfill: false },
      outDir: 'dist',
      rolldownOptions: {
        output: isSingle
          ? {}
          : {
              codeSplitting: {
                groups: [{ debugName: 'first', name: (id, context) => (inFirst(id, context) ? 'first' : null) }],
              },
            },
      },
    },
    test: {
      // All cores: most tests only reckon.
      maxWorkers: '100%',
      projects: [
        {
          extends: true,
          // What only reckons leaves nothing behind: its files share their processes and what is loaded there.
          test: {
            name: 'unit',
            include: ['test/**/*.test.{ts,tsx}'],
            exclude: ['test/app/**', 'test/browser/**'],
            isolate: false,
            testTimeout,
          },
        },
        {
          extends: true,
          // What holds a state: stores, storage, a DOM. Each file has its own process, and a component's test asks for its own DOM:
          // `// @vitest-environment jsdom` on its first line.
          test: { name: 'app', include: ['test/app/**/*.test.{ts,tsx}'], testTimeout },
        },
        { extends: true, test: { name: 'browser', include: ['test/browser/**/*.test.ts'], ...inBrowser } },
        // `npm run prove`: too long for every day.
        { extends: true, test: { name: 'prove', include: ['test/paper/*.prove.ts'], testTimeout: 600_000 } },
        // Not a check: `npm run pictures` makes the README's pictures with the same browser.
        { extends: true, test: { name: 'pictures', include: ['test/pictures/*.make.ts'], ...inBrowser } },
      ],
    },
  };
});
