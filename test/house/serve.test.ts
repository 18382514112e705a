/**
 * The server of `npm start`, asked as strangers ask: for files that are not of the build, under foreign names, and by
 * callers who never say what they want. Raw sockets, because polite clients tidy such requests up.
 */
import { once } from 'node:events';
import type { AddressInfo } from 'node:net';
import { connect, type Socket } from 'node:net';
import { hostname } from 'node:os';
import { text } from 'node:stream/consumers';
import { afterEach, describe, expect, it } from 'vitest';
import { listen, ownNames, siteServer, tabletAddresses } from '../../.ci/serve.mjs';

const files = new Map<string, string | Uint8Array>([
  ['index.html', '<!doctype html><title>Page</title>'],
  ['assets/index-Ab1.js', 'export {};'],
  ['assets/ding.webm', new Uint8Array([1, 2, 3])],
]);
const PATIENCE_MS = 250;
const stops: (() => void)[] = [];

afterEach(() => {
  for (const stop of stops.splice(0)) stop();
});

async function start(byNetwork = false, patienceMs?: number): Promise<number> {
  const server = siteServer(files, () => ownNames(byNetwork), patienceMs === undefined ? {} : { patienceMs });
  const port = await listen(server, 0, '127.0.0.1');
  stops.push(() => {
    server.close();
    server.closeAllConnections();
  });
  return port === 0 ? (server.address() as AddressInfo).port : port;
}

async function open(port: number): Promise<Socket> {
  const socket = connect(port, '127.0.0.1');
  socket.on('error', () => undefined);
  stops.push(() => socket.destroy());
  await once(socket, 'connect');
  return socket;
}

/** Status line, headers and body of the answer to a request written out. */
async function ask(
  port: number,
  target: string,
  host = 'localhost',
  rest = '',
  method = 'GET',
): Promise<string> {
  const socket = await open(port);
  socket.end(`${method} ${target} HTTP/1.1\r\nHost: ${host}\r\nConnection: close\r\n${rest}\r\n`);
  return text(socket);
}

const status = (answer: string): number => Number(answer.split(' ')[1]);

describe('a file', () => {
  it('of the build is sent with its type and the policy of the page', async () => {
    const port = await start();
    for (const [target, type] of [
      ['/', 'text/html; charset=utf-8'],
      ['/index.html?seed=3', 'text/html; charset=utf-8'],
      ['/assets/index-Ab1.js', 'text/javascript; charset=utf-8'],
      ['/assets/ding.webm', 'audio/webm'],
    ] as const) {
      const answer = await ask(port, target);
      expect([target, status(answer)]).toEqual([target, 200]);
      expect(answer).toContain(`content-type: ${type}\r\n`);
      expect(answer).toContain("frame-ancestors 'none'");
    }
    expect(await ask(port, '/')).toContain('<title>Page</title>');
    expect(await ask(port, '/', 'localhost', '', 'HEAD')).not.toContain('<title>');
  });

  it('that the browser has already is not sent again', async () => {
    const port = await start();
    const [, tag = ''] = /etag: (\S+)/.exec(await ask(port, '/')) ?? [];
    expect(status(await ask(port, '/', 'localhost', `If-None-Match: ${tag}\r\n`))).toBe(304);
    expect(status(await ask(port, '/', 'localhost', 'If-None-Match: "other"\r\n'))).toBe(200);
  });

  it.each([
    '/assets/missing.js',
    '/missing',
    '/assets',
    '/assets/',
    '/.env',
    '/.git/config',
    '/../package.json',
    '/..%2fpackage.json',
    '/%2e%2e/package.json',
    '/assets/../../package.json',
    '//etc/passwd',
    '/C:%5Cwindows%5Cwin.ini',
    '/index.html%00.js',
    '/%',
    'http://elsewhere.example/index.html',
    '*',
    '/__proto__',
  ])('that is not of the build is not there: %s', async (target) => {
    const answer = await ask(await start(), target);
    expect(status(answer)).toBe(404);
    expect(answer).not.toContain('<title>');
  });

  it('can only be read', async () => {
    for (const method of ['POST', 'PUT', 'DELETE', 'OPTIONS'])
      expect(status(await ask(await start(), '/', 'localhost', '', method))).toBe(405);
  });
});

