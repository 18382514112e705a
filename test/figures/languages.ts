/**
 * Opens the pages in five languages and both pseudo-languages, from narrow to wide, and prints what is cut or wider than
 * the window.
 * `npx tsx test/figures/languages.ts [folder of the built site] [languages] [widths]`
 */
import type { Page } from 'playwright-core';
import { carriedWords, ENGLISH, languages, wordFiles } from '../../assets/words/carry.ts';
import { builtSiteFolder, openSite, type Site } from '../browser/site.ts';
import { type Pseudo, pseudoWords } from '../words/pseudo.ts';

const PAGES =
  'start levels children bike about progress gearcheck settings clinic bench road two join collect teach'.split(
    ' ',
  );
const PSEUDO: readonly string[] = ['en-XA', 'ar-XB'] satisfies readonly Pseudo[];
const FIRST_PAINT_MS = 400;

const [folder = builtSiteFolder, wanted = [...languages(), ...PSEUDO].join(','), widths = '320,390,1280'] =
  process.argv.slice(2);

/** The words of a pseudo-language come in at the door of a real one: its files are answered with others. */
async function disguise(page: Page, pseudo: Pseudo): Promise<void> {
  const all = Object.fromEntries(
    wordFiles().map((file) => [file, pseudoWords(carriedWords(ENGLISH, file), pseudo)]),
  );
  await page.route('**/words-*/de/*.json', async (route) => {
    const answer = await route.fetch();
    const names = Object.keys((await answer.json()) as object);
    await route.fulfill({ json: Object.fromEntries(names.map((name) => [name, all[name]])) });
  });
}

/** Elements whose text is cut, and how much wider than the window the page is. */
const cutOn = (page: Page): Promise<readonly string[]> =>
  page.evaluate(() => {
    const wide = document.documentElement.scrollWidth - document.documentElement.clientWidth;
    const cut = [...document.querySelectorAll<HTMLElement>('body *')].filter((one) => {
      if (one.clientWidth < 2 || one.clientHeight < 2 || one.closest('svg') !== null) return false;
      const { overflowX, clipPath } = getComputedStyle(one);
      if (clipPath !== 'none' || !/\S/.test(one.textContent)) return false;
      const hidden = overflowX === 'hidden' || overflowX === 'clip';
      const isButton = one.matches('button, a.button, .button, summary');
      return (hidden || isButton) && one.scrollWidth > one.clientWidth + 1;
    });
    return [
      ...(wide > 0 ? [`page ${wide} px too wide`] : []),
      ...cut.map((one) => `${one.tagName.toLowerCase()}.${one.className}: ${one.textContent.slice(0, 60)}`),
    ];
  });

async function look(site: Site, language: string): Promise<void> {
  const isPseudo = PSEUDO.includes(language);
  const { page, close } = await site.openPage({
    width: 390,
    height: 800,
    context: { locale: isPseudo ? 'de' : language, reducedMotion: 'reduce' },
  });
  if (isPseudo) {
    await disguise(page, language as Pseudo);
    await page.reload();
  }
  for (const name of PAGES) {
    await page.evaluate((hash) => {
      location.hash = hash;
    }, `#${name}`);
    for (const width of widths.split(',').map(Number)) {
      await page.setViewportSize({ width, height: 800 });
      await page.waitForTimeout(FIRST_PAINT_MS);
      for (const one of await cutOn(page)) console.log(`${language} ${width} ${name}: ${one}`);
    }
  }
  const said = await page.evaluate(() => [document.documentElement.lang, document.documentElement.dir]);
  console.log(`${language}: ${PAGES.length} pages looked at, lang and dir ${said.join(' ')}`);
  await close();
}

const site = await openSite(folder);
for (const language of wanted.split(',')) await look(site, language);
await site.close();
