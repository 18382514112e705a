/**
 * The state of all pages and the one reducer that changes it: pure data and pure functions. `createStore.ts` holds it
 * and tells listeners; drawing, address bar, engine and keeping are done by those.
 */
import type { JudgedRide, KeptResult, RideResult, UnmarkedRide } from '../core/coach/results.ts';
import type { Level } from '../core/level/schema.ts';
import { type Address, parseAddress, type View } from './address.ts';
import { type AfterRide, justFinished } from './afterRide.ts';
import { isFreeRide } from '../core/level/freeRide.ts';
import { type GroupTurn, placeOfRest, restOfTurn, sessionPlace } from './groupTurn.ts';
import type { FirstStepShown } from './firstSteps.ts';
import { rideRoad, TRIAL } from './rideLevel.ts';
import type { TroubleShown, UnfinishedRide } from './unfinished.ts';
import type { RidePhaseShown } from './ridePlaces.ts';
import {
  defaultSettings,
  type KeyAction,
  type Keys,
  type Settings,
  withBike,
  withKey,
} from '../core/settings/settings.ts';

/** A ride that is on the screen. */
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
  /** The bundled levels in another language. */
  | { readonly kind: 'levels'; readonly levels: readonly Level[] }
  | { readonly kind: 'own-levels'; readonly levels: readonly Level[] }
  | { readonly kind: 'accept-cautions' }
  | { readonly kind: 'open-dialog'; readonly dialog: DialogName }
  | { readonly kind: 'close-dialog' }
  | { readonly kind: 'set'; readonly settings: Partial<Settings> }
  | { readonly kind: 'choose-bike'; readonly bike: Settings['bike'] }
  | { readonly kind: 'choose-rider'; readonly rider: Settings['rider'] }
  | { readonly kind: 'ask-key'; readonly action: KeyAction | null }
  | { readonly kind: 'set-key'; readonly action: KeyAction; readonly code: string }
  | { readonly kind: 'ride-phase'; readonly phase: RidePhaseShown; readonly countdownS: number | null }
  | { readonly kind: 'ride-failed'; readonly why: RideFailure }
  | { readonly kind: 'first-steps'; readonly shown: FirstStepShown | null }
  | { readonly kind: 'ride-finished'; readonly result: RideResult }
  /** Something became of the ride that is being debriefed. */
  | {
      readonly kind: 'after-ride';
      readonly recording: RideResult['recording'];
      readonly change: Partial<AfterRide>;
    }
  /** The debrief of a ride that was judged elsewhere. */
  | { readonly kind: 'look-at'; readonly ride: JudgedRide }
  | { readonly kind: 'watch'; readonly fromM: number }
  | {
      readonly kind: 'results';
      readonly results: readonly KeptResult[];
      readonly unmarked: readonly UnmarkedRide[];
    }
  | { readonly kind: 'unfinished'; readonly rides: readonly UnfinishedRide[] }
  | { readonly kind: 'go-on'; readonly ride: UnfinishedRide }
  | { readonly kind: 'trouble'; readonly trouble: TroubleShown | null }
  | { readonly kind: 'keeping'; readonly code: string | null }
  | { readonly kind: 'newer-version' }
  | { readonly kind: 'restore'; readonly settings: Settings; readonly cautionsSeen: boolean }
  /** Everything was deleted: choices are as on the first visit, and nothing was ridden here. */
  | { readonly kind: 'forget'; readonly settings: Settings };

export type Send = (action: Action) => void;

/** The state of a browser that opens the game at `hash`. */
export function initialState(
  levels: readonly Level[],
  keys: Keys,
  hash: string,
  given: Partial<Pick<Settings, 'units' | 'theme'>> = {},
): State {
  const empty: State = {
    view: 'start',
    rest: '',
    levels,
    ownLevels: [],
    trial: null,
    settings: defaultSettings(keys, given),
    cautionsSeen: false,
    dialog: null,
    waitingRest: null,
    keyAsked: null,
    ride: null,
    friendRides: false,
    last: null,
    results: [],
    unmarked: [],
    unfinished: [],
    trouble: null,
    doneIds: [],
    keeping: null,
    newer: false,
  };
  return reduce(empty, { kind: 'address', address: parseAddress(hash) });
}

