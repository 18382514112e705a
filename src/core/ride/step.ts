/**
 * One tick of a ride: the only place where time passes. Player, planner, virtual riders, command line and
 * tests all call `stepRide`; it is pure, and given the same state and commands gives the same bits.
 */
import type { Course } from '../course/types.ts';
import { PI } from '../math/numbers.ts';
import { wheelForceN } from '../model/drivetrain.ts';
import { cadenceAtRpm } from '../model/machine.ts';
import {
  crankTorqueNm,
  LEG_LAG_S,
  MAXIMUM_CADENCE_RPM,
  pressureTarget,
  reserveAfterJ,
} from '../model/legs.ts';
import { airForceN, bearingForceN, climbingForceN, rollingForceN } from '../model/load.ts';
import {
  CUT_OFF_MPS,
  fallsS,
  helpN,
  mostHelpN,
  offWithinM,
  RISES_S,
  startHelpN,
  wheelForcePerNm,
} from '../model/motor.ts';
import { FREE_LEGS_RPM } from '../model/shift.ts';
import { gearOf } from '../model/transmission.ts';
import { hasHub } from '../model/shifters.ts';
import type { Gear, Motor } from '../model/types.ts';
import { copyOfState, type RideDraft } from './draft.ts';
import { emptyWork, settleTick, type TickWork } from './happenings.ts';
import { advanceShift, queueShift } from './shifting.ts';
import type { MotorState, RideCommand, RideEvent, RideState, RideWorld } from './types.ts';

/** Deceleration of the brakes pulled firmly, as a rider does on a dry road (m/s², ours). */
export const BRAKE_MPS2 = 3.5;
/** Riders brake by themselves above 50 km/h. */
export const FASTEST_MPS = 50 / 3.6;
/** Legs lighter than this have stopped turning the cranks. */
const LEGS_STILL = 0.05;

/** Numbers of the tick that is being worked out. Every tick writes each before it reads it, so one will do for all rides. */
const work = emptyWork();

/** Advances by one tick. Commands act at its beginning. Pure: the state given is left as it is. */
export function stepRide(
  world: RideWorld,
  state: RideState,
  commands: readonly RideCommand[],
): { readonly state: RideState; readonly events: readonly RideEvent[] } {
  if (state.phase === 'finished') return { state, events: [] };
  const next = copyOfState(state);
  const events: RideEvent[] = [];
  advanceRide(world, next, commands, events);
  return { state: next, events };
}

/** The same in place, for rides that keep no state of every tick; what happens is added to `events`. */
export function advanceRide(
  world: RideWorld,
  ride: RideDraft,
  commands: readonly RideCommand[],
  events: RideEvent[],
): void {
  if (ride.phase === 'finished') return;
  if (commands.length > 0) applyCommands(world, ride, commands, events);
  if (isShifting(ride)) advanceShift(world, ride, events);
  const gear = gearOf(world.machine, ride);
  roadUnder(world.course, ride.distanceM, work);
  riderEffort(world, ride, work);
  drivetrain(world, ride, gear, work);
  roadForces(world, ride, work);
  integrate(world, ride, work);
  settleTick(world, ride, gear, work, events);
}

function applyCommands(
  world: RideWorld,
  ride: RideDraft,
  commands: readonly RideCommand[],
  events: RideEvent[],
): void {
  for (const command of commands) {
    switch (command.kind) {
      case 'shift':
        queueShift(world, ride, command, events);
        break;
      case 'pressure':
        ride.pressure = command.pressure;
        break;
      case 'brake':
        ride.braking = command.on;
        break;
    }
  }
}

/** Whether a chain movement is going on or waiting. */
export function isShifting(ride: Pick<RideState, 'rear' | 'front' | 'queue'>): boolean {
  return ride.rear !== null || ride.front !== null || ride.queue.length > 0;
}

/** The legs follow what is asked with a lag. Braking stops them, unless the rider eases meanwhile. */
function riderEffort(world: RideWorld, ride: RideDraft, w: TickWork): void {
  let target = pressureTarget(ride.pressure);
  const helped = world.autoEase && isShifting(ride);
  // Where the game eases, it takes the pressure right off for a hub.
  const lightest = hasHub(world.machine.bike) ? 0 : pressureTarget('ease');
  if (ride.braking) target = ride.pressure === 'ease' ? pressureTarget('ease') : helped ? lightest : 0;
  else if (helped) target = Math.min(target, lightest);
  if (target > 1 && ride.spent) target = 1;
  if (ride.phase !== 'riding') target = 0;
  const share = world.tickS / LEG_LAG_S;
  w.pressureRatio = ride.pressureRatio + (target - ride.pressureRatio) * share;
}

/**
 * Cranks turn with the wheel while the legs push; they rest when coasting and run free when the chain is off.
 * What the legs give goes through the chain to the wheel and comes out of the reserve.
 */
