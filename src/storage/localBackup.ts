/**
 * A second, small copy of the newest results, the newest whole ride and the settings in the browser's simple
 * store, so that progress survives a lost database. It is read afresh every time, because other tabs write it too,
 * and it counts as written only when it has been read back.
 */
import { canonicalJson, hashJson } from '../core/math/hash.ts';
import { LIMITS } from '../core/math/limits.ts';
import { isTooDeep } from '../core/math/measure.ts';
import { climbFields } from './ladder.ts';
import { type KeptThings, keyOf, LADDERS, READERS, withoutRide } from './shapes.ts';
import type { KeptSettings, StoredPiece, StoredResult, SavedRide, StoreName } from './types.ts';

/** Everything of ours in the simple store and among the caches has a name that begins so. */
export const OWN_PREFIX = 'before-the-hill.';
const KEY = `${OWN_PREFIX}small-copy`;
/** Put for a moment when everything is deleted, so that other tabs hear of it. */
export const ERASED_KEY = `${OWN_PREFIX}erased`;
const PROBE_KEY = `${OWN_PREFIX}probe`;
/** An unreadable copy makes room here and is not thrown away. */
const DAMAGED_KEY = `${OWN_PREFIX}small-copy.damaged`;
const SCHEMA = 1;
const MOST_RESULTS = 40;
/** Longest newest ride that is kept whole (characters); the simple store is small. */
const LONGEST_RIDE = 200_000;

interface Copy {
  readonly results: readonly StoredResult[];
  readonly newest: SavedRide | null;
  readonly settings: KeptSettings | null;
}

const NOTHING: Copy = { results: [], newest: null, settings: null };

/** Work on the simple store, which may be missing or throw: then the answer is the fallback. */
export function attemptOn(simpleStore: () => globalThis.Storage | null) {
  return <T>(fallback: T, work: (store: globalThis.Storage) => T): T => {
    try {
      const store = simpleStore();
      return store === null ? fallback : work(store);
    } catch {
      return fallback;
    }
  };
}

/** Makes the copy over the simple store, which may be missing or throw. */
export function createLocalBackup(simpleStore: () => globalThis.Storage | null) {
  const attempt = attemptOn(simpleStore);
  const change = (next: (copy: Copy) => Copy): boolean =>
    attempt(false, (store) => {
      const found = read(store.getItem(KEY));
      if (found === 'newer-version') return false;
      if (found === 'corrupt') store.setItem(DAMAGED_KEY, store.getItem(KEY) ?? '');
      const copy = next(found === 'corrupt' ? NOTHING : found);
      return write(store, copy) || write(store, { ...copy, newest: null });
    });
  return {
    /** Whether something written can be read back. */
    works: (): boolean =>
      attempt(false, (store) => {
        store.setItem(PROBE_KEY, '1');
        const back = store.getItem(PROBE_KEY);
        store.removeItem(PROBE_KEY);
        return back === '1';
      }),
    /** What is there, as pieces for the database. */
    pieces: (): readonly StoredPiece[] =>
      attempt([], (store) => {
        const found = read(store.getItem(KEY));
        if (typeof found === 'string') return [];
        return [
          ...(found.newest === null ? [] : [piece('rides', found.newest)]),
          ...found.results.map((result) => piece('results', result)),
          ...(found.settings === null ? [] : [piece('settings', found.settings)]),
        ];
      }),
    /** Adds rides and results; true when they were read back. */
    addRides: (rides: readonly (SavedRide | StoredResult)[]): boolean =>
      rides.length === 0 || change((copy) => withRides(copy, rides)),
    keepSettings: (settings: KeptSettings): boolean => change((copy) => ({ ...copy, settings })),
  };
}
/** The small copy. No method throws. */
export type LocalBackup = ReturnType<typeof createLocalBackup>;

function piece(store: StoreName, value: unknown): StoredPiece {
  return { store, key: keyOf(store, value), value, mine: false };
}

function withRides(copy: Copy, rides: readonly (SavedRide | StoredResult)[]): Copy {
  const byId = new Map(copy.results.map((result) => [result.id, result]));
  for (const ride of rides) byId.set(ride.id, withoutRide({ ...ride }) as unknown as StoredResult);
  const results = [...byId.values()]
    .sort((a, b) => b.savedAtMs - a.savedAtMs || (a.id < b.id ? -1 : 1))
    .slice(0, MOST_RESULTS);
  const whole = [copy.newest, ...rides].find(
    (ride): ride is SavedRide => ride !== null && 'recording' in ride && ride.id === results[0]?.id,
  );
  const fits = whole !== undefined && JSON.stringify(whole).length <= LONGEST_RIDE;
  return { ...copy, results, newest: fits ? whole : null };
}

function write(store: globalThis.Storage, copy: Copy): boolean {
  const text = canonicalJson({ schema: SCHEMA, ...copy, checksum: hashJson(copy) });
  try {
    store.setItem(KEY, text);
  } catch {
    return false;
  }
  return store.getItem(KEY) === text;
}

function read(text: string | null): Copy | 'corrupt' | 'newer-version' {
  if (text === null) return NOTHING;
  let value: unknown;
  try {
    value = JSON.parse(text);
  } catch {
    return 'corrupt';
  }
  if (isTooDeep(value, LIMITS.copy.deep.most)) return 'corrupt';
  const climbed = climbFields(LADDERS.localBackup, value);
  if (!climbed.ok) return climbed.code;
  const { results, newest, settings, checksum } = climbed.value;
  if (checksum !== hashJson({ results, newest, settings }) || !Array.isArray(results)) return 'corrupt';
  const inside = [
    ...results.map((one: unknown) => ['results', one] as const),
    ...(newest === null ? [] : [['rides', newest] as const]),
    ...(settings === null ? [] : [['settings', settings] as const]),
  ];
  if (inside.some(([store, one]) => isNewer(store, one))) return 'newer-version';
  return {
    results: results.flatMap((one) => readable('results', one) ?? []),
    newest: readable('rides', newest),
    settings: readable('settings', settings),
  };
}

function isNewer(store: StoreName, value: unknown): boolean {
  const reading = READERS[store](value);
  return !reading.ok && reading.code === 'newer-version';
}

function readable<S extends 'results' | 'rides' | 'settings'>(
  store: S,
  value: unknown,
): KeptThings[S] | null {
  const reading = READERS[store](value);
  return reading.ok ? reading.value : null;
}
