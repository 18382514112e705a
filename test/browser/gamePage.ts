/** What tests ask of a page of the game: where it is, what the instruments say, what is kept. No expectation lives here. */
import type { Page } from 'playwright-core';

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

export const rideState = (page: Page): Promise<string | undefined> =>
  page.evaluate(() => document.body.dataset['rideState']);
/** What an instrument says. */
export const hud = (page: Page, name: string): Promise<string> => text(page, `[data-hud="${name}"]`);
export const distanceM = async (page: Page): Promise<number> =>
  Number.parseInt(await hud(page, 'distance'), 10);

/** Ride time over real time in this document. */
export const setSpeed = (page: Page, speed: number): Promise<unknown> =>
  page.evaluate((value) => Object.assign(window, { __rideTestSpeed: value }), speed);

/** Opens another page of the game in the same document. */
export async function go(page: Page, hash: string): Promise<void> {
  await page.evaluate((to) => {
    location.hash = to;
  }, hash);
}
