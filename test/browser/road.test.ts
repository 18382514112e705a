/** "On the road" in a real browser: files in, numbers out, a pitch ridden again; and nothing of where or when is kept or sent. */
import { describe, expect, it } from 'vitest';
import { NAMED_HABITS } from '../../src/core/virtual/riders.ts';
import { madeRide, roadOfPitches } from '../core/recorded/made.ts';
import { barriers, misfits } from './barriers.ts';
import { gpx, hurry, rideToTheEnd } from './benchPage.ts';
import { stored } from './gamePage.ts';
import { siteForTests } from './siteForTests.ts';

/** Everything in the made files that says where, when or who. */
const PERSONAL = ['Sunday', 'lake', '47.0', '8.00', 'T09:', '09:3', '2026-05-17', '"lat"', '"lon"', 'trkpt'];

const site = siteForTests();

describe('recorded rides', () => {
  it('are looked at, kept as numbers only, and ridden again beside the marks of the game', async () => {
    const { page, problems, addresses, close } = await site.openPage({
      width: 1024,
      height: 768,
      address: '#road',
      context: { reducedMotion: 'reduce' },
    });
    const write = (habit: 'late' | 'early', seed: number): string =>
      madeRide(roadOfPitches(3, seed), 'trekking-3x8', 'adult-weekly', NAMED_HABITS[habit], seed).text;
    await hurry(page);
    await page.setInputFiles('[data-ride-files]', [
      gpx(write('late', 3), 'a.gpx'),
      gpx(write('early', 4), 'b.gpx'),
      gpx('<gpx', 'broken.gpx'),
    ]);
    await expect.poll(() => page.locator('[data-done="true"]').count(), { timeout: 90_000 }).toBe(3);
    expect(await page.locator('[data-brought="ride"]').count()).toBe(2);
    expect(await page.locator('[data-brought="refused"]').count()).toBe(1);
    expect(await page.locator('[data-brought="ride"] [data-pitch]').count()).toBe(6);
    expect(await page.locator('[data-brought="ride"] [data-best]').count()).toBe(6);
    expect(await stored(page, 'records')).toEqual([]);
    for (const button of await page.locator('[data-keep-ride]').all()) await button.click();
    await page.waitForSelector('[data-kept-rides="2"]');
    await page.locator('.road-kept summary').click();
    expect(await barriers(page)).toEqual([]);
    await page.setViewportSize({ width: 320, height: 700 });
    expect(await misfits(page)).toEqual({ tooWide: 0, tooSmall: [] });
    await page.setViewportSize({ width: 1024, height: 768 });
    await page.locator('[data-brought="ride"] [data-pitch] button').first().click();
    await page.locator('[data-accept]').click();
    await rideToTheEnd(page);
    await page.getByRole('link', { name: 'Beside your ride on the road' }).click();
    await page.waitForSelector('[data-kept-rides="2"]');
    await expect.poll(() => page.locator('.road-game').isVisible(), { timeout: 30_000 }).toBe(true);
    expect(await page.locator('.road-game').textContent()).toMatch(/In the game: foresight/);

    const everything = await page.evaluate(() => JSON.stringify({ ...localStorage, ...sessionStorage }));
    const kept = JSON.stringify(
      await Promise.all(['records', 'levels', 'rides', 'settings'].map((one) => stored(page, one))),
    );
    for (const word of PERSONAL) {
      expect([word, everything.includes(word)]).toEqual([word, false]);
      expect([word, kept.includes(word)]).toEqual([word, false]);
    }
    expect(
      addresses.filter((address) => !address.startsWith(site.url) && !/^(?:blob|data):/.test(address)),
    ).toEqual([]);
    await page.locator('[data-kept-ride] > button').first().click();
    await page.waitForSelector('[data-kept-rides="1"]');
    expect((await stored(page, 'records')).filter(({ kind }) => kind === 'road-ride').length).toBe(1);
    expect(problems).toEqual([]);
    await close();
  });
});
