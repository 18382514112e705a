/**
 * The best ride: the plan ridden through the real step, written down as manoeuvres and then improved there. The
 * number of tries depends on the road alone, so every device finds the same ride.
 */
import { afterPush } from '../model/transmission.ts';
import type { GearPlace } from '../model/types.ts';
import { type LiveRide, rideThrough } from '../ride/run.ts';
import type { RideWorld } from '../ride/types.ts';
import { policyDriver } from './driver.ts';
import { improveInSteps } from './improve.ts';
import { knownBestRide } from './known.ts';
import { atOnce, type Policy } from './plan.ts';
import { type Manoeuvre, scriptDriver } from './script.ts';

/** Tries of the search: so many for any road and so many more for each kilometre. */
const TRIES = 300;
const TRIES_PER_KM = 400;
const SEED = 1;

/** Manoeuvres of the plan as its driver makes them. */
export function scriptOfPolicy(world: RideWorld, policy: Policy): Manoeuvre[] {
  const driver = policyDriver(world, policy);
  const script: Manoeuvre[] = [];
  let easedAtM = 0;
  rideThrough(world, (state) => {
    const commands = driver(state);
    let target: GearPlace | null = null;
    for (const command of commands) {
      if (command.kind === 'pressure' && command.pressure !== 'steady') easedAtM = state.distanceM;
      if (command.kind !== 'shift') continue;
      target = afterPush(target ?? state, command);
    }
    if (target !== null) script.push({ atM: easedAtM, ...target });
    return commands;
  });
  return script;
}

/**
 * The script of the best ride, yielding the share done (0 to 1) now and then: the one that comes with the game, or
 * the plan improved step by step.
 */
function* bestScriptInSteps(world: RideWorld, policy: Policy): Generator<number, readonly Manoeuvre[]> {
  const known = knownBestRide(world);
  if (known !== null) return known;
  const tries = Math.round(TRIES + (TRIES_PER_KM * world.course.lengthM) / 1000);
  return yield* improveInSteps(world, scriptOfPolicy(world, policy), { tries, seed: SEED });
}

/** Rides a script to its end: an ordinary ride with an ordinary recording. */
export function rideScript(world: RideWorld, script: readonly Manoeuvre[]): LiveRide {
  return rideThrough(world, scriptDriver(world, script));
}

/** The best ride on this world that was found: planned, improved and ridden, yielding the share done. Deterministic. */
export function* referenceInSteps(world: RideWorld, policy: Policy): Generator<number, LiveRide> {
  return rideScript(world, yield* bestScriptInSteps(world, policy));
}

/** The same at once. */
export function referenceRide(world: RideWorld, policy: Policy): LiveRide {
  return atOnce(referenceInSteps(world, policy));
}
