/**
 * Rides for an hour of ride time, one ride after another at eight times the speed, and prints what that did: rides,
 * kept rides, problems, memory after each debrief. Run `npm run build` first, then `npx tsx test/figures/soak.ts`,
 * which takes about eight minutes; a number behind it asks for other minutes of ride time.
 */
import type { CDPSession, Page } from 'playwright-core';
import { openSite } from '../browser/site.ts';

const SPEED = 8;
const RIDE_MINUTES = Number(process.argv[2] ?? 60);
/** One of each land. */
const LEVELS = [
  'two-levers',
  'one-pitch-announced',
  'rolling-road',
  'ring-and-back',
  'wind-and-gravel',
  'ready-to-go',
];
/** Keys a restless rider presses. */
const KEYS = ['ArrowDown', 'ArrowUp', 'ArrowDown', 'Space', 'ArrowUp', 'KeyS', 'KeyW'];
const MEGABYTE = 1024 * 1024;

interface Memory {
  readonly heapMb: number;
  readonly nodes: number;
  readonly listeners: number;
}

async function memoryOf(session: CDPSession): Promise<Memory> {
  await session.send('HeapProfiler.collectGarbage');
  const { metrics } = await session.send('Performance.getMetrics');
  const of = (name: string): number => metrics.find((metric) => metric.name === name)?.value ?? Number.NaN;
  return { heapMb: of('JSHeapUsedSize') / MEGABYTE, nodes: of('Nodes'), listeners: of('JSEventListeners') };
}

const ridesKept = (page: Page): Promise<unknown> =>
  page.evaluate(`new Promise((resolve, reject) => {
    const request = indexedDB.open('before-the-hill');
    request.onerror = () => reject(request.error);
    request.onsuccess = () => {
      const count = request.result.transaction('rides').objectStore('rides').count();
      count.onsuccess = () => { request.result.close(); resolve(count.result); };
    };
  })`);

async function until(page: Page, expression: string): Promise<void> {
  for (let tries = 0; tries < 1200; tries += 1) {
    if ((await page.evaluate(`Boolean(${expression})`)) === true) return;
    await page.waitForTimeout(50);
  }
  throw new Error(
    `waited in vain for ${expression} at ${page.url()}: ${String(await page.evaluate('document.body.innerText'))}`,
  );
}

/** One ride with its debrief; answers with its ride time (s). */
async function rideOnce(page: Page, number: number): Promise<number> {
  const level = LEVELS[number % LEVELS.length];
  await page.evaluate(`location.hash = '#ride/${level}'`);
  await until(
    page,
    `document.querySelector('[data-accept]') || document.body.dataset.rideState === 'riding'`,
  );
  await page.evaluate(`document.querySelector('[data-accept]')?.click()`);
  await until(page, `document.body.dataset.rideState === 'riding'`);
  const startedMs = Date.now();
  for (let i = 0; (await page.evaluate('document.body.dataset.view')) === 'ride'; i += 1) {
    await page.keyboard.press(KEYS[(number + i) % KEYS.length] ?? 'Space', { delay: 60 });
    await page.waitForTimeout(700);
  }
  const riddenS = ((Date.now() - startedMs) / 1000) * SPEED;
  await until(page, `document.querySelector('[data-guess], [data-mark]')`);
  await page.evaluate(`document.querySelector('[data-guess="about-right"]')?.click()`);
  await until(page, `document.querySelectorAll('[data-mark]').length === 5`);
  await page.evaluate(`location.hash = '#start'`);
  await until(page, `document.querySelector('[data-ride-next]')`);
  await page.waitForTimeout(500);
  return riddenS;
}

const site = await openSite();
try {
  // Painted and heard as it comes: a sound that never plays is never done with.
  const open = await site.openPage({ width: 1280, height: 720, painting: 'real' });
  const { page } = open;
  const session = await open.context.newCDPSession(page);
  await session.send('Performance.enable');
  await page.evaluate(`window.__rideTestSpeed = ${SPEED}`);
  const seen: Memory[] = [];
  let riddenS = 0;
  for (let ride = 0; riddenS < RIDE_MINUTES * 60; ride += 1) {
    riddenS += await rideOnce(page, ride);
    const now = await memoryOf(session);
    seen.push(now);
    console.log(
      `ride ${ride + 1}, ${(riddenS / 60).toFixed(0)} min ridden, heap ${now.heapMb.toFixed(2)} MB, ${now.nodes} nodes, ${now.listeners} listeners, kept ${String(await ridesKept(page))}`,
    );
  }
  // The first round over all levels fills caches; what comes after must stay level.
  const from = seen[Math.min(LEVELS.length, seen.length - 1)];
  const to = seen.at(-1);
  if (from === undefined || to === undefined) throw new Error('nothing was ridden');
  const growth = to.heapMb - from.heapMb;
  console.log(
    `${seen.length} rides, ${String(await ridesKept(page))} kept; heap ${growth.toFixed(2)} MB more than after ride ${LEVELS.length + 1}, nodes ${to.nodes - from.nodes}, listeners ${to.listeners - from.listeners}; problems: ${open.problems.length === 0 ? 'none' : open.problems.join('; ')}`,
  );
} finally {
  await site.close();
}
