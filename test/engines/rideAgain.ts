/**
 * Rides a recording again and judges it: what comes out must be the same bits wherever it runs. Node calls it, and
 * so does a page in every browser engine.
 */
import { groundOfJob, markOn } from '../../src/core/coach/ground.ts';
import type { Level } from '../../src/core/level/schema.ts';
import { hashJson } from '../../src/core/math/hash.ts';
import { jobOfRecording } from '../../src/core/ride/job.ts';
import type { Recording } from '../../src/core/ride/recording.ts';

/** A ride to be ridden again. */
export interface Job {
  readonly level: Level;
  readonly recording: Recording;
}

/** What came out: fingerprints on the way, and one of everything that was seen, planned and marked. */
export interface Outcome {
  readonly checkpoints: readonly string[];
  readonly trace: string;
  readonly reference: string;
  readonly report: string;
}

/** Rides, plans and judges. */
export function rideAgain({ level, recording }: Job): Outcome {
  const ground = groundOfJob(jobOfRecording(level, recording));
  const { ride, report } = markOn(ground, recording);
  return {
    checkpoints: ride.recording(recording).checkpoints,
    trace: hashJson(ride.trace),
    reference: hashJson(ground.reference),
    report: hashJson(report),
  };
}
