/**
 * What the tests of group sessions need in a real browser: a short road, a name meant to do harm, a look into the
 * browser's own database, and what a checker of accessibility says about the page as it is.
 */
import type { Page } from 'playwright-core';
import { expect } from 'vitest';
import { stored, view } from './gamePage.ts';

/** Longer than any name or title may be once it is repeated, with markup, a turned direction and a bell. */
export const HARM = '<img src=x onerror="window.harmed=1"><script>window.harmed=1</script>\u202Eevil\u0007';

const shortLevel = {
  schema: 1,
  id: 'short-and-steep',
  title: 'Short and steep',
  sentence: 'One small pitch.',
  teaches: 'levers',
  audience: 'everyone',
  rung: 0,
  seed: 3,
  joinM: 10,
  pieces: [
    { kind: 'flat', lengthM: 60 },
    { kind: 'pitch', lengthM: 30, slopeRatio: 0.06 },
    { kind: 'flat', lengthM: 20 },
  ],
  cues: [],
  aids: {
    roadAhead: true,
    nextStep: true,
    clickTrack: false,
    pressureHint: true,
    liveMarks: true,
    chainView: true,
    cues: true,
  },
  weights: { cadence: 1, foresight: 1, easing: 1, chainLine: 1, economy: 1 },
  passMark: 60,
  light: 'day',
};

/** Everything of a kind in the browser's own database. */
export async function keptIn<T>(page: Page, kind: string): Promise<T[]> {
  const records = (await stored(page, 'records')) as unknown as readonly { kind: string; data: T }[];
  return records.filter((one) => one.kind === kind).map((one) => one.data);
}

/** An own level, as one that was made on this device. */
export async function putShortLevel(page: Page): Promise<void> {
  await page.evaluate(
    (level) =>
      new Promise<void>((resolve, reject) => {
        const request = indexedDB.open('before-the-hill');
        request.onerror = () => reject(request.error);
        request.onsuccess = () => {
          const work = request.result.transaction('levels', 'readwrite');
          work
            .objectStore('levels')
            .put({ schema: 1, id: level.id, savedAtMs: 1, deleted: false, level }, level.id);
          work.oncomplete = () => {
            request.result.close();
            resolve();
          };
        };
      }),
    shortLevel,
  );
}

/** Opens the game on a device that has an own level, in a hurry. */
export async function openWithShortLevel(page: Page, url: string, speed: number): Promise<void> {
  await hurry(page, speed);
  await page.goto(`${url}#about`);
  await page.locator('[data-save-everything]').waitFor();
  await putShortLevel(page);
}

/** Puts an own level on the device, makes a plan of it and begins a session with that. */
export async function beginOwnPlan(page: Page, url: string, title: string): Promise<void> {
  await putShortLevel(page);
  await page.goto(`${url}#clinic`);
  await page.reload();
  await page.click('[data-new-plan]');
  await page.fill('input[name="title"]', title);
  await page.click('[data-ride="own short-and-steep"]');
  await page.click('[data-save-go]');
  await page.click('[data-go]');
}

/** Sets the speed of rides in every document of a page, also after a reload. */
export const hurry = (page: Page, speed: number): Promise<unknown> =>
  page.addInitScript((ratio) => Object.assign(window, { __rideTestSpeed: ratio }), speed);

/** Begins the ride of whoever is next. */
export async function startTurn(page: Page): Promise<void> {
  await page.click('[data-start]');
  const accept = page.locator('[data-accept]');
  const rides = async (): Promise<boolean> => (await view(page)) === 'ride' || (await accept.count()) > 0;
  await expect.poll(rides, { timeout: 30_000, interval: 50 }).toBe(true);
  if ((await accept.count()) > 0) await accept.click();
}

/** Waits for the one line after a ride and hands the device on. */
export async function handOn(page: Page): Promise<void> {
  await page.locator('[data-next-rider]').waitFor({ timeout: 30_000 });
  // The one line about the ride stands there and stays.
  expect(await page.locator('[data-remark]').textContent()).not.toBe('');
  await page.click('[data-next-rider]');
}
