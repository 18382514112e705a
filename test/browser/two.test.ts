/** Two riders at once in a real browser: their own keys, their own recordings, and the debrief of each. */
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { barriers } from './barriers.ts';
import type { Site } from './site.ts';
import { openSite } from './site.ts';

const SPEED = 16;

let site: Site;

beforeAll(async () => {
  site = await openSite();
});

afterAll(async () => {
  await site?.close();
});

describe('two at once', () => {
  it('each has keys and a ride of their own, a pause is for both, and both can be looked at', async () => {
    const { page, problems, close } = await site.openPage({ width: 1280, height: 720, address: '#two' });
    await page.evaluate((value) => Object.assign(window, { __rideTestSpeed: value }), SPEED);
    await page.locator('[data-ride-two]').waitFor();
    const [left, right] = ['left', 'right'].map((side) => page.locator(`[data-side="${side}"]`)) as [
      ReturnType<typeof page.locator>,
      ReturnType<typeof page.locator>,
    ];
    const go = await page.locator('[data-ride-two]').boundingBox();
    expect((go?.y ?? 720) + (go?.height ?? 1)).toBeLessThanOrEqual(720);
    for (const side of ['left', 'right']) await page.selectOption(`[name="${side}-bike"]`, 'kids-24-1x8');
    expect(await page.inputValue('[name="left-rider"]')).toBe('child-9');
    await page.selectOption('[name="left-rider"]', 'adult-new');
    expect(await page.inputValue('[name="right-rider"]')).toBe('child-9');
    await page.selectOption('[name="left-rider"]', 'child-9');
    expect(await barriers(page)).toEqual([]);
    await page.locator('.two-road select').selectOption('click-before-the-hill');
    await page.click('[data-ride-two]');
    const phase = (side: typeof left): Promise<string | null> => side.getAttribute('data-phase');
    const gear = (side: typeof left): Promise<string | null> =>
      side.locator('[data-hud="gear"]').textContent();
    await expect.poll(() => phase(left)).toBe('riding');
    await expect.poll(() => phase(right)).toBe('riding');
    const first = await gear(left);
    expect(await gear(right)).toBe(first);
    await page.keyboard.press('ArrowDown');
    await expect.poll(() => gear(right)).not.toBe(first);
    expect(await gear(left)).toBe(first);
    await page.keyboard.press('Escape');
    await expect.poll(() => phase(left)).toBe('paused');
    expect(await phase(right)).toBe('paused');
    await page.click('[data-ride-on]');
    await expect.poll(() => phase(right)).toBe('riding');
    await page.keyboard.press('KeyS');
    await expect.poll(() => gear(left)).not.toBe(first);
    await expect.poll(() => page.locator('[data-total]').count()).toBe(2);
    // A second ride of the series: the better one of each rider's own is named.
    expect(await page.locator('[data-best]').count()).toBe(0);
    await page.click('[data-again-two]');
    await expect.poll(() => page.locator('[data-best]').count()).toBe(2);
    expect(await page.locator('[data-best]').first().textContent()).toMatch(/^Best of 2 rides: \d+/);
    await page.click('[data-look="right"]');
    await expect.poll(() => page.evaluate(() => document.body.dataset['view'])).toBe('debrief');
    await expect.poll(() => page.locator('main').textContent()).toMatch(/two at once/);
    // Nothing of two riders is counted among the rides of whoever owns this device.
    await page.evaluate(() => {
      location.hash = '#progress';
    });
    await expect.poll(() => page.locator('main').textContent()).toMatch(/No ride is kept here yet/);
    expect(problems).toEqual([]);
    await close();
  });

  it('whoever’s best ride takes longer starts first', async () => {
    const { page, problems, close } = await site.openPage({ width: 1280, height: 720, address: '#two' });
    await page.locator('[data-ride-two]').waitFor();
    await page.selectOption('[name="left-bike"]', 'kids-20-1x7');
    await page.selectOption('[name="right-bike"]', 'road-2x11');
    await page.locator('.two-road select').selectOption('one-pitch-announced');
    await page.click('[data-ride-two]');
    const [left, right] = [page.locator('[data-side="left"]'), page.locator('[data-side="right"]')];
    await expect.poll(() => left.getAttribute('data-phase')).toBe('riding');
    expect(await right.getAttribute('data-phase')).toBe('ready');
    expect(Number(await right.locator('.two-over').textContent())).toBeGreaterThan(3);
    expect(problems).toEqual([]);
    await close();
  });

  it.each([
    [1024, 768],
    [768, 1024],
  ])(
    'on a tablet of %d × %d each half has pads of its own, and nothing that is read lies under them',
    async (width, height) => {
      const { page, problems, close } = await site.openPage({ width, height, touch: true, address: '#two' });
      await page.locator('[data-ride-two]').waitFor();
      for (const side of ['left', 'right']) await page.selectOption(`[name="${side}-bike"]`, 'road-2x11');
      await page.click('[data-ride-two]');
      const half = (side: string) => page.locator(`[data-side="${side}"]`);
      for (const side of ['left', 'right'])
        await expect.poll(() => half(side).getAttribute('data-phase')).toBe('riding');
      const gear = (side: string) => half(side).locator('[data-hud="gear"]').textContent();
      const first = await gear('left');
      await half('right').locator('[data-pad="rear-easier"]').tap();
      await expect.poll(() => gear('right')).not.toBe(first);
      expect(await gear('left')).toBe(first);
      for (const side of ['left', 'right']) {
        const pads = await half(side)
          .locator('[data-pad]:not([data-pad="pause"])')
          .evaluateAll((all) => all.map((one) => one.getBoundingClientRect().toJSON() as DOMRect));
        expect(Math.min(...pads.flatMap((pad) => [pad.width, pad.height]))).toBeGreaterThanOrEqual(64);
        for (const name of ['gear', 'cadence', 'speed']) {
          const box = await half(side).locator(`[data-hud="${name}"]`).boundingBox();
          expect(box).not.toBeNull();
          const under = pads.filter(
            (pad) =>
              box !== null &&
              pad.left < box.x + box.width &&
              pad.right > box.x &&
              pad.top < box.y + box.height &&
              pad.bottom > box.y,
          );
          expect([name, under]).toEqual([name, []]);
        }
      }
      expect(problems).toEqual([]);
      await close();
    },
  );
});
