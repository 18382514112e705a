/**
 * A server for the files of one build and nothing else: they are held in memory, so that no link, hidden file or
 * later change in a folder can be had from it. It answers only to names of this computer, because a page from
 * elsewhere can give any name of its own our address, and lets nobody keep a connection who says or takes nothing.
 */
import { createHash } from 'node:crypto';
import { createServer } from 'node:http';
import { createServer as createSecureServer } from 'node:https';
import { hostname, networkInterfaces } from 'node:os';
import { extname } from 'node:path';
import { siteHeaders } from './policy.mjs';

/** @type {Readonly<Record<string, string>>} */
const TYPES = {
  '.css': 'text/css; charset=utf-8',
  '.html': 'text/html; charset=utf-8',
  '.js': 'text/javascript; charset=utf-8',
  '.json': 'application/json; charset=utf-8',
  '.mp3': 'audio/mpeg',
  '.png': 'image/png',
  '.svg': 'image/svg+xml',
  '.webm': 'audio/webm',
  '.webmanifest': 'application/manifest+json',
};
/** A caller has so long to say what it wants (ms), and so long to take the next piece of an answer. */
const PATIENCE_MS = 5_000;
const STALLED_MS = 30_000;
/** Names under which a computer asks itself; over plain http browsers trust no others. */
const LOOPBACK = new Set(['localhost', '127.0.0.1', '[::1]']);
/** Under these a router or the network itself names computers; nobody can own such a name on the open network. */
const LOCAL_ENDINGS = ['local', 'lan', 'home', 'home.arpa', 'internal', 'localdomain'];
/** Where the page asks for the addresses that tablets can open. */
const TABLETS_FILE = 'tablets.json';
/** Far more than a hall full of tablets, far fewer than a computer can hold; a store is asked again and again. */
const MOST_CONNECTIONS = 256;
const MOST_WITH_STORE = 1_024;

/**
 * Something that answers beside the files: true where the request was its own.
 * @typedef {(request: import('node:http').IncomingMessage, response: import('node:http').ServerResponse, headers: Readonly<Record<string, string>>) => boolean} Beside
 */

/**
 * What a server may be given besides its files.
 * @typedef {object} ServerOptions
 * @property {number} [patienceMs] how long a caller may keep silent
 * @property {() => readonly string[]} [tablets] addresses the page may hand out to other devices
 * @property {Beside} [beside] asked first; what is sent to it may take longer
 * @property {{ readonly key: string, readonly cert: string }} [tls] https with this key and certificate (PEM)
 */

/**
 * Names and addresses under which this computer may be asked, as they stand in the address bar.
 * @param {boolean} byNetwork also from other computers
 * @returns {ReadonlySet<string>}
 */
export function ownNames(byNetwork) {
  if (!byNetwork) return LOOPBACK;
  const name = hostname().toLowerCase();
  const [short] = name.split('.');
  const addresses = Object.values(networkInterfaces())
    .flatMap((list) => list ?? [])
    .map(({ address, family }) => (family === 'IPv6' ? `[${address}]` : address));
  const byName = LOCAL_ENDINGS.map((ending) => `${short}.${ending}`);
  return new Set([...LOOPBACK, name, `${short}`, ...byName, ...addresses]);
}

/**
 * Addresses of this computer that other devices of the local network can open, surest first.
 * @param {number} port
 * @param {'http' | 'https'} [scheme]
 * @returns {string[]}
 */
export function tabletAddresses(port, scheme = 'http') {
  const numbers = Object.values(networkInterfaces())
    .flatMap((list) => list ?? [])
    .filter(
      ({ family, internal, address }) => family === 'IPv4' && !internal && !address.startsWith('169.254.'),
    )
    .map(({ address }) => address);
  const [short] = hostname().toLowerCase().split('.');
  return (numbers.length === 0 ? [] : [...numbers, `${short}.local`]).map(
    (name) => `${scheme}://${name}:${port}/`,
  );
}

/**
 * The host a request was made to, without its port; null where it names none.
 * @param {string | undefined} header
 */
function hostOf(header) {
  if (header === undefined || !/^[\w.:[\]-]+$/.test(header)) return null;
  const address = `http://${header}`;
  return URL.canParse(address) ? new URL(address).hostname : null;
}

