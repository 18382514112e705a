/**
 * Rides by somebody who only listens, to the end of what is said of them. Beside it is noted when each line was there
 * to be read, to see how late the voice came.
 */
import { hear, type KnownKeys, press, rideByEar } from './listener.ts';
import type { ReadAloud } from './screenReader.ts';

/** What became of a ride by ear. */
export interface HeardRide {
  readonly total: number;
  readonly passed: boolean;
  /** Each line that was heard, and from its being there to its being heard (s). */
  readonly lines: readonly { readonly text: string; readonly lateS: number }[];
  /** Lines heard again within four seconds. */
  readonly twice: readonly string[];
  /** What was heard after the ride, in order. */
  readonly after: readonly string[];
}

interface Put {
  readonly atMs: number;
  readonly text: string;
}

/** Who hears the same words again sooner than this has been told twice. */
const TWICE_MS = 4000;
const OVER = 'The ride is over.';
const QUESTION = /^On .+, your shifting was/;
const ENDED = /You made it|The hill waits for you/;

/** Notes every line of a ride as it is put before the reader, and when a ride is over; once for a page. */
async function noteLines({ page }: ReadAloud): Promise<void> {
  await page.evaluate(() => {
    const put: Put[] = [];
    Object.assign(window, { put });
    new MutationObserver(() => {
      if (document.body.dataset['view'] === 'debrief')
        put.push({ atMs: Date.now(), text: 'The ride is over.' });
    }).observe(document.body, { attributeFilter: ['data-view'] });
    new MutationObserver((changes) => {
      for (const { target } of changes)
        if (target instanceof Element && target.matches('[data-place="ear"]') && target.textContent !== '')
          put.push({ atMs: Date.now(), text: target.textContent ?? '' });
    }).observe(document.body, { childList: true, subtree: true });
  });
}

const isRiding = ({ page }: ReadAloud): Promise<boolean> =>
  page.evaluate(() => document.body.dataset['view'] === 'ride');

/** Rides from a pressed key on, guesses nothing, and listens to what the ride came to. */
async function heardRide(site: ReadAloud, beganMs: number, known: KnownKeys): Promise<HeardRide> {
  await rideByEar(site, beganMs, known, () => isRiding(site));
  const lines = (): Promise<Put[]> => site.page.evaluate(() => (window as unknown as { put: Put[] }).put);
  const overMs = (await lines()).findLast(({ text }) => text === OVER)?.atMs ?? Date.now();
  await hear(site, overMs, QUESTION, 60_000);
  const askedMs = await press(site, /^Just tell me/);
  await hear(site, askedMs, ENDED, 60_000);
  const put = await lines();
  const heard = site.heard().filter(({ givenMs, fromMs, toMs }) => givenMs > beganMs && toMs > fromMs);
  const spoken = heard.flatMap(({ text, fromMs, givenMs }) => {
    const was = put.findLast((one) => one.text === text && one.atMs <= givenMs);
    return was === undefined || was.atMs < beganMs
      ? []
      : [{ text, fromMs, lateS: (fromMs - was.atMs) / 1000 }];
  });
  return {
    ...(await site.page.evaluate(() => ({
      total: Number(document.querySelector('[data-debrief="total"] b')?.textContent),
      passed: document.querySelector<HTMLElement>('[data-end]')?.dataset['end'] === 'passed',
    }))),
    lines: spoken.map(({ text, lateS }) => ({ text, lateS })),
    twice: spoken
      .filter(
        ({ text, fromMs }, i) =>
          spoken[i - 1]?.text === text && fromMs - (spoken[i - 1]?.fromMs ?? 0) < TWICE_MS,
      )
      .map(({ text }) => text),
    after: heard.filter(({ givenMs }) => givenMs >= overMs).map(({ text }) => text),
  };
}

/** From the first page: the first level by ear, then the announced pitch. */
export async function ridesByEar(site: ReadAloud): Promise<readonly HeardRide[]> {
  const known = { easier: '', harder: '', soft: '' };
  await hear(site, 0, /^Finished loading/, 60_000);
  await noteLines(site);
  const askedMs = await press(site, /^Ride by ear/);
  await hear(site, askedMs, /^A game teaches timing/);
  const beganMs = Date.now();
  site.press('Return');
  const first = await heardRide(site, beganMs, known);
  await press(site, /^Start/, 'shift+Tab');
  await press(site, /^All levels/);
  return [first, await heardRide(site, await press(site, /^One pitch, announced/), known)];
}
