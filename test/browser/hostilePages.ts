/**
 * Puts hostile inputs into the real pages as a person would, and looks at what they did to the page: its longest task
 * and the rides in its database.
 */
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import type { Page } from 'playwright-core';
import type { Hostile, Kind } from '../hostile/inputs.ts';

/** What a page takes: the others have no page of their own. */
export const PAGE_KINDS: readonly Kind[] = [
  'link',
  'level',
  'copy',
  'codes',
  'plan',
  'rides',
  'address',
  'gpx',
];

/** Remembers the longest task of the page's thread; runs in the page before everything else. */
export function watchTasks(): void {
  const seen = { longestMs: 0 };
  Object.assign(window, { seen });
  new PerformanceObserver((list) => {
    for (const { duration } of list.getEntries()) seen.longestMs = Math.max(seen.longestMs, duration);
  }).observe({ type: 'longtask', buffered: true });
}

/** The longest task since the last time (ms); runs in the page. */
export function longestTask(): Promise<number> {
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

const folder = mkdtempSync(join(tmpdir(), 'hostile-'));
process.on('exit', () => rmSync(folder, { recursive: true, force: true }));

/** A file on disk: what is handed over as bytes would be unpacked by the page and counted as its work. */
function file(name: string, text: string): string {
  const path = join(folder, name);
  writeFileSync(path, text);
  return path;
}

/** Puts an input into the page that takes it and waits until the page has said something about it. */
export async function intoPage(page: Page, { kind, text }: Hostile): Promise<void> {
  const go = (hash: string): Promise<void> =>
    page.evaluate((next) => {
      location.hash = '#start';
      location.hash = next;
    }, hash);
  const told = (selector: string): Promise<unknown> =>
    page.waitForSelector(selector, { timeout: 300_000, state: 'attached' });
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
      await page.check('input[name=reader-way][value=picture]');
      await page.setInputFiles('[data-read-files]', file('rides.jsonl', text));
      await told('.reader[data-busy=false] .reader-told span, [data-join], [data-no]');
  }
}

/** The rides in the database of the page, as text; runs in the page. */
export function keptInPage(ids: readonly string[]): Promise<string> {
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
