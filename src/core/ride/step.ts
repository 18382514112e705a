/**
 * One tick of a ride: the only place where time passes. Player, planner, virtual riders, command line and
 * tests all call `stepRide`; it is pure, and given the same state and commands gives the same bits.
 */
import { PI, sampleAt } from '../math/numbers.ts';
import { cadenceAtRpm, gearAt } from '../model/machine.ts';
import {
  crankTorqueNm,
  LEG_LAG_S,
  MAXIMUM_CADENCE_RPM,
  pressureTarget,
  reserveAfterJ,
} from '../model/legs.ts';
import { airForceN, bearingForceN, climbingForceN, rollingForceN } from '../model/load.ts';
import { FREE_LEGS_RPM } from '../model/shift.ts';
import type { Gear, Pressure } from '../model/types.ts';
import { detectEvents, type Happening } from './happenings.ts';
import { advanceShift, type ChainDraft, queueShift } from './shifting.ts';
import type { RideCommand, RideEvent, RideState, RideWorld, StepResult } from './types.ts';

/** Fixed length of a tick (s). */
export const TICK_S = 1 / 120;
/** Deceleration of the brakes pulled firmly, as a rider does on a dry road (m/s², ours). */
export const BRAKE_MPS2 = 3.5;
/** Riders brake by themselves above 50 km/h. */
export const FASTEST_MPS = 50 / 3.6;
/** Legs lighter than this have stopped turning the cranks. */
const LEGS_STILL = 0.05;

/** Forces of one tick (N) and what they do. */
interface Forces {
  readonly driveN: number;
  readonly airN: number;
  readonly rollingN: number;
  readonly climbingN: number;
  readonly bearingsN: number;
  readonly brakeN: number;
}

/** Advances by one tick. Commands act at its beginning. */
export function stepRide(world: RideWorld, state: RideState, commands: readonly RideCommand[]): StepResult {
  if (state.phase === 'finished') return { state, events: [] };
  const events: RideEvent[] = [];
  const chain: ChainDraft = {
    ringIndex: state.ringIndex,
    sprocketIndex: state.sprocketIndex,
    rear: state.rear,
    front: state.front,
    queue: state.queue,
    chainOn: state.chainOn,
  };
  const asked = commands.length > 0 ? applyCommands(world, state, chain, commands, events) : state;
  if (chain.queue.length > 0 || chain.rear !== null || chain.front !== null)
    advanceShift(world, state, chain, events);
  const pressureRatio = riderEffort(world, state, chain, asked);
  const gear = gearAt(world.machine, chain.ringIndex, chain.sprocketIndex);
  const cadenceRpm = cadence(state, chain, gear, pressureRatio);
  const torqueNm = drivetrainTorque(world, state, chain, gear, pressureRatio);
  const forces = roadForces(world, state, gear, torqueNm, asked.braking);
  const moved = integrate(world, state, forces);
  const happening: Happening = {
    speedMps: moved.speedMps,
    stepM: moved.stepM,
    chain,
    gear,
    pressure: asked.pressure,
    braking: asked.braking,
    pressureRatio,
    cadenceRpm,
    crankTorqueNm: torqueNm,
    driveN: forces.driveN,
    airN: forces.airN,
    rollingN: forces.rollingN,
    bearingsN: forces.bearingsN,
    brakeN: forces.brakeN,
    reserveJ: reserveAfterJ(
      state.reserveJ,
      (torqueNm * cadenceRpm * PI) / 30,
      world.machine.rider,
      world.tickS,
    ),
  };
  return { state: detectEvents(world, state, happening, events), events };
}

function applyCommands(
  world: RideWorld,
  state: RideState,
  chain: ChainDraft,
  commands: readonly RideCommand[],
  events: RideEvent[],
): { pressure: Pressure; braking: boolean } {
  let { pressure, braking } = state;
  for (const command of commands) {
    switch (command.kind) {
      case 'shift':
        queueShift(world, state, chain, command, events);
        break;
      case 'pressure':
        pressure = command.pressure;
        break;
      case 'brake':
        braking = command.on;
        break;
    }
  }
  return { pressure, braking };
}

