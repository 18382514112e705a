/**
 * What stands in somebody's way on a page, found by axe, and what is too wide or too small: the same questions for
 * every page and in both themes. What a page should hold is the business of its tests.
 */
import { readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import type { Page } from 'playwright-core';

const axeSource = readFileSync(createRequire(import.meta.url).resolve('axe-core/axe.min.js'), 'utf8');
const THEMES = ['indoor', 'field'] as const;

interface Axe {
  run(): Promise<{ violations: { id: string; nodes: { html: string; failureSummary: string }[] }[] }>;
}

/** What axe finds in the theme that is on, in words that name the element. */
async function findings(page: Page): Promise<string[]> {
  return page.evaluate(async () => {
    const { axe } = window as unknown as { axe: Axe };
    const { violations } = await axe.run();
    return violations.flatMap(({ id, nodes }) =>
      nodes.map(({ html, failureSummary }) => `${id}: ${html.slice(0, 160)} ${failureSummary}`),
    );
  });
}

/** What axe finds on the page as it is, in either theme; movement that ends is waited for. */
export async function barriers(page: Page): Promise<string[]> {
  await page.waitForFunction(() =>
    document
      .getAnimations()
      .every(
        ({ playState, effect }) =>
          playState === 'finished' || effect?.getTiming().iterations === Number.POSITIVE_INFINITY,
      ),
  );
  await page.evaluate(axeSource);
  const chosen = await page.evaluate(() => document.documentElement.dataset['theme']);
  const found: string[] = [];
  for (const theme of THEMES) {
    await page.evaluate((name) => {
      document.documentElement.dataset['theme'] = name;
    }, theme);
    found.push(...(await findings(page)).map((one) => `${theme}: ${one}`));
  }
  await page.evaluate((name) => {
    document.documentElement.dataset['theme'] = name ?? '';
  }, chosen);
  return found;
}

/** How much wider than the screen the page is, and what a thumb would miss. */
export function misfits(page: Page): Promise<{ tooWide: number; tooSmall: string[] }> {
  return page.evaluate(() => ({
    tooWide: document.documentElement.scrollWidth - document.documentElement.clientWidth,
    tooSmall: [...document.querySelectorAll('button, a, label:not(:has(+ .number-box)), input, select')]
      .filter((one) => {
        const { width, height } = one.getBoundingClientRect();
        return width > 0 && Math.min(width, height) < 44 && one.closest('label')?.matches('.tick') !== true;
      })
      .map((one) => one.outerHTML.slice(0, 120)),
  }));
}
