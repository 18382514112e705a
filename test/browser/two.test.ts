/** Several riders on one device in a real browser: their own keys, pads and recordings, and the debrief of each. */
import { describe, expect, it } from 'vitest';
import { barriers } from './barriers.ts';
import { setSpeed, view } from './gamePage.ts';
import { siteForTests } from './siteForTests.ts';

const SPEED = 16;

const site = siteForTests();

describe('two at once', () => {
  it('each has keys and a ride of their own, a pause is for both, and both can be looked at', async () => {
    const { page, problems, close } = await site.openPage({ width: 1280, height: 720, address: '#two' });
    await setSpeed(page, SPEED);
    await page.locator('[data-ride-two]').waitFor();
    const [left, right] = [0, 1].map((seat) => page.locator(`[data-seat="${seat}"]`)) as [
      ReturnType<typeof page.locator>,
      ReturnType<typeof page.locator>,
    ];
    const go = await page.locator('[data-ride-two]').boundingBox();
    expect((go?.y ?? 720) + (go?.height ?? 1)).toBeLessThanOrEqual(720);
    for (const place of [0, 1]) await page.selectOption(`[name="bike-${place}"]`, 'kids-24-1x8');
    expect(await page.inputValue('[name="rider-0"]')).toBe('child-9');
    await page.selectOption('[name="rider-0"]', 'adult-new');
    expect(await page.inputValue('[name="rider-1"]')).toBe('child-9');
    await page.selectOption('[name="rider-0"]', 'child-9');
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
    await page.click('[data-look="1"]');
    await expect.poll(() => view(page)).toBe('debrief');
    await expect.poll(() => page.locator('main').textContent()).toMatch(/together with others/);
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
    await page.selectOption('[name="bike-0"]', 'kids-20-1x7');
    await page.selectOption('[name="bike-1"]', 'road-2x11');
    await page.locator('.two-road select').selectOption('one-pitch-announced');
    await page.click('[data-ride-two]');
    const [left, right] = [page.locator('[data-seat="0"]'), page.locator('[data-seat="1"]')];
    await expect.poll(() => left.getAttribute('data-phase')).toBe('riding');
    expect(await right.getAttribute('data-phase')).toBe('ready');
    expect(Number(await right.locator('.two-over strong').textContent())).toBeGreaterThan(3);
    expect(problems).toEqual([]);
    await close();
  });

  it.each([
    [1024, 768, 'beside'],
    [768, 1024, 'beside'],
    [1024, 768, 'facing'],
    [768, 1024, 'facing'],
  ] as const)(
    'on a tablet of %d × %d, %s, each half has pads of its own, and nothing that is read lies under them',
    async (width, height, way) => {
      const { page, problems, close } = await site.openPage({ width, height, touch: true, address: '#two' });
      await page.locator('[data-ride-two]').waitFor();
      await page.locator(`[name="two-way"][value="${way}"]`).click();
      for (const place of [0, 1]) await page.selectOption(`[name="bike-${place}"]`, 'road-2x11');
      await page.click('[data-ride-two]');
      const half = (seat: number) => page.locator(`[data-seat="${seat}"]`);
      for (const side of [0, 1])
        await expect.poll(() => half(side).getAttribute('data-phase')).toBe('riding');
      const gear = (seat: number) => half(seat).locator('[data-hud="gear"]').textContent();
      const first = await gear(1);
      await half(0).locator('[data-pad="rear-easier"]').tap();
      await expect.poll(() => gear(0)).not.toBe(first);
      expect(await gear(1)).toBe(first);
      // Whoever sits across the table pushes what is upper for them.
      const upper = half(0).locator('[data-half="press"]');
      const box = await upper.boundingBox();
      const across = await half(0).locator('[data-half="ease"]').boundingBox();
      expect((box?.y ?? 0) > (across?.y ?? 0)).toBe(way === 'facing');
      await page.mouse.move((box?.x ?? 0) + 20, (box?.y ?? 0) + (box?.height ?? 0) / 2);
      await page.mouse.down();
      await expect.poll(() => half(0).locator('[data-pad="legs"]').getAttribute('data-asks')).toBe('press');
      await page.mouse.up();
      for (const side of [0, 1]) {
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
      // The road of both shows how far each has come.
      const share = (seat: number): Promise<number> =>
        page
          .locator(`[data-mark="${seat}"]`)
          .evaluate((mark) => Number((mark as HTMLElement).style.getPropertyValue('--share')));
      for (const seat of [0, 1]) await expect.poll(() => share(seat)).toBeGreaterThan(0.01);
      expect(problems).toEqual([]);
      await close();
    },
  );

  it('a relay changes at the gate: one recording each, on a leg of their own, and an average of all', async () => {
    const { page, problems, close } = await site.openPage({
      width: 390,
      height: 844,
      touch: true,
      address: '#two',
    });
    await setSpeed(page, SPEED);
    await page.locator('[data-ride-two]').waitFor();
    // A phone has no room for two at once.
    expect(await page.inputValue('[name="two-way"]:checked')).toBe('relay');
    await page.locator('.two-road select').selectOption('one-pitch-announced');
    expect(await page.isDisabled('[data-ride-two]')).toBe(true);
    await page.locator('.two-road select').selectOption('three-little-hills');
    await page.locator('[name="two-count"][value="3"]').click();
    expect(await barriers(page)).toEqual([]);
    await page.click('[data-ride-two]');
    for (const next of ['Second', 'Third']) {
      await expect.poll(() => page.locator('h1').textContent()).toBe(`${next} rider`);
      await page.locator('[data-gate-ride]').tap();
    }
    await expect.poll(() => page.locator('[data-together]').count()).toBe(1);
    const totals = (await page.locator('[data-total]').allTextContents()).map((text) =>
      Number.parseInt(text, 10),
    );
    expect(totals).toHaveLength(3);
    const average = Math.round(totals.reduce((sum, one) => sum + one, 0) / 3);
    expect(await page.locator('[data-together]').textContent()).toContain(`${average} of 100`);
    await page.click('[data-look="1"]');
    await expect.poll(() => page.locator('main').textContent()).toMatch(/leg 2 of 3/);
    expect(problems).toEqual([]);
    await close();
  });
});
