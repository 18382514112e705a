/**
 * A ride that is over, as everybody hands it on: just ridden, judged, and kept. Plain data; riding, judging and
 * keeping are done elsewhere.
 */
import type { Level } from '../level/schema.ts';
import type { Recording } from '../ride/recording.ts';
import type { RideTrace } from '../ride/trace.ts';
import type { RideReport, Timing } from './types.ts';

/** What the rider thinks of the dearest pitch, or that no guess was wanted. */
export type Guess = Timing | 'skipped';

export interface RideResult {
  readonly level: Level;
  /** Address of the same ride again, as behind `#ride/`. */
  readonly rest: string;
  readonly recording: Recording;
  readonly trace: RideTrace;
}

export interface JudgedRide {
  readonly result: RideResult;
  readonly report: RideReport;
  readonly reference: RideTrace;
}

/** One kept result, as progress and the choice of the next ride see it. */
export interface KeptResult {
  readonly id: string;
  readonly atMs: number;
  readonly levelId: string;
  readonly levelTitle: string;
  readonly kind: 'ride' | 'check' | 'clinic';
  readonly bikeId: string;
  readonly total: number;
  readonly marks: Readonly<Record<keyof RideReport['marks'], number | null>>;
  readonly passed: boolean;
  /** Ridden or marked by an earlier version of the game: it keeps its marks, but can neither be ridden again nor compared. */
  readonly older?: boolean;
}

/** A kept ride without marks: they are still to be worked out, or it broke off before its finish. */
export interface UnmarkedRide extends Pick<KeptResult, 'id' | 'atMs' | 'levelId' | 'levelTitle' | 'kind'> {
  /** `older`: never marked, and the game that rode it is gone. */
  readonly standing: 'to-mark' | 'unfinished' | 'older';
}
