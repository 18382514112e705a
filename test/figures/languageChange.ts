/**
 * Prints how long a change of the language takes on a processor four times as slow, from the choice to the first picture
 * in the other language: from the settings over the start page, and over a ride that is paused. Every language is chosen
 * twice, since its words are fetched the first time. `npx tsx test/figures/languageChange.ts [folder of the built site]`
 */
import type { Page } from 'playwright-core';
import { languages } from '../../assets/words/carry.ts';
import { builtSiteFolder, openSite } from '../browser/site.ts';

const SLOWDOWN = 4;
const CHOICE = '[name="language"]';

/** From the choice to the picture that shows it (ms). */
const change = (page: Page, language: string): Promise<number> =>
  page.evaluate(
    ([selector, to]) =>
      new Promise<number>((resolve) => {
        const choice = document.querySelector<HTMLInputElement>(`${selector}[value="${to}"]`);
        if (choice === null) throw new Error('no choice of a language');
        const began = performance.now();
        const observer = new MutationObserver(() => {
          if (document.documentElement.lang !== to) return;
          observer.disconnect();
          // The frame after the next one begins when the next one has been drawn.
          requestAnimationFrame(() => setTimeout(() => resolve(performance.now() - began), 0));
        });
        observer.observe(document.documentElement, { attributes: true, attributeFilter: ['lang'] });
        choice.click();
      }),
    [CHOICE, language],
  );

async function measure(page: Page, where: string): Promise<void> {
  await page.waitForSelector(CHOICE);
  const session = await page.context().newCDPSession(page);
  await session.send('Emulation.setCPUThrottlingRate', { rate: SLOWDOWN });
  const order = ['de', ...languages().filter((one) => one !== 'de')];
  for (const round of ['fetched', 'there']) {
    const times: string[] = [];
    for (const language of order) times.push(`${language} ${Math.round(await change(page, language))}`);
    console.log(`${where}, words ${round}: ${times.join(', ')} ms`);
  }
  await session.send('Emulation.setCPUThrottlingRate', { rate: 1 });
}

const site = await openSite(process.argv[2] ?? builtSiteFolder);
const { page, close } = await site.openPage({ width: 1280, height: 720, painting: 'real' });
await page.waitForSelector('body[data-view="start"]');
await page.locator('button.round').last().click();
await measure(page, 'settings over the start page');
await close();
const riding = await site.openPage({
  width: 1280,
  height: 720,
  painting: 'real',
  address: '#ride/one-pitch-announced',
});
await riding.page.click('[data-accept]');
await riding.page.waitForSelector('body[data-ride-state="riding"]');
await riding.page.keyboard.press('Escape');
await riding.page.waitForSelector('[data-ride-on]');
await riding.page.locator('dialog .buttons button').last().click();
await measure(riding.page, 'settings over a paused ride');
await riding.close();
await site.close();
