/** Rounding shares so that they still make a whole: in a file of its own, as only pictures of groups ask for it. */

/**
 * Shares of a whole in whole percent that add up to 100: each is cut, and what is left goes to those that were cut most
 * (the earlier one where two were cut alike). All 0 where there is nothing to share.
 */
export function wholePercents(counts: readonly number[]): number[] {
  const all = counts.reduce((sum, count) => sum + count, 0);
  if (all === 0) return counts.map(() => 0);
  const cut = counts.map((count) => Math.floor((100 * count) / all));
  const left = 100 - cut.reduce((sum, percent) => sum + percent, 0);
  const byRest = counts
    .map((count, i) => ({ i, rest: (100 * count) % all }))
    .toSorted((a, b) => b.rest - a.rest || a.i - b.i);
  for (const { i } of byRest.slice(0, left)) cut[i] = (cut[i] as number) + 1;
  return cut;
}
