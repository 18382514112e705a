/**
 * A frame to start from in the tests of the audio room: riding along on the flat, nothing special.
 */
import type { Gear } from '../../src/core/model/types.ts';
import type { RideFrame } from '../../src/core/ride/types.ts';

const GEAR: Gear = {
  ringIndex: 0,
  sprocketIndex: 3,
  ringTeeth: 34,
  sprocketTeeth: 17,
  hub: null,
  ratio: 2,
  developmentM: 4.2,
  chainAngleDeg: 0.4,
  crossed: false,
  efficiency: 0.97,
};

/** 34 × 17 on a 2.1 m wheel at 80 rpm: 5.6 m/s. */
export function frameWith(changes: Partial<RideFrame> = {}): RideFrame {
  return {
    tick: 1200,
    timeS: 10,
    distanceM: 56,
    lengthM: 1000,
    speedMps: 5.6,
    slopeRatio: 0,
    heightM: 0,
    cadenceRpm: 80,
    bandLowRpm: 75,
    bandHighRpm: 95,
    crankTurns: 13,
    wheelTurns: 27,
    torqueRatio: 1,
    motor: null,
    pressure: 'steady',
    pressureRatio: 1,
    outOfSaddle: false,
    braking: false,
    ringIndex: 0,
    sprocketIndex: 3,
    ringTeeth: 34,
    sprocketTeeth: 17,
    developmentM: 4.2,
    chainAtRing: 0,
    chainAtSprocket: 3,
    chainAngleDeg: 0.4,
    crossed: false,
    crossedS: 0,
    chainOn: true,
    shift: null,
    waitingShifts: 0,
    gear: GEAR,
    leverGear: GEAR,
    phase: 'riding',
    phaseLeftS: 0,
    reserveRatio: 1,
    spent: false,
    windMps: 0,
    rollingFactor: 1,
    sightM: 200,
    stopInM: null,
    ...changes,
  };
}

/** Legs still, wheel rolling. */
export function coastingFrame(speedMps: number): RideFrame {
  return frameWith({ speedMps, cadenceRpm: 0, torqueRatio: 0, pressure: 'coast', pressureRatio: 0 });
}
