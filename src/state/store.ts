/** What pages are drawn from, and everything that can happen to it, as plain data. What becomes of it is said in `reduce.ts`. */
import type { JudgedRide, KeptResult, RideResult, UnmarkedRide } from '../core/coach/results.ts';
import type { Level } from '../core/level/schema.ts';
import type { KeyAction, Settings } from '../core/settings/settings.ts';
import type { Address, View } from './address.ts';
import type { AfterRide } from './afterRide.ts';
import type { FirstStepShown } from './firstSteps.ts';
import type { GroupTurn } from './groupTurn.ts';
import type { RidePhaseShown } from './ridePlaces.ts';
import type { TroubleShown, UnfinishedRide } from './unfinished.ts';

export interface RideShown {
  readonly level: Level;
  /** How much steeper (positive) or gentler than drawn, after how the last rides went. */
  readonly difficultyStep: number;
  /** Set while a finished ride is watched again: from where. */
  readonly watchFromM: number | null;
  /** Set while a ride that broke off is ridden on. */
  readonly goesOn: UnfinishedRide | null;
  /** Set while somebody of a group rides their turn. */
  readonly group: GroupTurn | null;
  /** Grows with every attempt, so that "ride again" is another ride. */
  readonly attempt: number;
  readonly phase: RidePhaseShown;
  /** Seconds left before the pedals turn, or null. */
  readonly countdownS: number | null;
  /** Why the ride cannot begin. */
  readonly failed: RideFailure | null;
  /** Set while somebody does the first steps with the levers. */
  readonly firstSteps: FirstStepShown | null;
}

/** A part of the game could not be fetched; the browser draws nothing; the ride cannot be built. */
export type RideFailure = 'not-fetched' | 'no-canvas' | 'broken';

type DialogName = 'settings' | 'cautions';

/** Everything pages are drawn from. */
export interface State {
  readonly view: View;
  /** What stands behind the page's name in the address. */
  readonly rest: string;
  readonly levels: readonly Level[];
  /** Levels made or imported on this device, last saved first. */
  readonly ownLevels: readonly Level[];
  /** The level that is being tried from the level bench; never kept. */
  readonly trial: Level | null;
  readonly settings: Settings;
  readonly cautionsSeen: boolean;
  readonly dialog: DialogName | null;
  /** What stands behind `#ride/` for the ride that waits until the cautions have been read. */
  readonly waitingRest: string | null;
  /** The action whose new key is being asked for. */
  readonly keyAsked: KeyAction | null;
  readonly ride: RideShown | null;
  /** On roads for play the friend rides now, and whoever rode before waits. */
  readonly friendRides: boolean;
  readonly last: AfterRide | null;
  /** Results kept on this device, newest first. */
  readonly results: readonly KeptResult[];
  /** Rides that are kept without marks, newest first. */
  readonly unmarked: readonly UnmarkedRide[];
  /** Rides that broke off and can be ridden on, the last one first. */
  readonly unfinished: readonly UnfinishedRide[];
  /** Something went wrong that a person should know of. */
  readonly trouble: TroubleShown | null;
  readonly doneIds: readonly string[];
  /** Something about the keeping a person should know, as a code; null while all is well. */
  readonly keeping: string | null;
  /** A newer version of the game is on this device and waits. */
  readonly newer: boolean;
}

export type Action =
  | { readonly kind: 'address'; readonly address: Address }
  /** `rest` is what stands behind `#ride/`: a level's id, a check ride, a free ride. */
  | { readonly kind: 'ask-ride'; readonly rest: string }
  /** A second child takes over and rides this road. */
  | { readonly kind: 'take-over'; readonly rest: string }
  /** Asked for when the cautions have been read; before them there is no ride, and none waits. */
  | { readonly kind: 'ride-turn'; readonly turn: GroupTurn }
  | { readonly kind: 'try-level'; readonly level: Level }
  | { readonly kind: 'go-on'; readonly ride: UnfinishedRide }
  | { readonly kind: 'watch'; readonly fromM: number }
  /** The debrief of a ride that was judged elsewhere. */
  | { readonly kind: 'look-at'; readonly ride: JudgedRide }
  | { readonly kind: 'accept-cautions' }
  | { readonly kind: 'open-dialog'; readonly dialog: DialogName }
  | { readonly kind: 'close-dialog' }
  | { readonly kind: 'set'; readonly settings: Partial<Settings> }
  | { readonly kind: 'choose-bike'; readonly bike: Settings['bike'] }
  | { readonly kind: 'choose-rider'; readonly rider: Settings['rider'] }
  | { readonly kind: 'ask-key'; readonly action: KeyAction | null }
  | { readonly kind: 'set-key'; readonly action: KeyAction; readonly code: string }
  /** What the ride on the screen shows of itself. */
  | {
      readonly kind: 'ride';
      readonly shows: Partial<Pick<RideShown, 'phase' | 'countdownS' | 'failed' | 'firstSteps'>>;
    }
  | { readonly kind: 'ride-finished'; readonly result: RideResult }
  /** Something became of the ride that is being debriefed. */
  | {
      readonly kind: 'after-ride';
      readonly recording: RideResult['recording'];
      readonly change: Partial<AfterRide>;
    }
  | {
      readonly kind: 'results';
      readonly results: readonly KeptResult[];
      readonly unmarked: readonly UnmarkedRide[];
    }
  /** Whoever keeps, fetches or watches something has found out. */
  | {
      readonly kind: 'found';
      readonly found: Partial<
        Pick<State, 'levels' | 'ownLevels' | 'unfinished' | 'trouble' | 'keeping' | 'newer'>
      >;
    }
  | { readonly kind: 'restore'; readonly settings: Settings; readonly cautionsSeen: boolean }
  /** Everything was deleted: choices are as on the first visit, and nothing was ridden here. */
  | { readonly kind: 'forget'; readonly settings: Settings };

export type Send = (action: Action) => void;
