/**
 * A host that breaks things after the game has been kept on the device: a broken update, neighbours in the same
 * folder, files that were changed in the browser's own store. The built site in a real browser.
 */
import { createHash } from 'node:crypto';
import {
  cpSync,
  mkdirSync,
  mkdtempSync,
  readFileSync,
  readdirSync,
  renameSync,
  rmSync,
  writeFileSync,
} from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import type { Page } from 'playwright-core';
import { afterAll, beforeAll, beforeEach, describe, expect, it } from 'vitest';
import type { BentAnswer } from './server.ts';
import { builtSiteFolder, openSite, type OpenPage, type Site } from './site.ts';
import { words } from '../../src/words/words.ts';

const arrival = words('arrival');

/** Drawn quickly. */
const SMALL = { width: 640, height: 360, offline: true };
const START = 'body[data-view="start"]';
/** What the page itself names: without these nothing begins. */
const ENTRY = /\/assets\/start-.*\.js$/;
const SHARED = /\/assets\/core-.*\.js$/;
const COLOURS = /\/assets\/start-.*\.css$/;

let folder: string;
let site: Site;
let open: OpenPage;
/** How the host answers for paths that match, instead of rightly. */
let bent: readonly (readonly [RegExp, BentAnswer])[] = [];

beforeAll(async () => {
  folder = mkdtempSync(join(tmpdir(), 'broken-host-'));
  site = await openSite(
    folder,
    '/any/path/',
    {},
    (path) => bent.find(([which]) => which.test(path))?.[1] ?? null,
  );
});

beforeEach(healHost);

function healHost(): void {
  bent = [];
  rmSync(folder, { recursive: true, force: true });
  cpSync(builtSiteFolder, folder, { recursive: true });
}

afterAll(async () => {
  await site?.close();
  rmSync(folder, { recursive: true, force: true });
});

/** A visitor for whom the whole site was kept. */
async function keptByAVisit(): Promise<() => Promise<void>> {
  healHost();
  open = await site.openPage(SMALL);
  await installed(open.page);
  return () => open.close();
}

async function installed(page: Page): Promise<void> {
  await page.evaluate(async () => {
    if (navigator.serviceWorker.controller?.state === 'activated') return;
    await new Promise<void>((resolve) =>
      navigator.serviceWorker.addEventListener('controllerchange', () => resolve(), { once: true }),
    );
    await navigator.serviceWorker.ready;
  });
}

/** Names of the site's own caches with the number of files in each; copies of rides lie in another. */
const kept = (page: Page): Promise<Record<string, number>> =>
  page.evaluate(async () => {
    const counts: Record<string, number> = {};
    const own = (await caches.keys()).filter((name) => name.startsWith('before-the-hill.site.'));
    for (const name of own) counts[name] = (await (await caches.open(name)).keys()).length;
    return counts;
  });

/** Lets the browser look for a newer worker, and says what became of it. */
const update = (page: Page): Promise<string> =>
  page.evaluate(async () => {
    const registration = await navigator.serviceWorker.getRegistration();
    await registration?.update();
    const worker = registration?.installing ?? registration?.waiting;
    if (worker === null || worker === undefined) return 'nothing new';
    return new Promise<string>((resolve) => {
      const tell = (): void => {
        if (worker.state !== 'installing') resolve(worker.state);
      };
      tell();
      worker.addEventListener('statechange', tell);
    });
  });

/** Puts something else in the place of a kept file. */
const poison = (page: Page, address: string, type: string, text: string): Promise<void> =>
  page.evaluate(
    async ([where, contentType, body]) => {
      const name = (await caches.keys()).find((one) => one.startsWith('before-the-hill.site.')) ?? '';
      const answer = new Response(body, { headers: { 'content-type': contentType } });
      await (await caches.open(name)).put(where, answer);
    },
    [new URL(address, site.url).href, type, text] as const,
  );

/** The entry script of the page, relative to the site. */
const entry = (): string =>
  / src="\.\/(assets\/start-[^"]+)"/.exec(readFileSync(join(folder, 'index.html'), 'utf8'))?.[1] ?? '';

/** One file that the first page does not need. */
const levelArt = (): string =>
  join(
    folder,
    'assets',
    readdirSync(join(folder, 'assets')).find((name) => name.startsWith('phaser-')) ?? '',
  );

