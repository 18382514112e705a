/** Session plans in a real browser: nothing stands in anybody's way, and every sheet is one page of A4 with nothing cut. */
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { languages } from '../../assets/words/carry.ts';
import { TEACH_AUDIENCES } from '../../src/core/group/sessionPlan.ts';
import { barriers } from './barriers.ts';
import type { OpenPage } from './site.ts';
import { siteForTests } from './siteForTests.ts';

const site = siteForTests();
let open: OpenPage;

beforeAll(async () => {
  open = await site.openPage({ width: 1024, height: 768, address: '#teach' });
});

afterAll(async () => {
  await open?.close();
});

/** The fullest: shorter sessions have the same parts with less in them. */
const SHEETS = [...TEACH_AUDIENCES.map((audience) => `${audience}-60`), 'cards', 'home', 'certificate'];

describe('session plans', () => {
  it('are reached from the first page and from the clinic, without barriers', async () => {
    const { page } = open;
    await page.goto(`${site.url}#start`);
    await page.click('a[href="#teach"]');
    await page.click('a[href="#teach/children-45"]');
    await page.locator('.teach-sheet').waitFor();
    expect(await barriers(page)).toEqual([]);
    await page.click('[data-change]');
    expect(await barriers(page)).toEqual([]);
    await page.goto(`${site.url}#clinic`);
    await page.click('[data-teach]');
    await page.locator('[data-open-plan]').waitFor();
    expect(await barriers(page)).toEqual([]);
    await page.setViewportSize({ width: 390, height: 844 });
    await page.goto(`${site.url}#teach/cards`);
    await page.locator('.teach-card').first().waitFor();
    expect(await barriers(page)).toEqual([]);
    expect(open.problems).toEqual([]);
  });

  it.each(languages())('print on one page each in %s, with nothing cut', async (language) => {
    // As wide as what is printed on a page: 210 mm without its margins.
    const { page, close } = await site.openPage({ width: 711, height: 1000, context: { locale: language } });
    for (const sheet of SHEETS) {
      await page.goto(`${site.url}#teach/${sheet}`);
      await page.locator('.teach-sheet').waitFor();
      expect(await page.locator('html').getAttribute('lang')).toBe(language);
      const pdf = (await page.pdf({ preferCSSPageSize: true })).toString('latin1');
      expect([sheet, pdf.match(/\/Type\s*\/Page\b(?!s)/g)?.length]).toEqual([sheet, 1]);
      await page.emulateMedia({ media: 'print' });
      const cut = await page.evaluate(() =>
        [...document.querySelectorAll<HTMLElement>('.teach-sheet, .teach-card')]
          .filter((one) => {
            const { paddingBottom } = getComputedStyle(one);
            const last = one.lastElementChild?.getBoundingClientRect().bottom ?? 0;
            return (
              one.scrollWidth > one.clientWidth + 2 ||
              last + parseFloat(paddingBottom) > one.getBoundingClientRect().bottom + 2
            );
          })
          .map((one) => one.className),
      );
      await page.emulateMedia({ media: null });
      expect([sheet, cut]).toEqual([sheet, []]);
    }
    await close();
  });
});
