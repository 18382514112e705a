/**
 * One session on three devices in real browsers, without a network between them: a coach hands out a plan with a
 * level of its own, two tablets join by link, ride and hand back, the coach collects in any order and twice. And a
 * club's own store, which is asked only once somebody agreed to it.
 */
import { createServer, type IncomingMessage, type Server } from 'node:http';
import type { AddressInfo } from 'node:net';
import type { Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { barriers, misfits } from './barriers.ts';
import { keptIn, beginOwnPlan } from './clinicVisit.ts';
import type { OpenPage } from './site.ts';
import { siteForTests } from './siteForTests.ts';

const SPEED = 40;
const site = siteForTests();
let coach: OpenPage;
let tablets: OpenPage[];
let planId = '';
const links: string[] = [];

const kept = (page: Page, kind: string): Promise<{ planId?: string }[]> => keptIn(page, kind);

async function go(page: Page, hash: string): Promise<void> {
  await page.evaluate((to) => {
    location.hash = to;
  }, hash);
}

async function openDevice(): Promise<OpenPage> {
  const open = await site.openPage({ width: 1024, height: 768 });
  await open.page.addInitScript((speed) => Object.assign(window, { __rideTestSpeed: speed }), SPEED);
  await go(open.page, '#about');
  // The speed is for the next document.
  await open.page.reload();
  await open.page.locator('[data-save-everything]').waitFor();
  return open;
}

beforeAll(async () => {
  coach = await openDevice();
  tablets = [await openDevice(), await openDevice()];
});

afterAll(async () => {
  await Promise.all([coach, ...(tablets ?? [])].map((one) => one?.close()));
});

describe('a session on three devices', () => {
  it('is handed out by link', async () => {
    const { page } = coach;
    await beginOwnPlan(page, site.url, 'Three tablets');
    await page.click('[data-tab="tablets"]');
    await page.click('[data-carry="out"]');
    await page.locator('[data-link]').waitFor();
    links.push(await page.locator('[data-link]').inputValue());
    expect(await page.locator('[data-code]').getAttribute('data-codes')).toMatch(/^\d+$/);
    const [round] = await keptIn<{ plan: { id: string } }>(page, 'clinic-round');
    planId = round?.plan.id ?? '';
    expect(planId).not.toBe('');
  });

  it('is joined without typing, ridden, and handed back by link', async () => {
    for (const [i, { page }] of tablets.entries()) {
      await page.goto(links[0] ?? '');
      await page.locator('[data-join]:not([href])').click();
      await page.click('[data-add]');
      await page.fill('input[name="nickname"]', 'Otter');
      await page.keyboard.press('Enter');
      for (let n = 0; n <= i; n += 1) {
        if (n > 0) await page.click('[data-next-rider]');
        await page.locator('[data-start], [data-again]').first().click();
        const accept = page.locator('[data-accept]');
        await expect
          .poll(
            async () =>
              (await page.evaluate(() => document.body.dataset['view'])) === 'ride' ||
              (await accept.count()) > 0,
          )
          .toBe(true);
        if ((await accept.count()) > 0) await accept.click();
        await page.locator('[data-next-rider]').waitFor();
      }
      await page.click('[data-tab="tablets"]');
      await page.click('[data-carry="back"]');
      await page.locator('[data-link]').waitFor();
      links.push(await page.locator('[data-link]').inputValue());
      expect((await kept(page, 'clinic-record')).map((record) => record.planId)).toEqual(
        Array.from({ length: i + 1 }, () => planId),
      );
    }
  });

  it('is collected in any order, twice, and counted once', async () => {
    const { page } = coach;
    for (const link of [links[2], links[1], links[2]]) {
      await page.goto('about:blank');
      await page.goto(link ?? '');
      await page.locator('[data-told]').waitFor();
    }
    await expect.poll(() => page.locator('[data-rides]').getAttribute('data-rides')).toBe('3');
    expect(await page.locator('[data-tablet]').count()).toBe(2);
    expect(await barriers(page)).toEqual([]);
    expect(
      await page.locator('[data-missing]').evaluateAll((all) => all.map((one) => one.dataset['missing'])),
    ).toEqual(['0', '0']);
    await go(page, `#clinic/${encodeURIComponent(`s/${planId}/report`)}`);
    await expect.poll(() => page.locator('main').textContent()).toMatch(/\b3 rides/);
    expect(await kept(page, 'clinic-record')).toHaveLength(3);
  });

  it('asks nobody but the site, and leaves nothing when it is deleted', async () => {
    const { page } = coach;
    await page.click('[data-delete]');
    await page.click('[data-delete-sure]');
    // The round goes last, so that a session half deleted can be deleted again.
    for (const kind of ['clinic-record', 'clinic-said', 'clinic-round'])
      await expect.poll(async () => (await kept(page, kind)).length).toBe(0);
    for (const { problems, addresses } of [coach, ...tablets]) {
      expect(problems).toEqual([]);
      expect(addresses.filter((one) => !one.startsWith(site.url) && !one.startsWith('about:'))).toEqual([]);
    }
  });
});

/** A store that only remembers what it was asked; a whole one is tried where the adapter is tested. */
async function openListener(): Promise<{ server: Server; url: string; asked: string[] }> {
  const asked: string[] = [];
  const server = createServer((request: IncomingMessage, response) => {
    asked.push(`${request.method ?? ''} ${request.url ?? ''}`);
    response.setHeader('access-control-allow-origin', request.headers.origin ?? '*');
    response.setHeader('access-control-allow-credentials', 'true');
    response.setHeader('access-control-allow-headers', 'authorization, content-type, accept');
    response.setHeader('access-control-allow-methods', 'GET, PUT, POST, OPTIONS');
    response.setHeader('content-type', 'application/json');
    response.writeHead(request.method === 'OPTIONS' ? 204 : 401);
    response.end(request.method === 'OPTIONS' ? '' : '{"error":"unauthorized"}');
  });
  await new Promise<void>((resolve) => server.listen(0, '127.0.0.1', resolve));
  return { server, url: `http://127.0.0.1:${(server.address() as AddressInfo).port}`, asked };
}

describe('a club’s own store', () => {
  it('is asked only when somebody agreed, and a wrong password is one sentence', async () => {
    const { server, url, asked } = await openListener();
    const { page } = coach;
    await page.goto(`${site.url}#clinic/store`);
    await page.locator('[data-store]').waitFor();
    expect(asked).toEqual([]);
    for (const [name, value] of Object.entries({ url, database: 'club', name: 'coach', password: 'wrong' }))
      await page.fill(`[name="${name}"]`, value);
    expect(asked).toEqual([]);
    await page.click('[data-agree-store]');
    await expect.poll(() => page.locator('[data-store-told]').textContent()).toMatch(/password/i);
    expect(asked.length).toBeGreaterThan(0);
    await page.click('[data-stop-store]');
    server.close();
  });
});

describe('the pages that carry', () => {
  it.each([320, 1024])('have no barriers and fit %d px', async (width) => {
    const { page, close } = await site.openPage({ width, height: 700, context: { reducedMotion: 'reduce' } });
    const pages = [
      ['#join', '.reader'],
      ['#clinic/store', '[data-store]'],
      ['#clinic', '[data-new-plan]'],
    ] as const;
    for (const [hash, sign] of pages) {
      await go(page, hash);
      await page.locator(sign).waitFor();
      const found = { barriers: await barriers(page), tooWide: (await misfits(page)).tooWide };
      expect([hash, found]).toEqual([hash, { barriers: [], tooWide: 0 }]);
    }
    await close();
  });
});
