/**
 * Prints what a frame costs: an empty scene of the engine, the picture of the ride in that engine, the same
 * picture by a bare loop without one, and the whole game with instruments, help, input and sound. All in one
 * run, in turns, each several times. Needs no graphics card. Counted is the time the page's own thread worked, and
 * each picture is told to be a sixtieth of a second after the one before, so that other work on the machine changes
 * little; the least of the rounds is printed. Then the whole game on a slow device, as it comes.
 * Run with `npx tsx test/figures/frames.ts`, or with names of levels behind it for the game on those and the empty scene.
 */
import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import type { CDPSession, Page } from 'playwright-core';
import { build } from 'vite';
import { openSite, type Screen, type Site } from '../browser/site.ts';

const ROUNDS = 3;
const SETTLE_FRAMES = 240;
const WATCH_FRAMES = 240;
/** On the slow device (ms). */
const SLOW_SETTLE_MS = 8_000;
const SLOW_WATCH_MS = 8_000;
const SLOWDOWN = 4;
const SHOWS = ['empty', 'bare', 'ride', 'game'] as const;
type Show = (typeof SHOWS)[number];
const NAMES: Readonly<Record<Show, string>> = {
  empty: 'empty scene',
  bare: 'picture without an engine',
  ride: 'picture of the ride',
  game: 'whole game',
};
const given = process.argv.slice(2);
const LEVELS = given.length > 0 ? given : ['rolling-road'];
const COMPARED: readonly Show[] = given.length > 0 ? ['empty', 'game'] : SHOWS;
const root = fileURLToPath(new URL('frames', import.meta.url));
const picturesFolder = mkdtempSync(join(tmpdir(), 'frame-figures-'));
const gameFolder = mkdtempSync(join(tmpdir(), 'frame-game-'));
const configFile = fileURLToPath(new URL('../../vite.config.ts', import.meta.url));

interface Cost {
  readonly scriptMs: number;
  readonly layoutMs: number;
  readonly taskMs: number;
}

interface Sites {
  readonly pictures: Site;
  readonly game: Site;
}

interface Watched {
  readonly page: Page;
  readonly session: CDPSession;
  readonly close: () => Promise<void>;
}

async function open(sites: Sites, show: Show, level: string, screen: Screen): Promise<Watched> {
  const opened = await (show === 'game'
    ? sites.game.openPage({ ...screen, address: `#ride/${level}` })
    : sites.pictures.openPage({ ...screen, address: `?show=${show}` }));
  const { page } = opened;
  if (show === 'game') {
    await page.click('[data-accept]');
    // The world stands still until the levers are known.
    await page.click('[data-skip-first-steps]');
    await page.waitForFunction(() => document.body.dataset['rideState'] === 'riding');
  } else await page.waitForSelector('canvas');
  const session = await page.context().newCDPSession(page);
  // As text: the runner decorates functions with helpers that the page does not have.
  await page.evaluate(
    'window.framesSeen = 0; (function next() { window.framesSeen += 1; requestAnimationFrame(next); })()',
  );
  return { page, session, close: opened.close };
}

async function framesOf(page: Page): Promise<number> {
  return Number(await page.evaluate('window.framesSeen'));
}

async function waitFrames(page: Page, count: number): Promise<void> {
  const from = await framesOf(page);
  while ((await framesOf(page)) < from + count) await page.waitForTimeout(200);
}

async function costOf(sites: Sites, show: Show, level: string, screen: Screen): Promise<Cost> {
  const { page, session, close } = await open(sites, show, level, { ...screen, painting: 'even' });
  // Fetching, compiling and painting in advance are over before it is watched.
  await waitFrames(page, SETTLE_FRAMES);
  await session.send('Performance.enable', { timeDomain: 'threadTicks' });
  const read = async (): Promise<Record<string, number>> => {
    const { metrics } = await session.send('Performance.getMetrics');
    return Object.fromEntries(metrics.map(({ name, value }) => [name, value]));
  };
  const startFrames = await framesOf(page);
  const before = await read();
  await waitFrames(page, WATCH_FRAMES);
  const after = await read();
  const frames = (await framesOf(page)) - startFrames;
  await close();
  const per = (name: string): number => (((after[name] ?? 0) - (before[name] ?? 0)) * 1000) / frames;
  return {
    scriptMs: per('ScriptDuration'),
    layoutMs: per('LayoutDuration') + per('RecalcStyleDuration'),
    taskMs: per('TaskDuration'),
  };
}

