/**
 * Between pedals and road: what a torque at the crank pushes at the wheel, and what a force at the wheel asks of the
 * crank. One turn of the crank moves the bike by the development of the gear; what the chain loses on the way is in
 * the gear's efficiency.
 */
import { PI } from '../math/numbers.ts';
import type { Gear } from './types.ts';

type Transmission = Pick<Gear, 'developmentM' | 'efficiency'>;

/** Force at the wheel (N) of a torque at the crank (N m). */
export function wheelForceN(crankTorqueNm: number, gear: Transmission): number {
  return (2 * PI * crankTorqueNm * gear.efficiency) / gear.developmentM;
}

/**
 * The inverse: torque at the crank that holds a force at the wheel (N), in units of `unitNm`. With the reference
 * torque of a rider as the unit, 1 is what steady riding at mid band feels like.
 */
export function crankTorqueFor(forceN: number, gear: Transmission, unitNm: number): number {
  return (forceN * gear.developmentM) / (2 * PI * gear.efficiency * unitNm);
}
