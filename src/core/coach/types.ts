/**
 * What a judged ride is, in codes and numbers. Words for all of it are found by the shells.
 */
import type { ShiftDone } from '../ride/trace.ts';
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
  /** Seconds of coasting where the best ride pedals. */
  | {
      readonly code: 'coasted';
      readonly fromM: number;
      readonly toM: number;
      readonly amount: number;
      /** With a hub, which wants the legs to rest for a moment, but only for one. */
      readonly hub?: true;
    }
  /** A pitch that leaned on the legs, or that one was ready for too soon; `amount` is the credit lost, 0 to 1. */
  | {
      readonly code: 'overloaded-pitch' | 'early-pitch' | 'foot-down-pitch';
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
      /** A hub that was pushed into its gear. */
      readonly hub?: true;
      /** A crank motor still pulled. */
      readonly motor?: true;
    }
  /** A chain that was asked to move while the legs rested. */
  | { readonly code: 'waited-shift'; readonly fromM: number; readonly amount: number }
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
  /** False where the best ride had nothing to do. */
  readonly asked: boolean;
  /** 0 to 1. */
  readonly credit: number;
  readonly timing: Timing;
  /** Where it is about right, the way in which it was not quite; otherwise the same as `timing`. */
  readonly tendency: Timing;
  /** What being late (the legs strained) and being early lost, 0 to 1 each; the greater one counts. */
  readonly late: number;
  readonly early: number;
  /** What of it the greatest part was: where shifts lay, legs that spun, arriving slowly, freewheeling. */
  readonly earlyBy: 'shifts' | 'spun' | 'slow' | 'coasted';
  /** How much before the best ride half of the easing was done (m); negative is later. */
  readonly earlyM: number;
  /** Share of the judged way that was pressed. */
  readonly pressed: number;
  /** Gear at the end of the judged way over the best ride's: above 1 is harder. */
  readonly gearRatio: number;
  /** Within sight of the pitch the gear was made harder and not easier, where the best ride made it no harder. */
  readonly wentHarder: boolean;
  /** How much of the best ride's easing (in ratio) was made. */
  readonly easedShare: number;
  /** Overload of the ride, of the best ride had it not shifted, and of the best ride (load × metres). */
  readonly overloadM: number;
  readonly overloadNoneM: number;
  readonly overloadReferenceM: number;
  /** Gear steps easier that the reference makes for this pitch, and how many of them before the foot. */
  readonly referenceSteps: number;
  readonly referenceStepsBeforeFoot: number;
  readonly stepsMade: number;
  readonly stepsBeforeFoot: number;
  /** Where the first easier shift began; null without one. */
  readonly firstShiftBeforeFootM: number | null;
  readonly referenceFirstShiftBeforeFootM: number | null;
  /** The slowest legs on the whole pitch, from its foot to its end. */
  readonly worstCadenceRpm: number;
  readonly referenceWorstCadenceRpm: number;
  readonly footDown: boolean;
}

/** One chain movement as the debrief shows it: what the ride says of it, and what a coach calls it. */
export interface ShiftReport extends Omit<ShiftDone, 'kind' | 'tick'> {
  readonly timeS: number;
  readonly kind: 'clean' | 'fair' | 'heavy';
}

/** How somebody rides all along beside the best ride. */
export interface RidingHabits {
  /** Gear away from hills over the best ride's: 1 and more where it is harder, 1 and less where it is easier. */
  readonly harderBy: number;
  readonly easierBy: number;
  /** More than in the best ride: seconds of resting legs, of legs that push softly, and of softness for shifts. */
  readonly restedS: number;
  readonly softS: number;
  readonly shiftingS: number;
}

/** The three things said after a ride, as codes with numbers. */
export interface Verdict {
  readonly well: { readonly code: MarkName | 'finished'; readonly value: number };
  readonly change:
    | {
        readonly code: 'late-pitch' | 'early-pitch' | 'few-steps' | 'wrong-way' | 'pushed' | 'foot-down';
        readonly pitch: number;
        /** It was nearly right: the card of the pitch says so, too. */
        readonly slightly: boolean;
        /** Steps easier that the reference made, and how many of them before the foot. */
        readonly steps: number;
        /** Steps easier that were made. */
        readonly made: number;
        readonly stepsBeforeFoot: number;
        /** Where the reference began (m before the foot). */
        readonly beforeFootM: number;
      }
    /**
     * Shifts under load; in a hub (`hub`) the habit of pedalling on through a shift, which only a chain wants; with
     * `motor` most of them made while a crank motor still pulled, and only those counted.
     */
    | {
        readonly code: 'ease';
        readonly heavy: number;
        readonly shifts: number;
        readonly hub?: true;
        readonly motor?: true;
      }
    /** A chain asked to move while the legs rested, as a hub would: it waited and then moved under load. */
    | { readonly code: 'stood-still'; readonly waited: number; readonly shifts: number }
    | {
        readonly code: 'slow-legs' | 'fast-legs' | 'coasted';
        readonly seconds: number;
        readonly atM: number;
        readonly hub?: true;
      }
    | { readonly code: 'crossed'; readonly seconds: number; readonly atM: number }
    | { readonly code: 'fidget'; readonly shifts: number; readonly needed: number }
    | { readonly code: 'dawdle'; readonly timesAsLong: number }
    | { readonly code: 'nothing' };
  readonly next: { readonly code: 'again' | 'onwards' | 'easier-level'; readonly total: number };
}

/** What keeps the total below its marks, or a ride from passing, with the numbers a person is told. */
export type Hold =
  /** The total may be no higher than `most`, because of this mark. */
  | { readonly code: 'weakest'; readonly mark: MarkName; readonly most: number }
  /** Time over that of the best ride, and the share of the total that it leaves (0 to 1). */
  | { readonly code: 'pace'; readonly timesAsLong: number; readonly share: number }
  /** Not passed without so much in this mark; `lesson` is true if the level is about it. */
  | {
      readonly code: 'mark-missing';
      readonly mark: MarkName;
      readonly atLeast: number;
      readonly lesson: boolean;
    };

/** Everything the debrief needs. Plain data. */
export interface RideReport {
  readonly marks: Marks;
  /** 0 to 100. */
  readonly total: number;
  readonly passed: boolean;
  /** What holds the total down or the pass back; empty where the marks say it all. */
  readonly holds: readonly Hold[];
  /** Time over that of the best ride, and the share of the total it leaves (0 to 1). */
  readonly pace: { readonly ratio: number; readonly credit: number };
  readonly finishedS: number;
  readonly referenceS: number;
  readonly pitches: readonly PitchReport[];
  readonly shifts: readonly ShiftReport[];
  /** Changes of gear as the rider meant them: movements that belong together count once. */
  readonly manoeuvreCount: number;
  readonly footDowns: number;
  readonly chainDrops: number;
  /** Index of the pitch to guess about, or null without pitches that asked anything, or without a shift. */
  readonly guessPitch: number | null;
  readonly verdict: Verdict;
}
