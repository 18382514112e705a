/** Group sessions in a storage: which rides count as marked on this device, and what nobody can make the game believe. */
import { describe, expect, it } from 'vitest';
import { type RideRecord, sealRecord } from '../../src/core/group/records/record.ts';
import { startQueue } from '../../src/core/group/turnQueue.ts';
import { hashJson } from '../../src/core/math/hash.ts';
import type { RecordsNow, Storage } from '../../src/storage/index.ts';
import { createCarriedSessions, createOwnedSessions, NOTHING_CARRIED } from '../../src/storage/sessions.ts';
import { madeUpRecord, planWith } from '../core/group/rides.ts';
import { openWithoutDatabase, simpleStore, without } from './given.ts';

const plan = planWith();
const saved = { plan, deviceId: 'this-one', round: startQueue(plan), startedAtMs: 1, feels: {} };
const mine = sealRecord({ ...madeUpRecord({ deviceId: 'this-one', seq: 1 }), id: 'my-first-ride' });
const owner = {
  token: 'this-tab',
  isOwned: () => true,
  tell: () => undefined,
  onTold: () => undefined,
  lose: () => undefined,
};

async function ownIds(storage: Storage): Promise<string[]> {
  const { own } = await createOwnedSessions(storage, owner).load();
  const carried = await createCarriedSessions(storage).load(plan.id);
  expect([...carried.own]).toEqual([...own]);
  return [...own].map(({ id }) => id);
}

async function keepMine(): Promise<Storage> {
  const storage = await openWithoutDatabase(simpleStore());
  const sessions = createOwnedSessions(storage, owner);
  await sessions.load();
  await sessions.keepRide(mine, saved);
  return storage;
}

const take = (storage: Storage, records: readonly RideRecord[]): Promise<boolean> =>
  createCarriedSessions(storage).keep(plan.id, NOTHING_CARRIED, {
    set: { records, damaged: [], withdrawn: [] },
    heard: [],
  });

describe('rides marked on this device', () => {
  it('are those that were kept when they were marked, also after a reload', async () => {
    expect(await ownIds(await keepMine())).toEqual([mine.id]);
  });

  it('are none that came from elsewhere, whatever device they name', async () => {
    const storage = await keepMine();
    await take(storage, [
      madeUpRecord({ deviceId: 'this-one', seq: 2 }),
      madeUpRecord({ deviceId: 't2', seq: 1 }),
    ]);
    expect((await createOwnedSessions(storage, owner).load()).records).toHaveLength(3);
    expect(await ownIds(storage)).toEqual([mine.id]);
  });

  it('are none that came with a copy, even where it says so', async () => {
    const copy = await (await keepMine()).exportAll();
    expect(JSON.stringify(copy)).not.toContain('clinic-own');
    const rest = without(copy, 'checksum');
    const note = { kind: 'clinic-own', id: mine.id, schema: 1, savedAtMs: 1 };
    const forged = {
      ...rest,
      records: [...copy.records, { ...note, data: { planId: plan.id, checksum: mine.checksum } }],
    };
    const other = await openWithoutDatabase(simpleStore());
    await other.importAll({ ...forged, checksum: hashJson(forged) });
    expect((await createOwnedSessions(other, owner).load()).records).toHaveLength(1);
    expect(await ownIds(other)).toEqual([]);
  });

  it('are forgotten with the ride and with the session', async () => {
    const anything = { schema: 1, steps: [], read: (value: unknown) => value };
    for (const drop of ['ride', 'session', 'carried'] as const) {
      const storage = await keepMine();
      const sessions = createOwnedSessions(storage, owner);
      await sessions.load();
      if (drop === 'ride') await sessions.dropRide(mine.id);
      if (drop === 'session') await sessions.dropSession(plan.id);
      if (drop === 'carried') await createCarriedSessions(storage).drop(plan.id);
      expect(await storage.listRecords({ kind: 'clinic-own', ...anything })).toEqual([]);
    }
  });
});

describe('a database that can be read but not written', () => {
  /** Says to every change who stands in the database, and keeps nothing of it. */
  async function fullStorage(inDatabase: () => string | null): Promise<Storage> {
    const storage = await openWithoutDatabase(simpleStore());
    const now: RecordsNow = {
      inDatabase: true,
      data: (of) => Promise.resolve(of.read(inDatabase())),
      all: () => Promise.resolve([]),
    };
    return {
      ...storage,
      health: storage.health,
      damaged: storage.damaged,
      changeRecords: async (work) =>
        (await work(now)) === null ? null : { saved: false, code: 'connection-lost', localBackup: false },
    };
  }
  async function keepOnIt(inDatabase: () => string | null): Promise<{ saved: boolean; lost: boolean }> {
    let lost = false;
    const lose = (): void => {
      lost = true;
    };
    const sessions = createOwnedSessions(await fullStorage(inDatabase), { ...owner, lose });
    await sessions.load();
    return { saved: await sessions.putRound(saved), lost };
  }

  it('is no other tab: the sessions stay here, and what is not kept is said to be not kept', async () => {
    expect(await keepOnIt(() => 'the tab before')).toEqual({ saved: false, lost: false });
    expect(await keepOnIt(() => null)).toEqual({ saved: false, lost: false });
  });

  it('still shows when another tab takes over', async () => {
    let there = 'the tab before';
    const taken = (): string => {
      const seen = there;
      there = 'another tab';
      return seen;
    };
    expect(await keepOnIt(taken)).toEqual({ saved: false, lost: true });
  });
});
