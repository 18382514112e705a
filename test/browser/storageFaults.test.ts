/**
 * Connections of the storage that fail in a real browser: opening that hangs or is forbidden, other tabs that
 * want the database, transactions that are aborted or never end. What could not be saved is not called so.
 */
import type { BrowserContext, Page } from 'playwright-core';
import { describe, expect, it } from 'vitest';
import { buildStoragePage, dumpOf, idsIn, openIn, saveIn, type StoragePage } from '../storage/page.ts';
import type { OpenPage } from './site.ts';
import { siteForTests } from './siteForTests.ts';

let built: StoragePage;
const site = siteForTests(async () => (built = await buildStoragePage()));

type Transaction = (this: IDBDatabase, ...given: Parameters<IDBDatabase['transaction']>) => IDBTransaction;
type Put = (this: IDBObjectStore, ...given: Parameters<IDBObjectStore['put']>) => IDBRequest<IDBValidKey>;

const SAVED = { saved: true };
const NAME = 'before-the-hill';

function fresh(address = ''): Promise<OpenPage> {
  return site.openPage({ width: 600, height: 400, address });
}

async function emptyTab(context: BrowserContext): Promise<Page> {
  const page = await context.newPage();
  await page.goto(new URL('empty.html', site.url).href);
  return page;
}

/** Another tab, which has the database open as `window.held`. */
async function holdingTab(context: BrowserContext): Promise<Page> {
  const page = await emptyTab(context);
  await page.evaluate(
    (name) =>
      new Promise<void>((resolve) => {
        const request = indexedDB.open(name, 1);
        request.addEventListener('success', () => {
          Object.assign(window, { held: request.result });
          resolve();
        });
      }),
    NAME,
  );
  return page;
}

describe('opening', () => {
  it('that hangs is given up, and adopted with all that was ridden meanwhile when it succeeds late', async () => {
    const { page, context, close } = await fresh();
    // This tab holds the database and a deletion waits for it; opening then waits for the deletion.
    const holder = await holdingTab(context);
    await holder.evaluate(
      (name) =>
        new Promise<void>((resolve) => {
          indexedDB.deleteDatabase(name).addEventListener('blocked', () => resolve());
        }),
      NAME,
    );
    expect(await openIn(page, 300)).toEqual({ kind: 'small-copy', problem: 'hangs' });
    expect(await saveIn(page, 'ride-one')).toEqual({ saved: false, code: 'hangs', localBackup: true });
    await page.evaluate(() => {
      Object.assign(window, {
        told: new Promise((resolve) => window.storage.subscribe(resolve)),
      });
    });
    await holder.evaluate(() => (window as unknown as { held: IDBDatabase }).held.close());
    const told = await page.evaluate(() => (window as unknown as { told: Promise<unknown> }).told);
    expect(told).toEqual({ kind: 'kept', problem: null });
    expect(await dumpOf(page)).toContain('ride-one');
    expect(await saveIn(page, 'ride-two')).toEqual(SAVED);
    await page.reload();
    await openIn(page);
    expect(await idsIn(page)).toEqual(['ride-one', 'ride-two']);
    await close();
  });

  it('that another tab blocks is called so', async () => {
    const { page, context, close } = await fresh();
    await holdingTab(context);
    // As if this page were of a later version, which has to upgrade what the other tab holds.
    await page.evaluate(() => {
      const open = indexedDB.open.bind(indexedDB);
      IDBFactory.prototype.open = (name) => open(name, 2);
    });
    expect(await openIn(page, 300)).toMatchObject({ problem: 'blocked' });
    await close();
  });

  it('that is forbidden is a private window', async () => {
    const { page, close } = await fresh();
    await page.evaluate(() => {
      IDBFactory.prototype.open = () => {
        throw new DOMException('The operation is insecure.', 'SecurityError');
      };
    });
    expect(await openIn(page)).toEqual({ kind: 'small-copy', problem: 'private-window' });
    expect(await saveIn(page, 'ride-one')).toEqual({
      saved: false,
      code: 'private-window',
      localBackup: true,
    });
    await close();
  });

  it('in a frame that may keep nothing at all works in memory', async () => {
    const { page, close } = await fresh('empty.html');
    await page.evaluate(async (script) => {
      const frame = document.createElement('iframe');
      frame.setAttribute('sandbox', 'allow-scripts');
      frame.srcdoc = `<script>${script.replaceAll('</script', '<\\/script')};window.kept = kept;</script>`;
      const loaded = new Promise((resolve) => frame.addEventListener('load', resolve));
      document.body.append(frame);
      await loaded;
    }, built.script);
    const frame = page.frames()[1];
    const found = await frame?.evaluate(async () => {
      const storage = await window.kept.openStorage();
      const settings = await storage.saveSettings({ muted: true }, 1);
      const shape = { schema: 1, steps: [], read: (value: unknown) => value };
      return [storage.health, settings, await storage.loadSettings(shape), await storage.deleteEverything()];
    });
    expect(found).toEqual([
      { kind: 'memory', problem: 'private-window' },
      { saved: false, code: 'private-window', localBackup: false },
      { muted: true },
      { deleted: true },
    ]);
    await close();
  });
});

