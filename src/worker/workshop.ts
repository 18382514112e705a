/**
 * Plans reference rides and judges rides, one message at a time. Knows no worker and no clock: where answers
 * go and how to pause between two pieces of planning is handed in, so that it runs in a worker, in a page and
 * in a test alike.
 */
import { type MarkingGround, groundInSteps, markOn } from '../core/coach/ground.ts';
import type { Level } from '../core/level/schema.ts';
import { isOnLevel, jobOfRecording, keyOfJob, type RideJob } from '../core/ride/job.ts';
import type { Recording } from '../core/ride/recording.ts';
import { openGearDesk } from './gearDesk.ts';
import type { Answer, Judged, Reference, Request } from './messages.ts';

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
  readonly ground: MarkingGround;
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
  const steps = groundInSteps(job);
  let ground: MarkingGround | null = null;
  while (ground === null) {
    if (interest.cancelled) throw new Cancelled();
    const next = steps.next();
    if (next.done === true) ground = next.value;
    else for (const id of interest.waitingIds) post({ kind: 'progress', id, share: next.value });
    await pause();
  }
  if (interest.cancelled) throw new Cancelled();
  const { reference: trace, referenceRecording: recording } = ground;
  return { ground, reference: { key, recording, trace, report: ground.judge(trace) } };
}

/** Rides a recording again and judges it against the reference. */
function judge({ ground, reference }: Prepared, level: Level, recording: Recording): Judged {
  // Plans are shared by levels that differ in words or pass mark only.
  const { ride, report, same, firstDifferentTick } = markOn(ground, recording, level.passMark);
  return {
    key: reference.key,
    report,
    trace: ride.trace,
    reference,
    same,
    firstDifferentTick,
    sameLevel: isOnLevel(recording, level),
  };
}

function reasonOf(error: unknown): string {
  return error instanceof Error ? error.message : String(error);
}
