/**
 * How keys and fingers move the cursor of the strip. Pure: from a sample and a key to another sample.
 */
import type { ShiftReport } from '../core/coach/types.ts';
import type { TraceSample } from '../core/ride/trace.ts';
import { neighbour, nearestSample } from './lookup.ts';

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
