/**
 * Opens the pages and the settings in five languages and both pseudo-languages, from narrow to wide, and prints what is
 * cut or wider than the window. A page that does not come, or never stands still, ends it with an error.
 * `npx tsx test/figures/languages.ts [folder of the built site] [languages] [widths]`
 */
import type { Page } from 'playwright-core';
import { carriedWords, ENGLISH, languages, wordFiles } from '../../assets/words/carry.ts';
import { builtSiteFolder, openSite, type Site } from '../browser/site.ts';
import { type Pseudo, pseudoWords } from '../words/pseudo.ts';

const PAGES =
  'start levels children bike about progress gearcheck clinic bench road two join collect teach'.split(' ');
const PSEUDO: readonly string[] = ['en-XA', 'ar-XB'] satisfies readonly Pseudo[];
const BETWEEN_LOOKS_MS = 400;
const PATIENCE_MS = 60_000;

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

/** Texts that leave the element that clips them or the button they stand in, and how much wider than the window the page is. */
const cutOn = (page: Page): Promise<readonly string[]> =>
  page.evaluate(() => {
    const wide = document.documentElement.scrollWidth - document.documentElement.clientWidth;
    const found = wide > 0 ? [`page ${wide} px too wide`] : [];
    const walker = document.createTreeWalker(document.body, NodeFilter.SHOW_TEXT);
    for (let node = walker.nextNode(); node !== null; node = walker.nextNode()) {
      const holder = node.parentElement;
      if (
        holder === null ||
        !/\S/.test(node.nodeValue ?? '') ||
        holder.closest('svg, script, style') !== null
      )
        continue;
      const range = document.createRange();
      range.selectNodeContents(node);
      const text = range.getBoundingClientRect();
      if (text.width < 2 || text.height < 2) continue;
      for (
        let box: HTMLElement | null = holder;
        box !== null && box !== document.body;
        box = box.parentElement
      ) {
        const { overflowX, clipPath, position } = getComputedStyle(box);
        // Said to who listens only.
        if (clipPath !== 'none' || (position === 'absolute' && box.clientWidth < 2)) break;
        if (overflowX === 'auto' || overflowX === 'scroll') break;
        const isEdge =
          overflowX === 'hidden' || overflowX === 'clip' || box.matches('button, .button, summary');
        if (!isEdge) continue;
        const edge = box.getBoundingClientRect();
        if (text.left < edge.left - 1 || text.right > edge.right + 1)
          found.push(`${box.tagName.toLowerCase()}.${box.className}: ${(node.nodeValue ?? '').slice(0, 60)}`);
        break;
      }
    }
    return found;
  });

/** Waits for the page itself, and until nothing is added to it any more. */
async function standing(page: Page, name: string): Promise<void> {
  await page.waitForSelector(`body[data-view="${name}"]`);
  await page.waitForFunction(() => document.querySelector('[data-coming]') === null);
  const until = Date.now() + PATIENCE_MS;
  for (let before = ''; ; ) {
    await page.waitForTimeout(BETWEEN_LOOKS_MS);
    const now = await page.locator('body').innerText();
    if (now === before && now !== '') return;
    if (Date.now() > until) throw new Error(`${name} does not stand still`);
    before = now;
  }
}

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
    await standing(page, name);
    await lookAt(page, `${language} ${name}`);
  }
  await page.locator('button.round').last().click();
  await page.waitForSelector('dialog[open]');
  await lookAt(page, `${language} settings`);
  const said = await page.evaluate(() => [document.documentElement.lang, document.documentElement.dir]);
  console.log(`${language}: ${PAGES.length} pages looked at, lang and dir ${said.join(' ')}`);
  await close();
}

async function lookAt(page: Page, what: string): Promise<void> {
  for (const width of widths.split(',').map(Number)) {
    await page.setViewportSize({ width, height: 800 });
    await page.waitForTimeout(BETWEEN_LOOKS_MS);
    for (const one of await cutOn(page)) console.log(`${what} ${width}: ${one}`);
  }
}

const site = await openSite(folder);
for (const language of wanted.split(',')) await look(site, language);
await site.close();
