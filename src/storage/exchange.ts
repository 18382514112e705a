/**
 * Everything on the device as one value, and back: pure functions. A broken piece of an import is named and left
 * out, the good ones around it are taken; where the pieces go is decided by others. Where a club's own store is
 * stays on the device: it is neither put into a copy nor taken out of one.
 */
import type { StoreAddress } from '../core/transfer/clubStore.ts';
import { hashJson } from '../core/math/hash.ts';
import { LIMITS } from '../core/math/limits.ts';
import { isFields, isTooDeep } from '../core/math/measure.ts';
import { climbFields, type Fields } from './ladder.ts';
import { readOffer, STAYS_HERE } from './sharedKept.ts';
import { keyOf, LADDERS, READERS, STORES } from './shapes.ts';
import {
  type Damaged,
  EXPORT_SCHEMA,
  type ExportFile,
  type KeptRecord,
  type OpenedImport,
  type StoredPiece,
  type Refused,
  type StoreName,
} from './types.ts';
import type { Contents } from './vault.ts';

/** Puts everything readable into one value. What a newer version wrote goes along as it is. */
export function buildExport(contents: Contents, exportedAtMs: number, complete: boolean): ExportFile {
  const leftOut: Damaged[] = [];
  const take = (store: StoreName): unknown[] =>
    [...contents[store]]
      .sort(([a], [b]) => (a < b ? -1 : 1))
      .flatMap(([key, value]) => {
        // The whole ride is there, so its result alone is not needed.
        if (store === 'results' && contents.rides.has(key)) return [];
        const reading = READERS[store](value);
        if (reading.ok) return staysHere(store, reading.value) ? [] : [reading.value];
        if (reading.code === 'newer-version') return [value];
        leftOut.push({ store, id: key, code: reading.code });
        return [];
      });
  const rest = {
    schema: EXPORT_SCHEMA,
    exportedAtMs,
    rides: take('rides'),
    results: take('results'),
    levels: take('levels'),
    settings: take('settings')[0] ?? null,
    records: take('records'),
    leftOut,
    complete,
  } as const;
  // Only what JSON can carry, so that the fingerprint is the same after a file.
  const plain = JSON.parse(JSON.stringify(rest)) as typeof rest;
  return { ...plain, checksum: hashJson(plain) };
}

/**
 * Opens an import. A newer one is refused whole, because what its pieces mean is not known here; so is one that was
 * changed after it was saved, until a person has said that it is to be taken all the same.
 */
export function openImport(value: unknown, evenIfChanged: boolean): OpenedImport {
  const climbed = climbFields(LADDERS.export, value);
  if (!climbed.ok) return { pieces: [], refused: [{ code: climbed.code }], clubStore: null };
  const file = climbed.value;
  if (pieceCount(file) > LIMITS.copy.records.most)
    return { pieces: [], refused: [{ code: 'too-much' }], clubStore: null };
  const refused: Refused[] = isAsSaved(value as Fields) ? [] : [{ code: 'checksum' }];
  if (refused.length > 0 && !evenIfChanged) return { pieces: [], refused, clubStore: null };
  let clubStore: StoreAddress | null = null;
  const pieces = new Map<string, StoredPiece>();
  for (const [store, item] of items(file, refused)) {
    const reading = READERS[store](item);
    if (!reading.ok) {
      const id = idOf(item);
      refused.push(id === null ? { code: reading.code } : { id, code: reading.code });
      continue;
    }
    if (staysHere(store, reading.value)) {
      clubStore ??= readOffer(reading.value);
      continue;
    }
    const key = keyOf(store, reading.value);
    pieces.set(`${store} ${key} ${hashJson(reading.value)}`, {
      store,
      key,
      value: reading.value,
      mine: false,
    });
  }
  return { pieces: [...pieces.values()], refused, clubStore };
}

function staysHere(store: StoreName, value: unknown): value is KeptRecord {
  return store === 'records' && STAYS_HERE.has((value as KeptRecord).kind);
}

/** Of one that lies too deep inside itself nobody can tell: its fingerprint cannot be taken. */
function isAsSaved({ checksum, ...rest }: Fields): boolean {
  // The file and its lists lie around the pieces.
  return !isTooDeep(rest, LIMITS.copy.deep.most + 2) && checksum === hashJson(rest);
}

function pieceCount(file: Fields): number {
  return STORES.reduce((sum, store) => {
    const list = file[store];
    return sum + (Array.isArray(list) ? list.length : 0);
  }, 0);
}

function items(file: Fields, refused: Refused[]): readonly (readonly [StoreName, unknown])[] {
  return STORES.flatMap((store): (readonly [StoreName, unknown])[] => {
    const list = file[store];
    if (list === undefined || list === null) return [];
    if (store === 'settings') return [[store, list]];
    if (Array.isArray(list)) return list.map((item: unknown) => [store, item]);
    refused.push({ id: store, code: 'corrupt' });
    return [];
  });
}

/** The id of a broken piece, where it still has one, short enough to be shown. */
function idOf(item: unknown): string | null {
  const id = isFields(item) ? item['id'] : undefined;
  return typeof id === 'string' ? id.slice(0, 64) : null;
}
