import { createHash } from 'node:crypto';
import { readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { type Plugin, transformWithOxc } from 'vite';
import { digest } from './policy.ts';

const source = fileURLToPath(new URL('../src/offline/service-worker.ts', import.meta.url));
/** Where it lies beside the page: it may only answer for what lies in or below its own folder. */
const fileName = 'service-worker.js';

type Names = readonly (readonly [name: string, integrity: string])[];

/** The service worker's program for an app of these files. */
export const serviceWorkerOf = async (files: Names): Promise<string> => {
  const version = createHash('sha256').update(JSON.stringify(files)).digest('hex').slice(0, 16);
  const { code } = await transformWithOxc(readFileSync(source, 'utf8'), source, { sourcemap: false });
  const lists = `const files=${JSON.stringify(files)};const version=${JSON.stringify(version)};`;
  return `${lists}\n${code.replace(/^export \{\s*\};?$/m, '')}`;
};

/** Writes the service worker beside the page, once all other files are there. */
export const serviceWorker = (): Plugin => ({
  name: 'service-worker',
  apply: 'build',
  enforce: 'post',
  generateBundle: {
    // After all others, which still write into the files.
    order: 'post',
    async handler(_, bundle) {
      const files = Object.values(bundle)
        .filter((file) => !file.fileName.endsWith('.map'))
        .map((file): Names[number] => [
          file.fileName === 'index.html' ? './' : file.fileName,
          digest(file.type === 'asset' ? file.source : file.code),
        ])
        .sort(([a], [b]) => (a < b ? -1 : 1));
      this.emitFile({ type: 'asset', fileName, source: await serviceWorkerOf(files) });
    },
  },
});
