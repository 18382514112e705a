/**
 * The level bench in a real browser, as a helper uses it who has never seen it: a recorded road becomes a level, is
 * ridden, shared by link, and ridden on another device as the very same road. Also files that are no road.
 */
import { readFileSync } from 'node:fs';
import type { Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { gpxText, northward, trackText } from '../core/gpx/files.ts';
import { gpx, hurry, PERSONAL, points, rideText, rideToTheEnd } from './benchPage.ts';
import { go, stored, text } from './gamePage.ts';
import type { OpenPage } from './site.ts';
import { siteForTests } from './siteForTests.ts';

const site = siteForTests();

describe('a new helper with a recorded ride', () => {
  let first: OpenPage;
  let second: OpenPage;
  let page: Page;
  let link = '';
  let hash: unknown;

  beforeAll(async () => {
    // Requests are counted here, and the worker that keeps the site for later makes many of its own.
    first = await site.openPage({ width: 1280, height: 720 });
    page = first.page;
    await hurry(page);
  });

  afterAll(async () => {
    await first?.close();
    await second?.close();
  });

  it('finds the bench on the first page and makes a level of a stretch, without any request', async () => {
    await page.getByRole('link', { name: /Level bench/ }).click();
    await page.click('[data-road-way]');
    await page.waitForSelector('[data-gpx]', { state: 'attached' });
    await page.waitForLoadState('networkidle');
    await expect.poll(() => first.addresses.some((address) => /work\.worker-/.test(address))).toBe(true);
    const before = first.addresses.length;
    await page.setInputFiles('[data-gpx]', gpx(rideText));
    await page.waitForSelector('[data-stretch]');
    expect(first.addresses.slice(before)).toEqual([]);
    expect(await text(page, '[data-road-facts]')).toMatch(/6\.0 km/);
    expect(await text(page, '[data-grade]')).toMatch(/^Good/);
    expect(await page.inputValue('[data-field="stretch-toM"]')).not.toBe('');
    await page.fill('[data-field="stretch-fromM"]', '1000');
    await page.fill('[data-field="stretch-toM"]', '1300');
    expect(await text(page, '[data-chosen]')).toMatch(/0\.3 km/);
    await page.click('[data-save-road]');
    expect(await text(page, '.save-road .told')).toMatch(/title/);
    await page.fill('[data-title]', 'Sunday, the bit by the mill');
    await page.click('[data-save-road]');
    await page.waitForSelector('[data-keep-state="saved"]');
    expect(first.addresses.slice(before).filter((address) => !/\/(assets|icons)\//.test(address))).toEqual(
      [],
    );
  });

  it('has kept heights and distances only', async () => {
    const [kept] = await stored(page, 'levels');
    const level = JSON.stringify(kept?.['level']);
    expect(level).toContain('heightsM');
    const words = level.replace(/"title":"[^"]*"|"heightsM":\[[^\]]*\]/g, '');
    expect(PERSONAL.filter((value) => words.includes(value))).toEqual([]);
    const places = points.slice(1).map(({ lat }) => `${lat}`);
    expect(places.filter((value) => level.includes(value))).toEqual([]);
    expect(await stored(page, 'records')).toEqual([]);
  });

  it('sees what was ridden beside the best ride, and keeps it only when asked', async () => {
    await expect.poll(() => page.locator('[data-compare-sentence]').count()).toBe(1);
    expect(await text(page, '[data-compare-sentence]')).toMatch(/you rode this at 71 a minute.*\d+\s×\s\d+/);
    await page.click('[data-keep-recorded]');
    await expect.poll(async () => (await stored(page, 'records')).length).toBe(1);
    await page.click('[data-forget-recorded]');
    await expect.poll(async () => (await stored(page, 'records')).length).toBe(0);
    expect(await page.locator('[data-compare]').count()).toBe(0);
  });

  it('shares it by link, code and file', async () => {
    await page.locator('[data-share] summary').click();
    await expect.poll(() => page.inputValue('[data-link]')).toMatch(/#bench\/level\./);
    link = await page.inputValue('[data-link]');
    expect(await page.locator('.level-code').count()).toBe(1);
    const download = page.waitForEvent('download');
    await page.click('[data-download]');
    const file = readFileSync(await (await download).path(), 'utf8');
    expect(JSON.parse(file)).toEqual((await stored(page, 'levels'))[0]?.['level']);
  });

  it('rides it from the Levels page', async () => {
    await go(page, '#levels');
    await page.getByRole('link', { name: /the bit by the mill/ }).click();
    await page.click('[data-accept]');
    hash = await rideToTheEnd(page);
    expect(hash).toMatch(/^[0-9a-f]{16}$/);
  });

  it('somebody else sees what it is before it is kept, keeps it, and rides the very same road', async () => {
    second = await site.openPage({ width: 1024, height: 768 });
    const other = second.page;
    await other.goto(link);
    await other.reload();
    await hurry(other);
    await other.waitForSelector('[data-opened="level"]');
    expect(await text(other, '[data-opened] h2')).toBe('Sunday, the bit by the mill');
    expect(await text(other, '[data-opened] .facts')).toContain(`${String(hash)}`);
    expect(await stored(other, 'levels')).toEqual([]);
    await other.click('[data-keep]');
    await other.waitForSelector('[data-keep-state="saved"]');
    await go(other, '#levels');
    await other.getByRole('link', { name: /the bit by the mill/ }).click();
    await other.click('[data-accept]');
    expect(await rideToTheEnd(other)).toBe(hash);
  });

  it('opening the link again says so, and a copy never overwrites', async () => {
    const other = second.page;
    await go(other, new URL(link).hash);
    await other.waitForSelector('[data-already]');
    await other.click('[data-keep]');
    await expect.poll(async () => (await stored(other, 'levels')).length).toBe(2);
    expect([...first.problems, ...second.problems]).toEqual([]);
  });
});

describe('the import', () => {
  let open: OpenPage;
  let page: Page;

  beforeAll(async () => {
    open = await site.openPage({ width: 1024, height: 768, address: '#bench/road' });
    page = open.page;
    await page.waitForSelector('[data-gpx]', { state: 'attached' });
  });

  afterAll(async () => {
    await open?.close();
  });

  const awkward: readonly (readonly [name: string, file: string, code: string])[] = [
    ['an empty file', '', 'empty'],
    ['a page that asks to sign in', '<!DOCTYPE html><html><body>Sign in</body></html>', 'not-gpx'],
    ['a file with a document type', '<!DOCTYPE gpx [<!ENTITY a "b">]><gpx></gpx>', 'doctype'],
    ['the first lines of a file', rideText.slice(0, 900), 'truncated'],
    ['places only', gpxText('<wpt lat="46" lon="10"/>'), 'only-waypoints'],
    ['JSON', '{"type":"FeatureCollection"}', 'not-xml'],
    ['eighty metres', gpxText(trackText(points.slice(0, 9))), 'too-short'],
    ['a ride without heights', gpxText(trackText(northward(101, 10, () => undefined))), 'no-elevation'],
  ];

  it.each(awkward)('says in a sentence what is wrong with %s', async (_, file, code) => {
    await page.setInputFiles('[data-gpx]', gpx(file));
    await page.waitForSelector(`[data-problem="${code}"]`);
    expect(await text(page, '[data-problem]')).toMatch(/^[A-Z][^.]{10,}\./);
    expect(await page.locator('[data-stretch]').count()).toBe(0);
  });

  it('takes what is there of half a file, and says so', async () => {
    await page.setInputFiles('[data-gpx]', gpx(rideText.slice(0, rideText.length / 2)));
    await page.waitForSelector('[data-stretch]');
    expect(await text(page, '[data-road]')).toMatch(/The file is damaged at line \d+/);
  });

  it('asks about holes and goes by the answer', async () => {
    const holed = [...points.slice(0, 200), ...points.slice(260)];
    await page.setInputFiles('[data-gpx]', gpx(gpxText(trackText(holed))));
    await page.waitForSelector('[data-questions]');
    expect(await text(page, '[data-road-facts]')).toMatch(/6\.0 km/);
    await page.getByLabel('take only the longest part without a hole').check({ force: true });
    await expect.poll(() => text(page, '[data-road-facts]')).toMatch(/3\.4 km/);
  });

  it('shows how far it is with a very long file, and stops when told to', async () => {
    const data = await page.evaluateHandle(() => {
      let track = '';
      for (let i = 0; i < 250_000; i += 1)
        track += `<trkpt lat="${(46 + i / 111_143).toFixed(7)}" lon="10"><ele>${300 + (i % 90) / 10}</ele></trkpt>`;
      const transfer = new DataTransfer();
      transfer.items.add(new File([`<gpx><trk><trkseg>${track}</trkseg></trk></gpx>`], 'long.gpx'));
      return transfer;
    });
    await page.dispatchEvent('[data-drop]', 'drop', { dataTransfer: data });
    await page.waitForSelector('[data-road="reading"] progress');
    await page.click('[data-cancel]');
    await page.waitForSelector('[data-road="cancelled"]');
    expect(await page.locator('[data-stretch]').count()).toBe(0);
  });

  it('takes a file that is dropped', async () => {
    const data = await page.evaluateHandle((content) => {
      const transfer = new DataTransfer();
      transfer.items.add(new File([content], 'ride.gpx'));
      return transfer;
    }, rideText);
    await page.dispatchEvent('[data-drop]', 'drop', { dataTransfer: data });
    await page.waitForSelector('[data-stretch]');
    expect(open.problems).toEqual([]);
  });
});
