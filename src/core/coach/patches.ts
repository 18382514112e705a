/**
 * The patches a child has sewn on: one for each lesson of a children's level that was ridden to its end with at least one
 * change of gear, however well and however often. Says which; what a patch looks like and is called is the pages' business.
 */
import type { Lesson, Level } from '../level/schema.ts';
import { doneShifts, type RideTrace } from '../ride/trace.ts';
import type { KeptResult } from './results.ts';

/** Rides kept before this got their patch for having been ridden, and what a child was given stays: 28 November 2026, 10:15 UTC (ms since 1970). */
const GIVEN_ANYWAY_BEFORE_MS = 1_795_860_900_000;

/** Whether somebody changed gear at all; who did not has learnt nothing about it. */
export const changedGear = (trace: RideTrace): boolean => doneShifts(trace).length > 0;

/**
 * The same of a kept ride, by its marks: without a change of gear there is nothing to ease or, where the best ride changed,
 * nothing earned for easing and for economy.
 */
export function earnsPatch({ atMs, marks }: Pick<KeptResult, 'atMs' | 'marks'>): boolean {
  const { easing, economy } = marks;
  return atMs < GIVEN_ANYWAY_BEFORE_MS || !(easing === null || (easing === 0 && economy === 0));
}

/** Lessons with a patch, in the order they were first earned. Kept rides have all been ridden to their end. */
export function earnedPatches(levels: readonly Level[], results: readonly KeptResult[]): readonly Lesson[] {
  const taught = results
    .filter(earnsPatch)
    .toSorted((a, b) => a.atMs - b.atMs)
    .map(({ levelId }) => levels.find(({ id }) => id === levelId))
    .flatMap((level) => (level?.audience === 'children' ? [level.teaches] : []));
  return [...new Set(taught)];
}
