/**
 * Prints what the built site weighs and how quickly it answers: scripts before the first ride and in all, the
 * debrief after a ride on a slow processor. Run `npm run build` first, then
 * `npx tsx test/figures/site.ts`. Times belong to this machine.
 */
import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { gzipSync } from 'node:zlib';
import type { Page } from 'playwright-core';
import { builtSiteFolder, openSite } from '../browser/site.ts';

/** The longest bundled road. */
const LONG_LEVEL = 'only-you-and-the-road';
const SLOWER = 4;

const assets = join(builtSiteFolder, 'assets');
const gzipped = (name: string): number => gzipSync(readFileSync(join(assets, name))).length;
const kilobytes = (bytes: number): string => (bytes / 1024).toFixed(1);

async function slowDown(page: Page, rate: number): Promise<void> {
  const session = await page.context().newCDPSession(page);
  await session.send('Emulation.setCPUThrottlingRate', { rate });
}

const site = await openSite();
try {
  const files = readdirSync(assets);
  const scripts = files.filter((name) => name.endsWith('.js'));
  // Without the worker that fetches the whole site in the background.
  const start = await site.openPage({
    width: 1280,
    height: 720,
    context: { serviceWorkers: 'block' },
  });
  await start.page.waitForLoadState('networkidle');
  const first = scripts.filter((name) => start.addresses.some((address) => address.endsWith(name)));
  const total = (names: readonly string[]): number => names.reduce((sum, name) => sum + gzipped(name), 0);
  const raw = files.reduce((sum, name) => sum + readFileSync(join(assets, name)).length, 0);
  console.log(
    `Scripts on the start page ${kilobytes(total(first))} KB gz (${first.length} files), all ${kilobytes(total(scripts))} KB gz; all assets with both sound formats ${kilobytes(raw)} KB uncompressed.`,
  );
  await start.close();

  const open = await site.openPage({ width: 1280, height: 720, address: `#ride/${LONG_LEVEL}` });
  const { page } = open;
  await page.evaluate('window.__rideTestSpeed = 8');
  await page.click('[data-accept]');
  await page.waitForFunction(() => document.body.dataset['rideState'] === 'riding');
  await slowDown(page, SLOWER);
  // From the end of the ride's last picture to the second frame after strip and guess stand in the page.
  await page.evaluate(`window.opened = new Promise((resolve) => {
    let finished = 0;
    const look = () => {
      const { view, rideState } = document.body.dataset;
      if (view === 'debrief' && finished === 0) finished = performance.now();
      if (view === 'debrief' && document.querySelector('[data-guess], [data-mark]') && document.querySelector('[data-track="road"]'))
        requestAnimationFrame(() => requestAnimationFrame(() => resolve([performance.now() - finished, rideState])));
      else setTimeout(look, 1);
    };
    look();
  })`);
  const [ms] = (await page.evaluate('window.opened')) as [number, string];
  console.log(
    `Debrief open ${ms.toFixed(0)} ms after its page was asked for, CPU ${SLOWER}× slower, after the longest bundled level.`,
  );
  await open.close();
} finally {
  await site.close();
}
