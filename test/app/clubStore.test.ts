/**
 * A club's own store on this device, on a storage without a database: who agreed to it, what a file can bring, what
 * another tab changes, and that nobody is asked before a person here has said so.
 */
import { beforeEach, describe, expect, it } from 'vitest';
import type { RideRecord } from '../../src/core/group/records/record.ts';
import type { HandOver, ReadFile } from '../../src/core/transfer/rideFile.ts';
import { hashJson } from '../../src/core/math/hash.ts';
import { openSharedDesk, type SharedDesk } from '../../src/app/group/sharedDesk.ts';
import { createAgreementStore, type Fetch } from '../../src/storage/shared/index.ts';
import type { ExportFile, Storage } from '../../src/storage/index.ts';
import { openDatabase } from '../../.ci/club/database.mjs';
import { memoryJournal } from '../../.ci/club/journal.mjs';
import { madeUpRecord } from '../core/group/rides.ts';
import { openWithoutDatabase, sample, simpleStore, without } from '../storage/given.ts';

const CLUB = { url: 'https://club.example', database: 'rides', name: 'coach', password: 'hill-42' };
const STRANGER = { url: 'https://stranger.example', database: 'rides', name: 'a', password: 'b' };
const KEY = 'before-the-hill.club-store';
const AT_MS = 1_800_000_000_000;

let asked: string[];
let simple: globalThis.Storage;
let storage: Storage;

beforeEach(async () => {
  asked = [];
  simple = simpleStore();
  storage = await openWithoutDatabase(simple);
});

/** Says that everything sent is there, and that there is nothing new. */
const goodStore: Fetch = async (url, init) => {
  asked.push(new URL(url).host);
  const { docs = [] } = JSON.parse(typeof init.body === 'string' ? init.body : '{}') as {
    docs?: { _id: string }[];
  };
  const answer = url.endsWith('/_bulk_docs')
    ? docs.map(({ _id }) => ({ id: _id, ok: true }))
    : { ok: true, rows: [], results: [], last_seq: '1' };
  return new Response(JSON.stringify(answer));
};

const open = (fetch: Fetch = goodStore, from: () => globalThis.Storage | null = () => simple) =>
  openSharedDesk({
    storage,
    agreement: createAgreementStore(from),
    fetch,
    sleep: async () => undefined,
    now: () => AT_MS,
  });

const rides: RideRecord[] = [1, 2, 3].map((seq) => madeUpRecord({ deviceId: 't1', seq }));
const sync = (desk: SharedDesk): Promise<void> =>
  desk.sync({
    planId: 'tuesday',
    handOver: () => ({ planId: 'tuesday', deviceId: 't1', lastSeq: 3, withdrawn: [], records: rides }),
    take: async () => true,
  });

/** A copy of everything with the address of a stranger in it. */
function copyFromStranger(): unknown {
  const whole = sample('export') as ExportFile;
  const record = { kind: 'clinic-store', id: 'one', schema: 1, savedAtMs: 9e12, data: STRANGER };
  const rest = { ...without(whole, 'checksum'), records: [...whole.records, record] };
  return { ...rest, checksum: hashJson(rest) };
}

describe('nobody agreed', () => {
  it('nobody is asked anything', async () => {
    const desk = await open();
    await sync(desk);
    expect(await desk.test()).toBe('bad-address');
    expect([asked, desk.agreed(), desk.offered(), desk.state()]).toEqual([[], null, null, null]);
  });

  it('an address that comes with a file is asked nothing, also after a reload', async () => {
    const report = await storage.importAll(copyFromStranger());
    const desk = await open();
    if (report.clubStore !== null) desk.offer(report.clubStore, 'file');
    await sync(desk);
    expect(desk.offered()).toEqual({ from: 'file', address: { ...STRANGER, password: '' } });
    const later = await open();
    await sync(later);
    expect([later.offered(), asked]).toEqual([null, []]);
  });

  it('an address kept here from before is asked about once more, and nothing else happens', async () => {
    await storage.putRecord({ kind: 'clinic-store', id: 'one', schema: 1, data: CLUB });
    const desk = await open();
    await sync(desk);
    expect([desk.agreed(), asked]).toEqual([null, []]);
    expect(desk.offered()).toEqual({ from: 'before', address: CLUB });
    await desk.stop();
    expect((await open()).offered()).toBeNull();
  });

  it.each(['', 'null', '7', '{}', '{', JSON.stringify({ schema: 2, address: CLUB, atMs: 1 })])(
    'what cannot be read as an agreement (%j) is none',
    async (text) => {
      simple.setItem(KEY, text);
      const desk = await open();
      await sync(desk);
      expect([desk.agreed(), asked]).toEqual([null, []]);
    },
  );
});

