// @vitest-environment node
/**
 * A store that means harm: one that never comes to an end, one that gives the same again and again, answers without
 * end, places in its list that are no places. Reading always ends, and what was good before is kept.
 */
import type { StoreAddress } from '../../../src/core/transfer/clubStore.ts';
import { describe, expect, it } from 'vitest';
import { LIMITS } from '../../../src/core/math/limits.ts';
import {
  type Fetch,
  fetchRides,
  piecesOf,
  progressFor,
  type SharedProgress,
} from '../../../src/storage/shared/index.ts';
import { handOver, ridesOf } from './sending.ts';

const ADDRESS: StoreAddress = { url: 'https://club.example', database: 'rides', name: '', password: '' };
const { store: LIMIT } = LIMITS;
const known: SharedProgress = { ...progressFor(ADDRESS, null), since: { tuesday: '5' } };
const said = (value: unknown): Response => new Response(JSON.stringify(value));
const MEGABYTE = 'x'.repeat(1_000_000);
/** The biggest number of questions that is any good, a few to spare. */
const ENOUGH = LIMIT.pages.most * 2 + 10;

/** A store that answers so; gives up for us where the asking does not end. */
function storeThat(answer: (url: URL, count: number) => Response): { fetch: Fetch; urls: URL[] } {
  const urls: URL[] = [];
  return {
    urls,
    fetch: async (url) => {
      urls.push(new URL(url));
      if (urls.length > ENOUGH) throw new Error('asked without end');
      return answer(new URL(url), urls.length);
    },
  };
}

const rows = (from: number, count: number, prefix = 'ride:tuesday:'): { id: string; doc: object }[] =>
  Array.from({ length: count }, (_, i) => ({ id: `${prefix}${String(from + i).padStart(9, '0')}`, doc: {} }));
const isAll = (url: URL): boolean => url.pathname.endsWith('/_all_docs');

describe('a store that never ends', () => {
  it('with always more new rows: reading stops at the limit, goes on from there the next time', async () => {
    const { fetch, urls } = storeThat((_, count) =>
      said({ results: rows(count * 1_000, LIMIT.rows.most), last_seq: count + 5 }),
    );
    const { progress, problem } = await fetchRides(ADDRESS, 'tuesday', known, fetch);
    expect([problem, urls.length, progress.since['tuesday']]).toEqual([
      'endless',
      LIMIT.pages.most,
      String(LIMIT.pages.most + 5),
    ]);
  });

  it('with always the same place in its list: it is no store', async () => {
    const { fetch, urls } = storeThat(() => said({ results: rows(1, LIMIT.rows.most), last_seq: 5 }));
    const { problem } = await fetchRides(ADDRESS, 'tuesday', known, fetch);
    expect([problem, urls.length]).toEqual(['not-a-store', 1]);
  });

  it('with always more documents of the plan: reading stops at the limit', async () => {
    const { fetch, urls } = storeThat((url, count) =>
      isAll(url) ? said({ rows: rows(count * 1_000, LIMIT.rows.most) }) : said({ last_seq: 9 }),
    );
    const { problem, progress } = await fetchRides(ADDRESS, 'tuesday', null, fetch);
    expect([problem, urls.length, progress.since]).toEqual(['endless', LIMIT.pages.most + 1, {}]);
  });

  it.each([
    ['the same again', 'ride:tuesday:'],
    ['what was not asked for', 'ride:wednesday:'],
    ['nothing of ours', '_design/'],
  ])('with %s: it is no store', async (_name, prefix) => {
    const { fetch, urls } = storeThat((url) =>
      isAll(url) ? said({ rows: rows(1, LIMIT.rows.most, prefix) }) : said({ last_seq: 9 }),
    );
    const { problem } = await fetchRides(ADDRESS, 'tuesday', null, fetch);
    expect(problem).toBe('not-a-store');
    expect(urls.length).toBeLessThanOrEqual(3);
  });

  it('that takes its time: what came until then is kept', async () => {
    let nowMs = 0;
    const { fetch, urls } = storeThat((_, count) => {
      nowMs += 100_000;
      return said({ results: rows(count * 1_000, LIMIT.rows.most), last_seq: count + 5 });
    });
    const { progress, problem } = await fetchRides(ADDRESS, 'tuesday', known, fetch, () => nowMs);
    expect([problem, urls.length, progress.since['tuesday']]).toEqual(['endless', 4, '9']);
  });

  it('with more rows than were asked for: it is no store', async () => {
    const { fetch } = storeThat(() => said({ results: rows(1, LIMIT.rows.most + 1), last_seq: 6 }));
    expect((await fetchRides(ADDRESS, 'tuesday', known, fetch)).problem).toBe('not-a-store');
  });
});

