/**
 * Keeping, listing and giving back rides. Where they are written is the business of the vault and the small copy.
 */
import { answerOf, type Room } from './room.ts';
import { readResultOfRide, READERS } from './shapes.ts';
import {
  type ListedRide,
  type Marking,
  type NewRide,
  RIDE_SCHEMA,
  type StoredResult,
  type SaveAnswer,
  type Storage,
} from './types.ts';

/** The part of the storage that knows rides. */
export function rideStore(room: Room): Pick<Storage, 'saveRide' | 'markRide' | 'listRides' | 'getRide'> {
  return {
    saveRide: (ride) => saveRide(room, ride),
    markRide: (id, marking) => markRide(room, id, marking),
    listRides: () => listRides(room),
    async getRide(id) {
      const value = await room.vault.readOne('rides', id);
      return value === undefined ? null : room.checked('rides', id, READERS.rides(value));
    },
  };
}

async function saveRide(room: Room, ride: NewRide): Promise<SaveAnswer> {
  // Read as it would be read later: what could not be read back must not count as saved.
  const plain: unknown = JSON.parse(
    JSON.stringify({ ...ride, schema: RIDE_SCHEMA, savedAtMs: room.nowMs() }),
  );
  const reading = READERS.rides(plain);
  if (!reading.ok) return { saved: false, code: reading.code, localBackup: false };
  const written = await room.vault.write([
    { store: 'rides', key: ride.id, value: reading.value, mine: true },
  ]);
  // A second attempt to keep the same ride differs in its time only; the first one counts.
  const isAgain = written.outcomes[0] === 'differs' && (await isKept(room, reading.value));
  const outcomes = isAgain ? (['already'] as const) : written.outcomes;
  return answerOf({ ...written, outcomes }, () => room.localBackup.addRides([reading.value]));
}

async function markRide(room: Room, id: string, marking: Marking): Promise<SaveAnswer | null> {
  const value = await room.vault.readOne('rides', id);
  const ride = value === undefined ? null : room.checked('rides', id, READERS.rides(value));
  if (ride === null) return null;
  if (ride.standing !== 'to-mark') return { saved: true };
  const reading = READERS.rides({ ...ride, ...marking, standing: 'marked' });
  if (!reading.ok) return { saved: false, code: reading.code, localBackup: false };
  const written = await room.vault.write([{ store: 'rides', key: id, value: reading.value, mine: true }]);
  return answerOf(written, () => room.localBackup.addRides([reading.value]));
}

async function isKept(room: Room, ride: StoredResult & { readonly recording: unknown }): Promise<boolean> {
  const there = READERS.rides(await room.vault.readOne('rides', ride.id));
  return there.ok && room.isSame({ ...there.value, savedAtMs: 0 }, { ...ride, savedAtMs: 0 });
}

async function listRides(room: Room): Promise<readonly ListedRide[]> {
  const byId = new Map<string, ListedRide>();
  const { vault } = room;
  for (const [key, value] of await vault.readAll('results')) {
    const result = room.checked('results', key, READERS.results(value));
    if (result !== null) byId.set(key, { ...result, hasRecording: false });
  }
  for (const [key, value] of await vault.readAll('rides')) {
    const result = room.checked('rides', key, readResultOfRide(value));
    if (result !== null) byId.set(key, { ...result, hasRecording: true });
  }
  return [...byId.values()].sort((a, b) => b.savedAtMs - a.savedAtMs || (a.id < b.id ? -1 : 1));
}