describe('a person on this device agreed', () => {
  it('rides go to just that address and it is said how many; a reload changes nothing', async () => {
    const desk = await open();
    expect(await desk.agree(CLUB)).toBe('kept');
    await sync(desk);
    expect(new Set(asked)).toEqual(new Set(['club.example']));
    expect(desk.sent()).toEqual({ rides: 3, atMs: AT_MS });
    expect(desk.state()).toMatchObject({ phase: 'done', left: 0, problem: null });
    const later = await open();
    expect(later.agreed()).toEqual({ schema: 1, address: CLUB, atMs: AT_MS });
    expect(later.sent()).toEqual({ rides: 3, atMs: AT_MS });
  });

  it('a file with another address changes nothing', async () => {
    const desk = await open();
    await desk.agree(CLUB);
    const report = await storage.importAll(copyFromStranger());
    if (report.clubStore !== null) desk.offer(report.clubStore, 'file');
    for (const one of [desk, await open()]) {
      await sync(one);
      expect([one.agreed()?.address, one.offered()]).toEqual([CLUB, null]);
    }
    expect(new Set(asked)).toEqual(new Set(['club.example']));
  });

  it('neither address nor password is in a copy of everything', async () => {
    await storage.putRecord({ kind: 'clinic-store', id: 'one', schema: 1, data: CLUB });
    const desk = await open();
    await desk.agree(CLUB);
    await sync(desk);
    expect(JSON.stringify(await storage.exportAll())).not.toMatch(/hill-42|club\.example/);
    // Nor left behind where it was kept before.
    const anything = { schema: 1, steps: [], read: (value: unknown) => value };
    expect(await storage.listRecords({ kind: 'clinic-store', ...anything })).toEqual([]);
  });

  it.each([
    ['here', (desk: SharedDesk) => desk.stop()],
    ['in another tab', async () => simple.removeItem(KEY)],
    ['because everything was deleted', () => storage.deleteEverything()],
    ['for another address', async (desk: SharedDesk) => void (await desk.agree(STRANGER))],
  ])('stopped %s, it is not asked once more, also in the middle of sending', async (_name, stop) => {
    const desk: SharedDesk = await open(async (url) => {
      asked.push(new URL(url).host);
      if (asked.length === 2) await stop(desk);
      throw new Error('nobody there');
    });
    await desk.agree(CLUB);
    await sync(desk);
    expect(asked.filter((host) => host === 'club.example')).toHaveLength(2);
  });

  it('to what cannot be an address is not possible', async () => {
    const desk = await open();
    expect(await desk.agree({ ...CLUB, url: 'club.example' })).toBe('bad-address');
    expect(desk.agreed()).toBeNull();
  });

  it('where nothing can be kept, it holds for this page', async () => {
    const refused = (): never => {
      throw new Error('not allowed');
    };
    const desk = await open(goodStore, refused);
    expect(await desk.agree(CLUB)).toBe('this-page');
    await sync(desk);
    expect(asked).not.toEqual([]);
    expect((await open(goodStore, refused)).agreed()).toBeNull();
  });
});

