/**
 * Prints how long a change of the language takes on a processor four times as slow, from the choice to the first picture
 * in the other language, of the dialog and of the page below it: from the settings over the start page, and over a ride
 * that is paused. The least of several tries, since other work on the machine only adds to it; and what the page's own
 * thread computed, which other work hardly touches, times four. Words are fetched at the first choice of a language, and there at the next ones.
 * `npx tsx test/figures/languageChange.ts [folder of the built site] [tries]`
 */
import type { CDPSession, Page } from 'playwright-core';
import { languages } from '../../assets/words/carry.ts';
import { builtSiteFolder, openSite, type Site } from '../browser/site.ts';

const SLOWDOWN = 4;
const CHOICE = '[name="language"]';
/** Another one than the page begins with comes first. */
const ORDER = ['de', ...languages().filter((one) => one !== 'de')];

const [folder = builtSiteFolder, tries = '5'] = process.argv.slice(2);

/** What speaks another language one after the other: the dialog it is chosen in, and the whole page. */
const SPEAKERS = { dialog: '#dialog-title', page: 'html' } as const;
type Speaker = keyof typeof SPEAKERS;

/** Chooses, and waits for the picture that shows it there (ms). */
const change = (page: Page, language: string, speaker: Speaker): Promise<number> =>
  page.evaluate(
    ([selector, to, where]) =>
      new Promise<number>((resolve) => {
        const choice = document.querySelector<HTMLInputElement>(`${selector}[value="${to}"]`);
        const speaks = document.querySelector<HTMLElement>(where);
        if (choice === null || speaks === null) throw new Error('no choice of a language');
        const began = performance.now();
        const observer = new MutationObserver(() => {
          observer.disconnect();
          // The frame after the next one begins when the next one has been drawn.
          requestAnimationFrame(() => setTimeout(() => resolve(performance.now() - began), 0));
        });
        if (where === 'html') observer.observe(speaks, { attributes: true, attributeFilter: ['lang'] });
        else observer.observe(speaks, { characterData: true, childList: true, subtree: true });
        choice.click();
      }),
    [CHOICE, language, SPEAKERS[speaker]] as const,
  );

/** Words are there after the first round. */
const ROUNDS = [
  ['fetched', 'dialog'],
  ['there', 'dialog'],
  ['there', 'page'],
] as const;

/** What the page's thread has computed so far (ms of that thread), by kind. */
async function computed(session: CDPSession): Promise<Readonly<Record<string, number>>> {
  const { metrics } = await session.send('Performance.getMetrics');
  const kinds = ['TaskDuration', 'ScriptDuration', 'RecalcStyleDuration', 'LayoutDuration'];
  return Object.fromEntries(
    metrics.filter(({ name }) => kinds.includes(name)).map(({ name, value }) => [name, value * 1000]),
  );
}

/** A picture in which nothing was chosen (ms): what moves on the page costs something as well, and the measuring itself. */
const nothing = (page: Page): Promise<number> =>
  page.evaluate(
    () =>
      new Promise<number>((resolve) => {
        const began = performance.now();
        requestAnimationFrame(() => setTimeout(() => resolve(performance.now() - began), 0));
      }),
  );

interface Cost {
  /** By the clock, slowed down (ms). */
  readonly clock: number;
  /** By the thread, times the slowdown (ms). */
  readonly thread: Readonly<Record<string, number>>;
}

/** The cost of one choice; a picture follows each, so that nothing of it falls to the next. */
async function cost(page: Page, session: CDPSession, choose: () => Promise<number>): Promise<Cost> {
  const before = await computed(session);
  const clock = await choose();
  const after = await computed(session);
  const thread = Object.fromEntries(
    Object.entries(after).map(([kind, ms]) => [kind, (ms - (before[kind] ?? 0)) * SLOWDOWN]),
  );
  await page.waitForTimeout(200);
  return { clock, thread };
}

/** Each language once, in one visit to a page whose settings are open. */
async function visit(page: Page, isSlow: boolean): Promise<readonly (readonly [string, Cost])[]> {
  await page.waitForSelector(CHOICE);
  const session = await page.context().newCDPSession(page);
  await session.send('Performance.enable', { timeDomain: 'threadTicks' });
  await session.send('Emulation.setCPUThrottlingRate', { rate: isSlow ? SLOWDOWN : 1 });
  const costs: (readonly [string, Cost])[] = [];
  for (const [words, speaker] of ROUNDS)
    for (const language of ORDER)
      costs.push([
        `${words}, ${speaker} in ${language}`,
        await cost(page, session, () => change(page, language, speaker)),
      ]);
  for (let i = 0; i < ORDER.length; i += 1)
    costs.push(['not chosen', await cost(page, session, () => nothing(page))]);
  return costs;
}

async function overStart(site: Site): Promise<readonly [Page, () => Promise<void>]> {
  const { page, close } = await site.openPage({ width: 1280, height: 720, painting: 'real' });
  await page.waitForSelector('body[data-view="start"]');
  await page.locator('button.round').last().click();
  return [page, close];
}

async function overRide(site: Site): Promise<readonly [Page, () => Promise<void>]> {
  const address = '#ride/one-pitch-announced';
  const { page, close } = await site.openPage({ width: 1280, height: 720, painting: 'real', address });
  await page.click('[data-accept]');
  await page.waitForSelector('body[data-ride-state="riding"]');
  await page.keyboard.press('Escape');
  await page.waitForSelector('[data-ride-on]');
  await page.locator('dialog .buttons button').last().click();
  return [page, close];
}

const least = (numbers: readonly number[]): number => Math.round(Math.min(...numbers));

const site = await openSite(folder);
for (const [where, open] of [
  ['settings over the start page', overStart],
  ['settings over a paused ride', overRide],
] as const) {
  const slow = new Map<string, number[]>();
  const thread = new Map<string, Readonly<Record<string, number>>[]>();
  for (let i = 0; i < Number(tries); i += 1)
    for (const isSlow of [true, false]) {
      const [page, close] = await open(site);
      for (const [name, { clock, thread: own }] of await visit(page, isSlow)) {
        if (isSlow) slow.set(name, [...(slow.get(name) ?? []), clock]);
        else thread.set(name, [...(thread.get(name) ?? []), own]);
      }
      await close();
    }
  for (const [name, clocks] of slow) {
    const all = thread.get(name) ?? [];
    const kinds = Object.keys(all[0] ?? {}).map(
      (kind) => `${kind.replace('Duration', '')} ${least(all.map((one) => one[kind] ?? 0))}`,
    );
    console.log(`${where}, words ${name}: clock ${least(clocks)} ms; thread times 4: ${kinds.join(', ')} ms`);
  }
}
await site.close();
