/**
 * Without a network, with a newer version, and with a script that does not belong there: the built site in a real
 * browser keeps riding, loses nothing, and lets nothing in.
 */
import { createHash } from 'node:crypto';
import { cpSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import type { Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { siteHeaders } from '../../.ci/policy.mjs';
import { rideState, setSpeed, stored, view } from './gamePage.ts';
import { builtSiteFolder, type OpenPage, openSite, type Site } from './site.ts';

/** Drawn quickly. */
const SMALL = { width: 640, height: 360, offline: true };
const SPEED = 24;

/** Copies of the built site: one that gets newer, one that somebody tampered with. */
let folder: string;
let tamperedSite: string;
let site: Site;

beforeAll(async () => {
  folder = mkdtempSync(join(tmpdir(), 'offline-site-'));
  cpSync(builtSiteFolder, folder, { recursive: true });
  tamperedSite = mkdtempSync(join(tmpdir(), 'tampered-site-'));
  cpSync(builtSiteFolder, tamperedSite, { recursive: true });
  // A page on a host that adds no headers; what stands in it must be enough.
  site = await openSite(folder, '/any/path/');
});

afterAll(async () => {
  await site?.close();
  for (const one of [folder, tamperedSite]) rmSync(one, { recursive: true, force: true });
});

const VERSION = 'meta[name="test-version"]';
const version = (page: Page) => page.locator(VERSION).getAttribute('content');
/** The site's own; copies of rides lie in another. */
const caches = (page: Page) =>
  page.evaluate(
    async () =>
      (await window.caches.keys()).filter((name) => name.startsWith('before-the-hill.site.')).length,
  );

/** Waits until the worker has every file and answers for the page. */
async function installed(page: Page): Promise<void> {
  await expect.poll(() => page.evaluate(() => navigator.serviceWorker.controller?.state)).toBe('activated');
}

async function beginRide(page: Page): Promise<void> {
  await setSpeed(page, SPEED);
  await page.click('[data-ride-next]');
  const cautions = page.locator('[data-accept]');
  if ((await cautions.count()) > 0) await cautions.click();
  await expect.poll(() => rideState(page)).toBe('riding');
}

/** Rides to the end, guesses, and waits until the debrief has its marks and the ride is kept. */
async function rideToDebrief(page: Page): Promise<void> {
  await page.keyboard.press('ArrowDown');
  await expect.poll(() => view(page)).toBe('debrief');
  await page.locator('[data-guess], [data-end]:not([data-end="open"])').first().waitFor();
  if ((await page.locator('[data-guess]').count()) > 0) await page.click('[data-guess="about-right"]');
  await expect.poll(() => page.locator('[data-mark]').count()).toBe(5);
}

/** Rides in the browser's own database. */
const ridesKept = async (page: Page): Promise<number> => (await stored(page, 'rides')).length;

/** Publishes a version that differs in its page, as a build would. */
function publishNewer(number: number): void {
  const file = (name: string): string => join(folder, name);
  const print = (text: string): string =>
    createHash('sha256').update(text).digest().subarray(0, 16).toString('base64url');
  const before = readFileSync(file('index.html'), 'utf8');
  const tag = `<meta name="test-version" content="${number}">`;
  const after = before.replace(/<meta name="test-version"[^>]*>|(?=<meta charset)/, tag);
  const worker = readFileSync(file('offline.js'), 'utf8');
  if (!worker.includes(print(before))) throw new Error('the worker does not know the page');
  writeFileSync(file('index.html'), after);
  writeFileSync(file('offline.js'), worker.replace(print(before), print(after)));
}

describe('a newer version', () => {
  it('waits for the end of a ride, loses nothing, is offered, and comes when asked for', async () => {
    const open = await site.openPage(SMALL);
    const { page } = open;
    await installed(page);
    await beginRide(page);
    publishNewer(2);
    await page.evaluate(async () => {
      const registration = await navigator.serviceWorker.getRegistration();
      void registration?.update();
    });
    // Browsers fetch a new worker when they have time, which a small computer has not while it draws a ride.
    await page.keyboard.press('Escape');
    const distance = await page.locator('[data-hud="distance"]').textContent();
    await expect
      .poll(() =>
        page.evaluate(async () => (await navigator.serviceWorker.getRegistration())?.waiting?.state),
      )
      .toBe('installed');
    expect([await view(page), await rideState(page)]).toEqual(['ride', 'paused']);
    expect(await page.locator('[data-hud="distance"]').textContent()).toBe(distance);
    await page.click('[data-ride-on]');
    await expect.poll(() => rideState(page)).toBe('riding');
    await rideToDebrief(page);
    expect(await page.locator('[data-load-newer]').count()).toBe(0);
    await expect.poll(() => ridesKept(page)).toBe(1);
    expect(await page.locator(VERSION).count()).toBe(0);
    await page.evaluate(() => {
      location.hash = '#start';
    });
    await page.click('[data-load-newer]');
    await expect.poll(() => version(page).catch(() => null)).toBe('2');
    await page.locator('[data-ride-next]').waitFor();
    expect(await ridesKept(page)).toBe(1);
    expect(await page.locator('[data-load-newer]').count()).toBe(0);
    expect(open.problems).toEqual([]);
    await open.close();
  });

  it('that arrives in pieces is not taken; the one that is here stays whole', async () => {
    const open = await site.openPage(SMALL);
    const { page } = open;
    await installed(page);
    const before = await version(page);
    publishNewer(3);
    // The page of one version beside the list of another, as in the middle of an upload.
    writeFileSync(
      join(folder, 'index.html'),
      readFileSync(join(folder, 'index.html'), 'utf8').replace('content="3"', 'content="4"'),
    );
    const outcome = await page.evaluate(async () => {
      const registration = await navigator.serviceWorker.getRegistration();
      await registration?.update();
      const worker = registration?.installing;
      if (worker === null || worker === undefined) return 'nothing to install';
      return new Promise<string>((resolve) =>
        worker.addEventListener('statechange', () => resolve(worker.state)),
      );
    });
    expect(outcome).toBe('redundant');
    expect(await caches(page)).toBe(1);
    await page.reload();
    expect(await version(page)).toBe(before);
    await open.close();
  });
});

describe('deleting everything', () => {
  it('takes the kept files as well, and the next visit brings them back', async () => {
    const whole = await openSite();
    const open = await whole.openPage(SMALL);
    const { page } = open;
    await installed(page);
    expect(await caches(page)).toBe(1);
    await page.evaluate(() => {
      location.hash = '#about';
    });
    await page.click('[data-delete-everything]');
    await page.click('[data-delete-sure]');
    await expect.poll(() => caches(page)).toBe(0);
    await page.goto(whole.url);
    await installed(page);
    expect(await caches(page)).toBe(1);
    await open.close();
    await whole.close();
  });
});

describe('flight mode after the first visit', () => {
  it('has start page, ride with sound, and debrief', async () => {
    const whole = await openSite(builtSiteFolder, '/some/club/');
    const first = await whole.openPage(SMALL);
    await installed(first.page);
    await first.page.close();
    await whole.stopServer();
    await first.context.setOffline(true);
    const page = await first.context.newPage();
    await page.goto(`${whole.url}?from=a-mail#start`);
    await beginRide(page);
    await rideToDebrief(page);
    expect(await ridesKept(page)).toBe(1);
    const sounds = await page.evaluate(
      () => performance.getEntriesByType('resource').filter(({ name }) => name.endsWith('.webm')).length,
    );
    expect(sounds).toBeGreaterThan(5);
    await page.goto(`${whole.url}index.html#levels`);
    await page.getByRole('heading', { level: 1 }).waitFor();
    expect(first.problems).toEqual([]);
    await first.close();
    await whole.close();
  });
});

/** Notes what the policy of the page stops, from its first moment on. */
async function watchPolicy(open: OpenPage, url: string): Promise<() => Promise<string[]>> {
  await open.page.addInitScript(() => {
    const stopped: string[] = [];
    Object.assign(window, { stopped });
    document.addEventListener('securitypolicyviolation', (event) =>
      stopped.push(`${event.effectiveDirective} ${event.blockedURI}`),
    );
  });
  await open.page.goto(url);
  return () => open.page.evaluate(() => (window as unknown as { stopped: string[] }).stopped);
}

describe.each([
  ['in the page alone', {}],
  ['in page and answers', siteHeaders],
])('the policy, %s,', (_where, headers) => {
  it('stops nothing of a ride and its debrief, and everything that does not belong here', async () => {
    const guarded = await openSite(tamperedSite, '/', headers);
    const untouched = readFileSync(join(tamperedSite, 'index.html'), 'utf8');
    writeFileSync(
      join(tamperedSite, 'tampered.html'),
      untouched.replace('<body>', '<body><script>window.slippedIn = true</script>'),
    );
    const open = await guarded.openPage(SMALL);
    const { page } = open;
    const stopped = await watchPolicy(open, guarded.url);
    await installed(page);
    await beginRide(page);
    await rideToDebrief(page);
    expect(await stopped()).toEqual([]);
    expect(open.problems).toEqual([]);
    const tried = await page.evaluate(async () => {
      const refused = (work: () => unknown): string => {
        try {
          work();
          return 'done';
        } catch (error) {
          return (error as Error).name;
        }
      };
      const image = new Image();
      image.src = 'http://elsewhere.example/a.png';
      return [
        refused(() => {
          document.body.innerHTML = '<b>no</b>';
        }),
        refused(() => new Worker('data:text/javascript,1')),
        // From a task of the page: what a test evaluates itself may write code.
        await new Promise<string>((resolve) =>
          setTimeout(() => resolve(refused(() => Reflect.construct(Function, ['return 1']))), 100),
        ),
      ];
    });
    expect(tried).toEqual(['TypeError', 'TypeError', 'EvalError']);
    const all = (await stopped()).join('\n');
    expect(all).toMatch(/img-src http:\/\/elsewhere\.example/);
    expect(all).toMatch(/require-trusted-types-for trusted-types-sink/);

    const second = await guarded.openPage(SMALL);
    const stoppedThere = await watchPolicy(second, `${guarded.url}tampered.html`);
    await second.page.locator('[data-ride-next]').waitFor();
    expect(await second.page.evaluate(() => 'slippedIn' in window)).toBe(false);
    expect(await stoppedThere()).toContain('script-src-elem inline');
    await second.close();
    await open.close();
    await guarded.close();
  });
});