/** A database that a desk asks without a network, and a desk of its own device at it. */
async function device(fetch: Fetch, handOver: () => HandOver, keep = async () => true) {
  const own = await openWithoutDatabase(simpleStore());
  const desk = await openSharedDesk({
    storage: own,
    agreement: createAgreementStore(simpleStoreOf()),
    fetch,
    sleep: () => new Promise((resolve) => setTimeout(resolve, 1)),
    now: () => AT_MS,
  });
  await desk.agree(CLUB);
  const taken: RideRecord[] = [];
  const job = {
    planId: 'tuesday',
    handOver,
    take: async (read: ReadFile) => {
      if (!(await keep())) return false;
      taken.push(...read.set.records);
      return true;
    },
  };
  return { desk, taken, sync: (inPassing = false) => desk.sync(job, inPassing) };
}

function simpleStoreOf(): () => globalThis.Storage {
  const one = simpleStore();
  return () => one;
}

const from = (deviceId: string, records: readonly RideRecord[]) => (): HandOver => ({
  planId: 'tuesday',
  deviceId,
  lastSeq: records.length,
  withdrawn: [],
  records,
});

describe('a store that works', () => {
  /** Every request, and the answer in its place where a test has one. */
  let requests: string[];
  let instead: (() => Response) | null;
  let ask: Fetch;

  beforeEach(() => {
    requests = [];
    instead = null;
    const database = openDatabase('rides', memoryJournal());
    ask = async (url, { method = 'GET', body }) => {
      const { pathname, search } = new URL(url);
      requests.push(`${method} ${pathname.split('/').at(-1)}`);
      if (instead !== null) return instead();
      const answer = await database.ask(method, pathname + search, typeof body === 'string' ? body : '');
      return new Response(JSON.stringify(answer.body), { status: answer.status });
    };
  });

  it('is not asked to keep once more what came from it, also after a reload', async () => {
    const [ours, others] = [rides, [1, 2].map((seq) => madeUpRecord({ deviceId: 't2', seq }))];
    await (await device(ask, from('t2', others))).sync();
    const all = [...ours];
    const coach = await device(ask, () => ({ ...from('t1', all)(), lastSeq: 3 }));
    await coach.sync();
    expect(coach.taken.filter(({ deviceId }) => deviceId === 't2')).toHaveLength(2);
    all.push(...coach.taken.filter(({ deviceId }) => deviceId === 't2'));
    requests.length = 0;
    await coach.sync();
    expect(requests).toEqual(['GET _changes']);
    expect(coach.desk.sent().rides).toBe(3);
  });

  it('gets what was collected from a tablet that has no network', async () => {
    const collected = [1, 2].map((seq) => madeUpRecord({ deviceId: 'offline', seq }));
    await (await device(ask, from('t1', [...rides, ...collected]))).sync();
    const other = await device(ask, from('t3', []));
    await other.sync();
    expect(other.taken.map(({ id }) => id).sort()).toEqual(
      [...rides, ...collected].map(({ id }) => id).sort(),
    );
  });

  it('is asked in passing with one short question, and changes nothing where nothing is new', async () => {
    const coach = await device(ask, from('t1', rides));
    await coach.sync();
    let told = 0;
    coach.desk.subscribe(() => {
      told += 1;
    });
    requests.length = 0;
    for (let i = 0; i < 5; i += 1) await coach.sync(true);
    expect([requests, told]).toEqual([Array(5).fill('GET _changes'), 0]);
  });

  it('of two sessions neither is forgotten while the other is being sent', async () => {
    const desk = (await device(ask, from('t1', []))).desk;
    const done = new Set<string>();
    const job = (planId: string) => ({
      planId,
      handOver: () => {
        done.add(planId);
        return { ...from('t1', [])(), planId };
      },
      take: async () => true,
    });
    await Promise.all(['tuesday', 'thursday', 'sunday'].map((planId) => desk.sync(job(planId))));
    expect([...done]).toEqual(['tuesday', 'thursday', 'sunday']);
    expect(desk.state('thursday')).toMatchObject({ phase: 'done', left: 0, problem: null });
    expect(desk.state('monday')).toBeNull();
  });

  it('that was away is named, and no longer once it is back', async () => {
    const coach = await device(ask, from('t1', rides));
    await coach.sync();
    instead = () => {
      throw new Error('switched off');
    };
    await coach.sync(true);
    expect(coach.desk.state()).toMatchObject({ phase: 'done', left: 0, problem: 'unreachable' });
    instead = null;
    await coach.sync(true);
    expect(coach.desk.state()).toMatchObject({ phase: 'done', left: 0, problem: null });
  });

  it('is tried again at once when somebody wants it, in the middle of a pause', async () => {
    let woken = false;
    const desk = await openSharedDesk({
      storage,
      agreement: createAgreementStore(() => simple),
      fetch: ask,
      sleep: () => new Promise(() => undefined),
      now: () => AT_MS,
    });
    await desk.agree(CLUB);
    instead = () => {
      if (!woken) throw new Error('switched off');
      instead = null;
      return new Response('{}', { status: 503 });
    };
    const first = sync(desk);
    await expect.poll(() => desk.state()?.phase).toBe('waiting');
    woken = true;
    // Asked in passing it waits on; asked by a person it does not.
    void desk.sync({ planId: 'tuesday', handOver: from('t1', rides), take: async () => true }, true);
    await new Promise((resolve) => setTimeout(resolve, 20));
    expect(desk.state()).toMatchObject({ phase: 'waiting', problem: 'unreachable' });
    void sync(desk);
    await expect.poll(() => desk.state()).toMatchObject({ phase: 'waiting', problem: 'busy' });
    void sync(desk);
    await first;
    expect(desk.state()).toMatchObject({ phase: 'done', left: 0, problem: null });
  });

  it('has refused a ride: in passing it is not offered again, and still said to be refused', async () => {
    const [first] = rides;
    const small: Fetch = async (url, init) => {
      const text = typeof init.body === 'string' ? init.body : '';
      // A limit so small that nothing passes in a handful, and one ride not even alone.
      if (text.includes('"docs"') || text.includes(first?.id ?? '-')) {
        requests.push(`refused ${text.includes('"docs"') ? 'handful' : 'ride'}`);
        return new Response('{"error":"too_large"}', { status: 413 });
      }
      return ask(url, init);
    };
    const coach = await device(small, from('t1', rides));
    await coach.sync();
    expect(coach.desk.state()).toMatchObject({ phase: 'done', left: 0, problem: 'some-refused' });
    requests.length = 0;
    await coach.sync(true);
    expect(requests).toEqual(['GET _changes']);
    expect(coach.desk.state()).toMatchObject({ phase: 'done', left: 0, problem: 'some-refused' });
    await coach.sync();
    expect(requests).toContain('refused ride');
  });

  it('what could not be kept here is asked for again', async () => {
    await (await device(ask, from('t2', rides))).sync();
    let keeps = false;
    const coach = await device(ask, from('t1', []), async () => keeps);
    await coach.sync();
    expect(coach.taken).toEqual([]);
    keeps = true;
    await coach.sync();
    expect(coach.taken).toHaveLength(3);
  });
});

describe('settings that come by code', () => {
  it('are asked about, also where another store is agreed to; turned down, that one stays', async () => {
    const desk = await open();
    await desk.agree(CLUB);
    desk.offer(CLUB, 'code');
    expect(desk.offered()).toBeNull();
    desk.offer(STRANGER, 'code');
    expect(desk.offered()).toEqual({ address: STRANGER, from: 'code' });
    await sync(desk);
    expect(new Set(asked)).toEqual(new Set(['club.example']));
    await desk.turnDown();
    expect([desk.offered(), desk.agreed()?.address]).toEqual([null, CLUB]);
    desk.offer(STRANGER, 'code');
    await desk.agree(desk.offered()?.address ?? CLUB);
    expect(desk.agreed()?.address).toEqual(STRANGER);
  });
});
