/**
 * A store for the tests: the database of `npm run club` in memory behind HTTP, on this computer only, with a password in
 * front and ways to fail. What it holds survives being stopped, as a disk would.
 */
import type { StoreAddress } from '../../../src/core/transfer/clubStore.ts';
import {
  createServer,
  type IncomingMessage,
  type RequestListener,
  type Server,
  type ServerResponse,
} from 'node:http';
import type { AddressInfo } from 'node:net';
import { text } from 'node:stream/consumers';
import { openDatabase } from '../../../.ci/club/database.mjs';
import { memoryJournal } from '../../../.ci/club/journal.mjs';

type Handler = (request: IncomingMessage, response: ServerResponse, next: () => void) => void;

/** A running store. */
export interface StoreServer {
  readonly address: StoreAddress;
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
const UNAUTHORIZED = { error: 'unauthorized', reason: 'Name or password is incorrect.' };

/** Starts a store with an empty database. */
export async function startStore(): Promise<StoreServer> {
  const database = openDatabase('rides', memoryJournal());
  const requests: string[] = [];
  const app: RequestListener = (request, response) => {
    requests.push(`${request.method} ${request.url}`);
    if (allowOrigin(request, response)) return;
    const ask = (): void => {
      if (request.headers.authorization !== secret()) return answer(response, 401, UNAUTHORIZED);
      // A sender that hangs up in the middle has asked nothing.
      text(request).then(
        async (sent) => {
          const { status, body } = await database.ask(request.method ?? '', request.url ?? '', sent);
          answer(response, status, body);
        },
        () => response.destroy(),
      );
    };
    if (store.intercept === null) ask();
    else store.intercept(request, response, ask);
  };
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
    documents: async () => database.documents().map((doc) => ({ id: String(doc['_id']), doc })),
    close: kill,
  };
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

function secret(): string {
  return `Basic ${Buffer.from(`${NAME}:${PASSWORD}`, 'utf8').toString('base64')}`;
}
