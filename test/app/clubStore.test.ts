/**
 * A club's own store on this device, on a storage without a database: who agreed to it, what a file can bring, what
 * another tab changes, and that nobody is asked before a person here has said so.
 */
import { beforeEach, describe, expect, it } from 'vitest';
import { EMPTY_SET } from '../../src/core/group/records/merge.ts';
import type { RideRecord } from '../../src/core/group/records/record.ts';
import { hashJson } from '../../src/core/math/hash.ts';
import { openSharedDesk, type SharedDesk } from '../../src/app/group/sharedDesk.ts';
import { createAgreementStore, type Fetch } from '../../src/storage/shared/index.ts';
import type { ExportFile, Storage } from '../../src/storage/index.ts';
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
  desk.sync(
    () => ({ planId: 'tuesday', deviceId: 't1', lastSeq: 3, withdrawn: [], records: rides }),
    async () => true,
  );

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
    if (report.clubStore !== null) desk.offer(report.clubStore);
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
    if (report.clubStore !== null) desk.offer(report.clubStore);
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
    expect(await storage.listRecords('clinic-store', anything)).toEqual([]);
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

  it('what is fetched is given on', async () => {
    const desk = await open();
    await desk.agree(CLUB);
    const taken: unknown[] = [];
    await desk.sync(
      () => ({ planId: 'tuesday', deviceId: 't1', lastSeq: 0, withdrawn: [], records: [] }),
      async (read) => taken.push(read) > 0,
    );
    expect(taken).toEqual([{ set: EMPTY_SET, heard: [] }]);
  });
});
