/**
 * Prints how soon a ride of another tablet stands on the coach's picture, counted from the moment the ride's own page
 * is over: two browsers at a club's server over plain http and a name of the local network, and nobody taps on the
 * coach's side. Run `npm run build` first, then `npx tsx test/figures/clubSeen.ts [rides]`. Rides are hurried; the
 * way of a finished ride is not.
 */
import { HALL, openClub, openDevice } from '../browser/club.ts';
import { beginOwnPlan, keptIn } from '../browser/clinicVisit.ts';
import { launchBrowser } from '../browser/site.ts';

const RIDES = Number(process.argv[2] ?? 4);
const ASKED_MS = 5_000;
const LOOK_MS = 50;

const club = await openClub();
const browser = await launchBrowser([HALL]);
const coach = await openDevice(browser, club);
const tablet = await openDevice(browser, club);
const wait = (ms: number): Promise<void> => coach.page.waitForTimeout(ms);
for (const { page } of [coach, tablet]) {
  await page.goto(club.link);
  await page.locator('[data-store-offered="code"]').waitFor();
  await page.click('[data-agree-store]');
  await page.locator('[data-store-told]').waitFor();
}

await beginOwnPlan(coach.page, club.url, 'In the hall');
await coach.page.click('[data-tab="tablets"]');
await coach.page.click('[data-carry="out"]');
const planLink = await coach.page.locator('[data-link]').inputValue();
await coach.page.goto(planLink.replace(/#.*/, '#clinic'));
await coach.page.locator('[data-go-on]').click();
await coach.page.click('[data-tab="picture"]');
await coach.page.locator('[data-store-line]').waitFor();

const { page } = tablet;
await page.goto(planLink);
await page.locator('[data-join]:not([href])').click();
for (let rider = 1; rider <= RIDES; rider += 1) {
  await page.click('[data-add]');
  await page.fill('input[name="nickname"]', `Otter ${rider}`);
  await page.keyboard.press('Enter');
}

/** What is written on the board; before the first ride there is none. */
const board = (): Promise<string> =>
  coach.page.evaluate(() => document.querySelector('.board')?.textContent ?? '');
/** Has the page note when its ride is over: a hurried one may be so before anybody looks. */
const noteTheEnd = (): Promise<void> =>
  page.evaluate(() => {
    delete document.body.dataset['overMs'];
    let isRiding = false;
    new MutationObserver((_, observer) => {
      const { view } = document.body.dataset;
      if (isRiding && view !== 'ride') {
        document.body.dataset['overMs'] = String(Date.now());
        observer.disconnect();
      }
      isRiding = view === 'ride';
    }).observe(document.body, { attributes: true, attributeFilter: ['data-view'] });
  });
const endOfRideMs = async (): Promise<number> => {
  await page.waitForFunction(() => document.body.dataset['overMs'] !== undefined);
  return Number(await page.evaluate(() => document.body.dataset['overMs']));
};
for (let ride = 1; ride <= RIDES; ride += 1) {
  const before = await board();
  if (ride > 1) await page.click('[data-next-rider]');
  await noteTheEnd();
  await page.click('[data-start]');
  const accept = page.locator('[data-accept]');
  await accept.or(page.locator('.ride')).first().waitFor();
  if ((await accept.count()) > 0) await accept.click();
  const endedMs = await endOfRideMs();
  const sinceMs = (): number => Date.now() - endedMs;
  let keptMs: number | null = null;
  while ((await board()) === before && sinceMs() < 4 * ASKED_MS) {
    const records = await keptIn<object>(coach.page, 'clinic-record');
    if (keptMs === null && records.length >= ride) keptMs = sinceMs();
    await wait(LOOK_MS);
  }
  const drawn = (await board()) === before ? 'not drawn' : `drawn after ${(sinceMs() / 1_000).toFixed(1)} s`;
  console.log(
    `ride ${ride}: ${keptMs === null ? 'not seen to be kept before it was drawn' : `kept by the coach after ${(keptMs / 1_000).toFixed(1)} s`}, ${drawn} (asked ${ASKED_MS / 1_000} s)`,
  );
  await page.locator('[data-next-rider]').waitFor();
}
for (const { problems } of [coach, tablet]) if (problems.length > 0) console.log(problems.join('\n'));
await browser.close();
await club.close();
