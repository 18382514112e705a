/**
 * A device on which the game has been used: rides, a level of its own, a group session in the middle. Made once by
 * playing, then laid under every journey; and a look into what a browser holds, past the game.
 */
import { readFileSync } from 'node:fs';
import type { BrowserContext, Page } from 'playwright-core';
import { hashJson } from '../../../src/core/math/hash.ts';
import { openWithShortLevel } from '../../browser/clinicVisit.ts';
import { rideText } from '../../browser/benchPage.ts';
import { NAMES, type Site } from '../../browser/site.ts';
import type { Bag, Promises } from './journeys.ts';

/** Everything a browser holds of the game. */
export interface Held {
  /** Rides with their recording. */
  readonly rides: readonly string[];
  readonly levels: readonly string[];
  /** Kind and id of records. */
  readonly records: readonly string[];
  /** Whether choices are kept. */
  readonly settings: number;
}

/** Everything a browser holds: stores with their rows by key, and the small names beside them. */
export interface DeviceState {
  readonly stores: readonly (readonly [string, readonly (readonly [string, unknown])[]])[];
  readonly local: readonly (readonly [string, string])[];
}

export interface Device {
  readonly state: DeviceState;
  readonly held: Held;
  readonly bag: Omit<Bag, 'mark'>;
}

export const SPEED = 40;

/** Works on a page of the same site that runs nothing. */
async function beside<T>(context: BrowserContext, url: string, work: (page: Page) => Promise<T>): Promise<T> {
  const page = await context.newPage();
  try {
    await page.addInitScript(NAMES);
    await page.goto(`${url}icons/icon.svg`);
    return await work(page);
  } finally {
    await page.close();
  }
}

/** Everything a browser holds, past the game. */
function dumpOf(page: Page): Promise<DeviceState> {
  return page.evaluate(async () => {
    const there = await indexedDB.databases();
    const local = Object.entries({ ...localStorage }) as [string, string][];
    if (!there.some(({ name }) => name === 'before-the-hill')) return { stores: [], local };
    const answer = <T>(request: IDBRequest<T>): Promise<T> =>
      new Promise((resolve, reject) => {
        request.addEventListener('success', () => resolve(request.result));
        request.addEventListener('error', () => reject(request.error ?? new Error('no answer')));
      });
    const database = await answer(indexedDB.open('before-the-hill'));
    const stores: [string, [string, unknown][]][] = [];
    for (const name of database.objectStoreNames) {
      const store = database.transaction(name).objectStore(name);
      const [keys, values] = await Promise.all([answer(store.getAllKeys()), answer(store.getAll())]);
      stores.push([name, keys.map((key, i) => [key as string, values[i] as unknown])]);
    }
    database.close();
    return { stores, local };
  });
}

/** Makes a browser hold exactly this. */
export function layDown(context: BrowserContext, url: string, state: DeviceState): Promise<void> {
  return beside(context, url, (page) =>
    page.evaluate(async ({ stores, local }) => {
      const ended = (request: IDBOpenDBRequest): Promise<IDBDatabase> =>
        new Promise((resolve, reject) => {
          request.addEventListener('success', () => resolve(request.result));
          request.addEventListener('error', () => reject(request.error ?? new Error('no answer')));
        });
      for (const name of await caches.keys()) await caches.delete(name);
      localStorage.clear();
      sessionStorage.clear();
      for (const [name, value] of local) localStorage.setItem(name, value);
      await ended(indexedDB.deleteDatabase('before-the-hill'));
      const opening = indexedDB.open('before-the-hill', 1);
      opening.addEventListener('upgradeneeded', () => {
        for (const [name, rows] of stores) {
          const store = opening.result.createObjectStore(name);
          for (const [key, value] of rows) store.put(value, key);
        }
      });
      (await ended(opening)).close();
    }, state),
  );
}

/** What the database of a browser holds. */
export async function heldIn(context: BrowserContext, url: string): Promise<Held> {
  return heldOf(await beside(context, url, dumpOf));
}

function heldOf({ stores }: DeviceState): Held {
  type Row = Record<string, unknown>;
  const all = (name: string): Row[] =>
    (stores.find(([one]) => one === name)?.[1] ?? []).map(([, row]) => row as Row);
  return {
    rides: all('rides')
      .filter((one) => one['recording'] !== null)
      .map((one) => String(one['id'])),
    levels: all('levels').map((one) => String((one['level'] as Row | undefined)?.['title'])),
    records: all('records').map((one) => `${String(one['kind'])} ${String(one['id'])}`),
    settings: all('settings').length,
  };
}

