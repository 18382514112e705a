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

/**
 * Lets a ride that is led go on for so long (ms of ride time, at most 250 times its speed), in one picture, and answers
 * when that is drawn; what is asked for then lies still.
 */
export type Lead = (rideMs: number) => Promise<void>;

/**
 * From now on a ride goes on only as far as a script lets it: the road waits while the script reads and thinks, however
 * busy the machine is, and nobody waits for the road. What is not a ride is painted as before.
 * @param speed ride time over the time of pictures
 */
export async function leadRides(page: Page, speed: number): Promise<Lead> {
  await page.evaluate((ratio) => {
    const before = window.requestAnimationFrame.bind(window);
    const cancel = window.cancelAnimationFrame.bind(window);
    const riding = (): boolean => document.body.dataset['rideState'] === 'riding';
    const waiting = new Map<number, FrameRequestCallback>();
    let newest = -1;
    let nowMs = 0;
    const draw = (): void => {
      const all = [...waiting.values()];
      waiting.clear();
      for (const one of all) one(nowMs);
    };
    window.requestAnimationFrame = (one) => {
      if (!riding()) {
        return before((timeMs) => {
          nowMs = Math.max(nowMs, timeMs);
          one(timeMs);
        });
      }
      newest -= 1;
      waiting.set(newest, one);
      return newest;
    };
    window.cancelAnimationFrame = (id) => (id < 0 ? waiting.delete(id) : cancel(id));
    // A picture in which no time has passed: the game stops a ride of which none is drawn for seconds.
    window.setInterval(draw, 500);
    Object.assign(window, {
      __rideTestSpeed: ratio,
      leadOn: async (pictureMs: number) => {
        if (riding()) nowMs += pictureMs;
        draw();
        // What the picture asked for is done; where nobody rides there is something to wait for.
        await new Promise((resolve) => window.setTimeout(resolve, riding() ? 0 : 50));
      },
    });
  }, speed);
  return (rideMs) =>
    page.evaluate(
      (pictureMs) => (window as unknown as { leadOn: (ms: number) => Promise<void> }).leadOn(pictureMs),
      rideMs / speed,
    );
}
