/**
 * Two questions to a list of numbers, asked so that very long lists do no harm. What the numbers mean is known to
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
