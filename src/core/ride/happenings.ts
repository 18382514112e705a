/**
 * The last part of a step: what the new speed and place mean (foot down, stop lines, crossed chain,
 * reserve, finish), the energy ledger, and the draft that takes over all of it.
 */
import { sampleAt } from '../math/numbers.ts';
import { GRAVITY } from '../model/load.ts';
import { loadsChain, MOTOR_EFFICIENCY } from '../model/motor.ts';
import { easierBehind } from '../model/transmission.ts';
import type { Gear } from '../model/types.ts';
import { momentOf, type RideDraft } from './draft.ts';
import type { RideEvent, RideWorld } from './types.ts';

/** Below this speed, and not getting faster, a foot goes down (m/s, ours). */
const FOOT_DOWN_MPS = 0.4;
/** Speed of the push with the foot, time lost, and how much easier the rider starts (ours). */
export const PUSH_OFF_MPS = 1.2;
export const FOOT_DOWN_S = 3;
const EASIER_AFTER_FOOT_DOWN = 2;
/** A rider stops within this distance before a line (m). */
export const STOP_ZONE_M = 3;
const STANDING_S = 2;
const OVERRUN_STANDING_S = 4;
/** Crossed shorter than this is a passing place on the way to another gear. */
export const CROSSED_GRACE_S = 1.5;
/** Share of the reserve that must be back before pressing works again. */
const RESERVE_BACK = 0.25;
/** After a start from rest the bike counts as rolling from here on (m/s). */
const ROLLING_MPS = 0.8;

/** Legs that change by less than this in a tick have reached what they were asked for. */
const LEGS_SETTLED = 0.0005;

/** What the parts of a step find out for those after them, while the draft still holds the tick before. */
export function emptyWork() {
  return {
    tick: 0,
    distanceM: 0,
    stepM: 0,
    /** Speed the forces lead to, and the one the tick ends with: a foot or a push may set another. */
    reachedMps: 0,
    speedMps: 0,
    pressureRatio: 0,
    cadenceRpm: 0,
    crankTorqueNm: 0,
    reserveJ: 0,
    /** The road where the tick begins. */
    slopeRatio: 0,
    rollingFactor: 0,
    windMps: 0,
    heightM: 0,
    /** The motor's force at the wheel, its torque where it sits, and the way since the last push on the pedals; none without one. */
    motorN: 0,
    motorNm: 0,
    idleM: 0,
    driveN: 0,
    airN: 0,
    rollingN: 0,
    climbingN: 0,
    bearingsN: 0,
    brakeN: 0,
    pushOffJ: 0,
  };
}
export type TickWork = ReturnType<typeof emptyWork>;

/** Settles the tick: the draft becomes the new state; events are appended. */
export function settleTick(
  world: RideWorld,
  ride: RideDraft,
  gear: Gear,
  w: TickWork,
  events: RideEvent[],
): void {
  w.speedMps = w.reachedMps;
  w.pushOffJ = 0;
  if (ride.phaseLeftS > 0) ride.phaseLeftS = Math.max(0, ride.phaseLeftS - world.tickS);
  if (w.reachedMps >= ROLLING_MPS) ride.startingUp = false;
  if (ride.phase === 'riding') {
    stopLine(world, ride, w, events);
    if (ride.phase === 'riding') footDown(world, ride, w, events);
  } else getGoing(world, ride, w, events);
  crossing(world, ride, gear, w, events);
  reserve(world, ride, w, events);
  if (w.distanceM >= world.course.lengthM) {
    ride.phase = 'finished';
    events.push({ kind: 'finished', ...momentOf(w) });
  }
  const motorInJ = ride.motor === null ? 0 : runMotor(world, ride.motor, gear, w, events);
  bookEnergy(world, ride, gear, w, motorInJ);
  ride.tick = w.tick;
  ride.distanceM = w.distanceM;
  ride.speedMps = w.speedMps;
  ride.pressureRatio = w.pressureRatio;
  ride.crankTurns += (w.cadenceRpm / 60) * world.tickS;
  ride.cadenceRpm = w.cadenceRpm;
  ride.crankTorqueNm = w.crankTorqueNm;
  ride.reserveJ = w.reserveJ;
}

function stopLine(world: RideWorld, ride: RideDraft, w: TickWork, events: RideEvent[]): void {
  const lineM = world.course.stopLinesM[ride.nextStopIndex];
  if (lineM === undefined || w.distanceM < lineM - STOP_ZONE_M) return;
  if (w.distanceM > lineM) {
    events.push({ kind: 'line-missed', ...momentOf(w) });
    ride.phase = 'overrun';
    ride.nextStopIndex += 1;
  } else if (w.reachedMps <= 0) {
    events.push({ kind: 'stopped-at-line', ...momentOf(w) });
    ride.phase = 'standing';
    ride.phaseLeftS = STANDING_S;
    ride.nextStopIndex += 1;
  }
}

