/**
 * What a full disk does to a browser's database, played in the ways seen on a real one (`test/figures/diskFull.ts`
 * fills one): writes break off under other names, and the next start finds the database gone. What was called kept
 * is there with its recording, or it is said that it is not.
 */
import type { Page } from 'playwright-core';
import { describe, expect, it } from 'vitest';
import { buildStoragePage, idsIn, openIn, saveIn } from '../storage/page.ts';
import { words } from '../../src/words/words.ts';
import { openSite, type OpenPage } from './site.ts';
import { siteForTests } from './siteForTests.ts';

const site = siteForTests(buildStoragePage);

const SAVED = { saved: true };
const FULL = { saved: false, code: 'disk-full', localBackup: true };

const fresh = (): Promise<OpenPage> => site.openPage({ width: 600, height: 400 });

/** What Chromium does at its next start with a database that was torn by a full disk. */
async function loseDatabase(page: Page): Promise<void> {
  await page.goto(new URL('empty.html', site.url).href);
  const answer = await page.evaluate(
    () =>
      new Promise((resolve) => {
        const request = indexedDB.deleteDatabase('before-the-hill');
        for (const kind of ['success', 'blocked', 'error'])
          request.addEventListener(kind, () => resolve(kind));
      }),
  );
  expect(answer).toBe('success');
  await page.goto(site.url);
}

const wholeIn = (page: Page): Promise<readonly string[]> =>
  page.evaluate(async () => {
    const { storage } = window;
    const all = await storage.listRides();
    const rides = await Promise.all(all.map(({ id }) => storage.getRide(id)));
    return rides.flatMap((ride) => (ride === null ? [] : [ride.id])).sort();
  });

const withoutCaches = (page: Page): Promise<void> =>
  page.evaluate(() => void Object.defineProperty(window, 'caches', { value: undefined, configurable: true }));

describe('a database that the browser has thrown away', () => {
  it('comes back with every recording, own level and record', async () => {
    const { page, close } = await fresh();
    await openIn(page);
    for (const id of ['one', 'three', 'two']) expect(await saveIn(page, id)).toEqual(SAVED);
    await page.evaluate(() => window.storage.putRecord({ kind: 'clinic', id: 'a', schema: 1, data: 'old' }));
    await page.evaluate(() => window.storage.putRecord({ kind: 'clinic', id: 'a', schema: 1, data: 'new' }));
    await loseDatabase(page);
    expect(await openIn(page)).toEqual({ kind: 'kept', problem: null });
    expect(await wholeIn(page)).toEqual(['one', 'three', 'two']);
    const records = await page.evaluate(() =>
      window.storage.listRecords({ kind: 'clinic', schema: 1, read: (value) => value }),
    );
    expect(records.map(({ data }) => data)).toEqual(['new']);
    await close();
  });

  it('comes back with what was kept before there was a second copy', async () => {
    const { page, close } = await fresh();
    await withoutCaches(page);
    await openIn(page);
    for (const id of ['one', 'two']) await saveIn(page, id);
    await page.reload();
    await openIn(page);
    // A save stands in line behind the first of the copies at most, so it does not tell when they are done.
    await page.waitForFunction(async () => {
      const cache = await caches.open('before-the-hill.second-copy');
      return (await cache.keys()).length === 2;
    });
    await loseDatabase(page);
    await openIn(page);
    expect(await wholeIn(page)).toEqual(['one', 'two']);
    await close();
  });

  it('does not bring back what was removed', async () => {
    const { page, close } = await fresh();
    await openIn(page);
    await saveIn(page, 'one');
    for (const id of ['a', 'b'])
      await page.evaluate(
        (name) => window.storage.putRecord({ kind: 'clinic', id: name, schema: 1, data: name }),
        id,
      );
    expect(await page.evaluate(() => window.storage.deleteRecords('clinic', ['a']))).toBeNull();
    await loseDatabase(page);
    await openIn(page);
    const ids = await page.evaluate(async () => {
      const all = await window.storage.listRecords({ kind: 'clinic', schema: 1, read: (value) => value });
      return all.map(({ id }) => id);
    });
    expect(ids).toEqual(['b']);
    expect(await page.evaluate(() => window.storage.deleteEverything())).toEqual({ deleted: true });
    await page.reload();
    await openIn(page);
    expect(await idsIn(page)).toEqual([]);
    await close();
  });

  it('is told where a browser without caches has only the marks left', async () => {
    const { page, close } = await fresh();
    await withoutCaches(page);
    await openIn(page);
    for (const id of ['one', 'two']) expect(await saveIn(page, id)).toEqual(SAVED);
    await loseDatabase(page);
    await withoutCaches(page);
    expect(await openIn(page)).toEqual({ kind: 'kept', problem: 'recordings-lost' });
    expect(await idsIn(page)).toEqual(['one', 'two']);
    expect(await wholeIn(page)).toEqual(['two']);
    // Said once: the next visit knows of no new loss.
    await page.reload();
    expect(await openIn(page)).toEqual({ kind: 'kept', problem: null });
    await close();
  });
});

