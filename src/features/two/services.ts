/** What two riders at once are given, and what they ask for. Riding and judging are done by whoever answers. */
import type { JudgedRide, RideResult } from '../../core/coach/results.ts';
import type { Level } from '../../core/level/schema.ts';
import type { Bike, Rider } from '../../core/model/types.ts';
import type { Settings } from '../../core/settings/settings.ts';
import type { RidePhaseShown, RidePlaces } from '../../state/ridePlaces.ts';
import type { Side } from './keys.ts';

/** What one of the two rides. */
export interface SideChoice {
  readonly bike: Bike;
  readonly rider: Rider;
}

/** Two rides that are to begin. */
export interface TwoWish {
  readonly level: Level;
  readonly sides: Readonly<Record<Side, SideChoice>>;
  /** The game eases during shifts and brakes at lines, for both. */
  readonly autoEase: boolean;
  /** Whoever's best ride takes longer starts first. */
  readonly headStart: boolean;
  readonly places: Readonly<Record<Side, RidePlaces>>;
  readonly onPhase: (side: Side, phase: RidePhaseShown, countdownS: number | null) => void;
  readonly onFailed: () => void;
  readonly onFinished: (side: Side, result: RideResult) => void;
}

/** What the page asks of the app. */
export interface TwoServices {
  /** Two rides side by side; they go on until they are stopped. Rejects where what rides cannot be fetched. */
  readonly rideTwo: (wish: TwoWish) => Promise<TwoRides>;
  /** Marks a ride that is over, with the one thing to change in words; rejects where it cannot be done. */
  readonly judgeRide: (result: RideResult, units: Settings['units']) => Promise<JudgedWithAdvice>;
}

/** A ride with its marks, and the one thing to change. */
export interface JudgedWithAdvice {
  readonly ride: JudgedRide;
  readonly advice: string;
}

/** Two rides that go on. */
export interface TwoRides {
  /** Ends a pause, for both. */
  resume(): void;
  stop(): void;
}