/** The next state. Switched over completely. */
export function reduce(state: State, action: Action): State {
  switch (action.kind) {
    case 'address':
      return goTo(state, action.address);
    case 'ask-ride':
      return askRide(state, action.rest);
    case 'take-over':
      return askRide({ ...state, friendRides: !state.friendRides }, action.rest);
    case 'ride-turn':
      return rideTurn(state, action.turn);
    case 'try-level':
      return askRide({ ...state, trial: action.level }, TRIAL);
    case 'levels':
      return { ...state, levels: action.levels };
    case 'own-levels':
      return { ...state, ownLevels: action.levels };
    case 'accept-cautions':
      return acceptCautions(state);
    case 'open-dialog':
      return { ...state, dialog: action.dialog };
    case 'close-dialog':
      return { ...state, dialog: null, waitingRest: null, keyAsked: null };
    case 'set':
    case 'choose-bike':
    case 'choose-rider':
    case 'ask-key':
    case 'set-key':
      return choose(state, action);
    case 'ride-phase':
      return changeRide(state, { phase: action.phase, countdownS: action.countdownS });
    case 'ride-failed':
      return changeRide(state, { failed: action.why });
    case 'first-steps':
      return changeRide(state, { firstSteps: action.shown });
    case 'ride-finished':
      return finish(state, action.result);
    case 'after-ride':
      return state.last === null || state.last.recording !== action.recording
        ? state
        : { ...state, last: { ...state.last, ...action.change } };
    case 'look-at':
      return lookAt(state, action.ride);
    case 'watch':
      return watch(state, action.fromM);
    case 'results':
      return withResults(state, action.results, action.unmarked);
    case 'unfinished':
      return { ...state, unfinished: action.rides };
    case 'go-on':
      return goOn(state, action.ride);
    case 'trouble':
      return { ...state, trouble: action.trouble };
    case 'keeping':
      return { ...state, keeping: action.code };
    case 'newer-version':
      return { ...state, newer: true };
    case 'restore':
      return restore(state, action);
    case 'forget':
      return forget(state, action.settings);
  }
}

function forget(state: State, settings: Settings): State {
  return {
    ...state,
    settings,
    cautionsSeen: false,
    results: [],
    unmarked: [],
    unfinished: [],
    doneIds: [],
  };
}

type Choice = Extract<
  Action,
  { readonly kind: 'set' | 'choose-bike' | 'choose-rider' | 'ask-key' | 'set-key' }
>;

/** What somebody has chosen. */
function choose(state: State, action: Choice): State {
  switch (action.kind) {
    case 'set':
      return { ...state, settings: { ...state.settings, ...action.settings } };
    case 'choose-bike':
      return { ...state, settings: withBike(state.settings, action.bike) };
    case 'choose-rider':
      return { ...state, settings: { ...state.settings, rider: action.rider, riderChosen: true } };
    case 'ask-key':
      return { ...state, keyAsked: action.action };
    case 'set-key':
      return {
        ...state,
        keyAsked: null,
        settings: { ...state.settings, keys: withKey(state.settings.keys, action.action, action.code) },
      };
  }
}

function restore(state: State, { settings, cautionsSeen }: Pick<State, 'settings' | 'cautionsSeen'>): State {
  return { ...state, settings, cautionsSeen: state.cautionsSeen || cautionsSeen };
}

/** Where the state belongs in the address bar. */
export function addressOf(state: State): Address {
  return { view: state.view, rest: state.rest };
}

/** Going to the place where one already is changes nothing, or a ride would begin anew under the rider. */
function goTo(state: State, address: Address): State {
  if (address.view === 'ride')
    return state.view === 'ride' && state.rest === address.rest ? state : askRide(state, address.rest);
  if (address.view === 'debrief' && state.last === null)
    return { ...state, view: 'start', rest: '', ride: null };
  const { view, rest } = address;
  const trouble = state.trouble?.place === 'ride' ? null : state.trouble;
  return { ...state, view, rest, dialog: null, waitingRest: null, ride: null, trouble };
}

/** Starts the ride behind an address: a level's id, a check ride, a free ride. Turns of a group begin in their session. */
function askRide(state: State, rest: string): State {
  const place = placeOfRest(rest);
  if (place !== null) return goTo(state, { view: 'clinic', rest: place });
  const road = rideRoad(state, rest);
  // A link to a free ride that cannot be read is shown where another one can be made.
  if (road === null) return { ...state, view: 'levels', rest: isFreeRide(rest) ? rest : '', ride: null };
  if (!state.cautionsSeen) return { ...state, dialog: 'cautions', waitingRest: rest };
  return onTheRoad(state, rest, { level: road.level, difficultyStep: road.difficultyStep });
}

