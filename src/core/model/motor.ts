/**
 * A motor that helps while one pedals: what it adds at the wheel for what the legs give, what it leaves to the legs of
 * what the road asks, and when it must be off. At the crank it pulls on the chain like the legs; in a wheel it does not.
 * EN 15194 sets the frame (MODEL.md quotes it); how soft feet are told from steady ones is ours.
 */
import { PI } from '../math/numbers.ts';
import { wheelForceN } from './drivetrain.ts';
import type { Gear, Machine, Motor } from './types.ts';

/** Continuous rated power (W), taken as the most it ever gives: 0.25 kW, EN 15194. */
export const RATED_W = 250;
/** The help is gone at this speed (EN 15194: 25 km/h) and fades out from this one on (ours: 22 km/h). */
export const CUT_OFF_MPS = 25 / 3.6;
export const FADES_FROM_MPS = 22 / 3.6;
/** Start-up help works up to this speed (EN 15194: 6 km/h), with so much at the wheel (N, ours). */
export const START_HELP_MPS = 6 / 3.6;
const START_HELP_N = 40;
/** Way after the last push on the pedals within which a motor is off, and with switches at the brakes (m, EN 15194). */
const OFF_WITHIN_M = 2;
const OFF_WITHIN_SWITCHED_M = 5;
/** Strongest turning force at the crank or the wheel (N m; ordinary ones of their kind: 40 to 85 are sold). */
const PEAK_NM = { crank: 50, wheel: 40 } as const;
/** The sensor is set to its rider: pedals pushed with less than this share of the reference torque ask for nothing, from the other on for all (ours). */
const HELPS_FROM = 0.5;
const HELPS_FULLY = 0.7;
/** It comes in late: a lag of the first order (s, ours; no measurement was found). */
export const RISES_S = 0.35;
/**
 * Usual motors let go as late (s): two pushes a turn at 70 rpm leave a fifth of their ripple behind a filter of 0.35 s,
 * and without one the help would come in jerks. No measurement was found.
 */
export const FALLS_S = RISES_S;
/** Bikes in recordings from before motors had a lag of their own let go with this one (s, ours). */
const EARLIER_FALLS_S = 0.15;
/** Of what leaves the battery so much arrives as work (from memory: about 80 %). */
export const MOTOR_EFFICIENCY = 0.8;

const JOULES_PER_WH = 3600;
/** Below this speed what the motor can give is not limited by its power (m/s). */
const SLOWEST_MPS = 0.5;

/** Where a motor can sit, and the multiples of the rider's own torque that are offered as help. */
export const MOTOR_PLACES = ['crank', 'wheel'] as const;
export const HELP_RATIOS = [0, 0.5, 1, 2] as const;

/** Energy in the battery at the start of a ride (J). */
export function batteryJ({ batteryWh }: Motor): number {
  return batteryWh * JOULES_PER_WH;
}

/** Whether there is a motor and its help is not set to off. */
export function helpsAtAll({ motor }: { readonly motor?: Motor }): boolean {
  return motor !== undefined && motor.helpRatio > 0;
}

/** Whether the motor pulls on the chain. */
export function loadsChain(bike: { readonly motor?: Motor }): boolean {
  return bike.motor?.place === 'crank' && helpsAtAll(bike);
}

/** Share of the help that is given at a speed: all, fading, none. */
export function helpShare(speedMps: number): number {
  if (speedMps <= FADES_FROM_MPS) return 1;
  return speedMps >= CUT_OFF_MPS ? 0 : (CUT_OFF_MPS - speedMps) / (CUT_OFF_MPS - FADES_FROM_MPS);
}

/** Way after the last push on the pedals after which the motor is off at the latest (m). */
export function offWithinM({ brakeSwitches }: Motor): number {
  return brakeSwitches === true ? OFF_WITHIN_SWITCHED_M : OFF_WITHIN_M;
}

/** Lag of the first order with which a motor lets go when feet go soft (s). */
export function fallsS({ fallsS: own = EARLIER_FALLS_S }: Motor): number {
  return own;
}

/** Force at the wheel (N) for one newton metre of the motor, where it sits. */
export function wheelForcePerNm(machine: Machine, place: Motor['place'], gear: Gear): number {
  return place === 'crank' ? wheelForceN(1, gear) : (2 * PI) / machine.circumferenceM;
}

/** The most a motor at this place adds at the wheel at a speed (N), fading out included. */
export function mostHelpN(machine: Machine, place: Motor['place'], gear: Gear, speedMps: number): number {
  const lost = place === 'crank' ? gear.efficiency : 1;
  const byPowerN = (RATED_W * lost) / (speedMps > SLOWEST_MPS ? speedMps : SLOWEST_MPS);
  const byTorqueN = PEAK_NM[place] * wheelForcePerNm(machine, place, gear);
  return helpShare(speedMps) * (byPowerN < byTorqueN ? byPowerN : byTorqueN);
}

/** What the motor adds at the wheel (N) once it has come in, for legs that push so (N m at the crank); 0 without one. */
export function helpN(machine: Machine, gear: Gear, crankTorqueNm: number, speedMps: number): number {
  const { motor } = machine.bike;
  const asked = crankTorqueNm / machine.referenceTorqueNm;
  if (motor === undefined || asked <= HELPS_FROM) return 0;
  const heard = asked >= HELPS_FULLY ? 1 : (asked - HELPS_FROM) / (HELPS_FULLY - HELPS_FROM);
  const wantedN = motor.helpRatio * helpShare(speedMps) * wheelForceN(crankTorqueNm, gear);
  const mostN = mostHelpN(machine, motor.place, gear, speedMps);
  return heard * (wantedN < mostN ? wantedN : mostN);
}

/** What is added to get going from rest (N at the wheel), while a control is held: pushing steadily holds it here. */
export function startHelpN(speedMps: number): number {
  return speedMps >= START_HELP_MPS ? 0 : START_HELP_N * (1 - speedMps / START_HELP_MPS);
}

/**
 * What is left for the legs of a force that the wheel asks (N), in a gear at a speed. The inverse of `helpN` for legs
 * that push firmly enough to be helped; a force that pushes the bike is left as it is, and all of it without a motor.
 */
export function leftForLegsN(machine: Machine, gear: Gear, forceN: number, speedMps: number): number {
  const { motor } = machine.bike;
  if (motor === undefined || forceN <= 0) return forceN;
  const sharedN = forceN / (1 + motor.helpRatio * helpShare(speedMps));
  const beyondN = forceN - mostHelpN(machine, motor.place, gear, speedMps);
  return sharedN > beyondN ? sharedN : beyondN;
}
