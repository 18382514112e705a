/**
 * How numbers of a group are spread, without saying whose they are: counts in bins, and the values below
 * which a tenth, a quarter, half, three quarters and nine tenths lie.
 */

/** Shares at which a spread is read. */
const SHARES = { low: 0.1, quarter: 0.25, middle: 0.5, threeQuarters: 0.75, high: 0.9 } as const;

/** Something for each of the five shares. */
type Shared<T> = Readonly<Record<keyof typeof SHARES, T>>;

function forShares<T>(make: (share: number) => T): Shared<T> {
  return Object.fromEntries(Object.entries(SHARES).map(([name, share]) => [name, make(share)])) as Shared<T>;
}

/** Five values of a spread. */
interface Spread extends Shared<number> {
  readonly count: number;
}

/** Values a byte can have. */
const VALUES = 256;

/** Spread of some numbers, or null of none. */
export function spreadOf(values: readonly number[]): Spread | null {
  if (values.length === 0) return null;
  const sorted = Float64Array.from(values).sort();
  const at = (share: number): number => sorted[Math.round(share * (sorted.length - 1))] as number;
  return { count: values.length, ...forShares(at) };
}

/** A spread for every place of a row of series; all five have one entry per place. */
type SpreadSeries = Shared<Uint8Array>;

/**
 * Spreads of byte series, place by place, by counting: no sorting, so ten thousand rides are cheap. A 0 says
 * that there is nothing at that place and is not counted.
 */
export function spreadSeries(series: readonly Uint8Array[], places: number): SpreadSeries {
  // Line by line into one table for all places: memory is then read in the order it lies.
  const counts = new Uint32Array(places * VALUES);
  for (const line of series) {
    const length = Math.min(places, line.length);
    for (let place = 0; place < length; place += 1) {
      const at = place * VALUES + (line[place] as number);
      counts[at] = (counts[at] as number) + 1;
    }
  }
  const rows = forShares(() => new Uint8Array(places));
  const inOrder = Object.values(rows);
  for (let place = 0; place < places; place += 1)
    readShares(counts.subarray(place * VALUES, (place + 1) * VALUES), inOrder, place);
  return rows;
}

function readShares(counts: Uint32Array, rows: readonly Uint8Array[], place: number): void {
  const shares = Object.values(SHARES);
  let total = 0;
  for (let value = 1; value < VALUES; value += 1) total += counts[value] as number;
  let below = 0;
  let next = 0;
  for (let value = 1; value < VALUES && next < shares.length; value += 1) {
    below += counts[value] as number;
    while (next < shares.length && below > Math.round((shares[next] as number) * (total - 1))) {
      (rows[next] as Uint8Array)[place] = value;
      next += 1;
    }
  }
}

/** Counts in bins of one width from 0; what lies beyond the last bin is counted in it. */
export function binned(values: Iterable<number>, width: number, bins: number): Uint32Array {
  const counts = new Uint32Array(bins);
  for (const value of values) {
    const bin = Math.min(bins - 1, Math.max(0, Math.floor(value / width)));
    counts[bin] = (counts[bin] as number) + 1;
  }
  return counts;
}
