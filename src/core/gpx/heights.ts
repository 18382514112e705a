/**
 * Judges the heights along a trail before they are smoothed: lone spikes, missing ones, noise, whole metres. Takes
 * the spikes out; everything else is only measured, so that the quality of a road has its reasons.
 */
import type { Trail } from './trail.ts';
import { median } from './lists.ts';

/** A height is a lone spike if the ground would be steeper than a road on both sides, up and down again… */
const IMPOSSIBLE_RATIO = 0.35;
/** …and by more than noise (m). */
const SPIKE_M = 3;
/** Between points further apart than this the ground may bend, so noise cannot be told (m). */
const NEIGHBOURS_WITHIN_M = 60;
/** So many heights tell whether a device writes whole metres only. */
const ENOUGH_HEIGHTS = 10;

/** Heights with what is known about them. */
export type JudgedHeights = Readonly<ReturnType<typeof judgeHeights>>;

export function judgeHeights(trail: Trail) {
  const { heightM: measuredM, zeroCount } = withoutZeroRuns(trail);
  const { heightM, spikeCount } = withoutSpikes(trail.atM, measuredM);
  const known = heightM.filter((height) => !Number.isNaN(height));
  return {
    /** NaN where unknown. */
    heightM,
    knownCount: known.length,
    /** Places for which no height was written that could be read. */
    unknownCount: trail.heightM.filter(Number.isNaN).length,
    spikeCount,
    /** Heights of exactly zero that were none. */
    zeroCount,
    /** Share of the trail's length on which no height is known near enough (0 to 1). */
    missingShare: missingShare(trail, measuredM),
    /** Standard deviation of the heights from point to point (m). */
    noiseM: noiseOf(trail.atM, heightM),
    wholeMetres: known.length >= ENOUGH_HEIGHTS && known.every(Number.isInteger),
    allEqual: known.every((height) => height === known[0]),
  };
}

/**
 * Devices write zero while they know no height. A run of exact zeros is none where the road would have to fall to it,
 * or rise from it, as no road does.
 */
function withoutZeroRuns({ atM, heightM: written }: Trail): { heightM: number[]; zeroCount: number } {
  const heightM = [...written];
  const known = written.map((_, i) => i).filter((i) => !Number.isNaN(written[i]));
  let zeroCount = 0;
  for (let k = 0; k < known.length; k += 1) {
    if (written[known[k] as number] !== 0) continue;
    let end = k;
    while (end + 1 < known.length && written[known[end + 1] as number] === 0) end += 1;
    const falls = (inside: number, outside: number | undefined): boolean => {
      if (outside === undefined) return false;
      const spanM = Math.abs((atM[inside] as number) - (atM[outside] as number));
      return Math.abs(written[outside] as number) > SPIKE_M + IMPOSSIBLE_RATIO * spanM;
    };
    // A lone zero is a spike like any other.
    if (end > k || k === 0 || end === known.length - 1) {
      if (falls(known[k] as number, known[k - 1]) || falls(known[end] as number, known[end + 1])) {
        for (const i of known.slice(k, end + 1)) heightM[i] = Number.NaN;
        zeroCount += end - k + 1;
      }
    }
    k = end;
  }
  return { heightM, zeroCount };
}

function withoutSpikes(
  atM: readonly number[],
  written: readonly number[],
): { heightM: number[]; spikeCount: number } {
  const heightM = [...written];
  const known = heightM.map((_, i) => i).filter((i) => !Number.isNaN(heightM[i]));
  let spikeCount = 0;
  for (let k = 1; k + 1 < known.length; k += 1) {
    const [a, b, c] = [known[k - 1], known[k], known[k + 1]] as [number, number, number];
    const up = (heightM[b] as number) - (written[a] as number);
    const down = (heightM[b] as number) - (written[c] as number);
    const steep = (rise: number, i: number, j: number): boolean =>
      Math.abs(rise) > SPIKE_M + IMPOSSIBLE_RATIO * ((atM[j] as number) - (atM[i] as number));
    if (up * down <= 0 || !steep(up, a, b) || !steep(down, b, c)) continue;
    heightM[b] = Number.NaN;
    spikeCount += 1;
    // The point behind a spike is compared with the point before it by the next round.
    k += 1;
  }
  return { heightM, spikeCount };
}

/** A straight line between heights that are neighbours all the same stands in for nothing. */
function missingShare({ atM, lengthM }: Trail, heightM: readonly number[]): number {
  if (lengthM === 0) return 0;
  let missingM = 0;
  let before = -1;
  for (let i = 0; i <= heightM.length; i += 1) {
    if (i < heightM.length && Number.isNaN(heightM[i])) continue;
    const spanM = (atM[i] ?? lengthM) - (atM[before] ?? 0);
    const isRun = i - before > 1;
    const isEnd = before < 0 || i === heightM.length;
    if (isRun && (isEnd || spanM > NEIGHBOURS_WITHIN_M)) missingM += spanM;
    before = i;
  }
  return missingM / lengthM;
}

/**
 * How far heights stray from the straight line between their neighbours, as a standard deviation: from the
 * median, which a few wild ones do not move, and from the 90th percentile, which many wild ones do; the larger.
 */
function noiseOf(atM: readonly number[], heightM: readonly number[]): number {
  const strays: number[] = [];
  for (let i = 1; i + 1 < atM.length; i += 1) {
    const fromM = atM[i - 1] as number;
    const spanM = (atM[i + 1] as number) - fromM;
    const t = ((atM[i] as number) - fromM) / spanM;
    const line = (heightM[i - 1] as number) * (1 - t) + (heightM[i + 1] as number) * t;
    const stray = Math.abs((heightM[i] as number) - line) / Math.sqrt(1 + t * t + (1 - t) * (1 - t));
    if (spanM <= NEIGHBOURS_WITHIN_M && !Number.isNaN(stray)) strays.push(stray);
  }
  const sorted = Float64Array.from(strays).sort();
  const often = median(strays) / 0.6745;
  const seldom = (sorted[Math.floor(sorted.length * 0.9)] ?? 0) / 1.645;
  return Math.max(often, seldom);
}
