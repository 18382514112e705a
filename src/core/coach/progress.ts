/**
 * Progress that is honest: check rides before, after and on another day, compared by numbers. Practice
 * scores are not compared; learning shows in a later, unaided ride on unseen ground (Winstein 1991).
 */

/** One finished check ride. */
interface CheckResult {
  readonly id: string;
  /** When it was ridden, milliseconds since 1970; handed in, the core reads no clock. */
  readonly atMs: number;
  readonly total: number;
}

/** What can be said of a row of check rides. */
export type ProgressFinding =
  /** No check ride yet, or only one: nothing to compare. */
  | { readonly code: 'need-first' }
  | { readonly code: 'need-second'; readonly first: number }
  /** Two or more on one day: a difference, but no retest on another day. */
  | {
      readonly code: 'same-day';
      readonly first: number;
      readonly latest: number;
      readonly change: number;
      readonly certain: boolean;
    }
  /** A retest on another day: the one that counts. */
  | {
      readonly code: 'retest';
      readonly first: number;
      readonly latest: number;
      readonly change: number;
      readonly certain: boolean;
      readonly days: number;
    };

/**
 * Two check rides of the same rider differ by chance (points of the total). Virtual riders of unchanged skill
 * differed by 3.3 points (root mean square) on two fresh roads, which would make 7 of it; people vary more from
 * day to day than they do, so the bound is ours and wider.
 */
export const CHANCE_POINTS = 10;

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
  const change = latest.total - first.total;
  const certain = Math.abs(change) >= CHANCE_POINTS;
  const common = { first: first.total, latest: latest.total, change, certain };
  const apartMs = latest.atMs - first.atMs;
  if (apartMs < ANOTHER_DAY_MS) return { code: 'same-day', ...common };
  return { code: 'retest', ...common, days: Math.max(1, Math.round(apartMs / DAY_MS)) };
}
