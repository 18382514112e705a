/**
 * What a judged ride is, in codes and numbers. Words for all of it are found by the shells.
 */
import type { Derailleur, ShiftDirection } from '../ride/types.ts';

export const MARK_NAMES = ['cadence', 'foresight', 'easing', 'chainLine', 'economy'] as const;
export type MarkName = (typeof MARK_NAMES)[number];

/** Why a mark is what it is; `amount` is explained by the code. */
export type Reason =
  /** Seconds below or above the band between two places; `amount` is seconds, `worstRpm` the extreme cadence. */
  | {
      readonly code: 'below-band' | 'above-band';
      readonly fromM: number;
      readonly toM: number;
      readonly amount: number;
      readonly worstRpm: number;
    }
  /** A pitch that leaned on the legs; `amount` is the credit lost, 0 to 1. */
  | {
      readonly code: 'overloaded-pitch' | 'foot-down-pitch';
      readonly pitch: number;
      readonly fromM: number;
      readonly amount: number;
    }
  /** A shift under load; `amount` is its load over steady pressure. */
  | {
      readonly code: 'heavy-shift';
      readonly fromM: number;
      readonly amount: number;
      readonly derailleur: Derailleur;
      readonly direction: ShiftDirection;
    }
  /** Seconds on a crossed chain from a place on. */
  | { readonly code: 'crossed'; readonly fromM: number; readonly toM: number; readonly amount: number }
  /** `amount` shifts where the reference needed `needed`. */
  | { readonly code: 'many-shifts'; readonly amount: number; readonly needed: number }
  /** A shift undone within two seconds. */
  | { readonly code: 'undone'; readonly fromM: number; readonly amount: number };

/** One mark: 0 to 100, or null where the ride gave nothing to judge. */
export interface Mark {
  readonly value: number | null;
  readonly weight: number;
  /** The most expensive first. */
  readonly reasons: readonly Reason[];
}

export type Marks = { readonly [name in MarkName]: Mark };

export type Timing = 'too-early' | 'about-right' | 'too-late';

/** How a pitch went. Distances before the foot are positive. */
export interface PitchReport {
  readonly index: number;
  readonly footM: number;
  readonly endM: number;
  readonly steepestRatio: number;
  /** False where nothing had to be done from the player's own state. */
  readonly asked: boolean;
  /** 0 to 1. */
  readonly credit: number;
  readonly timing: Timing;
  /** Overload of the ride, of never shifting and of the reference, from the same state (load × metres). */
  readonly overloadM: number;
  readonly overloadNoneM: number;
  readonly overloadReferenceM: number;
  /** Gear steps easier that the reference makes for this pitch, and how many of them before the foot. */
  readonly stepsNeeded: number;
  readonly referenceStepsBeforeFoot: number;
  readonly stepsMade: number;
  readonly stepsBeforeFoot: number;
  /** Where the first easier shift began; null without one. */
  readonly firstShiftBeforeFootM: number | null;
  readonly referenceFirstShiftBeforeFootM: number | null;
  readonly worstCadenceRpm: number;
  readonly referenceWorstCadenceRpm: number;
  readonly footDown: boolean;
}

/** One chain movement as the debrief shows it. */
export interface ShiftReport {
  readonly derailleur: Derailleur;
  readonly direction: ShiftDirection;
  readonly fromIndex: number;
  readonly toIndex: number;
  readonly startedAtM: number;
  readonly distanceM: number;
  readonly timeS: number;
  readonly durationS: number;
  readonly load: number;
  readonly kind: 'clean' | 'fair' | 'heavy';
}

/** The three things said after a ride, as codes with numbers. */
export interface Verdict {
  readonly well: { readonly code: MarkName | 'finished'; readonly value: number };
  readonly change:
    | {
        readonly code: 'late-pitch' | 'early-pitch' | 'foot-down';
        readonly pitch: number;
        /** Steps easier that the reference made, and how many of them before the foot. */
        readonly steps: number;
        readonly stepsBeforeFoot: number;
        /** Where the reference began (m before the foot). */
        readonly beforeFootM: number;
      }
    | { readonly code: 'ease'; readonly heavy: number; readonly shifts: number }
    | { readonly code: 'slow-legs' | 'fast-legs'; readonly seconds: number; readonly atM: number }
    | { readonly code: 'crossed'; readonly seconds: number; readonly atM: number }
    | { readonly code: 'fidget'; readonly shifts: number; readonly needed: number }
    | { readonly code: 'nothing' };
  readonly next: { readonly code: 'again' | 'onwards' | 'easier-level'; readonly total: number };
}

/** Everything the debrief needs. Plain data. */
export interface RideReport {
  readonly marks: Marks;
  /** 0 to 100. */
  readonly total: number;
  readonly passed: boolean;
  readonly finishedS: number;
  readonly referenceS: number;
  readonly pitches: readonly PitchReport[];
  readonly shifts: readonly ShiftReport[];
  readonly shiftCount: number;
  readonly referenceShiftCount: number;
  readonly footDowns: number;
  readonly chainDrops: number;
  readonly linesMissed: number;
  /** Index of the pitch to guess about, or null without pitches that asked anything. */
  readonly guessPitch: number | null;
  readonly verdict: Verdict;
}
