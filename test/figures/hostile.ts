/**
 * Sends hostile inputs through the doors of the game and through its real pages in Chromium, and prints what became
 * of them: `npx tsx test/figures/hostile.ts COUNT SEED PAGES` (10,000, 1 and 400 unless said; build first). PAGES of
 * the inputs go through pages. Times belong to this machine; an input over a second is tried twice more, and the
 * shortest time counts.
 */
import { cpus } from 'node:os';
import type { Page } from 'playwright-core';
import { openSite } from '../browser/site.ts';
import { openStorage } from '../../src/storage/index.ts';
import { throughDoor } from '../hostile/doors.ts';
import { copyOf, type Hostile, hostileInput, keptRide, type Kind } from '../hostile/inputs.ts';

const [count = 10_000, seed = 1, pages = Math.min(400, count)] = process.argv.slice(2).map(Number);
const TOO_LONG_MS = 1_000;
const RIDES = [1, 2, 3].map(keptRide);
/** What a page takes: the others have no page of their own. */
const PAGE_KINDS: readonly Kind[] = ['link', 'level', 'copy', 'codes', 'plan', 'rides', 'address', 'gpx'];

const table = new Map<string, { inputs: number; longestMs: number; longest: string; faults: number }>();
const faults: string[] = [];

function note(where: string, input: Hostile, index: number, ms: number, fault: string | null): void {
  const name = `${where} ${input.kind}`;
  const row = table.get(name) ?? { inputs: 0, longestMs: 0, longest: '', faults: 0 };
  row.inputs += 1;
  if (ms > row.longestMs) Object.assign(row, { longestMs: ms, longest: `${index} ${input.how}` });
  if (fault !== null) {
    row.faults += 1;
    faults.push(`${name} ${index} (${input.how}): ${fault}`);
  }
  table.set(name, row);
}

/** The doors, in this process; what counts is the time of the processor, since others may use the machine. */
async function doors(upTo: number): Promise<string> {
  const storage = await openStorage({ indexedDB: null, localStorage: null });
  await storage.importAll(copyOf({ rides: RIDES }));
  const kept = async (): Promise<string> =>
    JSON.stringify(await Promise.all(RIDES.map((ride) => storage.getRide(ride['id'] as string))));
  const before = await kept();
  for (let i = 0; i < upTo; i += 1) {
    const input = hostileInput(seed, i);
    const start = process.cpuUsage();
    let fault: string | null = null;
    await throughDoor(input, storage).catch((error: unknown) => (fault = String(error).slice(0, 300)));
    const used = process.cpuUsage(start);
    note('door', input, i, (used.user + used.system) / 1_000, fault);
    if ((i + 1) % 500 === 0) console.log(`${i + 1} of ${upTo} at the doors, ${faults.length} faults`);
  }
  return (await kept()) === before ? 'the same' : 'CHANGED';
}

/** Remembers the longest task of the page's thread since it was last asked. */
function watchTasks(): void {
  const seen = { longestMs: 0 };
  Object.assign(window, { seen });
  new PerformanceObserver((list) => {
    for (const { duration } of list.getEntries()) seen.longestMs = Math.max(seen.longestMs, duration);
  }).observe({ type: 'longtask', buffered: true });
}

function longestTask(): Promise<number> {
  const { seen } = window as unknown as { seen: { longestMs: number } };
  // Two frames later the observer has been told of the last task.
  return new Promise((resolve) =>
    requestAnimationFrame(() =>
      requestAnimationFrame(() =>
        setTimeout(() => {
          resolve(seen.longestMs);
          seen.longestMs = 0;
        }, 0),
      ),
    ),
  );
}

const file = (name: string, text: string) => ({
  name,
  mimeType: 'application/json',
  buffer: Buffer.from(text),
});

