/**
 * Keeping, listing and giving back rides. Where they are written is the business of the vault and the small copy.
 */
import { canonicalJson } from '../core/math/hash.ts';
import { answerOf, lastSavedFirst, notSaved, readBack, type Room } from './room.ts';
import { readResultOfRide, READERS, RIDE_SCHEMA, type SavedRide, type StoredResult } from './shapes.ts';
import type { Marking, NewRide, SaveAnswer } from './types.ts';

export function rideStore(room: Room) {
  const copy = (kept: SavedRide): boolean => room.localBackup.addRides([kept]);
  return {
    saveRide: (ride: NewRide): Promise<SaveAnswer> => saveRide(room, ride, copy),
    /** Adds the marks to a ride that was kept without; null where there is no such ride. */
    async markRide(id: string, marking: Marking): Promise<SaveAnswer | null> {
      const ride = await room.read('rides', id);
      if (ride === null) return null;
      if (ride.standing !== 'to-mark') return { saved: true };
      return room.keep('rides', id, { ...ride, ...marking, standing: 'marked' }, copy);
    },
    /** Newest first. */
    listRides: (): Promise<readonly StoredResult[]> => listRides(room),
    /** The whole ride, or null where it is unknown, unreadable or only its result is left. */
    getRide: (id: string): Promise<SavedRide | null> => room.read('rides', id),
  };
}

async function saveRide(room: Room, ride: NewRide, copy: (kept: SavedRide) => boolean): Promise<SaveAnswer> {
  const reading = readBack('rides', { ...ride, schema: RIDE_SCHEMA, savedAtMs: room.nowMs() });
  if (!reading.ok) return notSaved(reading.code);
  const { value } = reading;
  const written = await room.vault.change({ pieces: [{ store: 'rides', key: ride.id, value, mine: true }] });
  // A second attempt to keep the same ride differs in its time only; the first one counts.
  const isAgain = written.outcomes[0] === 'differs' && (await isKept(room, value));
  const outcomes = isAgain ? (['already'] as const) : written.outcomes;
  return answerOf({ ...written, outcomes }, () => copy(value));
}

async function isKept(room: Room, ride: SavedRide): Promise<boolean> {
  const there = READERS.rides(await room.vault.readOne('rides', ride.id));
  const timeless = (one: SavedRide): string => canonicalJson({ ...one, savedAtMs: 0 });
  return there.ok && timeless(there.value) === timeless(ride);
}

async function listRides(room: Room): Promise<readonly StoredResult[]> {
  const byId = new Map((await room.list('results')).map((result) => [result.id, result]));
  for (const [key, value] of await room.vault.readAll('rides')) {
    const result = room.checked('rides', key, readResultOfRide(value));
    if (result !== null) byId.set(key, result);
  }
  return [...byId.values()].sort(lastSavedFirst);
}
