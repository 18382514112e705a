/**
 * Everything that decides a ride before anybody rides it: road, seed, bike, rider and easing. Two jobs with one key
 * have the same reference ride.
 */
import { levelHash } from '../level/build.ts';
import type { Level } from '../level/schema.ts';
import { hashJson } from '../math/hash.ts';
import type { Bike, Rider } from '../model/types.ts';
import type { Recording, RideSetup } from './recording.ts';

/** One ride to be made: this road, on this bike, by this rider. Plain data. */
export interface RideJob {
  readonly level: Level;
  readonly seed: number;
  readonly bike: Bike;
  readonly rider: Rider;
  readonly autoEase: boolean;
}

/** The job whose reference ride a recording is judged against. */
export function jobOfRecording(level: Level, recording: RideSetup): RideJob {
  const { seed, bike, rider, autoEase } = recording;
  return { level, seed, bike, rider, autoEase };
}

/** Fingerprint of everything that decides the reference ride of a job; title, words and pass mark do not count. */
export function keyOfJob({ level, seed, bike, rider, autoEase }: RideJob): string {
  return hashJson({ level: levelHash(level), seed, bike, rider, autoEase });
}

/** What a recording of this job says about itself. */
export function setupOfJob({ level, seed, bike, rider, autoEase }: RideJob): RideSetup {
  return { levelId: level.id, levelHash: levelHash(level), seed, bike, rider, autoEase };
}

/** Whether a recording was made on this very level, as it is now. */
export function isOnLevel(recording: Pick<Recording, 'levelHash'>, level: Level): boolean {
  return recording.levelHash === levelHash(level);
}