/** Puts an input into the page that takes it and waits until the page has said something about it. */
async function intoPage(page: Page, { kind, text }: Hostile): Promise<void> {
  const go = (hash: string): Promise<void> =>
    page.evaluate((next) => {
      location.hash = '#start';
      location.hash = next;
    }, hash);
  const told = (selector: string): Promise<unknown> =>
    page.waitForSelector(selector, { timeout: 60_000, state: 'attached' });
  switch (kind) {
    case 'address':
      return go(text.replace(/^#?/, '#'));
    case 'link':
      await go(`#bench/level.${text}`);
      await told('[data-opened]');
      return;
    case 'level':
      await go('#bench');
      await page.setInputFiles('[data-level-file]', file('level.json', text));
      await told('[data-opened], .bench-begin output:not(:empty)');
      return;
    case 'gpx':
      await go('#bench/road');
      await page.setInputFiles('input[type=file]', file('road.gpx', text));
      await told('[data-road=refused], [data-road=road]');
      return;
    case 'copy':
      await go('#about');
      await page.reload();
      await page.setInputFiles('[data-take-back]', file('copy.json', text));
      await told('.kept-told:not([data-told=""])');
      return;
    default:
      await go('#join');
      await page.reload();
      await page.click('text=Picture or file');
      await page.setInputFiles('[data-read-files]', file('rides.jsonl', text));
      await told('.reader[data-busy=false] .reader-told span, [data-join], [data-no]');
  }
}

/** The rides in the database of the page, as text. */
function keptInPage(ids: readonly string[]): Promise<string> {
  return new Promise((resolve, reject) => {
    void indexedDB.databases().then(([first]) => {
      const opening = indexedDB.open(first?.name ?? '');
      opening.onerror = () => reject(new Error('no database'));
      opening.onsuccess = () => {
        const found: unknown[] = [];
        const store = opening.result.transaction('rides').objectStore('rides');
        for (const id of ids)
          store.get(id).onsuccess = (event) => found.push((event.target as IDBRequest).result);
        store.transaction.oncomplete = () => {
          opening.result.close();
          resolve(JSON.stringify(found));
        };
      };
    }, reject);
  });
}

/** Real pages: the longest task, errors nobody caught, and the kept rides. */
async function realPages(upTo: number): Promise<string> {
  const site = await openSite();
  const { page, problems } = await site.openPage({ width: 1280, height: 720, address: '#about' });
  await page.addInitScript(watchTasks);
  await page.reload();
  const ids = RIDES.map((ride) => ride['id'] as string);
  await intoPage(page, { kind: 'copy', how: '', text: JSON.stringify(copyOf({ rides: RIDES })) });
  const before = await page.evaluate(keptInPage, ids);
  if (before.includes('null') || !before.includes('ride-3')) throw new Error('the rides were not kept');
  for (let i = 0; i < upTo; i += 1) {
    const input = hostileInput(seed + 1, i, PAGE_KINDS);
    let shortestMs = Number.POSITIVE_INFINITY;
    let fault: string | null = null;
    for (let attempt = 0; attempt < 3 && shortestMs > TOO_LONG_MS && fault === null; attempt += 1) {
      await page.evaluate(longestTask);
      const known = problems.length;
      await intoPage(page, input).catch(
        (error: unknown) => (fault = `said nothing: ${String(error).slice(0, 200)}`),
      );
      shortestMs = Math.min(shortestMs, await page.evaluate(longestTask));
      if (problems.length > known) fault = problems.slice(known).join('; ').slice(0, 300);
    }
    note(
      'page',
      input,
      i,
      shortestMs,
      fault ?? (shortestMs > TOO_LONG_MS ? `${Math.round(shortestMs)} ms` : null),
    );
    if ((i + 1) % 50 === 0) console.log(`${i + 1} of ${upTo} in pages, ${faults.length} faults`);
  }
  const after = await page.evaluate(keptInPage, ids);
  await site.close();
  return after === before ? 'the same' : 'CHANGED';
}

const keptAtDoors = await doors(count - pages);
const keptInPages = pages > 0 ? await realPages(pages) : 'not looked at';
console.log(`\n${count} inputs, seed ${seed}, ${pages} of them in pages, on ${cpus().length} processors\n`);
console.log('| where | inputs | longest (ms) | faults | the longest one |\n|---|---|---|---|---|');
for (const [name, { inputs, longestMs, longest, faults: bad }] of [...table].toSorted(([a], [b]) =>
  a < b ? -1 : 1,
))
  console.log(`| ${name} | ${inputs} | ${Math.round(longestMs)} | ${bad} | ${longest} |`);
console.log(
  `\nkept rides: at the doors ${keptAtDoors}, in the pages ${keptInPages}\n${faults.length} faults`,
);
for (const fault of faults.slice(0, 40)) console.log(`- ${fault}`);
