/**
 * A group session in two tabs of one browser: a link that was tapped, a page opened twice by mistake. One tab at a time
 * keeps the rides, whichever was used last, and none is lost.
 */
import type { Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import type { RideRecord } from '../../src/core/group/records/record.ts';
import { barriers } from './barriers.ts';
import { handOn, hurry, keptIn, startTurn, openWithShortLevel } from './clinicVisit.ts';
import type { OpenPage } from './site.ts';
import { siteForTests } from './siteForTests.ts';

/** Ride time over real time. */
const SPEED = 40;
const ELSEWHERE = '[data-clinic-told="elsewhere"]';
const site = siteForTests();
let open: OpenPage;
let first: Page;
let second: Page;

const ridesKept = async (): Promise<string[]> =>
  (await keptIn<RideRecord>(first, 'clinic-record')).map(({ nickname, attempt }) => `${nickname} ${attempt}`);

async function ride(page: Page): Promise<void> {
  await page.bringToFront();
  await startTurn(page);
  await handOn(page);
}

beforeAll(async () => {
  open = await site.openPage({ width: 1024, height: 768 });
  first = open.page;
  await openWithShortLevel(first, site.url, SPEED);
  await first.goto(`${site.url}#clinic`);
  await first.reload();
  await first.click('[data-new-plan]');
  await first.fill('input[name="title"]', 'A windy evening');
  await first.click('[data-ride="own short-and-steep"]');
  await first.getByRole('button', { name: 'One attempt more' }).click();
  await first.click('[data-save-go]');
  await first.click('[data-go]');
  await first.locator('[data-start]').waitFor();
  second = await open.context.newPage();
  await hurry(second, SPEED);
});

afterAll(async () => {
  await open?.close();
});

describe('two tabs with one session', () => {
  it('go on in turns, each with all that was kept in the other', async () => {
    await ride(first);
    await second.goto(first.url());
    await second.locator('[data-start]').waitFor();
    await first.locator(ELSEWHERE).waitFor();
    expect(await barriers(first)).toEqual([]);
    await ride(second);
    await first.click('[data-go-on-here]');
    await second.locator(ELSEWHERE).waitFor();
    await ride(first);
    await first.reload();
    // The last tap before it may not have been kept; the ride before it was.
    await first.locator('[data-next-rider], [data-start]').first().waitFor();
    if ((await first.locator('[data-next-rider]').count()) > 0) await first.click('[data-next-rider]');
    const kept = await ridesKept();
    expect(kept).toHaveLength(3);
    expect(new Set(kept).size).toBe(3);
  });

  it('keep a ride that ends in the tab that had been taken over', async () => {
    await first.evaluate(() => Object.assign(window, { __rideTestSpeed: 6 }));
    await first.bringToFront();
    await startTurn(first);
    await first.waitForFunction(() => document.body.dataset['rideState'] === 'riding');
    await second.click('[data-go-on-here]');
    await second.locator('[data-again]').waitFor();
    await first.locator('[data-next-rider]').waitFor();
    await second.locator(ELSEWHERE).waitFor();
    // The next rider may be called before the ride is in the database.
    await expect.poll(async () => new Set(await ridesKept()).size).toBe(4);
    expect(await ridesKept()).toHaveLength(4);
    expect(open.problems).toEqual([]);
  });
});
