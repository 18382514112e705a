/**
 * What the legs can give: a straight torque–cadence line, four pressures with a short lag, and the
 * reserve above critical power. A game mechanic built from published shapes, never health advice.
 */
import { rpmToRadPerS } from '../math/numbers.ts';
import type { Machine, Pressure, Rider } from './types.ts';

/** Above this the legs cannot follow the pedals (ours, near the 150 rpm where published lines meet zero torque). */
export const MAXIMUM_CADENCE_RPM = 150;
/** Legs follow the head with a first-order lag (ours). */
export const LEG_LAG_S = 0.18;
/** Share of the sustained line that steady power takes at mid band. */
const STEADY_SHARE_OF_LINE = 0.8;
/** Below a few rpm power over cadence means nothing; torque is then limited by the line anyway. */
const SMALLEST_OMEGA = 0.05;

/** Where the legs go for a pressure, as a share of steady. */
export function pressureTarget(pressure: Pressure): number {
  switch (pressure) {
    case 'steady':
      return 1;
    case 'ease':
      return 0.4;
    case 'press':
      return 1.6;
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

/** Torque of the sustained line at standstill (N m), so that steady power is 80 % of the line at mid band. */
export function standstillTorqueNm(rider: Rider): number {
  return referenceTorqueNm(rider) / STEADY_SHARE_OF_LINE / (1 - midBandRpm(rider) / MAXIMUM_CADENCE_RPM);
}

/** Sustained torque line at a cadence (N m); 0 from the maximum on. */
export function lineTorqueNm(standstillNm: number, cadenceRpm: number): number {
  return cadenceRpm >= MAXIMUM_CADENCE_RPM ? 0 : standstillNm * (1 - cadenceRpm / MAXIMUM_CADENCE_RPM);
}

/**
 * Crank torque (N m) at a leg state (0 to 1.6) and cadence. Up to steady it is that share of what power and
 * line allow; above steady the line itself is lifted, by 1.5 times the surplus.
 */
export function crankTorqueNm(machine: Machine, pressureRatio: number, cadenceRpm: number): number {
  if (pressureRatio <= 0) return 0;
  const line = lineTorqueNm(machine.standstillTorqueNm, cadenceRpm);
  if (line <= 0) return 0;
  const omega = Math.max(rpmToRadPerS(cadenceRpm), SMALLEST_OMEGA);
  const byPower = machine.rider.steadyPowerW / omega;
  if (pressureRatio <= 1) return pressureRatio * Math.min(byPower, line);
  return Math.min(pressureRatio * byPower, (1 + 1.5 * (pressureRatio - 1)) * line);
}

/** Power over its peak at a share `x` of the optimal cadence, for a straight torque line: x (2 − x). */
export function powerParabola(x: number): number {
  return x * (2 - x);
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
