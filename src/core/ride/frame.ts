/**
 * Turns a state into what a screen, a loudspeaker or a listener is shown. Only arithmetic on the state;
 * words and pictures are the shells' business.
 */
import { sampleAt } from '../math/numbers.ts';
import { chainAngleDeg } from '../model/gears.ts';
import { bandLowRpm } from '../model/legs.ts';
import { batteryJ, helpShare, wheelForcePerNm } from '../model/motor.ts';
import { gearOf, nearestPlace } from '../model/transmission.ts';
import { hasHub } from '../model/shifters.ts';
import type { Gear } from '../model/types.ts';
import { plannedPlace } from './shifting.ts';
import type { MotorFrame, RideFrame, RideState, RideWorld, ShiftInProgress } from './types.ts';

/** Legs that push harder than this on more of a slope than that belong to a rider who has stood up (ours). */
const STANDS_FROM_PRESSURE = 1.2;
const STANDS_FROM_SLOPE = 0.02;

export function frameOf(world: RideWorld, state: RideState): RideFrame {
  const { machine, course } = world;
  const gear = gearOf(machine, state);
  const slopeRatio = sampleAt(course.slopeRatio, state.distanceM);
  const atRest = state.rear === null && state.front === null && state.queue.length === 0;
  // A push that lifts a dropped chain back on counts beyond the last ring; nothing lies there.
  const leverGear = atRest ? gear : gearOf(machine, nearestPlace(machine, plannedPlace(state)));
  const chainAtRing = chainPlace(state.ringIndex, state.front);
  // The chain of a hub stays on its one sprocket.
  const chainAtSprocket = hasHub(machine.bike) ? 0 : chainPlace(state.sprocketIndex, state.rear);
  return {
    tick: state.tick,
    timeS: state.tick * world.tickS,
    distanceM: state.distanceM,
    lengthM: course.lengthM,
    speedMps: state.speedMps,
    slopeRatio,
    heightM: sampleAt(course.heightM, state.distanceM),
    cadenceRpm: state.cadenceRpm,
    bandLowRpm: bandLowRpm(machine.rider, slopeRatio),
    bandHighRpm: machine.rider.cadenceHighRpm,
    crankTurns: state.crankTurns,
    wheelTurns: state.distanceM / machine.circumferenceM,
    torqueRatio: state.crankTorqueNm / machine.referenceTorqueNm,
    motor: shownMotor(world, state, gear),
    pressure: state.pressure,
    pressureRatio: state.pressureRatio,
    outOfSaddle:
      state.phase === 'riding' &&
      state.pressureRatio > STANDS_FROM_PRESSURE &&
      slopeRatio > STANDS_FROM_SLOPE,
    braking: state.braking,
    ringIndex: state.ringIndex,
    sprocketIndex: state.sprocketIndex,
    ringTeeth: gear.ringTeeth,
    sprocketTeeth: gear.sprocketTeeth,
    gear,
    leverGear,
    developmentM: gear.developmentM,
    chainAtRing,
    chainAtSprocket,
    chainAngleDeg: chainAngleDeg(machine.bike, chainAtRing, chainAtSprocket),
    crossed: gear.crossed,
    crossedS: state.crossedS,
    chainOn: state.chainOn,
    shift: shownShift(world, state),
    waitingShifts: state.queue.length,
    phase: state.phase,
    phaseLeftS: state.phaseLeftS,
    reserveRatio: state.reserveJ / machine.rider.reserveJ,
    spent: state.spent,
    windMps: sampleAt(course.windMps, state.distanceM),
    rollingFactor: sampleAt(course.rollingFactor, state.distanceM),
    sightM: sampleAt(course.sightM, state.distanceM),
    stopInM: stopInM(world, state),
  };
}

function shownMotor({ machine }: RideWorld, state: RideState, gear: Gear): MotorFrame | null {
  const { motor } = machine.bike;
  if (motor === undefined || state.motor === null) return null;
  const { torqueNm, chargeJ } = state.motor;
  return {
    place: motor.place,
    powerW: torqueNm * wheelForcePerNm(machine, motor.place, gear) * state.speedMps,
    helpShare: chargeJ > 0 ? helpShare(state.speedMps) : 0,
    chargeRatio: motor.batteryWh > 0 ? chargeJ / batteryJ(motor) : 0,
  };
}

function chainPlace(index: number, shift: ShiftInProgress | null): number {
  if (shift === null) return index;
  return index + (shift.toIndex - shift.fromIndex) * Math.min(1, shift.doneTurns / shift.neededTurns);
}

function shownShift({ machine }: RideWorld, state: RideState): RideFrame['shift'] {
  const derailleur = state.rear !== null ? 'rear' : 'front';
  const shift = state.rear ?? state.front;
  if (shift === null) return null;
  return {
    derailleur,
    direction: shift.direction,
    rate: shift.rate,
    hub: derailleur === 'rear' && hasHub(machine.bike),
  };
}

function stopInM(world: RideWorld, state: RideState): number | null {
  const lineM = world.course.stopLinesM[state.nextStopIndex];
  return lineM === undefined ? null : lineM - state.distanceM;
}
