/**
 * The built site on its first page: it works below any path, stays on its own host, and leaves the game
 * engine alone until somebody wants to ride.
 */
import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { gzipSync } from 'node:zlib';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { languages } from '../../assets/words/carry.ts';
import type { Site } from './site.ts';
import { builtSiteFolder, openSite } from './site.ts';

let site: Site;

beforeAll(async () => {
  site = await openSite(builtSiteFolder, '/any/path/');
});

afterAll(() => site?.close());

const engineFile = /phaser-[\w-]+\.js$/;
/** Scripts and words the page asks for before anything is on it, as they are sent (bytes). */
const MOST_BEFORE_START = 65 * 1024;
/** All scripts there are, as they are sent (bytes). */
const MOST_OF_ALL = 450 * 1024;

const sentBytes = (name: string): number =>
  gzipSync(readFileSync(join(builtSiteFolder, name)), { level: 9 }).length;

describe('the built site', () => {
  it('has the engine in a file of its own', () => {
    expect(readdirSync(join(builtSiteFolder, 'assets')).filter((name) => engineFile.test(name))).toHaveLength(
      1,
    );
  });

  it('asks for few scripts and words before its first page is there, in every language', () => {
    const page = readFileSync(join(builtSiteFolder, 'index.html'), 'utf8');
    const names = [...page.matchAll(/(?:src|href)="\.\/(?<name>[^"]+\.js)"/g)].map(
      (found) => found.groups?.['name'] ?? '',
    );
    expect(names).not.toEqual([]);
    const scripts = names.reduce((sum, name) => sum + sentBytes(name), 0);
    const english = /assets\/words-[\w-]+\/en\/first\.json/.exec(page)?.[0] ?? '';
    const all = languages().map((language) => scripts + sentBytes(english.replace('/en/', `/${language}/`)));
    expect(Math.max(...all)).toBeLessThanOrEqual(MOST_BEFORE_START);
  });

  it('has all its scripts in 450 KB as they are sent', () => {
    const assets = readdirSync(join(builtSiteFolder, 'assets')).map((name) => join('assets', name));
    const scripts = [...assets, 'offline.js'].filter((name) => name.endsWith('.js'));
    expect(scripts.reduce((sum, name) => sum + sentBytes(name), 0)).toBeLessThanOrEqual(MOST_OF_ALL);
  });

  it('builds what the first page and the worker share once, without what needs a document', () => {
    const assets = join(builtSiteFolder, 'assets');
    const worker = readdirSync(assets).find((name) => /^work\.worker-[\w-]+\.js$/.test(name)) ?? '';
    const needed = new Set([worker]);
    for (const name of needed)
      for (const found of readFileSync(join(assets, name), 'utf8').matchAll(/from"\.\/(?<name>[^"]+\.js)"/g))
        needed.add(found.groups?.['name'] ?? '');
    const all = [...needed].join(' ');
    expect(all).toMatch(/\bcore-/);
    expect(all).not.toMatch(/\bstart-/);
    expect(all).not.toMatch(engineFile);
  });

  it.each([
    ['laptop', { width: 1280, height: 800, touch: false }],
    ['phone', { width: 390, height: 844, touch: true }],
  ])('opens on a %s without a problem, from its own host, without the engine', async (_name, screen) => {
    // Without the copy for journeys without a network: it fetches everything once the page is there.
    const { page, problems, addresses, close } = await site.openPage({
      ...screen,
    });
    await page.waitForSelector('body[data-view="start"]');
    await page.waitForLoadState('networkidle');
    expect(problems).toEqual([]);
    expect(addresses.some((address) => address.endsWith('.js'))).toBe(true);
    expect(addresses.filter((address) => engineFile.test(address))).toEqual([]);
    await close();
  });
});
