/**
 * A club's evening in real browsers, over plain http and a name of the local network: everybody opens the settings
 * once, a ride of one tablet is seen by the coach without a tap, the server is killed and comes back, and what was
 * collected by file from a tablet without a network reaches the others.
 */
import type { Browser, Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import type { RideRecord } from '../../src/core/group/records/record.ts';
import { type Club, HALL, openClub, openDevice } from './club.ts';
import { keptIn, beginOwnPlan, startTurn } from './clinicVisit.ts';
import { launchBrowser, type OpenPage } from './site.ts';

let club: Club;
let browser: Browser;
let coach: OpenPage;
let tablet: OpenPage;
let planLink = '';

async function rideNext(page: Page): Promise<void> {
  const next = page.locator('[data-next-rider]');
  if ((await next.count()) > 0) await next.click();
  await startTurn(page);
  await page.locator('[data-next-rider]').waitFor();
}

const records = (page: Page): Promise<RideRecord[]> => keptIn<RideRecord>(page, 'clinic-record');
const storeLine = (page: Page): Promise<string> => page.locator('[data-store-line]').innerText();

async function joinAndRide(page: Page): Promise<void> {
  await page.goto(planLink);
  await page.locator('[data-join]:not([href])').click();
  await page.click('[data-add]');
  await page.fill('input[name="nickname"]', 'Otter');
  await page.keyboard.press('Enter');
  await rideNext(page);
}

beforeAll(async () => {
  club = await openClub();
  browser = await launchBrowser([HALL]);
  coach = await openDevice(browser, club);
  tablet = await openDevice(browser, club);
});

afterAll(async () => {
  await coach?.close();
  await tablet?.close();
  await browser?.close();
  await club?.close();
});

describe('a club on its own network', () => {
  it('settings are opened, asked about, and agreed to with one tap; the password leaves the address bar', async () => {
    for (const { page } of [coach, tablet]) {
      await page.goto(club.link);
      await page.locator('[data-store-offered="code"]').waitFor();
      await expect.poll(() => page.url()).toBe(`${club.url}#clinic/store`);
      expect(club.ids()).toEqual([]);
      await page.click('[data-agree-store]');
      await expect.poll(() => page.locator('[data-store-told]').textContent()).toMatch(/lets you in/);
    }
  });

  it('the same settings are shown to the next device as one code', async () => {
    const { page } = coach;
    await page.click('[data-give-settings]');
    expect(await page.locator('[data-settings-link]').inputValue()).toBe(club.link);
    expect(await page.locator('svg.code').count()).toBe(1);
  });

  it('pasted settings that were cut are told, whole ones are asked about', async () => {
    const { page, close } = await openDevice(browser, club);
    await page.goto(`${club.url}#clinic/store`);
    await page.fill('[data-store-link]', club.link.slice(0, -9));
    await page.click('[data-take-settings]');
    expect(await page.locator('[data-settings-told]').textContent()).toMatch(/no whole settings/);
    await page.fill('[data-store-link]', club.link);
    await page.click('[data-take-settings]');
    await page.locator('[data-store-offered="code"]').waitFor();
    await page.click('[data-forget-store]');
    await expect.poll(() => page.locator('[data-store-offered]').count()).toBe(0);
    await page.goto('about:blank');
    await page.goto(club.link.slice(0, -9));
    await expect.poll(() => page.locator('[data-settings-told]').textContent()).toMatch(/no whole settings/);
    await close();
  });

  it('a ride of another tablet is on the coach’s device without a tap', async () => {
    const { page } = coach;
    await beginOwnPlan(page, club.url, 'In the hall');
    await page.click('[data-tab="tablets"]');
    await page.click('[data-carry="out"]');
    planLink = await page.locator('[data-link]').inputValue();
    await page.goto(planLink.replace(/#.*/, '#clinic'));
    await page.locator('[data-go-on]').click();
    await page.click('[data-tab="picture"]');
    await page.locator('[data-store-line]').waitFor();
    await joinAndRide(tablet.page);
    await expect.poll(() => records(page).then((all) => all.length)).toBe(1);
  });

  it('a store that was away is named, and both know it when it is back; nothing is lost, nothing twice', async () => {
    await club.kill();
    await rideNext(tablet.page);
    await expect.poll(() => storeLine(tablet.page)).toMatch(/does not answer.* to go; they are safe/s);
    await expect.poll(() => storeLine(coach.page)).toMatch(/does not answer/);
    expect(await storeLine(coach.page)).not.toMatch(/0 to go/);
    await club.restart();
    await expect.poll(() => records(coach.page).then((all) => all.length)).toBe(2);
    for (const { page } of [coach, tablet])
      await expect.poll(() => storeLine(page)).not.toMatch(/does not answer|to go/);
    expect(club.ids().filter((id) => id.startsWith('ride:'))).toHaveLength(2);
  });

  it('the report is printed without what is said of the store', async () => {
    const { page } = coach;
    await page.click('[data-tab="report"]');
    await page.locator('.report-says').first().waitFor();
    expect(await page.locator('.store-line').isVisible()).toBe(true);
    await page.emulateMedia({ media: 'print' });
    expect(await page.locator('.store-line').isVisible()).toBe(false);
    await page.emulateMedia({ media: null });
  });

  it('after a reload it is still said where rides go, and how it stands', async () => {
    const { page } = coach;
    await page.reload();
    await page.locator('[data-store-line="agreed"]').waitFor();
    await page.goto(`${club.url}#clinic/store`);
    await page.locator('[data-fetch-store]').waitFor();
    await page.click('[data-fetch-store]');
    await expect.poll(() => page.locator('[data-store]').textContent()).toMatch(/are in the store/);
  });

  it('what was collected by file from a tablet without the store reaches the others', async () => {
    const away = await openDevice(browser, club);
    await joinAndRide(away.page);
    await away.page.click('[data-tab="tablets"]');
    await away.page.click('[data-carry="back"]');
    await away.page.locator('[data-link]').waitFor();
    const link = await away.page.locator('[data-link]').inputValue();
    await away.close();
    await coach.page.goto('about:blank');
    await coach.page.goto(link);
    await coach.page.locator('[data-told]').waitFor();
    await expect.poll(() => records(coach.page).then((all) => all.length)).toBe(3);
    await expect.poll(() => records(tablet.page).then((all) => all.length)).toBe(3);
    // That the store was away is the browser's own remark.
    for (const { problems } of [coach, tablet])
      expect(problems.filter((one) => !/Failed to load resource|ERR_CONNECTION/.test(one))).toEqual([]);
  });
});
