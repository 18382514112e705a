/** What two riders chose, and what became of it. Plain data. */
import type { RideResult } from '../../core/coach/results.ts';
import type { Level } from '../../core/level/schema.ts';
import type { Side } from './keys.ts';
import type { SideChoice } from './services.ts';

export interface TwoChoice {
  /** Null only where the game has no levels at all. */
  readonly level: Level | null;
  readonly sides: Readonly<Record<Side, SideChoice>>;
  readonly autoEase: boolean;
  /** Whoever's best ride takes longer starts first. */
  readonly headStart: boolean;
}

/** Both rides, finished. */
export type Pair = Readonly<Record<Side, RideResult>>;
