/**
 * The ink under the road: how many strokes lie between the start and any place, so that hatching drawn in
 * separate chunks meets without a seam and its density is the gradient. Pure numbers.
 */
import type { Course } from '../../core/course/types.ts';
import { sampleAt } from '../../core/math/numbers.ts';

/** Strokes per pixel of road for each unit of slope: 10 % gives one stroke every 6 pixels. */
const STROKES_PER_PX = 1.66;
/** Below this slope the road counts as flat and stays clean. */
const FLAT_SLOPE_RATIO = 0.012;

/** Strokes per metre of road at a slope (rise over run). */
function strokesPerM(slopeRatio: number, pxPerM: number): number {
  const steep = Math.abs(slopeRatio);
  return steep < FLAT_SLOPE_RATIO ? 0 : steep * STROKES_PER_PX * pxPerM;
}

/** Number of strokes before each metre of the road, fractional. */
export function strokesBefore(course: Course, pxPerM: number): Float64Array {
  const sums = new Float64Array(course.slopeRatio.length);
  for (let m = 1; m < sums.length; m++) {
    const mean = ((course.slopeRatio[m - 1] ?? 0) + (course.slopeRatio[m] ?? 0)) / 2;
    sums[m] = (sums[m - 1] ?? 0) + strokesPerM(mean, pxPerM);
  }
  return sums;
}

/** Places of the strokes between two distances (m), in order. */
export function strokesBetween(sums: Float64Array, fromM: number, toM: number): number[] {
  const places: number[] = [];
  const start = Math.max(0, fromM);
  const end = Math.min(sums.length - 1, toM);
  let next = Math.floor(sampleAt(sums, start)) + 1;
  for (let m = Math.floor(start); m < end; m++) {
    const low = sums[m] ?? 0;
    const high = sums[m + 1] ?? low;
    while (next <= high && high > low) {
      const place = m + (next - low) / (high - low);
      if (place >= start && place < end) places.push(place);
      next++;
    }
  }
  return places;
}