/**
 * The name of the file that is asked for; the address itself is the page.
 * @param {string} target
 */
function nameOf(target) {
  const [path = ''] = target.split('?');
  if (!path.startsWith('/')) return null;
  try {
    return decodeURIComponent(path.slice(1)) || 'index.html';
  } catch {
    return null;
  }
}

/**
 * A server that is not listening yet.
 * @param {ReadonlyMap<string, string | Uint8Array>} files name below the address and content of every file
 * @param {() => ReadonlySet<string>} names asked for every request: addresses come and go
 * @param {ServerOptions} [options]
 * @returns {import('node:http').Server}
 */
export function siteServer(files, names, options = {}) {
  const { patienceMs = PATIENCE_MS, beside, tls } = options;
  const patience = {
    headersTimeout: patienceMs,
    requestTimeout: beside === undefined ? patienceMs : STALLED_MS,
    keepAliveTimeout: patienceMs,
    connectionsCheckingInterval: Math.ceil(patienceMs / 5),
  };
  const answer = siteAnswers(files, names, options);
  const server =
    tls === undefined ? createServer(patience, answer) : createSecureServer({ ...patience, ...tls }, answer);
  server.setTimeout(STALLED_MS);
  server.maxConnections = beside === undefined ? MOST_CONNECTIONS : MOST_WITH_STORE;
  return server;
}

/** Over plain http browsers ignore this under any name but the computer's own, and each tells it as an error. */
const plainHeaders = Object.fromEntries(
  Object.entries(siteHeaders).filter(([name]) => name !== 'cross-origin-opener-policy'),
);

/**
 * @param {ReadonlyMap<string, string | Uint8Array>} files
 * @param {() => ReadonlySet<string>} names
 * @param {ServerOptions} options
 * @returns {import('node:http').RequestListener}
 */
function siteAnswers(files, names, { tablets = () => [], beside, tls }) {
  const held = new Map(
    [...files].map(([name, content]) => {
      const tag = `"${createHash('sha256').update(content).digest('base64url')}"`;
      const type = TYPES[extname(name)] ?? 'application/octet-stream';
      return [name, { body: Buffer.from(content), headers: { 'content-type': type, etag: tag } }];
    }),
  );
  return (request, response) => {
    const host = hostOf(request.headers.host);
    const common = tls !== undefined || LOOPBACK.has(host ?? '') ? siteHeaders : plainHeaders;
    /** @param {number} status @param {string} sentence */
    const refuse = (status, sentence) => {
      response.writeHead(status, { ...common, 'content-type': 'text/plain; charset=utf-8' });
      response.end(`${sentence}\n`);
    };
    if (host === null || !names().has(host))
      return refuse(421, 'This computer does not answer to that name.');
    if (beside?.(request, response, common) === true) return undefined;
    if (request.method !== 'GET' && request.method !== 'HEAD')
      return refuse(405, 'Files can only be read here.');
    const name = nameOf(request.url ?? '') ?? '';
    if (name === TABLETS_FILE) {
      const body = JSON.stringify(tablets());
      const length = Buffer.byteLength(body);
      response.writeHead(200, { ...common, 'content-type': TYPES['.json'], 'content-length': length });
      return response.end(request.method === 'HEAD' ? undefined : body);
    }
    const file = held.get(name);
    if (file === undefined) return refuse(404, 'There is nothing here.');
    const headers = { ...common, ...file.headers };
    if (request.headers['if-none-match'] === headers.etag) return response.writeHead(304, headers).end();
    response.writeHead(200, { ...headers, 'content-length': file.body.length });
    return response.end(request.method === 'HEAD' ? undefined : file.body);
  };
}

/**
 * Listens on this port or the next free one, and says which.
 * @param {import('node:http').Server} server
 * @param {number} port
 * @param {string | undefined} host undefined for every network of this computer
 * @returns {Promise<number>}
 */
export function listen(server, port, host) {
  return new Promise((resolve, reject) => {
    /** @param {NodeJS.ErrnoException} error */
    const next = (error) => {
      if (error.code === 'EADDRINUSE' && port < 65_535) resolve(listen(server, port + 1, host));
      else reject(error);
    };
    server.once('error', next);
    server.listen(port, host, () => {
      server.off('error', next);
      resolve(port);
    });
  });
}
