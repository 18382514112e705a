/** The first state and the one reducer that changes it. Pure; who holds the state and tells listeners is `createStore.ts`. */
import type { KeptResult, UnmarkedRide } from '../core/coach/results.ts';
import type { Level } from '../core/level/schema.ts';
import { defaultSettings, type Keys, type Settings, withBike, withKey } from '../core/settings/settings.ts';
import { parseAddress } from './address.ts';
import { TRIAL } from './rideLevel.ts';
import { acceptCautions, askRide, finishRide, goOn, goTo, lookAt, rideTurn, watch } from './rideState.ts';
import type { Action, State } from './store.ts';

const NOTHING_RIDDEN = { results: [], unmarked: [], unfinished: [], doneIds: [] } as const;

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
    ...NOTHING_RIDDEN,
    trouble: null,
    keeping: null,
    newer: false,
  };
  return reduce(empty, { kind: 'address', address: parseAddress(hash) });
}

export function reduce(state: State, action: Action): State {
  const { settings } = state;
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
    case 'go-on':
      return goOn(state, action.ride);
    case 'watch':
      return watch(state, action.fromM);
    case 'look-at':
      return lookAt(state, action.ride);
    case 'accept-cautions':
      return acceptCautions(state);
    case 'open-dialog':
      return { ...state, dialog: action.dialog };
    case 'close-dialog':
      return { ...state, dialog: null, waitingRest: null, keyAsked: null };
    case 'set':
      return { ...state, settings: { ...settings, ...action.settings } };
    case 'choose-bike':
      return { ...state, settings: withBike(settings, action.bike) };
    case 'choose-rider':
      return { ...state, settings: { ...settings, rider: action.rider, riderChosen: true } };
    case 'ask-key':
      return { ...state, keyAsked: action.action };
    case 'set-key': {
      const keys = withKey(settings.keys, action.action, action.code);
      return { ...state, keyAsked: null, settings: { ...settings, keys } };
    }
    case 'ride':
      return state.ride === null ? state : { ...state, ride: { ...state.ride, ...action.shows } };
    case 'ride-finished':
      return finishRide(state, action.result);
    case 'after-ride':
      return state.last === null || state.last.recording !== action.recording
        ? state
        : { ...state, last: { ...state.last, ...action.change } };
    case 'results':
      return withResults(state, action.results, action.unmarked);
    case 'found':
      return { ...state, ...action.found };
    case 'restore':
      return {
        ...state,
        settings: action.settings,
        cautionsSeen: state.cautionsSeen || action.cautionsSeen,
      };
    case 'forget':
      return { ...state, settings: action.settings, cautionsSeen: false, ...NOTHING_RIDDEN };
  }
}

function withResults(state: State, results: readonly KeptResult[], unmarked: readonly UnmarkedRide[]): State {
  // What a group rides on this device, or what broke off, says nothing about what its owner has done.
  const ridden = unmarked.filter(({ standing }) => standing !== 'unfinished');
  const ids = [...results, ...ridden].map(({ levelId }) => levelId);
  return { ...state, results, unmarked, doneIds: [...new Set([...state.doneIds, ...ids])] };
}
