/**
 * Joins a bike and a rider into the precomputed `Machine` that every step reads, and answers the
 * steady-state questions (how fast, in which gear) that command line, planner and pages ask.
 */
import { lastWhere, PI } from '../math/numbers.ts';
import { buildGears, wheelCircumferenceM } from './gears.ts';
import { HUBS } from './hub.ts';
import { bodyWeightTorqueNm, midBandRpm, referenceTorqueNm, standstillTorqueNm } from './legs.ts';
import { roadLoad, rotationalMassKg, totalForceN } from './load.ts';
import { leftForLegsN } from './motor.ts';
import type { Bike, Gear, Machine, Rider } from './types.ts';

const SHIFT_DELAY_S = { mechanical: 0.12, electronic: 0.06 } as const;

/** Precomputes gears, masses and torques. Pure; the same bike and rider give the same machine. */
export function buildMachine(bike: Bike, rider: Rider): Machine {
  const circumferenceM = wheelCircumferenceM(bike);
  const totalMassKg = bike.massKg + rider.massKg;
  return {
    bike,
    rider,
    ringCount: bike.chainringsTeeth.length,
    sprocketCount: bike.hub === undefined ? bike.sprocketsTeeth.length : HUBS[bike.hub].ratios.length,
    gears: buildGears(bike),
    circumferenceM,
    totalMassKg,
    effectiveMassKg: totalMassKg + rotationalMassKg(bike.wheelInertiaKgM2, circumferenceM / (2 * PI)),
    referenceTorqueNm: referenceTorqueNm(rider),
    standstillTorqueNm: standstillTorqueNm(rider),
    bodyWeightTorqueNm: bodyWeightTorqueNm(rider, bike),
    shiftDelayS: SHIFT_DELAY_S[bike.shifter],
  };
}

/** The gear on ring `ringIndex` and sprocket `sprocketIndex`; throws on an impossible one (a broken law, not bad input). */
export function gearAt(machine: Machine, ringIndex: number, sprocketIndex: number): Gear {
  const gear = machine.gears[ringIndex * machine.sprocketCount + sprocketIndex];
  if (gear === undefined || sprocketIndex < 0 || sprocketIndex >= machine.sprocketCount)
    throw new Error(`no gear at ring ${ringIndex}, sprocket ${sprocketIndex}`);
  return gear;
}

/** Cadence that a speed means in a gear (rpm). */
export function cadenceAtRpm(speedMps: number, developmentM: number): number {
  return (60 * speedMps) / developmentM;
}

/** A stretch of road that does not change. */
export interface EvenRoad {
  readonly slopeRatio: number;
  readonly windMps: number;
  readonly rollingFactor: number;
}

/** All that decides how much power a speed takes. */
interface SteadyQuestion {
  readonly slopeRatio: number;
  readonly windMps: number;
  readonly massKg: number;
  readonly cdaM2: number;
  readonly rollingCoefficient: number;
  readonly efficiency: number;
  /** What is left for the legs of a force at a speed, where a motor takes a part. */
  readonly leftForLegsN?: (forceN: number, speedMps: number) => number;
}

/** The question for a gear of a machine on an even road, with the help of its motor. */
export function steadyQuestion(machine: Machine, gear: Gear, road: EvenRoad): SteadyQuestion {
  const { bike, totalMassKg } = machine;
  return {
    slopeRatio: road.slopeRatio,
    windMps: road.windMps,
    massKg: totalMassKg,
    cdaM2: bike.cdaM2,
    rollingCoefficient: bike.rollingCoefficient * road.rollingFactor,
    efficiency: gear.efficiency,
    leftForLegsN: (forceN, speedMps) => leftForLegsN(machine, gear, forceN, speedMps),
  };
}

/** Power at the pedals (W) to hold a speed. */
export function powerForSpeedW(speedMps: number, q: SteadyQuestion): number {
  const forceN = totalForceN(
    roadLoad(speedMps, q.slopeRatio, q.windMps, q.massKg, q.cdaM2, q.rollingCoefficient),
  );
  const legsN = q.leftForLegsN === undefined ? forceN : q.leftForLegsN(forceN, speedMps);
  return (legsN * speedMps) / q.efficiency;
}

/**
 * Speed (m/s) at which the power is just used up; with 0 W downhill, the terminal speed. Bisection between
 * standstill and 60 m/s, to the last bits; 0 where even standstill asks more.
 */
export function steadySpeedMps(powerW: number, question: SteadyQuestion): number {
  return lastWhere(0, 60, 60, (speedMps) => powerW - powerForSpeedW(speedMps, question) > 0);
}

/**
 * The gear whose cadence is nearest to mid band when `powerW` is held on this slope, straight chains first.
 * Efficiency is that of each gear, the road is good asphalt.
 */
export function steadyGear(
  machine: Machine,
  powerW: number,
  slopeRatio: number,
  windMps: number,
): { readonly gear: Gear; readonly speedMps: number; readonly cadenceRpm: number } {
  const wantedRpm = midBandRpm(machine.rider);
  let best: ReturnType<typeof steadyGear> | undefined;
  let bestMiss = Number.POSITIVE_INFINITY;
  for (const gear of machine.gears) {
    const road = { slopeRatio, windMps, rollingFactor: 1 };
    const speedMps = steadySpeedMps(powerW, steadyQuestion(machine, gear, road));
    const cadenceRpm = cadenceAtRpm(speedMps, gear.developmentM);
    const miss = Math.abs(cadenceRpm - wantedRpm) + (gear.crossed ? 20 : 0) + Math.abs(gear.chainAngleDeg);
    if (miss < bestMiss) {
      bestMiss = miss;
      best = { gear, speedMps, cadenceRpm };
    }
  }
  if (best === undefined) throw new Error('a machine has at least one gear');
  return best;
}
