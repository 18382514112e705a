/**
 * The storage in a profile that stays on the disk, as a player's does: pages and browsers that die while writing,
 * and a disk that fills up. A ride that was called saved is there when the game is opened again.
 */
import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { type BrowserContext, chromium, type Page } from 'playwright-core';
import { afterAll, afterEach, beforeAll, beforeEach, describe, expect, it } from 'vitest';
import { between, seededRandom } from '../../src/core/math/random.ts';
import { buildStoragePage, dumpOf, idsIn, openIn, saveIn, type StoragePage } from '../storage/page.ts';
import { findChromium } from './chromium.ts';
import { type Server, serveFolder } from './server.ts';
import { browserArguments, onlyThisComputer } from './site.ts';

let built: StoragePage;
let site: Server;
let folder: string;
let context: BrowserContext;

beforeAll(async () => {
  built = await buildStoragePage();
  site = await serveFolder(built.folder);
});

afterAll(async () => {
  await site?.close();
  built?.remove();
});

beforeEach(async () => {
  folder = mkdtempSync(join(tmpdir(), 'storage-profile-'));
  context = await openProfile();
});

afterEach(async () => {
  await context.close();
  rmSync(folder, { recursive: true, force: true, maxRetries: 5 });
});

/** Opens the browser with the profile of the test. */
function openProfile(): Promise<BrowserContext> {
  return chromium.launchPersistentContext(folder, {
    executablePath: findChromium(),
    headless: true,
    args: [...browserArguments, onlyThisComputer()],
  });
}

/** Closes the browser and opens it again with the same profile. */
async function openAgain(): Promise<void> {
  await context.close();
  context = await openProfile();
}

/** Saves one ride after the other until the page dies; `reported` hears of each that was called saved. */
async function keepSaving(page: Page, prefix: string, reported: (id: string) => void): Promise<void> {
  await page.exposeFunction('reported', reported);
  await page.goto(site.url);
  await openIn(page);
  await page.evaluate((name) => {
    const { reported: tell } = window as unknown as { reported: (id: string) => void };
    const next = async (i: number): Promise<void> => {
      const id = `${name}-${i}`;
      const answer = await window.storage.saveRide(window.rideLike(id));
      if (answer.saved) tell(id);
      void next(i + 1);
    };
    void next(0);
  }, prefix);
}

/** What is in the profile: ids of whole readable rides, and what cannot be read. The copies do not count. */
async function lookInto(): Promise<{ whole: string[]; damaged: unknown }> {
  const page = await context.newPage();
  await page.goto(new URL('empty.html', site.url).href);
  await page.evaluate(async () => {
    localStorage.clear();
    await caches.delete('before-the-hill.second-copy');
  });
  await page.goto(site.url);
  await openIn(page);
  const found = await page.evaluate(async () => {
    const { storage } = window;
    const whole: string[] = [];
    for (const { id } of await storage.listRides()) if ((await storage.getRide(id)) !== null) whole.push(id);
    return { whole, damaged: storage.damaged };
  });
  await page.close();
  return found;
}

describe('dying in the middle of writing', () => {
  it.each([
    ['page', 'Page.crash', 20],
    ['browser', 'Browser.crash', 6],
  ] as const)('of the %s loses no ride that was called saved', async (_what, command, deaths) => {
    const random = seededRandom(deaths);
    const reported: string[] = [];
    for (let death = 0; death < deaths; death += 1) {
      const page = await context.newPage();
      const heard = reported.length;
      await keepSaving(page, `death-${death}`, (id) => reported.push(id));
      await expect.poll(() => reported.length, { interval: 5, timeout: 20_000 }).toBeGreaterThan(heard);
      await new Promise((resolve) => setTimeout(resolve, between(random, 0, 120)));
      const developer = await context.newCDPSession(page);
      const gone = new Promise((resolve) =>
        command === 'Page.crash' ? page.once('crash', resolve) : context.once('close', resolve),
      );
      // The dead do not answer.
      developer.send(command).catch(() => undefined);
      await gone;
      if (command === 'Browser.crash') context = await openProfile();
      else await page.close();
    }
    await openAgain();
    const { whole, damaged } = await lookInto();
    expect(damaged).toEqual([]);
    expect(reported.length).toBeGreaterThanOrEqual(deaths);
    expect(reported.filter((id) => !whole.includes(id))).toEqual([]);
  });
});

describe('a full disk', () => {
  it('is told, what did not fit stays in memory, and the next save that works keeps it too', async () => {
    const page = await context.newPage();
    await page.goto(new URL('empty.html', site.url).href);
    const developer = await context.newCDPSession(page);
    const { origin } = new URL(site.url);
    await developer.send('Storage.overrideQuotaForOrigin', { origin, quotaSize: 40_000 });
    await page.goto(site.url);
    expect(await openIn(page)).toEqual({ kind: 'kept', problem: null });
    const saved: string[] = [];
    const tooMuch: string[] = [];
    for (let i = 10; i < 60 && tooMuch.length < 3; i += 1) {
      const answer = await saveIn(page, `ride-${i}`);
      (answer.saved ? saved : tooMuch).push(`ride-${i}`);
      if (!answer.saved) expect(answer).toEqual({ saved: false, code: 'disk-full', localBackup: true });
    }
    expect(saved.length).toBeGreaterThan(0);
    expect(tooMuch).toHaveLength(3);
    expect(await page.evaluate(() => window.storage.health)).toEqual({
      kind: 'small-copy',
      problem: 'disk-full',
    });
    expect(await idsIn(page)).toEqual([...saved, ...tooMuch]);
    const full = await dumpOf(page);
    expect(saved.filter((id) => !full.includes(id))).toEqual([]);
    expect(tooMuch.filter((id) => full.includes(id))).toEqual([]);
    const report = await page.evaluate(() => {
      const rides = ['a', 'b'].map((id) => ({ ...window.rideLike(id), schema: 1, savedAtMs: 1 }));
      return window.storage.importAll({ schema: 1, rides }, { evenIfChanged: true });
    });
    expect(report).toMatchObject({ added: 0, unsaved: 2, problem: 'disk-full' });

    await developer.send('Storage.overrideQuotaForOrigin', { origin });
    expect(await saveIn(page, 'ride-last')).toEqual({ saved: true });
    expect(await page.evaluate(() => window.storage.health)).toEqual({ kind: 'kept', problem: null });
    await openAgain();
    const { whole } = await lookInto();
    expect(whole.sort()).toEqual(['a', 'b', ...saved, ...tooMuch, 'ride-last']);
  });
});
