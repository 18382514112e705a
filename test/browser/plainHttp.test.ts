/**
 * The game over plain http under a name of the local network, where browsers give no camera, no offline copy, no
 * clipboard, no locks and no screen that stays awake: each thing a club does works, or says in one sentence why not.
 */
import { readFileSync } from 'node:fs';
import type { Browser, Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { type Club, HALL, openClub, openDevice } from './club.ts';
import { handOn, keptIn, beginOwnPlan, startTurn } from './clinicVisit.ts';
import { launchBrowser, type OpenPage } from './site.ts';

let club: Club;
let browser: Browser;
let coach: OpenPage;
let tablet: OpenPage;
let planLink = '';
let sessionHash = '';

async function go(page: Page, hash: string): Promise<void> {
  await page.evaluate((to) => {
    location.hash = to;
  }, hash);
}

const place = (tab: string): string => sessionHash + encodeURIComponent(tab);
const told = (page: Page): Promise<string> => page.locator('.reader-told').innerText();

beforeAll(async () => {
  club = await openClub();
  browser = await launchBrowser([HALL]);
  coach = await openDevice(browser, club, { offline: true });
  tablet = await openDevice(browser, club, { offline: true });
});

afterAll(async () => {
  for (const { problems } of [coach, tablet]) expect(problems).toEqual([]);
  await coach?.close();
  await tablet?.close();
  await browser?.close();
  await club?.close();
});

describe('over plain http', () => {
  it('this is such a place', async () => {
    expect(
      await coach.page.evaluate(() => [
        isSecureContext,
        'serviceWorker' in navigator,
        navigator.mediaDevices === undefined,
        'locks' in navigator,
        'wakeLock' in navigator,
        navigator.clipboard === undefined,
      ]),
    ).toEqual([false, false, true, false, false, true]);
  });

  it('a ride is ridden, marked and kept, and is there after a reload', async () => {
    const { page } = tablet;
    await page.goto('about:blank');
    await page.goto(`${club.url}#ride/one-pitch-announced`);
    await page.click('[data-accept]');
    const view = (): Promise<string | undefined> => page.evaluate(() => document.body.dataset['view']);
    // The first ride goes on once each lever was used.
    const pressed = async (): Promise<string | undefined> => {
      for (const key of ['ArrowDown', 'ArrowUp', 'Space']) await page.keyboard.press(key, { delay: 60 });
      return view();
    };
    await expect.poll(pressed, { timeout: 90_000, interval: 100 }).toBe('debrief');
    await page.locator('[data-guess]').first().click();
    await expect.poll(() => page.locator('[data-mark]').count()).toBe(5);
    await page.goto(`${club.url}#about`);
    await page.reload();
    await page.getByText('1 ride is kept').waitFor();
  });

  it('a plan with an own level is shown as a code and a link; what cannot be copied is marked, with a sentence', async () => {
    const { page } = coach;
    await beginOwnPlan(page, club.url, 'In the hall');
    await page.locator('[data-start]').waitFor();
    sessionHash = new URL(page.url()).hash;
    await page.click('[data-tab="tablets"]');
    await page.click('[data-carry="out"]');
    planLink = await page.locator('[data-link]').inputValue();
    expect(planLink.startsWith(club.url)).toBe(true);
    await page.click('[data-copy-link]');
    await expect
      .poll(() => page.locator('.carry output').textContent())
      .toMatch(/does not copy over plain http/);
    expect(await page.evaluate(() => getSelection()?.toString())).toBe(planLink);
    await expect.poll(() => page.locator('main').innerText()).toMatch(/opened over plain http.*goes dark/s);
  });

  it('a code is read from a picture; the camera says why not', async () => {
    const { page } = tablet;
    const picture = await coach.page.locator('svg.code').first().screenshot();
    await go(page, '#join');
    await page.locator('[data-camera="not-secure"]').waitFor();
    expect(await page.locator('.reader-problem').textContent()).toMatch(
      /only where this page was opened over https/,
    );
    const codes = Number(await coach.page.getAttribute('.code-show', 'data-codes'));
    expect(codes).toBe(1);
    await page.check('input[name="reader-way"][value="picture"]');
    await page.setInputFiles('[data-read-files]', {
      name: 'code.png',
      mimeType: 'image/png',
      buffer: picture,
    });
    await page.locator('[data-plan-found]').waitFor();
  });

  it('a session is joined by link, ridden, and handed back by file', async () => {
    const { page } = tablet;
    await page.goto('about:blank');
    await page.goto(planLink);
    await page.locator('[data-join]:not([href])').click();
    await page.click('[data-add]');
    await page.fill('input[name="nickname"]', 'Otter');
    await page.keyboard.press('Enter');
    await startTurn(page);
    await handOn(page);
    await page.click('[data-tab="tablets"]');
    await page.click('[data-carry="back"]');
    await page.locator('[data-save-file]').waitFor();
    const [download] = await Promise.all([page.waitForEvent('download'), page.click('[data-save-file]')]);
    const text = readFileSync(await download.path());
    await go(coach.page, place('/collect'));
    await coach.page.check('input[name="reader-way"][value="picture"]');
    await coach.page.setInputFiles('[data-read-files]', {
      name: 'rides.jsonl',
      mimeType: 'text/plain',
      buffer: text,
    });
    await expect.poll(() => told(coach.page)).toMatch(/1 ride taken/);
  });

  it('everything is saved as a file', async () => {
    const { page } = coach;
    await go(page, '#about');
    const [download] = await Promise.all([
      page.waitForEvent('download'),
      page.click('[data-save-everything]'),
    ]);
    expect(readFileSync(await download.path(), 'utf8')).toContain('"clinic-round"');
  });

  it('of two tabs one has the session, and says so; taken back, nothing is lost', async () => {
    const second = await coach.context.newPage();
    await go(coach.page, sessionHash);
    await coach.page.locator('[data-start]').waitFor();
    await second.goto(`${club.url}${sessionHash}`);
    await second.locator('[data-start]').waitFor();
    await coach.page.locator('[data-clinic-told="elsewhere"]').waitFor();
    await coach.page.click('[data-go-on-here]');
    await coach.page.locator('[data-start]').waitFor();
    await second.locator('[data-clinic-told="elsewhere"]').waitFor();
    await second.close();
    expect(await keptIn(coach.page, 'clinic-round')).toHaveLength(1);
  });

  it('the store on the same computer is used, and it is said that others can read along', async () => {
    for (const { page } of [coach, tablet]) {
      await page.goto('about:blank');
      await page.goto(club.link);
      await page.locator('[data-store-offered="code"]').waitFor();
      expect(await page.locator('form.store-form').innerText()).toMatch(
        /everybody in this network can read along/,
      );
      await page.click('[data-agree-store]');
      await expect.poll(() => page.locator('[data-store-told]').textContent()).toMatch(/lets you in/);
    }
    await expect.poll(() => club.ids().filter((id) => id.startsWith('ride:')).length).toBe(1);
    // One on another computer cannot work, and that is said before anybody agrees.
    const { page } = tablet;
    await page.click('[data-stop-store]');
    await page.fill('[name="url"]', 'http://192.168.1.77:5984');
    expect(await page.locator('[role="alert"]').textContent()).toMatch(/Use https/);
  });
});
