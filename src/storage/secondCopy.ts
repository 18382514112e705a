/**
 * A second copy of every ride, level and record, one file each, among the browser's caches. A browser that met a full
 * disk in the middle of a write may throw its whole database away at the next start (Chromium 156 does, with all
 * that was in it); these files do not hang together, so one that did not fit takes no other with it. When something
 * is written, removed and brought back is decided by the vault.
 */
import { canonicalJson } from '../core/math/hash.ts';
import { Fault, inTime } from './faults.ts';
import { OWN_PREFIX } from './localBackup.ts';
import { READERS, type StoreName } from './shapes.ts';
import type { StoredPiece } from './types.ts';

const CACHE = `${OWN_PREFIX}second-copy`;
/** Addresses that no site has; nothing is ever fetched from them. */
const ROOT = '/before-the-hill.second-copy/';
const PROBE = `${ROOT}probe`;
/** Settings and results have the small copy. */
export const COPIED_STORES: readonly StoreName[] = ['rides', 'levels', 'records'];
/** The journal of a ride is written all the time and soon removed, and who has the group sessions is asked anew. */
const PASSING = /^(ride-journal|clinic-owner)/;
/** The database writes a little more than it is given, and the copy comes on top (bytes). */
const SPARE_BYTES = 8_192;

export type CopyPlace = Pick<StoredPiece, 'store' | 'key'>;

/** One text for each place: a blank is in no name of a store. */
export const placeName = ({ store, key }: CopyPlace): string => `${store} ${key}`;

export function isCopied({ store, key }: CopyPlace): boolean {
  return COPIED_STORES.includes(store) && !PASSING.test(key);
}

/** Makes the copy over the caches, which may be missing or throw; one that does not answer in `limitMs` is left out. */
export function createSecondCopy(caches: () => CacheStorage | null, limitMs: number) {
  let isStuck = false;
  const soon = async <T>(promise: Promise<T>): Promise<T> => {
    let hangs = false;
    try {
      return await inTime(promise, limitMs, () => {
        hangs = true;
        return new Fault('hangs');
      });
    } finally {
      isStuck ||= hangs;
    }
  };
  /** `none` where there is no such place or it does not answer, `failed` where it did not work. */
  const attempt = async <T>(none: T, failed: T, work: (cache: Cache) => Promise<T>): Promise<T> => {
    if (isStuck) return none;
    let cache: Cache | null;
    try {
      cache = await soon(caches()?.open(CACHE) ?? Promise.resolve(null));
    } catch {
      return none;
    }
    if (cache === null) return none;
    try {
      return await soon(work(cache));
    } catch {
      return isStuck ? none : failed;
    }
  };
  /** What is removed must not come back from a cache that answers later: all of it goes, the database has the rest. */
  const castAway = async (): Promise<boolean> => {
    try {
      await soon(caches()?.delete(CACHE) ?? Promise.resolve(true));
      isStuck = false;
      return true;
    } catch {
      return false;
    }
  };
  return {
    /** Whether something so long could be written now, twice; null where there is no such place to ask. */
    hasRoom: (bytes: number): Promise<boolean | null> =>
      attempt<boolean | null>(null, false, (cache) => takes(cache, bytes)),
    /** Keeps one thing; true when it was read back, or where there is no such place. */
    put: (place: CopyPlace, value: unknown): Promise<boolean> =>
      attempt(true, false, (cache) => written(cache, addressOf(place), canonicalJson(value))),
    /** Takes one thing away; false when it may still be there. */
    async remove(place: CopyPlace): Promise<boolean> {
      const removed = await attempt(true, false, async (cache) => {
        await cache.delete(addressOf(place));
        return true;
      });
      return isStuck ? castAway() : removed;
    },
    /** What is there; null where there is no such place. */
    places: (): Promise<readonly CopyPlace[] | null> =>
      attempt<readonly CopyPlace[] | null>(null, null, async (cache) =>
        (await cache.keys()).flatMap(({ url }) => placeAt(new URL(url).pathname) ?? []),
      ),
    /** What is at these places and can be read, as pieces for the database. */
    async pieces(places: readonly CopyPlace[]): Promise<readonly StoredPiece[]> {
      const all: StoredPiece[] = [];
      for (const place of places) {
        const value = await attempt<unknown>(null, null, async (cache) =>
          (await cache.match(addressOf(place)))?.json(),
        );
        const reading = READERS[place.store](value);
        if (reading.ok) all.push({ ...place, value: reading.value, mine: false });
      }
      return all;
    },
  };
}
/** The copy. No method rejects. */
export type SecondCopy = ReturnType<typeof createSecondCopy>;

/** Whether something so long is taken twice; not read back, for another tab may be asking as well. */
async function takes(cache: Cache, bytes: number): Promise<boolean> {
  const isTaken = await cache.put(PROBE, new Response('x'.repeat(2 * bytes + SPARE_BYTES))).then(
    () => true,
    () => false,
  );
  await cache.delete(PROBE);
  return isTaken;
}

/** Writes a text and reads it back. A cache that gives nothing back and has room is no place to keep copies. */
async function written(cache: Cache, address: string, text: string): Promise<boolean> {
  await cache.put(address, new Response(text));
  const back = await cache.match(address);
  try {
    return (await back?.text()) === text;
  } catch {
    return takes(cache, text.length);
  }
}

function addressOf({ store, key }: CopyPlace): string {
  return `${ROOT}${store}/${encodeURIComponent(key)}`;
}

function placeAt(path: string): CopyPlace | null {
  const [store, key, ...more] = path.slice(ROOT.length).split('/');
  const known = COPIED_STORES.find((one) => one === store);
  return !path.startsWith(ROOT) || known === undefined || key === undefined || more.length > 0
    ? null
    : { store: known, key: decodeURIComponent(key) };
}
