/**
 * The level bench in a real browser, as a helper uses it who has never seen it: a recorded road becomes a level, is
 * ridden, shared by link, and ridden on another device as the very same road. Also files that are no road, titles
 * that mean harm, a keyboard without a mouse, and barriers.
 */
import { readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import type { Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { gpxText, northward, trackText } from '../core/level/gpx/files.ts';
import type { OpenPage, Site } from './site.ts';
import { openSite } from './site.ts';

const axe = readFileSync(createRequire(import.meta.url).resolve('axe-core/axe.min.js'), 'utf8');
const patient = { timeout: 60_000, interval: 50 };
const SPEED = 12;

/** A ride with everything personal a device writes. */
const points = northward(601, 10, (x) => 300 + 12 * Math.sin(x / 120)).map((point, i) => ({
  ...point,
  time: new Date(Date.UTC(2021, 4, 16, 9, 0, i * 2)).toISOString(),
  inside: '<extensions><hr>143</hr><cad>71</cad></extensions>',
}));
const PERSONAL = ['Zora', '46.', '10.0', '2021-05', '"hr"', '143', '"cad"', 'lat', 'lon'];
const rideText = gpxText(`<metadata><name>Zora at home</name></metadata>${trackText(points)}`);
const gpx = (text: string, name = 'zora.gpx') => ({
  name,
  mimeType: 'application/gpx+xml',
  buffer: Buffer.from(text),
});

let site: Site;

/** Everything of one part of the browser's own database. */
function stored(page: Page, store: string): Promise<Record<string, unknown>[]> {
  return page.evaluate(
    (name) =>
      new Promise<Record<string, unknown>[]>((resolve, reject) => {
        const request = indexedDB.open('before-the-hill');
        request.onerror = () => reject(request.error ?? new Error('no database'));
        request.onsuccess = () => {
          const all = request.result.transaction(name).objectStore(name).getAll();
          all.onsuccess = () => {
            request.result.close();
            resolve(all.result as Record<string, unknown>[]);
          };
        };
      }),
    store,
  );
}

const view = (page: Page): Promise<string | undefined> => page.evaluate(() => document.body.dataset['view']);
const text = async (page: Page, selector: string): Promise<string> =>
  (await page.locator(selector).first().textContent()) ?? '';

async function go(page: Page, hash: string): Promise<void> {
  await page.evaluate((to) => {
    location.hash = to;
  }, hash);
}

/** Rides of this page are faster than life. */
async function hurry(page: Page): Promise<void> {
  await page.evaluate((speed) => Object.assign(window, { __rideTestSpeed: speed }), SPEED);
}

/** Rides to the end and waits until the ride is kept; answers with the fingerprint of its road. */
async function rideToTheEnd(page: Page): Promise<unknown> {
  await expect.poll(() => view(page), { timeout: 90_000, interval: 100 }).toBe('debrief');
  await expect.poll(() => page.locator('[data-saved="saved"]').count(), patient).toBe(1);
  return (await stored(page, 'rides')).at(-1)?.['levelHash'];
}

beforeAll(async () => {
  site = await openSite();
}, 60_000);

afterAll(async () => {
  await site?.close();
});

describe('a new helper with a recorded ride', () => {
  let first: OpenPage;
  let second: OpenPage;
  let page: Page;
  let link = '';
  let hash: unknown;

  beforeAll(async () => {
    first = await site.openPage({ width: 1280, height: 720 });
    page = first.page;
    await hurry(page);
  }, 60_000);

  afterAll(async () => {
    await first?.close();
    await second?.close();
  });

  it('finds the bench on the first page and makes a level of a stretch, without any request', async () => {
    await page.getByRole('link', { name: /Level bench/ }).click();
    await page.click('[data-road-way]');
    await page.waitForSelector('[data-gpx]', { state: 'attached' });
    await page.waitForLoadState('networkidle');
    const before = first.addresses.length;
    await page.setInputFiles('[data-gpx]', gpx(rideText));
    await page.waitForSelector('[data-stretch]');
    expect(first.addresses.slice(before)).toEqual([]);
    expect(await text(page, '[data-road-facts]')).toMatch(/6\.0 km/);
    expect(await text(page, '[data-grade]')).toMatch(/^Good/);
    expect(await page.inputValue('[data-field="stretch-to"]')).not.toBe('');
    await page.fill('[data-field="stretch-from"]', '1000');
    await page.fill('[data-field="stretch-to"]', '1300');
    expect(await text(page, '[data-chosen]')).toMatch(/0\.3 km/);
    await page.click('[data-save-road]');
    expect(await text(page, '.save-road .told')).toMatch(/title/);
    await page.fill('[data-title]', 'Sunday, the bit by the mill');
    await page.click('[data-save-road]');
    await page.waitForSelector('[data-keep-state="saved"]');
    expect(first.addresses.slice(before).filter((address) => !address.includes('/assets/'))).toEqual([]);
  });

  it('has kept heights and distances only', async () => {
    const [kept] = await stored(page, 'levels');
    const level = JSON.stringify(kept?.['level']);
    expect(level).toContain('heightsM');
    const words = level.replace(/"title":"[^"]*"|"heightsM":\[[^\]]*\]/g, '');
    expect(PERSONAL.filter((value) => words.includes(value))).toEqual([]);
    const places = points.slice(1).map(({ lat }) => `${lat}`);
    expect(places.filter((value) => level.includes(value))).toEqual([]);
    expect(await stored(page, 'records')).toEqual([]);
  });

  it('sees what was ridden beside the best ride, and keeps it only when asked', async () => {
    await expect.poll(() => page.locator('[data-compare-sentence]').count(), patient).toBe(1);
    expect(await text(page, '[data-compare-sentence]')).toMatch(/you rode this at 71 a minute.*\d+ × \d+/);
    await page.click('[data-keep-recorded]');
    await expect.poll(async () => (await stored(page, 'records')).length).toBe(1);
    await page.click('[data-forget-recorded]');
    await expect.poll(async () => (await stored(page, 'records')).length).toBe(0);
    expect(await page.locator('[data-compare]').count()).toBe(0);
  });

  it('shares it by link, code and file', async () => {
    await page.locator('[data-share] summary').click();
    await expect.poll(() => page.inputValue('[data-link]')).toMatch(/#bench\/level\./);
    link = await page.inputValue('[data-link]');
    expect(await page.locator('[data-code]').count()).toBe(1);
    const download = page.waitForEvent('download');
    await page.click('[data-download]');
    const file = readFileSync(await (await download).path(), 'utf8');
    expect(JSON.parse(file)).toEqual((await stored(page, 'levels'))[0]?.['level']);
  });

  it('rides it from the Levels page', async () => {
    await go(page, '#levels');
    await page.getByRole('link', { name: /the bit by the mill/ }).click();
    await page.click('[data-accept]');
    hash = await rideToTheEnd(page);
    expect(hash).toMatch(/^[0-9a-f]{16}$/);
  });

  it('somebody else sees what it is before it is kept, keeps it, and rides the very same road', async () => {
    second = await site.openPage({ width: 1024, height: 768 });
    const other = second.page;
    await other.goto(link);
    await other.reload();
    await hurry(other);
    await other.waitForSelector('[data-opened="level"]');
    expect(await text(other, '[data-opened] h2')).toBe('Sunday, the bit by the mill');
    expect(await text(other, '[data-opened] .facts')).toContain(`${String(hash)}`);
    expect(await stored(other, 'levels')).toEqual([]);
    await other.click('[data-keep]');
    await other.waitForSelector('[data-keep-state="saved"]');
    await go(other, '#levels');
    await other.getByRole('link', { name: /the bit by the mill/ }).click();
    await other.click('[data-accept]');
    expect(await rideToTheEnd(other)).toBe(hash);
  });

  it('opening the link again says so, and a copy never overwrites', async () => {
    const other = second.page;
    await go(other, new URL(link).hash);
    await other.waitForSelector('[data-already]');
    await other.click('[data-keep]');
    await expect.poll(async () => (await stored(other, 'levels')).length).toBe(2);
    expect([...first.problems, ...second.problems]).toEqual([]);
  });
});

describe('the import', () => {
  let open: OpenPage;
  let page: Page;

  beforeAll(async () => {
    open = await site.openPage({ width: 1024, height: 768, address: '#bench/road' });
    page = open.page;
    await page.waitForSelector('[data-gpx]', { state: 'attached' });
  }, 60_000);

  afterAll(async () => {
    await open?.close();
  });

  const awkward: readonly (readonly [name: string, file: string, code: string])[] = [
    ['an empty file', '', 'empty'],
    ['a page that asks to sign in', '<!DOCTYPE html><html><body>Sign in</body></html>', 'not-gpx'],
    ['a file with a document type', '<!DOCTYPE gpx [<!ENTITY a "b">]><gpx></gpx>', 'doctype'],
    ['half a file', rideText.slice(0, 9_000), 'truncated'],
    ['places only', gpxText('<wpt lat="46" lon="10"/>'), 'only-waypoints'],
    ['JSON', '{"type":"FeatureCollection"}', 'not-xml'],
    ['eighty metres', gpxText(trackText(points.slice(0, 9))), 'too-short'],
    ['a ride without heights', gpxText(trackText(northward(101, 10, () => undefined))), 'no-elevation'],
  ];

  it.each(awkward)('says in a sentence what is wrong with %s', async (_, file, code) => {
    await page.setInputFiles('[data-gpx]', gpx(file));
    await page.waitForSelector(`[data-problem="${code}"]`);
    expect(await text(page, '[data-problem]')).toMatch(/^[A-Z][^.]{10,}\./);
    expect(await page.locator('[data-stretch]').count()).toBe(0);
  });

  it('asks about holes and goes by the answer', async () => {
    const holed = [...points.slice(0, 200), ...points.slice(260)];
    await page.setInputFiles('[data-gpx]', gpx(gpxText(trackText(holed))));
    await page.waitForSelector('[data-questions]');
    expect(await text(page, '[data-road-facts]')).toMatch(/6\.0 km/);
    await page.getByLabel('take only the longest part without a hole').check({ force: true });
    await expect.poll(() => text(page, '[data-road-facts]')).toMatch(/3\.4 km/);
  });

  it('shows how far it is with a very long file, and stops when told to', async () => {
    const long = northward(220_000, 1, (x) => 300 + 20 * Math.sin(x / 160));
    await page.setInputFiles('[data-gpx]', gpx(gpxText(trackText(long))));
    await page.waitForSelector('[data-road="reading"] progress');
    await page.click('[data-cancel]');
    await page.waitForSelector('[data-road="cancelled"]');
    expect(await page.locator('[data-stretch]').count()).toBe(0);
  });

  it('takes a file that is dropped', async () => {
    const data = await page.evaluateHandle((content) => {
      const transfer = new DataTransfer();
      transfer.items.add(new File([content], 'ride.gpx'));
      return transfer;
    }, rideText);
    await page.dispatchEvent('[data-drop]', 'drop', { dataTransfer: data });
    await page.waitForSelector('[data-stretch]');
    expect(open.problems).toEqual([]);
  });
});

describe('the bench', () => {
  let open: OpenPage;
  let page: Page;
  const pieces = (): Promise<string[]> => page.locator('ol.things > li .thing-head').allTextContents();

  beforeAll(async () => {
    open = await site.openPage({ width: 1280, height: 720, address: '#bench' });
    page = open.page;
    await hurry(page);
  }, 60_000);

  afterAll(async () => {
    await open?.close();
  });

  it('is used without a mouse: a piece added, dragged by keys, taken back, saved', async () => {
    await page.focus('[data-new]');
    await page.keyboard.press('Enter');
    await page.waitForSelector('[data-profile]');
    await page.focus('[data-add="pitch"]');
    await page.keyboard.press('Enter');
    expect((await pieces()).at(-1)).toMatch(/Pitch.*60 m, 8/);
    const handle = page.getByRole('slider', { name: 'Length' });
    await handle.focus();
    for (let times = 0; times < 3; times += 1) await page.keyboard.press('ArrowRight');
    await page.getByRole('slider', { name: 'Gradient' }).focus();
    await page.keyboard.press('ArrowUp');
    await expect.poll(async () => (await pieces()).at(-1)).toMatch(/75 m, 8\.5/);
    await page.focus('[data-undo]');
    await page.keyboard.press('Enter');
    await expect.poll(async () => (await pieces()).at(-1)).toMatch(/75 m, 8 %/);
    await page.keyboard.press('Enter');
    await expect.poll(async () => (await pieces()).at(-1)).toMatch(/60 m, 8 %/);
    await page.keyboard.press('Enter');
    await expect.poll(async () => (await pieces()).length).toBe(3);
    await page.focus('[data-redo]');
    await page.keyboard.press('Enter');
    await expect.poll(async () => (await pieces()).length).toBe(4);
    await page.focus('[data-save]');
    await page.keyboard.press('Enter');
    await page.waitForSelector('[data-keep-state="saved"]');
  });

  it('is used with a mouse: a handle dragged is one step back', async () => {
    await page.locator('[data-thing="pieces[1]"] .thing-head').click();
    await page.getByRole('slider', { name: 'Length' }).scrollIntoViewIfNeeded();
    const box = await page.getByRole('slider', { name: 'Length' }).boundingBox();
    if (box === null) throw new Error('the handle is there');
    const [x, y] = [box.x + box.width / 2, box.y + box.height / 2];
    await page.mouse.move(x, y);
    await page.mouse.down();
    await page.mouse.move(x + 100, y, { steps: 8 });
    await page.mouse.up();
    const dragged = Number.parseInt(/(\d+) m/.exec((await pieces())[1] ?? '')?.[1] ?? '', 10);
    expect(dragged).toBeGreaterThan(100);
    await page.click('[data-undo]');
    await expect.poll(async () => (await pieces())[1]).toMatch(/80 m/);
  });

  it('shows the best ride and what it would feel like, for a chosen bike and rider', async () => {
    await page.selectOption('[data-bench-bike]', 'kids-20-1x7');
    await page.selectOption('[data-bench-rider]', 'child-9');
    await page.waitForSelector('[data-reference="done"]', { timeout: 60_000 });
    expect(await text(page, '[data-reference] .facts')).toMatch(/Hardest pitch.*Lowest cadence.*Shifts/);
  });

  it('warns of a wall and leads to it', async () => {
    await page.fill('[data-thing="pieces[1]"] [data-field="slope"]', '18');
    await page.locator('[data-thing="pieces[1]"] .thing-head').click();
    const finding = page.locator('[data-finding^="cannot"]').first();
    expect(await finding.textContent()).toMatch(/This rider.*18 %/);
    await finding.getByRole('button').click();
    await page.waitForSelector('[data-thing="pieces[1]"] [data-field="lengthM"]:focus');
  });

  it('is the text beside it, both ways, with faults on their line', async () => {
    await page.locator('[data-json] summary').click();
    const box = page.getByLabel('The level as JSON');
    const good = await box.inputValue();
    await box.fill(good.replace('"slopeRatio": 0.18', '"slopeRatio": 0.06'));
    await expect.poll(async () => (await pieces())[1]).toMatch(/6 %/);
    await box.fill(good.replace('"slopeRatio": 0.18', '"slopeRatio": 18'));
    const line = good.slice(0, good.indexOf('"slopeRatio": 0.18')).split('\n').length;
    await page.waitForSelector(`[data-json-problem="${line}"]`);
    expect((await pieces())[1]).toMatch(/6 %/);
    await page.fill('[data-thing="pieces[1]"] [data-field="lengthM"]', '90');
    await expect.poll(() => box.inputValue()).toContain('"lengthM": 90, "slopeRatio": 0.06');
  });

  it('lets a place be tried and leads back to the same level', async () => {
    await page.fill('[data-field="try-from"]', '150');
    await page.click('[data-try]');
    await page.click('[data-accept]');
    await expect.poll(() => view(page), { timeout: 90_000, interval: 100 }).toBe('debrief');
    await page.getByRole('link', { name: 'Back to the level bench' }).click();
    await page.waitForSelector('[data-profile]');
    expect((await pieces())[1]).toMatch(/90 m, 6 %/);
    expect(await stored(page, 'rides')).toEqual([]);
  });

  it('shows a title that means harm as text, everywhere', async () => {
    const title = '"><img src=x onerror="document.body.id=\'bad\'"><b>';
    await page.fill('[data-level-title]', title);
    await page.click('[data-save]');
    await page.waitForSelector('[data-keep-state="saved"]');
    for (const hash of ['#bench', '#levels']) {
      await go(page, hash);
      await expect.poll(() => page.getByText(title).count()).toBeGreaterThan(0);
    }
    expect(await page.evaluate(() => document.body.id)).toBe('');
    expect(await page.locator('main img').count()).toBe(0);
  });

  it('duplicates and deletes, and brings back what was deleted', async () => {
    await go(page, '#bench');
    await page.click('[data-own="duplicate"]');
    await expect.poll(() => page.locator('[data-own-level]').count()).toBe(2);
    await page.locator('[data-own="remove"]').first().click();
    await expect.poll(() => page.locator('[data-own-level]').count()).toBe(1);
    await page.click('[data-undo-remove]');
    await expect.poll(() => page.locator('[data-own-level]').count()).toBe(2);
    expect(open.problems).toEqual([]);
  });
});

describe.each(['indoor', 'field'])('the bench in the %s theme', (theme) => {
  it('has no barriers that axe can find, fits 320 px, and nothing is too small to hit', async () => {
    const open = await site.openPage({
      width: 1024,
      height: 768,
      address: '#bench',
      context: { reducedMotion: 'reduce' },
    });
    const { page } = open;
    await page.evaluate((name) => {
      document.documentElement.dataset['theme'] = name;
    }, theme);
    const look = async (): Promise<void> => {
      await page.evaluate((name) => {
        document.documentElement.dataset['theme'] = name;
      }, theme);
      await page.setViewportSize({ width: 1024, height: 768 });
      await page.evaluate(axe);
      expect(await barriers(page)).toEqual([]);
      await page.setViewportSize({ width: 320, height: 700 });
      expect(await misfits(page)).toEqual({ tooWide: 0, tooSmall: [] });
    };
    await page.waitForSelector('[data-new]');
    await look();
    await page.click('[data-new]');
    for (const add of ['rollers', 'stopLinesM', 'winds', 'surfaces', 'hidden', 'cues'])
      await page.click(`[data-add="${add}"]`);
    await page.waitForSelector('[data-reference="done"]', { timeout: 60_000 });
    for (const panel of await page.locator('details > summary').all()) await panel.click();
    await look();
    await go(page, '#bench/road');
    await page.setInputFiles('[data-gpx]', gpx(rideText));
    await page.waitForSelector('[data-stretch]');
    await look();
    expect(open.problems).toEqual([]);
    await open.close();
  });
});

/** What axe finds, in words that name the element. */
function barriers(page: Page): Promise<string[]> {
  return page.evaluate(async () => {
    const { axe: run } = window as unknown as {
      axe: {
        run(): Promise<{ violations: { id: string; nodes: { html: string; failureSummary: string }[] }[] }>;
      };
    };
    const { violations } = await run.run();
    return violations.flatMap(({ id, nodes }) =>
      nodes.map(({ html, failureSummary }) => `${id}: ${html.slice(0, 160)} ${failureSummary}`),
    );
  });
}

/** How much wider than the screen the page is, and what a thumb would miss. */
function misfits(page: Page): Promise<{ tooWide: number; tooSmall: string[] }> {
  return page.evaluate(() => ({
    tooWide: document.documentElement.scrollWidth - document.documentElement.clientWidth,
    tooSmall: [...document.querySelectorAll('button, a, label:not(:has(+ .number-box)), input, select')]
      .filter((one) => {
        const { width, height } = one.getBoundingClientRect();
        return width > 0 && Math.min(width, height) < 44 && one.closest('label')?.matches('.tick') !== true;
      })
      .map((one) => one.outerHTML.slice(0, 120)),
  }));
}
