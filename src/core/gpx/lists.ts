/**
 * Questions to a list of numbers, asked so that very long lists do no harm. What the numbers mean is known to
 * those who ask.
 */

/** Middle of a list; 0 for an empty one. */
export function median(values: readonly number[]): number {
  const sorted = Float64Array.from(values).sort();
  return sorted[sorted.length >> 1] ?? 0;
}

/** Where the largest value stands, the first of equals; 0 for an empty list. */
export function indexOfLargest(values: readonly number[]): number {
  let best = 0;
  for (let i = 1; i < values.length; i += 1) if ((values[i] as number) > (values[best] as number)) best = i;
  return best;
}

/** Indices of the points whose time is known and later than the one before; null where times run backwards. */
export function timedPoints(timeS: readonly number[]): number[] | null {
  const timed: number[] = [];
  for (const [i, time] of timeS.entries()) {
    if (Number.isNaN(time)) continue;
    const before = timeS[timed.at(-1) ?? -1] ?? Number.NEGATIVE_INFINITY;
    if (time < before) return null;
    if (time > before) timed.push(i);
  }
  return timed;
}
