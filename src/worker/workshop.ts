/**
 * Plans reference rides and judges rides, one message at a time. Knows no worker and no clock: where answers
 * go and how to pause between two pieces of planning is handed in, so that it runs in a worker, in a page and
 * in a test alike.
 */
import { judgeRide } from '../core/coach/judge.ts';
import type { RideReport } from '../core/coach/types.ts';
import { courseOfLevel, levelHash } from '../core/level/build.ts';
import type { Level } from '../core/level/schema.ts';
import { rideReference } from '../core/planner/driver.ts';
import { planInSteps, type Policy } from '../core/planner/plan.ts';
import type { Recording } from '../core/ride/recording.ts';
import { replayRecording } from '../core/ride/run.ts';
import type { RideTrace } from '../core/ride/trace.ts';
import type { RideWorld } from '../core/ride/types.ts';
import { buildRideWorld } from '../core/ride/world.ts';
import { openGearDesk } from './gearDesk.ts';
import {
  type Answer,
  jobOfRecording,
  type Judged,
  keyOfJob,
  type Reference,
  type Request,
  type RideJob,
} from './messages.ts';

/** Plans that are kept; each takes one to two megabytes per kilometre. */
const KEPT_PLANS = 4;

/** Who waits for a job, and whether it is still wanted. */
interface Interest {
  readonly waitingIds: Set<number>;
  cancelled: boolean;
}

/** Work on one key, shared by everybody who asks for it. */
interface Work {
  readonly interest: Interest;
  readonly done: Promise<Prepared>;
}

interface Prepared {
  readonly world: RideWorld;
  readonly policy: Policy;
  readonly reference: Reference;
}

/** Thrown through the planning of a job that nobody wants any more. */
class Cancelled extends Error {}

/** Takes requests. */
export type Workshop = (request: Request) => void;

/**
 * Opens a workshop.
 * @param post sends an answer to whoever asked
 * @param pause ends when messages that came in meanwhile have been received
 */
export function openWorkshop(post: (answer: Answer) => void, pause: () => Promise<void>): Workshop {
  const works = new Map<string, Work>();
  const gears = openGearDesk(post, pause);
  const start = (key: string, job: RideJob): Work => {
    const interest: Interest = { waitingIds: new Set(), cancelled: false };
    return { interest, done: prepare(key, job, interest, post, pause) };
  };

  const answer = async (id: number, job: RideJob, make: (prepared: Prepared) => Answer): Promise<void> => {
    const key = keyOfJob(job);
    const { interest, done } = workOn(works, key, () => start(key, job));
    interest.waitingIds.add(id);
    try {
      const prepared = await done;
      if (interest.cancelled) throw new Cancelled();
      post(make(prepared));
    } catch (error) {
      post(
        error instanceof Cancelled
          ? { kind: 'cancelled', id }
          : { kind: 'failed', id, reason: reasonOf(error) },
      );
    } finally {
      interest.waitingIds.delete(id);
    }
  };

  return (request) => {
    switch (request.kind) {
      case 'plan':
        void answer(request.id, request.job, ({ reference }) => ({
          kind: 'reference',
          id: request.id,
          reference,
        }));
        return;
      case 'judge': {
        const { id, level, recording } = request;
        const job = jobOfRecording(level, recording);
        void answer(id, job, (prepared) => ({
          kind: 'judged',
          id,
          judged: judge(prepared, level, recording),
        }));
        return;
      }
      case 'gears':
        void gears.ask(request.id, request.job);
        return;
      case 'cancel': {
        gears.cancel(request.key);
        const work = works.get(request.key);
        if (work === undefined) return;
        work.interest.cancelled = true;
        works.delete(request.key);
      }
    }
  };
}

/** The work on a key, begun if nobody has; makes room by forgetting the plan that was wanted longest ago. */
function workOn(works: Map<string, Work>, key: string, start: () => Work): Work {
  const known = works.get(key);
  const work = known ?? start();
  // Asked for again means wanted longer than the others.
  works.delete(key);
  works.set(key, work);
  if (known === undefined)
    work.done.catch(() => {
      if (works.get(key) === work) works.delete(key);
    });
  const oldest = [...works].find(([, other]) => other !== work && other.interest.waitingIds.size === 0);
  if (works.size > KEPT_PLANS && oldest !== undefined) works.delete(oldest[0]);
  return work;
}

/** Plans a job piece by piece, tells those who wait how far it is, and rides the plan. */
async function prepare(
  key: string,
  job: RideJob,
  interest: Interest,
  post: (answer: Answer) => void,
  pause: () => Promise<void>,
): Promise<Prepared> {
  // Whoever asked must be on the list before the first share is told.
  await pause();
  const { level, seed, bike, rider, autoEase } = job;
  const world = buildRideWorld(courseOfLevel(level, seed), bike, rider, { autoEase });
  const steps = planInSteps(world);
  let policy: Policy | null = null;
  while (policy === null) {
    if (interest.cancelled) throw new Cancelled();
    const next = steps.next();
    if (next.done === true) policy = next.value;
    else for (const id of interest.waitingIds) post({ kind: 'progress', id, share: next.value });
    await pause();
  }
  if (interest.cancelled) throw new Cancelled();
  const ride = rideReference(world, policy);
  const setup = { levelId: level.id, levelHash: levelHash(level), seed, bike, rider, autoEase };
  const report = reportOn(world, level, ride.trace, ride.trace, policy);
  return { world, policy, reference: { key, recording: ride.recording(setup), trace: ride.trace, report } };
}

/** Rides a recording again and judges it against the reference. */
function judge({ world, policy, reference }: Prepared, level: Level, recording: Recording): Judged {
  const replay = replayRecording(world, recording);
  const { trace } = replay.ride;
  return {
    key: reference.key,
    report: reportOn(world, level, trace, reference.trace, policy),
    trace,
    reference,
    same: replay.same,
    firstDifferentTick: replay.firstDifferentTick,
    sameLevel: recording.levelHash === levelHash(level),
  };
}

function reportOn(
  world: RideWorld,
  level: Level,
  trace: RideTrace,
  reference: RideTrace,
  policy: Policy,
): RideReport {
  return judgeRide({ world, trace, reference, policy, weights: level.weights, passMark: level.passMark });
}

function reasonOf(error: unknown): string {
  return error instanceof Error ? error.message : String(error);
}