/** Too slow and not getting faster: the foot goes down. Braking to rest or starting from rest is no foot down. */
function footDown(world: RideWorld, ride: RideDraft, w: TickWork, events: RideEvent[]): void {
  if (ride.braking) {
    if (w.reachedMps <= 0) ride.startingUp = true;
    return;
  }
  if (w.reachedMps >= FOOT_DOWN_MPS || w.reachedMps > ride.speedMps) return;
  // From rest, legs that are not yet asked to push, or only begin to, are no failure.
  const rising = w.pressureRatio - ride.pressureRatio > LEGS_SETTLED;
  if (ride.startingUp && (rising || w.pressureRatio < LEGS_SETTLED)) return;
  events.push({ kind: 'foot-down', ...momentOf(w) });
  ride.phase = 'foot-down';
  ride.phaseLeftS = FOOT_DOWN_S;
  w.speedMps = 0;
  Object.assign(ride, easierBehind(world.machine, ride, EASIER_AFTER_FOOT_DOWN));
  ride.rear = null;
  ride.front = null;
  ride.queue = [];
  ride.chainOn = true;
}

/** Waiting times end; after a foot down the rider is pushed off, at a line the legs must do it. */
function getGoing(world: RideWorld, ride: RideDraft, w: TickWork, events: RideEvent[]): void {
  if (ride.phase === 'overrun') {
    if (w.reachedMps > 0) return;
    ride.phase = 'standing';
    ride.phaseLeftS = OVERRUN_STANDING_S;
  } else if (ride.phaseLeftS <= 0) {
    if (ride.phase === 'foot-down') {
      w.speedMps = PUSH_OFF_MPS;
      w.pushOffJ = (world.machine.effectiveMassKg * PUSH_OFF_MPS * PUSH_OFF_MPS) / 2;
      events.push({ kind: 'pushed-off', ...momentOf(w) });
    } else ride.startingUp = true;
    ride.phase = 'riding';
  }
}

function crossing(world: RideWorld, ride: RideDraft, gear: Gear, w: TickWork, events: RideEvent[]): void {
  const beforeS = ride.crossedS;
  if (!gear.crossed || !ride.chainOn) {
    ride.crossedS = 0;
    return;
  }
  ride.crossedS = beforeS + (w.cadenceRpm > 0 ? world.tickS : 0);
  if (ride.crossedS > CROSSED_GRACE_S && beforeS <= CROSSED_GRACE_S)
    events.push({ kind: 'chain-crossed', ...momentOf(w) });
}

function reserve(world: RideWorld, ride: RideDraft, w: TickWork, events: RideEvent[]): void {
  if (!ride.spent && w.reserveJ <= 0) {
    events.push({ kind: 'reserve-empty', ...momentOf(w) });
    ride.spent = true;
  } else if (ride.spent && w.reserveJ >= RESERVE_BACK * world.machine.rider.reserveJ) {
    events.push({ kind: 'reserve-back', ...momentOf(w) });
    ride.spent = false;
  }
}

/** The motor takes over what the tick found for it and empties its battery; answers the work it gave (J). */
function runMotor(
  { machine }: RideWorld,
  motor: NonNullable<RideDraft['motor']>,
  gear: Gear,
  w: TickWork,
  events: RideEvent[],
): number {
  const motorInJ = (loadsChain(machine.bike) ? w.motorN / gear.efficiency : w.motorN) * w.stepM;
  const had = motor.chargeJ > 0;
  motor.torqueNm = w.motorNm;
  motor.idleM = w.idleM;
  motor.chargeJ = Math.max(0, motor.chargeJ - motorInJ / MOTOR_EFFICIENCY);
  if (had && motor.chargeJ <= 0) events.push({ kind: 'battery-empty', ...momentOf(w) });
  return motorInJ;
}

/**
 * Books every joule of the tick. What the brakes (or the ground under a foot) take is what is missing where
 * a speed was set rather than reached; everything else is force times way.
 */
function bookEnergy(world: RideWorld, ride: RideDraft, gear: Gear, w: TickWork, motorInJ: number): void {
  const { ledger } = ride;
  const { machine, course } = world;
  const workInJ = ((w.driveN - w.motorN) / gear.efficiency) * w.stepM;
  const kineticJ = (machine.effectiveMassKg * w.speedMps * w.speedMps) / 2;
  const set = w.reachedMps <= 0 || w.speedMps !== w.reachedMps;
  const climbedNowJ = machine.totalMassKg * GRAVITY * (sampleAt(course.heightM, w.distanceM) - w.heightM);
  const airJ = w.airN * w.stepM;
  const rollingJ = w.rollingN * w.stepM;
  const bearingsJ = w.bearingsN * w.stepM;
  const drivetrainJ = workInJ + motorInJ - w.driveN * w.stepM;
  ledger.brakesJ += set
    ? ledger.kineticJ +
      workInJ +
      motorInJ +
      w.pushOffJ -
      kineticJ -
      climbedNowJ -
      airJ -
      rollingJ -
      bearingsJ -
      drivetrainJ
    : w.brakeN * w.stepM;
  ledger.workInJ += workInJ;
  ledger.motorInJ += motorInJ;
  ledger.pushOffJ += w.pushOffJ;
  ledger.kineticJ = kineticJ;
  ledger.climbedJ += climbedNowJ;
  ledger.airJ += airJ;
  ledger.rollingJ += rollingJ;
  ledger.bearingsJ += bearingsJ;
  ledger.drivetrainJ += drivetrainJ;
}