/** Puts another page and its fingerprint in the place of those that are there, as a build would. */
function publish(page: string): void {
  const print = (text: string): string =>
    createHash('sha256').update(text).digest().subarray(0, 16).toString('base64url');
  const before = print(readFileSync(join(folder, 'index.html'), 'utf8'));
  const worker = readFileSync(join(folder, 'offline.js'), 'utf8');
  writeFileSync(join(folder, 'index.html'), page);
  writeFileSync(join(folder, 'offline.js'), worker.replace(before, print(page)));
}

const opensWithoutNetwork = async (page: Page): Promise<void> => {
  await open.context.setOffline(true);
  await page.goto(site.url);
  await page.waitForSelector(START);
  await open.context.setOffline(false);
};

describe('a broken update', () => {
  beforeEach(keptByAVisit);

  it('with the same files and another worker, while a file is missing, takes nothing away', async () => {
    const before = await kept(open.page);
    writeFileSync(join(folder, 'offline.js'), `${readFileSync(join(folder, 'offline.js'), 'utf8')}\n;`);
    rmSync(levelArt());
    expect(await update(open.page)).toBe('installed');
    expect(await kept(open.page)).toEqual(before);
    await opensWithoutNetwork(open.page);
  });

  it('that cannot mend what is damaged here leaves the rest', async () => {
    const [name = '', files = 0] = Object.entries(await kept(open.page))[0] ?? [];
    await poison(open.page, `assets/${levelArt().split('/').at(-1)}`, 'text/javascript', 'throw 1');
    writeFileSync(join(folder, 'offline.js'), `${readFileSync(join(folder, 'offline.js'), 'utf8')}\n;`);
    rmSync(levelArt());
    expect(await update(open.page)).toBe('redundant');
    expect(await kept(open.page)).toEqual({ [name]: files });
    await opensWithoutNetwork(open.page);
  });

  it('by a host that tells wrong types still opens', async () => {
    const page = readFileSync(join(folder, 'index.html'), 'utf8');
    bent = [[/\.(js|css)$/, { type: 'text/plain' }]];
    // The worker itself is asked for rightly, or the update would not even begin.
    bent = [[/offline\.js$/, {}], ...bent];
    publish(page.replace('<head>', '<head><meta name="test-version" content="2">'));
    // All but the page is here already and would not be asked for.
    await open.page.evaluate(async () => {
      for (const name of await caches.keys())
        for (const request of await (await caches.open(name)).keys())
          if (request.url.includes('/assets/')) await (await caches.open(name)).delete(request);
    });
    expect(await update(open.page)).toBe('installed');
    await open.page.evaluate(async () => {
      const registration = await navigator.serviceWorker.getRegistration();
      const taken = new Promise((resolve) =>
        navigator.serviceWorker.addEventListener('controllerchange', resolve, { once: true }),
      );
      registration?.waiting?.postMessage('take-over');
      await taken;
    });
    await open.page.goto(site.url);
    await open.page.waitForSelector(START);
    expect(await open.page.locator('meta[name="test-version"]').count()).toBe(1);
  });

  it('with a worker that is gone, or a page in its place, changes nothing', async () => {
    const before = await kept(open.page);
    for (const worker of [null, '<!doctype html><title>Sign in</title>']) {
      rmSync(join(folder, 'offline.js'), { force: true });
      if (worker !== null) writeFileSync(join(folder, 'offline.js'), worker);
      expect(await update(open.page).catch(() => 'refused')).toMatch(/refused|redundant|nothing new/);
    }
    expect(await kept(open.page)).toEqual(before);
    await opensWithoutNetwork(open.page);
  });
});

describe('what else lies in the folder of the site', () => {
  beforeAll(keptByAVisit);

  it('opens as itself; the page of the game opens under both of its names', async () => {
    mkdirSync(join(folder, 'docs'));
    writeFileSync(join(folder, 'other.html'), '<title>Neighbour</title>');
    writeFileSync(join(folder, 'docs', 'help.txt'), 'Help of the club');
    const { page } = open;
    await page.goto(`${site.url}other.html`);
    expect(await page.title()).toBe('Neighbour');
    await page.goto(`${site.url}docs/help.txt`);
    expect(await page.textContent('body')).toBe('Help of the club');
    expect((await page.goto(`${site.url}docs/missing`))?.status()).toBe(404);
    for (const address of ['?seed=3', 'index.html#levels']) {
      await page.goto(`${site.url}${address}`);
      expect(await page.title()).toContain('Before the Hill');
    }
  });
});

