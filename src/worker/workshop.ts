/**
 * Plans reference rides, judges rides and checks gears, one piece at a time. Knows no worker and no clock, so that it
 * runs in a worker, in a page and in a test alike.
 */
import { gearCandidates, gearOutcome } from '../core/coach/gearCheck.ts';
import { type MarkingGround, groundInSteps, markOn } from '../core/coach/ground.ts';
import { courseOfLevel } from '../core/level/build.ts';
import type { Level } from '../core/level/schema.ts';
import { jobOfRecording, keyOfJob, type RideJob } from '../core/ride/job.ts';
import type { Recording } from '../core/ride/recording.ts';
import type { GearFound, GearJob, Judged, Reference } from './jobs.ts';
import { type Call, Cancelled, type Method } from './rpc.ts';

/** Plans that are kept; each takes one to two megabytes per kilometre. */
const KEPT_PLANS = 4;

/** Somebody who waits for a plan and is told the share that is done (0 to 1). */
type Waiting = Call<number>;

/** A job that is planned once for all who wait for it. */
interface Plan {
  readonly waiting: Set<Waiting>;
  readonly done: Promise<Planned>;
}

interface Planned {
  readonly ground: MarkingGround;
  readonly reference: Reference;
}

interface Ridden {
  readonly level: Level;
  readonly recording: Recording;
}

/** What can be asked. */
export interface Workshop {
  /** Plans a job, or answers at once if it was planned before. */
  readonly prepare: Method<RideJob, number, Reference>;
  /** Judges a recording against the reference ride of its own bike, rider and seed. */
  readonly judge: Method<Ridden, number, Judged>;
  /** Rides the own bike and all other parts over a road; answers with how many other parts there were. */
  readonly checkGears: Method<GearJob, GearFound, number>;
}

/** Opens a workshop without plans. */
export function createWorkshop(): Workshop {
  const plans = new Map<string, Plan>();
  const planned = async (job: RideJob, call: Waiting): Promise<Planned> => {
    const { waiting, done } = planOf(plans, job);
    waiting.add(call);
    try {
      return await done;
    } finally {
      waiting.delete(call);
    }
  };
  return {
    prepare: async (job, call) => (await planned(job, call)).reference,
    judge: async ({ level, recording }, call) =>
      judge(await planned(jobOfRecording(level, recording), call), level, recording),
    async checkGears({ level, seed, bike, rider, asked }, call) {
      const course = courseOfLevel(level, seed);
      // A cancel that came right behind the question must be heard before anything is ridden.
      await call.pause();
      const own = gearOutcome(course, bike, rider);
      call.tell({ kind: 'own', outcome: own });
      let count = 0;
      for (const candidate of gearCandidates(course, bike, rider, { own, asked })) {
        call.tell({ kind: 'other', candidate });
        count += 1;
        await call.pause();
      }
      return count;
    },
  };
}

/** The plan of a job, begun if nobody has; makes room by forgetting the one that was wanted longest ago. */
function planOf(plans: Map<string, Plan>, job: RideJob): Plan {
  const key = keyOfJob(job);
  const known = plans.get(key);
  const plan = known ?? begin(key, job);
  // Asked for again means wanted longer than the others.
  plans.delete(key);
  plans.set(key, plan);
  if (known === undefined)
    plan.done.catch(() => {
      if (plans.get(key) === plan) plans.delete(key);
    });
  const oldest = [...plans].find(([, other]) => other !== plan && other.waiting.size === 0);
  if (plans.size > KEPT_PLANS && oldest !== undefined) plans.delete(oldest[0]);
  return plan;
}

function begin(key: string, job: RideJob): Plan {
  const waiting = new Set<Waiting>();
  return { waiting, done: prepare(key, job, waiting) };
}

/** Plans a job piece by piece, tells those who wait how far it is, and rides the plan. */
async function prepare(key: string, job: RideJob, waiting: ReadonlySet<Waiting>): Promise<Planned> {
  // Whoever asked must be on the list before the first share is told.
  await Promise.resolve();
  const steps = groundInSteps(job);
  for (;;) {
    await pauseOf(waiting);
    const { done, value } = steps.next();
    if (done === true) return plannedOn(value, key);
    for (const call of waiting) call.tell(value);
  }
}

/** Lets messages through, and ends the planning once nobody waits for it. */
async function pauseOf(waiting: ReadonlySet<Waiting>): Promise<void> {
  const paused = await Promise.allSettled([...waiting].map((call) => call.pause()));
  if (paused.every(({ status }) => status === 'rejected')) throw new Cancelled();
}

function plannedOn(ground: MarkingGround, key: string): Planned {
  const { reference: trace, referenceRecording: recording } = ground;
  return { ground, reference: { key, recording, trace, report: ground.judge(trace) } };
}

/** Rides a recording again and judges it against the reference. */
function judge({ ground, reference }: Planned, level: Level, recording: Recording): Judged {
  // Plans are shared by levels that differ in words or pass mark only.
  const { ride, report, same } = markOn(ground, recording, level.passMark);
  return { key: reference.key, report, trace: ride.trace, reference, same };
}
