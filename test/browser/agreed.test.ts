/**
 * What leaves a device and what comes back to it, in a real browser: a copy with the address of a store nobody here
 * agreed to sends nothing to anybody on any page, also after a reload and a ride of a group; and what was deleted in
 * one tab is not brought back by another.
 */
import type { Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import type { RideRecord } from '../../src/core/group/records/record.ts';
import { hashJson } from '../../src/core/math/hash.ts';
import type { ExportFile } from '../../src/storage/types.ts';
import { sample, without } from '../storage/given.ts';
import { handOn, hurry, keptIn, putShortLevel, startTurn } from './clinicVisit.ts';
import type { OpenPage } from './site.ts';
import { siteForTests } from './siteForTests.ts';

const STRANGER = { url: 'https://stranger.example', database: 'rides', name: 'a', password: 'b' };
const site = siteForTests();

/** Opens another page of the game in the same document. */
async function go(page: Page, hash: string): Promise<void> {
  await page.evaluate((to) => {
    location.hash = to;
  }, hash);
  await page.waitForFunction(() => document.querySelector('h1') !== null);
}

/** A copy as this game saves it, with one record more. */
function copyFromStranger(): string {
  const whole = sample('export') as ExportFile;
  const record = { kind: 'clinic-store', id: 'one', schema: 1, savedAtMs: 9e12, data: STRANGER };
  const rest = { ...without(whole, 'checksum'), records: [...whole.records, record] };
  return JSON.stringify({ ...rest, checksum: hashJson(rest) });
}

const takeBack = (page: Page, text: string): Promise<void> =>
  page.setInputFiles('[data-take-back]', {
    name: 'before-the-hill.everything.json',
    mimeType: 'application/json',
    buffer: Buffer.from(text),
  });

describe('a copy with the address of a stranger', () => {
  let open: OpenPage;
  let page: Page;

  beforeAll(async () => {
    open = await site.openPage({ width: 1024, height: 768, address: '#about' });
    ({ page } = open);
    await hurry(page, 40);
    await page.reload();
    await page.locator('[data-take-back]').waitFor();
    await putShortLevel(page);
    await takeBack(page, copyFromStranger());
    await page.locator('.kept-told[data-told="true"]').waitFor();
  });

  afterAll(() => open?.close());

  it('is named and not taken over', async () => {
    expect(await page.locator('.kept-told').textContent()).toContain('stranger.example');
    await go(page, '#clinic/store');
    expect(await page.locator('[data-store-offered="file"]').textContent()).toContain('stranger.example');
    expect(await page.inputValue('[name="password"]')).toBe('');
    expect(await keptIn(page, 'clinic-store')).toEqual([]);
  });

  it('sends nothing to anybody: after a reload, a ride of a group, handing back, collecting, on every page', async () => {
    await page.goto(`${site.url}#clinic`);
    await page.reload();
    await page.click('[data-new-plan]');
    await page.fill('input[name="title"]', 'A windy evening');
    await page.click('[data-ride="own short-and-steep"]');
    await page.click('[data-save-go]');
    await page.click('[data-go]');
    await startTurn(page);
    await handOn(page);
    const [record] = (await keptIn<RideRecord>(page, 'clinic-record')).filter(({ seq }) => seq === 1);
    const session = `#clinic/${encodeURIComponent(`s/${record?.planId ?? ''}`)}`;
    for (const tab of ['', '/picture', '/report', '/tablets', '/out', '/back', '/collect'])
      await go(page, session + encodeURIComponent(tab));
    for (const hash of [
      '#start',
      '#levels',
      '#progress',
      '#bench',
      '#about',
      '#help',
      '#join',
      '#clinic',
      '#clinic/store',
    ])
      await go(page, hash);
    await page.evaluate(() => window.dispatchEvent(new Event('online')));
    await go(page, session);
    const { host } = new URL(site.url);
    const elsewhere = open.addresses.filter(
      (address) => /^(https?|wss?):/.test(address) && new URL(address).host !== host,
    );
    expect(elsewhere).toEqual([]);
    expect(open.problems).toEqual([]);
  });
});

describe('what was deleted in one tab', () => {
  it('is not brought back by another, which shows nothing of it either', async () => {
    const {
      page: first,
      context,
      close,
    } = await site.openPage({ width: 900, height: 700, address: '#about' });
    await first.locator('[data-take-back]').waitFor();
    await takeBack(first, JSON.stringify(sample('export')));
    await first.locator('.kept-told[data-told="true"]').waitFor();
    const second = await context.newPage();
    await second.goto(`${site.url}#about`);
    await second.getByText('3 rides are kept').waitFor();
    await first.click('[data-delete-everything]');
    await first.click('[data-delete-sure]');
    await expect
      .poll(() => first.locator('.kept-told').textContent())
      .toBe('Everything of this game is deleted from this device.');
    await second.getByText('No ride is kept yet').waitFor();
    await go(second, '#levels');
    await second.close({ runBeforeUnload: true });
    await first.bringToFront();
    expect(await kept(first)).toEqual([]);
    expect(await first.evaluate(() => Object.keys(localStorage))).toEqual([]);
    await close();
  });
});

/** Everything in the browser's own database, by store. */
const kept = (page: Page): Promise<string[]> =>
  page.evaluate(
    () =>
      new Promise<string[]>((resolve, reject) => {
        const request = indexedDB.open('before-the-hill');
        request.onerror = () => reject(request.error);
        request.onsuccess = () => {
          const names = [...request.result.objectStoreNames];
          if (names.length === 0) return resolve([]);
          const found: string[] = [];
          const work = request.result.transaction(names);
          for (const name of names) {
            const all = work.objectStore(name).getAllKeys();
            all.onsuccess = () => found.push(...all.result.map((key) => `${name} ${JSON.stringify(key)}`));
          }
          work.oncomplete = () => {
            request.result.close();
            resolve(found);
          };
        };
      }),
  );
