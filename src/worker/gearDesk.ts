/**
 * Gear check, one candidate at a time: the own bike first, then every other set of parts as soon as it has been
 * ridden. Like the workshop it knows no worker; where answers go and how to pause is handed in.
 */
import { type GearCandidate, gearCandidates, gearOutcome } from '../core/coach/gearCheck.ts';
import { courseOfLevel } from '../core/level/build.ts';
import { type Answer, type GearJob, keyOfGearJob } from './messages.ts';

/** Takes gear jobs. */
interface GearDesk {
  /** Begins; answers are `gear-own`, then `gear-candidate`s, then `gears` (or `cancelled`, or `failed`). */
  ask(id: number, job: GearJob): Promise<void>;
  /** Stops every job of this key before its next candidate. */
  cancel(key: string): void;
}

/** Opens the desk. */
export function openGearDesk(post: (answer: Answer) => void, pause: () => Promise<void>): GearDesk {
  const running = new Map<number, string>();
  const work = async (id: number, job: GearJob): Promise<Answer> => {
    const course = courseOfLevel(job.level, job.seed);
    // A cancel that came right behind the question must be heard before anything is ridden.
    await pause();
    if (!running.has(id)) return { kind: 'cancelled', id };
    const own = gearOutcome(course, job.bike, job.rider);
    post({ kind: 'gear-own', id, outcome: own });
    const candidates = gearCandidates(course, job.bike, job.rider, { own, asked: job.asked });
    for (let count = 0; ; count += 1) {
      await pause();
      if (!running.has(id)) return { kind: 'cancelled', id };
      const next: IteratorResult<GearCandidate, unknown> = candidates.next();
      if (next.done === true) return { kind: 'gears', id, count };
      post({ kind: 'gear-candidate', id, candidate: next.value });
    }
  };
  return {
    async ask(id, job) {
      running.set(id, keyOfGearJob(job));
      try {
        post(await work(id, job));
      } catch (error) {
        post({ kind: 'failed', id, reason: error instanceof Error ? error.message : String(error) });
      } finally {
        running.delete(id);
      }
    },
    cancel(key) {
      for (const [id, other] of running) if (other === key) running.delete(id);
    },
  };
}
