/**
 * The door of the room: opens the keeping and puts its parts together. It always opens: without a database it
 * goes on with the small copy, without that in memory, and says so.
 */
import { environmentOf, type Environment, type StorageOptions } from './environment.ts';
import { erase } from './erase.ts';
import { buildExport, openImport } from './exchange.ts';
import { rideStore } from './rides.ts';
import { createRoom, type Room } from './room.ts';
import { documentStore } from './documents.ts';
import type {
  ExportFile,
  ImportReport,
  OpenedImport,
  Persistence,
  Refused,
  StoredResult,
  SavedRide,
  Storage,
} from './types.ts';
import type { PlaceOutcome } from './place.ts';

export { newRideId } from './ids.ts';
export type { Shape, Step } from './ladder.ts';
export type { StorageOptions } from './environment.ts';
export type * from './types.ts';

/** Pieces of an import in one transaction: few enough that one which does not fit does not take many with it. */
const PIECES_AT_ONCE = 25;

/** Opens the keeping. Never rejects; `health` of the answer says where things are kept. */
export async function openStorage(options: StorageOptions = {}): Promise<Storage> {
  const environment = environmentOf(options);
  const room = createRoom(environment);
  await room.open();
  return {
    get health() {
      return room.health();
    },
    get damaged() {
      return room.damaged();
    },
    subscribe: room.subscribe,
    onDeletedElsewhere: room.onDeletedElsewhere,
    ...rideStore(room),
    ...documentStore(room),
    exportAll: () => exportAll(room),
    importAll: (value, options) => importOpened(room, [openImport(value, options?.evenIfChanged === true)]),
    importOpened: (parts) => importOpened(room, parts),
    deleteEverything() {
      room.empty();
      // What is asked while it is being deleted waits, and is dropped with the rest: it must not come back.
      return room.vault.alone(async () => {
        const answer = await erase(environment, room.vault.connection);
        room.empty();
        return answer;
      });
    },
    requestPersistence: () => requestPersistence(environment),
  };
}

async function exportAll(room: Room): Promise<ExportFile> {
  const { contents, complete } = await room.vault.readEverything();
  return buildExport(contents, room.nowMs(), complete);
}

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
      const { outcomes, code } = await room.vault.write(some);
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
