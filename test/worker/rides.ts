/** Jobs and recordings the worker's tests share: a short bundled road, and a late rider on it. */
import { bikeById, riderById } from '../../src/core/model/presets.ts';
import type { Bike, Rider } from '../../src/core/model/types.ts';
import type { Recording } from '../../src/core/ride/recording.ts';
import { NAMED_HABITS, virtualRider } from '../../src/core/virtual/riders.ts';
import { rideThrough } from '../../src/core/ride/run.ts';
import { type RideJob, setupOfJob } from '../../src/core/ride/job.ts';
import { worldOfJob } from '../../src/core/ride/world.ts';
import { levelById } from '../core/ride/worlds.ts';

/** The road bike on a level with one pitch. */
export function someJob(): RideJob {
  const level = levelById('one-pitch-announced');
  return {
    level,
    seed: level.seed,
    bike: bikeById('kids-24-1x8') as Bike,
    rider: riderById('child-9') as Rider,
    autoEase: false,
  };
}

/** A late rider's recording of a job. */
export function lateRecording(job: RideJob): Recording {
  const world = worldOfJob(job);
  return rideThrough(world, virtualRider(world, NAMED_HABITS.late, job.seed)).recording(setupOfJob(job));
}