describe('an answer that is too big', () => {
  it.each([
    ['that says so', { 'content-length': String(LIMIT.bytes.most + 1) }],
    ['that does not say so', {}],
  ])('%s is not read to its end', async (_name, headers) => {
    const chunk = new TextEncoder().encode(' '.repeat(1_000_000));
    let most = 0;
    let left = 0;
    let asked = 0;
    const endless = (): ReadableStream<Uint8Array> => {
      let read = 0;
      return new ReadableStream({
        pull(controller) {
          read += chunk.length;
          most = Math.max(most, read);
          // So that a reader without a limit comes to an end.
          if (read > LIMIT.bytes.most * 3) controller.close();
          else controller.enqueue(chunk);
        },
        cancel() {
          left += 1;
        },
      });
    };
    const { problem } = await fetchRides(ADDRESS, 'tuesday', known, async () => {
      asked += 1;
      return new Response(endless(), { headers });
    });
    expect([problem, asked]).toEqual(['endless', 7]);
    expect([most < LIMIT.bytes.most + 4_000_000, left]).toEqual([true, 7]);
  });

  it('is asked for again in smaller parts, so that many long rides still come through', async () => {
    const asked: number[] = [];
    const { fetch } = storeThat((url) => {
      const limit = Number(url.searchParams.get('limit'));
      asked.push(limit);
      // Forty rides left, each a megabyte long.
      const from = Number(url.searchParams.get('since')) - 5;
      const results = rows(from, Math.min(limit, 40 - from)).map((row) => ({ ...row, doc: { x: MEGABYTE } }));
      return said({ results, last_seq: from + 5 + results.length });
    });
    const { problem } = await fetchRides(ADDRESS, 'tuesday', known, fetch);
    expect([problem, asked]).toEqual([null, [200, 100, 50, 25, 12, 12, 12, 12]]);
  });

  it('that goes deeper than anything of ours is no answer', async () => {
    const deep = `${'['.repeat(20_000)}${']'.repeat(20_000)}`;
    const text = `{"results":[{"id":"ride:tuesday:1","doc":{"record":${deep}}}],"last_seq":6}`;
    const { fetch } = storeThat(() => new Response(text));
    const { problem, read } = await fetchRides(ADDRESS, 'tuesday', known, fetch);
    expect([problem, read.set.records]).toEqual(['not-a-store', []]);
  });

  it('with a place in its list that is longer than an address may be is no answer', async () => {
    const { fetch } = storeThat(() => said({ results: [], last_seq: '9'.repeat(100_000) }));
    expect((await fetchRides(ADDRESS, 'tuesday', known, fetch)).problem).toBe('not-a-store');
  });
});

describe('a plan with a name of the language', () => {
  it.each(['constructor', 'toString', 'valueOf', 'hasOwnProperty'])(
    '%s is asked for from the beginning, as every new one',
    async (planId) => {
      const { fetch, urls } = storeThat((url) => (isAll(url) ? said({ rows: [] }) : said({ last_seq: 9 })));
      const { progress, problem } = await fetchRides(ADDRESS, planId, null, fetch);
      expect(urls.map(({ pathname, search }) => pathname.split('/').at(-1) + search)[0]).toBe(
        '_changes?limit=0&since=now',
      );
      expect(urls.map(String).join(' ')).not.toContain('function');
      expect([problem, Object.entries(progress.since)]).toEqual([null, [[planId, '9']]]);
      expect(piecesOf({ ...handOver('t1', ridesOf('t1', 1)), planId }).at(-1)?.id).toContain(planId);
    },
  );
});
