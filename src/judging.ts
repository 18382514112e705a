/**
 * Joins the store to the planner: the reference ride is planned while the player rides, and a finished ride is
 * judged, told to its debrief, and kept.
 */
import type { RideResult } from './core/coach/results.ts';
import { type Judged, type Planner, createPlanner, startJudgeWorker } from './worker/client.ts';
import type { Keeping } from './keeping.ts';
import type { AfterRide, Kept } from './app/afterRide.ts';
import type { RideJob } from './core/ride/job.ts';
import type { RideTrace } from './core/ride/trace.ts';
import type { Store } from './app/createStore.ts';
import { TRIAL } from './app/rideLevel.ts';
import { trustedScript } from './trusted.ts';

/** Keeps a judged ride and says what became of it. */
export type KeepRide = (result: RideResult, judged: Judged) => Promise<Kept>;

/** Planning and judging, joined. */
export interface Judging {
  readonly planner: Planner;
  /** A ride begins: its reference will be wanted. The answer tells it as soon as it is known, null before. */
  expect(job: RideJob): () => RideTrace | null;
  /** A ride is over: judges it and keeps it, as one of the device's owner where nothing else is said. */
  judge(result: RideResult, keep?: KeepRide): Promise<void>;
}

/** Share of planning is told in steps no finer than this; each one draws the page. */
const SHARE_STEP = 0.1;

/** Starts nothing yet; the worker is loaded with the first ride. */
export function joinJudging(store: Store, keeping: Keeping): Judging {
  const planner = createPlanner(() => startJudgeWorker(trustedScript));
  return {
    planner,
    expect: (job) => {
      // If planning fails now, judging asks again and tells what became of it.
      let known: RideTrace | null = null;
      planner.prepare(job).then(
        ({ trace }) => {
          known = trace;
        },
        () => undefined,
      );
      return () => known;
    },
    async judge(result, keep = (ridden, judged) => keeping.keepRide(ridden, judged)) {
      const { recording } = result;
      const tell = (change: Partial<AfterRide>): void =>
        store.send({ kind: 'after-ride', recording, change });
      let told = 0;
      try {
        const judged = await planner.judge(result.level, recording, (share) => {
          if (share - told < SHARE_STEP) return;
          told = share;
          tell({ share });
        });
        tell({
          report: judged.report,
          reference: judged.reference.trace,
          same: judged.same,
          share: null,
        });
        if (result.rest === TRIAL) tell({ kept: { state: 'not-saved', code: 'trial', smallCopy: false } });
        // Also where another ride is debriefed by now: this one is done all the same.
        else tell({ kept: await keep(result, judged) });
      } catch {
        tell({ share: null, kept: { state: 'not-saved', code: 'not-judged', smallCopy: false } });
      }
    },
  };
}
