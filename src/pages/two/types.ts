/** What two riders at once are given, and what they ask for. Riding and judging are done by whoever answers. */
import type { RideResult } from '../../core/coach/results.ts';
import type { Level } from '../../core/level/schema.ts';
import type { Bike, Rider } from '../../core/model/types.ts';
import type { RidePhaseShown, RidePlace } from '../../ui/ridePlaces.ts';
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
  readonly places: Readonly<Record<Side, Readonly<Record<RidePlace, HTMLElement>>>>;
  readonly onPhase: (side: Side, phase: RidePhaseShown, countdownS: number | null) => void;
  readonly onFailed: () => void;
  readonly onFinished: (side: Side, result: RideResult) => void;
}

/** Two rides that go on. */
export interface TwoRides {
  /** Ends a pause, for both. */
  resume(): void;
  stop(): void;
}
