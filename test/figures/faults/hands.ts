/** What persons, browsers and systems do to a page from outside while it is used. */
import type { BrowserContext, Page } from 'playwright-core';
import { breakInside } from './inside.ts';
import { JOURNEYS } from './journeys.ts';
import type { Fault, Hand } from './types.ts';

export interface HandPlace {
  readonly page: Page;
  readonly context: BrowserContext;
  readonly url: string;
  readonly fault: Fault;
}

export interface HandResult {
  readonly happened: boolean;
  /** The page is gone, and the person knows. */
  readonly taken: boolean;
}

const DONE: HandResult = { happened: true, taken: false };
const TAKEN: HandResult = { happened: true, taken: true };
const KEYS = ['Escape', 'KeyP', 'Tab', 'ArrowUp', 'ArrowDown', 'KeyS', 'KeyW', 'Backspace', 'F1', 'KeyM'];

const pause = (page: Page, ms: number): Promise<void> => page.waitForTimeout(ms);

async function secondTab({ context, url, fault }: HandPlace, same: boolean): Promise<HandResult> {
  const second = await context.newPage();
  await second.addInitScript(breakInside, null);
  await second.goto(same ? url + JOURNEYS[fault.journey].from : `${url}#progress`);
  await second.locator('h1').first().waitFor();
  await second.close();
  return DONE;
}

async function withDeveloper(
  { page, context }: HandPlace,
  work: (send: (method: string, given?: object) => Promise<unknown>) => Promise<void>,
): Promise<HandResult> {
  const developer = await context.newCDPSession(page);
  const send = developer.send.bind(developer) as (method: string, given?: object) => Promise<unknown>;
  await work(send);
  return DONE;
}

/** Does it, and leaves the page as it would be left in life. */
export async function doByHand(hand: Hand, place: HandPlace): Promise<HandResult> {
  const { page, context, url } = place;
  const origin = new URL(url).origin;
  switch (hand) {
    case 'reload':
      await page.reload({ waitUntil: 'commit' });
      return TAKEN;
    case 'close-tab':
      await page.close({ runBeforeUnload: false });
      return TAKEN;
    case 'kill-tab':
      await Promise.all([page.waitForEvent('crash'), page.goto('chrome://crash').catch(() => undefined)]);
      await page.close();
      return TAKEN;
    case 'go-back':
      await page.goBack({ waitUntil: 'commit', timeout: 2000 }).catch(() => undefined);
      await page.goForward({ waitUntil: 'commit', timeout: 2000 }).catch(() => undefined);
      return DONE;
    case 'second-tab':
      return secondTab(place, false);
    case 'second-tab-same-journey':
      return secondTab(place, true);
    case 'blur':
      await page.evaluate(() => window.dispatchEvent(new Event('blur')));
      return DONE;
    case 'hide':
      await page.evaluate(() => {
        Object.defineProperty(document, 'hidden', { configurable: true, value: true });
        document.dispatchEvent(new Event('visibilitychange'));
      });
      await pause(page, 300);
      await page.evaluate(() => {
        delete (document as unknown as Record<string, unknown>)['hidden'];
        document.dispatchEvent(new Event('visibilitychange'));
      });
      return DONE;
    case 'freeze':
      return withDeveloper(place, async (send) => {
        await send('Page.setWebLifecycleState', { state: 'frozen' });
        await new Promise((resolve) => setTimeout(resolve, 400));
        await send('Page.setWebLifecycleState', { state: 'active' });
      });
    case 'offline':
      await context.setOffline(true);
      return DONE;
    case 'turn-device':
      await page.setViewportSize({ width: 360, height: 480 });
      await pause(page, 200);
      await page.setViewportSize({ width: 480, height: 360 });
      return DONE;
    case 'tiny-window':
      await page.setViewportSize({ width: 240, height: 160 });
      await pause(page, 200);
      await page.setViewportSize({ width: 480, height: 360 });
      return DONE;
    case 'more-contrast':
      await page.emulateMedia({ forcedColors: 'active', contrast: 'more' });
      return DONE;
    case 'less-motion':
      await page.emulateMedia({ reducedMotion: 'reduce', colorScheme: 'dark' });
      return DONE;
    case 'print':
      await page.pdf();
      return DONE;
    case 'memory-pressure':
      return withDeveloper(place, async (send) => {
        await send('Memory.simulatePressureNotification', { level: 'critical' });
        await send('HeapProfiler.collectGarbage');
      });
    case 'slow-processor':
      return withDeveloper(place, async (send) => {
        await send('Emulation.setCPUThrottlingRate', { rate: 6 });
      });
    case 'real-quota':
      return withDeveloper(place, async (send) => {
        await send('Storage.overrideQuotaForOrigin', { origin, quotaSize: 1 });
      });
    case 'close-databases':
      await page.evaluate(() => {
        for (const name of ['versionchange', 'close']) window.dispatchEvent(new Event(name));
        return new Promise<void>((resolve) => {
          // A version change is asked of everybody who holds the database, and then not made.
          const request = indexedDB.open('before-the-hill', 2);
          request.addEventListener('upgradeneeded', () => request.transaction?.abort());
          for (const end of ['success', 'error', 'blocked']) request.addEventListener(end, () => resolve());
        });
      });
      return DONE;
    case 'clear-cache':
      return withDeveloper(place, async (send) => {
        await send('Network.clearBrowserCache');
        await send('Storage.clearDataForOrigin', { origin, storageTypes: 'cache_storage,service_workers' });
      });
    case 'press-everything':
      for (const key of KEYS) await page.keyboard.press(key, { delay: 10 });
      return DONE;
  }
}
