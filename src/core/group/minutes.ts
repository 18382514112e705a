/**
 * How long a plan takes: every road is ridden once by a virtual rider on the plan's bike, and handing over is added to
 * every turn. Riders of middling skill and better differ by two in a hundred on these roads, and those who always shift too
 * late and push through by up to eleven, so one rider of middling skill does.
 */
import { courseOfLevel } from '../level/build.ts';
import type { Level } from '../level/schema.ts';
import { bikeById, riderById } from '../model/presets.ts';
import type { Bike, Rider } from '../model/types.ts';
import { rideThrough } from '../ride/run.ts';
import { TICK_S } from '../ride/clock.ts';
import { buildRideWorld } from '../ride/world.ts';
import { habitsForSkill, virtualRider } from '../virtual/riders.ts';
import type { ClinicPlan } from './plan.ts';
import { levelOfRide } from './turn.ts';

/** From the end of one ride to the first turn of the pedals in the next: the line is read, the device handed on (s; common practice, no source). */
const HAND_OVER_S = 30;
/** Longer than this one device is not handed round without people getting cold or bored (min; common practice, no source). */
export const LONGEST_ROUND_MIN = 60;
/** Minutes are said in fives where that is no more than five in a hundred, else one by one. */
const ROUND_FROM_MIN = 45;
const ROUND_MIN = 5;
/** Stands in for a bike that is only set on the device. */
const USUAL_BIKE = 'trekking-3x8';
const USUAL_RIDER = 'adult-weekly';
const USUAL_CHILD = 'child-9';

/** Seconds a road takes on a bike. */
export function rideSeconds(level: Level, bike: Bike, rider: Rider): number {
  const world = buildRideWorld(courseOfLevel(level), bike, rider);
  return rideThrough(world, virtualRider(world, habitsForSkill(0.5), 1)).state().tick * TICK_S;
}

/** Seconds of each ride of a plan, in its order; null for one whose level is not here. */
export function planRideSeconds(
  plan: ClinicPlan,
  find: (levelId: string) => Level | undefined,
): readonly (number | null)[] {
  const bike = bikeById(plan.bike) ?? bikeById(USUAL_BIKE);
  const usual = bike?.id.startsWith('kids') === true ? USUAL_CHILD : USUAL_RIDER;
  const rider = riderById(plan.riderId) ?? riderById(usual);
  return plan.rides.map((ride) => {
    const level = levelOfRide(ride, plan.seed, find);
    return level === null || bike === undefined || rider === undefined
      ? null
      : rideSeconds(level, bike, rider);
  });
}

/** Seconds of a whole plan: everybody rides every road so often, shared among so many devices. */
export function planSeconds(
  rideS: readonly number[],
  of: { readonly riders: number; readonly attempts: number; readonly devices?: number },
): number {
  const each = rideS.reduce((sum, seconds) => sum + seconds + HAND_OVER_S, 0) * of.attempts;
  return each * Math.ceil(of.riders / (of.devices ?? 1));
}

/** Minutes as they are said: 7, 19, 42, 50. */
export function minutesSaid(seconds: number): number {
  const minutes = Math.max(1, Math.round(seconds / 60));
  return minutes < ROUND_FROM_MIN ? minutes : Math.round(seconds / 60 / ROUND_MIN) * ROUND_MIN;
}

/** A way to make a round fit, with the minutes it then takes. */
export type Shorter =
  | { readonly kind: 'attempts'; readonly attempts: number; readonly seconds: number }
  /** Only the shortest of the roads. */
  | { readonly kind: 'road'; readonly rideIndex: number; readonly seconds: number }
  | { readonly kind: 'devices'; readonly devices: number; readonly seconds: number };

/** Ways to make a plan that is too long fit, each alone, where it can; nothing for one that fits. */
export function shorterWays(rideS: readonly number[], riders: number, attempts: number): readonly Shorter[] {
  const most = LONGEST_ROUND_MIN * 60;
  if (planSeconds(rideS, { riders, attempts }) <= most) return [];
  const ways: Shorter[] = [];
  const fewer = downFrom(attempts - 1).find((n) => planSeconds(rideS, { riders, attempts: n }) <= most);
  if (attempts > 1) {
    const n = fewer ?? 1;
    ways.push({ kind: 'attempts', attempts: n, seconds: planSeconds(rideS, { riders, attempts: n }) });
  }
  if (rideS.length > 1) {
    const rideIndex = rideS.indexOf(Math.min(...rideS));
    const seconds = planSeconds([rideS[rideIndex] ?? 0], { riders, attempts });
    ways.push({ kind: 'road', rideIndex, seconds });
  }
  const devices = downFrom(riders)
    .toReversed()
    .find((n) => planSeconds(rideS, { riders, attempts, devices: n }) <= most);
  if (devices !== undefined)
    ways.push({ kind: 'devices', devices, seconds: planSeconds(rideS, { riders, attempts, devices }) });
  return ways;
}

/** 3, 2, 1. */
function downFrom(n: number): number[] {
  return Array.from({ length: Math.max(0, n) }, (_, i) => n - i);
}
