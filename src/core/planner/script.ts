/**
 * A ride written down as manoeuvres: at this place, into that gear. Ridden like a practised person rides: ease,
 * push the lever, let the chain settle, press on. What the plan found is written down so, and can then be improved.
 */
import { brakeForLine } from '../ride/pilot.ts';
import type { Controller } from '../ride/run.ts';
import type { RideCommand, RideState, RideWorld } from '../ride/types.ts';

/** Into a gear (indices from the smallest ring and sprocket), begun where the road is `atM` long. */
export interface Manoeuvre {
  readonly atM: number;
  readonly ringIndex: number;
  readonly sprocketIndex: number;
}

/** Pedals are eased this long before the lever is pushed (s). */
const EASE_BEFORE_S = 0.25;
/** After a manoeuvre the legs settle for so long before the next (s). */
const SETTLE_S = 0.3;
/** Easing ends at the latest after so long, even where the chain still waits (s). */
const LONGEST_MANOEUVRE_S = 6;
/** One push of the lever sweeps up to so many sprockets towards easier. */
const SWEEP = 3;

/** Where a driver is in its script; plain data, so that a ride can be taken up again from the middle. */
export interface ScriptPlace {
  /** Manoeuvres begun so far. */
  next: number;
  /** Tick from which on the lever is due in the manoeuvre that is going on, or -1. */
  pushTick: number;
  pushed: boolean;
  restUntilTick: number;
}

/** The place before the first manoeuvre. */
export function scriptStart(): ScriptPlace {
  return { next: 0, pushTick: -1, pushed: false, restUntilTick: 0 };
}

/** Told when a manoeuvre begins: the state it begins from and how far the chain moves. */
type OnManoeuvre = (state: RideState, rearSteps: number, ringSteps: number) => void;

/** A controller that rides a script, from a place in it. The place is changed as the ride goes on. */
export function scriptDriver(
  world: RideWorld,
  script: readonly Manoeuvre[],
  place: ScriptPlace = scriptStart(),
  onManoeuvre: OnManoeuvre = () => undefined,
): Controller {
  const brake = brakeForLine(world);
  const easeTicks = Math.round(EASE_BEFORE_S / world.tickS);
  const settleTicks = Math.round(SETTLE_S / world.tickS);
  const longestTicks = Math.round(LONGEST_MANOEUVRE_S / world.tickS);
  return (state) => {
    const braked = brake(state);
    if (place.pushTick >= 0) {
      if (state.tick < place.pushTick) return braked;
      const going = script[place.next - 1] as Manoeuvre;
      if (!place.pushed) {
        place.pushed = true;
        return [...braked, ...pushesTo(state, going)];
      }
      if (isBusy(state) && state.tick < place.pushTick + longestTicks) return braked;
      place.pushTick = -1;
      place.restUntilTick = state.tick + settleTicks;
      return [...braked, { kind: 'pressure', pressure: 'steady' }];
    }
    const due = script[place.next];
    if (due === undefined || state.distanceM < due.atM) return braked;
    const braking = state.braking || braked.length > 0;
    if (state.phase !== 'riding' || braking || state.startingUp || isBusy(state)) return braked;
    if (state.tick < place.restUntilTick) return braked;
    place.next += 1;
    const rearSteps = due.sprocketIndex - state.sprocketIndex;
    const ringSteps = due.ringIndex - state.ringIndex;
    if (rearSteps === 0 && ringSteps === 0) return braked;
    onManoeuvre(state, rearSteps, ringSteps);
    place.pushTick = state.tick + easeTicks;
    place.pushed = false;
    return [...braked, { kind: 'pressure', pressure: 'ease' }];
  };
}

/** Whether a chain movement is going on or waiting. */
export function isBusy(state: RideState): boolean {
  return state.rear !== null || state.front !== null || state.queue.length > 0;
}

/** Lever pushes from where the chain is into a gear: rings first, then sprockets; harder one click at a time. */
function pushesTo(state: RideState, to: Manoeuvre): RideCommand[] {
  const commands: RideCommand[] = [];
  const push = (derailleur: 'front' | 'rear', direction: 'easier' | 'harder', steps: number): void => {
    commands.push({ kind: 'shift', derailleur, direction, steps });
  };
  const rings = to.ringIndex - state.ringIndex;
  for (let n = 0; n < Math.abs(rings); n += 1) push('front', rings > 0 ? 'harder' : 'easier', 1);
  const sprockets = to.sprocketIndex - state.sprocketIndex;
  for (let left = sprockets; left > 0; left -= SWEEP) push('rear', 'easier', Math.min(SWEEP, left));
  for (let n = 0; n < -sprockets; n += 1) push('rear', 'harder', 1);
  return commands;
}
