/**
 * Keeping what changes: settings, own levels and records of other kinds. Of two versions the later one stays.
 */
import type { Level } from '../core/level/schema.ts';
import type { StoreAccess } from './access.ts';
import { type RecordKind, readShaped, type Shape } from './ladder.ts';
import { answerOf, lastSavedFirst, notSaved, readBack, type Room } from './room.ts';
import { type KeptRecord, type OwnLevel, READERS, recordKey, SETTINGS_KEY } from './shapes.ts';
import type { NewRecord, ProblemCode, RecordChange, RecordsNow, SaveAnswer, StoredPiece } from './types.ts';

export function settingsStore(room: Room) {
  return {
    /** Keeps the settings; refuses where settings of a newer version are kept. */
    saveSettings: (value: unknown, version: number): Promise<SaveAnswer> =>
      room.keep('settings', SETTINGS_KEY, { schema: 1, savedAtMs: room.nowMs(), version, value }, (kept) =>
        room.localBackup.keepSettings(kept),
      ),
    /** The settings, or null where there are none that can be read. */
    async loadSettings<T>(shape: Shape<T>): Promise<T | null> {
      const envelope = await room.read('settings', SETTINGS_KEY);
      if (envelope === null) return null;
      return room.checked('settings', SETTINGS_KEY, readShaped(shape, envelope.version, envelope.value));
    },
  };
}

export function levelStore(room: Room) {
  const put = (level: Level, deleted: boolean): Promise<SaveAnswer> =>
    room.keep('levels', level.id, { schema: 1, id: level.id, savedAtMs: room.nowMs(), deleted, level });
  const mark = async (id: string, deleted: boolean): Promise<SaveAnswer | null> => {
    const own = await room.read('levels', id);
    return own === null ? null : put(own.level, deleted);
  };
  return {
    /** Keeps a level under its id, also one that was deleted. */
    saveLevel: (level: Level): Promise<SaveAnswer> => put(level, false),
    /** Hides a level; null where there is none. `restoreLevel` brings it back. */
    deleteLevel: (id: string): Promise<SaveAnswer | null> => mark(id, true),
    restoreLevel: (id: string): Promise<SaveAnswer | null> => mark(id, false),
    /** Own levels that are not deleted, last saved first. */
    listLevels: async (): Promise<readonly OwnLevel[]> =>
      (await room.list('levels')).filter(({ deleted }) => !deleted).sort(lastSavedFirst),
  };
}

type RecordWork = (now: RecordsNow) => Promise<RecordChange | null>;
type KeptData<T> = Pick<KeptRecord, 'id' | 'savedAtMs'> & { readonly data: T };

/** Where a record lies, as pieces and drops name it. */
const recordPlace = ({ kind, id }: Pick<KeptRecord, 'kind' | 'id'>) =>
  ({ store: 'records', key: recordKey(kind, id) }) as const;

export function recordStore(room: Room) {
  return {
    putRecord: (record: NewRecord): Promise<SaveAnswer> =>
      room.keep('records', recordPlace(record).key, { ...record, savedAtMs: room.nowMs() }),
    /**
     * Looks at the records and changes them in one transaction: all of it or nothing. `work` may be called several
     * times; where it answers null nothing is changed, and so is the answer.
     */
    changeRecords: (work: RecordWork): Promise<SaveAnswer | null> => changeRecords(room, work),
    /** Records of a kind whose data can be read, last saved first. */
    async listRecords<T>(of: RecordKind<T>): Promise<readonly KeptData<T>[]> {
      const all: KeptData<T>[] = [];
      for (const record of await room.list('records', (key) => key.startsWith(`${of.kind} `))) {
        const { id, savedAtMs } = record;
        const reading = readShaped(of, record.schema, record.data);
        const data = room.checked('records', recordPlace(record).key, reading);
        if (data !== null) all.push({ id, savedAtMs, data });
      }
      return all.sort(lastSavedFirst);
    },
    /** Removes records of a kind for good. Null when done, else why not. */
    async deleteRecords(kind: string, ids: readonly string[]): Promise<ProblemCode | null> {
      return (await room.vault.change({ drop: ids.map((id) => recordPlace({ kind, id })) })).code;
    },
  };
}

async function changeRecords(room: Room, work: RecordWork): Promise<SaveAnswer | null> {
  let unreadable: SaveAnswer | null = null;
  const written = await room.vault.change(async (access, inDatabase) => {
    const change = await work(recordsOn(access, inDatabase));
    if (change === null) return null;
    const pieces: StoredPiece[] = [];
    for (const record of change.put ?? []) {
      const reading = readBack('records', { ...record, savedAtMs: room.nowMs() });
      if (!reading.ok) {
        unreadable = notSaved(reading.code);
        return null;
      }
      pieces.push({ ...recordPlace(record), value: reading.value, mine: true });
    }
    return { pieces, drop: (change.drop ?? []).map(recordPlace) };
  });
  return written === null ? unreadable : answerOf(written, () => false);
}

function recordsOn(access: StoreAccess, inDatabase: boolean): RecordsNow {
  return {
    inDatabase,
    async data(of, id) {
      const record = READERS.records(await access.get('records', recordKey(of.kind, id)));
      if (!record.ok) return null;
      const reading = readShaped(of, record.value.schema, record.value.data);
      return reading.ok ? reading.value : null;
    },
    async all() {
      const readings = (await access.entries('records')).map(([, value]) => READERS.records(value));
      return readings.flatMap((reading) => (reading.ok ? reading.value : []));
    },
  };
}
