/**
 * A badly ridden level and its debrief in a real browser: guess, three sentences, the late shift found in the
 * strip by keyboard alone, watched again, printed on one page, and still there after a reload.
 */
import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import type { Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { barriers } from './barriers.ts';
import { distanceM, rideState, setSpeed, stored, text, view } from './gamePage.ts';
import type { OpenPage } from './site.ts';
import { siteForTests } from './siteForTests.ts';

/** Ride time over real time: while the hands do something, and where nothing is left to do. */
const SPEED = 6;
const FAST = 20;
/** Drawn quickly; pages are looked at on a larger one. */
const SMALL = { width: 640, height: 360 };
const LARGE = { width: 1280, height: 720 };
/** Well after the foot of the pitch at 280 m: the legs have slowed by then. */
const LATE_M = 300;

const site = siteForTests();
let open: OpenPage;
let page: Page;

/** Rides to the debrief, shifting only when it is too late. */
async function rideBadly(): Promise<void> {
  await expect.poll(() => distanceM(page)).toBeGreaterThan(LATE_M / 2);
  await setSpeed(page, SPEED);
  await expect.poll(() => distanceM(page)).toBeGreaterThan(LATE_M);
  for (let i = 0; i < 3; i += 1) {
    await page.keyboard.press('ArrowDown');
    await page.waitForTimeout(150);
  }
  await setSpeed(page, FAST);
  await expect.poll(() => view(page)).toBe('debrief');
  await page.setViewportSize(LARGE);
}

beforeAll(async () => {
  open = await site.openPage({ ...SMALL, address: '#ride/one-pitch-announced' });
  page = open.page;
  await setSpeed(page, FAST);
  await page.click('[data-accept]');
});

afterAll(async () => {
  await open?.close();
});

describe('the debrief of a ride that shifted too late', () => {
  it('asks before it tells', async () => {
    await rideBadly();
    await expect.poll(() => page.locator('[data-guess]').count()).toBe(4);
    expect(await barriers(page)).toEqual([]);
    expect(await page.locator('[data-mark]').count()).toBe(0);
    expect(await page.locator('[data-pitch]').count()).toBe(0);
    await page.focus('[data-guess="too-late"]');
    await page.keyboard.press('Enter');
    await expect.poll(() => page.locator('[data-mark]').count()).toBe(5);
    expect(await text(page, '[data-debrief="answer"]')).toMatch(/too late/i);
  });

  it('has no barriers that axe can find, in either theme', async () => {
    expect(await barriers(page)).toEqual([]);
  });

  it('says what went well, the one thing to change, and what to ride next', async () => {
    // The one thing to change is read at once; the rest is a tap away.
    expect(await text(page, '.end-card [data-debrief="change"]')).toMatch(/pitch/);
    expect(await page.locator('.end-card [data-ride-again]').isVisible()).toBe(true);
    expect(await page.locator('.strip-card').isVisible()).toBe(false);
    await page.click('[data-explain] > summary');
    for (const name of ['well', 'next'])
      expect((await text(page, `[data-explain] [data-debrief="${name}"]`)).length).toBeGreaterThan(15);
    expect(
      Number.parseInt(await text(page, '[data-mark="foresight"]').then((t) => /\d+/.exec(t)?.[0] ?? ''), 10),
    ).toBeLessThan(60);
  });

  it('shows the late shift to somebody who has only a keyboard', async () => {
    const slider = page.locator('[role="slider"], input[type="range"]').first();
    await slider.focus();
    let found = '';
    for (let jumps = 0; jumps < 12 && found === ''; jumps += 1) {
      await page.keyboard.press('n');
      const at = Number.parseInt((await slider.getAttribute('aria-valuetext')) ?? '', 10);
      // The page is painted seldom, and what is read follows the handle.
      await expect.poll(() => text(page, '.strip-readout')).toContain(`At ${at} m`);
      const read = await text(page, '.strip-readout');
      if (at >= LATE_M && at < 361) found = read;
    }
    expect(found).toMatch(/\d+\s×\s\d+/);
    const place = await slider.inputValue();
    await page.keyboard.press('ArrowRight');
    await expect.poll(() => slider.inputValue()).not.toBe(place);
    // A tenth of a second further may read the same, two seconds do not.
    for (let i = 0; i < 20; i += 1) await page.keyboard.press('ArrowRight');
    await expect.poll(() => text(page, '.strip-readout')).not.toBe(found);
  });

  it('keeps the ride and says so only when it is kept', async () => {
    await expect.poll(() => page.locator('[data-saved="saved"]').count()).toBe(1);
  });

  it('prints on one page', async () => {
    const folder = mkdtempSync(join(tmpdir(), 'debrief-'));
    try {
      const file = join(folder, 'debrief.pdf');
      writeFileSync(file, await page.pdf({ format: 'A4' }));
      // Every page of a PDF is an object of its own, and the tree says how many there are.
      const pdf = readFileSync(file, 'latin1');
      expect(pdf.match(/\/Type\s*\/Page\b(?!s)/g)).toHaveLength(1);
      expect(pdf).toMatch(/\/Count 1\b/);
    } finally {
      rmSync(folder, { recursive: true, force: true });
    }
  });

  it('can be watched again from the pitch, and leads back to the same debrief', async () => {
    await setSpeed(page, SPEED);
    await page.locator('[data-pitch="0"]').getByRole('button').first().click();
    await expect.poll(() => rideState(page)).toBe('riding');
    await expect.poll(() => distanceM(page)).toBeGreaterThan(200);
    const before = await text(page, '[data-hud="gear"]');
    // Watching is watching: keys do not change the ride.
    await page.keyboard.press('ArrowUp');
    await page.waitForTimeout(200);
    expect(before).toMatch(/\d+\s×\s\d+/);
    expect(await text(page, '.ride-watching')).toBe('Your ride, once more.');
    await page.keyboard.press('Escape');
    expect(await text(page, '[data-ride-on]')).toBe('Watch on');
    await page.click('[data-ride-on]');
    await setSpeed(page, FAST);
    await expect.poll(() => view(page)).toBe('debrief');
    expect(await page.locator('[data-mark]').count()).toBe(5);
  });

  it('is counted once and still known after a reload', async () => {
    await page.goto(`${site.url}#levels`);
    await page.reload();
    await expect.poll(() => page.locator('main').textContent()).toMatch(/Best: \d+ of 100/);
    expect(await stored(page, 'rides')).toHaveLength(1);
  });

  it('can be saved as a file, deleted with everything, and taken back, twice as once', async () => {
    await page.goto(`${site.url}#about`);
    const download = page.waitForEvent('download');
    await page.click('[data-save-everything]');
    const file = await (await download).path();
    await page.click('[data-delete-everything]');
    await page.click('[data-delete-sure]');
    await expect.poll(() => text(page, '.kept-told')).toMatch(/deleted/);
    for (let times = 0; times < 2; times += 1) {
      await page.setInputFiles('[data-take-back]', file);
      await expect
        .poll(() => text(page, '.kept-told'))
        .toMatch(times === 0 ? /[1-9]\d* taken back/ : /^0 taken back/);
      expect(await stored(page, 'rides')).toHaveLength(1);
    }
  });

  it('asked no other host and met no error', () => {
    expect(open.problems).toEqual([]);
  });
});
