/**
 * Puts road, bike and rider together for one ride, and makes the state before the first tick.
 */
import type { Course } from '../course/types.ts';
import { courseOfLevel } from '../level/build.ts';
import { buildMachine, gearAt, steadyGear } from '../model/machine.ts';
import { batteryJ } from '../model/motor.ts';
import type { Bike, GearPlace, Machine, Rider } from '../model/types.ts';
import type { RideJob } from './job.ts';
import { TICK_S } from './clock.ts';
import type { MotorState, RideState, RideWorld } from './types.ts';

/** Riders roll into a level a little slower than they would ride on the flat. */
const START_SHARE_OF_STEADY = 0.9;

/** Builds the world of a ride. The start gear is the one that suits a steady ride on the flat; only convergence tests change the tick (s). */
export function buildRideWorld(
  course: Course,
  bike: Bike,
  rider: Rider,
  options: { readonly autoEase?: boolean; readonly tickS?: number } = {},
): RideWorld {
  const machine = buildMachine(bike, rider);
  const start = steadyGear(machine, rider.steadyPowerW, 0, 0);
  return {
    machine,
    course,
    tickS: options.tickS ?? TICK_S,
    autoEase: options.autoEase ?? false,
    startSpeedMps: start.speedMps * START_SHARE_OF_STEADY,
    startRingIndex: start.gear.ringIndex,
    startSprocketIndex: start.gear.sprocketIndex,
  };
}

/** The world of a job. Throws where bike and rider cannot be put together. */
export function worldOfJob({ level, seed, bike, rider, autoEase }: RideJob): RideWorld {
  return buildRideWorld(courseOfLevel(level, seed), bike, rider, { autoEase });
}

/** Where the shifters stand before the first tick. */
export function startPlace({ startRingIndex, startSprocketIndex }: RideWorld): GearPlace {
  return { ringIndex: startRingIndex, sprocketIndex: startSprocketIndex };
}

/** The state before the first tick, or one to ask "what if" from: any place, speed and gear. */
export function startState(
  world: RideWorld,
  at: Partial<Pick<RideState, 'distanceM' | 'speedMps' | 'ringIndex' | 'sprocketIndex'>> = {},
): RideState {
  const distanceM = at.distanceM ?? 0;
  const speedMps = at.speedMps ?? world.startSpeedMps;
  const ringIndex = at.ringIndex ?? world.startRingIndex;
  const sprocketIndex = at.sprocketIndex ?? world.startSprocketIndex;
  const pushJ = (world.machine.effectiveMassKg * speedMps * speedMps) / 2;
  const gear = gearAt(world.machine, ringIndex, sprocketIndex);
  return {
    tick: 0,
    distanceM,
    speedMps,
    pressure: 'steady',
    braking: false,
    pressureRatio: 1,
    crankTurns: 0,
    cadenceRpm: (60 * speedMps) / gear.developmentM,
    crankTorqueNm: 0,
    ringIndex,
    sprocketIndex,
    rear: null,
    front: null,
    queue: [],
    reserveJ: world.machine.rider.reserveJ,
    spent: false,
    chainOn: true,
    phase: 'riding',
    phaseLeftS: 0,
    startingUp: false,
    nextStopIndex: nextStop(world.course, distanceM),
    crossedS: 0,
    motor: motorAtStart(world.machine),
    ledger: {
      workInJ: 0,
      motorInJ: 0,
      pushOffJ: pushJ,
      kineticJ: pushJ,
      climbedJ: 0,
      airJ: 0,
      rollingJ: 0,
      bearingsJ: 0,
      drivetrainJ: 0,
      brakesJ: 0,
    },
  };
}

function motorAtStart({ bike: { motor } }: Machine): MotorState | null {
  return motor === undefined ? null : { torqueNm: 0, idleM: 0, chargeJ: batteryJ(motor) };
}

function nextStop(course: Course, distanceM: number): number {
  const at = course.stopLinesM.findIndex((lineM) => lineM > distanceM);
  return at < 0 ? course.stopLinesM.length : at;
}
