/**
 * Best rides that were searched for beforehand and come with the game, so that nobody waits for them: those of the
 * bundled levels on the bundled bikes. A ride belongs to one world, known by its fingerprint.
 */
import { createHasher, hashJson } from '../math/hash.ts';
import { placeOfNumbers } from '../model/transmission.ts';
import type { RideWorld } from '../ride/types.ts';
import { BEST_RIDES } from './bestRides.ts';
import type { Manoeuvre } from './script.ts';

/** Fingerprint of road, bike and rider: 16 hex digits. Who eases by itself rides the same road on the same bike. */
export function worldFingerprint({ course, machine }: RideWorld): string {
  const hasher = createHasher();
  for (const list of [course.slopeRatio, course.windMps, course.rollingFactor, course.stopLinesM])
    for (const value of list) hasher.number(value);
  hasher.text(hashJson({ bike: machine.bike, rider: machine.rider }));
  return hasher.digest();
}

/** The best ride that comes with the game for this world, or null. */
export function knownBestRide(world: RideWorld): readonly Manoeuvre[] | null {
  const flat = BEST_RIDES[worldFingerprint(world)];
  return flat === undefined ? null : unpackScript(flat);
}

/** A script from a flat list: where, and the two numbers of a gear, and so on. */
function unpackScript(flat: readonly number[]): Manoeuvre[] {
  const script: Manoeuvre[] = [];
  for (let i = 0; i + 2 < flat.length; i += 3)
    script.push({
      atM: flat[i] as number,
      ...placeOfNumbers(flat[i + 1] as number, flat[i + 2] as number),
    });
  return script;
}
