/**
 * Prints what a frame of the ride costs in script beside an empty scene on the same engine: both in one run,
 * in turns, each several times. Needs no graphics card; figures are ratios, the times belong to this machine.
 * Run with `npx tsx test/figures/frames.ts`.
 */
import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import type { Page } from 'playwright-core';
import { build } from 'vite';
import { openSite } from '../browser/site.ts';

const ROUNDS = 3;
const WATCH_MS = 4_000;
const root = fileURLToPath(new URL('frames', import.meta.url));
const folder = mkdtempSync(join(tmpdir(), 'frame-figures-'));

interface Cost {
  readonly scriptMs: number;
  readonly taskMs: number;
  readonly framesPerS: number;
}

async function measure(page: Page, slowdown: number): Promise<Cost> {
  const session = await page.context().newCDPSession(page);
  await session.send('Emulation.setCPUThrottlingRate', { rate: slowdown });
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
    taskMs: per('TaskDuration'),
    framesPerS: (frames * 1000) / WATCH_MS,
  };
}

function median(list: readonly number[]): number {
  return [...list].sort((a, b) => a - b)[Math.floor(list.length / 2)] ?? Number.NaN;
}

async function compare(width: number, height: number, slowdown: number): Promise<void> {
  const site = await openSite(folder);
  const costs: Record<string, Cost[]> = { empty: [], ride: [] };
  for (let round = 0; round < ROUNDS; round += 1) {
    for (const show of ['empty', 'ride']) {
      const open = await site.openPage({ width, height, address: `?show=${show}` });
      await open.page.waitForSelector('canvas');
      await open.page.waitForTimeout(2_000);
      costs[show]?.push(await measure(open.page, slowdown));
      await open.close();
    }
  }
  await site.close();
  const of = (show: string, pick: (cost: Cost) => number): number => median((costs[show] ?? []).map(pick));
  const empty = of('empty', (cost) => cost.scriptMs);
  const ride = of('ride', (cost) => cost.scriptMs);
  console.log(
    `${width}×${height}, CPU ${slowdown}× slower: script per frame ${ride.toFixed(2)} ms, empty scene ${empty.toFixed(2)} ms, ratio ${(ride / empty).toFixed(2)}; all tasks ${of('ride', (cost) => cost.taskMs).toFixed(1)} against ${of('empty', (cost) => cost.taskMs).toFixed(1)} ms; ${of('ride', (cost) => cost.framesPerS).toFixed(0)} frames a second`,
  );
}

try {
  await build({
    root,
    base: './',
    logLevel: 'warn',
    configFile: fileURLToPath(new URL('../../vite.config.ts', import.meta.url)),
    build: { outDir: folder, emptyOutDir: true },
  });
  await compare(1280, 720, 1);
  await compare(390, 844, 1);
  await compare(1280, 720, 4);
} finally {
  rmSync(folder, { recursive: true, force: true });
}
