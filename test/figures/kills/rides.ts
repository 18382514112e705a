/** Rides in a browser that is killed, and what is found of them afterwards; see `kills.ts`. */
import puppeteer, { type Browser, type Page } from 'puppeteer-core';
import { between, seededRandom } from '../../../src/core/math/random.ts';
import { HEADS, type JournalPart, PARTS, unfinishedRide } from '../../../src/app/ride/journalShapes.ts';
import { findChromium, thisComputer } from '../../browser/chromium.ts';
import { serveFolder } from '../../browser/server.ts';

/** What to do. */
export interface KillOptions {
  /** Rides to be killed. */
  readonly count: number;
  readonly browser: 'chromium' | 'firefox';
  readonly seed: number;
  /** Folder of the profile, kept from one browser to the next. */
  readonly profile: string;
  /** Folder of the built site. */
  readonly site: string;
  readonly say: (line: string) => void;
}

/** What came of it. */
export interface KillFigures {
  readonly browser: string;
  /** Times the browser was killed. */
  readonly kills: number;
  /** Rides that were going on then. */
  readonly rides: number;
  /** Of those, rides nothing was left of. */
  readonly gone: number;
  /** Seconds of riding lost: the worst, and how many lost more than two. */
  readonly worstS: number;
  readonly meanS: number;
  readonly overTwo: number;
  /** Rides the page had called kept, and how many of them were not there whole at the end. */
  readonly reported: number;
  readonly reportedLost: number;
}

/** Every fourth time one of them is ridden so much faster that it comes to its end, and is not counted as killed. */
const FAST = 8;
const FAST_EVERY = 4;
/**
 * Rides at once, one of each, so that their journals can be told apart. They share one thread, as no player's rides
 * do: with more of them everything waits for drawing. None is at its end in half a minute.
 */
const LEVELS = ['rolling-road', 'round-the-bend'] as const;
const TICKS_PER_S = 120;
const ARGUMENTS = [
  '--no-sandbox',
  '--disable-gpu',
  '--no-first-run',
  '--disable-background-networking',
  '--host-resolver-rules=MAP * ~NOTFOUND, EXCLUDE 127.0.0.1',
];

interface Sample {
  readonly frame: number;
  /** Seconds of riding so far, as pictures let them go by. */
  readonly riddenS: number;
}

/** Kills until so many rides have been killed. */
export async function killRides(options: KillOptions): Promise<KillFigures> {
  const server = await serveFolder(options.site);
  const random = seededRandom(options.seed);
  const lost: number[] = [];
  let kills = 0;
  let rides = 0;
  let gone = 0;
  let reported = 0;
  let browser = await launch(options);
  try {
    await readCautions(browser, server.url);
    while (rides < options.count) {
      const page = await openPage(browser);
      const samples: Sample[] = [];
      let saved = 0;
      page.on('console', (message) => {
        const text = message.text();
        if (text.startsWith('kept ')) saved += 1;
        if (!text.startsWith('at ')) return;
        const [frame, riddenS] = text.slice(3).split(' ').map(Number) as [number, number];
        samples.push({ frame, riddenS });
      });
      await page.goto(new URL('empty.html', server.url).href);
      const withFast = kills % FAST_EVERY === FAST_EVERY - 1;
      const fast = withFast ? FAST : 1;
      await page.evaluate(
        rideInFrames,
        LEVELS.map((level) => `${server.url}#ride/${level}`),
        fast,
        options.seed + kills,
      );
      await until(() => new Set(samples.map(({ frame }) => frame)).size === LEVELS.length, 'the rides');
      await new Promise((resolve) => setTimeout(resolve, between(random, 500, 8000)));
      kill(browser);
      kills += 1;
      reported += saved;
      browser = await launch(options);
      const back = await openPage(browser);
      await back.goto(server.url);
      const found = await journalsOf(back);
      for (const [frame, level] of LEVELS.entries()) {
        const last = samples.findLast((one) => one.frame === frame);
        if (last === undefined || (withFast && frame === 0)) continue;
        rides += 1;
        const mine = found.filter(({ recording }) => recording.levelId === level);
        if (mine.length > 1) throw new Error(`two rides of ${level}`);
        if (mine.length === 0) gone += 1;
        const lostS = last.riddenS - (mine[0]?.recording.ticks ?? 0) / TICKS_PER_S;
        lost.push(lostS);
        if (lostS > 2)
          options.say(`of ${last.riddenS.toFixed(2)} s on ${level} ${lostS.toFixed(2)} s are lost`);
      }
      reported += await settle(back, found.length, random);
      options.say(`${options.browser}: ${kills} kills, ${rides} rides, worst ${worst(lost)} s, gone ${gone}`);
    }
    const page = await openPage(browser);
    await page.goto(server.url);
    const whole = await page.evaluate(wholeRides);
    const meanS = lost.reduce((sum, one) => sum + one, 0) / lost.length;
    return {
      browser: options.browser,
      kills,
      rides,
      gone,
      worstS: worst(lost),
      meanS: Math.round(meanS * 100) / 100,
      overTwo: lost.filter((one) => one > 2).length,
      reported,
      reportedLost: Math.max(0, reported - whole),
    };
  } finally {
    kill(browser);
    await server.close();
  }
}

