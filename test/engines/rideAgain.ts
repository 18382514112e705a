/**
 * Rides a recording again and judges it: what comes out must be the same bits wherever it runs. Node calls it, and
 * so does a page in every browser engine.
 */
import { judgeRide } from '../../src/core/coach/judge.ts';
import { courseOfLevel, levelHash } from '../../src/core/level/build.ts';
import type { Level } from '../../src/core/level/schema.ts';
import { hashJson } from '../../src/core/math/hash.ts';
import { rideReference } from '../../src/core/planner/driver.ts';
import { planRoad } from '../../src/core/planner/plan.ts';
import type { Recording } from '../../src/core/ride/recording.ts';
import { commandsByTick } from '../../src/core/ride/recording.ts';
import { rideThrough } from '../../src/core/ride/run.ts';
import { buildRideWorld } from '../../src/core/ride/world.ts';

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
  const { bike, rider, autoEase, seed, levelId } = recording;
  const world = buildRideWorld(courseOfLevel(level, seed), bike, rider, { autoEase });
  const commandsAt = commandsByTick(recording.commands);
  const ride = rideThrough(world, (state) => commandsAt(state.tick));
  const policy = planRoad(world);
  const reference = rideReference(world, policy).trace;
  const { weights, passMark } = level;
  const report = judgeRide({ world, trace: ride.trace, reference, policy, weights, passMark });
  const setup = { levelId, levelHash: levelHash(level), seed, bike, rider, autoEase };
  return {
    checkpoints: ride.recording(setup).checkpoints,
    trace: hashJson(ride.trace),
    reference: hashJson(reference),
    report: hashJson(report),
  };
}
