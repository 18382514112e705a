/** Which stretches of a road carry their percent on the strip of the road ahead. Pure numbers. */
import type { Course } from '../../core/course/types.ts';

/** Slope from which a stretch carries its percent. */
const STEEP_RATIO = 0.03;

/** A stretch with a number on it. */
export interface SteepPart {
  readonly fromM: number;
  readonly toM: number;
  /** Steepest slope in it, signed. */
  readonly slopeRatio: number;
}

/** Stretches of a road that are steeper than 3 % up or down for at least 12 m. */
export function steepParts(course: Course): SteepPart[] {
  const parts: SteepPart[] = [];
  const last = course.lengthM;
  let start = -1;
  let steepest = 0;
  for (let m = 0; m <= last + 1; m++) {
    const slope = m <= last ? (course.slopeRatio[m] ?? 0) : 0;
    const steep = Math.abs(slope) >= STEEP_RATIO;
    const turns = start >= 0 && slope * steepest < 0;
    if (start >= 0 && (!steep || turns)) {
      if (m - start >= 12) parts.push({ fromM: start, toM: m, slopeRatio: steepest });
      start = -1;
    }
    if (steep && start < 0) {
      start = m;
      steepest = slope;
    }
    if (steep && Math.abs(slope) > Math.abs(steepest)) steepest = slope;
  }
  return parts;
}
