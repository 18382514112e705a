/**
 * What riders who are no person at the controls have in common, virtual ones and the drivers of the reference ride:
 * they stop at lines, and know how feet and motor let go for a shift and when one may be made standing. When to shift is
 * theirs.
 */
import { fallsS, loadsChain } from '../model/motor.ts';
import { hasHub } from '../model/shifters.ts';
import { STOP_ZONE_M } from './happenings.ts';
import { BRAKE_MPS2 } from './step.ts';
import type { RideCommand, RideState, RideWorld } from './types.ts';

/** Where the wheel should come to rest before a line (m). */
export const AIM_BEFORE_LINE_M = 1.2;
/** Slower than this in the stop zone there is no reason to roll on (m/s). */
const CREEP_MPS = 1;

/** Slower legs than this push so hard that even soft feet hold a hub in its gear (rpm). */
const HUB_COASTS_BELOW_RPM = 55;

/** Distance that firm braking needs from a speed (m). */
export function brakingDistanceM(speedMps: number): number {
  return (speedMps * speedMps) / (2 * BRAKE_MPS2);
}

/** Fastest speed from which firm braking still stops before a line so far ahead (m/s). */
export function brakingSpeedMps(leftM: number): number {
  return Math.sqrt(2 * BRAKE_MPS2 * Math.max(0, leftM - AIM_BEFORE_LINE_M));
}

/** Whether the gear can be changed while one waits at a line: in a hub it can, a chain must run. */
export function mayShiftStanding({ machine }: RideWorld, { phase }: RideState): boolean {
  return phase === 'standing' && hasHub(machine.bike);
}

/** How practised feet let go for a shift; a hub at slow legs wants the pressure right off. */
export function softFeet({ machine }: RideWorld, { cadenceRpm }: RideState): 'ease' | 'coast' {
  return hasHub(machine.bike) && cadenceRpm < HUB_COASTS_BELOW_RPM ? 'coast' : 'ease';
}

/** After so many of its lags a motor has let go as far as a shift needs it. */
const LAGS_TO_LET_GO = 4 / 3;

/** How much longer than elsewhere practised feet ease before the lever moves, for a motor that pulls on the chain (s). */
export function waitForMotorS({ machine: { bike } }: RideWorld): number {
  return bike.motor !== undefined && loadsChain(bike) ? LAGS_TO_LET_GO * fallsS(bike.motor) : 0;
}

/** Brakes in time for the next line and lets go when the wait is over. */
export function brakeForLine(world: RideWorld): (state: RideState) => readonly RideCommand[] {
  const none: readonly RideCommand[] = [];
  const on: readonly RideCommand[] = [{ kind: 'brake', on: true }];
  const off: readonly RideCommand[] = [{ kind: 'brake', on: false }];
  return (state) => {
    const lineM = world.course.stopLinesM[state.nextStopIndex];
    const leftM = lineM === undefined ? Number.POSITIVE_INFINITY : lineM - state.distanceM;
    const due =
      state.phase === 'riding' &&
      (brakingDistanceM(state.speedMps) >= leftM - AIM_BEFORE_LINE_M ||
        (leftM < STOP_ZONE_M && state.speedMps <= CREEP_MPS));
    if (due && !state.braking) return on;
    if (!due && state.braking) return off;
    return none;
  };
}
