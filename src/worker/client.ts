/**
 * The page's side of planning and judging: asks with promises, answers come from a worker, or from this thread where
 * there is no worker, it breaks down, or it keeps falling silent. Touches nothing of the page.
 */
import type { GearCandidate, GearOutcome } from '../core/coach/gearCheck.ts';
import type { Level } from '../core/level/schema.ts';
import type { RideJob } from '../core/ride/job.ts';
import type { Recording } from '../core/ride/recording.ts';
import type { GearJob } from './jobs.ts';
import { connect } from './asking.ts';
import type { Workplace } from './line.ts';
import type { Workshop } from './workshop.ts';

export type { Judged } from './jobs.ts';

/** Told the share of the planning that is done, 0 to 1. */
type OnShare = (share: number) => void;

/** Told what a gear check has found so far. */
interface GearTell {
  /** The own bike comes first. */
  readonly onOwn: (outcome: GearOutcome) => void;
  readonly onCandidate: (candidate: GearCandidate) => void;
}

/** How a planner treats a worker that breaks down. */
interface PlannerOptions {
  /** Hears of a worker that broke down or fell silent; somebody else does its work by then. */
  readonly onBroken?: (error: unknown) => void;
  /**
   * A worker that is asked and gives no sign for so long (s, while the page is awake) counts as hanging. Between two
   * signs a slow phone plans a few metres of road or rides one ride again: seconds at most.
   */
  readonly patienceS?: number;
}

/** Starts the planner. Nothing is loaded before the first question. */
export function createPlanner(workplace: Workplace<Workshop>, { onBroken, patienceS }: PlannerOptions = {}) {
  const worker = connect<Workshop>({ ...workplace, afterSilence: 'here', onBroken, silenceS: patienceS });
  return {
    prepare: (job: RideJob, onPart?: OnShare, signal?: AbortSignal) =>
      worker.ask('prepare', job, { onPart, signal }),
    judge: (level: Level, recording: Recording, onPart?: OnShare) =>
      worker.ask('judge', { level, recording }, { onPart }),
    checkGears: (job: GearJob, { onOwn, onCandidate }: GearTell, signal?: AbortSignal) =>
      worker.ask('checkGears', job, {
        onPart: (found) => (found.kind === 'own' ? onOwn(found.outcome) : onCandidate(found.candidate)),
        signal,
      }),
    /** Ends the worker; the planner cannot be used afterwards. */
    stop: (): void => worker.close(),
  };
}
/** Plans and judges off the main thread; what each question means is said in `workshop.ts`. All promises reject with `Cancelled` once their signal says so, or after a stop. */
export type Planner = ReturnType<typeof createPlanner>;
