/**
 * Where the browser keeps things, asked for carefully: even naming a place can throw where the browser forbids it.
 * A test hands in its own places.
 */

/** What can be handed in; `null` means there is none. */
export interface StorageOptions {
  readonly indexedDB?: IDBFactory | null;
  readonly localStorage?: globalThis.Storage | null;
  readonly caches?: CacheStorage | null;
  readonly storageManager?: StorageManager | null;
  /** Where it is heard what other tabs put into the simple store. */
  readonly tabs?: EventTarget | null;
  /** How long opening the database may take before the game goes on without it (ms). */
  readonly timeoutMs?: number;
  /** The clock, in milliseconds since 1970. */
  readonly nowMs?: () => number;
}

/** The places, each asked for at the moment of use. */
export interface Environment {
  /** @throws where the browser forbids it */
  readonly factory: () => IDBFactory | null;
  /** @throws where the browser forbids it */
  readonly simpleStore: () => globalThis.Storage | null;
  readonly caches: () => CacheStorage | null;
  readonly storageManager: () => StorageManager | null;
  readonly tabs: () => EventTarget | null;
  readonly timeoutMs: number;
  readonly nowMs: () => number;
}

const TIMEOUT_MS = 3_000;

/** The places of this browser, or those handed in. */
export function environmentOf(options: StorageOptions): Environment {
  const host = globalThis as Partial<typeof globalThis>;
  return {
    factory: () => (options.indexedDB === undefined ? (host.indexedDB ?? null) : options.indexedDB),
    simpleStore: () =>
      options.localStorage === undefined ? (host.localStorage ?? null) : options.localStorage,
    caches: () => (options.caches === undefined ? (host.caches ?? null) : options.caches),
    storageManager: () =>
      options.storageManager === undefined ? (host.navigator?.storage ?? null) : options.storageManager,
    tabs: () => (options.tabs === undefined ? (host.window ?? null) : options.tabs),
    timeoutMs: options.timeoutMs ?? TIMEOUT_MS,
    nowMs: options.nowMs ?? Date.now,
  };
}
