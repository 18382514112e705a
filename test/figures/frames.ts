/**
 * Prints what a frame costs: an empty scene of the engine, the picture of the ride in that engine, the same
 * picture by a bare loop without one, and the whole game with instruments, help, input and sound. All in one
 * run, in turns, each several times. Needs no graphics card; the times belong to this machine.
 * Run with `npx tsx test/figures/frames.ts`.
 */
import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import type { Page } from 'playwright-core';
import { build } from 'vite';
import { openSite, type Site } from '../browser/site.ts';

const ROUNDS = 3;
const SETTLE_MS = 6_000;
const WATCH_MS = 6_000;
const LEVEL = 'rolling-road';
const SHOWS = ['empty', 'bare', 'ride', 'game'] as const;
type Show = (typeof SHOWS)[number];
const NAMES: Readonly<Record<Show, string>> = {
  empty: 'empty scene',
  bare: 'picture without an engine',
  ride: 'picture of the ride',
  game: 'whole game',
};
const root = fileURLToPath(new URL('frames', import.meta.url));
const picturesFolder = mkdtempSync(join(tmpdir(), 'frame-figures-'));
const gameFolder = mkdtempSync(join(tmpdir(), 'frame-game-'));
const configFile = fileURLToPath(new URL('../../vite.config.ts', import.meta.url));

interface Cost {
  readonly scriptMs: number;
  readonly layoutMs: number;
  readonly taskMs: number;
  readonly framesPerS: number;
}

async function measure(page: Page, slowdown: number): Promise<Cost> {
  const session = await page.context().newCDPSession(page);
  await session.send('Emulation.setCPUThrottlingRate', { rate: slowdown });
  // Fetching, compiling and painting in advance are over before it is watched.
  await page.waitForTimeout(SETTLE_MS);
  await session.send('Performance.enable');
  const read = async (): Promise<Record<string, number>> => {
    const { metrics } = await session.send('Performance.getMetrics');
    return Object.fromEntries(metrics.map(({ name, value }) => [name, value]));
  };
  // As text: the runner decorates functions with helpers that the page does not have.
  await page.evaluate(
    'window.framesSeen = 0; (function next() { window.framesSeen += 1; requestAnimationFrame(next); })()',
  );
  const framesSoFar = async (): Promise<number> => Number(await page.evaluate('window.framesSeen'));
  const before = await read();
  const startFrames = await framesSoFar();
  await page.waitForTimeout(WATCH_MS);
  const after = await read();
  const frames = (await framesSoFar()) - startFrames;
  const per = (name: string): number => (((after[name] ?? 0) - (before[name] ?? 0)) * 1000) / frames;
  return {
    scriptMs: per('ScriptDuration'),
    layoutMs: per('LayoutDuration') + per('RecalcStyleDuration'),
    taskMs: per('TaskDuration'),
    framesPerS: (frames * 1000) / WATCH_MS,
  };
}

function median(list: readonly number[]): number {
  return [...list].sort((a, b) => a - b)[Math.floor(list.length / 2)] ?? Number.NaN;
}

async function costOf(
  { pictures, game }: Sites,
  show: Show,
  size: { width: number; height: number },
  slowdown: number,
): Promise<Cost> {
  const open = await (show === 'game'
    ? game.openPage({ ...size, address: `#ride/${LEVEL}` })
    : pictures.openPage({ ...size, address: `?show=${show}` }));
  const { page } = open;
  if (show === 'game') {
    await page.click('[data-accept]');
    await page.waitForFunction(() => document.body.dataset['rideState'] === 'riding');
  } else await page.waitForSelector('canvas');
  const cost = await measure(page, slowdown);
  await open.close();
  return cost;
}

interface Sites {
  readonly pictures: Site;
  readonly game: Site;
}

async function compare(sites: Sites, width: number, height: number, slowdown: number): Promise<void> {
  const costs = new Map<Show, Cost[]>(SHOWS.map((show) => [show, []]));
  for (let round = 0; round < ROUNDS; round += 1)
    for (const show of SHOWS) costs.get(show)?.push(await costOf(sites, show, { width, height }, slowdown));
  const of = (show: Show, pick: (cost: Cost) => number): number => median((costs.get(show) ?? []).map(pick));
  const empty = of('empty', (cost) => cost.scriptMs);
  console.log(`${width}×${height}, CPU ${slowdown}× slower, per frame:`);
  for (const show of SHOWS) {
    const script = of(show, (cost) => cost.scriptMs);
    console.log(
      `  ${NAMES[show]}: script ${script.toFixed(2)} ms (${(script / empty).toFixed(2)} × the empty scene), style and layout ${of(show, (cost) => cost.layoutMs).toFixed(2)} ms, all tasks ${of(show, (cost) => cost.taskMs).toFixed(1)} ms, ${of(show, (cost) => cost.framesPerS).toFixed(0)} frames a second`,
    );
  }
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
  await compare(sites, 1280, 720, 1);
  await compare(sites, 390, 844, 1);
  await compare(sites, 1280, 720, 4);
  await sites.pictures.close();
  await sites.game.close();
} finally {
  for (const folder of [picturesFolder, gameFolder]) rmSync(folder, { recursive: true, force: true });
}
