/**
 * The patches a child has sewn on: one for each lesson of a children's level that was ridden to its end, however
 * it went and however often. Says which; what a patch looks like and is called is the pages' business.
 */
import type { Lesson, Level } from '../level/schema.ts';
import type { KeptResult } from './results.ts';

/** One ride of a level, as far as patches care. */
export interface PatchResult {
  readonly audience: Level['audience'];
  readonly teaches: Lesson;
  /** Ridden over the finish; a ride broken off earns nothing and takes nothing away. */
  readonly finished: boolean;
}

/** Lessons with a patch, in the order they were first earned; results are given oldest first. */
export function patchesOf(results: readonly PatchResult[]): readonly Lesson[] {
  const earned: Lesson[] = [];
  for (const { audience, teaches, finished } of results) {
    if (audience === 'children' && finished && !earned.includes(teaches)) earned.push(teaches);
  }
  return earned;
}

/** Lessons with a patch, in the order they were earned. Kept rides have all been ridden to their end. */
export function earnedPatches(levels: readonly Level[], results: readonly KeptResult[]): readonly Lesson[] {
  const ridden = results
    .toSorted((a, b) => a.atMs - b.atMs)
    .flatMap(({ levelId }) => {
      const level = levels.find(({ id }) => id === levelId);
      return level === undefined
        ? []
        : [{ audience: level.audience, teaches: level.teaches, finished: true }];
    });
  return patchesOf(ridden);
}
