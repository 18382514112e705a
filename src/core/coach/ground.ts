/**
 * The one way from a level to marks: world, plan, reference ride and judge, put together once and used by the
 * worker, the command line, the check of a group's rides and the tests alike.
 */
import type { Level } from '../level/schema.ts';
import { bikeById, riderById } from '../model/presets.ts';
import { referenceInSteps } from '../planner/reference.ts';
import { atOnce, planInSteps, type Policy } from '../planner/plan.ts';
import { jobOfRecording, type RideJob, setupOfJob } from '../ride/job.ts';
import { worldOfJob } from '../ride/world.ts';
import type { Recording } from '../ride/recording.ts';
import { type Replay, replayRecording, type TickListener } from '../ride/run.ts';
import type { RideTrace } from '../ride/trace.ts';
import type { RideWorld } from '../ride/types.ts';
import { judgeRide } from './judge.ts';
import type { RideReport } from './types.ts';

/** A road on which rides can be judged. Takes one to two megabytes per kilometre, most of it the policy. */
export interface MarkingGround {
  readonly level: Level;
  readonly world: RideWorld;
  readonly policy: Policy;
  /** The best ride the planner found, and its recording. */
  readonly reference: RideTrace;
  readonly referenceRecording: Recording;
  /** Judges a ride over this ground; another pass mark (0 to 100) changes only whether it passed. */
  readonly judge: (trace: RideTrace, passMark?: number) => RideReport;
}

/**
 * Lays the ground of a job, yielding the share done (0 to 1) now and then, so that a worker can report and be
 * stopped. Throws where no ride is possible with this bike and rider.
 */
export function* groundInSteps(job: RideJob): Generator<number, MarkingGround> {
  const { level } = job;
  const world = worldOfJob(job);
  const policy = yield* shareOf(planInSteps(world), 0, PLAN_SHARE);
  const ride = yield* shareOf(referenceInSteps(world, policy), PLAN_SHARE, 1);
  const reference = ride.trace;
  const { weights } = level;
  return {
    level,
    world,
    policy,
    reference,
    referenceRecording: ride.recording(setupOfJob(job)),
    judge: (trace, passMark = level.passMark) =>
      judgeRide({ world, trace, reference, weights, passMark, level }),
  };
}

/** Share of the work that the plan is, the search for the best ride the rest. */
const PLAN_SHARE = 0.3;

function* shareOf<T>(steps: Generator<number, T>, from: number, to: number): Generator<number, T> {
  for (;;) {
    const next = steps.next();
    if (next.done === true) return next.value;
    yield from + (to - from) * next.value;
  }
}

/** Lays the ground of a job at once. Throws where no ride is possible with this bike and rider. */
export function groundOfJob(job: RideJob): MarkingGround {
  return atOnce(groundInSteps(job));
}

/** Lays the ground for a bundled bike and rider. Throws if there is none of that name. */
export function groundOf(
  level: Level,
  bikeId: string,
  riderId: string,
  seed: number = level.seed,
): MarkingGround {
  const bike = bikeById(bikeId);
  const rider = riderById(riderId);
  if (bike === undefined || rider === undefined) throw new Error(`no ${bikeId} or ${riderId}`);
  return groundOfJob({ level, seed, bike, rider, autoEase: false });
}

/** A recording that was ridden again and judged. */
export interface MarkedRide extends Replay {
  readonly report: RideReport;
}

/** Rides a recording again on its ground and judges it. `onTick` hears every tick. */
export function markOn(
  ground: MarkingGround,
  recording: Recording,
  passMark: number = ground.level.passMark,
  onTick?: TickListener,
): MarkedRide {
  const replay = replayRecording(ground.world, recording, onTick);
  return { ...replay, report: ground.judge(replay.ride.trace, passMark) };
}

/** Marks a recording on the level it was ridden on. Look at `same` first: without it the marks are of another ride. */
export function markRecording(level: Level, recording: Recording): MarkedRide {
  return markOn(groundOfJob(jobOfRecording(level, recording)), recording);
}
