/**
 * Opens the pages and every state of a ride in five languages and both pseudo-languages, from narrow to wide and with
 * letters twice as big, and prints text that is cut, leaves its frame or lies over other text, and what axe finds. A page that does not come,
 * or never stands still, ends it with an error. Rides are not ridden: they begin, or go on just before their end.
 * `npx tsx test/figures/languages.ts [folder of the built site] [languages] [pages,ride,ends,two,group] [folder for pictures]`
 */
import type { CDPSession, Page } from 'playwright-core';
import { barriers } from '../browser/barriers.ts';
import { builtSiteFolder, openSite, type Site } from '../browser/site.ts';
import { ALL_LANGUAGES, ENDINGS, hudMoments, PSEUDO, putRecords, wordsOf } from './languages/moments.ts';
import { installUnfit, unfitInHud, unfitOn } from './languages/unfit.ts';

const PAGES =
  'start levels children bike about progress gearcheck clinic bench road two join collect teach'.split(' ');
const UPRIGHT = [
  [320, 568],
  [390, 844],
] as const;
const ACROSS = [844, 390] as const;
const WIDE = [1280, 720] as const;
const ALL_SIZES = [...UPRIGHT, WIDE] as const;
const RIDE_SIZES = [...UPRIGHT, ACROSS, WIDE] as const;
const BETWEEN_LOOKS_MS = 150;
const PATIENCE_MS = 60_000;
/** Ride time over real time: nothing moves while it is looked at, and nobody waits for the rest. */
const STANDING = 0.002;
const HURRIED = 20;

const [
  folder = builtSiteFolder,
  wanted = ALL_LANGUAGES.join(','),
  parts = 'pages,ride,ends,two,group',
  pictures = '',
] = process.argv.slice(2);

/** The words of a pseudo-language come in at the door of a real one: its files are answered with others. */
async function disguise(page: Page, pseudo: string): Promise<void> {
  await page.route('**/words-*/de/*.json', async (route) => {
    const answer = await route.fetch();
    const names = Object.keys((await answer.json()) as object);
    await route.fulfill({ json: Object.fromEntries(names.map((name) => [name, wordsOf(pseudo, name)])) });
  });
}

/** One language in a browser of its own. */
class Visit {
  readonly page: Page;
  readonly language: string;
  readonly close: () => Promise<void>;
  readonly #session: CDPSession;
  #count = 0;

  constructor(page: Page, session: CDPSession, language: string, close: () => Promise<void>) {
    this.page = page;
    this.#session = session;
    this.language = language;
    this.close = close;
  }

  /** Looks at what is on the screen in these sizes, and with letters twice as big in the first and the last of them. */
  async look(what: string, sizes: readonly (readonly [number, number])[] = ALL_SIZES): Promise<void> {
    for (const size of sizes) {
      await this.#fit(size);
      this.#tell(`${what} ${size[0]}`, await unfitOn(this.page));
      await this.#picture(`${what}-${size[0]}`);
    }
    for (const size of new Set([sizes[0], sizes.at(-1)])) {
      if (size === undefined) continue;
      await this.#letters('200%');
      await this.#fit(size);
      this.#tell(`${what} ${size[0]} letters twice as big`, await unfitOn(this.page));
      await this.#picture(`${what}-${size[0]}-big`);
      await this.#letters('');
    }
  }

  /** What axe finds there, in both themes. */
  async barriers(what: string): Promise<void> {
    this.#tell(`${what} axe`, await barriers(this.page));
  }

  /** The same for the instruments of a ride with all they can say. */
  async lookAtHud(
    what: string,
    isPlay: boolean,
    sizes: readonly (readonly [number, number])[],
  ): Promise<void> {
    const moments = hudMoments(this.language, isPlay);
    for (const size of sizes) {
      await this.#fit(size);
      this.#tell(`${what} ${size[0]}×${size[1]}`, await unfitInHud(this.page, moments));
      await this.#picture(`${what}-${size[0]}`);
    }
  }

  async speed(ratio: number): Promise<void> {
    await this.page.evaluate((value) => Object.assign(window, { __rideTestSpeed: value }), ratio);
  }

  async go(hash: string): Promise<void> {
    await this.page.evaluate((to) => {
      location.hash = to;
    }, hash);
  }

  async state(name: string): Promise<void> {
    await this.page.waitForSelector(`body[data-ride-state="${name}"]`);
  }

