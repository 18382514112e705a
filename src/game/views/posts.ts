/**
 * Where plain roadside posts stand: every 50 m, except where a sign or a board stands already. Shared by the
 * painter of the posts and by what flies from them.
 */
import type { Course } from '../../core/course/types.ts';

const POST_EVERY_M = 50;
const CROWDED_M = 5;

/** True within a few metres of a pitch sign or a stop board. */
export function nearBoard(course: Course, distanceM: number): boolean {
  return (
    course.pitches.some((pitch) => Math.abs(pitch.footM - distanceM) < CROWDED_M) ||
    course.stopLinesM.some((lineM) => Math.abs(lineM - distanceM) < CROWDED_M)
  );
}

/** Distances of all posts (m), ascending. */
export function postPlaces(course: Course): readonly number[] {
  const places: number[] = [];
  for (let m = POST_EVERY_M; m < course.lengthM; m += POST_EVERY_M) if (!nearBoard(course, m)) places.push(m);
  return places;
}
