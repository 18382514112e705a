/**
 * Somebody who has never been here: how many taps to a ride, how many to their own bike, and whether a page can be
 * left and everything on it reached with the keyboard alone.
 */
import type { Page } from 'playwright-core';
import { describe, expect, it } from 'vitest';
import { rideState, view } from './gamePage.ts';
import { siteForTests } from './siteForTests.ts';

const site = siteForTests();

/** Counts every tap a script makes. */
function thumb(page: Page): {
  readonly taps: () => number;
  readonly tap: (selector: string) => Promise<void>;
} {
  let taps = 0;
  return {
    taps: () => taps,
    async tap(selector) {
      taps += 1;
      await page.tap(selector);
    },
  };
}

describe('somebody new', () => {
  it('rides within two taps', async () => {
    const { page, problems, close } = await site.openPage({ width: 390, height: 844, touch: true });
    const { taps, tap } = thumb(page);
    await tap('[data-ride-next]');
    await tap('[data-accept]');
    await expect.poll(() => rideState(page)).toMatch(/ready|riding/);
    expect(taps()).toBeLessThanOrEqual(2);
    expect(problems).toEqual([]);
    await close();
  });

  it('rides an own bike of 1 × 7 gears within six taps, and the road shows its gears', async () => {
    const { page, problems, close } = await site.openPage({ width: 390, height: 844, touch: true });
    const { taps, tap } = thumb(page);
    await tap('a[href="#bike"]');
    await tap('label:has(input[value="kids-20-1x7"])');
    await tap('label:has(input[value="own"])');
    await tap('.own-bike input[type=text] >> nth=0');
    // Typing is not tapping; the next field is a tab away.
    await page.keyboard.press('Control+A');
    await page.keyboard.type('36');
    await tap('[data-ride-this]');
    await tap('[data-accept]');
    await expect.poll(() => page.locator('[data-hud="gear"]').textContent()).toMatch(/^36\s×\s\d\d$/);
    expect(taps()).toBeLessThanOrEqual(6);
    expect(problems).toEqual([]);
    await close();
  });
});

/** Tabs through a page from its top; answers with what had the focus and whether it could be seen to have it. */
async function walk(page: Page): Promise<{ readonly stops: string[]; readonly unseen: string[] }> {
  await page.evaluate(() => {
    const active = document.activeElement;
    if (active instanceof HTMLElement) active.blur();
    window.scrollTo(0, 0);
  });
  const stops: string[] = [];
  const unseen: string[] = [];
  for (let i = 0; i < 200; i += 1) {
    await page.keyboard.press('Tab');
    const stop = await page.evaluate(() => {
      const active = document.activeElement;
      if (!(active instanceof HTMLElement) || active === document.body) return null;
      const marked = active.closest('label') ?? active;
      const seen = [active, marked, ...marked.querySelectorAll('*')].some((one) => {
        const style = getComputedStyle(one);
        return style.outlineStyle !== 'none' && Number.parseFloat(style.outlineWidth) > 0;
      });
      const { top, bottom } = marked.getBoundingClientRect();
      const inView = bottom > 0 && top < window.innerHeight;
      active.dataset['walked'] ??= String(Math.random());
      return { id: active.dataset['walked'], html: active.outerHTML.slice(0, 100), good: seen && inView };
    });
    if (stop === null || stops.includes(stop.id)) break;
    stops.push(stop.id);
    if (!stop.good) unseen.push(stop.html);
  }
  return { stops, unseen };
}

describe('with the keyboard alone', () => {
  it.each(['start', 'levels', 'children', 'bike', 'progress', 'gearcheck', 'two', 'about'])(
    'everything on %s is reached, the focus is seen, and there is a way out',
    async (name) => {
      const { page, problems, close } = await site.openPage({
        width: 1024,
        height: 768,
        address: `#${name}`,
        context: { reducedMotion: 'reduce' },
      });
      await expect.poll(() => page.locator('[data-coming]').count(), { timeout: 30_000 }).toBe(0);
      // Other parts come in one by one, and a list that grows under the walker cannot be counted.
      if (name === 'gearcheck') await page.getByRole('button', { name: /^Show all/ }).waitFor();
      let before = '';
      const isStill = async (): Promise<boolean> => {
        const now = await page.locator('main').innerHTML();
        const same = now === before;
        before = now;
        return same;
      };
      await expect.poll(isStill, { interval: 500, timeout: 30_000 }).toBe(true);
      const { stops, unseen } = await walk(page);
      expect(unseen).toEqual([]);
      // A row of radio buttons is one stop; everything else is one each.
      const wanted = await page.evaluate(() => {
        const found = [
          ...document.querySelectorAll<HTMLElement>(
            'a[href], button, input, select, summary, [tabindex="0"]',
          ),
        ];
        const usable = found.filter((one) => !one.matches(':disabled') && one.checkVisibility());
        const single = usable.filter((one) => !(one instanceof HTMLInputElement && one.type === 'radio'));
        const rows = new Set(
          usable
            .filter((one) => one instanceof HTMLInputElement && one.type === 'radio')
            .map((one) => (one as HTMLInputElement).name),
        );
        return single.length + rows.size;
      });
      expect(stops.length).toBeGreaterThanOrEqual(wanted);
      if (name !== 'start') {
        await page.locator('a[href="#start"]').first().focus();
        await page.keyboard.press('Enter');
        await expect.poll(() => view(page)).toBe('start');
      }
      expect(problems).toEqual([]);
      await close();
    },
  );
});
