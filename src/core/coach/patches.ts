/**
 * The patches a child has sewn on: one for each lesson of a children's level that was ridden to its end, however
 * it went and however often. Says which; what a patch looks like and is called is the pages' business.
 */
import type { Lesson, Level } from '../level/schema.ts';
import type { KeptResult } from './results.ts';

/** Lessons with a patch, in the order they were first earned. Kept rides have all been ridden to their end. */
export function earnedPatches(levels: readonly Level[], results: readonly KeptResult[]): readonly Lesson[] {
  const taught = results
    .toSorted((a, b) => a.atMs - b.atMs)
    .map(({ levelId }) => levels.find(({ id }) => id === levelId))
    .flatMap((level) => (level?.audience === 'children' ? [level.teaches] : []));
  return [...new Set(taught)];
}
