/**
 * What a page needs to show an imported road and to choose a stretch of it: numbers and curves, nothing that says
 * where or when it was. The road itself stays with whoever read the file.
 */
import type { Problem } from '../level/problems.ts';
import { hardestStretch, type RoadStretch } from './hardest.ts';
import { timedPoints } from './lists.ts';
import type { Road } from './road.ts';
import type { RoadNote } from './types.ts';

/** A road as it can be shown. Curves have one entry every `stepM` metres. */
export interface RoadSummary
  extends Pick<
    Road,
    'lengthM' | 'ascentM' | 'steepestRatio' | 'cappedM' | 'quality' | 'questions' | 'holes'
  > {
  readonly notes: readonly RoadNote[];
  readonly pointCount: number;
  readonly stepM: number;
  readonly heightsM: Float64Array<ArrayBuffer>;
  readonly slopesRatio: Float64Array<ArrayBuffer>;
  /** The stretch that is proposed. */
  readonly hardest: RoadStretch;
  /** Whether the file says, in times that only go on, when it was ridden. */
  readonly timed: boolean;
}

/** What became of a file: a road, or why there is none. */
export type GpxOutcome =
  | { readonly kind: 'road'; readonly road: RoadSummary }
  | { readonly kind: 'refused'; readonly problems: readonly Problem[] }
  | { readonly kind: 'cancelled' };

/** Sums a road up. */
export function summaryOf(road: Road): RoadSummary {
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
    hardest: hardestStretch(road),
    timed: (timedPoints(recorded.timeS) ?? []).length > 1,
  };
}