async function compare(sites: Sites, level: string, screen: Screen): Promise<void> {
  const costs = new Map<Show, Cost[]>(COMPARED.map((show) => [show, []]));
  for (let round = 0; round < ROUNDS; round += 1)
    for (const show of COMPARED) costs.get(show)?.push(await costOf(sites, show, level, screen));
  const of = (show: Show, pick: (cost: Cost) => number): number =>
    Math.min(...(costs.get(show) ?? []).map(pick));
  const empty = of('empty', (cost) => cost.scriptMs);
  console.log(`${level}, ${screen.width}×${screen.height}, per frame:`);
  for (const show of COMPARED) {
    const script = of(show, (cost) => cost.scriptMs);
    console.log(
      `  ${NAMES[show]}: script ${script.toFixed(2)} ms (${(script / empty).toFixed(2)} × the empty scene), style and layout ${of(show, (cost) => cost.layoutMs).toFixed(2)} ms, all tasks ${of(show, (cost) => cost.taskMs).toFixed(2)} ms`,
    );
  }
}

/** How long the scripts of each picture take, and tasks of 50 ms and more. */
const WATCH_SCRIPTS = `
  window.scriptsMs = [];
  window.longTasksMs = [];
  new PerformanceObserver((list) => list.getEntries().forEach(({ duration }) => window.longTasksMs.push(duration))).observe({ type: 'longtask' });
  const ask = window.requestAnimationFrame.bind(window);
  let lastMs = 0;
  window.requestAnimationFrame = (one) => ask((timeMs) => {
    const startMs = performance.now();
    one(timeMs);
    const tookMs = performance.now() - startMs;
    if (timeMs === lastMs) window.scriptsMs[window.scriptsMs.length - 1] += tookMs;
    else window.scriptsMs.push(tookMs);
    lastMs = timeMs;
  });`;

async function onSlowDevice(sites: Sites, level: string, screen: Screen): Promise<void> {
  const runs: { p95Ms: number; longMs: number[]; perS: number; quality: string }[] = [];
  for (let round = 0; round < ROUNDS; round += 1) {
    const { page, session, close } = await open(sites, 'game', level, { ...screen, painting: 'real' });
    await session.send('Emulation.setCPUThrottlingRate', { rate: SLOWDOWN });
    await page.waitForTimeout(SLOW_SETTLE_MS);
    await page.evaluate(WATCH_SCRIPTS);
    await page.waitForTimeout(SLOW_WATCH_MS);
    const { scripts, longMs, quality } = (await page.evaluate(
      `({ scripts: window.scriptsMs, longMs: window.longTasksMs, quality: document.querySelector('canvas[data-quality]')?.dataset.quality ?? '' })`,
    )) as { scripts: number[]; longMs: number[]; quality: string };
    await close();
    const sorted = [...scripts].sort((a, b) => a - b);
    const p95Ms = sorted[Math.floor(sorted.length * 0.95)] ?? Number.NaN;
    runs.push({ p95Ms, longMs, perS: (scripts.length * 1000) / SLOW_WATCH_MS, quality });
  }
  const best = runs.sort((a, b) => a.p95Ms - b.p95Ms)[0];
  if (best === undefined) return;
  console.log(
    `${level}, ${screen.width}×${screen.height}, CPU ${SLOWDOWN}× slower, best of ${ROUNDS}: 95 of 100 frames have at most ${best.p95Ms.toFixed(1)} ms of script, tasks above 50 ms: ${best.longMs.length === 0 ? 'none' : best.longMs.map((ms) => ms.toFixed(0)).join(', ')}, ${best.perS.toFixed(0)} frames a second, quality ${best.quality} of 2`,
  );
}

try {
  await build({
    root,
    base: './',
    logLevel: 'warn',
    configFile,
    build: { outDir: picturesFolder, emptyOutDir: true },
  });
  await build({ logLevel: 'error', configFile, build: { outDir: gameFolder, emptyOutDir: true } });
  const sites = { pictures: await openSite(picturesFolder), game: await openSite(gameFolder) };
  for (const level of LEVELS) {
    await compare(sites, level, { width: 1280, height: 720 });
    if (given.length === 0) await compare(sites, level, { width: 390, height: 844 });
    await onSlowDevice(sites, level, { width: 1280, height: 720 });
  }
  await sites.pictures.close();
  await sites.game.close();
} finally {
  for (const folder of [picturesFolder, gameFolder]) rmSync(folder, { recursive: true, force: true });
}