  async #fit([width, height]: readonly [number, number]): Promise<void> {
    await this.page.setViewportSize({ width, height });
    // A phone that is turned keeps looking at what it looked at, closer.
    await this.#session.send('Emulation.setPageScaleFactor', { pageScaleFactor: 1 });
    await this.page.waitForTimeout(BETWEEN_LOOKS_MS);
  }

  async #letters(size: string): Promise<void> {
    await this.page.evaluate((to) => {
      document.documentElement.style.fontSize = to;
    }, size);
  }

  #tell(what: string, found: readonly string[]): void {
    this.#count += 1;
    for (const one of found) console.log(`${this.language} ${what}: ${one}`);
  }

  async #picture(name: string): Promise<void> {
    if (pictures !== '') await this.page.screenshot({ path: `${pictures}/${this.language}-${name}.png` });
  }

  async done(): Promise<void> {
    const said = await this.page.evaluate(() => [
      document.documentElement.lang,
      document.documentElement.dir,
    ]);
    console.log(`${this.language}: ${this.#count} looks, lang and dir ${said.join(' ')}`);
    await this.close();
  }
}

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

async function pages(visit: Visit): Promise<void> {
  const { page } = visit;
  for (const name of PAGES) {
    await visit.go(`#${name}`);
    await standing(page, name);
    await visit.look(name);
    await visit.barriers(name);
  }
  await page.locator('button.round').last().click();
  await page.waitForSelector('dialog[open]');
  await visit.look('settings');
  await visit.barriers('settings');
  await page.keyboard.press('Escape');
}

/** From the cautions to the pause: countdown, first steps, all that is told on the way, with pads and without. */
async function ride(visit: Visit): Promise<void> {
  const { page } = visit;
  await visit.speed(STANDING);
  await visit.go('#ride/one-pitch-announced');
  await page.waitForSelector('[data-accept]');
  await visit.look('cautions', RIDE_SIZES);
  await visit.barriers('cautions');
  await page.click('[data-accept]');
  await page.waitForSelector('[data-first-step="rear-easier"]');
  await visit.look('first-step', RIDE_SIZES);
  await page.keyboard.press('ArrowUp');
  await page.waitForSelector('.first-steps-instead');
  await visit.look('first-step-instead', RIDE_SIZES);
  await page.click('[data-skip-first-steps]');
  await visit.state('riding');
  await page.waitForSelector('.first-steps', { state: 'detached' });
  await visit.lookAtHud('ride', false, [...UPRIGHT, ACROSS]);
  await page.evaluate(() => {
    for (const one of document.querySelectorAll<HTMLElement>('.hud')) one.dataset['touch'] = 'false';
    for (const one of document.querySelectorAll<HTMLElement>('[data-pads]')) one.dataset['pads'] = 'off';
  });
  await visit.lookAtHud('ride-keys', false, [WIDE]);
  await page.evaluate(() => {
    for (const one of document.querySelectorAll<HTMLElement>('.hud')) one.dataset['touch'] = 'true';
    for (const one of document.querySelectorAll<HTMLElement>('[data-pads]')) one.dataset['pads'] = 'on';
  });
  await page.keyboard.press('Escape');
  await visit.state('paused');
  await visit.look('pause', RIDE_SIZES);
  await visit.barriers('pause');
  await page.click('[data-restart]');
  await page.waitForSelector('[data-countdown]');
  await visit.look('countdown', RIDE_SIZES);
  await visit.go('#levels');
}

/** Everything after rides that end well, badly, on a child's screen and in play. */
async function ends(visit: Visit): Promise<void> {
  const { page } = visit;
  for (const name of ['failed', 'passed', 'child', 'party'] as const) {
    await visit.go('#about');
    await putRecords(page, ENDINGS[name]());
    await visit.go('#start');
    await page.reload();
    await page.waitForSelector('[data-go-on]');
    if (name === 'failed') await visit.look('unfinished');
    await page.click('[data-go-on]');
    if ((await page.locator('[data-accept]').count()) > 0) await page.click('[data-accept]');
    await page.waitForSelector('.hud');
    if (name === 'child' || name === 'party') {
      // Its countdown goes on as it began.
      await visit.speed(STANDING);
      await visit.state('riding');
      await visit.lookAtHud(`ride-${name}`, name === 'party', RIDE_SIZES);
    }
    await visit.speed(HURRIED);
    await page.waitForSelector('body[data-view="debrief"]');
    await page.waitForFunction(
      () => document.querySelector('[data-guess], [data-end]:not([data-end="open"]), .party') !== null,
    );
    await visit.look(`${name}-first`);
    const guess = page.locator('[data-guess]');
    if ((await guess.count()) > 0) {
      await guess.first().click();
      await page.waitForSelector('[data-end]:not([data-end="open"])');
      await visit.look(`${name}-card`);
    }
    await page.evaluate(() => {
      for (const one of document.querySelectorAll('details')) one.open = true;
    });
    await standing(page, 'debrief');
    await visit.look(`${name}-debrief`);
    await visit.barriers(`${name}-debrief`);
  }
}

