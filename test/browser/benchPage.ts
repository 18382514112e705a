/** The level bench as the browser tests use it: a made-up ride, what is kept, rides to the end. No expectation of the bench lives here. */
import type { Page } from 'playwright-core';
import { expect } from 'vitest';
import { gpxText, northward, trackText } from '../core/gpx/files.ts';

const SPEED = 12;

/** A ride with everything personal a device writes. */
export const points = northward(601, 10, (x) => 300 + 12 * Math.sin(x / 120)).map((point, i) => ({
  ...point,
  time: new Date(Date.UTC(2021, 4, 16, 9, 0, i * 2)).toISOString(),
  inside: '<extensions><hr>143</hr><cad>71</cad></extensions>',
}));
export const PERSONAL = ['Zora', '46.', '10.0', '2021-05', '"hr"', '143', '"cad"', 'lat', 'lon'];
export const rideText = gpxText(`<metadata><name>Zora at home</name></metadata>${trackText(points)}`);
export const gpx = (text: string, name = 'zora.gpx') => ({
  name,
  mimeType: 'application/gpx+xml',
  buffer: Buffer.from(text),
});

/** Everything of one part of the browser's own database. */
export function stored(page: Page, store: string): Promise<Record<string, unknown>[]> {
  return page.evaluate(
    (name) =>
      new Promise<Record<string, unknown>[]>((resolve, reject) => {
        const request = indexedDB.open('before-the-hill');
        request.onerror = () => reject(request.error ?? new Error('no database'));
        request.onsuccess = () => {
          const all = request.result.transaction(name).objectStore(name).getAll();
          all.onsuccess = () => {
            request.result.close();
            resolve(all.result as Record<string, unknown>[]);
          };
        };
      }),
    store,
  );
}

export const view = (page: Page): Promise<string | undefined> =>
  page.evaluate(() => document.body.dataset['view']);
export const text = async (page: Page, selector: string): Promise<string> =>
  (await page.locator(selector).first().textContent()) ?? '';

export async function go(page: Page, hash: string): Promise<void> {
  await page.evaluate((to) => {
    location.hash = to;
  }, hash);
}

/** Rides of this page are faster than life. */
export async function hurry(page: Page): Promise<void> {
  await page.evaluate((speed) => Object.assign(window, { __rideTestSpeed: speed }), SPEED);
}

/** Rides to the end and waits until the ride is kept; answers with the fingerprint of its road. */
export async function rideToTheEnd(page: Page): Promise<unknown> {
  await expect.poll(() => view(page), { timeout: 90_000, interval: 100 }).toBe('debrief');
  await expect.poll(() => page.locator('[data-saved="saved"]').count()).toBe(1);
  return (await stored(page, 'rides')).at(-1)?.['levelHash'];
}
