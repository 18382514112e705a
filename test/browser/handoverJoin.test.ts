/**
 * Joining a group in a real browser: by the camera, which sees the codes of a plan one after another, and by a link,
 * also a hostile one. And a club's own store, set up and asked from the page: nobody else is contacted.
 */
import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { chromium } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { madeUpRecord, planWith } from '../core/group/rides.ts';
import { made, ownPlan, SITE } from '../features/handover/given.ts';
import { messageOfPlan } from '../../src/features/handover/message.ts';
import { PASSWORD, startStore, type StoreServer } from '../storage/shared/server.ts';
import { findChromium } from './chromium.ts';
import { buildHandoverPage, openDevice, rideOn } from './handover/page.ts';
import { writeFilm } from './handover/film.ts';
import { browserArguments, onlyThisComputer } from './site.ts';
import { siteForTests } from './siteForTests.ts';

const site = siteForTests(buildHandoverPage);
let store: StoreServer;

beforeAll(async () => {
  store = await startStore();
});

afterAll(async () => {
  await store?.close();
});

describe('joining', () => {
  it('by camera: turned, smeared and badly lit codes of a plan with a 3 km level, without typing', async () => {
    const plan = ownPlan();
    const { frames } = made(await messageOfPlan(plan, SITE));
    const folder = mkdtempSync(join(tmpdir(), 'camera-'));
    const film = join(folder, 'codes.y4m');
    writeFilm(film, frames, [
      { squarePx: 5, angleDeg: 11, blurPx: 1.4, lightFrom: 0.3, lightTo: 0.9, noise: 6 },
      { squarePx: 4.6, angleDeg: -19, blurPx: 1.2, lightFrom: 0.8, lightTo: 0.25, glare: 0.2 },
    ]);
    const browser = await chromium.launch({
      executablePath: findChromium(),
      args: [
        ...browserArguments,
        onlyThisComputer(),
        '--use-fake-ui-for-media-stream',
        '--use-fake-device-for-media-stream',
        `--use-file-for-fake-video-capture=${film}`,
      ],
    });
    try {
      const page = await browser.newPage();
      // Reading pictures takes as long as the machine is busy with other things.
      page.setDefaultTimeout(300_000);
      await page.goto(`${site.url}#join`);
      await page.click('[data-camera-on]');
      await page.waitForSelector('[data-plan-found="tuesday"]');
      expect(await page.innerText('[data-plan-found]')).toContain('Our Sunday road – Käsbühl');
      expect(await page.evaluate(() => window.lab.joined())).toEqual([]);
      await page.click('[data-join]');
      expect(await page.evaluate(() => window.lab.joined())).toEqual([plan]);
    } finally {
      await browser.close();
      rmSync(folder, { recursive: true, force: true });
    }
  });

  it('where the page gets no camera it says what to do instead', async () => {
    const { page, close } = await openDevice(site, '#join');
    await page.click('[data-camera-on]');
    await page.waitForSelector('.reader-problem');
    expect(await page.innerText('.reader-problem')).toMatch(/picture, the link or the file/);
    await close();
  });

  it('by link: shown before it is kept; a hostile title is only a title', async () => {
    const title = '<img src=x onerror="window.hit=1"><script>window.hit=1</script>';
    const own = ownPlan().rides[0];
    if (own?.kind !== 'own') throw new Error('no level');
    const plan = planWith({
      title,
      rides: [{ kind: 'own', level: { ...own.level, title: `${title}\u202E\u0007` } }],
    });
    const link = made(await messageOfPlan(plan, site.url)).link;
    const { page, problems, addresses, close } = await openDevice(site, link.slice(site.url.length));
    await page.waitForSelector('[data-plan-found]');
    expect(await page.innerText('[data-plan-found] h2')).toBe(title);
    expect(await page.innerText('[data-plan-found] li')).not.toMatch(/[\u202E\p{Cc}]/u);
    expect(await page.evaluate(() => 'hit' in window)).toBe(false);
    expect(await page.locator('[data-plan-found] img').count()).toBe(0);
    expect(problems).toEqual([]);
    expect(addresses.filter((address) => !address.startsWith(site.url))).toEqual([]);
    await close();
  });
});

describe('a store of the club', () => {
  it('is agreed to on its page and asked; rides of two tablets come together; nobody else is contacted', async () => {
    const plan = planWith();
    const asked: string[] = [];
    for (const device of ['t1', 't2']) {
      const { page, addresses, close } = await openDevice(site, '#store');
      const records = Array.from({ length: 4 }, (_, i) => madeUpRecord({ deviceId: device, seq: i + 1 }));
      await rideOn(page, plan, device, records);
      await page.fill('[name="url"]', store.address.url);
      await page.fill('[name="database"]', store.address.database);
      await page.fill('[name="name"]', store.address.name);
      await page.fill('[name="password"]', 'guess');
      expect(addresses.filter((address) => address.startsWith(store.address.url))).toEqual([]);
      await page.click('[data-agree-store]');
      await page.getByText('does not accept this name and password').waitFor();
      await page.click('[data-stop-store]');
      await page.fill('[name="password"]', PASSWORD);
      await page.click('[data-agree-store]');
      await page.getByText('The store answers and lets you in').waitFor();
      await page.evaluate(() => window.lab.sync());
      await page.getByText('are in the store').waitFor();
      const { set } = await page.evaluate(() => window.lab.collected());
      expect(set.records).toHaveLength(device === 't1' ? 4 : 8);
      asked.push(...addresses);
      await close();
    }
    expect((await store.documents()).filter(({ id }) => id.startsWith('ride:'))).toHaveLength(8);
    const hosts = new Set(
      asked.filter((address) => address.startsWith('http')).map((address) => new URL(address).host),
    );
    expect(hosts).toEqual(new Set([new URL(site.url).host, new URL(store.address.url).host]));
  });
});
