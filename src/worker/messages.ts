/**
 * What the page and the worker say to each other: plain messages with ids, nothing that cannot be cloned.
 */
import type { GearCandidate, GearOutcome, GearParts } from '../core/coach/gearCheck.ts';
import type { RideReport } from '../core/coach/types.ts';
import { levelHash } from '../core/level/build.ts';
import type { Level } from '../core/level/schema.ts';
import { hashJson } from '../core/math/hash.ts';
import type { Bike, Rider } from '../core/model/types.ts';
import type { RideJob } from '../core/ride/job.ts';
import type { Recording } from '../core/ride/recording.ts';
import type { RideTrace } from '../core/ride/trace.ts';

/** One gear check: which parts would suit this rider on this road, starting from this bike. */
export interface GearJob {
  readonly level: Level;
  readonly seed: number;
  readonly bike: Bike;
  readonly rider: Rider;
  /** Only these parts are tried; the common ones without it. */
  readonly asked?: GearParts | undefined;
}

/** The reference ride of a job. */
export interface Reference {
  readonly key: string;
  readonly recording: Recording;
  readonly trace: RideTrace;
  /** The reference ride judged by its own measure. */
  readonly report: RideReport;
}

/** A ride that was judged. */
export interface Judged {
  readonly key: string;
  readonly report: RideReport;
  /** The ride, ridden again from its recording. */
  readonly trace: RideTrace;
  readonly reference: Reference;
  /** False if riding it again gave other fingerprints than the recording holds. */
  readonly same: boolean;
  /** First tick whose fingerprint differs, or null. */
  readonly firstDifferentTick: number | null;
  /** False if the recording was made on another version of the level. */
  readonly sameLevel: boolean;
}

/** Page to worker. */
export type Request =
  | { readonly kind: 'plan'; readonly id: number; readonly job: RideJob }
  | { readonly kind: 'judge'; readonly id: number; readonly level: Level; readonly recording: Recording }
  | { readonly kind: 'gears'; readonly id: number; readonly job: GearJob }
  /** Stops all work on a key; every request that waits for it is answered with `cancelled`. */
  | { readonly kind: 'cancel'; readonly key: string };

/** Worker to page. */
export type Answer =
  /** Share of the planning that is done, 0 to 1. */
  | { readonly kind: 'progress'; readonly id: number; readonly share: number }
  | { readonly kind: 'reference'; readonly id: number; readonly reference: Reference }
  | { readonly kind: 'judged'; readonly id: number; readonly judged: Judged }
  /** How the own bike does; comes first. */
  | { readonly kind: 'gear-own'; readonly id: number; readonly outcome: GearOutcome }
  /** Other parts, as soon as they have been ridden. */
  | { readonly kind: 'gear-candidate'; readonly id: number; readonly candidate: GearCandidate }
  /** All parts have been ridden; `count` of them. */
  | { readonly kind: 'gears'; readonly id: number; readonly count: number }
  | { readonly kind: 'cancelled'; readonly id: number }
  | { readonly kind: 'failed'; readonly id: number; readonly reason: string };

/** Fingerprint of everything that decides a gear check; never the key of a ride. */
export function keyOfGearJob(job: GearJob): string {
  const { level, seed, bike, rider, asked } = job;
  return hashJson({ check: 'gears', level: levelHash(level), seed, bike, rider, asked });
}
