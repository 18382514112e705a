/**
 * What a page needs to show an imported road and to choose a stretch of it: numbers and curves, nothing that says
 * where or when it was. The road itself stays with whoever read the file.
 */
import type { Problem } from '../level/problems.ts';
import { hardestStretch } from './hardest.ts';
import { timedPoints } from './lists.ts';
import type { Road } from './road.ts';

export type GpxOutcome =
  | { readonly kind: 'road'; readonly road: RoadSummary }
  | { readonly kind: 'refused'; readonly problems: readonly Problem[] }
  | { readonly kind: 'cancelled' };

/** A road as it can be shown. Curves have one entry every `stepM` metres. */
export function summaryOf(road: Road) {
  const { lengthM, ascentM, steepestRatio, cappedM, quality, questions, holes, profile, recorded } = road;
  return {
    lengthM,
    ascentM,
    steepestRatio,
    cappedM,
    quality,
    notes: road.problems,
    questions,
    holes,
    pointCount: road.points,
    stepM: profile.stepM,
    heightsM: Float64Array.from(profile.heightsM),
    slopesRatio: Float64Array.from(profile.slopesRatio),
    /** The stretch that is proposed. */
    hardest: hardestStretch(road),
    /** Whether the file says, in times that only go on, when it was ridden. */
    timed: (timedPoints(recorded.timeS) ?? []).length > 1,
  };
}
export type RoadSummary = Readonly<ReturnType<typeof summaryOf>>;
