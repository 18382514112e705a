/**
 * The few things done inside one transaction, over the database and over plain memory alike. When a
 * transaction begins and whether it lasted is the business of the connection.
 */
import type { IDBPTransaction } from 'idb';
import { type StoreName, STORES } from './shapes.ts';

/** Where unreadable things go that had to make room. */
const ASIDE = 'damaged';
/** Every store of the database; keys stand outside the values, so that a broken value still has its name. */
export const ALL_STORES: readonly string[] = [...STORES, ASIDE];

/** Reading and writing within a transaction. Await nothing else in between, or the database ends it. */
export interface StoreAccess {
  get(store: StoreName, key: string): Promise<unknown>;
  entries(store: StoreName): Promise<readonly (readonly [string, unknown])[]>;
  keys(store: StoreName): Promise<readonly string[]>;
  put(store: StoreName, key: string, value: unknown): Promise<void>;
  /** Keeps something unreadable under a name of its own. */
  setAside(key: string, value: unknown): Promise<void>;
  remove(store: StoreName, key: string): Promise<void>;
}

export type Mode = 'readonly' | 'readwrite';
export type Transaction<M extends Mode = Mode> = IDBPTransaction<unknown, string[], M>;

/** A desk over a transaction of the database. A `readonly` one rejects what would write. */
export function databaseAccess<M extends Mode>(transaction: Transaction<M>): StoreAccess {
  const writable = (store: string) => (transaction as Transaction<'readwrite'>).objectStore(store);
  return {
    get: (store, key) => transaction.objectStore(store).get(key) as Promise<unknown>,
    async entries(store) {
      const found = transaction.objectStore(store);
      // One after the other: where the second request throws at once, the first would be left without anybody to hear it.
      const keys = await found.getAllKeys();
      const values = (await found.getAll()) as unknown[];
      return keys.map((key, i) => [nameOf(key), values[i]] as const);
    },
    keys: async (store) => (await transaction.objectStore(store).getAllKeys()).map(nameOf),
    async put(store, key, value) {
      await writable(store).put(value, key);
    },
    async setAside(key, value) {
      await writable(ASIDE).put(value, key);
    },
    async remove(store, key) {
      await writable(store).delete(key);
    },
  };
}

/** Keys of ours are texts; another kind of key can only stand at something broken, which still needs a name. */
function nameOf(key: IDBValidKey): string {
  return typeof key === 'string' ? key : JSON.stringify(key);
}

/** A desk over memory, and what is on it. */
export interface MemoryAccess extends StoreAccess {
  /** Everything on it, oldest first. */
  all(): readonly { readonly store: StoreName; readonly key: string; readonly value: unknown }[];
  /** Takes something away, unless another value has come in its place since. */
  release(store: StoreName, key: string, value: unknown): void;
  empty(): void;
}

export function memoryAccess(): MemoryAccess {
  const stores = new Map<StoreName, Map<string, unknown>>();
  const at = (store: StoreName): Map<string, unknown> => {
    const found = stores.get(store) ?? new Map<string, unknown>();
    stores.set(store, found);
    return found;
  };
  return {
    get: (store, key) => Promise.resolve(at(store).get(key)),
    entries: (store) => Promise.resolve([...at(store)]),
    keys: (store) => Promise.resolve([...at(store).keys()]),
    put(store, key, value) {
      at(store).set(key, value);
      return Promise.resolve();
    },
    // Only what has been read comes here, so there is never anything to keep.
    setAside: () => Promise.resolve(),
    remove(store, key) {
      at(store).delete(key);
      return Promise.resolve();
    },
    all: () =>
      [...stores].flatMap(([store, items]) => [...items].map(([key, value]) => ({ store, key, value }))),
    release(store, key, value) {
      if (at(store).get(key) === value) at(store).delete(key);
    },
    empty: () => stores.clear(),
  };
}
