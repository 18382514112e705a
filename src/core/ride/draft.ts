/**
 * A state that may be changed in place: the form in which a tick is worked out, and in which whole rides are
 * ridden without leaving a state behind for every tick. What a tick does is `step.ts`.
 */
import type { EnergyLedger, MotorState, RideState } from './types.ts';

type Changeable<T> = { -readonly [K in keyof T]: T[K] };

/** A ride state in the making. Shifts and queue are replaced, never changed, so copies may share them. */
export interface RideDraft extends Changeable<Omit<RideState, 'ledger' | 'motor'>> {
  readonly motor: Changeable<MotorState> | null;
  readonly ledger: Changeable<EnergyLedger>;
}

/** When and where something happens. */
export function momentOf({ tick, distanceM }: Pick<RideState, 'tick' | 'distanceM'>): {
  tick: number;
  distanceM: number;
} {
  return { tick, distanceM };
}

/** A copy that shares nothing changeable with its original: a draft to ride on from, or a state to keep. */
export function copyOfState(state: RideState): RideDraft {
  const { ledger, motor } = state;
  // Written out, because every copy then has the same layout in memory, which spreading would not promise.
  return {
    tick: state.tick,
    distanceM: state.distanceM,
    speedMps: state.speedMps,
    pressure: state.pressure,
    braking: state.braking,
    pressureRatio: state.pressureRatio,
    crankTurns: state.crankTurns,
    cadenceRpm: state.cadenceRpm,
    crankTorqueNm: state.crankTorqueNm,
    ringIndex: state.ringIndex,
    sprocketIndex: state.sprocketIndex,
    rear: state.rear,
    front: state.front,
    queue: state.queue,
    reserveJ: state.reserveJ,
    spent: state.spent,
    chainOn: state.chainOn,
    phase: state.phase,
    phaseLeftS: state.phaseLeftS,
    startingUp: state.startingUp,
    nextStopIndex: state.nextStopIndex,
    crossedS: state.crossedS,
    motor: motor === null ? null : { torqueNm: motor.torqueNm, idleM: motor.idleM, chargeJ: motor.chargeJ },
    ledger: {
      workInJ: ledger.workInJ,
      motorInJ: ledger.motorInJ,
      pushOffJ: ledger.pushOffJ,
      kineticJ: ledger.kineticJ,
      climbedJ: ledger.climbedJ,
      airJ: ledger.airJ,
      rollingJ: ledger.rollingJ,
      bearingsJ: ledger.bearingsJ,
      drivetrainJ: ledger.drivetrainJ,
      brakesJ: ledger.brakesJ,
    },
  };
}
