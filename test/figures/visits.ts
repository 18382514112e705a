/**
 * Prints how long the first visit takes on a slow network and a slow processor, how long the second one takes
 * without any network, and how much is transferred in all. Run `npm run build` first, then
 * `npx tsx test/figures/visits.ts`. Times belong to this machine.
 */
import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import type { CDPSession, Page } from 'playwright-core';
import { builtSiteFolder, openSite } from '../browser/site.ts';

const SLOWER = 4;
const ROUNDS = 3;
const SCREEN = { width: 390, height: 844, touch: true };
/** Two usual meanings of a slow 4G network. */
const NETWORKS = [
  { name: '1.6 Mbit/s, 150 ms', latency: 150, downloadThroughput: 1.6e6 / 8, uploadThroughput: 750e3 / 8 },
  { name: '1.44 Mbit/s, 562 ms', latency: 562, downloadThroughput: 1.44e6 / 8, uploadThroughput: 675e3 / 8 },
];

/** Notes when the big button was painted and when the first ride was asked for and seen. */
const WATCH = `(() => {
  window.seen = {};
  const look = () => {
    if (window.seen.usable === undefined && document.querySelector('[data-ride-next]'))
      requestAnimationFrame(() => { window.seen.usable = performance.now(); });
    if (window.seen.usable === undefined) requestAnimationFrame(look);
  };
  look();
})()`;

interface Visit {
  readonly paintedMs: number;
  readonly usableMs: number;
}

function median(list: readonly number[]): number {
  return [...list].sort((a, b) => a - b)[Math.floor(list.length / 2)] ?? Number.NaN;
}

async function until(page: Page, expression: string): Promise<void> {
  while ((await page.evaluate(`Boolean(${expression})`)) !== true) await page.waitForTimeout(20);
}

async function slow(page: Page, network: (typeof NETWORKS)[number] | null): Promise<CDPSession> {
  const session = await page.context().newCDPSession(page);
  await session.send('Emulation.setCPUThrottlingRate', { rate: SLOWER });
  if (network !== null) {
    const { latency, downloadThroughput, uploadThroughput } = network;
    await session.send('Network.enable');
    await session.send('Network.emulateNetworkConditions', {
      offline: false,
      latency,
      downloadThroughput,
      uploadThroughput,
    });
  }
  await page.addInitScript(WATCH);
  return session;
}

async function visit(page: Page, url: string): Promise<Visit> {
  await page.goto(url, { waitUntil: 'commit' });
  await until(page, 'window.seen?.usable');
  const painted = `performance.getEntriesByName('first-contentful-paint')[0]?.startTime ?? null`;
  await until(page, painted);
  return {
    paintedMs: Number(await page.evaluate(painted)),
    usableMs: Number(await page.evaluate('window.seen.usable')),
  };
}

const tell = (what: string, visits: readonly Visit[]): void =>
  console.log(
    `${what}: first paint ${median(visits.map((one) => one.paintedMs)).toFixed(0)} ms, button there ${median(visits.map((one) => one.usableMs)).toFixed(0)} ms (median of ${visits.length}; all ${visits.map((one) => one.usableMs.toFixed(0)).join(', ')})`,
  );

async function firstVisits(): Promise<void> {
  for (const network of NETWORKS) {
    const visits: Visit[] = [];
    for (let round = 0; round < ROUNDS; round += 1) {
      const site = await openSite();
      const context = await site.browser.newContext({ viewport: SCREEN, hasTouch: true });
      const page = await context.newPage();
      await slow(page, network);
      visits.push(await visit(page, site.url));
      await site.close();
    }
    tell(`First visit, ${network.name}, CPU ${SLOWER}× slower`, visits);
  }
}

async function secondVisits(): Promise<void> {
  const visits: Visit[] = [];
  for (let round = 0; round < ROUNDS; round += 1) {
    const site = await openSite();
    const open = await site.openPage(SCREEN);
    await until(open.page, `navigator.serviceWorker.controller?.state === 'activated'`);
    await open.page.close();
    await site.stopServer();
    await open.context.setOffline(true);
    const page = await open.context.newPage();
    await slow(page, null);
    visits.push(await visit(page, site.url));
    await site.close();
  }
  tell(`Second visit without a network, CPU ${SLOWER}× slower`, visits);
}

/** Everything a first visit brings onto the device, with a ride in it. */
async function transfer(): Promise<void> {
  const site = await openSite();
  const open = await site.openPage(SCREEN);
  const { page } = open;
  await until(page, `navigator.serviceWorker.controller?.state === 'activated'`);
  const sentKb = site.requests.reduce((sum, { bodyBytes }) => sum + bodyBytes, 0) / 1024;
  const files = readdirSync(builtSiteFolder, { recursive: true, encoding: 'utf8' }).filter((name) =>
    /\.\w+$/.test(name),
  );
  const plainKb =
    files.reduce((sum, name) => sum + readFileSync(join(builtSiteFolder, name)).length, 0) / 1024;
  console.log(
    `First visit until everything is on the device, sounds and pictures included: ${site.requests.length} answers, ${sentKb.toFixed(0)} KB sent. The whole site: ${files.length} files, ${plainKb.toFixed(0)} KB unpacked.`,
  );
  await site.close();
}

await firstVisits();
await secondVisits();
await transfer();
