/**
 * Shows the opened page things that are wrong on purpose, so that an empty list of problems in the other
 * browser tests means something.
 */
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import type { Site } from './site.ts';
import { openSite } from './site.ts';

const pages: Readonly<Record<string, string>> = {
  'index.html': '<title>Fine</title><link rel="icon" href="data:,"><p>fine</p>',
  'console.html': '<link rel="icon" href="data:,"><script>console.error("a bad word")</script>',
  'thrown.html':
    '<link rel="icon" href="data:,"><script>setTimeout(() => { throw new Error("a ball") })</script>',
  'missing.html': '<link rel="icon" href="data:,"><script src="not-there.js"></script>',
  'elsewhere.html': '<link rel="icon" href="data:,"><img alt="" src="http://elsewhere.example/a.png">',
  'module.html': '<link rel="icon" href="data:,"><script type="module" src="./module.js"></script>',
  'module.js': 'document.title = "ran"; fetch("./data.json?x=1");',
  'data.json': '{}',
};

let folder: string;
let site: Site;

beforeAll(async () => {
  folder = mkdtempSync(join(tmpdir(), 'opened-pages-'));
  for (const [name, text] of Object.entries(pages)) writeFileSync(join(folder, name), text);
  site = await openSite(folder, '/some/club/');
});

afterAll(async () => {
  await site?.close();
  rmSync(folder, { recursive: true, force: true });
});

/** Opens a page of the list and waits until `count` problems have come in. */
async function problemsOf(address: string, count: number): Promise<readonly string[]> {
  const { problems, close } = await site.openPage({ width: 800, height: 600, address });
  await expect.poll(() => problems.length).toBeGreaterThanOrEqual(count);
  await close();
  return problems;
}

describe('an opened page', () => {
  it('has no problems if nothing is wrong with it, also below a path', async () => {
    const { page, problems, close } = await site.openPage({ width: 800, height: 600 });
    expect(new URL(page.url()).pathname).toBe('/some/club/');
    expect(await page.title()).toBe('Fine');
    expect(problems).toEqual([]);
    await close();
  });

  it('remembers what was written to the console as an error', async () => {
    expect((await problemsOf('console.html', 1)).join()).toContain('a bad word');
  });

  it('remembers an error that nobody caught', async () => {
    expect((await problemsOf('thrown.html', 1)).join()).toContain('uncaught: a ball');
  });

  it('remembers a file that is missing', async () => {
    expect((await problemsOf('missing.html', 1)).join()).toContain('not-there.js');
    expect(site.requests).toContainEqual(
      expect.objectContaining({ path: '/some/club/not-there.js', status: 404 }),
    );
  });

  it('remembers a request to another host, which reaches nobody', async () => {
    const problems = await problemsOf('elsewhere.html', 2);
    expect(problems[0]).toBe('request to another host: http://elsewhere.example/a.png');
    expect(problems[1]).toContain('ERR_NAME_NOT_RESOLVED');
  });

  it('runs modules, because the server names their type, and lists what they ask for', async () => {
    const { page, addresses, problems, close } = await site.openPage({
      width: 800,
      height: 600,
      address: 'module.html',
    });
    await expect.poll(() => page.title()).toBe('ran');
    await expect.poll(() => addresses.at(-1)).toBe(`${site.url}data.json?x=1`);
    expect(problems).toEqual([]);
    await close();
  });

  it('has the size and the fingers that were asked for', async () => {
    const { page, close } = await site.openPage({ width: 390, height: 844, touch: true });
    const screen = await page.evaluate(() => [
      document.documentElement.clientHeight > 0,
      window.outerWidth,
      navigator.maxTouchPoints > 0,
    ]);
    expect(screen).toEqual([true, 390, true]);
    await close();
  });
});

describe('the server', () => {
  it('keeps to its folder', async () => {
    const answers = await Promise.all(
      ['..%2f..%2fetc%2fpasswd', '%2e%2e/%2e%2e/x', '%'].map((path) => fetch(site.url + path)),
    );
    expect(answers.map((answer) => answer.status)).toEqual([404, 404, 404]);
    expect((await fetch(new URL('/', site.url))).status).toBe(404);
  });

  it.each([
    ['', 'text/html; charset=utf-8'],
    ['module.js', 'text/javascript; charset=utf-8'],
    ['data.json', 'application/json; charset=utf-8'],
  ])('says what %j is', async (path, type) => {
    expect((await fetch(site.url + path)).headers.get('content-type')).toBe(type);
  });
});