describe('a name', () => {
  it.each(['localhost', 'LOCALHOST:4173', '127.0.0.1:1', '[::1]:4173'])(
    'of this computer, %s, is answered',
    async (host) => {
      expect(status(await ask(await start(), '/', host))).toBe(200);
    },
  );

  it.each([
    'elsewhere.example',
    'localhost.elsewhere.example',
    '127.0.0.1.elsewhere.example:4173',
    'localhost@elsewhere.example',
    'elsewhere.example/localhost',
    '10.0.0.7',
    '',
  ])('of somebody else, “%s”, is not', async (host) => {
    const answer = await ask(await start(), '/', host);
    expect([400, 421]).toContain(status(answer));
    expect(answer).not.toContain('<title>');
  });

  it('that this computer has in its network is answered where that was asked for', async () => {
    expect(status(await ask(await start(true), '/', `${hostname()}:4173`))).toBe(200);
    expect(status(await ask(await start(false), '/', `${hostname()}:4173`))).toBe(421);
    expect(status(await ask(await start(true), '/', 'elsewhere.example'))).toBe(421);
  });
});

describe('a local network', () => {
  it('may ask under the names it gives this computer, and under no other', async () => {
    const port = await start(true);
    const [short] = hostname().toLowerCase().split('.');
    for (const name of [`${short}.local`, `${short}.lan`, `${short}.home.arpa`, `${short}.internal`])
      expect([name, status(await ask(port, '/', `${name}:${port}`))]).toEqual([name, 200]);
    for (const name of [`${short}.example`, 'other.lan', `${short}.lan.example`])
      expect([name, status(await ask(port, '/', name))]).toEqual([name, 421]);
    const alone = await start(false);
    expect(status(await ask(alone, '/', `${short}.lan`))).toBe(421);
  });

  it('hears which addresses tablets can open, and never that of the computer itself', async () => {
    const server = siteServer(files, () => ownNames(true), {
      tablets: () => ['http://192.168.1.5:4173/'],
    });
    const port = await listen(server, 0, '127.0.0.1');
    stops.push(() => server.close());
    const asked = port === 0 ? (server.address() as AddressInfo).port : port;
    expect(await ask(asked, '/tablets.json')).toContain('["http://192.168.1.5:4173/"]');
    expect(await ask(await start(), '/tablets.json')).toMatch(/\[\]$/);
    for (const address of tabletAddresses(4173)) {
      expect(URL.canParse(address)).toBe(true);
      expect(address).not.toMatch(/localhost|\/\/127\.|\[::1\]/);
    }
  });
});

describe('a caller who', () => {
  it.each([
    ['says nothing', ''],
    ['stops in the middle of a word', 'GET / HTT'],
    ['stops before the end of the headers', 'GET / HTTP/1.1\r\nHost: localhost\r\nX-More: '],
    [
      'promises a body and does not send it',
      'GET / HTTP/1.1\r\nHost: elsewhere\r\nContent-Length: 9\r\n\r\n',
    ],
  ])('%s is let go, and others are answered meanwhile', async (_name, said) => {
    const port = await start(false, PATIENCE_MS);
    const silent = await Promise.all(Array.from({ length: 100 }, () => open(port)));
    const gone = Promise.all(
      silent.map(async (socket) => {
        socket.resume();
        socket.write(said);
        await once(socket, 'close');
      }),
    );
    expect(status(await ask(port, '/'))).toBe(200);
    await gone;
  });
});

it('a port that is taken is passed over', async () => {
  const taken = await start();
  const server = siteServer(files, () => ownNames(false));
  stops.push(() => server.close());
  expect(await listen(server, taken, '127.0.0.1')).toBeGreaterThan(taken);
});