/** What was promised, or was there before, and is not there. */
export function missingFrom(held: Held, before: Held, promised: Promises): string[] {
  const turns = (one: Held): number =>
    one.records.filter((record) => record.startsWith('clinic-record ')).length;
  if (promised.gone) {
    const left = held.rides.length + held.levels.length + held.records.length;
    return left === 0 ? [] : [`${left} things that were said to be deleted are still there`];
  }
  if (promised.mayBeGone) return [];
  const lacks = (what: string, wanted: readonly string[], there: readonly string[]): string[] =>
    wanted.filter((one) => !there.includes(one)).map((one) => `${what} ${one}`);
  // Tokens of unfinished work come and go; everything else that was kept stays.
  const lasting = before.records.filter((one) => /^clinic-(record|plan|round)\b/.test(one));
  return [
    ...lacks('ride', [...before.rides, ...promised.rideIds], held.rides),
    ...lacks('level', [...before.levels, ...promised.levelTitles], held.levels),
    ...lacks('record', lasting, held.records),
    ...(promised.rides > 0 && held.rides.length < before.rides.length + promised.rides
      ? ['a ride that was called kept']
      : []),
    ...(promised.turns > 0 && turns(held) < turns(before) + promised.turns
      ? ['a turn that was called kept']
      : []),
  ];
}

/** A file as another device would have saved it. */
function sealed({ checksum: _, ...rest }: Record<string, unknown>): string {
  return JSON.stringify({ ...rest, checksum: hashJson(rest) });
}

async function rideOnce(page: Page): Promise<void> {
  await page.click('[data-level="short-and-steep"]');
  await page.locator('[data-accept], body[data-ride-state="riding"]').first().waitFor();
  const accept = page.locator('[data-accept]');
  if ((await accept.count()) > 0) await accept.click();
  await page.locator('[data-saved="saved"]').waitFor({ state: 'attached', timeout: 60_000 });
}

/** Plays on a fresh device until it is a used one. */
export async function makeDevice(site: Site): Promise<Device> {
  const open = await site.openPage({ width: 1024, height: 768, context: { serviceWorkers: 'block' } });
  const { page, context } = open;
  await openWithShortLevel(page, site.url, SPEED);
  await page.goto(`${site.url}#levels`);
  await page.reload();
  for (let i = 0; i < 2; i += 1) {
    await rideOnce(page);
    await page.goto(`${site.url}#levels`);
  }
  await page.goto(`${site.url}#about`);
  const saved = page.waitForEvent('download');
  await page.click('[data-save-everything]');
  const kept = JSON.parse(readFileSync(await (await saved).path(), 'utf8')) as {
    rides: { id: string; savedAtMs: number }[];
    records: unknown[];
    levels: unknown[];
  };
  const rides = kept.rides.map((ride, i) => ({ ...ride, id: `from-another-device-${i}` }));
  await page.goto(`${site.url}#clinic`);
  await page.click('[data-new-plan]');
  await page.fill('input[name="title"]', 'Tuesday evening');
  await page.click('[data-ride="own short-and-steep"]');
  const more = page.getByRole('button', { name: 'One attempt more' });
  while (await more.isEnabled()) await more.click();
  await page.click('[data-save-go]');
  await page.click('[data-go]');
  await page.click('[data-start]');
  await page.locator('[data-remark]').waitFor({ timeout: 60_000 });
  await page.click('[data-next-rider]');
  await page.locator('[data-start]').waitFor();
  const planId = /s(?:%2F|\/)([^/%]+)/.exec(page.url())?.[1] ?? '';
  if (open.problems.length > 0) throw new Error(`the device is not well: ${open.problems.join('; ')}`);
  await page.goto('about:blank');
  const state = await beside(context, site.url, dumpOf);
  const held = heldOf(state);
  if (held.rides.length !== 2 || planId === '') throw new Error('the device was not used as meant');
  await open.close();
  const bag = {
    file: sealed({ ...kept, rides, records: [], levels: [] }),
    fileRideIds: rides.map(({ id }) => id),
    gpx: rideText,
    planId,
  };
  return { state, held, bag };
}
