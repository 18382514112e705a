/**
 * Pictures of the moments a ride is about, ten each and 60 ms apart, each strip on one sheet in `test-output`: whoever sees
 * only the strip should be able to say what happens. Run `npm run build` first, then `npx tsx test/figures/strips.ts`; names of
 * moments behind it make only those. `calm` among them asks for reduced motion, `WIDTHxHEIGHT` for another screen.
 */
import { mkdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import type { Page } from 'playwright-core';
import { courseOfLevel } from '../../src/core/level/build.ts';
import { parseLevelText } from '../../src/core/level/parse.ts';
import { builtSiteFolder, NAMES, openSite, type Site } from '../browser/site.ts';

const PICTURES = 10;
const APART_MS = 60;
/** Shorter than what counts as late: a picture that stands longer would be drawn with less. */
const FRAME_MS = 20;
/** On the way there it is looked at this often. */
const WAY_MS = 80;
/** What is kept of a wide picture: the rider and the machine. */
const SEEN = { x: 130, y: 170, width: 830, height: 550 };
const outFolder = fileURLToPath(new URL('../../test-output', import.meta.url));
const levelsFolder = fileURLToPath(new URL('../../levels', import.meta.url));

/** A page whose time goes on only when it is told to. */
interface Film {
  readonly page: Page;
  readonly step: (ms: number) => Promise<void>;
  /** Goes on until it is so; throws after so many seconds of ride time. */
  readonly until: (isSo: () => Promise<boolean>, mostS?: number) => Promise<void>;
  readonly distanceM: () => Promise<number>;
  readonly speedKmh: () => Promise<number>;
  readonly shift: () => Promise<string>;
  readonly keep: () => Promise<void>;
}

interface Moment {
  readonly level: string;
  /** Goes to where the first picture is taken; `pitchM` is the foot of the first pitch, `lengthM` the end of the road. */
  readonly go: (film: Film, road: { readonly pitchM: number; readonly lengthM: number }) => Promise<void>;
}

const pushHard = async ({ page, until, distanceM }: Film, fromM: number): Promise<void> => {
  await until(async () => (await distanceM()) > fromM);
  await page.keyboard.down('ArrowRight');
};

const MOMENTS: Readonly<Record<string, Moment>> = {
  clean: {
    level: 'two-levers',
    go: async ({ page, step, until, distanceM }, { pitchM }) => {
      await until(async () => (await distanceM()) > pitchM - 16);
      await page.keyboard.down('Space');
      await step(500);
      await page.keyboard.press('ArrowDown');
      await step(160);
    },
  },
  hanging: {
    level: 'two-levers',
    go: async (film, { pitchM }) => {
      await pushHard(film, pitchM + 34);
      await film.step(1400);
      await film.page.keyboard.press('ArrowDown');
      await film.until(async () => (await film.shift()) === 'stuck', 6);
      await film.step(200);
    },
  },
  standing: {
    level: 'two-levers',
    go: async (film, { pitchM }) => {
      await pushHard(film, pitchM + 20);
      await film.step(1100);
    },
  },
  dropped: {
    level: 'two-levers',
    go: async (film, { pitchM }) => {
      const { page, step, until, distanceM } = film;
      // The smallest ring and a small sprocket cross the chain; there a push for the bigger ring under load drops it.
      await until(async () => (await distanceM()) > 60);
      await page.keyboard.press('KeyS');
      await step(1500);
      await page.keyboard.press('KeyS');
      await until(async () => (await distanceM()) > pitchM - 30);
      for (let i = 0; i < 6; i += 1) {
        await page.keyboard.press('ArrowUp');
        await step(700);
      }
      await pushHard(film, pitchM + 16);
      await step(700);
      await page.keyboard.press('KeyW');
      await until(async () => /off/i.test((await page.textContent('.hud-note')) ?? ''), 12);
      await step(120);
    },
  },
  finish: {
    level: 'down-to-the-sea',
    go: async ({ until, distanceM, step }, { lengthM }) => {
      await until(async () => (await distanceM()) > lengthM - 1, 200);
      await step(240);
    },
  },
  downhill: {
    level: 'stops-wind-and-a-secret',
    go: async ({ page, until, speedKmh }) => {
      await page.keyboard.down('ArrowRight');
      await until(async () => (await speedKmh()) > 33, 240);
    },
  },
};

/** Run in the page: pictures come when they are asked for, and movements of style sheets go along with them. */
function holdTime(): void {
  const ask = window.requestAnimationFrame.bind(window);
  const waiting = new Map<number, FrameRequestCallback>();
  let newest = 0;
  let nowMs = 0;
  let isHeld = false;
  const seen = new WeakSet<Animation>();
  const frame = (byMs: number): void => {
    nowMs += byMs;
    const now = [...waiting.values()];
    waiting.clear();
    for (const one of now) one(nowMs);
    for (const animation of document.getAnimations()) {
      if (!seen.has(animation)) animation.pause();
      animation.currentTime = (seen.has(animation) ? Number(animation.currentTime) : 0) + byMs;
      seen.add(animation);
      const endMs = Number(animation.effect?.getComputedTiming().endTime);
      if (Number(animation.currentTime) >= endMs) animation.finish();
    }
  };
  const alone = (): void => {
    if (isHeld) return;
    frame(1000 / 60);
    ask(alone);
  };
  window.requestAnimationFrame = (one) => {
    newest += 1;
    waiting.set(newest, one);
    return newest;
  };
  window.cancelAnimationFrame = (id) => {
    waiting.delete(id);
  };
  ask(alone);
  Object.assign(window, {
    hold: () => (isHeld = true),
    go: (ms: number, frameMs: number) => {
      for (let left = ms; left > 0.01; left -= frameMs) frame(Math.min(frameMs, left));
    },
  });
}

async function open(site: Site, level: string, size: { width: number; height: number }, isCalm: boolean) {
  const context = await site.browser.newContext({
    viewport: size,
    locale: 'en-IE',
    serviceWorkers: 'block',
    reducedMotion: isCalm ? 'reduce' : 'no-preference',
  });
  context.setDefaultTimeout(120_000);
  await context.addInitScript(NAMES);
  await context.addInitScript(holdTime);
  const page = await context.newPage();
  await page.goto(new URL(`#ride/${level}`, site.url).href, { waitUntil: 'load' });
  await page.click('[data-accept]');
  const skip = page.locator('[data-skip-first-steps]');
  if (!/sea|apples|roots|snow|lamplight/.test(level)) await skip.click();
  await page.waitForFunction(() => document.body.dataset['rideState'] === 'riding');
  await page.evaluate('window.hold()');
  const pictures: string[] = [];
  const isWide = size.width > 1000;
  const step = (ms: number): Promise<void> => page.evaluate(`window.go(${ms}, ${FRAME_MS})`);
  const number = async (selector: string): Promise<number> => {
    const text = await page.evaluate(`document.querySelector('${selector}')?.textContent ?? ''`);
    return Number.parseFloat(String(text).replaceAll(/[^\d.]/g, ''));
  };
  const film: Film = {
    page,
    step,
    until: async (isSo, mostS = 120) => {
      for (let passedMs = 0; !(await isSo()); passedMs += WAY_MS) {
        if (passedMs > mostS * 1000) {
          await page.screenshot({ path: join(outFolder, 'waited-in-vain.png') });
          throw new Error(`waited in vain on ${level}: see waited-in-vain.png`);
        }
        await step(WAY_MS);
      }
    },
    distanceM: () => number('[data-hud="distance"]'),
    speedKmh: () => number('[data-hud="speed"]'),
    shift: async () =>
      String(await page.evaluate(`document.querySelector('.hud-drive').dataset.shift ?? ''`)),
    keep: async () => {
      pictures.push(
        (await page.screenshot({ type: 'jpeg', quality: 88, ...(isWide ? { clip: SEEN } : {}) })).toString(
          'base64',
        ),
      );
    },
  };
  return { film, context, pictures };
}

async function sheet(site: Site, name: string, pictures: readonly string[], wide: number): Promise<void> {
  const page = await site.browser.newPage({ viewport: { width: wide * 5 + 24, height: 100 } });
  await page.setContent(
    `<body style="margin:0;background:#777;display:grid;grid-template-columns:repeat(5,${wide}px);gap:4px">${pictures.map((one) => `<img style="width:100%" src="data:image/jpeg;base64,${one}">`).join('')}</body>`,
  );
  await page.screenshot({ path: join(outFolder, `strip-${name}.png`), fullPage: true });
  await page.close();
}

mkdirSync(outFolder, { recursive: true });
const asked = process.argv.slice(2);
const sized = asked.find((one) => /^\d+x\d+$/.test(one)) ?? '1280x720';
const [width = 1280, height = 720] = sized.split('x').map(Number);
const isCalm = asked.includes('calm');
const names = Object.keys(MOMENTS).filter(
  (name) => !Object.keys(MOMENTS).some((one) => asked.includes(one)) || asked.includes(name),
);
const site = await openSite(process.env['SITE'] ?? builtSiteFolder);
for (const name of names) {
  const moment = MOMENTS[name];
  if (moment === undefined) continue;
  const parsed = parseLevelText(readFileSync(join(levelsFolder, `${moment.level}.json`), 'utf8'));
  if (!parsed.ok) throw new Error(moment.level);
  const course = courseOfLevel(parsed.level);
  const { film, context, pictures } = await open(site, moment.level, { width, height }, isCalm);
  await moment.go(film, { pitchM: course.pitches[0]?.footM ?? 0, lengthM: course.lengthM });
  for (let i = 0; i < PICTURES; i += 1) {
    await film.keep();
    await film.step(APART_MS);
  }
  await context.close();
  await sheet(site, `${name}${isCalm ? '-calm' : ''}`, pictures, width > height ? 512 : 300);
  console.log(name);
}
await site.close();
