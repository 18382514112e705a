/**
 * Five tablets and a coach in a real browser, each with a profile of its own, the same clock and the same
 * nicknames: results go back by code, link and file, in random order, twice, some cut off, some with a wrong byte.
 */
import { readFileSync } from 'node:fs';
import type { Page } from 'playwright-core';
import { describe, expect, it } from 'vitest';
import { type RideRecord, sealRecord } from '../../src/core/group/records/record.ts';
import { canonicalJson } from '../../src/core/math/hash.ts';
import { madeUpRecord, planWith, realRecord } from '../core/group/rides.ts';
import { shuffled } from '../features/handover/given.ts';
import {
  buildHandoverPage,
  giveFiles,
  openDevice,
  paste,
  photograph,
  ready,
  rideOn,
} from './handover/page.ts';
import type { OpenPage } from './site.ts';
import { siteForTests } from './siteForTests.ts';

const site = siteForTests(buildHandoverPage);

const PLAN = planWith();
const NAMES = ['red-fox', 'blue-owl', '~Zoë'];
const RIDES = 6;

/** Rides of one tablet; those of all tablets differ in nothing but where they were ridden. */
function ridesOf(deviceId: string): RideRecord[] {
  return Array.from({ length: RIDES }, (_, i) =>
    madeUpRecord({ deviceId, seq: i + 1, nickname: NAMES[i % 3] ?? '', attempt: 1 + Math.floor(i / 3) }),
  );
}

const collected = (page: Page) => page.evaluate(() => window.lab.collected());
const bare = (records: readonly RideRecord[]): string[] =>
  records.map((record) => canonicalJson({ ...record, recording: null })).sort();
const asFile = (text: string | Buffer, name = 'rides.jsonl', mimeType = 'text/plain') => ({
  name,
  mimeType,
  buffer: Buffer.from(text),
});
const told = (page: Page): Promise<string> => page.locator('.reader-told').innerText();

/** The file a tablet offers. */
async function fileOf(page: Page): Promise<string> {
  const [download] = await Promise.all([page.waitForEvent('download'), page.click('[data-save-file]')]);
  return readFileSync(await download.path(), 'utf8');
}

/** Pictures of all codes of a tablet, each spoilt in another way. */
async function picturesOf(page: Page): Promise<Buffer[]> {
  const count = Number(await page.getAttribute('.code-show', 'data-codes'));
  const pictures: Buffer[] = [];
  for (let i = 0; i < count; i += 1) {
    if (count > 1) await page.click(`.code-numbers button:nth-child(${i + 1})`);
    pictures.push(await photograph(page, { angleDeg: 9 * i - 14, blurPx: 1.2, shade: 0.5 }));
  }
  return pictures;
}

describe('five tablets and a coach', () => {
  it('the union is exactly right, every bad piece is named, nothing good is lost, nobody else is contacted', async () => {
    const names = ['t1', 't2', 't3', 't4', 't5'];
    const real = realRecord({ deviceId: 't5', seq: 1, nickname: 'red-fox', attempt: 1 }, 0.6);
    const false1 = realRecord({ deviceId: 't5', seq: 2, nickname: 'blue-owl', attempt: 1 }, 0.5);
    const claimed = sealRecord({ ...false1, total: 99.9 });
    const rides = new Map(names.map((name) => [name, ridesOf(name)]));
    rides.set('t5', [real, claimed, ...ridesOf('t5').slice(2)]);
    const devices: OpenPage[] = [];
    for (const name of names) {
      const device = await openDevice(site, '#tablet');
      await rideOn(device.page, PLAN, name, rides.get(name) ?? []);
      await device.page.waitForSelector('svg.code');
      devices.push(device);
    }
    const pages = devices.map(({ page }) => page) as [Page, Page, Page, Page, Page];
    const coach = await openDevice(site, '#collect');
    await rideOn(coach.page, PLAN, 'coach', []);

    const links = await Promise.all(pages.map((page) => page.inputValue('[data-link]')));
    const files = [];
    for (const page of pages) files.push(await fileOf(page));
    const [, , third = '', fourth = '', fifth = ''] = files;

    // Bad ones first: cut off in the middle, one wrong byte, half a link.
    const cut = third.slice(0, third.indexOf('\n', third.length / 2) + 200);
    const wrong = Buffer.from(fourth);
    const at = fourth.indexOf('"total"', fourth.indexOf('"seq":3')) + 9;
    wrong[at] = (wrong[at] ?? 0) ^ 1;
    await giveFiles(coach.page, [asFile(cut), asFile(wrong)]);
    await paste(coach.page, (links[1] ?? '').slice(0, -60));
    expect(await told(coach.page)).toContain('damaged');
    await coach.page.waitForSelector('[data-tablet="t3"] [data-missing]:not([data-missing="0"])');
    await coach.page.waitForSelector('[data-damaged="checksum"]');
    expect(await coach.page.locator('[data-damaged="not-json"]').first().innerText()).toMatch(
      /Tablet t3, ride \d/,
    );
    expect(await coach.page.locator('[data-damaged="checksum"]').innerText()).toMatch(/^Tablet t4, ride 3/);

    // Then everything, in random order, twice: codes of the first, links and files of the others.
    const pictures = await picturesOf(pages[0]);
    const ways = [
      ...pictures.map((png) => () => giveFiles(coach.page, [asFile(png, 'code.png', 'image/png')])),
      ...[1, 2, 3].map((i) => () => paste(coach.page, links[i] ?? '')),
      () => giveFiles(coach.page, [asFile(fourth), asFile(fifth)]),
    ];
    for (const way of shuffled([...ways, ...ways], 11)) await way();

    await coach.page.waitForSelector('[data-checked="1"]');
    const all = [...rides.values()].flat();
    const { set, toCheck } = await collected(coach.page);
    expect(bare(set.records)).toEqual(bare(all));
    expect(toCheck).toBe(0);
    for (const name of names) {
      expect(await coach.page.locator(`[data-tablet="${name}"] td`).first().innerText()).toContain(
        String(RIDES),
      );
      expect(await coach.page.getAttribute(`[data-tablet="${name}"] [data-missing]`, 'data-missing')).toBe(
        '0',
      );
    }
    // A good copy has taken the place of every piece that could be named; the false claim is kept, and set apart.
    expect(await coach.page.locator('[data-damaged]').count()).toBe(0);
    expect(await coach.page.locator('[data-apart="other-marks"]').innerText()).toMatch(
      /^Tablet t5, ride 2, blue-owl/,
    );
    expect(await coach.page.locator('[data-apart]').count()).toBe(1);

    await coach.page.reload();
    await ready(coach.page);
    expect(bare((await collected(coach.page)).set.records)).toEqual(bare(all));
    for (const { addresses, problems } of [...devices, coach]) {
      expect(problems).toEqual([]);
      for (const address of addresses) expect(address).toMatch(/^(http:\/\/127\.0\.0\.1:|data:|blob:)/);
    }
    for (const device of [...devices, coach]) await device.close();
  });
});
