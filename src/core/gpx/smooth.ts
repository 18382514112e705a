/**
 * From noisy heights every 10 m to slopes a rider would feel: a straight line fitted round every sample. Also
 * measures the noise, chooses how wide to fit, and adds up the ascent.
 */
import { GRID_M } from './grid.ts';

/** Half widths a fit may have (m): the narrowest that is quiet enough is taken. */
const HALF_WIDTHS_M = [30, 50, 80, 100] as const;
export type HalfWidthM = (typeof HALF_WIDTHS_M)[number];
/** A fitted slope may be off by so much through noise (standard deviation, rise over run). */
const QUIET_RATIO = 0.006;
/** Rises and falls smaller than this between two turning points are not counted as ascent (m). */
const TURNING_M = 3;

/** Standard deviation of a fitted slope per metre of noise: √(12 / (n (n² − 1))) / step, n samples in the fit. */
export function slopeNoisePerM(halfWidthM: number): number {
  const n = (2 * halfWidthM) / GRID_M + 1;
  return Math.sqrt(12 / (n * (n * n - 1))) / GRID_M;
}

/** Where jumps had to be bridged on so much of the road, slow waves of the device are likely too (share)… */
const RESTLESS_SHARE = 0.005;
/** …and the narrowest fit is not for them (m). */
const RESTLESS_M = 50;

/** The narrowest fit whose slopes are quiet enough for this noise (m); wider where jumps tell of a restless device. */
export function halfWidthFor(noiseM: number, bridgedShare: number): HalfWidthM {
  const quiet = HALF_WIDTHS_M.find((halfM) => noiseM * slopeNoisePerM(halfM) <= QUIET_RATIO) ?? 100;
  return bridgedShare > RESTLESS_SHARE && quiet < RESTLESS_M ? RESTLESS_M : quiet;
}

/**
 * Slopes (rise over run) of the straight lines that fit best within ± the half width. Near the ends the line of
 * the outermost samples is kept.
 */
export function fittedSlopes(heights: Float64Array, halfWidthM: number): Float64Array {
  const half = Math.min(Math.round(halfWidthM / GRID_M), Math.floor((heights.length - 1) / 2));
  const squares = (half * (half + 1) * (2 * half + 1)) / 3;
  const slopes = new Float64Array(heights.length);
  for (let i = half; i < heights.length - half; i += 1) {
    let sum = 0;
    for (let k = 1; k <= half; k += 1) sum += k * ((heights[i + k] as number) - (heights[i - k] as number));
    slopes[i] = half === 0 ? 0 : sum / (squares * GRID_M);
  }
  slopes.fill(slopes[half] ?? 0, 0, half);
  slopes.fill(slopes[heights.length - 1 - half] ?? 0, heights.length - half);
  return slopes;
}

/** Heights (m) that have these slopes, from a first height on. */
export function heightsOf(slopes: Float64Array, firstM: number): Float64Array {
  const heights = new Float64Array(slopes.length);
  heights[0] = firstM;
  for (let i = 1; i < slopes.length; i += 1)
    heights[i] =
      (heights[i - 1] as number) + (((slopes[i - 1] as number) + (slopes[i] as number)) / 2) * GRID_M;
  return heights;
}

/** Metres climbed, counting only between turning points that are 3 m apart in height or more. */
export function ascentM(heights: ArrayLike<number>): number {
  let sumM = 0;
  let low = heights[0] ?? 0;
  let high = low;
  let climbing = true;
  for (let i = 1; i < heights.length; i += 1) {
    const height = heights[i] as number;
    if (climbing) {
      // A climb that is none yet may begin lower.
      if (high - low < TURNING_M && height < low) low = high = height;
      high = Math.max(high, height);
      if (height > high - TURNING_M) continue;
      sumM += high - low >= TURNING_M ? high - low : 0;
      climbing = false;
      low = height;
    } else {
      low = Math.min(low, height);
      if (height < low + TURNING_M) continue;
      climbing = true;
      high = height;
    }
  }
  return climbing && high - low >= TURNING_M ? sumM + high - low : sumM;
}
