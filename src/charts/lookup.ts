/**
 * Finds samples by place. Distance never falls during a ride, so halving the list is enough.
 */
import type { TraceSample } from '../core/ride/trace.ts';

/** Samples nearer together than this are one place for a person (m). */
const SAME_PLACE_M = 0.05;

/** Index of the last sample at or before a place; 0 before the start. */
function sampleBefore(samples: readonly TraceSample[], distanceM: number): number {
  let low = 0;
  let high = samples.length - 1;
  while (low < high) {
    const middle = Math.ceil((low + high) / 2);
    if ((samples[middle] as TraceSample).distanceM <= distanceM) low = middle;
    else high = middle - 1;
  }
  return low;
}

/** Index of the sample nearest to a place. */
export function nearestSample(samples: readonly TraceSample[], distanceM: number): number {
  const before = sampleBefore(samples, distanceM);
  const a = samples[before];
  const b = samples[before + 1];
  if (a === undefined || b === undefined) return before;
  return distanceM - a.distanceM <= b.distanceM - distanceM ? before : before + 1;
}

/** Next sample that lies at another place, in a direction; the same index at the ends. */
export function neighbour(samples: readonly TraceSample[], index: number, step: 1 | -1): number {
  const here = samples[index];
  if (here === undefined) return index;
  for (let i = index + step; i >= 0 && i < samples.length; i += step) {
    if (Math.abs((samples[i] as TraceSample).distanceM - here.distanceM) >= SAME_PLACE_M) return i;
  }
  return index;
}
