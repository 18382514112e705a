/**
 * What the road asks of the legs at a moment of a ride, and how much of it is more than they give inside their band:
 * the one load that trace, planner and virtual riders compute with. The forces themselves are `model/load.ts`.
 */
import { sampleAt } from '../math/numbers.ts';
import { crankTorqueFor } from '../model/drivetrain.ts';
import { comfortLoad } from '../model/legs.ts';
import { roadLoad, totalForceN } from '../model/load.ts';
import { leftForLegsN } from '../model/motor.ts';
import { gearOf } from '../model/transmission.ts';
import type { GearPlace } from '../model/types.ts';
import type { RideState, RideWorld } from './types.ts';

/** What load is asked about. */
type Moment = Pick<RideState, 'distanceM' | 'speedMps'> &
  GearPlace & {
    /** There is a motor, but its battery is empty. */
    readonly unhelped?: boolean;
  };

/** Whether a motor has nothing left to help with. */
export function isUnhelped({ motor }: Pick<RideState, 'motor'>): boolean {
  return motor !== null && motor.chargeJ <= 0;
}

/**
 * Load the road puts on the pedals at the present speed and gear, over reference torque: what a motor leaves of it. 1 is
 * what steady riding at mid band feels like.
 */
export function roadLoadRatio(world: RideWorld, state: Moment): number {
  return roadLoadAt(world, state, state.distanceM);
}

/** The same for another place, as if the rider were there. */
function roadLoadAt(world: RideWorld, state: Omit<Moment, 'distanceM'>, distanceM: number): number {
  const { machine, course } = world;
  const gear = gearOf(machine, state);
  const forceN = totalForceN(
    roadLoad(
      state.speedMps,
      sampleAt(course.slopeRatio, distanceM),
      sampleAt(course.windMps, distanceM),
      machine.totalMassKg,
      machine.bike.cdaM2,
      machine.bike.rollingCoefficient * sampleAt(course.rollingFactor, distanceM),
    ),
  );
  const ownN = state.unhelped === true ? forceN : leftForLegsN(machine, gear, forceN, state.speedMps);
  return crankTorqueFor(ownN, gear, machine.referenceTorqueNm);
}

/** Riders act for where they will be in so many seconds (advice of riders; no measurement was found). */
export const LEAD_S = 2;

/**
 * How much more the road asks than legs inside the band give, in load; 0 where the band carries it. The road two
 * seconds on counts as if it were here, because a rider who waits until the hill leans on the legs is late.
 */
export function overloadRatio(world: RideWorld, state: Moment): number {
  const { distanceM, speedMps } = state;
  return Math.max(
    0,
    beyondBand(world, state, distanceM),
    beyondBand(world, state, distanceM + LEAD_S * speedMps),
  );
}

function beyondBand(world: RideWorld, state: Omit<Moment, 'distanceM'>, distanceM: number): number {
  const slopeRatio = sampleAt(world.course.slopeRatio, distanceM);
  return roadLoadAt(world, state, distanceM) - comfortLoad(world.machine, slopeRatio);
}
