import { readFile } from 'node:fs/promises';
import { createServer } from 'node:http';
import type { AddressInfo } from 'node:net';
import { extname, join, normalize } from 'node:path';
import { onTestFinished } from 'vitest';

const types: Readonly<Record<string, string>> = {
  '.css': 'text/css',
  '.html': 'text/html',
  '.js': 'text/javascript',
  '.json': 'application/json',
  '.png': 'image/png',
  '.svg': 'image/svg+xml',
  '.ttf': 'font/ttf',
  '.txt': 'text/plain',
  '.webmanifest': 'application/manifest+json',
};

/** A plain web server that knows nothing of the app: it hands out what lies in a folder, under a path such as `/a/b/`, till the test ends or it is stopped. */
export async function serveFolder(folder: string, path: string) {
  let served = folder;
  const server = createServer(async ({ url = '/' }, response) => {
    const { pathname } = new URL(url, 'http://localhost');
    const name = normalize(pathname.slice(path.length) || 'index.html');
    const body =
      pathname.startsWith(path) && !name.startsWith('..')
        ? await readFile(join(served, name)).catch(() => undefined)
        : undefined;
    // As servers do that were not told otherwise: nothing about how long a file may be kept.
    response.writeHead(body ? 200 : 404, { 'content-type': types[extname(name)] ?? 'application/octet-stream' });
    response.end(body);
  });
  await new Promise<void>((done) => server.listen(0, '127.0.0.1', done));
  const stop = () =>
    new Promise<void>((done) => {
      server.close(() => done());
      server.closeAllConnections();
    });
  onTestFinished(async () => {
    if (server.listening) await stop();
  });
  return {
    url: `http://127.0.0.1:${(server.address() as AddressInfo).port}${path}`,
    stop,
    /** Another version of the app in its place. */
    put: (other: string) => {
      served = other;
    },
  };
}