describe('an open connection', () => {
  it('gives way to a tab that deletes the database, and is opened anew', async () => {
    const { page, context, close } = await fresh();
    await openIn(page);
    await saveIn(page, 'ride-one');
    const other = await emptyTab(context);
    const answer = await other.evaluate(
      (name) =>
        new Promise((resolve) => {
          const request = indexedDB.deleteDatabase(name);
          for (const kind of ['success', 'blocked']) request.addEventListener(kind, () => resolve(kind));
        }),
      NAME,
    );
    expect(answer).toBe('success');
    expect(await saveIn(page, 'ride-two')).toEqual(SAVED);
    expect(await dumpOf(page)).toContain('ride-two');
    await close();
  });

  it('gives way to a tab of a newer version, and says so from then on', async () => {
    const { page, context, close } = await fresh();
    await openIn(page);
    await saveIn(page, 'ride-one');
    const other = await emptyTab(context);
    await other.evaluate(
      (name) =>
        new Promise<void>((resolve) => {
          const request = indexedDB.open(name, 2);
          request.addEventListener('success', () => resolve());
        }),
      NAME,
    );
    expect(await saveIn(page, 'ride-two')).toEqual({
      saved: false,
      code: 'newer-version',
      localBackup: true,
    });
    expect(await idsIn(page)).toEqual(['ride-two']);
    await close();
  });

  it('that the browser closes by force is opened anew', async () => {
    const { page, context, close } = await fresh();
    await openIn(page);
    const developer = await context.newCDPSession(page);
    const origin = new URL(site.url).origin;
    await developer.send('Storage.clearDataForOrigin', { origin, storageTypes: 'indexeddb' });
    expect(await saveIn(page, 'ride-one')).toEqual(SAVED);
    expect(await idsIn(page)).toEqual(['ride-one']);
    await close();
  });

  it.each([
    ['transaction', 1, SAVED],
    ['transaction', 9, { saved: false, code: 'connection-lost', localBackup: true }],
    ['put', 1, SAVED],
    ['put', 9, { saved: false, code: 'connection-lost', localBackup: true }],
  ] as const)('whose %s fails %d times', async (what, times, answer) => {
    const { page, close } = await fresh();
    await openIn(page);
    await page.evaluate(
      ([kind, count]) => {
        let left = count;
        const transaction = Reflect.get(IDBDatabase.prototype, 'transaction') as Transaction;
        const put = Reflect.get(IDBObjectStore.prototype, 'put') as Put;
        if (kind === 'transaction')
          IDBDatabase.prototype.transaction = function (...given) {
            left -= 1;
            if (left >= 0) throw new DOMException('The database connection is closing.', 'InvalidStateError');
            return transaction.apply(this, given);
          };
        else
          IDBObjectStore.prototype.put = function (...given) {
            left -= 1;
            const request = put.apply(this, given);
            if (left >= 0) this.transaction.abort();
            return request;
          };
      },
      [what, times] as const,
    );
    expect(await saveIn(page, 'ride-one')).toEqual(answer);
    await page.reload();
    expect((await dumpOf(page)).includes('ride-one')).toBe(answer === SAVED);
    await close();
  });

  it.each([
    ['two times is asked for again', 2, SAVED],
    ['every time is called lost', 9, { saved: false, code: 'connection-lost', localBackup: true }],
  ] as const)('that is lost and refused %s', async (_, times, answer) => {
    const { page, close } = await fresh();
    await openIn(page);
    await page.evaluate((count) => {
      const transaction = Reflect.get(IDBDatabase.prototype, 'transaction') as Transaction;
      IDBDatabase.prototype.transaction = () => {
        IDBDatabase.prototype.transaction = transaction;
        throw new DOMException('The database connection is closing.', 'InvalidStateError');
      };
      const open = indexedDB.open.bind(indexedDB);
      let left = count;
      IDBFactory.prototype.open = (...given) => {
        left -= 1;
        if (left >= 0) throw new DOMException('The connection was closed.', 'AbortError');
        return open(...given);
      };
    }, times);
    expect(await saveIn(page, 'ride-one')).toEqual(answer);
    await close();
  });

  it('whose transaction never ends is given up, and nothing of it is written', async () => {
    const { page, close } = await fresh();
    await openIn(page, 100);
    await page.evaluate(() => {
      const put = Reflect.get(IDBObjectStore.prototype, 'put') as Put;
      IDBObjectStore.prototype.put = function (...given) {
        const again = (): void => this.get('nothing').addEventListener('success', again);
        again();
        return put.apply(this, given);
      };
      Object.assign(window, { mend: () => Object.assign(IDBObjectStore.prototype, { put }) });
    });
    expect(await saveIn(page, 'ride-one')).toEqual({ saved: false, code: 'hangs', localBackup: true });
    expect(await dumpOf(page)).not.toContain('ride-one');
    await page.evaluate(() => (window as unknown as { mend: () => void }).mend());
    expect(await saveIn(page, 'ride-two')).toEqual(SAVED);
    expect(await dumpOf(page)).toContain('ride-one');
    await close();
  });
});
