/**
 * Best rides that were searched for beforehand and come with the game, so that nobody waits for them: those of the
 * bundled levels on the bundled bikes. A ride belongs to one world, known by its fingerprint.
 */
import { createHasher, hashJson } from '../math/hash.ts';
import { placeOfNumbers } from '../model/transmission.ts';
import type { RideWorld } from '../ride/types.ts';
import { BEST_RIDES, GEAR_LETTERS } from './bestRides.ts';
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
  const text = BEST_RIDES[worldFingerprint(world)];
  return text === undefined ? null : unpackScript(text);
}

/** A script from text: how far behind the manoeuvre before (cm), the letter of the gear, and so on. */
function unpackScript(text: string): Manoeuvre[] {
  let atCm = 0;
  return [...text.matchAll(/(\d+)([a-zA-Z])/g)].map(([, behindCm = '', letter = '']) => {
    atCm += Number(behindCm);
    const ring = GEAR_LETTERS.findIndex((letters) => letters.includes(letter));
    return { atM: atCm / 100, ...placeOfNumbers(ring, GEAR_LETTERS[ring]?.indexOf(letter) ?? 0) };
  });
}
