/**
 * The pages in a real browser: barriers found by axe in both themes, nothing wider than a narrow screen, nothing
 * too small for a thumb, and addresses that lead somewhere and back.
 */
import type { Page } from 'playwright-core';
import { describe, expect, it } from 'vitest';
import { barriers } from './barriers.ts';
import { stored } from './gamePage.ts';
import { siteForTests } from './siteForTests.ts';

const addresses = [
  '#start',
  '#children',
  '#levels',
  '#bike',
  '#progress',
  '#road',
  '#gearcheck',
  '#two',
  '#about',
];

const site = siteForTests();

async function chooseTheme(page: Page, theme: string): Promise<void> {
  await page.getByRole('button', { name: 'Settings' }).click();
  await page
    .locator('input[name=theme]')
    .nth(theme === 'field' ? 1 : 0)
    .check({ force: true });
  await page.keyboard.press('Escape');
  await expect.poll(() => page.locator('dialog').count()).toBe(0);
}

async function go(page: Page, address: string): Promise<void> {
  await page.evaluate((hash) => {
    location.hash = hash;
  }, address);
  await expect.poll(() => page.evaluate(() => document.body.dataset['view'])).toBe(address.slice(1));
  await expect.poll(() => page.locator('[data-coming]').count()).toBe(0);
}

describe('every page', () => {
  it('has no barriers that axe can find, in either theme, nor have its dialogs', async () => {
    const { page, problems, close } = await site.openPage({
      width: 1024,
      height: 768,
      context: { reducedMotion: 'reduce' },
    });
    for (const address of addresses) {
      await go(page, address);
      expect(await barriers(page)).toEqual([]);
    }
    await page.getByRole('button', { name: 'Settings' }).click();
    expect(await barriers(page)).toEqual([]);
    await page.keyboard.press('Escape');
    await go(page, '#start');
    await page.click('[data-ride-next]');
    expect(await barriers(page)).toEqual([]);
    expect(problems).toEqual([]);
    await close();
  });
});

describe.each(['indoor', 'field'])('the %s theme', (theme) => {
  it.each([320, 390])('fits %d px, with nothing smaller than 44 px to hit', async (width) => {
    const { page, close } = await site.openPage({ width, height: 700, touch: true });
    await chooseTheme(page, theme);
    for (const address of addresses) {
      await go(page, address);
      const found = await page.evaluate(() => ({
        tooWide: document.documentElement.scrollWidth - document.documentElement.clientWidth,
        tooSmall: [...document.querySelectorAll('button, a, label:not([for]), select, input[type=text]')]
          .filter((one) => {
            const { width: w, height: h } = one.getBoundingClientRect();
            return Math.min(w, h) < 44;
          })
          .map((one) => one.outerHTML.slice(0, 120)),
      }));
      expect(found).toEqual({ tooWide: 0, tooSmall: [] });
    }
    await close();
  });
});

describe('a device that asks for more contrast', () => {
  it('begins in the theme for sunlight', async () => {
    const { page, close } = await site.openPage({ width: 1024, height: 768, context: { contrast: 'more' } });
    await expect.poll(() => page.evaluate(() => document.documentElement.dataset['theme'])).toBe('field');
    await close();
  });
});

describe('the colours of the rider', () => {
  it('are still there at the next visit, and the rider is drawn in them', async () => {
    const { page, problems, close } = await site.openPage({ width: 1024, height: 768, address: '#bike' });
    const shown = (): Promise<number> =>
      page.locator('.kit-portrait').evaluate((canvas: HTMLCanvasElement) => {
        const { width, height } = canvas;
        const { data } = canvas.getContext('2d')?.getImageData(0, 0, width, height) ?? { data: [] };
        // Paper is laid at a slant, so a cloth's tone comes out a little mixed.
        const near = (i: number, tone: number): boolean => Math.abs((data[i] ?? 0) - tone) < 10;
        let violet = 0;
        for (let i = 0; i < data.length; i += 4)
          if (near(i, 0x6b) && near(i + 1, 0x47) && near(i + 2, 0xa6)) violet += 1;
        return violet;
      });
    const violet = page.locator('input[name=kit-jersey][value=violet]');
    expect(await shown()).toBe(0);
    await violet.check({ force: true });
    await expect.poll(shown, { timeout: 20_000 }).toBeGreaterThan(300);
    await expect.poll(async () => JSON.stringify(await stored(page, 'settings'))).toMatch(/"violet"/);
    await page.reload();
    await expect.poll(() => violet.isChecked(), { timeout: 20_000 }).toBe(true);
    await expect.poll(shown, { timeout: 20_000 }).toBeGreaterThan(300);
    expect(problems).toEqual([]);
    await close();
  });
});

describe('the address', () => {
  it('is followed also when the ride that is left changes in the same moment', async () => {
    const { page, problems, close } = await site.openPage({ width: 1024, height: 768 });
    await page.click('[data-ride-next]');
    await page.click('[data-accept]');
    await expect
      .poll(() => page.evaluate(() => document.body.dataset['rideState']), { timeout: 30_000 })
      .toMatch(/ready|riding/);
    await page.locator('canvas').first().waitFor();
    await page.evaluate(() => {
      location.hash = '#levels';
      // The window loses the keyboard: the ride pauses, before the browser has told of the new address.
      window.dispatchEvent(new Event('blur'));
    });
    await expect.poll(() => page.evaluate(() => document.body.dataset['view'])).toBe('levels');
    expect(problems).toEqual([]);
    await close();
  });

  it('leads back to where one was, and nowhere is the start', async () => {
    const { page, problems, close } = await site.openPage({ width: 1280, height: 720, address: '#nowhere' });
    const view = (): Promise<string | undefined> => page.evaluate(() => document.body.dataset['view']);
    expect(await view()).toBe('start');
    await page.getByRole('link', { name: /All levels/ }).click();
    await expect.poll(view).toBe('levels');
    await page.goBack();
    await expect.poll(view).toBe('start');
    expect(problems).toEqual([]);
    await close();
  });
});
