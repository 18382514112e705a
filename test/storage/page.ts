/**
 * A page that holds the storage and nothing else, built into a folder that goes away with the test. What is
 * done to it is written in the tests.
 */
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import type { Page } from 'playwright-core';
import type * as Room from '../../src/storage/index.ts';
import type { NewRide, Storage } from '../../src/storage/index.ts';
import { rideLike } from './given.ts';
import { buildStorageScript } from './script.ts';

declare global {
  interface Window {
    /** The room as the page loaded it. */
    kept: typeof Room;
    /** The storage that the page has opened. */
    storage: Storage;
    /** A ride with this id. */
    rideLike: (id: string, change?: Partial<NewRide>) => NewRide;
  }
}

/** The folder with the page, and how to remove it. */
export interface StoragePage {
  readonly folder: string;
  /** The room as one script, for pages that may not load another file. */
  readonly script: string;
  readonly remove: () => void;
}

/** Builds the page. It opens nothing by itself. */
export async function buildStoragePage(): Promise<StoragePage> {
  const folder = mkdtempSync(join(tmpdir(), 'storage-page-'));
  const script = await buildStorageScript();
  writeFileSync(join(folder, 'kept.js'), script);
  writeFileSync(
    join(folder, 'index.html'),
    `<title>Storage</title><link rel="icon" href="data:,"><script src="kept.js"></script><script>
window.rideLike = (id, change) => ({ ...${JSON.stringify(rideLike('any'))}, id, ...change });
</script>`,
  );
  writeFileSync(join(folder, 'empty.html'), '<title>Empty</title><link rel="icon" href="data:,">');
  return {
    folder,
    script,
    remove: () => rmSync(folder, { recursive: true, force: true }),
  };
}

/** Opens the storage in the page; answers with its health. */
export function openIn(page: Page, timeoutMs = 3_000): Promise<Storage['health']> {
  return page.evaluate(async (ms) => {
    window.storage = await window.kept.openStorage({ timeoutMs: ms });
    return window.storage.health;
  }, timeoutMs);
}

/** Saves a ride in the page. */
export function saveIn(page: Page, id: string): ReturnType<Storage['saveRide']> {
  return page.evaluate((rideId) => window.storage.saveRide(window.rideLike(rideId)), id);
}

/** Ids in the list of the page, in order of the alphabet. */
export async function idsIn(page: Page): Promise<readonly string[]> {
  return (await page.evaluate(() => window.storage.listRides())).map(({ id }) => id).sort();
}

/** Everything in the database as text, with version and stores, read without the room; binary as numbers. */
export function dumpOf(page: Page): Promise<string> {
  return page.evaluate(async () => {
    const done = <T>(request: IDBRequest<T>): Promise<T> =>
      new Promise((resolve, reject) => {
        request.addEventListener('success', () => resolve(request.result));
        request.addEventListener('error', () => reject(request.error ?? new Error('failed')));
      });
    const database = await done(indexedDB.open('before-the-hill'));
    const stores: Record<string, unknown> = {};
    for (const name of database.objectStoreNames) {
      const store = database.transaction(name).objectStore(name);
      const [keys, values] = await Promise.all([done(store.getAllKeys()), done(store.getAll())]);
      stores[name] = { keyPath: store.keyPath, indexes: [...store.indexNames], keys, values };
    }
    const { version } = database;
    database.close();
    return JSON.stringify({ version, stores }, (_key, value: unknown) =>
      value instanceof Uint8Array ? { bytes: [...value] } : value,
    );
  });
}
