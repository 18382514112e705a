/**
 * From a parsed level to a road. The only place that knows what a surface name means for rolling.
 */
import { buildCourse } from '../course/build.ts';
import type { Course } from '../course/types.ts';
import { hashJson } from '../math/hash.ts';
import type { Level } from './schema.ts';

/** How many times the rolling coefficient of good asphalt (ours; measured tables scatter widely). */
const ROLLING_FACTOR = { gravel: 2, grass: 3, cobbles: 1.8 } as const;

/** The road of a level; another seed gives another road of the same kind where pieces are seeded. */
export function courseOfLevel(level: Level, seed: number = level.seed): Course {
  const surfaces = level.surfaces.map((one) => ({ ...one, rollingFactor: ROLLING_FACTOR[one.surface] }));
  return buildCourse({ ...level, seed, surfaces });
}

/** Fingerprint of everything in a level that changes the ride or its marks; title and words do not count. */
export function levelHash(level: Level): string {
  const { pieces, joinM, stopLinesM, winds, surfaces, hidden, weights } = level;
  return hashJson({ pieces, joinM, stopLinesM, winds, surfaces, hidden, weights });
}
