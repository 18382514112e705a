/**
 * Check rides sorted into groups that may be compared: one road for grown-ups or children, one bike. Pure; what a
 * row of totals means is found by the core.
 */
import type { KeptResult } from '../../core/coach/results.ts';
import { findProgress, type ProgressFinding } from '../../core/coach/progress.ts';

/** The check roads, by what follows in the names of their levels. */
const ROADS = ['everyone', 'children', 'hub', 'hub-children', 'crank-motor', 'wheel-motor'] as const;

/** What a check ride is to the first one of its group. */
type CheckRole = 'first' | 'same-day' | 'retest';

export interface CheckRide {
  readonly result: KeptResult;
  readonly role: CheckRole;
}

/** Check rides that may be compared, oldest first. */
export interface CheckGroup {
  readonly key: string;
  readonly bikeId: string;
  readonly road: (typeof ROADS)[number];
  readonly rides: readonly CheckRide[];
  readonly finding: ProgressFinding;
}

/** The groups; the one ridden last comes first. */
export function checkGroups(results: readonly KeptResult[]): CheckGroup[] {
  const byKey = new Map<string, KeptResult[]>();
  for (const result of results) {
    if (result.kind !== 'check') continue;
    const key = `${result.levelId} ${result.bikeId}`;
    byKey.set(key, [...(byKey.get(key) ?? []), result]);
  }
  const last = ({ rides }: CheckGroup): number => rides.at(-1)?.result.atMs ?? 0;
  return [...byKey].map(([key, list]) => groupOf(key, list)).toSorted((a, b) => last(b) - last(a));
}

function groupOf(key: string, results: readonly KeptResult[]): CheckGroup {
  const sorted = results.toSorted((a, b) => a.atMs - b.atMs);
  const first = sorted[0];
  return {
    key,
    bikeId: first?.bikeId ?? '',
    road: ROADS.find((road) => first?.levelId === `check-ride-${road}`) ?? 'everyone',
    rides: sorted.map((result) => ({ result, role: roleOf(first, result) })),
    // In whole points, as they are told, so that a change and what is said of it agree.
    finding: findProgress(sorted.map(({ id, atMs, total }) => ({ id, atMs, total: Math.round(total) }))),
  };
}

/** The core decides what another day is; a pair of rides asks it. */
function roleOf(first: KeptResult | undefined, result: KeptResult): CheckRole {
  if (first === undefined || first === result) return 'first';
  return findProgress([first, result]).code === 'retest' ? 'retest' : 'same-day';
}
