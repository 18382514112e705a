/**
 * The storage of a browser that gives no database: the small copy carries progress over, memory carries the
 * rest until the tab is closed, and nothing is called saved.
 */
import { describe, expect, it } from 'vitest';
import { newId } from '../../src/storage/ids.ts';
import { openStorage, type Shape } from '../../src/storage/index.ts';
import type { Level } from '../../src/core/level/schema.ts';
import type { OwnLevel } from '../../src/storage/types.ts';
import { openWithoutDatabase, rideLike, sample, simpleStore } from './given.ts';

const COPY = 'before-the-hill.small-copy';
const anything: Shape<unknown> = { schema: 1, steps: [], read: (value) => value };
const level = (sample('levels') as OwnLevel).level;

describe('without a database', () => {
  it('a ride is never called saved, but its result is in the small copy', async () => {
    const storage = await openWithoutDatabase(simpleStore());
    expect(storage.health).toEqual({ kind: 'small-copy', problem: 'private-window' });
    const answer = await storage.saveRide(rideLike('one'));
    expect(answer).toEqual({ saved: false, code: 'private-window', localBackup: true });
    expect(await storage.getRide('one')).toMatchObject({
      id: 'one',
      recording: { schema: 1 },
    });
  });

  it('keeping a ride twice does not make it saved, and another ride under its id is refused', async () => {
    const storage = await openWithoutDatabase(simpleStore());
    await storage.saveRide(rideLike('one'));
    const unsaved = { saved: false, code: 'private-window', localBackup: true };
    expect(await storage.saveRide(rideLike('one'))).toEqual(unsaved);
    expect(await storage.saveRide(rideLike('one', { total: 1 }))).toMatchObject({
      saved: false,
      code: 'corrupt',
    });
    expect(await storage.listRides()).toHaveLength(1);
  });

  it('deleting everything comes to an answer where the caches never do, and the answer names them', async () => {
    const caches = {
      keys: () => new Promise<never>(() => undefined),
      open: () => Promise.reject(new Error('none')),
    };
    const storage = await openWithoutDatabase(simpleStore(), {
      caches: () => caches as unknown as CacheStorage,
      timeoutMs: 20,
    });
    expect(await storage.deleteEverything()).toEqual({ deleted: false, code: 'hangs', left: ['caches'] });
  });

  it('without the small copy, or with one that forgets at once, it says that all is in memory', async () => {
    const forgetful = { ...simpleStore(), getItem: () => null };
    const forbidden = new Proxy(simpleStore(), {
      get: () => {
        throw new DOMException('no', 'SecurityError');
      },
    });
    for (const store of [null, forgetful, forbidden, simpleStore(0)]) {
      const storage = await openWithoutDatabase(store);
      expect(storage.health).toEqual({ kind: 'memory', problem: 'private-window' });
      expect(await storage.saveRide(rideLike('one'))).toEqual({
        saved: false,
        code: 'private-window',
        localBackup: false,
      });
      expect(await storage.listRides()).toHaveLength(1);
    }
  });

  it('results, the newest ride and the settings come back after a reload', async () => {
    const store = simpleStore();
    const first = await openWithoutDatabase(store);
    for (let i = 0; i < 50; i += 1) await first.saveRide(rideLike(`ride-${i}`, { total: i }));
    await first.saveSettings({ muted: true }, 3);
    const again = await openWithoutDatabase(store);
    const rides = await again.listRides();
    expect(rides.map(({ total }) => total)).toEqual(Array.from({ length: 40 }, (_, i) => 49 - i));
    expect(rides.map(({ id }) => id)).toEqual(Array.from({ length: 40 }, (_, i) => `ride-${49 - i}`));
    expect(await again.getRide('ride-48')).toBeNull();
    expect(await again.getRide('ride-49')).toMatchObject({ id: 'ride-49', total: 49 });
    expect(await again.loadSettings({ ...anything, schema: 3, steps: [(old) => old, (old) => old] })).toEqual(
      { muted: true },
    );
  });

  it('reads the sample of a small copy', async () => {
    const store = simpleStore();
    store.setItem(COPY, JSON.stringify(sample('localBackup')));
    const storage = await openWithoutDatabase(store);
    expect(await storage.listRides()).toHaveLength(3);
    expect(await storage.loadSettings(anything)).toMatchObject({ paceRatio: 1 });
  });

  it('leaves out the newest ride where only results fit', async () => {
    const store = simpleStore(2_000);
    const storage = await openWithoutDatabase(store);
    expect(await storage.saveRide(rideLike('one'))).toMatchObject({ localBackup: true });
    const again = await openWithoutDatabase(store);
    expect(await again.listRides()).toMatchObject([{ id: 'one' }]);
    expect(await again.getRide('one')).toBeNull();
  });

  it.each([
    'not json',
    '{"schema":1}',
    '7',
    JSON.stringify({ ...(sample('localBackup') as object), results: [] }),
  ])('puts an unreadable small copy aside before it writes a new one: %.20s', async (text) => {
    const store = simpleStore();
    store.setItem(COPY, text);
    const storage = await openWithoutDatabase(store);
    expect(await storage.listRides()).toEqual([]);
    expect(await storage.saveRide(rideLike('one'))).toMatchObject({ localBackup: true });
    expect(store.getItem(`${COPY}.damaged`)).toBe(text);
    expect(await (await openWithoutDatabase(store)).listRides()).toHaveLength(1);
  });

  it('leaves the small copy of a newer version as it is', async () => {
    const store = simpleStore();
    const text = JSON.stringify({ ...(sample('localBackup') as object), schema: 2 });
    store.setItem(COPY, text);
    const storage = await openWithoutDatabase(store);
    expect(await storage.saveRide(rideLike('one'))).toMatchObject({ saved: false, localBackup: false });
    expect(store.getItem(COPY)).toBe(text);
  });

  it('deletes everything of ours and nothing else', async () => {
    const store = simpleStore();
    store.setItem('somebody-else', 'stays');
    const storage = await openWithoutDatabase(store);
    await storage.saveRide(rideLike('one'));
    expect(await storage.deleteEverything()).toEqual({ deleted: true });
    expect(store.length).toBe(1);
    expect(store.getItem('somebody-else')).toBe('stays');
    expect(await storage.listRides()).toEqual([]);
  });

  it('says where deleting did not work', async () => {
    const store = { ...simpleStore(), length: 1, key: () => COPY, removeItem: () => undefined };
    const storage = await openWithoutDatabase(store);
    expect(await storage.deleteEverything()).toEqual({
      deleted: false,
      code: 'connection-lost',
      left: ['small-copy'],
    });
  });
});

