/**
 * What the tests of the storage start from: the samples of every version, a simple store in memory that can be
 * made to fail, and a storage without a database.
 */
import { RIDE_SCHEMA } from '../../src/storage/shapes.ts';
import {
  type Environment,
  type NewRide,
  openStorage,
  type SavedRide,
  type Storage,
} from '../../src/storage/index.ts';

const files = import.meta.glob<unknown>('./samples/*.json', { eager: true, import: 'default' });

/** A sample by the name of its ladder and its version. */
export function sample(name: string, version = 1): unknown {
  const found = files[`./samples/${name}.${version}.json`];
  if (found === undefined) throw new Error(`There is no sample ${name}.${version}.json`);
  return structuredClone(found);
}

/** Names and versions of all samples. */
export const sampleNames: readonly string[] = Object.keys(files).map((path) =>
  path.replace('./samples/', '').replace('.json', ''),
);

/** An object without some of its parts. */
export function without<T extends object, K extends keyof T>(whole: T, ...names: readonly K[]): Omit<T, K> {
  const kept = Object.entries(whole).filter(([name]) => !names.some((left) => left === name));
  return Object.fromEntries(kept) as Omit<T, K>;
}

/** A ride like the sample, with an id of its own. */
export function rideLike(id: string, change: Partial<SavedRide> = {}): NewRide {
  return { ...without(sample('rides', RIDE_SCHEMA) as SavedRide, 'schema', 'savedAtMs'), id, ...change };
}

/** A simple store in memory; `limit` is how many characters fit. */
export function simpleStore(limit = Number.POSITIVE_INFINITY): globalThis.Storage {
  const items = new Map<string, string>();
  return {
    get length() {
      return items.size;
    },
    key: (index) => [...items.keys()][index] ?? null,
    getItem: (key) => items.get(key) ?? null,
    setItem(key, value) {
      if (value.length > limit) throw new DOMException('full', 'QuotaExceededError');
      items.set(key, value);
    },
    removeItem: (key) => void items.delete(key),
    clear: () => items.clear(),
  };
}

/** A storage without a database; each call of its clock is a millisecond later. */
export function openWithoutDatabase(
  localStorage: globalThis.Storage | null = null,
  given: Partial<Environment> = {},
): Promise<Storage> {
  let now = 1_800_000_000_000;
  const nowMs = (): number => now++;
  return openStorage({
    indexedDB: () => null,
    localStorage: () => localStorage,
    caches: () => null,
    storageManager: () => null,
    nowMs,
    ...given,
  });
}