function acceptCautions(state: State): State {
  const { waitingRest } = state;
  const seen: State = { ...state, cautionsSeen: true, dialog: null, waitingRest: null };
  return waitingRest === null ? seen : askRide(seen, waitingRest);
}

function rideTurn(state: State, turn: GroupTurn): State {
  // A second tap on the same button while the ride is being loaded.
  if (state.view === 'ride' && state.ride?.phase === 'ready' && state.ride.failed === null) return state;
  if (!state.cautionsSeen) return { ...state, dialog: 'cautions' };
  const { level } = turn;
  return onTheRoad(state, restOfTurn(turn.planId), { level, group: turn });
}

/** A ride that broke off, from there on. */
function goOn(state: State, ride: UnfinishedRide): State {
  return onTheRoad(state, ride.rest, { level: ride.level, group: ride.turn, goesOn: ride });
}

/** The ride that is being debriefed, once more, from a place on. */
function watch(state: State, fromM: number): State {
  const { last } = state;
  if (last === null) return state;
  return onTheRoad(state, last.rest, { level: last.level, watchFromM: fromM });
}

/** Such a ride is not kept among the rides of whoever owns this device. */
function lookAt(state: State, { result, report, reference }: JudgedRide): State {
  const last: AfterRide = {
    ...justFinished(result),
    report,
    reference,
    share: null,
    kept: { state: 'not-saved', code: 'somebody-else', localBackup: false },
  };
  return { ...state, view: 'debrief', rest: '', dialog: null, ride: null, last };
}

function onTheRoad(
  state: State,
  rest: string,
  ride: Pick<RideShown, 'level'> &
    Partial<Pick<RideShown, 'difficultyStep' | 'watchFromM' | 'goesOn' | 'group'>>,
): State {
  const attempt = (state.ride?.attempt ?? 0) + 1;
  return {
    ...state,
    view: 'ride',
    rest,
    dialog: null,
    trouble: null,
    ride: {
      difficultyStep: 0,
      watchFromM: null,
      goesOn: null,
      group: null,
      ...ride,
      attempt,
      phase: 'ready',
      countdownS: null,
      failed: null,
      firstSteps: null,
    },
  };
}

function changeRide(state: State, change: Partial<RideShown>): State {
  return state.ride === null ? state : { ...state, ride: { ...state.ride, ...change } };
}

function finish(state: State, result: RideResult): State {
  const ride: RideShown | null =
    state.ride === null ? null : { ...state.ride, phase: 'finished', countdownS: null };
  const shown = { ...state, view: 'debrief', rest: '', dialog: null, ride } as const;
  // Watching again is not another ride.
  if (state.ride !== null && state.ride.watchFromM !== null) return shown;
  const turn = state.ride?.group ?? null;
  // What a group rides on this device says nothing about what its owner has done.
  if (turn !== null)
    return { ...shown, view: 'clinic', rest: sessionPlace(turn.planId), last: justFinished(result) };
  return {
    ...shown,
    last: justFinished(result),
    doneIds:
      result.rest === TRIAL || state.doneIds.includes(result.level.id)
        ? state.doneIds
        : [...state.doneIds, result.level.id],
  };
}

function withResults(state: State, results: readonly KeptResult[], unmarked: readonly UnmarkedRide[]): State {
  // What a group rides on this device, or what broke off, says nothing about what its owner has done.
  const ridden = unmarked.filter(({ standing }) => standing !== 'unfinished');
  const ids = [...results, ...ridden].map(({ levelId }) => levelId);
  return { ...state, results, unmarked, doneIds: [...new Set([...state.doneIds, ...ids])] };
}

/** The levers are shown once, to whoever rides a road of their own that is not marked as a check. */
export function asksFirstSteps(
  { level, watchFromM, group, goesOn }: RideShown,
  { settings, rest }: Pick<State, 'settings' | 'rest'>,
): boolean {
  const isOwnRide = watchFromM === null && group === null && goesOn === null;
  return isOwnRide && rest !== TRIAL && level.teaches !== 'check' && !settings.leversKnown;
}
