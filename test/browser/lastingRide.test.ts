/**
 * A ride survives what goes wrong around it: a picture that throws, a page or browser that dies, a worker that
 * hangs, a part of the game that cannot be fetched, a browser without canvas or sound.
 */
import type { Page } from 'playwright-core';
import { describe, expect, it } from 'vitest';
import { distanceM, rideState, setSpeed, view } from './gamePage.ts';
import type { OpenPage } from './site.ts';
import { siteForTests } from './siteForTests.ts';

/** Ride time over real time. */
const SPEED = 4;

const site = siteForTests();

/** Opens the site in a small window, which is drawn quickly, without the worker that keeps its files, and with something done to the page before it begins. */
async function open(before?: () => void): Promise<OpenPage> {
  const opened = await site.openPage({
    width: 640,
    height: 360,
    address: 'about:blank',
  });
  if (before !== undefined) await opened.page.addInitScript(before);
  await opened.page.goto(site.url);
  return opened;
}

async function ride(page: Page, speed = SPEED): Promise<void> {
  await setSpeed(page, speed);
  await page.click('[data-ride-next]');
  if ((await page.locator('[data-accept]').count()) > 0) await page.click('[data-accept]');
  await expect.poll(() => rideState(page)).toBe('riding');
}

describe('a picture that throws once', () => {
  it('stops the ride with a sentence, and the ride goes on where it was', async () => {
    const { page, close } = await open();
    await ride(page, 2);
    await expect.poll(() => distanceM(page)).toBeGreaterThan(20);
    await page.evaluate(() => {
      const { prototype } = CanvasRenderingContext2D;
      const real = Object.getOwnPropertyDescriptor(prototype, 'drawImage') ?? {};
      prototype.drawImage = () => {
        Object.defineProperty(prototype, 'drawImage', real);
        throw new Error('no picture');
      };
    });
    await expect.poll(() => rideState(page)).toBe('paused');
    await page.locator('[data-trouble="ride"]').waitFor();
    await expect.poll(() => page.getAttribute('[data-trouble-kept]', 'data-trouble-kept')).toBe('true');
    const stoppedM = await distanceM(page);
    const saving = page.waitForEvent('download');
    await page.click('[data-save-report]');
    const report = await (await saving).createReadStream().then(async (stream) => {
      let text = '';
      for await (const piece of stream) text += String(piece);
      return JSON.parse(text) as { happened: { kind: string }[]; ride: { ticks: number } };
    });
    expect(report.happened.map(({ kind }) => kind)).toContain('frame');
    expect(report.ride.ticks).toBeGreaterThan(120);
    // The key of the pause rides on, as in any other pause.
    await page.keyboard.press('KeyP');
    await expect.poll(() => rideState(page)).toBe('riding');
    expect(await distanceM(page)).toBeGreaterThanOrEqual(stoppedM - 1);
    await expect.poll(() => distanceM(page)).toBeGreaterThan(stoppedM + 3);
    await page.keyboard.press('Escape');
    await expect.poll(() => rideState(page)).toBe('paused');
    expect(await page.locator('[data-trouble]').count()).toBe(0);
    await close();
  });

  it('and a picture that throws again and again ends with the ride kept', async () => {
    const { page, close } = await open();
    await ride(page, 2);
    await expect.poll(() => distanceM(page)).toBeGreaterThan(20);
    await page.evaluate(() => {
      CanvasRenderingContext2D.prototype.drawImage = () => {
        throw new Error('never again');
      };
    });
    await page.click('[data-ride-on]');
    await page.locator('dialog [data-keep-unfinished]').waitFor();
    await expect.poll(() => page.locator('[data-ride-on]').count()).toBe(0);
    await page.click('[data-keep-unfinished]');
    await expect.poll(() => view(page)).toBe('progress');
    await expect.poll(() => page.locator('[data-standing="unfinished"]').count()).toBe(1);
    await close();
  });
});

describe('a picture that is asked for no more', () => {
  it('stops the ride with a sentence, and the ride goes on where it was', async () => {
    const { page, close } = await open();
    await ride(page, 2);
    await expect.poll(() => distanceM(page)).toBeGreaterThan(10);
    await page.evaluate(() => {
      const real = window.requestAnimationFrame;
      window.requestAnimationFrame = () => {
        window.requestAnimationFrame = real;
        return 0;
      };
    });
    await page.locator('[data-trouble="ride"]').waitFor();
    const stoppedM = await distanceM(page);
    await page.click('[data-ride-on]');
    await expect.poll(() => distanceM(page)).toBeGreaterThan(stoppedM + 3);
    await close();
  });
});