/** Once, with the first steps, so that no dialog takes the focus from one frame to another later: a ride without focus pauses. */
async function readCautions(browser: Browser, url: string): Promise<void> {
  const page = await openPage(browser);
  // On another road, so that its own unfinished ride is not taken for one of those.
  await page.goto(`${url}#ride/two-levers`);
  const accept = await page.waitForSelector('[data-accept]', { timeout: 60_000 });
  await accept?.click();
  // The first steps with the levers stand still, and standing still loses nothing.
  await page.waitForSelector('[data-skip-first-steps]', { timeout: 60_000 });
  await page.$eval('[data-skip-first-steps]', (button) => (button as HTMLElement).click());
  await page.waitForSelector('.first-steps', { hidden: true, timeout: 60_000 });
  // The choice is kept a moment later.
  await new Promise((resolve) => setTimeout(resolve, 2000));
  await page.waitForSelector('[data-hud="distance"]', { timeout: 60_000 });
  await page.goto(url);
  await page.close();
}

function worst(lost: readonly number[]): number {
  return Math.round(Math.max(0, ...lost) * 100) / 100;
}

function launch({ browser, profile }: KillOptions): Promise<Browser> {
  const common = { headless: true, userDataDir: profile, defaultViewport: { width: 640, height: 480 } };
  if (browser === 'chromium')
    return puppeteer.launch({
      ...common,
      browser: 'chrome',
      executablePath: findChromium(),
      args: ARGUMENTS,
    });
  const path = ['/usr/bin/firefox-esr', '/usr/bin/firefox'].find((one) => thisComputer().isProgram(one));
  if (path === undefined) throw new Error('There is no Firefox on this computer.');
  return puppeteer.launch({ ...common, browser: 'firefox', executablePath: path });
}

/**
 * A page that knows the helper which the runner of this script writes into functions. Only one of its frames can
 * have the focus, and a ride without it pauses: no frame hears that it lost it, from before the game listens.
 */
async function openPage(browser: Browser): Promise<Page> {
  const page = await browser.newPage();
  await page.evaluateOnNewDocument(
    `globalThis.__name = (one) => one;
    if (window !== top) addEventListener('blur', (event) => event.stopImmediatePropagation());`,
  );
  return page;
}

/** Kills the browser and all it started. */
function kill(browser: Browser): void {
  const pid = browser.process()?.pid;
  // The whole group it leads; a browser that is dead already is dead enough.
  for (const one of pid === undefined ? [] : [-pid, pid])
    try {
      process.kill(one, 'SIGKILL');
    } catch {
      continue;
    }
}

async function until(isSo: () => boolean, what: string): Promise<void> {
  for (let tries = 0; tries < 4800; tries += 1) {
    if (isSo()) return;
    await new Promise((resolve) => setTimeout(resolve, 50));
  }
  throw new Error(`waited four minutes for ${what}`);
}