describe('a full disk', () => {
  it('is called so when the write breaks off under another name', async () => {
    const { page, close } = await fresh();
    await openIn(page);
    await page.evaluate(() => {
      IDBDatabase.prototype.transaction = () => {
        throw new DOMException(
          'Connection is closing because of: IO error: .../000003.log: FILE_ERROR_NO_SPACE',
          'UnknownError',
        );
      };
    });
    expect(await saveIn(page, 'one')).toEqual(FULL);
    expect(await page.evaluate(() => window.storage.health)).toMatchObject({ problem: 'disk-full' });
    await close();
  });

  it('is called so when the database cannot even be opened, and is not written to', async () => {
    const { page, close } = await fresh();
    await page.evaluate(fillDisk);
    expect(await openIn(page)).toMatchObject({ problem: 'disk-full' });
    expect(await saveIn(page, 'one')).toEqual(FULL);
    await close();
  });

  it('on which the second copy does not fit keeps nothing yet, and both when there is room again', async () => {
    const { page, close } = await fresh();
    await openIn(page);
    await page.evaluate(() => {
      const put = Reflect.get(Cache.prototype, 'put') as Cache['put'];
      Cache.prototype.put = function (this: Cache, address, answer) {
        return typeof address === 'string' && address.includes('/rides/')
          ? Promise.reject(new DOMException('Entry already exists.', 'InvalidAccessError'))
          : put.call(this, address, answer);
      };
      Object.assign(window, { mend: () => Object.assign(Cache.prototype, { put }) });
    });
    expect(await saveIn(page, 'one')).toEqual(FULL);
    await page.evaluate(() => (window as unknown as { mend: () => void }).mend());
    expect(await saveIn(page, 'two')).toEqual(SAVED);
    expect(await page.evaluate(() => window.storage.health)).toEqual({ kind: 'kept', problem: null });
    await loseDatabase(page);
    await openIn(page);
    expect(await wholeIn(page)).toEqual(['one', 'two']);
    await close();
  });

  it('stands on the first page of the game', async () => {
    const game = await openSite();
    const { page, context, close } = await game.openPage({ width: 600, height: 400 });
    await context.addInitScript(fillDisk);
    await page.reload();
    const notice = page.locator('.start-notice');
    await notice.waitFor();
    expect(await notice.textContent()).toBe(words('kept')('health-disk-full'));
    await close();
    await game.close();
  });
});

/** Chromium on a disk without a byte to spare, as far as a page sees it. */
function fillDisk(): void {
  IDBFactory.prototype.open = () => {
    throw new DOMException('Internal error opening backing store for indexedDB.open.', 'UnknownError');
  };
  Cache.prototype.put = () => Promise.reject(new DOMException('Entry already exists.', 'InvalidAccessError'));
}
