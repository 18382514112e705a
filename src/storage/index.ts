/**
 * The door of the room: opens the keeping and puts its parts together. It always opens: without a database it
 * goes on with the small copy, without that in memory, and says so.
 */
import { type Environment, THIS_BROWSER } from './environment.ts';
import { erase } from './erase.ts';
import { buildExport, openImport } from './exchange.ts';
import { rideStore } from './rides.ts';
import { Room } from './room.ts';
import { levelStore, recordStore, settingsStore } from './documents.ts';
import type {
  Damaged,
  DeleteAnswer,
  ExportFile,
  Health,
  ImportReport,
  OpenedImport,
  Persistence,
  Refused,
  StoredResult,
  SavedRide,
} from './types.ts';
import type { PlaceOutcome } from './place.ts';

export type { RecordKind, Shape } from './ladder.ts';
export type { Environment } from './environment.ts';
export type * from './types.ts';

/** Pieces of an import in one transaction: few enough that one which does not fit does not take many with it. */
const PIECES_AT_ONCE = 25;

/** Opens the keeping. Never rejects; `health` of the answer says where things are kept. */
export async function openStorage(given: Partial<Environment> = {}) {
  const environment = { ...THIS_BROWSER, ...given };
  const room = new Room(environment);
  await room.open();
  return {
    get health(): Health {
      return room.health();
    },
    /** What was found unreadable so far. */
    get damaged(): readonly Damaged[] {
      return room.damaged();
    },
    /** Calls back when `health` has changed; the answer stops it. */
    subscribe: (listener: (health: Health) => void): (() => void) => room.subscribe(listener),
    /**
     * Calls back when another tab deletes everything, before it is gone: whatever is still in memory must not be
     * written back. The answer stops it.
     */
    onDeletedElsewhere: (listener: () => void): (() => void) => room.onDeletedElsewhere(listener),
    ...rideStore(room),
    ...settingsStore(room),
    ...levelStore(room),
    ...recordStore(room),
    async exportAll(): Promise<ExportFile> {
      const { contents, complete } = await room.vault.readEverything();
      return buildExport(contents, room.nowMs(), complete);
    },
    /** Takes a copy in. One that was changed after it was saved changes nothing here unless `evenIfChanged` is set. */
    importAll: (value: unknown, options?: { readonly evenIfChanged: boolean }): Promise<ImportReport> =>
      importOpened(room, [openImport(value, options?.evenIfChanged === true)]),
    /** Takes in a copy that was opened elsewhere, part by part; rejects where the parts do. What came before is kept. */
    importOpened: (parts: AsyncIterable<OpenedImport>): Promise<ImportReport> => importOpened(room, parts),
    deleteEverything(): Promise<DeleteAnswer> {
      room.empty();
      // What is asked while it is being deleted waits, and is dropped with the rest: it must not come back.
      return room.vault.alone(async () => {
        const answer = await erase(environment, room.vault.connection);
        room.empty();
        return answer;
      });
    },
    /** Asks the browser to keep the data; call it after the first saved ride, when the person has a reason to agree. */
    requestPersistence: (): Promise<Persistence> => requestPersistence(environment),
  };
}
/** The keeping. No method but `importOpened` rejects; reading gives what can be read. */
export type Storage = Awaited<ReturnType<typeof openStorage>>;

async function importOpened(
  room: Room,
  parts: Iterable<OpenedImport> | AsyncIterable<OpenedImport>,
): Promise<ImportReport> {
  const count = { added: 0, already: 0, unsaved: 0 };
  const refused: Refused[] = [];
  const taken: (SavedRide | StoredResult)[] = [];
  let problem: ImportReport['problem'] = null;
  let clubStore: ImportReport['clubStore'] = null;
  for await (const opened of parts) {
    for (const one of opened.refused) refused.push(one);
    clubStore ??= opened.clubStore;
    for (let i = 0; i < opened.pieces.length; i += PIECES_AT_ONCE) {
      const some = opened.pieces.slice(i, i + PIECES_AT_ONCE);
      const { outcomes, code } = await room.vault.change({ pieces: some });
      problem ??= code;
      // What another tab deletes meanwhile must not come back with the rest of the copy.
      if (outcomes[0] === 'deleted') {
        count.unsaved += some.length;
        return { ...count, refused, problem, clubStore };
      }
      some.forEach((piece, k) => {
        const outcome = outcomes[k] as PlaceOutcome;
        if (outcome === 'already') count.already += 1;
        else if (outcome === 'added') count[code === null ? 'added' : 'unsaved'] += 1;
        else if (outcome !== 'deleted') refused.push({ id: piece.key, code: outcome });
        if (outcome === 'added' && (piece.store === 'rides' || piece.store === 'results'))
          taken.push(piece.value as SavedRide | StoredResult);
      });
    }
  }
  room.localBackup.addRides(taken);
  return { ...count, refused, problem, clubStore };
}

async function requestPersistence(environment: Environment): Promise<Persistence> {
  try {
    const manager = environment.storageManager();
    if (manager === null || typeof manager.persist !== 'function') return 'unknown';
    return (await manager.persist()) ? 'granted' : 'refused';
  } catch {
    return 'unknown';
  }
}
