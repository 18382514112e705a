/**
 * The storage in a real browser: what it keeps, gives away, takes in and deletes, and what it does with a database
 * that is broken or newer. Connections that fail, full disks and pages that die have tests of their own.
 */
import { describe, expect, it } from 'vitest';
import type { ExportFile } from '../../src/storage/types.ts';
import { buildStoragePage, dumpOf, idsIn, openIn, saveIn } from '../storage/page.ts';
import type { OpenPage } from './site.ts';
import { siteForTests } from './siteForTests.ts';

const site = siteForTests(buildStoragePage);

const SAVED = { saved: true };

/** A page with a profile of its own. */
function fresh(address = ''): Promise<OpenPage> {
  return site.openPage({ width: 600, height: 400, address });
}

/** Another tab with the same profile, on a page without the room. */
async function anotherTab(context: OpenPage['context'], address = 'empty.html') {
  const page = await context.newPage();
  await page.goto(new URL(address, site.url).href);
  return page;
}

describe('a healthy database', () => {
  it('keeps rides, settings, levels and records over a reload, in the database and in the small copy', async () => {
    const { page, problems, close } = await fresh();
    expect(await openIn(page)).toEqual({ kind: 'kept', problem: null });
    expect(await saveIn(page, 'ride-one')).toEqual(SAVED);
    expect(await saveIn(page, 'ride-one')).toEqual(SAVED);
    expect(
      await page.evaluate(async () => {
        const { storage, rideLike } = window;
        const level = rideLike('x').level;
        return [
          await storage.saveSettings({ muted: true }, 1),
          level && (await storage.saveLevel(level)),
          await storage.putRecord({ kind: 'clinic', id: 'a', schema: 1, data: { riders: 3 } }),
        ];
      }),
    ).toEqual([SAVED, SAVED, SAVED]);
    await page.reload();
    await openIn(page);
    expect(await idsIn(page)).toEqual(['ride-one']);
    const kept = await page.evaluate(async () => {
      const shape = { schema: 1, steps: [], read: (value: unknown) => value };
      const { storage } = window;
      return {
        settings: await storage.loadSettings(shape),
        levels: (await storage.listLevels()).map(({ id }) => id),
        records: (await storage.listRecords({ kind: 'clinic', ...shape })).map(({ data }) => data),
        same:
          JSON.stringify((await storage.getRide('ride-one'))?.recording) ===
          JSON.stringify(window.rideLike('x').recording),
        copy: localStorage.getItem('before-the-hill.small-copy')?.includes('ride-one'),
        removed: await storage.deleteRecords('clinic', ['a']),
        left: await storage.listRecords({ kind: 'clinic', ...shape }),
      };
    });
    expect(kept).toMatchObject({
      settings: { muted: true },
      levels: ['sunday-loop'],
      records: [{ riders: 3 }],
      same: true,
      copy: true,
      removed: null,
      left: [],
    });
    expect(problems).toEqual([]);
    await close();
  });

  it('after storage was cleared, an export gives everything back; twice is once', async () => {
    const { page, context, close } = await fresh();
    await openIn(page);
    for (const id of ['ride-one', 'ride-two', 'ride-three']) await saveIn(page, id);
    const file: ExportFile = await page.evaluate(async () => {
      await window.storage.saveSettings({ muted: true }, 1);
      return window.storage.exportAll();
    });
    expect(file).toMatchObject({ complete: true, leftOut: [] });
    const before = await dumpOf(page);
    const developer = await context.newCDPSession(page);
    await developer.send('Storage.clearDataForOrigin', {
      origin: new URL(site.url).origin,
      storageTypes: 'all',
    });
    await page.reload();
    await openIn(page);
    expect(await idsIn(page)).toEqual([]);
    const text = JSON.stringify(file);
    const report = (): Promise<unknown> =>
      page.evaluate((value) => window.storage.importAll(JSON.parse(value)), text);
    const well = { unsaved: 0, refused: [], problem: null, clubStore: null };
    expect(await report()).toEqual({ added: 4, already: 0, ...well });
    expect(await report()).toEqual({ added: 0, already: 4, ...well });
    expect(await dumpOf(page)).toBe(before);
    await close();
  });

  it('deleting everything leaves no database, no names and no caches of ours', async () => {
    const { page, context, close } = await fresh();
    await openIn(page);
    await saveIn(page, 'ride-one');
    // Another tab has the same database open.
    const other = await anotherTab(context, '');
    await openIn(other);
    const after = await page.evaluate(async () => {
      await caches.open('before-the-hill.films');
      await caches.open('somebody-else');
      localStorage.setItem('somebody-else', 'stays');
      return {
        answer: await window.storage.deleteEverything(),
        databases: (await indexedDB.databases()).map(({ name }) => name),
        names: Object.keys(localStorage),
        caches: await caches.keys(),
      };
    });
    expect(after).toEqual({
      answer: { deleted: true },
      databases: [],
      names: ['somebody-else'],
      caches: ['somebody-else'],
    });
    expect(await idsIn(other)).toEqual([]);
    expect(await saveIn(other, 'ride-two')).toEqual(SAVED);
    expect(await idsIn(page)).toEqual(['ride-two']);
    await close();
  });

  it('what is kept while everything is being deleted does not come back', async () => {
    const { page, close } = await fresh();
    await openIn(page);
    await saveIn(page, 'ride-one');
    const left = await page.evaluate(async () => {
      const { storage, rideLike } = window;
      const shape = { schema: 1, steps: [], read: (value: unknown) => value };
      const rounds: unknown[] = [];
      for (let round = 0; round < 30; round += 1) {
        await storage.saveRide(rideLike(`ride-${round}`));
        let going = true;
        const asked: Promise<unknown>[] = [];
        const deleting = storage.deleteEverything().finally(() => {
          going = false;
        });
        // A choice is written whenever a page thinks of it, in the middle of a deletion as well.
        while (going) {
          asked.push(storage.saveSettings({ muted: asked.length % 2 === 0 }, 1));
          await new Promise((resolve) => setTimeout(resolve, round % 7));
        }
        const { deleted } = await deleting;
        await Promise.all(asked);
        rounds.push([deleted, await storage.loadSettings(shape), (await storage.listRides()).length]);
      }
      return { rounds, names: Object.keys(localStorage) };
    });
    expect(left).toEqual({ rounds: Array.from({ length: 30 }, () => [true, null, 0]), names: [] });
    await close();
  });
});

