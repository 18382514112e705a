/**
 * Keeping what changes: settings, own levels and records of other kinds. Of two versions the later one stays.
 */
import type { Level } from '../core/level/schema.ts';
import { LIMITS } from '../core/math/limits.ts';
import { isTooDeep } from '../core/math/measure.ts';
import type { StoreAccess } from './access.ts';
import { CORRUPT, type StoredReading, readShaped } from './ladder.ts';
import { answerOf, type Room } from './room.ts';
import { type KeptThings, READERS, recordKey, SETTINGS_KEY } from './shapes.ts';
import type {
  KeptSettings,
  OwnLevel,
  StoredPiece,
  RecordsNow,
  SaveAnswer,
  Storage,
  StoreName,
} from './types.ts';

type Documents = Pick<
  Storage,
  | 'saveSettings'
  | 'loadSettings'
  | 'saveLevel'
  | 'deleteLevel'
  | 'restoreLevel'
  | 'listLevels'
  | 'putRecord'
  | 'changeRecords'
  | 'listRecords'
  | 'deleteRecords'
>;

/** The part of the storage that knows things that change. */
export function documentStore(room: Room): Documents {
  return { ...settingsStore(room), ...levelStore(room), ...recordStore(room) };
}

function settingsStore(room: Room): Pick<Documents, 'saveSettings' | 'loadSettings'> {
  return {
    saveSettings(value, version) {
      const settings = { schema: 1, savedAtMs: room.nowMs(), version, value } as const;
      return keep(room, 'settings', SETTINGS_KEY, settings, (kept) =>
        room.localBackup.keepSettings(kept as KeptSettings),
      );
    },
    async loadSettings(shape) {
      const value = await room.vault.readOne('settings', SETTINGS_KEY);
      if (value === undefined) return null;
      const envelope = room.checked('settings', SETTINGS_KEY, READERS.settings(value));
      if (envelope === null) return null;
      return room.checked('settings', SETTINGS_KEY, readShaped(shape, envelope.version, envelope.value));
    },
  };
}

function levelStore(
  room: Room,
): Pick<Documents, 'saveLevel' | 'deleteLevel' | 'restoreLevel' | 'listLevels'> {
  const put = (level: Level, deleted: boolean): Promise<SaveAnswer> =>
    keep(room, 'levels', level.id, { schema: 1, id: level.id, savedAtMs: room.nowMs(), deleted, level });
  const mark = async (id: string, deleted: boolean): Promise<SaveAnswer | null> => {
    const value = await room.vault.readOne('levels', id);
    const own = value === undefined ? null : room.checked('levels', id, READERS.levels(value));
    return own === null ? null : put(own.level, deleted);
  };
  return {
    saveLevel: (level) => put(level, false),
    deleteLevel: (id) => mark(id, true),
    restoreLevel: (id) => mark(id, false),
    async listLevels() {
      const all: OwnLevel[] = [];
      for (const [id, value] of await room.vault.readAll('levels')) {
        const own = room.checked('levels', id, READERS.levels(value));
        if (own !== null && !own.deleted) all.push(own);
      }
      return all.sort(lastSavedFirst);
    },
  };
}

function recordStore(
  room: Room,
): Pick<Documents, 'putRecord' | 'changeRecords' | 'listRecords' | 'deleteRecords'> {
  return {
    putRecord: (record) =>
      keep(room, 'records', recordKey(record.kind, record.id), { ...record, savedAtMs: room.nowMs() }),
    changeRecords: (work) => changeRecords(room, work),
    async listRecords<T>(kind: string, shape: Parameters<typeof readShaped<T>>[0]) {
      const all: { id: string; savedAtMs: number; data: T }[] = [];
      for (const [key, value] of await room.vault.readAll('records')) {
        if (!key.startsWith(`${kind} `)) continue;
        const record = room.checked('records', key, READERS.records(value));
        if (record === null) continue;
        const { id, savedAtMs } = record;
        const data = room.checked('records', key, readShaped(shape, record.schema, record.data));
        if (data !== null) all.push({ id, savedAtMs, data });
      }
      return all.sort(lastSavedFirst);
    },
    deleteRecords: (kind, ids) =>
      room.vault.remove('records', (all) =>
        ids === undefined
          ? all.filter((key) => key.startsWith(`${kind} `))
          : ids.map((id) => recordKey(kind, id)),
      ),
  };
}

async function changeRecords(
  room: Room,
  work: Parameters<Documents['changeRecords']>[0],
): Promise<SaveAnswer | null> {
  let unreadable: SaveAnswer | null = null;
  const written = await room.vault.change(async (access, inDatabase) => {
    const change = await work(recordsOn(access, inDatabase));
    if (change === null) return null;
    const pieces: StoredPiece[] = [];
    for (const record of change.put ?? []) {
      const reading = readThing('records', { ...record, savedAtMs: room.nowMs() });
      if (!reading.ok) {
        unreadable = { saved: false, code: reading.code, localBackup: false };
        return null;
      }
      const key = recordKey(record.kind, record.id);
      pieces.push({ store: 'records', key, value: reading.value, mine: true });
    }
    const drop = (change.drop ?? []).map(({ kind, id }) => ({
      store: 'records' as const,
      key: recordKey(kind, id),
    }));
    return { pieces, drop };
  });
  return written === null ? unreadable : answerOf(written, () => false);
}

function recordsOn(access: StoreAccess, inDatabase: boolean): RecordsNow {
  return {
    inDatabase,
    async data(kind, id, shape) {
      const record = READERS.records(await access.get('records', recordKey(kind, id)));
      if (!record.ok) return null;
      const reading = readShaped(shape, record.value.schema, record.value.data);
      return reading.ok ? reading.value : null;
    },
    async all() {
      const readings = (await access.entries('records')).map(([, value]) => READERS.records(value));
      return readings.flatMap((reading) => (reading.ok ? reading.value : []));
    },
  };
}

/** Writes one thing of this person; without a small copy of its own, nothing of it survives a failure. */
async function keep(
  room: Room,
  store: StoreName,
  key: string,
  value: unknown,
  copy: (kept: unknown) => boolean = () => false,
): Promise<SaveAnswer> {
  const reading = readThing(store, value);
  if (!reading.ok) return { saved: false, code: reading.code, localBackup: false };
  const written = await room.vault.write([{ store, key, value: reading.value, mine: true }]);
  return answerOf(written, () => copy(reading.value));
}

/** Read as it would be read later: what could not be read back must not count as kept. */
function readThing<S extends StoreName>(store: S, value: unknown): StoredReading<KeptThings[S]> {
  if (isTooDeep(value, LIMITS.copy.deep.most)) return CORRUPT;
  return READERS[store](JSON.parse(JSON.stringify(value)));
}

function lastSavedFirst(
  a: { readonly id: string; readonly savedAtMs: number },
  b: { readonly id: string; readonly savedAtMs: number },
): number {
  return b.savedAtMs - a.savedAtMs || (a.id < b.id ? -1 : 1);
}
