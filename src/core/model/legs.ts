/**
 * What the legs give: an effort, followed by the torque that goes with it at a cadence, and the reserve above
 * critical power. Built from published shapes (MODEL.md names them), a game mechanic and never health advice.
 */
import { PI, rpmToRadPerS } from '../math/numbers.ts';
import { GRAVITY } from './load.ts';
import type { Bike, Machine, Pressure, Rider } from './types.ts';

/** The torque line of any effort meets zero here (ours; published lines meet it at 150 to 260 rpm). */
export const MAXIMUM_CADENCE_RPM = 150;
/** Legs follow the head with a first-order lag (ours). */
export const LEG_LAG_S = 0.18;

/** Efforts of the pressures, as shares of steady on the flat (ours). */
export const EASE_EFFORT = 0.4;
const PRESS_EFFORT = 1.6;
/** Steady legs push so much harder for each unit of slope, up to so much in all (fitted to five open road rides). */
const HARDER_PER_SLOPE = 7;
const HARDER_AT_MOST = 0.56;
/** Below this share of the reserve people stop spending it: the surplus above critical power fades out (ours). */
const SPARING_BELOW = 0.3;
/** Standing up adds so much to the force on the pedals, and to what legs carry without strain (Bouillod et al. 2017: 22.4 %). */
export const STANDING_FORCE = 0.224;
/** Mean over a turn of what a weight on one vertical crank gives at most: 2/π of it (statics). */
const MEAN_OF_TURN = 2 / PI;

/** Where the legs go for a pressure, as a share of steady. */
export function pressureTarget(pressure: Pressure): number {
  switch (pressure) {
    case 'steady':
      return 1;
    case 'ease':
      return EASE_EFFORT;
    case 'press':
      return PRESS_EFFORT;
    case 'coast':
      return 0;
  }
}

/** Middle of the rider's flat-road cadence band (rpm). */
export function midBandRpm(rider: Rider): number {
  return (rider.cadenceLowRpm + rider.cadenceHighRpm) / 2;
}

/** Torque that steady power means at mid band (N m). */
export function referenceTorqueNm(rider: Rider): number {
  return rider.steadyPowerW / rpmToRadPerS(midBandRpm(rider));
}

/** Mean torque over a turn of the body's weight on the forward pedal (N m); no pull on the bars. */
export function bodyWeightTorqueNm(rider: Rider, bike: Pick<Bike, 'crankLengthMm'>): number {
  return (MEAN_OF_TURN * rider.massKg * GRAVITY * bike.crankLengthMm) / 1000;
}

/** Torque of a straight line through a torque at a cadence, at another cadence (N m); 0 from the maximum on. */
export function lineTorqueNm(standstillNm: number, cadenceRpm: number): number {
  return cadenceRpm >= MAXIMUM_CADENCE_RPM ? 0 : standstillNm * (1 - cadenceRpm / MAXIMUM_CADENCE_RPM);
}

/** Torque at standstill (N m) of the line on which steady power on the flat lies at mid band. */
export function standstillTorqueNm(rider: Rider): number {
  return referenceTorqueNm(rider) / (1 - midBandRpm(rider) / MAXIMUM_CADENCE_RPM);
}

/** Effort of steady legs on a slope, 1 on the flat and downhill: people push harder where the road stands up. */
export function slopeEffort(slopeRatio: number): number {
  if (slopeRatio <= 0) return 1;
  const more = HARDER_PER_SLOPE * slopeRatio;
  return more < HARDER_AT_MOST ? 1 + more : 1 + HARDER_AT_MOST;
}

/**
 * Crank torque (N m, mean of a turn) of legs at `pressureRatio` (0 coasting, 0.4 eased, 1 steady, 1.6 pressing) and
 * a cadence, on a slope. Torque falls in a straight line with cadence; below the band the legs are forced to push
 * harder still, up to the weight of the body, and standing up a little beyond it. Soft feet know no hill.
 * @param reserveRatio share of the reserve that is left, 0 to 1
 */
export function crankTorqueNm(
  machine: Machine,
  pressureRatio: number,
  cadenceRpm: number,
  slopeRatio = 0,
  reserveRatio = 1,
): number {
  if (pressureRatio <= 0 || cadenceRpm >= MAXIMUM_CADENCE_RPM) return 0;
  const { rider, bodyWeightTorqueNm: weightNm, standstillTorqueNm: standstillNm } = machine;
  const firm = pressureRatio <= EASE_EFFORT ? 0 : (pressureRatio - EASE_EFFORT) / (1 - EASE_EFFORT);
  const willing = firm < 1 ? firm : 1;
  const hillEffort = 1 + (slopeEffort(slopeRatio) - 1) * willing;
  const effort = pressureRatio * hillEffort;
  const comfortNm = lineTorqueNm(standstillNm, cadenceRpm);
  const lowRpm = bandLowRpm(rider, slopeRatio);
  const missing = cadenceRpm < lowRpm ? 1 - cadenceRpm / lowRpm : 0;
  const forcedNm = (weightNm - standstillNm) * missing * missing * willing;
  const wantedNm = effort * comfortNm + (forcedNm > 0 ? forcedNm : 0);
  const standing = pressureRatio > 1 ? (pressureRatio - 1) / (PRESS_EFFORT - 1) : 0;
  const mostNm = weightNm * (1 + STANDING_FORCE * standing);
  const torqueNm = wantedNm < mostNm ? wantedNm : mostNm;
  return reserveRatio < SPARING_BELOW
    ? spared(machine, torqueNm, cadenceRpm, reserveRatio, standing)
    : torqueNm;
}

/** The reserve runs low: what lies above critical power fades out with it, unless the rider stands up and spends it. */
function spared(
  machine: Machine,
  torqueNm: number,
  cadenceRpm: number,
  reserveRatio: number,
  spending: number,
): number {
  const omega = rpmToRadPerS(cadenceRpm);
  const criticalW = machine.rider.criticalPowerW;
  const powerW = torqueNm * omega;
  if (powerW <= criticalW) return torqueNm;
  const left = reserveRatio / SPARING_BELOW;
  const share = left + (1 - left) * spending;
  return (criticalW + (powerW - criticalW) * share) / omega;
}

/** What the road may lean on the legs before they are forced below the band: load over reference torque. */
export function comfortLoad(machine: Machine, slopeRatio: number): number {
  const low = bandLowRpm(machine.rider, slopeRatio);
  return crankTorqueNm(machine, 1, low, slopeRatio) / machine.referenceTorqueNm;
}

/**
 * Reserve after a short time (J): falls by power above critical power, comes back below it in
 * proportion to what is missing (differential form of Skiba et al. 2015). Never below 0.
 */
export function reserveAfterJ(
  reserveJ: number,
  powerW: number,
  rider: Pick<Rider, 'criticalPowerW' | 'reserveJ'>,
  dtS: number,
): number {
  const surplusW = rider.criticalPowerW - powerW;
  const rateW = surplusW < 0 ? surplusW : (surplusW * (rider.reserveJ - reserveJ)) / rider.reserveJ;
  return Math.max(0, reserveJ + rateW * dtS);
}

/** On climbs the lower edge of the band falls by 1.5 rpm per 1 % of gradient, at most by 15 rpm (rpm). */
export function bandLowRpm(rider: Rider, slopeRatio: number): number {
  if (slopeRatio <= 0) return rider.cadenceLowRpm;
  return rider.cadenceLowRpm - Math.min(15, 150 * slopeRatio);
}
