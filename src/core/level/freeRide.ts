/**
 * A free ride as the end of a link (`free-<seed>-<hills>-<metres>`), written and read. Pure; the number 100 stands
 * for the hilliest road. What does not fit is told by a code, never quietly changed.
 */
import { FREE_RIDE_LONGEST_M, FREE_RIDE_SHORTEST_M, type FreeRideWish } from './generate.ts';
import { clamp } from '../math/numbers.ts';
import { hashJson } from '../math/hash.ts';
import { BIGGEST_SEED } from '../math/random.ts';

export type BadFreeRide = 'unreadable' | 'seed' | 'hilliness' | 'length';

type FreeRideReading =
  | { readonly ok: true; readonly wish: FreeRideWish }
  | { readonly ok: false; readonly code: BadFreeRide };

const SHAPE = /^free-(\d{1,15})-(\d{1,6})-(\d{1,9})$/;

/** Whether an address behind `#ride/` means a free ride, readable or not. */
export function isFreeRide(rest: string): boolean {
  return rest.startsWith('free-');
}

/** Writes a wish; hills are rounded to whole hundredths and the length to whole metres. */
export function encodeFreeRide({ seed, hilliness, lengthM }: FreeRideWish): string {
  return `free-${seed >>> 0}-${Math.round(clamp(hilliness, 0, 1) * 100)}-${Math.round(
    clamp(lengthM, FREE_RIDE_SHORTEST_M, FREE_RIDE_LONGEST_M),
  )}`;
}

/** Reads what `encodeFreeRide` wrote, or what a person made of it. */
export function decodeFreeRide(rest: string): FreeRideReading {
  const match = SHAPE.exec(rest);
  if (match === null) return { ok: false, code: 'unreadable' };
  const [seed, hills, lengthM] = match.slice(1).map(Number) as [number, number, number];
  if (seed > BIGGEST_SEED) return { ok: false, code: 'seed' };
  if (hills > 100) return { ok: false, code: 'hilliness' };
  if (lengthM < FREE_RIDE_SHORTEST_M || lengthM > FREE_RIDE_LONGEST_M) return { ok: false, code: 'length' };
  return { ok: true, wish: { seed, hilliness: hills / 100, lengthM } };
}

/** The seed of a name: a number that fits is itself, anything else is hashed, whatever its capitals; null if empty. */
export function seedOf(name: string): number | null {
  const text = name.trim().toLowerCase();
  if (text === '') return null;
  const number = Number(text);
  if (/^\d{1,10}$/.test(text) && number <= BIGGEST_SEED) return number;
  return Number.parseInt(hashJson(text).slice(0, 8), 16);
}