describe('a broken or newer database', () => {
  it('one broken ride is named, kept as it is, and costs no other', async () => {
    const { page, close } = await fresh();
    await openIn(page);
    await saveIn(page, 'ride-one');
    await page.evaluate(
      () =>
        new Promise<void>((resolve) => {
          indexedDB.open('before-the-hill').addEventListener('success', (event) => {
            const database = (event.target as IDBOpenDBRequest).result;
            const transaction = database.transaction(['rides', 'settings'], 'readwrite');
            transaction.objectStore('rides').put({ schema: 1, id: 'broken', total: 'many' }, 'broken');
            transaction.objectStore('rides').put({ schema: 9, id: 'newer', wings: 2 }, 'newer');
            transaction.objectStore('settings').put('rubbish', 'settings');
            transaction.addEventListener('complete', () => {
              database.close();
              resolve();
            });
          });
        }),
    );
    await page.reload();
    await openIn(page);
    expect(await idsIn(page)).toEqual(['ride-one']);
    expect(await page.evaluate(() => [window.storage.damaged, window.storage.health])).toEqual([
      [
        { store: 'rides', id: 'broken', code: 'corrupt' },
        { store: 'rides', id: 'newer', code: 'newer-version' },
      ],
      { kind: 'kept', problem: 'corrupt' },
    ]);
    const file: ExportFile = await page.evaluate(() => window.storage.exportAll());
    expect(file.rides).toContainEqual({ schema: 9, id: 'newer', wings: 2 });
    expect(file.leftOut.map(({ id }) => id)).toEqual(['broken', 'settings']);
    // Settings that cannot be read must not block new ones; the old ones are put aside.
    expect(await page.evaluate(() => window.storage.saveSettings({ muted: false }, 1))).toEqual(SAVED);
    const dump = JSON.parse(await dumpOf(page)) as { stores: Record<string, { values: unknown[] }> };
    expect(dump.stores['rides']?.values).toContainEqual({ schema: 1, id: 'broken', total: 'many' });
    expect(dump.stores['rides']?.values).toContainEqual({ schema: 9, id: 'newer', wings: 2 });
    expect(dump.stores['damaged']?.values).toEqual(['rubbish']);
    await close();
  });

  it('a newer one is left untouched byte for byte, and the game goes on in memory', async () => {
    const { page, close } = await fresh('empty.html');
    await page.evaluate(
      () =>
        new Promise<void>((resolve) => {
          const request = indexedDB.open('before-the-hill', 7);
          request.addEventListener('upgradeneeded', () => {
            request.result.createObjectStore('rides', { keyPath: 'code' }).createIndex('by-hill', 'hill');
            request.result
              .createObjectStore('films')
              .put({ bytes: Uint8Array.from({ length: 999 }, (_, i) => i) }, 3);
            request.transaction?.objectStore('rides').put({ code: 'r1', hill: 'long' });
          });
          request.addEventListener('success', () => {
            request.result.close();
            resolve();
          });
        }),
    );
    const before = await dumpOf(page);
    await page.goto(site.url);
    expect(await openIn(page)).toEqual({ kind: 'small-copy', problem: 'newer-version' });
    expect(await saveIn(page, 'ride-one')).toEqual({
      saved: false,
      code: 'newer-version',
      localBackup: true,
    });
    expect(await idsIn(page)).toEqual(['ride-one']);
    const rest = await page.evaluate(async () => {
      const { storage } = window;
      return [
        await storage.saveSettings({ muted: true }, 1),
        await storage.importAll(
          { schema: 1, rides: [{ ...window.rideLike('two'), schema: 1, savedAtMs: 1 }] },
          { evenIfChanged: true },
        ),
        await storage.deleteRecords('clinic', ['a']),
        (await storage.exportAll()).complete,
      ];
    });
    expect(rest).toMatchObject([{ saved: false }, { added: 0, unsaved: 1 }, 'newer-version', false]);
    expect(await dumpOf(page)).toBe(before);
    expect(JSON.parse(before)).toMatchObject({ version: 7 });
    await close();
  });
});
