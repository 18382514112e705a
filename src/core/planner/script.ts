/**
 * A ride written down as manoeuvres: at this place, into that gear. Ridden like a practised person rides: ease,
 * push the lever, let the chain settle, press on. What the plan found is written down so, and can then be improved.
 */
import { pushesFor, samePlace, type Steps, stepsBetween } from '../model/transmission.ts';
import type { GearPlace } from '../model/types.ts';
import { brakeForLine, mayShiftStanding, softFeet, waitForMotorS } from '../ride/pilot.ts';
import type { Controller } from '../ride/run.ts';
import { isShifting } from '../ride/step.ts';
import type { RideCommand, RideWorld } from '../ride/types.ts';

/** Into a gear, begun where the road is `atM` long. */
export interface Manoeuvre extends GearPlace {
  readonly atM: number;
}

/** Pedals are eased this long before the lever is pushed (s). */
export const EASE_BEFORE_S = 0.25;
/** After a manoeuvre the legs settle for so long before the next (s). */
export const SETTLE_S = 0.3;
/** Easing ends at the latest after so long, even where the chain still waits (s). */
export const LONGEST_MANOEUVRE_S = 6;

/** Where a driver is in its script, before the first manoeuvre; plain data, so that a ride can be taken up again from the middle. */
export function scriptStart() {
  return {
    /** Manoeuvres begun so far. */
    next: 0,
    /** Tick from which on the lever is due in the manoeuvre that is going on, or -1. */
    pushTick: -1,
    pushed: false,
    restUntilTick: 0,
  };
}
export type ScriptPlace = ReturnType<typeof scriptStart>;

/** Told when a manoeuvre begins: how far the chain is to move. */
type OnManoeuvre = (steps: Steps) => void;

/** A controller that rides a script, from a place in it. The place is changed as the ride goes on. */
export function scriptDriver(
  world: RideWorld,
  script: readonly Manoeuvre[],
  place: ScriptPlace = scriptStart(),
  onManoeuvre: OnManoeuvre = () => undefined,
): Controller {
  const brake = brakeForLine(world);
  const easeTicks = Math.round((EASE_BEFORE_S + waitForMotorS(world)) / world.tickS);
  const settleTicks = Math.round(SETTLE_S / world.tickS);
  const longestTicks = Math.round(LONGEST_MANOEUVRE_S / world.tickS);
  return (state) => {
    const braked = brake(state);
    if (place.pushTick >= 0) {
      if (state.tick < place.pushTick) return braked;
      const going = script[place.next - 1] as Manoeuvre;
      if (!place.pushed) {
        place.pushed = true;
        const pushes = pushesFor(stepsBetween(state, going));
        return [...braked, ...pushes.map((push): RideCommand => ({ kind: 'shift', ...push }))];
      }
      if (isShifting(state) && state.tick < place.pushTick + longestTicks) return braked;
      place.pushTick = -1;
      place.restUntilTick = state.tick + settleTicks;
      return [...braked, { kind: 'pressure', pressure: 'steady' }];
    }
    const due = script[place.next];
    if (due === undefined || state.distanceM < due.atM) return braked;
    const braking = state.braking || braked.length > 0;
    const ready = state.phase === 'riding' || mayShiftStanding(world, state);
    if (!ready || braking || state.startingUp || isShifting(state)) return braked;
    if (state.tick < place.restUntilTick) return braked;
    place.next += 1;
    if (samePlace(state, due)) return braked;
    const steps = stepsBetween(state, due);
    place.pushTick = state.tick + easeTicks;
    onManoeuvre(steps);
    place.pushed = false;
    return [...braked, { kind: 'pressure', pressure: softFeet(world, state) }];
  };
}

/** Steps behind where no ring is changed with them, or none. */
export const rearAlone = ({ rearSteps, ringSteps }: Steps): number => (ringSteps === 0 ? rearSteps : 0);
