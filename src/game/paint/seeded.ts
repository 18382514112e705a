/**
 * A small repeatable stream of numbers for scenery: the same seed always grows the same trees.
 * Only for pictures; anything that touches the ride takes its chance from the core.
 */

/** Numbers from 0 to below 1, the same for the same seed (any integer). */
export function seededStream(seed: number): () => number {
  let state = (seed ^ 0x9e3779b9) >>> 0;
  return () => {
    state = (state + 0x6d2b79f5) >>> 0;
    let mixed = Math.imul(state ^ (state >>> 15), state | 1);
    mixed = (mixed + Math.imul(mixed ^ (mixed >>> 7), mixed | 61)) ^ mixed;
    return ((mixed ^ (mixed >>> 14)) >>> 0) / 4294967296;
  };
}
