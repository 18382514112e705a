/**
 * A cadence from taps: somebody taps once for every turn of the pedals, and the band is laid round what they do.
 * Times are handed in; the core reads no clock. What is done with the band is not decided here.
 */
import { clamp } from '../math/numbers.ts';

/** How long a tap test lasts (ms). */
export const TAP_TEST_MS = 20_000;
/** Two taps nearer than this are one finger that bounced (ms); no leg turns 330 times a minute. */
const BOUNCE_MS = 180;
/** Fewer taps, or a shorter time, say too little (ours). */
const FEWEST_TAPS = 8;
const SHORTEST_MS = 8_000;
/** A pause below this share of a turn is an extra tap, not a turn. */
const WHOLE_TURN = 0.6;
/** Mean deviation from a steady beat, and share of slips, beyond which no cadence is read from it (ours). */
const MOST_UNSTEADY = 0.18;
const MOST_SLIPS = 0.25;
/** Slower and faster than this is no pedalling, or not one tap for one turn. */
const SLOWEST_RPM = 40;
const FASTEST_RPM = 130;
/** The band reaches so far to each side, and never beyond what a rider can be given (rpm; ours). */
const HALF_BAND_RPM = 10;
const LOWEST_EDGE_RPM = 40;
const HIGHEST_EDGE_RPM = 130;

/** What the taps say, or why they say nothing. */
export type TapResult =
  | {
      readonly ok: true;
      readonly cadenceRpm: number;
      /** Edges of the band, whole numbers. */
      readonly lowRpm: number;
      readonly highRpm: number;
      /** Turns nobody tapped, and taps that were no turn; both are put right. */
      readonly missed: number;
      readonly doubled: number;
    }
  | {
      readonly ok: false;
      readonly code: 'too-few' | 'too-short' | 'too-slow' | 'too-fast' | 'unsteady';
    };

/** Reads tap times (ms, any start, any order). */
export function tapCadence(timesMs: readonly number[]): TapResult {
  const taps = withoutBounces(timesMs);
  const no = (code: Extract<TapResult, { ok: false }>['code']): TapResult => ({ ok: false, code });
  if (taps.length < FEWEST_TAPS) return no('too-few');
  if ((taps.at(-1) as number) - (taps[0] as number) < SHORTEST_MS) return no('too-short');
  const { turns, spanMs, missed, doubled, deviation } = countTurns(taps);
  // Without a beat there is no cadence that could be too slow or too fast.
  if (deviation > MOST_UNSTEADY || missed + doubled > MOST_SLIPS * turns) return no('unsteady');
  const cadenceRpm = (60_000 * turns) / spanMs;
  if (cadenceRpm < SLOWEST_RPM) return no('too-slow');
  if (cadenceRpm > FASTEST_RPM) return no('too-fast');
  const middle = Math.round(cadenceRpm);
  return {
    ok: true,
    cadenceRpm,
    lowRpm: clamp(middle - HALF_BAND_RPM, LOWEST_EDGE_RPM, HIGHEST_EDGE_RPM),
    highRpm: clamp(middle + HALF_BAND_RPM, LOWEST_EDGE_RPM, HIGHEST_EDGE_RPM),
    missed,
    doubled,
  };
}

function withoutBounces(timesMs: readonly number[]): number[] {
  const kept: number[] = [];
  for (const time of [...timesMs].sort((a, b) => a - b)) {
    const last = kept.at(-1);
    if (last === undefined || time - last >= BOUNCE_MS) kept.push(time);
  }
  return kept;
}

/** Goes from tap to tap with the usual length of a turn as a measure: half pauses are joined, double ones split. */
function countTurns(taps: readonly number[]) {
  const pauses = taps.slice(1).map((time, i) => time - (taps[i] as number));
  const turnMs = median(pauses);
  let [turns, spanMs, missed, doubled, off, open] = [0, 0, 0, 0, 0, 0];
  for (const pause of pauses) {
    open += pause;
    if (open < WHOLE_TURN * turnMs) {
      doubled += 1;
      continue;
    }
    const whole = Math.max(1, Math.round(open / turnMs));
    off += whole * Math.abs(open / whole / turnMs - 1);
    turns += whole;
    missed += whole - 1;
    spanMs += open;
    open = 0;
  }
  // The mean share by which a turn differs from the usual one.
  const deviation = off / turns;
  return { turns, spanMs, missed, doubled, deviation };
}

function median(values: readonly number[]): number {
  const sorted = [...values].sort((a, b) => a - b);
  const middle = Math.floor(sorted.length / 2);
  const upper = sorted[middle] as number;
  return sorted.length % 2 === 1 ? upper : (upper + (sorted[middle - 1] as number)) / 2;
}
