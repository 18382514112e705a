/**
 * Finds samples by place, and the sample to which a key moves the cursor of the strip. Distance never falls during a ride,
 * so halving the list is enough.
 */
import type { TraceSample } from '../core/ride/trace.ts';
import type { ShiftReport } from '../core/coach/types.ts';

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
function neighbour(samples: readonly TraceSample[], index: number, step: 1 | -1): number {
  const here = samples[index];
  if (here === undefined) return index;
  for (let i = index + step; i >= 0 && i < samples.length; i += step) {
    if (Math.abs((samples[i] as TraceSample).distanceM - here.distanceM) >= SAME_PLACE_M) return i;
  }
  return index;
}

/** Way of the Page keys (m). */
export const PAGE_M = 50;

/** The sample a key leads to, or null if the key is none of ours. `index` is null before the first touch. */
export function moveByKey(
  samples: readonly TraceSample[],
  shifts: readonly ShiftReport[],
  index: number | null,
  key: string,
): number | null {
  const at = index ?? 0;
  const here = samples[at]?.distanceM ?? 0;
  switch (key) {
    case 'ArrowRight':
    case 'ArrowUp':
      return index === null ? 0 : neighbour(samples, at, 1);
    case 'ArrowLeft':
    case 'ArrowDown':
      return index === null ? 0 : neighbour(samples, at, -1);
    case 'PageDown':
      return nearestSample(samples, here + PAGE_M);
    case 'PageUp':
      return nearestSample(samples, here - PAGE_M);
    case 'Home':
      return 0;
    case 'End':
      return samples.length - 1;
    case 'n':
    case 'N':
      return jump(samples, shifts, index, 1);
    case 'p':
    case 'P':
      return jump(samples, shifts, index, -1);
    default:
      return null;
  }
}

/** The sample where the next shift in a direction began; the cursor stays where there is none. */
export function jump(
  samples: readonly TraceSample[],
  shifts: readonly ShiftReport[],
  index: number | null,
  step: 1 | -1,
): number | null {
  const starts = shifts.map((shift) => nearestSample(samples, shift.startedAtM));
  const at = index ?? (step === 1 ? -1 : samples.length);
  const found = step === 1 ? starts.find((start) => start > at) : starts.findLast((start) => start < at);
  return found ?? index;
}