/** Runs in the page: rides in frames with restless hands, and says where each is and which was kept. */
function rideInFrames(addresses: readonly string[], fast: number, seed: number): void {
  let dice = seed % 2147483647 || 1;
  const next = (): number => {
    dice = (dice * 48271) % 2147483647;
    return dice / 2147483647;
  };
  const kept = new Set<number>();
  const ridden: number[] = [];
  const frames = addresses.map((address, i) => {
    const frame = document.createElement('iframe');
    Object.assign(frame.style, { width: '400px', height: '300px' });
    frame.addEventListener('load', () => {
      const view = frame.contentWindow;
      if (view === null) return;
      const speed = i === 0 ? fast : 1;
      Object.assign(view, { __rideTestSpeed: speed });
      let lastMs = 0;
      // The same pictures as those of the ride, which drops what is longer than a quarter of a second.
      const look = (nowMs: number): void => {
        const { body } = view.document;
        const rides =
          body.dataset['rideState'] === 'riding' && body.querySelector('[data-countdown]') === null;
        if (rides && lastMs > 0)
          ridden[i] = (ridden[i] ?? 0) + Math.min(0.25, (nowMs - lastMs) / 1000) * speed;
        lastMs = rides ? nowMs : 0;
        view.requestAnimationFrame(look);
      };
      view.requestAnimationFrame(look);
    });
    setTimeout(() => {
      frame.src = address;
      document.body.append(frame);
    }, i * 400);
    return frame;
  });
  setInterval(() => {
    for (const [i, { contentDocument: page, contentWindow: view }] of frames.entries()) {
      if (page === null || view === null) continue;
      page.querySelector<HTMLElement>('[data-accept]')?.click();
      if ((ridden[i] ?? 0) > 0) console.log(`at ${i} ${ridden[i]}`);
      if (page.querySelector('[data-saved="saved"]') !== null && !kept.has(i)) {
        kept.add(i);
        console.log(`kept ${i}`);
      }
      const code = ['ArrowDown', 'ArrowUp', 'Space', 'Space'][Math.floor(next() * 40)];
      if (code === undefined) continue;
      view.dispatchEvent(new KeyboardEvent('keydown', { code }));
      setTimeout(() => view.dispatchEvent(new KeyboardEvent('keyup', { code })), 80);
    }
  }, 50);
}

/** Everything of one store of the database, by a page that has just been opened. */
const readStore = (page: Page, store: string): Promise<[string, unknown][]> =>
  page.evaluate(
    (name) =>
      new Promise<[string, unknown][]>((resolve, reject) => {
        const request = indexedDB.open('before-the-hill');
        request.addEventListener('error', () => reject(new Error(String(request.error))));
        request.addEventListener('success', () => {
          const shelf = request.result.transaction(name).objectStore(name);
          const keys = shelf.getAllKeys();
          const values = shelf.getAll();
          values.addEventListener('success', () => {
            request.result.close();
            resolve(keys.result.map((key, i) => [key as string, values.result[i]]));
          });
        });
      }),
    store,
  );

async function journalsOf(page: Page) {
  await page.waitForSelector('[data-ride-next]', { timeout: 60_000 });
  const records = await readStore(page, 'records');
  const dataOf = (kind: string) =>
    records
      .filter(([key]) => key.startsWith(`${kind} `))
      .map(([, value]) => value as { id: string; data: unknown });
  const pieces = dataOf('ride-journal-part').flatMap(({ data }) => PARTS.read(data) ?? []);
  return dataOf('ride-journal').flatMap(({ id, data }) => {
    const head = HEADS.read(data);
    const own = pieces.filter((one: JournalPart) => one.of === id).toSorted((a, b) => a.index - b.index);
    return head === null ? [] : (unfinishedRide(id, 0, head, own) ?? []);
  });
}

/** Deals with every offer of the start page as a person would; says how many rides were called kept. */
async function settle(page: Page, offers: number, random: () => number): Promise<number> {
  let kept = 0;
  for (let i = 0; i < offers; i += 1) {
    const offer = await page.waitForSelector('[data-unfinished]', { timeout: 60_000 });
    const id = await offer?.evaluate((one) => (one as HTMLElement).dataset['unfinished']);
    const keeps = random() < 0.3;
    await page.evaluate(
      (name) => document.querySelector<HTMLElement>(`[data-unfinished] [${name}]`)?.click(),
      keeps ? 'data-keep-unfinished' : 'data-let-go',
    );
    await page.waitForFunction(
      (before) => document.querySelector<HTMLElement>('[data-unfinished]')?.dataset['unfinished'] !== before,
      { timeout: 60_000 },
      id,
    );
    if (keeps) kept += 1;
  }
  // An offer goes before its ride does, and a page that closes takes back what it was about to do.
  for (let tries = 0; (await journalsOf(page)).length > 0; tries += 1)
    if (tries > 100) throw new Error('a ride that was let go is still there');
  await page.close();
  return kept;
}

/** Runs in the page: rides in the database that have a recording. */
function wholeRides(): Promise<number> {
  return new Promise((resolve, reject) => {
    const request = indexedDB.open('before-the-hill');
    request.addEventListener('error', () => reject(new Error(String(request.error))));
    request.addEventListener('success', () => {
      const all = request.result.transaction('rides').objectStore('rides').getAll();
      all.addEventListener('success', () => {
        request.result.close();
        resolve(all.result.filter((ride: { recording?: unknown }) => ride.recording !== undefined).length);
      });
    });
  });
}
