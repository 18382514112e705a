/** Help on the road in a real ride: who sees it when, and units as people of a place read them. */
import { describe, expect, it } from 'vitest';
import { hud, rideState, setSpeed, view } from './gamePage.ts';
import { siteForTests } from './siteForTests.ts';

const SPEED = 6;

const site = siteForTests();

describe('somebody whose roads are signed in miles', () => {
  it('reads miles an hour, and km/h and metres stay readable for programs', async () => {
    const { page, problems, close } = await site.openPage({
      width: 640,
      height: 360,
      context: { locale: 'en-US' },
    });
    await setSpeed(page, SPEED);
    await page.click('[data-ride-next]');
    await page.click('[data-accept]');
    await expect.poll(() => hud(page, 'speed')).toMatch(/^[1-9]\d* km\/h$/);
    const seen = await page.locator('.hud-speed').textContent();
    expect(seen).toMatch(/^[1-9]\d* mph$/);
    expect(await hud(page, 'distance')).toMatch(/^\d+ m$/);
    expect(problems).toEqual([]);
    await close();
  });
});

describe('help on the road', () => {
  it('is there on the first level, gone in a check ride, and back where it is switched on', async () => {
    const { page, problems, close } = await site.openPage({ width: 640, height: 360 });
    await setSpeed(page, SPEED);
    await page.click('[data-ride-next]');
    await page.click('[data-accept]');
    await expect.poll(() => hud(page, 'next-step')).toMatch(/easier|harder|chainring/i);
    await expect.poll(() => page.locator('[data-live-mark]').count()).toBe(3);
    const shown = (): Promise<string[]> =>
      page.evaluate(() =>
        [...document.querySelectorAll<HTMLElement>('[data-aid]')]
          .filter((one) => !one.classList.contains('hud-off'))
          .map((one) => one.dataset['aid'] ?? ''),
      );
    expect(await shown()).toEqual(expect.arrayContaining(['nextStep', 'liveMarks', 'clickTrack']));
    await page.evaluate(() => {
      location.hash = '#ride/check-everyone-11';
    });
    await expect.poll(async () => (await shown()).toSorted()).toEqual(['cadence', 'cadence', 'gear']);
    // Off the road first, or the state of this ride would be taken for that of the next.
    await page.evaluate(() => {
      location.hash = '#levels';
    });
    await expect.poll(() => view(page)).toBe('levels');
    await page.evaluate(() => {
      location.hash = '#ride/only-you-and-the-road';
    });
    await expect.poll(() => rideState(page)).toBe('riding');
    expect(await shown()).not.toContain('liveMarks');
    await page.keyboard.press('Escape');
    await expect.poll(() => rideState(page)).toBe('paused');
    await page.getByRole('button', { name: 'Settings' }).click();
    await page.getByRole('checkbox', { name: 'Marks so far' }).check();
    await page.keyboard.press('Escape');
    await page.getByRole('button', { name: 'Ride on' }).click();
    await expect.poll(shown).toContain('liveMarks');
    expect(problems).toEqual([]);
    await close();
  });
});
