/**
 * How the state goes from page to page and from ride to ride: which address leads where, how a ride comes onto the screen,
 * and what is left of it at its finish. Pure.
 */
import type { JudgedRide, RideResult } from '../core/coach/results.ts';
import { isFreeRide } from '../core/level/freeRide.ts';
import type { Address } from './address.ts';
import { type AfterRide, justFinished } from './afterRide.ts';
import { type GroupTurn, placeOfRest, restOfTurn, sessionPlace } from './groupTurn.ts';
import { rideRoad, TRIAL } from './rideLevel.ts';
import type { RideShown, State } from './store.ts';
import type { UnfinishedRide } from './unfinished.ts';

/** Where the state belongs in the address bar. */
export function addressOf(state: State): Address {
  return { view: state.view, rest: state.rest };
}

/** Going to the place where one already is changes nothing, or a ride would begin anew under the rider. */
export function goTo(state: State, address: Address): State {
  if (address.view === 'ride')
    return state.view === 'ride' && state.rest === address.rest ? state : askRide(state, address.rest);
  if (address.view === 'debrief' && state.last === null)
    return { ...state, view: 'start', rest: '', ride: null };
  const { view, rest } = address;
  const trouble = state.trouble?.place === 'ride' ? null : state.trouble;
  return { ...state, view, rest, dialog: null, waitingRest: null, ride: null, trouble };
}

/** Starts the ride behind an address: a level's id, a check ride, a free ride. Turns of a group begin in their session. */
export function askRide(state: State, rest: string): State {
  const place = placeOfRest(rest);
  if (place !== null) return goTo(state, { view: 'clinic', rest: place });
  const road = rideRoad(state, rest);
  // A link to a free ride that cannot be read is shown where another one can be made.
  if (road === null) return { ...state, view: 'levels', rest: isFreeRide(rest) ? rest : '', ride: null };
  if (!state.cautionsSeen) return { ...state, dialog: 'cautions', waitingRest: rest };
  return onTheRoad(state, rest, { level: road.level, difficultyStep: road.difficultyStep });
}

export function acceptCautions(state: State): State {
  const { waitingRest } = state;
  const seen: State = { ...state, cautionsSeen: true, dialog: null, waitingRest: null };
  return waitingRest === null ? seen : askRide(seen, waitingRest);
}

export function rideTurn(state: State, turn: GroupTurn): State {
  // A second tap on the same button while the ride is being loaded.
  if (state.view === 'ride' && state.ride?.phase === 'ready' && state.ride.failed === null) return state;
  if (!state.cautionsSeen) return { ...state, dialog: 'cautions' };
  const { level } = turn;
  return onTheRoad(state, restOfTurn(turn.planId), { level, group: turn });
}

/** A ride that broke off, from there on. */
export function goOn(state: State, ride: UnfinishedRide): State {
  return onTheRoad(state, ride.rest, { level: ride.level, group: ride.turn, goesOn: ride });
}

/** The ride that is being debriefed, once more, from a place on. */
export function watch(state: State, fromM: number): State {
  const { last } = state;
  if (last === null) return state;
  return onTheRoad(state, last.rest, { level: last.level, watchFromM: fromM });
}

/** Such a ride is not kept among the rides of whoever owns this device. */
export function lookAt(state: State, { result, report, reference }: JudgedRide): State {
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

export function finishRide(state: State, result: RideResult): State {
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

/** The levers are shown once, to whoever rides a road of their own that is not marked as a check. */
export function asksFirstSteps(
  { level, watchFromM, group, goesOn }: RideShown,
  { settings, rest }: Pick<State, 'settings' | 'rest'>,
): boolean {
  const isOwnRide = watchFromM === null && group === null && goesOn === null;
  return isOwnRide && rest !== TRIAL && level.teaches !== 'check' && !settings.leversKnown;
}
