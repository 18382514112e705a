/** What several riders on one device are given, and what they ask for. Riding and judging are done by whoever answers. */
import type { JudgedRide, RideResult } from '../../core/coach/results.ts';
import type { Level } from '../../core/level/schema.ts';
import type { Bike, Rider } from '../../core/model/types.ts';
import type { Settings } from '../../core/settings/settings.ts';
import type { RidePhaseShown, RidePlaces } from '../../state/ridePlaces.ts';
import type { Side } from './keys.ts';

/** What one of them rides. */
export interface RiderChoice {
  readonly bike: Bike;
  readonly rider: Rider;
}

/** One who rides now. */
export interface Seat extends RiderChoice {
  readonly level: Level;
  readonly places: RidePlaces;
  /** Whose keys and gamepad of two; null for somebody who has the whole device. */
  readonly side: Side | null;
  /** In another jersey than the one of this device. */
  readonly otherJersey: boolean;
}

/** Rides that are to begin; who is meant is told by the place in `seats`. */
export interface TogetherWish {
  readonly seats: readonly Seat[];
  /** The game eases during shifts and brakes at lines, for all. */
  readonly autoEase: boolean;
  /** Whoever's best ride takes longer starts first. */
  readonly headStart: boolean;
  /** There is nothing to push but pads, whatever is set. */
  readonly needsPads: boolean;
  readonly onPhase: (seat: number, phase: RidePhaseShown, countdownS: number | null) => void;
  /** How far somebody has come (m), once per picture. */
  readonly onPlace: (seat: number, distanceM: number) => void;
  readonly onFailed: () => void;
  readonly onFinished: (seat: number, result: RideResult) => void;
}

/** What the page asks of the app. */
export interface TwoServices {
  /** Rides on one screen; they go on until they are stopped. Rejects where what rides cannot be fetched. */
  readonly rideTogether: (wish: TogetherWish) => Promise<RidesTogether>;
  /** Marks a ride that is over, with the one thing to change in words; rejects where it cannot be done. */
  readonly judgeRide: (result: RideResult, units: Settings['units']) => Promise<JudgedWithAdvice>;
}

/** A ride with its marks, and the one thing to change. */
interface JudgedWithAdvice {
  readonly ride: JudgedRide;
  readonly advice: string;
}

/** Rides that go on. */
export interface RidesTogether {
  /** Ends a pause, for all. */
  resume(): void;
  stop(): void;
}
