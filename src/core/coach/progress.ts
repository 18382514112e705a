/**
 * Progress that is honest: check rides before, after and on another day, compared by numbers. Practice
 * scores are not compared; learning shows in a later, unaided ride on unseen ground (Winstein 1991).
 */

import { mean } from '../math/numbers.ts';
import type { KeptResult } from './results.ts';

type CheckResult = Pick<KeptResult, 'atMs' | 'total'>;

/** What can be said of a row of check rides. */
export type ProgressFinding =
  /** No check ride yet, or only one: nothing to compare. */
  | { readonly code: 'need-first' }
  | { readonly code: 'need-second'; readonly first: number }
  /** Two or more on one day, the first against the latest: no retest on another day. */
  | ({ readonly code: 'same-day' } & ReturnType<typeof compare>)
  /** Up to three of the first day against up to three of the latest: the comparison that counts. */
  | ({ readonly code: 'retest'; readonly days: number } & ReturnType<typeof compare>);

/**
 * Totals of one rider of unchanged skill scatter by so many points (standard deviation) from ride to ride and from day to
 * day. Measured on the virtual riders who scatter most, those of little skill on the road bike, whose skill varies by 0.03
 * a day (the table stands in MARKS.md); that people vary so much is an assumption, no source.
 */
const RIDE_SPREAD_POINTS = 3.8;
const DAY_SPREAD_POINTS = 2;
/** 95 of 100 cases lie within so many standard errors (normal distribution). */
const WITHIN_95 = 1.96;

/**
 * What chance makes of a difference of means, in whole points of the total (95 of 100 cases): more rides on each side make it
 * smaller, but no ride makes up for the day.
 */
export function chancePoints(before: number, after: number): number {
  const days = 2 * DAY_SPREAD_POINTS * DAY_SPREAD_POINTS;
  const rides = RIDE_SPREAD_POINTS * RIDE_SPREAD_POINTS * (1 / before + 1 / after);
  return Math.round(WITHIN_95 * Math.sqrt(days + rides));
}

/** So many rides are taken together on each side. */
export const RIDES_A_SIDE = 3;
const DAY_MS = 86_400_000;
/** Rides further apart than this are on another day, however the clock is set. */
const ANOTHER_DAY_MS = 0.5 * DAY_MS;

/** The finding, from check rides in any order. Only rides of one kind and one bike should be handed in. */
export function findProgress(results: readonly CheckResult[]): ProgressFinding {
  const sorted = [...results].sort((a, b) => a.atMs - b.atMs);
  const first = sorted[0];
  const latest = sorted.at(-1);
  if (first === undefined || latest === undefined) return { code: 'need-first' };
  if (sorted.length === 1) return { code: 'need-second', first: first.total };
  const apartMs = latest.atMs - first.atMs;
  if (apartMs < ANOTHER_DAY_MS) return { code: 'same-day', ...compare([first], [latest]) };
  const before = sorted.filter(({ atMs }) => atMs - first.atMs < ANOTHER_DAY_MS).slice(0, RIDES_A_SIDE);
  const after = sorted.filter(({ atMs }) => latest.atMs - atMs < ANOTHER_DAY_MS).slice(-RIDES_A_SIDE);
  return { code: 'retest', ...compare(before, after), days: Math.max(1, Math.round(apartMs / DAY_MS)) };
}

/** A comparison of what was ridden first with what was ridden last; points of the total. */
function compare(before: readonly CheckResult[], after: readonly CheckResult[]) {
  const first = meanTotal(before);
  const latest = meanTotal(after);
  const change = latest - first;
  const chance = chancePoints(before.length, after.length);
  return {
    /** Mean of the rides on each side, in whole points. */
    first,
    latest,
    change,
    /** The true change lies within so many points of it in 95 of 100 cases, as far as chance goes. */
    chance,
    certain: Math.abs(change) >= chance,
    /** Rides on each side. */
    before: before.length,
    after: after.length,
  };
}

function meanTotal(rides: readonly CheckResult[]): number {
  return Math.round(mean(rides.map(({ total }) => total)));
}
