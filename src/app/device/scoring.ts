/**
 * Joins the store to the planner: the reference ride is planned while the player rides; a finished ride is kept at
 * once, judged, told to its debrief, and given its marks. What could not be judged is judged at a later visit.
 */
import type { RideResult } from '../../core/coach/results.ts';
import { type Judged, type Planner, createPlanner } from '../../worker/client.ts';
import type { Keeping } from './persistence.ts';
import type { AfterRide, Kept } from '../../state/afterRide.ts';
import { PHYSICS_VERSION } from '../../core/ride/recording.ts';
import type { RideJob } from '../../core/ride/job.ts';
import type { RideTrace } from '../../core/ride/trace.ts';
import type { Store } from '../../state/createStore.ts';
import { TRIAL } from '../../state/rideLevel.ts';
import { workplace } from './workplace.ts';

/** Where a finished ride is kept. */
interface RideShelf {
  /** Keeps it without marks and says what became of it. */
  keep(): Promise<Kept>;
  /** Adds the marks; the answer, where there is one, says what became of the ride with them. */
  mark(judged: Judged): Promise<Kept | null>;
}

/** Share of planning is told in steps no finer than this; each one draws the page. */
const SHARE_STEP = 0.1;

/** Starts nothing yet; the worker is loaded with the first ride. `onBroken` hears of workers that broke down. */
export function joinJudging(store: Store, keeping: Keeping, onBroken: (error: unknown) => void) {
  const planner = createPlanner(workplace, { onBroken });
  let marking: Promise<void> | null = null;
  return {
    planner,
    /** A ride begins: its reference will be wanted. The answer tells it as soon as it is known, null before. */
    expect: (job: RideJob): (() => RideTrace | null) => {
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
    /** A ride is over: has it kept, judges it and has it marked; true when it is marked. */
    async judge(result: RideResult, shelf: RideShelf): Promise<boolean> {
      const { recording } = result;
      const tell = (change: Partial<AfterRide>): void =>
        store.send({ kind: 'after-ride', recording, change });
      const kept = shelf.keep().then((answer) => tell({ kept: answer }));
      try {
        const judged = await planner.judge(
          result.level,
          recording,
          inSteps((share) => tell({ share })),
        );
        tell({ report: judged.report, reference: judged.reference.trace, same: judged.same, share: null });
        await kept;
        // Also where another ride is debriefed by now: this one is done all the same.
        const answer = await shelf.mark(judged);
        if (answer !== null) tell({ kept: answer });
        return true;
      } catch {
        tell({ share: 'failed' });
        return false;
      }
    },
    /** The shelf of the device's owner for a ride of this id; `onKept` is called once it lies there. */
    shelfOf: (id: string, result: RideResult, onKept: () => void): RideShelf =>
      ownShelf(keeping, id, result, onKept),
    /** Judges the rides that were kept without marks, one after the other. */
    markWaiting: (): Promise<void> =>
      (marking ??= markAll(keeping, planner).finally(() => {
        marking = null;
      })),
  };
}
export type Judging = ReturnType<typeof joinJudging>;

/** Passes on only what is a step further. */
function inSteps(tell: (share: number) => void): (share: number) => void {
  let told = 0;
  return (share) => {
    if (share - told < SHARE_STEP) return;
    told = share;
    tell(share);
  };
}

/** The shelf of the device's owner; a ride that is only tried lies nowhere. */
function ownShelf(keeping: Keeping, id: string, result: RideResult, onKept: () => void): RideShelf {
  const isTrial = result.rest === TRIAL;
  let fetched = true;
  const keep = async (): Promise<Kept> => {
    if (isTrial) return { state: 'not-saved', code: 'trial', localBackup: false };
    const kept = await keeping.keepRide(id, result);
    if (kept.state === 'saved') onKept();
    fetched = kept.state !== 'not-saved' || kept.code !== 'not-fetched';
    return kept;
  };
  return {
    keep,
    async mark(judged) {
      if (isTrial) return null;
      // Where the storage could not be fetched before, the ride is kept as soon as it can.
      await keeping.there;
      const kept = fetched ? null : await keep();
      await keeping.markRide(id, judged);
      return kept;
    },
  };
}

async function markAll(keeping: Keeping, planner: Planner): Promise<void> {
  const storage = await keeping.there;
  for (const { id, standing, physicsVersion } of await storage.listRides()) {
    // Older physics are gone; such a ride stays as it is.
    const marks = standing === 'to-mark' && physicsVersion === PHYSICS_VERSION;
    const ride = marks ? await storage.getRide(id) : null;
    if (ride?.level === undefined) continue;
    const judged = await planner.judge(ride.level, ride.recording).catch(() => null);
    const ended = judged?.trace.events.some((event) => event.kind === 'finished') === true;
    if (judged !== null && ended) await keeping.markRide(id, judged);
  }
}
