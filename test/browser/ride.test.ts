/**
 * A level ridden to its end in a real browser: with real keys, and with real fingers on an upright phone. Looks
 * only at what anybody could look at: instruments, buttons, the page's marks, the network and the console.
 */
import type { CDPSession, Page } from 'playwright-core';
import { describe, expect, it } from 'vitest';
import { barriers } from './barriers.ts';
import { distanceM, hud, rideState, setSpeed, view } from './gamePage.ts';
import type { OpenPage } from './site.ts';
import { siteForTests } from './siteForTests.ts';

/** Ride time over real time once the hands have done their work; a kilometre then takes about ten seconds. */
const SPEED = 20;
/** Drawn quickly, where nothing hangs on what is beside what. */
const SMALL = { width: 640, height: 360 };

const site = siteForTests();

const loadedEngine = (open: OpenPage): boolean => open.addresses.some((address) => /phaser/i.test(address));

/** What the instruments say until the ride is over, every text once. */
async function watchToTheEnd(page: Page): Promise<Record<string, Set<string>>> {
  const seen: Record<string, Set<string>> = {
    cadence: new Set(),
    speed: new Set(),
    distance: new Set(),
    cue: new Set(),
  };
  for (;;) {
    const now = await page.evaluate(() => ({
      view: document.body.dataset['view'],
      texts: [...document.querySelectorAll<HTMLElement>('[data-hud]')].map((one) => [
        one.dataset['hud'] ?? '',
        one.textContent ?? '',
      ]),
    }));
    if (now.view !== 'ride') return seen;
    for (const [name, text] of now.texts) seen[name as string]?.add(text as string);
    await page.waitForTimeout(60);
  }
}

describe('the start page', () => {
  it('lives without the engine, which comes with the first ride', async () => {
    // Without the copy for journeys without a network, which fetches everything in the background.
    const open = await site.openPage(SMALL);
    const { page } = open;
    await page.getByRole('button', { name: /Ride/ }).waitFor();
    await page.waitForLoadState('networkidle');
    expect(loadedEngine(open)).toBe(false);
    expect(open.addresses.filter((address) => /\.(webm|mp3)/.test(address))).toEqual([]);
    await page.click('[data-ride-next]');
    await page.click('[data-accept]');
    await expect.poll(() => rideState(page)).toBe('riding');
    expect(loadedEngine(open)).toBe(true);
    expect(open.problems).toEqual([]);
    await open.close();
  });
});

describe('a ride with keys', () => {
  it('goes from the start page to the debrief without a mouse', async () => {
    const open = await site.openPage(SMALL);
    const { page } = open;
    await page.focus('[data-ride-next]');
    await page.keyboard.press('Enter');
    await page.locator('[data-accept]').waitFor();
    await page.keyboard.press('Enter');
    await expect.poll(() => rideState(page)).toBe('riding');

    const gear = await hud(page, 'gear');
    expect(gear).toMatch(/^\d+\s×\s\d+$/);
    await page.keyboard.press('ArrowDown');
    await expect.poll(() => hud(page, 'gear')).not.toBe(gear);
    await page.keyboard.press('ArrowUp');
    await expect.poll(() => hud(page, 'gear')).toBe(gear);
    await page.keyboard.down('Space');
    await expect.poll(() => hud(page, 'pressure')).toBe('ease');
    await page.keyboard.up('Space');
    await expect.poll(() => hud(page, 'pressure')).toBe('steady');
    await page.keyboard.press('KeyS');
    await expect.poll(async () => (await hud(page, 'gear')).split(/\s/)[0]).not.toBe(gear.split(/\s/)[0]);
    await page.keyboard.press('KeyW');

    await setSpeed(page, SPEED);
    const seen = await watchToTheEnd(page);
    expect(seen['cadence']?.size).toBeGreaterThan(5);
    expect(seen['speed']?.size).toBeGreaterThan(3);
    expect(seen['distance']?.size).toBeGreaterThan(20);
    expect(seen['cue']?.size).toBeGreaterThan(1);
    expect([await view(page), await rideState(page)]).toEqual(['debrief', 'finished']);
    expect(await page.locator('canvas').count()).toBe(0);
    expect(open.problems).toEqual([]);
    await open.close();
  });

  it('stops when the window loses the keyboard, holds still, and goes on at a push of the button', async () => {
    const open = await site.openPage({ width: 1024, height: 768 });
    const { page } = open;
    await setSpeed(page, 2);
    await page.click('[data-ride-next]');
    await page.click('[data-accept]');
    await expect.poll(() => rideState(page)).toBe('riding');
    await expect.poll(() => distanceM(page)).toBeGreaterThan(5);
    expect(await barriers(page)).toEqual([]);
    expect(await rideState(page)).toBe('riding');
    await page.keyboard.down('Space');
    await page.evaluate(() => window.dispatchEvent(new Event('blur')));
    expect(await rideState(page)).toBe('paused');
    await page.keyboard.up('Space');
    const distance = await hud(page, 'distance');
    await page.waitForTimeout(700);
    expect(await hud(page, 'distance')).toBe(distance);
    expect(await barriers(page)).toEqual([]);
    await page.click('[data-ride-on]');
    await expect.poll(() => page.locator('[data-countdown]').count()).toBe(1);
    await expect.poll(() => hud(page, 'distance')).not.toBe(distance);
    expect(await hud(page, 'pressure')).toBe('steady');
    await page.keyboard.press('Escape');
    await expect.poll(() => rideState(page)).toBe('paused');
    await page.keyboard.press('KeyP');
    await expect.poll(() => rideState(page)).toBe('riding');
    expect(open.problems).toEqual([]);
    await open.close();
  });
});

