/*
 * Runs in the browser beside the app's windows: puts every file of this version by, and answers with them, so that all works without network after the first visit. A later version is put by
 * in the same way and waits until it is told to take over. It imports nothing: the build writes it out as it stands here, with the list of files.
 */

/** The app's files as they lie beside this one, each with the digest of its bytes; the page itself as `./`. */
declare const files: readonly (readonly [name: string, integrity: string])[];
/** The digest of all of them. */
declare const version: string;

const worker = self as unknown as ServiceWorkerGlobalScope;
/** The folder that the app lies in. */
const { scope } = worker.registration;
/** All apps of an origin share its caches: these are named by the folder as well. */
const ours = `sagitta ${scope} `;
const cacheName = ours + version;

const addressOf = (name: string): string => new URL(name, scope).href;
const known = new Map(files.map(([name]) => [addressOf(name), addressOf(name)]));
known.set(addressOf('index.html'), addressOf('./'));

/** A file's answer, of exactly the bytes that this version was built with: while a new version is being put on a server, old and new files lie there side by side. Rejects with a TypeError where they differ or cannot be had. */
const fetchWhole = async (address: string, integrity: string): Promise<Response> => {
  const answer = await fetch(address, { cache: 'no-cache', integrity });
  if (!answer.ok) throw new TypeError(`${address} was answered with ${answer.status}.`);
  // A page that was redirected may not be shown in answer to another address.
  return answer.redirected ? new Response(answer.body, { headers: answer.headers }) : answer;
};

const putBy = async (): Promise<void> => {
  const cache = await caches.open(cacheName);
  await Promise.all(
    files.map(async ([name, integrity]) => {
      const address = addressOf(name);
      await cache.put(address, await fetchWhole(address, integrity));
    }),
  );
};

const takeOver = async (): Promise<void> => {
  const names = await caches.keys();
  await Promise.all(
    names.filter((name) => name.startsWith(ours) && name !== cacheName).map((name) => caches.delete(name)),
  );
  // The window that was opened first needs no network from now on either.
  await worker.clients.claim();
};

const answer = async (address: string, request: Request): Promise<Response> => {
  const cache = await caches.open(cacheName);
  // Servers let answers vary by who asks; these files do not.
  return (await cache.match(address, { ignoreVary: true })) ?? fetch(request);
};

worker.addEventListener('install', (event) => event.waitUntil(putBy()));
worker.addEventListener('activate', (event) => event.waitUntil(takeOver()));
worker.addEventListener('message', ({ data }) => {
  if (data === 'take over') void worker.skipWaiting();
});
worker.addEventListener('fetch', (event) => {
  const { origin, pathname } = new URL(event.request.url);
  const address = known.get(origin + pathname);
  if (address !== undefined && event.request.method === 'GET') event.respondWith(answer(address, event.request));
});