/** The legs follow what is asked with a lag. Braking stops them, unless the rider eases meanwhile. */
function riderEffort(
  world: RideWorld,
  state: RideState,
  chain: ChainDraft,
  asked: { pressure: Pressure; braking: boolean },
): number {
  let target = pressureTarget(asked.pressure);
  const ease = pressureTarget('ease');
  const shifting = chain.rear !== null || chain.front !== null || chain.queue.length > 0;
  if (asked.braking) target = asked.pressure === 'ease' || (world.autoEase && shifting) ? ease : 0;
  else if (world.autoEase && shifting) target = Math.min(target, ease);
  if (target > 1 && state.spent) target = 1;
  if (state.phase !== 'riding') target = 0;
  const share = world.tickS / LEG_LAG_S;
  return state.pressureRatio + (target - state.pressureRatio) * share;
}

/** Cranks turn with the wheel while the legs push; they rest when coasting and run free when the chain is off. */
function cadence(state: RideState, chain: ChainDraft, gear: Gear, pressureRatio: number): number {
  if (state.phase !== 'riding' || pressureRatio < LEGS_STILL) return 0;
  if (!chain.chainOn) return FREE_LEGS_RPM;
  return Math.min(MAXIMUM_CADENCE_RPM, cadenceAtRpm(state.speedMps, gear.developmentM));
}

function drivetrainTorque(
  world: RideWorld,
  state: RideState,
  chain: ChainDraft,
  gear: Gear,
  pressureRatio: number,
): number {
  if (!chain.chainOn || state.phase !== 'riding' || pressureRatio < LEGS_STILL) return 0;
  return crankTorqueNm(world.machine, pressureRatio, cadenceAtRpm(state.speedMps, gear.developmentM));
}

function roadForces(
  world: RideWorld,
  state: RideState,
  gear: Gear,
  torqueNm: number,
  braking: boolean,
): Forces {
  const { machine, course } = world;
  const { distanceM, speedMps } = state;
  const slope = sampleAt(course.slopeRatio, distanceM);
  const crr = machine.bike.rollingCoefficient * sampleAt(course.rollingFactor, distanceM);
  const wind = sampleAt(course.windMps, distanceM);
  const tooFast = Math.max(0, speedMps - FASTEST_MPS);
  const pulled = braking || state.phase === 'overrun' ? BRAKE_MPS2 : 0;
  return {
    driveN: (2 * PI * torqueNm * gear.efficiency) / gear.developmentM,
    airN: airForceN(speedMps, wind, machine.bike.cdaM2, world.airDensityKgM3),
    rollingN: rollingForceN(machine.totalMassKg, slope, crr),
    climbingN: climbingForceN(machine.totalMassKg, slope),
    bearingsN: bearingForceN(speedMps),
    brakeN: machine.effectiveMassKg * (pulled + tooFast / 0.3),
  };
}

/**
 * New speed from the forces, distance from the mean of both speeds: kinetic energy then changes by exactly
 * force times way, which is what keeps the ledger honest. A standing bike does not roll backwards.
 */
function integrate(world: RideWorld, state: RideState, f: Forces): { speedMps: number; stepM: number } {
  const held = state.phase === 'foot-down' || state.phase === 'standing';
  if (held) return { speedMps: 0, stepM: 0 };
  const netN = f.driveN - f.airN - f.rollingN - f.climbingN - f.bearingsN - f.brakeN;
  const accelerationMps2 = netN / world.machine.effectiveMassKg;
  const speedMps = Math.max(0, state.speedMps + accelerationMps2 * world.tickS);
  return { speedMps, stepM: ((state.speedMps + speedMps) / 2) * world.tickS };
}