describe('a kept file that somebody changed', () => {
  beforeAll(keptByAVisit);

  it.each([
    ['the page', () => './', 'text/html', '<!doctype html><title>Poison</title>'],
    ['its entry', entry, 'text/javascript', 'document.title = "Poison";'],
  ])('%s: it is not opened, and healed from the network', async (_name, address, type, text) => {
    const { page } = open;
    await poison(page, address(), type, text);
    await page.goto(site.url);
    await page.waitForSelector(START);
    expect(await page.title()).toBe('Before the Hill');
    await opensWithoutNetwork(page);
    expect(await page.title()).toBe('Before the Hill');
  });

  it('is not opened without a network either', async () => {
    const { page } = open;
    await poison(page, './', 'text/html', '<!doctype html><title>Poison</title>');
    await open.context.setOffline(true);
    await page.goto(site.url).catch(() => undefined);
    expect(await page.title()).not.toBe('Poison');
    await open.context.setOffline(false);
  });

  it('cannot be mended any more, because the host has moved on: the second visit has its newer version', async () => {
    const { page } = open;
    await page.goto(site.url);
    await poison(page, entry(), 'text/javascript', 'document.title = "Poison";');
    const name = entry();
    const moved = name.replace('assets/', 'assets/moved-');
    renameSync(join(folder, name), join(folder, moved));
    publish(readFileSync(join(folder, 'index.html'), 'utf8').replace(name, moved));
    await page.goto(site.url);
    await page.getByText(arrival('stuck')).waitFor();
    await page.getByRole('link', { name: arrival('again') }).click();
    await page.waitForSelector(START);
  });
});

describe('a first visit', () => {
  const portal = '<!doctype html><title>Sign in</title><p>Welcome to the guest network</p>';

  it.each<[string, RegExp, BentAnswer]>([
    ['whose entry is missing', ENTRY, { status: 404, body: () => 'Not found' }],
    ['whose entry is a page of the network', ENTRY, { type: 'text/html', body: () => portal }],
    ['that is told nothing but busy', /\/assets\//, { status: 503, body: () => '' }],
    ['whose entry is cut off', ENTRY, { body: (right) => right.subarray(0, 40_000) }],
    ['whose entry is empty', ENTRY, { body: () => '' }],
    ['whose entry has the wrong type', /\/assets\/.*\.js$/, { type: 'text/plain' }],
    ['whose entry leads to a page of the network', ENTRY, { location: '/sign-in' }],
    ['whose entry lacks what it shares with the worker', SHARED, { status: 404, body: () => 'Not found' }],
    ['without colours', COLOURS, { status: 404, body: () => 'Not found' }],
  ])('%s says so, and is whole when the host is', async (_name, which, answer) => {
    bent = [[which, answer]];
    // With less motion the sentence does not wait for slow networks.
    const visit = await site.openPage({
      ...SMALL,
      context: { serviceWorkers: 'block', reducedMotion: 'reduce' },
    });
    await visit.page.getByText(arrival('stuck')).waitFor();
    bent = [];
    await visit.page.getByRole('link', { name: arrival('again') }).click();
    await visit.page.waitForSelector(START);
    expect(await visit.page.getByText(arrival('stuck')).count()).toBe(0);
    await visit.close();
  });

  it('without scripts is told so at once, and nothing else', async () => {
    const visit = await site.openPage({ ...SMALL, context: { javaScriptEnabled: false } });
    expect(await visit.page.locator('noscript').innerText()).toBe(arrival('noScript'));
    expect(await visit.page.locator('noscript p').isVisible()).toBe(true);
    expect(await visit.page.getByText(arrival('stuck')).isVisible()).toBe(false);
    await visit.close();
  });
});

describe('a page that frames the game', () => {
  const frame = (address: string): string => `<title>Around</title><iframe src="${address}"></iframe>`;

  it('of another origin: the game does not start and offers to be opened on its own', async () => {
    const around = mkdtempSync(join(tmpdir(), 'around-'));
    writeFileSync(join(around, 'index.html'), frame(site.url));
    const other = await openSite(around);
    const visit = await other.openPage(SMALL);
    const inside = visit.page.frameLocator('iframe');
    await inside.getByText(arrival('framed')).waitFor();
    expect(await inside.locator('[data-ride-next]').count()).toBe(0);
    const opened = visit.context.waitForEvent('page');
    await inside.getByRole('link', { name: arrival('alone') }).click();
    await (await opened).waitForSelector(START);
    await visit.close();
    await other.close();
    rmSync(around, { recursive: true, force: true });
  });

  it('of the same origin may: it could do anything anyway', async () => {
    writeFileSync(join(folder, 'around.html'), frame('./'));
    const visit = await site.openPage({ ...SMALL, address: 'around.html' });
    await visit.page.frameLocator('iframe').locator('[data-ride-next]').waitFor();
    await visit.close();
  });
});
