/**
 * What the road asks of the wheel: air, rolling, climbing and bearings, after Martin, Milliken, Cobb,
 * McFadden and Coggan 1998 (J Appl Biomech 14:276–291). Forces in newtons, positive against the ride.
 */
import { cosOfSlope } from '../math/numbers.ts';

/** Conventional value of gravity (m/s²). */
export const GRAVITY = 9.80665;
/** Air of the standard atmosphere at sea level and 15 °C (kg/m³). */
export const AIR_DENSITY_KG_M3 = 1.225;
/** Bearing friction of Martin et al. 1998: 0.091 N + 0.0087 N per m/s. */
const BEARING_N = 0.091;
const BEARING_N_PER_MPS = 0.0087;

/** ½ ρ CdA (v + w)|v + w|; a tail wind faster than the rider pushes (negative). */
export function airForceN(speedMps: number, windMps: number, cdaM2: number): number {
  const through = speedMps + windMps;
  return 0.5 * AIR_DENSITY_KG_M3 * cdaM2 * through * Math.abs(through);
}

/** m g s / √(1 + s²): weight along the road. */
export function climbingForceN(massKg: number, slopeRatio: number): number {
  return massKg * GRAVITY * slopeRatio * cosOfSlope(slopeRatio);
}

/** Crr m g / √(1 + s²). */
export function rollingForceN(massKg: number, slopeRatio: number, rollingCoefficient: number): number {
  return rollingCoefficient * massKg * GRAVITY * cosOfSlope(slopeRatio);
}

/** Bearing friction of the wheels at this speed (N). */
export function bearingForceN(speedMps: number): number {
  return BEARING_N + BEARING_N_PER_MPS * speedMps;
}

/** All four parts for a rolling bike. */
export function roadLoad(
  speedMps: number,
  slopeRatio: number,
  windMps: number,
  massKg: number,
  cdaM2: number,
  rollingCoefficient: number,
) {
  return {
    airN: airForceN(speedMps, windMps, cdaM2),
    rollingN: rollingForceN(massKg, slopeRatio, rollingCoefficient),
    climbingN: climbingForceN(massKg, slopeRatio),
    bearingsN: bearingForceN(speedMps),
  };
}

/** Sum of the parts (N). */
export function totalForceN(load: ReturnType<typeof roadLoad>): number {
  return load.airN + load.rollingN + load.climbingN + load.bearingsN;
}

/** Moment of inertia over radius squared: the mass a spinning wheel seems to add (kg). */
export function rotationalMassKg(inertiaKgM2: number, radiusM: number): number {
  return inertiaKgM2 / (radiusM * radiusM);
}
