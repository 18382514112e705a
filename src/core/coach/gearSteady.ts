/**
 * Where legs would settle if the steepest part of a road went on for ever: the cadence at which what they give, once
 * the reserve is spent, is what the road asks in a gear. And the gear that would keep them in their band there.
 */
import { bandLowRpm, crankTorqueNm, MAXIMUM_CADENCE_RPM } from '../model/legs.ts';
import { rpmToRadPerS } from '../math/numbers.ts';
import { powerForSpeedW, steadySpeedMps } from '../model/machine.ts';
import type { Gear } from '../model/types.ts';
import type { RideWorld } from '../ride/types.ts';

/** So long a stretch of the road, the steepest there is, is what steady figures are worked out for (m). */
export const STEEPEST_MEAN_M = 50;
/** Riding slower than this, nobody keeps a bike upright for long; walking is as quick (m/s, ours). */
export const WALKING_MPS = 0.9;

/** What a slope comes to for ever. */
export interface SteadyClimb {
  /** Mean slope of the steepest 50 m (rise over run). */
  readonly slopeRatio: number;
  /** Where the legs settle in the lowest gear (rpm); 0 where they stand still. */
  readonly cadenceRpm: number;
  readonly speedMps: number;
  /** Lower edge of the band on that slope (rpm). */
  readonly bandLowRpm: number;
  /** Longest development that would keep the legs in their band there (m a turn), and the speed it is ridden at. */
  readonly neededDevelopmentM: number;
  readonly neededSpeedMps: number;
  /** True where no gear helps: in the band the bike would be slower than walking. */
  readonly tooSteepForPower: boolean;
}

/** Works the steepest 50 m of the road out, with nothing left in reserve and no wind. */
export function steadyClimb(world: RideWorld, low: Gear): SteadyClimb {
  const { machine, course } = world;
  const at = steepestAt(course.slopeRatio);
  const slopeRatio = meanOf(course.slopeRatio, at);
  const question = {
    slopeRatio,
    windMps: 0,
    massKg: machine.totalMassKg,
    cdaM2: machine.bike.cdaM2,
    rollingCoefficient: machine.bike.rollingCoefficient * meanOf(course.rollingFactor, at),
    efficiency: low.efficiency,
    airDensityKgM3: world.airDensityKgM3,
    bearings: true,
  };
  const powerW = (rpm: number): number => crankTorqueNm(machine, 1, rpm, slopeRatio, 0) * rpmToRadPerS(rpm);
  // Torque falls with cadence and the road's demand rises, so they meet once.
  let slow = 0;
  let fast = MAXIMUM_CADENCE_RPM;
  for (let i = 0; i < 50; i += 1) {
    const rpm = (slow + fast) / 2;
    if (powerW(rpm) > powerForSpeedW((rpm * low.developmentM) / 60, question)) slow = rpm;
    else fast = rpm;
  }
  const lowRpm = bandLowRpm(machine.rider, slopeRatio);
  const neededSpeedMps = steadySpeedMps({ ...question, powerW: powerW(lowRpm) });
  return {
    slopeRatio,
    cadenceRpm: slow,
    speedMps: (slow * low.developmentM) / 60,
    bandLowRpm: lowRpm,
    neededDevelopmentM: (60 * neededSpeedMps) / lowRpm,
    neededSpeedMps,
    tooSteepForPower: neededSpeedMps < WALKING_MPS,
  };
}

/** Index at which the steepest 50 m begin. */
function steepestAt(slopeRatio: ArrayLike<number>): number {
  const width = Math.min(STEEPEST_MEAN_M, slopeRatio.length);
  let sum = 0;
  for (let i = 0; i < width; i += 1) sum += slopeRatio[i] as number;
  let best = { sum, from: 0 };
  for (let i = width; i < slopeRatio.length; i += 1) {
    sum += (slopeRatio[i] as number) - (slopeRatio[i - width] as number);
    if (sum > best.sum) best = { sum, from: i - width + 1 };
  }
  return best.from;
}

function meanOf(values: ArrayLike<number>, from: number): number {
  const width = Math.min(STEEPEST_MEAN_M, values.length);
  let sum = 0;
  for (let i = from; i < from + width; i += 1) sum += values[i] as number;
  return sum / width;
}
