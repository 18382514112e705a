/**
 * The worker that keeps the files of the site, so that it opens without a network. It takes one whole version or
 * none, waits until it is asked to take over, and never touches what a person has kept. Which files there are is
 * written in by the build; when it is registered and asked is decided in `register.ts`. One file without imports,
 * because browsers run it by itself.
 */

/** Name and SHA-256 (base64url) of every file, as JSON; the build puts it here. */
const LIST = '__SITE_FILES__';

/** The parts of the worker's own scope that are used; the DOM library describes a window instead. */
interface Scope {
  readonly registration: { readonly scope: string };
  readonly clients: { claim(): Promise<void> };
  skipWaiting(): Promise<void>;
  addEventListener(type: 'install' | 'activate', listener: (event: LongEvent) => void): void;
  addEventListener(type: 'fetch', listener: (event: Asked) => void): void;
  addEventListener(type: 'message', listener: (event: MessageEvent<unknown>) => void): void;
}

interface LongEvent {
  waitUntil(work: Promise<unknown>): void;
}

interface Asked {
  readonly request: Request;
  respondWith(answer: Promise<Response>): void;
}

const scope = globalThis as unknown as Scope;
const files = JSON.parse(LIST) as readonly (readonly [name: string, fingerprint: string])[];
/** Begins like everything of ours on this device, so that "delete everything" finds it. */
const PREFIX = 'before-the-hill.site.';
const PAGE = 'index.html';
/** Files fetched at the same time; few, so that a ride begun meanwhile is not kept waiting. */
const LANES = 3;

const addressOf = (name: string): string =>
  new URL(name === PAGE ? './' : name, scope.registration.scope).href;

async function sha256(content: BufferSource): Promise<string> {
  const bytes = new Uint8Array(await crypto.subtle.digest('SHA-256', content));
  return btoa(String.fromCharCode(...bytes))
    .replaceAll('+', '-')
    .replaceAll('/', '_')
    .replace(/=+$/, '');
}

/** The cache of this version, named by everything in it. */
const ownCache = sha256(new TextEncoder().encode(LIST)).then((version) => PREFIX + version);

/** One file past every other cache. A file of another version is refused, or two versions would be mixed. */
async function fetchFile(name: string, fingerprint: string): Promise<Response> {
  const answer = await fetch(addressOf(name), { cache: 'reload' });
  const content = await answer.arrayBuffer();
  if (!answer.ok || (await sha256(content)) !== fingerprint)
    throw new Error(`${name} is not the file of this version`);
  // A copy: browsers refuse to open a page from an answer that was redirected. It is unpacked already.
  const headers = new Headers(answer.headers);
  headers.delete('content-encoding');
  headers.delete('content-length');
  return new Response(content, { headers });
}

/** All files or none; a browser that could not take them asks again at the next visit. */
async function takeFiles(): Promise<void> {
  const name = await ownCache;
  const cache = await caches.open(name);
  const waiting = [...files];
  const lane = async (): Promise<void> => {
    for (let next = waiting.shift(); next !== undefined; next = waiting.shift())
      await cache.put(addressOf(next[0]), await fetchFile(...next));
  };
  try {
    await Promise.all(Array.from({ length: LANES }, lane));
  } catch (error) {
    await caches.delete(name);
    throw error;
  }
}

/** Another tab may still run the version before this one; older ones go. Names come in the order of their making. */
async function dropOldFiles(): Promise<void> {
  const own = await ownCache;
  const others = (await caches.keys()).filter((name) => name.startsWith(PREFIX) && name !== own);
  await Promise.all(others.slice(0, -1).map((name) => caches.delete(name)));
  await scope.clients.claim();
}

/** The file from this version, else from the one before, else from the network. */
async function answer(request: Request): Promise<Response> {
  // Looked up by name: opening a cache that a person has deleted would make it again.
  const own = { cacheName: await ownCache, ignoreSearch: true };
  const kept = await caches.match(request, own);
  if (kept !== undefined) return kept;
  if (request.mode === 'navigate') return (await caches.match(addressOf(PAGE), own)) ?? fetch(request);
  return (await caches.match(request, { ignoreSearch: true })) ?? fetch(request);
}

scope.addEventListener('install', (event) => event.waitUntil(takeFiles()));
scope.addEventListener('activate', (event) => event.waitUntil(dropOldFiles()));
scope.addEventListener('fetch', (event) => {
  const { request } = event;
  // A club's own store, and anything else outside this folder, is none of our business.
  if (request.method === 'GET' && request.url.startsWith(scope.registration.scope))
    event.respondWith(answer(request));
});
scope.addEventListener('message', (event) => {
  if (event.data === 'take-over') void scope.skipWaiting();
});
