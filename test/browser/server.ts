/**
 * A small web server for a folder of built files, on this computer only and on a free port. It can be
 * put under any path, because nobody knows under which one a club will publish the site. Text is sent packed to
 * those who accept it, as usual hosts do.
 */
import { readFile } from 'node:fs/promises';
import { createServer } from 'node:http';
import type { AddressInfo } from 'node:net';
import { extname, join, normalize, sep } from 'node:path';
import { gzipSync } from 'node:zlib';

const mimeTypes: Readonly<Record<string, string>> = {
  '.css': 'text/css; charset=utf-8',
  '.gpx': 'application/gpx+xml',
  '.html': 'text/html; charset=utf-8',
  '.ico': 'image/x-icon',
  '.js': 'text/javascript; charset=utf-8',
  '.json': 'application/json; charset=utf-8',
  '.map': 'application/json; charset=utf-8',
  '.mp3': 'audio/mpeg',
  '.ogg': 'audio/ogg',
  '.png': 'image/png',
  '.jpg': 'image/jpeg',
  '.svg': 'image/svg+xml',
  '.txt': 'text/plain; charset=utf-8',
  '.wav': 'audio/wav',
  '.webm': 'audio/webm',
  '.webmanifest': 'application/manifest+json',
  '.webp': 'image/webp',
  '.woff2': 'font/woff2',
};

/** Types that are sent packed. */
const packable = /^text\/|json|svg/;

/** What was asked of the server, and the answer. */
export interface ServedRequest {
  readonly path: string;
  readonly status: number;
  /** Size of the body on its way (bytes). */
  readonly bodyBytes: number;
}

/** A running server. */
export interface Server {
  /** Address of the site, with a slash at the end. */
  readonly url: string;
  /** Every request so far, in order. */
  readonly requests: readonly ServedRequest[];
  /** Stops answering at once, also for connections that are still open. */
  readonly close: () => Promise<void>;
}

/** How a broken host answers for a path instead: whatever is left out is as it should be. Null for no difference. */
export type Bend = (path: string) => BentAnswer | null;

/** What is different in a bent answer. */
export interface BentAnswer {
  readonly status?: number;
  readonly type?: string;
  /** The body, made from the right one. */
  readonly body?: (right: Buffer) => string | Buffer;
  /** Another address, sent with a status of 302. */
  readonly location?: string;
}

/** The file for a path below `under`, or null if the path leads outside. */
function fileFor(folder: string, under: string, path: string): string | null {
  if (!path.startsWith(under)) return null;
  const relative = path.slice(under.length);
  const file = normalize(
    join(folder, relative === '' || relative.endsWith('/') ? `${relative}index.html` : relative),
  );
  return file.startsWith(normalize(folder) + sep) ? file : null;
}

function pathOf(url: string): string {
  try {
    return decodeURIComponent(new URL(url, 'http://localhost').pathname);
  } catch {
    return '';
  }
}

/**
 * Serves `folder` below the path `under`, which begins and ends with a slash.
 * @param headers sent with every answer
 * @param bend asked for every path, for hosts that are broken on purpose
 */
export async function serveFolder(
  folder: string,
  under = '/',
  headers: Readonly<Record<string, string>> = {},
  bend: Bend = () => null,
): Promise<Server> {
  const requests: ServedRequest[] = [];
  /** By path: every new page asks for the same files, and packing them again would take a good part of a test. */
  const packed = new Map<string, { readonly body: Buffer; readonly packed: Buffer }>();
  const pack = (path: string, body: Buffer): Buffer => {
    const known = packed.get(path);
    if (known?.body.equals(body) === true) return known.packed;
    const made = { body, packed: gzipSync(body) };
    packed.set(path, made);
    return made.packed;
  };
  let url = '';
  const server = createServer((request, response) => {
    const path = pathOf(request.url ?? '/');
    const file = fileFor(folder, under, path);
    const bent = bend(path) ?? {};
    const answer = (rightStatus: number, rightType: string, rightBody: string | Buffer): void => {
      const { location } = bent;
      const status = bent.status ?? (location === undefined ? rightStatus : 302);
      const type = bent.type ?? rightType;
      const body = bent.body?.(Buffer.from(rightBody)) ?? rightBody;
      const packs = packable.test(type) && /\bgzip\b/.test(request.headers['accept-encoding'] ?? '');
      const whole = Buffer.from(body);
      const sent = packs ? pack(path, whole) : whole;
      requests.push({ path, status, bodyBytes: sent.length });
      response.writeHead(status, {
        ...headers,
        ...(packs ? { 'content-encoding': 'gzip', vary: 'accept-encoding' } : {}),
        'content-type': type,
        'cache-control': 'no-store',
        ...(location === undefined ? {} : { location }),
      });
      response.end(request.method === 'HEAD' ? undefined : sent);
    };
    const refuse = (): void => answer(404, 'text/plain; charset=utf-8', 'There is nothing here.');
    if (path === `${under}tablets.json`) return answer(200, 'application/json', JSON.stringify([url]));
    if (file === null) return refuse();
    const type = mimeTypes[extname(file).toLowerCase()] ?? 'application/octet-stream';
    readFile(file).then((body) => answer(200, type, body), refuse);
  });
  await new Promise<void>((resolve, reject) => {
    server.once('error', reject);
    server.listen(0, '127.0.0.1', resolve);
  });
  const { port } = server.address() as AddressInfo;
  url = `http://127.0.0.1:${port}${under}`;
  const close = (): Promise<void> =>
    new Promise((resolve) => {
      server.close(() => resolve());
      server.closeAllConnections();
    });
  return { url, requests, close };
}
