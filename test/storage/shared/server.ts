/**
 * A real store for the tests: a database in memory behind the usual interface, on this computer only, with a
 * password in front and ways to fail. What it holds survives being stopped, as a disk would.
 */
import { mkdtempSync, rmSync } from 'node:fs';
import {
  createServer,
  type IncomingMessage,
  type RequestListener,
  type Server,
  type ServerResponse,
} from 'node:http';
import { createRequire } from 'node:module';
import type { AddressInfo } from 'node:net';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import type { SharedAddress } from '../../../src/storage/shared/types.ts';

type Handler = (request: IncomingMessage, response: ServerResponse, next: () => void) => void;

/** What is used of packages that bring no types. */
interface Pouch {
  plugin(plugin: unknown): void;
  defaults(options: object): PouchClass;
}
type PouchClass = new (
  name: string,
) => {
  allDocs(
    options: object,
  ): Promise<{ readonly rows: readonly { readonly id: string; readonly doc: unknown }[] }>;
};

const load = createRequire(import.meta.url) as (name: string) => unknown;
const express = load('express') as () => RequestListener & { use(handler: unknown): void };
const expressPouchdb = load('express-pouchdb') as (pouch: PouchClass, options: object) => unknown;
const pouchdb = load('pouchdb') as Pouch;
pouchdb.plugin(load('pouchdb-adapter-memory'));

/** A running store. */
export interface StoreServer {
  readonly address: SharedAddress;
  /** Every request so far, like `PUT /rides/…`. */
  readonly requests: readonly string[];
  /** Looked at before the store; may answer itself or hang up. */
  intercept: Handler | null;
  /** Stops at once, also in the middle of an answer. */
  readonly kill: () => Promise<void>;
  /** Starts again at the same address with all that was there. */
  readonly restart: () => Promise<void>;
  /** Everything in the database. */
  readonly documents: () => Promise<readonly { readonly id: string; readonly doc: unknown }[]>;
  readonly close: () => Promise<void>;
}

export const NAME = 'clüb';
export const PASSWORD = 'hügel:42';
let stores = 0;

/** Starts a store with an empty database. */
export async function startStore(): Promise<StoreServer> {
  const folder = mkdtempSync(join(tmpdir(), 'shared-store-'));
  stores += 1;
  const Kept = pouchdb.defaults({ adapter: 'memory', prefix: `store-${stores}-` });
  const requests: string[] = [];
  const app = express();
  app.use(((request, response, next) => {
    requests.push(`${request.method} ${request.url}`);
    if (allowOrigin(request, response)) return;
    if (store.intercept === null) next();
    else store.intercept(request, response, next);
  }) satisfies Handler);
  app.use(askPassword);
  app.use(
    expressPouchdb(Kept, {
      mode: 'minimumForPouchDB',
      inMemoryConfig: true,
      logPath: join(folder, 'log.txt'),
    }),
  );
  let server = await listen(app, 0);
  const { port } = server.address() as AddressInfo;
  const kill = (): Promise<void> =>
    new Promise((resolve) => {
      server.close(() => resolve());
      server.closeAllConnections();
    });
  const store: StoreServer = {
    address: { url: `http://127.0.0.1:${port}`, database: 'rides', name: NAME, password: PASSWORD },
    requests,
    intercept: null,
    kill,
    restart: async () => {
      server = await listen(app, port);
    },
    documents: async () => (await new Kept('rides').allDocs({ include_docs: true })).rows,
    close: async () => {
      await kill();
      rmSync(folder, { recursive: true, force: true });
    },
  };
  const headers = { authorization: secret() };
  const made = await fetch(`${store.address.url}/rides`, { method: 'PUT', headers });
  if (made.status !== 201) throw new Error(`no database: ${await made.text()}`);
  requests.length = 0;
  return store;
}

/** Answers in the store's place. */
export function answer(response: ServerResponse, status: number, body: unknown): void {
  response.writeHead(status, { 'content-type': 'application/json' });
  response.end(JSON.stringify(body));
}

function listen(app: RequestListener, port: number): Promise<Server> {
  const server = createServer(app);
  return new Promise((resolve, reject) => {
    server.once('error', reject);
    server.listen(port, '127.0.0.1', () => resolve(server));
  });
}

/** A page of another origin may ask, as a club would set it. True where that was all it wanted to know. */
function allowOrigin(request: IncomingMessage, response: ServerResponse): boolean {
  response.setHeader('access-control-allow-origin', request.headers.origin ?? '*');
  response.setHeader('access-control-allow-methods', 'GET, POST, PUT');
  response.setHeader('access-control-allow-headers', 'accept, authorization, content-type');
  if (request.method !== 'OPTIONS') return false;
  response.writeHead(204).end();
  return true;
}

const askPassword: Handler = (request, response, next) => {
  if (request.headers.authorization === secret()) next();
  else answer(response, 401, { error: 'unauthorized', reason: 'Name or password is incorrect.' });
};

function secret(): string {
  return `Basic ${Buffer.from(`${NAME}:${PASSWORD}`, 'utf8').toString('base64')}`;
}
