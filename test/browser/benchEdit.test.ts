/**
 * Making a level by hand in a real browser: with keys alone, with a mouse, as text, tried and taken back; titles that
 * mean harm, and barriers in both themes.
 */
import type { Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { barriers, misfits } from './barriers.ts';
import { gpx, hurry, rideText } from './benchPage.ts';
import { go, stored, text, view } from './gamePage.ts';
import type { OpenPage } from './site.ts';
import { siteForTests } from './siteForTests.ts';

const site = siteForTests();

describe('the bench', () => {
  let open: OpenPage;
  let page: Page;
  const pieces = (): Promise<string[]> => page.locator('ol.things > li .thing-head').allTextContents();

  beforeAll(async () => {
    open = await site.openPage({ width: 1280, height: 720, address: '#bench' });
    page = open.page;
    await hurry(page);
  });

  afterAll(async () => {
    await open?.close();
  });

  it('is used without a mouse: a piece added, dragged by keys, taken back, saved', async () => {
    await page.focus('[data-new]');
    await page.keyboard.press('Enter');
    await page.waitForSelector('[data-profile]');
    await page.focus('[data-add="pitch"]');
    await page.keyboard.press('Enter');
    expect((await pieces()).at(-1)).toMatch(/Pitch.*60 m, 8/);
    const handle = page.getByRole('slider', { name: 'Length' });
    await handle.focus();
    for (let times = 0; times < 3; times += 1) await page.keyboard.press('ArrowRight');
    await page.getByRole('slider', { name: 'Gradient' }).focus();
    await page.keyboard.press('ArrowUp');
    await expect.poll(async () => (await pieces()).at(-1)).toMatch(/75 m, 8\.5/);
    await page.focus('[data-undo]');
    await page.keyboard.press('Enter');
    await expect.poll(async () => (await pieces()).at(-1)).toMatch(/75 m, 8 %/);
    await page.keyboard.press('Enter');
    await expect.poll(async () => (await pieces()).at(-1)).toMatch(/60 m, 8 %/);
    await page.keyboard.press('Enter');
    await expect.poll(async () => (await pieces()).length).toBe(3);
    await page.focus('[data-redo]');
    await page.keyboard.press('Enter');
    await expect.poll(async () => (await pieces()).length).toBe(4);
    await page.focus('[data-save]');
    await page.keyboard.press('Enter');
    await page.waitForSelector('[data-keep-state="saved"]');
  });

  it('is used with a mouse: a handle dragged is one step back', async () => {
    await page.locator('[data-thing="pieces[1]"] .thing-head').click();
    await page.getByRole('slider', { name: 'Length' }).scrollIntoViewIfNeeded();
    const box = await page.getByRole('slider', { name: 'Length' }).boundingBox();
    if (box === null) throw new Error('the handle is there');
    const [x, y] = [box.x + box.width / 2, box.y + box.height / 2];
    await page.mouse.move(x, y);
    await page.mouse.down();
    await page.mouse.move(x + 100, y, { steps: 8 });
    await page.mouse.up();
    const dragged = Number.parseInt(/(\d+) m/.exec((await pieces())[1] ?? '')?.[1] ?? '', 10);
    expect(dragged).toBeGreaterThan(100);
    await page.click('[data-undo]');
    await expect.poll(async () => (await pieces())[1]).toMatch(/80 m/);
  });

  it('shows the best ride and what it would feel like, for a chosen bike and rider', async () => {
    await page.selectOption('[data-bench-bike]', 'kids-20-1x7');
    await page.selectOption('[data-bench-rider]', 'child-9');
    await page.waitForSelector('[data-reference="done"]', { timeout: 60_000 });
    expect(await text(page, '[data-reference] .facts')).toMatch(/Hardest pitch.*Lowest cadence.*Shifts/);
  });

  it('warns of a wall and leads to it', async () => {
    await page.fill('[data-thing="pieces[1]"] [data-field="slope"]', '18');
    await page.locator('[data-thing="pieces[1]"] .thing-head').click();
    const finding = page.locator('[data-finding^="cannot"]').first();
    expect(await finding.textContent()).toMatch(/This rider.*18 %/);
    await finding.getByRole('button').click();
    await page.waitForSelector('[data-thing="pieces[1]"] [data-field="lengthM"]:focus');
  });

  it('is the text beside it, both ways, with faults on their line', async () => {
    await page.locator('[data-json] summary').click();
    const box = page.getByLabel('The level as JSON');
    const good = await box.inputValue();
    await box.fill(good.replace('"slopeRatio": 0.18', '"slopeRatio": 0.06'));
    await expect.poll(async () => (await pieces())[1]).toMatch(/6 %/);
    await box.fill(good.replace('"slopeRatio": 0.18', '"slopeRatio": 18'));
    const line = good.slice(0, good.indexOf('"slopeRatio": 0.18')).split('\n').length;
    await page.waitForSelector(`[data-json-problem="${line}"]`);
    expect((await pieces())[1]).toMatch(/6 %/);
    await page.fill('[data-thing="pieces[1]"] [data-field="lengthM"]', '90');
    await expect.poll(() => box.inputValue()).toContain('"lengthM": 90, "slopeRatio": 0.06');
  });

  it('lets a place be tried and leads back to the same level', async () => {
    await page.fill('[data-field="try-from"]', '150');
    await page.click('[data-try]');
    await page.click('[data-accept]');
    await expect.poll(() => view(page), { timeout: 90_000, interval: 100 }).toBe('debrief');
    await page.getByRole('link', { name: 'Back to the level bench' }).click();
    await page.waitForSelector('[data-profile]');
    expect((await pieces())[1]).toMatch(/90 m, 6 %/);
    expect(await stored(page, 'rides')).toEqual([]);
  });

  it('shows a title that means harm as text, everywhere', async () => {
    const title = '"><img src=x onerror="document.body.id=\'bad\'"><b>';
    await page.fill('[data-level-title]', title);
    await page.click('[data-save]');
    await page.waitForSelector('[data-keep-state="saved"]');
    for (const hash of ['#bench', '#levels']) {
      await go(page, hash);
      await expect.poll(() => page.getByText(title).count()).toBeGreaterThan(0);
    }
    expect(await page.evaluate(() => document.body.id)).toBe('');
    expect(await page.locator('main img').count()).toBe(0);
  });

  it('duplicates and deletes, and brings back what was deleted', async () => {
    await go(page, '#bench');
    await page.click('[data-own="duplicate"]');
    await expect.poll(() => page.locator('[data-own-level]').count()).toBe(2);
    await page.locator('[data-own="remove"]').first().click();
    await expect.poll(() => page.locator('[data-own-level]').count()).toBe(1);
    await page.click('[data-undo-remove]');
    await expect.poll(() => page.locator('[data-own-level]').count()).toBe(2);
    expect(open.problems).toEqual([]);
  });
});

describe('the bench', () => {
  it('has no barriers that axe can find in either theme, fits 320 px, and nothing is too small to hit', async () => {
    const open = await site.openPage({
      width: 1024,
      height: 768,
      address: '#bench',
      context: { reducedMotion: 'reduce' },
    });
    const { page } = open;
    const look = async (): Promise<void> => {
      await page.setViewportSize({ width: 1024, height: 768 });
      expect(await barriers(page)).toEqual([]);
      await page.setViewportSize({ width: 320, height: 700 });
      expect(await misfits(page)).toEqual({ tooWide: 0, tooSmall: [] });
    };
    await page.waitForSelector('[data-new]');
    await look();
    await page.click('[data-new]');
    for (const add of ['rollers', 'stopLinesM', 'winds', 'surfaces', 'hidden', 'cues'])
      await page.click(`[data-add="${add}"]`);
    await page.waitForSelector('[data-reference="done"]', { timeout: 60_000 });
    for (const panel of await page.locator('details > summary').all()) await panel.click();
    await look();
    await go(page, '#bench/road');
    await page.setInputFiles('[data-gpx]', gpx(rideText));
    await page.waitForSelector('[data-stretch]');
    await look();
    expect(open.problems).toEqual([]);
    await open.close();
  });
});

describe('a level that is not saved', () => {
  it('is there again after the page was loaded anew, until it is saved', async () => {
    const { page, problems, close } = await site.openPage({ width: 1280, height: 720, address: '#bench' });
    const unfinished = async (): Promise<unknown[]> =>
      (await stored(page, 'records')).filter(({ kind }) => kind === 'unfinished-level');
    const title = (): Promise<string> => page.inputValue('[data-level-title]');
    await page.click('[data-new]');
    await page.fill('[data-level-title]', 'Half a road');
    await page.click('[data-add="pitch"]');
    // The title may be kept before the pitch is.
    const keptNow = async (): Promise<readonly unknown[]> => {
      const [record] = (await unfinished()) as { data: { title: string; pieces: unknown[] } }[];
      return [record?.data.title, record?.data.pieces.length];
    };
    await expect.poll(keptNow).toEqual(['Half a road', 4]);
    await page.reload();
    await page.waitForSelector('[data-level-title]');
    expect(await title()).toBe('Half a road');
    expect(await page.locator('ol.things > li .thing-head').count()).toBe(4);
    await go(page, '#bench');
    await page.waitForSelector('[data-unsaved]');
    await go(page, '#bench/edit');
    await page.click('[data-save]');
    await page.waitForSelector('[data-keep-state="saved"]');
    await expect.poll(unfinished).toEqual([]);
    await page.reload();
    await page.waitForSelector('[data-own-level]');
    expect(await page.locator('[data-unsaved]').count()).toBe(0);
    // One that is not wanted any more is asked about once, and does not come back.
    await go(page, '#bench');
    await page.click('[data-new]');
    await expect.poll(async () => (await unfinished()).length).toBe(1);
    await go(page, '#bench');
    await page.click('[data-drop]');
    await page.click('[data-drop-changes]');
    await expect.poll(unfinished).toEqual([]);
    expect(await page.locator('[data-unsaved]').count()).toBe(0);
    expect(problems).toEqual([]);
    await close();
  });
});
