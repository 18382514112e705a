// @vitest-environment node
/**
 * A club's own store in trouble, against a real server on this computer: killed in the middle, the wrong password,
 * a full disk, something that is no store. Nothing is lost and nothing is there twice.
 */
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { fetchRides, piecesOf, type SharedProgress, testStore } from '../../../src/storage/shared/index.ts';
import { expectExactly, handOver, ridesOf, send } from './sending.ts';
import { answer, startStore, type StoreServer } from './server.ts';

let store: StoreServer;

beforeEach(async () => {
  store = await startStore();
});

afterEach(() => store.close());

describe('a store that is killed in the middle', () => {
  it.each([
    ['before it has written', false],
    ['after it has written and before it has answered', true],
  ])('%s, and started again: all rides are there, none twice', async (_name, writes) => {
    const records = ridesOf('t1', 160);
    let asked = 0;
    store.intercept = (_request, response, next) => {
      asked += 1;
      if (asked !== 2) return next();
      const hangUp = (): void => void store.kill();
      if (writes) {
        response.end = (() => {
          hangUp();
          return response;
        }) as typeof response.end;
        next();
      } else hangUp();
    };
    const { states, pausesMs } = await send(store, piecesOf(handOver('t1', records)), async (count) => {
      if (count === 3) await store.restart();
      return true;
    });
    expect(pausesMs).toEqual([1_000, 2_000, 4_000]);
    expect(states.filter((state) => state.phase === 'waiting').map((state) => state.problem)).toEqual([
      'unreachable',
      'unreachable',
      'unreachable',
    ]);
    expect(states.at(-1)).toMatchObject({ phase: 'done', left: 0, problem: null });
    await expectExactly(store, records);
  });

  it('and the tablet is reloaded meanwhile: it goes on from what was kept', async () => {
    const records = ridesOf('t1', 120);
    const pieces = piecesOf(handOver('t1', records));
    store.intercept = (_request, _response, next) => {
      if (store.requests.length > 1) void store.kill();
      else next();
    };
    const { progress, states } = await send(store, pieces);
    expect(states.at(-1)).toMatchObject({ phase: 'stopped', there: 50, left: 71, problem: 'unreachable' });
    store.intercept = null;
    await store.restart();
    await send(store, pieces, undefined, JSON.parse(JSON.stringify(progress)) as SharedProgress);
    await expectExactly(store, records);
    // The same once more without anything kept: it costs time and changes nothing.
    await send(store, pieces);
    await expectExactly(store, records);
  });

  it('pauses grow to a quarter of a minute and no further', async () => {
    await store.kill();
    const { pausesMs } = await send(store, piecesOf(handOver('t1', [])), async (count) => count < 9);
    expect(pausesMs).toEqual([1, 2, 4, 8, 15, 15, 15, 15, 15].map((seconds) => seconds * 1_000));
  });
});

