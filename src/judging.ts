/**
 * Joins the store to the planner: the reference ride is planned while the player rides, and a finished ride is
 * judged, told to its debrief, and kept.
 */
import { type Planner, createPlanner, type RideJob } from './worker/client.ts';
import type { Keeping } from './keeping.ts';
import type { AfterRide, RideResult } from './pages/afterRide.ts';
import { TRIAL } from './pages/rideLevel.ts';
import type { Store } from './pages/store.ts';

/** Planning and judging, joined. */
export interface Judging {
  readonly planner: Planner;
  /** A ride begins: its reference will be wanted. */
  expect(job: RideJob): void;
  /** A ride is over: judges it and keeps it. */
  judge(result: RideResult): Promise<void>;
}

/** Share of planning is told in steps no finer than this; each one draws the page. */
const SHARE_STEP = 0.1;

/** Starts nothing yet; the worker is loaded with the first ride. */
export function joinJudging(store: Store, keeping: Keeping): Judging {
  const planner = createPlanner();
  return {
    planner,
    expect: (job) => {
      // If planning fails now, judging asks again and tells what became of it.
      planner.prepare(job).catch(() => undefined);
    },
    async judge(result) {
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
        const { last } = store.state();
        if (result.rest === TRIAL) tell({ kept: { state: 'not-saved', code: 'trial', smallCopy: false } });
        else if (last?.recording === recording) tell({ kept: await keeping.keepRide(last, judged) });
      } catch {
        tell({ share: null, kept: { state: 'not-saved', code: 'not-judged', smallCopy: false } });
      }
    },
  };
}
