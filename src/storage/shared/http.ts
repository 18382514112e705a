/**
 * One question to a shared store over HTTP and what its answer means. Only the address the coach gave is ever
 * asked: redirections are refused, no cookies are sent, nothing is cached.
 */
import type { StoreAddress, StoreProblem } from '../../core/transfer/clubStore.ts';
import { LIMITS } from '../../core/math/limits.ts';
import { isTooDeep } from '../../core/math/measure.ts';
import { databaseUrl } from '../sharedKept.ts';

/** An answer, or why there is none. */
export type StoreAnswer =
  | { readonly ok: true; readonly value: unknown }
  | { readonly ok: false; readonly problem: StoreProblem; readonly status: number };

/** The part of `fetch` that is used. */
export type Fetch = (url: string, init: RequestInit) => Promise<Response>;

/** A question. `path` is what stands behind the database, encoded. */
interface Question {
  readonly method: 'GET' | 'POST' | 'PUT';
  readonly path: string;
  readonly body?: unknown;
}

/** Asks once. Never rejects. */
export async function ask(address: StoreAddress, question: Question, fetch: Fetch): Promise<StoreAnswer> {
  const base = databaseUrl(address);
  if (base === null) return { ok: false, problem: 'bad-address', status: 0 };
  const { method, path, body } = question;
  try {
    const response = await fetch(`${base}${path}`, {
      method,
      headers: headersFor(address),
      ...(body === undefined ? {} : { body: JSON.stringify(body) }),
      credentials: 'omit',
      redirect: 'error',
      cache: 'no-store',
      referrerPolicy: 'no-referrer',
      signal: AbortSignal.timeout(LIMITS.store.seconds.most * 1_000),
    });
    const text = await textOf(response);
    if (text === null) return { ok: false, problem: 'endless', status: response.status };
    if (!response.ok) return { ok: false, problem: meaning(response.status, text), status: response.status };
    return readJson(text);
  } catch {
    return { ok: false, problem: 'unreachable', status: 0 };
  }
}

function readJson(text: string): StoreAnswer {
  try {
    const value = JSON.parse(text) as unknown;
    if (!isTooDeep(value, LIMITS.store.deep.most)) return { ok: true, value };
  } catch {
    // Told below, like what goes too deep.
  }
  return { ok: false, problem: 'not-a-store', status: 200 };
}

/** The text of an answer, or null where it is bigger than an answer may be; then the rest is never read. */
async function textOf(response: Response): Promise<string | null> {
  const most = LIMITS.store.bytes.most;
  if (response.body === null) return '';
  if (Number(response.headers.get('content-length')) > most) {
    await response.body.cancel();
    return null;
  }
  const reader = response.body.getReader();
  const decoder = new TextDecoder();
  const parts: string[] = [];
  let bytes = 0;
  for (let part = await reader.read(); !part.done; part = await reader.read()) {
    bytes += part.value.length;
    if (bytes > most) {
      await reader.cancel();
      return null;
    }
    parts.push(decoder.decode(part.value, { stream: true }));
  }
  return parts.join('') + decoder.decode();
}

function headersFor({ name, password }: StoreAddress): Record<string, string> {
  const headers: Record<string, string> = { accept: 'application/json', 'content-type': 'application/json' };
  if (name !== '') {
    const bytes = new TextEncoder().encode(`${name}:${password}`);
    headers['authorization'] = `Basic ${btoa(String.fromCharCode(...bytes))}`;
  }
  return headers;
}

/** A full disk has a number of its own, but is also told as a fault with a reason. */
function meaning(status: number, text: string): StoreProblem {
  if (status === 401) return 'wrong-password';
  if (status === 403) return 'not-allowed';
  if (status === 404) return 'no-database';
  if (status === 507 || (status >= 500 && /enospc|no space|disk|quota/i.test(text.slice(0, 2_000))))
    return 'disk-full';
  if (status === 408 || status === 429 || status >= 500) return 'busy';
  return 'not-a-store';
}