describe('a page that dies in the middle of a ride', () => {
  it('offers the ride at the next visit, and it goes on to its end and is kept once', async () => {
    const { page, context, close } = await open();
    await ride(page);
    await expect.poll(() => distanceM(page)).toBeGreaterThan(60);
    await page.keyboard.press('ArrowDown');
    const beforeM = await distanceM(page);
    const second = await context.newPage();
    await second.goto(site.url);
    await second.locator('[data-ride-next]').waitFor();
    await second.waitForTimeout(500);
    // While it is ridden nobody else is offered it.
    expect(await second.locator('[data-unfinished]').count()).toBe(0);
    const crashed = new Promise((resolve) => page.once('crash', resolve));
    const developer = await context.newCDPSession(page);
    developer.send('Page.crash').catch(() => undefined);
    await crashed;
    await page.close();
    await second.locator('[data-go-on]').waitFor();
    await setSpeed(second, SPEED);
    await second.click('[data-go-on]');
    await expect.poll(() => rideState(second)).toBe('riding');
    // Two seconds of riding at four times the speed, at most ten metres each.
    expect(await distanceM(second)).toBeGreaterThan(beforeM - 25);
    await setSpeed(second, 24);
    await expect.poll(() => view(second)).toBe('debrief');
    await expect.poll(() => second.getAttribute('[data-saved]', 'data-saved')).toBe('saved');
    await second.goto(`${site.url}#start`);
    await second.reload();
    await second.locator('[data-ride-next]').waitFor();
    await second.goto(`${site.url}#progress`);
    await second.locator('[data-save-everything]').waitFor();
    expect(await second.locator('[data-unfinished]').count()).toBe(0);
    await close();
  });
});

describe('a worker that hangs', () => {
  it('delays the marks, not the keeping; they come at a later visit', async () => {
    const { page, context, close } = await open(() => {
      // Takes every question and answers none.
      Object.assign(window, {
        Worker: class extends EventTarget {
          postMessage(): void {}
          terminate(): void {}
        },
      });
    });
    await ride(page, 30);
    await expect.poll(() => view(page), { timeout: 60_000 }).toBe('debrief');
    await expect.poll(() => page.getAttribute('[data-saved]', 'data-saved')).toBe('saved');
    await page.close();
    const later = await context.newPage();
    await later.goto(`${site.url}#progress`);
    await expect.poll(() => later.locator('[data-standing="to-mark"]').count()).toBe(1);
    await expect.poll(() => later.locator('[data-standing="to-mark"]').count(), { timeout: 60_000 }).toBe(0);
    await expect.poll(() => later.locator('.progress-page svg').count()).toBeGreaterThan(0);
    await close();
  });
});

describe('a part that cannot be fetched', () => {
  it('of the keeping: the ride is marked, said to be not kept yet, and kept once the part is there', async () => {
    const { page, context, close } = await open();
    let refused = true;
    // The part comes after the page, so it is waited for.
    const found = await page.waitForFunction(() =>
      performance
        .getEntriesByType('resource')
        .map(({ name }) => name)
        .find((name) => /storage/.test(name)),
    );
    const storagePart = String(await found.jsonValue());
    await context.route(storagePart, (route) => (refused ? route.abort() : route.continue()));
    await page.reload();
    await ride(page, 30);
    await expect.poll(() => view(page), { timeout: 60_000 }).toBe('debrief');
    await expect.poll(() => page.getAttribute('[data-saved]', 'data-saved')).toBe('not-saved');
    expect(await page.textContent('[data-saved]')).toContain('could not be fetched');
    await page.locator('[data-guess], [data-end]:not([data-end="open"])').first().waitFor();
    refused = false;
    await expect.poll(() => page.getAttribute('[data-saved]', 'data-saved')).toBe('saved');
    await close();
  });

  it('of worker and fallback together: the debrief says so and keeps the ride', async () => {
    const { page, context, close } = await open();
    await context.route(/work\.worker/, (route) => route.abort());
    await ride(page, 30);
    await expect.poll(() => view(page), { timeout: 60_000 }).toBe('debrief');
    await expect.poll(() => page.getAttribute('[data-saved]', 'data-saved')).toBe('saved');
    await expect.poll(() => page.locator('[data-not-marked]').count()).toBe(1);
    await close();
  });
});

describe('a browser', () => {
  it('without canvas says what is missing', async () => {
    const { page, close } = await open(() => {
      HTMLCanvasElement.prototype.getContext = () => null;
    });
    await page.click('[data-ride-next]');
    await page.click('[data-accept]');
    await expect.poll(() => page.getAttribute('[data-failed]', 'data-failed')).toBe('no-canvas');
    await close();
  });

  it('without sound rides all the same, and nothing goes wrong', async () => {
    const opened = await open(() => {
      Object.assign(window, { AudioContext: undefined, webkitAudioContext: undefined });
    });
    const { page, problems, close } = opened;
    await ride(page, 4);
    await expect.poll(() => distanceM(page)).toBeGreaterThan(30);
    await page.keyboard.press('Escape');
    await expect.poll(() => rideState(page)).toBe('paused');
    expect(await page.locator('[data-trouble]').count()).toBe(0);
    expect(problems).toEqual([]);
    await close();
  });
});
