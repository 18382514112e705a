/** What is asked of the worker that plans and judges, and what it answers: nothing that cannot be cloned. */
import type { GearCandidate, GearOutcome, GearParts } from '../core/coach/gearCheck.ts';
import type { RideReport } from '../core/coach/types.ts';
import type { Level } from '../core/level/schema.ts';
import type { Bike, Rider } from '../core/model/types.ts';
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

/** What a gear check finds: how the own bike does first, then other parts, each as soon as it has been ridden. */
export type GearFound =
  | { readonly kind: 'own'; readonly outcome: GearOutcome }
  | { readonly kind: 'other'; readonly candidate: GearCandidate };

export interface Reference {
  readonly key: string;
  readonly recording: Recording;
  readonly trace: RideTrace;
  /** The reference ride judged by its own measure. */
  readonly report: RideReport;
}

export interface Judged {
  readonly key: string;
  readonly report: RideReport;
  /** The ride, ridden again from its recording. */
  readonly trace: RideTrace;
  readonly reference: Reference;
  /** False if riding it again gave other fingerprints than the recording holds. */
  readonly same: boolean;
}
