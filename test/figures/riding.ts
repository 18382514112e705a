/**
 * Prints how a ride answers and what it costs while it lasts: key press to changed gear text on a slow processor,
 * long tasks, growth of memory in ten minutes. Run `npm run build` first, then `npx tsx test/figures/riding.ts`.
 * Times belong to this machine; on a busy one the longest task is longer than it would be.
 */
import type { CDPSession, Page } from 'playwright-core';
import { openSite, type Site } from '../browser/site.ts';

const LEVEL = 'only-you-and-the-road';
const SCREEN = { width: 1280, height: 720 };
const MEGABYTE = 1024 * 1024;
const PRESSES = 16;

function median(list: readonly number[]): number {
  return [...list].sort((a, b) => a - b)[Math.floor(list.length / 2)] ?? Number.NaN;
}

async function until(page: Page, expression: string): Promise<void> {
  while ((await page.evaluate(`Boolean(${expression})`)) !== true) await page.waitForTimeout(50);
}

interface Riding {
  readonly page: Page;
  readonly session: CDPSession;
  readonly close: () => Promise<void>;
}

async function ride(site: Site, pace: number): Promise<Riding> {
  const open = await site.openPage({ ...SCREEN, address: `#ride/${LEVEL}` });
  const { page, context } = open;
  const session = await context.newCDPSession(page);
  await page.evaluate(`window.__rideTestSpeed = ${pace}`);
  await page.click('[data-accept]');
  await until(page, `document.body.dataset.rideState === 'riding'`);
  return { page, session, close: open.close };
}

/** From a key press to the first change of the gear's text (ms). */
async function keyToText(site: Site, pace: number, slowdown: number): Promise<number> {
  const { page, session, close } = await ride(site, pace);
  await session.send('Emulation.setCPUThrottlingRate', { rate: slowdown });
  await page.waitForTimeout(1500);
  const times: number[] = [];
  for (let i = 0; i < PRESSES; i += 1) {
    const ms = await page.evaluate(`new Promise((resolve) => {
      const gear = document.querySelector('[data-hud="gear"]');
      const before = gear.textContent;
      const started = performance.now();
      const observer = new MutationObserver(() => {
        if (gear.textContent === before) return;
        observer.disconnect();
        resolve(performance.now() - started);
      });
      observer.observe(gear, { childList: true, characterData: true, subtree: true });
      setTimeout(() => resolve(null), 3000);
      for (const kind of ['keydown', 'keyup'])
        window.dispatchEvent(new KeyboardEvent(kind, { code: '${i % 2 === 0 ? 'ArrowDown' : 'ArrowUp'}', bubbles: true }));
    })`);
    if (typeof ms === 'number') times.push(ms);
    await page.waitForTimeout(300);
  }
  await close();
  return median(times);
}

async function keys(site: Site): Promise<void> {
  for (const slowdown of [1, 6]) {
    const ms = await keyToText(site, 1, slowdown);
    console.log(
      `Key press to changed gear text, CPU ${slowdown}× slower: ${ms.toFixed(0)} ms (median of ${PRESSES}).`,
    );
  }
}

async function longTasks(site: Site, slowdown: number): Promise<void> {
  const { page, session, close } = await ride(site, 1);
  await session.send('Emulation.setCPUThrottlingRate', { rate: slowdown });
  // The first seconds still fetch what the debrief will want.
  await page.waitForTimeout(5000);
  await page.evaluate(`window.tasks = [];
    new PerformanceObserver((list) => list.getEntries().forEach(({ duration }) => window.tasks.push(duration)))
      .observe({ type: 'longtask' });`);
  await page.waitForTimeout(25_000);
  const tasks = (await page.evaluate('window.tasks')) as number[];
  console.log(
    `Tasks over 50 ms in 25 s of riding at ordinary speed, CPU ${slowdown}× slower: ${tasks.length}${tasks.length > 0 ? `, the longest ${Math.max(...tasks).toFixed(0)} ms` : ''}.`,
  );
  await close();
}

/** What the callbacks of a picture take, in the middle and in nineteen of twenty pictures. */
async function frameScript(site: Site, slowdown: number): Promise<void> {
  const { page, session, close } = await ride(site, 1);
  await session.send('Emulation.setCPUThrottlingRate', { rate: slowdown });
  await page.waitForTimeout(5000);
  await page.evaluate(`window.spent = [];
    const ask = window.requestAnimationFrame.bind(window);
    window.requestAnimationFrame = (paint) => ask((time) => {
      const started = performance.now();
      paint(time);
      window.spent.push(performance.now() - started);
    });`);
  await session.send('Performance.enable');
  const layout = async (): Promise<number> => {
    const { metrics } = await session.send('Performance.getMetrics');
    const of = (wanted: string): number => metrics.find(({ name }) => name === wanted)?.value ?? Number.NaN;
    return (of('LayoutDuration') + of('RecalcStyleDuration')) * 1000;
  };
  const before = await layout();
  await page.waitForTimeout(10_000);
  const layoutMs = (await layout()) - before;
  const spent = ((await page.evaluate('window.spent')) as number[]).sort((a, b) => a - b);
  const at = (share: number): number => spent[Math.floor(spent.length * share)] ?? Number.NaN;
  console.log(
    `Script of a picture, CPU ${slowdown}× slower: median ${at(0.5).toFixed(1)} ms, 95 of 100 within ${at(0.95).toFixed(1)} ms, longest ${at(0.999).toFixed(1)} ms (${spent.length} pictures); style and layout ${(layoutMs / spent.length).toFixed(2)} ms on average.`,
  );
  await close();
}

async function heap(site: Site): Promise<void> {
  const { page, session, close } = await ride(site, 8);
  await session.send('Performance.enable');
  const read = async (): Promise<number> => {
    await session.send('HeapProfiler.collectGarbage');
    const { metrics } = await session.send('Performance.getMetrics');
    return (metrics.find(({ name }) => name === 'JSHeapUsedSize')?.value ?? Number.NaN) / MEGABYTE;
  };
  // More than a minute of riding: what is compiled and painted once has been by then.
  await page.waitForTimeout(10_000);
  const startedMs = Date.now();
  const first = await read();
  let last = first;
  let minutes = 0;
  while ((await page.evaluate('document.body.dataset.rideState')) === 'riding' && minutes < 10) {
    last = await read();
    minutes = ((Date.now() - startedMs) / 60_000) * 8;
    await page.waitForTimeout(2000);
  }
  console.log(
    `Heap after collecting: ${first.toFixed(2)} MB, ${last.toFixed(2)} MB after ${minutes.toFixed(1)} more minutes of one ride: ${(((last - first) / minutes) * 10).toFixed(2)} MB in ten minutes.`,
  );
  await close();
}

const site = await openSite();
try {
  await keys(site);
  for (const slowdown of [1, 4]) await longTasks(site, slowdown);
  await frameScript(site, 4);
  await heap(site);
} finally {
  await site.close();
}
