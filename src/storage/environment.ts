/**
 * Where the browser keeps things, asked for carefully: even naming a place can throw where the browser forbids it.
 * A test hands in its own places.
 */

/** The places, each asked for at the moment of use; null where there is none. */
export interface Environment {
  /** @throws where the browser forbids it */
  readonly indexedDB: () => IDBFactory | null;
  /** The simple store. @throws where the browser forbids it */
  readonly localStorage: () => globalThis.Storage | null;
  readonly caches: () => CacheStorage | null;
  readonly storageManager: () => StorageManager | null;
  /** Where it is heard what other tabs put into the simple store. */
  readonly tabs: () => EventTarget | null;
  /** How long opening the database may take before the game goes on without it (ms). */
  readonly timeoutMs: number;
  /** The clock, in milliseconds since 1970. */
  readonly nowMs: () => number;
}

const host = globalThis as Partial<typeof globalThis>;

export const THIS_BROWSER: Environment = {
  indexedDB: () => host.indexedDB ?? null,
  localStorage: () => host.localStorage ?? null,
  caches: () => host.caches ?? null,
  storageManager: () => host.navigator?.storage ?? null,
  tabs: () => host.window ?? null,
  timeoutMs: 3_000,
  nowMs: () => Date.now(),
};