/** Fingers as the browser's own input knows them; several can be down at once. */
function fingers(cdp: CDPSession) {
  const down = new Map<number, { x: number; y: number }>();
  const touchPoints = () => [...down].map(([id, { x, y }]) => ({ id, x, y }));
  return {
    async put(id: number, at: { x: number; y: number }) {
      const type = down.has(id) ? 'touchMove' : 'touchStart';
      down.set(id, at);
      await cdp.send('Input.dispatchTouchEvent', { type, touchPoints: touchPoints() });
    },
    async lift(id: number) {
      down.delete(id);
      await cdp.send('Input.dispatchTouchEvent', { type: 'touchEnd', touchPoints: touchPoints() });
    },
  };
}

async function placeOn(page: Page, pad: string, share: number): Promise<{ x: number; y: number }> {
  const box = await page.locator(`[data-pad="${pad}"]`).boundingBox();
  if (box === null) throw new Error(`the pad ${pad} is not on the screen`);
  return { x: box.x + box.width / 2, y: box.y + box.height * share };
}

describe('a ride with thumbs on an upright phone', () => {
  it('shifts with taps, eases and shifts at once with two fingers, and arrives', async () => {
    const open = await site.openPage({ width: 390, height: 844, touch: true });
    const { page } = open;
    await page.tap('[data-ride-next]');
    await page.tap('[data-accept]');
    await expect.poll(() => rideState(page)).toBe('riding');
    const gear = await hud(page, 'gear');
    await page.tap('[data-pad="rear-easier"]');
    await expect.poll(() => hud(page, 'gear')).not.toBe(gear);

    const hand = fingers(await open.context.newCDPSession(page));
    const easier = await hud(page, 'gear');
    await hand.put(1, await placeOn(page, 'legs', 0.8));
    await expect.poll(() => hud(page, 'pressure')).toBe('ease');
    await hand.put(2, await placeOn(page, 'rear-harder', 0.5));
    await expect.poll(() => hud(page, 'gear')).not.toBe(easier);
    expect(await hud(page, 'pressure')).toBe('ease');
    await hand.lift(2);
    await hand.put(1, await placeOn(page, 'legs', 0.2));
    await expect.poll(() => hud(page, 'pressure')).toBe('press');
    await hand.lift(1);
    await expect.poll(() => hud(page, 'pressure')).toBe('steady');

    await setSpeed(page, SPEED);
    const seen = await watchToTheEnd(page);
    expect(seen['distance']?.size).toBeGreaterThan(20);
    expect(await view(page)).toBe('debrief');
    await page.locator('[data-guess], [data-end]:not([data-end="open"])').first().waitFor();
    if ((await page.locator('[data-guess]').count()) > 0) await page.tap('[data-guess="about-right"]');
    await expect.poll(() => page.locator('[data-mark]').count()).toBe(5);
    expect(await page.locator('.strip-card [data-track="shifts"] [data-shift]').count()).toBeGreaterThan(0);
    // Those who ride along the second time are named, for the first seconds.
    await setSpeed(page, 1);
    await page.tap('[data-ride-again]');
    await expect.poll(() => rideState(page)).toBe('riding');
    const named = () => page.locator('.hud-beside li:visible').allTextContents();
    await expect.poll(named).toEqual(['best ride', 'your last ride']);
    await setSpeed(page, SPEED);
    await expect.poll(named).toEqual([]);
    await page.tap('[data-pad="pause"]');
    await expect.poll(() => rideState(page)).toBe('paused');
    expect(open.problems).toEqual([]);
    await open.close();
  });

  it.each([
    [390, 844],
    [320, 640],
    [844, 390],
    [1024, 768],
  ])(
    'at %d × %d every pad is on the screen, 64 px or more, and none covers another',
    async (width, height) => {
      const open = await site.openPage({ width, height, touch: true });
      const { page } = open;
      await page.tap('[data-ride-next]');
      await page.tap('[data-accept]');
      await expect.poll(() => page.locator('[data-pad]').count()).toBe(7);
      const boxes = await page.locator('[data-pad]').evaluateAll((pads) =>
        pads.map((pad) => {
          const { left, top, right, bottom } = pad.getBoundingClientRect();
          return { left, top, right, bottom };
        }),
      );
      for (const [i, a] of boxes.entries()) {
        expect(Math.min(a.right - a.left, a.bottom - a.top)).toBeGreaterThanOrEqual(64);
        expect([a.left >= 0, a.top >= 0, a.right <= width, a.bottom <= height]).toEqual([
          true,
          true,
          true,
          true,
        ]);
        for (const b of boxes.slice(i + 1)) {
          expect(a.left < b.right && b.left < a.right && a.top < b.bottom && b.top < a.bottom).toBe(false);
        }
      }
      await open.close();
    },
  );
});
