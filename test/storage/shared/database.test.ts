// @vitest-environment node
/**
 * The database of `npm run club` answers as a real one did. `realAnswers.json` holds what express-pouchdb 4.2.0 with pouchdb
 * 7.3.1 (memory adapter) answered to every request of `asked.ts`, in that order; revisions are left out of it, because
 * every server makes its own.
 */
import { readFileSync } from 'node:fs';
import { afterEach, beforeEach, expect, it } from 'vitest';
import { everythingAsked } from './asked.ts';
import { NAME, PASSWORD, startStore, type StoreServer } from './server.ts';

const real = JSON.parse(
  readFileSync(new URL('realAnswers.json', import.meta.url), 'utf8'),
) as readonly unknown[];
const authorization = `Basic ${Buffer.from(`${NAME}:${PASSWORD}`, 'utf8').toString('base64')}`;

let store: StoreServer;

beforeEach(async () => {
  store = await startStore();
});

afterEach(() => store.close());

it('every question gets the answer of a real server', async () => {
  const answers: unknown[] = [];
  for (const { method, path, body, open } of everythingAsked) {
    const response = await fetch(`${store.address.url}${path}`, {
      method,
      headers: { 'content-type': 'application/json', ...(open === true ? {} : { authorization }) },
      ...(body === undefined ? {} : { body }),
    });
    expect(response.headers.get('content-type')).toBe('application/json');
    const text = await response.text();
    answers.push({
      status: response.status,
      body: JSON.parse(text.replaceAll(/"(\d+)-[0-9a-f]{32}"/g, '"$1-"')) as unknown,
    });
  }
  // Each beside its question, so that a difference says where it is.
  const beside = (list: readonly unknown[]): unknown[] =>
    everythingAsked.map(({ method, path }, index) => [method, path, list[index]]);
  expect(answers).toHaveLength(real.length);
  expect(beside(answers)).toEqual(beside(real));
});

it('a question of a new kind is not answered as if it were known', async () => {
  const response = await fetch(`${store.address.url}/rides/_find`, {
    method: 'POST',
    headers: { authorization },
  });
  expect(response.status).toBe(501);
});