describe('things that change', () => {
  it('a deleted level can be brought back, and what is unknown cannot be deleted', async () => {
    const storage = await openWithoutDatabase();
    await storage.saveLevel(level);
    await storage.deleteLevel(level.id);
    expect(await storage.listLevels()).toEqual([]);
    await storage.restoreLevel(level.id);
    expect((await storage.listLevels()).map((own) => own.level)).toEqual([level]);
    expect(await storage.deleteLevel('unknown')).toBeNull();
  });

  it('what is saved last counts, also when the clock has been turned back', async () => {
    let now = 5_000;
    const storage = await openWithoutDatabase(null, { nowMs: () => now });
    await storage.saveLevel({ ...level, title: 'Old' });
    now = 1_000;
    await storage.saveLevel({ ...level, title: 'New' });
    expect((await storage.listLevels()).map((own) => own.level.title)).toEqual(['New']);
  });

  it('settings and records of a newer version are not overwritten', async () => {
    const storage = await openWithoutDatabase();
    await storage.saveSettings({ future: true }, 2);
    await storage.putRecord({ kind: 'clinic', id: 'a', schema: 2, data: { future: true } });
    expect(await storage.loadSettings(anything)).toBeNull();
    expect(await storage.listRecords({ kind: 'clinic', ...anything })).toEqual([]);
    expect(storage.damaged.map(({ store, code }) => [store, code])).toEqual([
      ['settings', 'newer-version'],
      ['records', 'newer-version'],
    ]);
    expect(await storage.saveSettings({ future: false }, 1)).toMatchObject({
      saved: false,
      code: 'newer-version',
    });
    expect(await storage.putRecord({ kind: 'clinic', id: 'a', schema: 1, data: {} })).toMatchObject({
      code: 'newer-version',
    });
    expect((await storage.exportAll()).settings).toMatchObject({ value: { future: true } });
  });

  it('records are listed by kind and deleted by kind and id', async () => {
    const storage = await openWithoutDatabase();
    for (const id of ['a', 'b', 'c']) await storage.putRecord({ kind: 'clinic', id, schema: 1, data: id });
    await storage.putRecord({ kind: 'clinic-plan', id: 'a', schema: 1, data: 'plan' });
    // Nothing is really gone while there is no database to ask.
    expect(await storage.deleteRecords('clinic', ['b'])).toBe('private-window');
    const ids = async (kind: string) =>
      (await storage.listRecords({ kind, ...anything })).map(({ id }) => id);
    expect(await ids('clinic')).toEqual(['c', 'a']);
    await storage.deleteRecords('clinic', ['a', 'c']);
    expect(await ids('clinic')).toEqual([]);
    expect(await ids('clinic-plan')).toEqual(['a']);
  });
});

describe('a ride that is to be kept', () => {
  it('is refused where it could not be read back', async () => {
    const storage = await openWithoutDatabase(simpleStore());
    expect(await storage.saveRide(rideLike('one', { total: 200 }))).toEqual({
      saved: false,
      code: 'corrupt',
      localBackup: false,
    });
    expect(await storage.saveLevel({ ...level, id: 'Not An Id' } as Level)).toMatchObject({
      code: 'corrupt',
    });
    expect(await storage.listRides()).toEqual([]);
  });

  it('gets a random id', () => {
    const ids = new Set(Array.from({ length: 200 }, newId));
    expect(ids.size).toBe(200);
    for (const id of ids) expect(id).toMatch(/^[0-9a-f]{32}$/);
  });
});

describe('the browser', () => {
  it('is asked for persistence, and may have no answer', async () => {
    const manager = (answer: boolean) => ({ persist: () => Promise.resolve(answer) }) as StorageManager;
    const open = (storageManager: StorageManager | null) =>
      openWithoutDatabase(null, { storageManager: () => storageManager });
    expect(await (await open(manager(true))).requestPersistence()).toBe('granted');
    expect(await (await open(manager(false))).requestPersistence()).toBe('refused');
    expect(await (await open(null)).requestPersistence()).toBe('unknown');
  });

  it('of this test has no database, and the storage opens all the same with its own places', async () => {
    const storage = await openStorage({ timeoutMs: 50 });
    expect(storage.health.problem).toBe('private-window');
  });
});