/** Two at once, beside each other, and a relay up to its gate. */
async function two(visit: Visit): Promise<void> {
  const { page } = visit;
  const sizes = [[1024, 768], [768, 1024], WIDE] as const;
  await page.setViewportSize({ width: 1280, height: 720 });
  await visit.speed(1);
  await visit.go('#two');
  await page.click('[data-ride-two]');
  await page.waitForSelector('[data-seat="1"][data-phase="riding"]');
  await visit.speed(STANDING);
  await visit.lookAtHud('two', false, sizes);
  await page.keyboard.press('Escape');
  await page.waitForSelector('[data-ride-on]');
  await visit.look('two-pause', sizes);
  await visit.speed(HURRIED);
  await page.click('[data-ride-on]');
  await page.waitForFunction(() => document.querySelectorAll('[data-total]').length === 2);
  await visit.look('two-end', sizes);
  await visit.go('#start');
  // The page for two goes on where it was left.
  await page.reload();
  await standing(page, 'start');
  await visit.speed(HURRIED);
  await visit.go('#two');
  await page.locator('[name="two-way"][value="relay"]').click();
  await page.locator('.two-road select').selectOption('three-little-hills');
  await visit.look('relay');
  await page.click('[data-ride-two]');
  await page.waitForSelector('[data-gate-ride]');
  await visit.look('relay-gate', RIDE_SIZES);
  await page.locator('[data-gate-ride]').click();
  await page.waitForSelector('[data-together]');
  await visit.look('relay-end');
  await visit.go('#start');
}

/** A session of a group: its plan, its stage, a turn, what is said after it, and the group picture. */
async function group(visit: Visit): Promise<void> {
  const { page } = visit;
  await visit.go('#clinic');
  await page.click('[data-new-plan]');
  await page.waitForSelector('[data-save-go]');
  await visit.look('plan');
  await page.click('[data-save-go]');
  await visit.look('plan-refused');
  await page.fill('input[name="title"]', 'A1');
  await page.locator('[data-ride]').first().click();
  await page.click('[data-save-go]');
  await page.waitForSelector('[data-go]');
  await visit.look('riders');
  await page.click('[data-go]');
  await page.waitForSelector('[data-start]');
  await visit.look('round', RIDE_SIZES);
  await visit.speed(HURRIED);
  await page.click('[data-start]');
  await page.waitForSelector('[data-next-rider], [data-accept]');
  if ((await page.locator('[data-accept]').count()) > 0) await page.click('[data-accept]');
  await page.waitForSelector('[data-next-rider]');
  await visit.look('turn-over', RIDE_SIZES);
  for (const tab of ['picture', 'report', 'tablets']) {
    await page.click(`[data-tab="${tab}"]`);
    if (tab === 'picture') {
      await visit.look('group-counting');
      await page.waitForSelector('.board-body');
    }
    await visit.look(`group-${tab}`);
    await visit.barriers(`group-${tab}`);
  }
}

async function visitIn(site: Site, language: string): Promise<void> {
  const isPseudo = PSEUDO.includes(language);
  const { page, close } = await site.openPage({
    width: 390,
    height: 844,
    touch: true,
    context: { locale: isPseudo ? 'de' : language, reducedMotion: 'reduce' },
  });
  await page.addInitScript(installUnfit);
  if (isPseudo) await disguise(page, language);
  await page.reload();
  const visit = new Visit(page, await page.context().newCDPSession(page), language, close);
  await standing(page, 'start');
  for (const [name, part] of Object.entries({ pages, ride, ends, two, group }))
    if (parts.split(',').includes(name)) await part(visit);
  await visit.done();
}

const site = await openSite(folder);
for (const language of wanted.split(',')) await visitIn(site, language);
await site.close();
