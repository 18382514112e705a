/** A ride that broke off before its finish, and what a person is told when something went wrong. Plain data. */
import type { Level } from '../core/level/schema.ts';
import type { Recording } from '../core/ride/recording.ts';
import type { GroupTurn } from './groupTurn.ts';

/** It can be ridden on, kept as it is, or let go. */
export interface UnfinishedRide {
  /** Id of its journal. */
  readonly id: string;
  /** When it was last written (ms since 1970). */
  readonly atMs: number;
  /** Address of the ride, as behind `#ride/`. */
  readonly rest: string;
  readonly level: Level;
  readonly turn: GroupTurn | null;
  readonly physicsVersion: string;
  /** Pieces its journal consists of. */
  readonly partCount: number;
  /** As far as it was ridden. */
  readonly recording: Recording;
}

export interface TroubleShown {
  /** In a ride, or anywhere else. */
  readonly place: 'ride' | 'page';
  /** The ride that stands still because of it; null elsewhere, and where a ride is only watched. */
  readonly ride: UnfinishedRide | null;
  /** What was ridden is in the database; null while that is not known. */
  readonly kept: boolean | null;
  /** It has just been tried again and went wrong once more. */
  readonly again: boolean;
}