function drivetrain(world: RideWorld, ride: RideDraft, gear: Gear, w: TickWork): void {
  const { machine } = world;
  const pedalling = ride.phase === 'riding' && w.pressureRatio >= LEGS_STILL;
  const wheelRpm = cadenceAtRpm(ride.speedMps, gear.developmentM);
  if (!pedalling) w.cadenceRpm = 0;
  else w.cadenceRpm = ride.chainOn ? Math.min(MAXIMUM_CADENCE_RPM, wheelRpm) : FREE_LEGS_RPM;
  w.crankTorqueNm =
    pedalling && ride.chainOn
      ? crankTorqueNm(
          machine,
          w.pressureRatio,
          wheelRpm,
          w.slopeRatio,
          ride.reserveJ / machine.rider.reserveJ,
        )
      : 0;
  w.motorN = 0;
  w.motorNm = 0;
  w.idleM = 0;
  if (ride.motor !== null) motorHelp(world, ride, ride.motor, gear, pedalling, w);
  w.driveN = wheelForceN(w.crankTorqueNm, gear) + w.motorN;
  const powerW = (w.crankTorqueNm * w.cadenceRpm * PI) / 30;
  w.reserveJ = reserveAfterJ(ride.reserveJ, powerW, machine.rider, world.tickS);
}

/**
 * The motor follows the legs: late when they begin, a moment longer when they stop, and off for certain a little way
 * after their last push. Brakes with switches turn it off at once. Without a chain a crank motor turns nothing.
 */
function motorHelp(
  world: RideWorld,
  ride: RideDraft,
  state: MotorState,
  gear: Gear,
  pedalling: boolean,
  w: TickWork,
): void {
  const { machine, tickS } = world;
  const motor = machine.bike.motor as Motor;
  const { speedMps } = ride;
  w.idleM = pedalling ? 0 : state.idleM + speedMps * tickS;
  const cut = motor.brakeSwitches === true && ride.braking;
  const turns = motor.place === 'wheel' || ride.chainOn;
  const off = ride.phase !== 'riding' || !turns || cut || state.chargeJ <= 0;
  if (off || w.idleM >= offWithinM(motor) || speedMps >= CUT_OFF_MPS) return;
  const perNm = wheelForcePerNm(machine, motor.place, gear);
  let wantedN = helpN(machine, gear, w.crankTorqueNm, speedMps);
  if (ride.startingUp && pedalling && motor.helpRatio > 0)
    wantedN = Math.max(wantedN, w.pressureRatio * startHelpN(speedMps));
  const wantedNm = wantedN / perNm;
  const lagS = wantedNm > state.torqueNm ? RISES_S : fallsS(motor);
  const followedNm = state.torqueNm + ((wantedNm - state.torqueNm) * tickS) / lagS;
  // However late it follows, near the speed at which it must be gone it gives no more than it may.
  const mostNm = mostHelpN(machine, motor.place, gear, speedMps) / perNm;
  w.motorNm = followedNm < mostNm ? followedNm : mostNm;
  w.motorN = w.motorNm * perNm;
}

function roadForces(world: RideWorld, ride: RideDraft, w: TickWork): void {
  const { machine } = world;
  const { speedMps } = ride;
  const crr = machine.bike.rollingCoefficient * w.rollingFactor;
  const tooFast = Math.max(0, speedMps - FASTEST_MPS);
  const pulled = ride.braking || ride.phase === 'overrun' ? BRAKE_MPS2 : 0;
  w.airN = airForceN(speedMps, w.windMps, machine.bike.cdaM2);
  w.rollingN = rollingForceN(machine.totalMassKg, w.slopeRatio, crr);
  w.climbingN = climbingForceN(machine.totalMassKg, w.slopeRatio);
  w.bearingsN = bearingForceN(speedMps);
  w.brakeN = machine.effectiveMassKg * (pulled + tooFast / 0.3);
}

/** What the road is like at a place, looked up together: the same bits as `sampleAt` gives one by one. */
function roadUnder(course: Course, distanceM: number, w: TickWork): void {
  const last = course.slopeRatio.length - 1;
  const i = distanceM <= 0 ? 0 : distanceM >= last ? last : Math.floor(distanceM);
  const next = i < last ? i + 1 : i;
  const share = i < last && distanceM > 0 ? distanceM - i : 0;
  const slope = course.slopeRatio[i] as number;
  const rolling = course.rollingFactor[i] as number;
  const wind = course.windMps[i] as number;
  const height = course.heightM[i] as number;
  w.slopeRatio = slope + ((course.slopeRatio[next] as number) - slope) * share;
  w.rollingFactor = rolling + ((course.rollingFactor[next] as number) - rolling) * share;
  w.windMps = wind + ((course.windMps[next] as number) - wind) * share;
  w.heightM = height + ((course.heightM[next] as number) - height) * share;
}

/**
 * New speed from the forces, distance from the mean of both speeds: kinetic energy then changes by exactly
 * force times way, which is what keeps the ledger honest. A standing bike does not roll backwards.
 */
function integrate(world: RideWorld, ride: RideDraft, w: TickWork): void {
  const held = ride.phase === 'foot-down' || ride.phase === 'standing';
  const netN = w.driveN - w.airN - w.rollingN - w.climbingN - w.bearingsN - w.brakeN;
  const accelerationMps2 = netN / world.machine.effectiveMassKg;
  w.reachedMps = held ? 0 : Math.max(0, ride.speedMps + accelerationMps2 * world.tickS);
  w.stepM = held ? 0 : ((ride.speedMps + w.reachedMps) / 2) * world.tickS;
  w.tick = ride.tick + 1;
  w.distanceM = ride.distanceM + w.stepM;
}
