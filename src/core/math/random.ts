/**
 * Seeded chance whose whole state is one integer, so that it can be stored, sent and repeated bit for
 * bit. The generator is mulberry32 (public domain, T. Ettinger); good enough for roads and test riders.
 */

/** Seeds of roads are whole numbers from 0 to this. */
export const BIGGEST_SEED = 4_294_967_295;

/** A stream of numbers in [0, 1). */
export type Random = () => number;

/** Starts a stream; the same seed (any integer) gives the same numbers everywhere. */
export function seededRandom(seed: number): Random {
  let state = seed | 0;
  return () => {
    state = (state + 0x6d2b79f5) | 0;
    let t = Math.imul(state ^ (state >>> 15), 1 | state);
    t = (t + Math.imul(t ^ (t >>> 7), 61 | t)) ^ t;
    return ((t ^ (t >>> 14)) >>> 0) / 4294967296;
  };
}

/** Derives an independent seed for a named purpose, so that adding one consumer does not shift another. */
export function deriveSeed(seed: number, purpose: string): number {
  let h = seed | 0;
  for (let i = 0; i < purpose.length; i += 1) {
    h = Math.imul(h ^ purpose.charCodeAt(i), 0x01000193);
    h ^= h >>> 13;
  }
  return h | 0;
}

/** Uniform between `low` and `high`. */
export function between(random: Random, low: number, high: number): number {
  return low + (high - low) * random();
}
