/**
 * Where steady legs settle on a slope that goes on for ever: the cadence at which what they give, once the reserve is
 * spent, is what the road asks in a gear.
 */
import { lastWhere, rpmToRadPerS } from '../math/numbers.ts';
import { bandLowRpm, crankTorqueNm, MAXIMUM_CADENCE_RPM } from './legs.ts';
import { type EvenRoad, powerForSpeedW, steadyQuestion, steadySpeedMps } from './machine.ts';
import type { Gear, Machine } from './types.ts';

/** Riding slower than this, nobody keeps a bike upright for long; walking is as quick (m/s, ours). */
export const WALKING_MPS = 0.9;

/** What a slope comes to for ever in a gear. */
export function settledRide(machine: Machine, gear: Gear, road: EvenRoad) {
  const { slopeRatio } = road;
  const question = steadyQuestion(machine, gear, road);
  const powerW = (rpm: number): number => crankTorqueNm(machine, 1, rpm, slopeRatio, 0) * rpmToRadPerS(rpm);
  // Torque falls with cadence and the road's demand rises, so they meet once.
  const cadenceRpm = lastWhere(
    0,
    MAXIMUM_CADENCE_RPM,
    50,
    (rpm) => powerW(rpm) > powerForSpeedW((rpm * gear.developmentM) / 60, question),
  );
  const lowRpm = bandLowRpm(machine.rider, slopeRatio);
  const neededSpeedMps = steadySpeedMps(powerW(lowRpm), question);
  return {
    /** Where the legs settle in the gear (rpm, m/s); 0 where they stand still. */
    cadenceRpm,
    speedMps: (cadenceRpm * gear.developmentM) / 60,
    /** Lower edge of the band on that slope (rpm). */
    bandLowRpm: lowRpm,
    /** Longest development that would keep the legs in their band there (m a turn), and the speed it is ridden at. */
    neededDevelopmentM: (60 * neededSpeedMps) / lowRpm,
    neededSpeedMps,
    /** True where no gear helps: in the band the bike would be slower than walking. */
    tooSteepForPower: neededSpeedMps < WALKING_MPS,
  };
}

/** Power at the pedals (W) that is just quicker than walking there. */
export function powerToRideW(machine: Machine, gear: Gear, road: EvenRoad): number {
  return powerForSpeedW(WALKING_MPS, steadyQuestion(machine, gear, road));
}
