/**
 * The worker that keeps the files of the site, so that it opens without a network. It takes one whole version or
 * none, hands out nothing that is not what the build made, waits until it is asked to take over, and never touches
 * what a person has kept or what else lies in the folder. Which files there are is written in by the build; when it
 * is registered and asked is decided in `register.ts`. One file without imports, because browsers run it by itself.
 */

/** Name and fingerprint of every file, as JSON; the build puts it here. */
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
const fingerprints = new Map(files);
/** Begins like everything of ours on this device, so that "delete everything" finds it. */
const PREFIX = 'before-the-hill.site.';
const PAGE = 'index.html';
/** Where the build puts files that have their content in their name. */
const ASSETS = 'assets/';
/** Files fetched at the same time; few, so that a ride begun meanwhile is not kept waiting. */
const LANES = 3;
/** Browsers refuse files of the wrong type, and a host may have told a wrong one. */
const TYPES: Readonly<Record<string, string>> = {
  css: 'text/css; charset=utf-8',
  html: 'text/html; charset=utf-8',
  js: 'text/javascript; charset=utf-8',
  svg: 'image/svg+xml',
  webmanifest: 'application/manifest+json',
};

/** A file of this version can neither be found whole here nor be had from the host, which has moved on. */
let outlived = false;

const addressOf = (name: string): string =>
  new URL(name === PAGE ? './' : name, scope.registration.scope).href;

/** What an address in the folder of the site is called in the list, if it stands there. */
function nameOf(address: string): string {
  const { origin, pathname } = new URL(address);
  return `${origin}${pathname}`.slice(scope.registration.scope.length) || PAGE;
}

/** The first 128 bits of SHA-256, as base64url: nobody meets so many by chance or by trying. */
async function fingerprintOf(content: BufferSource): Promise<string> {
  const bytes = new Uint8Array(await crypto.subtle.digest('SHA-256', content), 0, 16);
  return btoa(String.fromCharCode(...bytes))
    .replaceAll('+', '-')
    .replaceAll('/', '_')
    .replace(/=+$/, '');
}

/** The cache of this version, named by everything in it. */
const ownCache = fingerprintOf(new TextEncoder().encode(LIST)).then((version) => PREFIX + version);

/** The answer, if it is the file of this version; null where it is not. */
async function checked(name: string, answer: Response | undefined): Promise<Response | null> {
  if (answer?.ok !== true) return null;
  const content = await answer.arrayBuffer();
  if ((await fingerprintOf(content)) !== fingerprints.get(name)) return null;
  // A copy: browsers refuse to open a page from an answer that was redirected. It is unpacked already.
  const headers = new Headers(answer.headers);
  headers.delete('content-encoding');
  headers.delete('content-length');
  const type = TYPES[name.split('.').at(-1) ?? ''];
  if (type !== undefined) headers.set('content-type', type);
  return new Response(content, { headers });
}

/** The file as it is kept, also with another version; null where it is missing or was changed. */
async function keptFile(name: string): Promise<Response | null> {
  const address = addressOf(name);
  // Looked up by name: opening a cache that a person has deleted would make it again.
  const own = await caches.match(address, { cacheName: await ownCache });
  return (await checked(name, own)) ?? checked(name, await caches.match(address));
}

/** The file past every other cache. One of another version is refused, or two versions would be mixed. */
const fetchFile = async (name: string): Promise<Response | null> =>
  checked(name, await fetch(addressOf(name), { cache: 'reload' }));

/** All files or none; a browser that could not take them asks again at the next visit. */
async function takeFiles(): Promise<void> {
  const cacheName = await ownCache;
  // A worker may change where no file does; then all of them are here already and in use.
  const inUse = await caches.has(cacheName);
  const cache = await caches.open(cacheName);
  const waiting = files.map(([name]) => name);
  const lane = async (): Promise<void> => {
    for (let name = waiting.shift(); name !== undefined; name = waiting.shift()) {
      const file = (await keptFile(name)) ?? (await fetchFile(name));
      if (file === null) throw new Error(`${name} is not the file of this version`);
      await cache.put(addressOf(name), file);
    }
  };
  try {
    await Promise.all(Array.from({ length: LANES }, lane));
  } catch (error) {
    if (!inUse) await caches.delete(cacheName);
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

/** A file of this version: whole from here, else from the network, which also mends what is kept. */
async function ownFile(name: string, request: Request): Promise<Response> {
  // The host has another version by now, and pieces of both would never run together.
  if (outlived && name === PAGE) return fetch(request);
  const kept = await keptFile(name);
  if (kept !== null) return kept;
  const fresh = await fetchFile(name);
  if (fresh === null) {
    outlived = true;
    return fetch(request);
  }
  const cacheName = await ownCache;
  if (await caches.has(cacheName)) await (await caches.open(cacheName)).put(addressOf(name), fresh.clone());
  return fresh;
}

/** A file of the version before, for a tab that still runs it. */
const earlierFile = async (request: Request): Promise<Response> =>
  (await caches.match(request, { ignoreSearch: true })) ?? fetch(request);

scope.addEventListener('install', (event) => event.waitUntil(takeFiles()));
scope.addEventListener('activate', (event) => event.waitUntil(dropOldFiles()));
scope.addEventListener('fetch', (event) => {
  const { request } = event;
  // A club's own store, neighbours in this folder and anything else are none of our business.
  if (request.method !== 'GET' || !request.url.startsWith(scope.registration.scope)) return;
  const name = nameOf(request.url);
  const answer = fingerprints.has(name)
    ? ownFile(name, request)
    : request.mode !== 'navigate' && name.startsWith(ASSETS)
      ? earlierFile(request)
      : null;
  // A browser whose caches are broken is no worse off than one without this worker.
  if (answer !== null) event.respondWith(answer.catch(() => fetch(request)));
});
scope.addEventListener('message', (event) => {
  if (event.data === 'take-over') void scope.skipWaiting();
});