describe('a store that refuses', () => {
  it('the wrong password is said at once and not tried again; with the right one all goes through', async () => {
    const records = ridesOf('t1', 12);
    const pieces = piecesOf(handOver('t1', records));
    const wrong = { ...store.address, password: 'guess' };
    const { states, pausesMs, progress } = await send(store, pieces, async () => true, null, wrong);
    expect(pausesMs).toEqual([]);
    expect(states.at(-1)).toEqual({
      phase: 'stopped',
      there: 0,
      left: 13,
      problem: 'wrong-password',
      nextTryMs: null,
    });
    expect(await testStore(wrong, fetch)).toBe('wrong-password');
    expect((await fetchRides(wrong, 'tuesday', null, fetch)).problem).toBe('wrong-password');
    expect(await store.documents()).toEqual([]);
    await send(store, pieces, undefined, progress);
    await expectExactly(store, records);
  });

  it.each([
    ['507', 507, { error: 'insufficient_storage', reason: 'out of room' }],
    ['500 with a reason', 500, { error: 'enospc', reason: 'no space left on device' }],
  ])('a full disk (%s) is waited for and named', async (_name, status, body) => {
    const records = ridesOf('t1', 70);
    let full = true;
    store.intercept = (request, response, next) => {
      if (full && request.method !== 'GET' && store.requests.length > 1) answer(response, status, body);
      else next();
    };
    const { states } = await send(store, piecesOf(handOver('t1', records)), async (count) => {
      full = count < 2;
      return true;
    });
    expect(states.find((state) => state.phase === 'waiting')).toMatchObject({
      problem: 'disk-full',
      left: 21,
    });
    await expectExactly(store, records);
  });

  it('a full disk in the middle of a handful: what was not said to be there stays to be sent', async () => {
    const records = ridesOf('t1', 9);
    let full = true;
    store.intercept = (request, response, next) => {
      if (!full || request.method !== 'POST') return next();
      answer(response, 201, [
        { id: piecesOf(handOver('t1', records))[0]?.id, error: 'internal_error', reason: 'no space left' },
      ]);
    };
    const { states } = await send(store, piecesOf(handOver('t1', records)), async () => {
      full = false;
      return true;
    });
    expect(states.find((state) => state.phase === 'waiting')).toMatchObject({ problem: 'busy', left: 10 });
    await expectExactly(store, records);
  });

  it('a handful that is too big goes one by one; a single ride that is too big is named and the rest gets there', async () => {
    const records = ridesOf('t1', 6);
    const pieces = piecesOf(handOver('t1', records));
    const big = encodeURIComponent(pieces[2]?.id ?? '');
    store.intercept = (request, response, next) => {
      if (request.method === 'POST' || request.url?.includes(big) === true)
        answer(response, 413, { error: 'too_large' });
      else next();
    };
    const { states, progress } = await send(store, pieces);
    expect(states.at(-1)).toMatchObject({ phase: 'done', problem: 'some-refused', left: 0 });
    expect(progress.refused).toEqual([pieces[2]?.id]);
    store.intercept = null;
    await send(store, pieces, undefined, progress);
    await expectExactly(store, records);
  });

  it.each([
    ['a database that is not there', 'no-database', () => ({ ...store.address, database: 'other' })],
    ['a name no database can have', 'bad-address', () => ({ ...store.address, database: '../_config' })],
    ['an address that is none', 'bad-address', () => ({ ...store.address, url: 'javascript:alert(1)' })],
    ['nobody there', 'unreachable', () => ({ ...store.address, url: 'http://127.0.0.1:1' })],
  ])('%s is said as %s', async (_name, problem, address) => {
    expect(await testStore(address(), fetch)).toBe(problem);
    const { states } = await send(
      store,
      piecesOf(handOver('t1', ridesOf('t1', 3))),
      undefined,
      null,
      address(),
    );
    expect(states.at(-1)).toMatchObject({ phase: 'stopped', problem, left: 4 });
  });

  it('a web page that is no store is told, and never takes a ride for sent', async () => {
    store.intercept = (_request, response) => {
      response.writeHead(200, { 'content-type': 'text/html' }).end('<h1>Welcome to the club</h1>');
    };
    expect(await testStore(store.address, fetch)).toBe('not-a-store');
    const { states } = await send(store, piecesOf(handOver('t1', ridesOf('t1', 3))));
    expect(states.at(-1)).toMatchObject({ phase: 'stopped', problem: 'not-a-store', left: 4, there: 0 });
  });

  it('a redirection to another host is not followed', async () => {
    const elsewhere = await startStore();
    store.intercept = (request, response) => {
      response.writeHead(307, { location: `${elsewhere.address.url}${request.url}` }).end();
    };
    expect(await testStore(store.address, fetch)).toBe('unreachable');
    await send(store, piecesOf(handOver('t1', ridesOf('t1', 2))));
    expect(elsewhere.requests).toEqual([]);
    await elsewhere.close();
  });
});
