/**
 * The last part of a step: what the new speed and place mean (foot down, stop lines, crossed chain,
 * reserve, finish), the energy ledger, and the fresh state literal.
 */
import { sampleAt } from '../math/numbers.ts';
import { GRAVITY } from '../model/load.ts';
import type { Gear, Pressure } from '../model/types.ts';
import type { ChainDraft } from './shifting.ts';
import type { EnergyLedger, RideEvent, RidePhase, RideState, RideWorld } from './types.ts';

/** Below this speed without drive a foot goes down (m/s, ours). */
const FOOT_DOWN_MPS = 0.4;
/** Speed of the push with the foot, time lost, and how much easier the rider starts (ours). */
export const PUSH_OFF_MPS = 1.2;
export const FOOT_DOWN_S = 3;
const EASIER_AFTER_FOOT_DOWN = 2;
/** A rider stops within this distance before a line (m). */
export const STOP_ZONE_M = 3;
const STANDING_S = 2;
const OVERRUN_STANDING_S = 4;
/** Crossed shorter than this is a passing place on the way to another gear. */
export const CROSSED_GRACE_S = 1.5;
/** Share of the reserve that must be back before pressing works again. */
const RESERVE_BACK = 0.25;
/** After a start from rest the bike counts as rolling from here on (m/s). */
const ROLLING_MPS = 0.8;

/** Legs that change by less than this in a tick have reached what they were asked for. */
const LEGS_SETTLED = 0.0005;

/** Everything the earlier parts of a step found out. */
export interface Happening {
  readonly speedMps: number;
  readonly stepM: number;
  readonly chain: ChainDraft;
  readonly gear: Gear;
  readonly pressure: Pressure;
  readonly braking: boolean;
  readonly pressureRatio: number;
  readonly cadenceRpm: number;
  readonly crankTorqueNm: number;
  readonly driveN: number;
  readonly airN: number;
  readonly rollingN: number;
  readonly bearingsN: number;
  readonly brakeN: number;
  readonly reserveJ: number;
}

interface Situation {
  phase: RidePhase;
  phaseLeftS: number;
  startingUp: boolean;
  nextStopIndex: number;
  speedMps: number;
  pushOffJ: number;
}

/** Settles the tick and returns the new state; events are appended. */
export function detectEvents(
  world: RideWorld,
  state: RideState,
  h: Happening,
  events: RideEvent[],
): RideState {
  const tick = state.tick + 1;
  const distanceM = state.distanceM + h.stepM;
  const at = { tick, distanceM };
  const situation: Situation = {
    phase: state.phase,
    phaseLeftS: state.phaseLeftS > 0 ? Math.max(0, state.phaseLeftS - world.tickS) : 0,
    startingUp: state.startingUp && h.speedMps < ROLLING_MPS,
    nextStopIndex: state.nextStopIndex,
    speedMps: h.speedMps,
    pushOffJ: 0,
  };
  if (state.phase === 'riding') {
    stopLine(world, situation, h, at, events);
    if (situation.phase === 'riding') footDown(world, state, situation, h, at, events);
  } else getGoing(world, state, situation, at, events);
  const crossedS = crossing(world, state, h, at, events);
  const spent = reserve(world, state, h, at, events);
  if (distanceM >= world.course.lengthM) {
    situation.phase = 'finished';
    events.push({ kind: 'finished', ...at });
  }
  return {
    tick,
    distanceM,
    speedMps: situation.speedMps,
    pressure: h.pressure,
    braking: h.braking,
    pressureRatio: h.pressureRatio,
    crankTurns: state.crankTurns + (h.cadenceRpm / 60) * world.tickS,
    cadenceRpm: h.cadenceRpm,
    crankTorqueNm: h.crankTorqueNm,
    ringIndex: h.chain.ringIndex,
    sprocketIndex: h.chain.sprocketIndex,
    rear: h.chain.rear,
    front: h.chain.front,
    queue: h.chain.queue,
    reserveJ: h.reserveJ,
    spent,
    chainOn: h.chain.chainOn,
    phase: situation.phase,
    phaseLeftS: situation.phaseLeftS,
    startingUp: situation.startingUp,
    nextStopIndex: situation.nextStopIndex,
    crossedS,
    ledger: bookEnergy(world, state, h, situation, distanceM),
  };
}

function stopLine(
  world: RideWorld,
  s: Situation,
  h: Happening,
  at: { tick: number; distanceM: number },
  events: RideEvent[],
): void {
  const lineM = world.course.stopLinesM[s.nextStopIndex];
  if (lineM === undefined || at.distanceM < lineM - STOP_ZONE_M) return;
  if (at.distanceM > lineM) {
    events.push({ kind: 'line-missed', ...at });
    s.phase = 'overrun';
    s.nextStopIndex += 1;
  } else if (h.speedMps <= 0) {
    events.push({ kind: 'stopped-at-line', ...at });
    s.phase = 'standing';
    s.phaseLeftS = STANDING_S;
    s.nextStopIndex += 1;
  }
}

/** Too slow and not getting faster: the foot goes down. Braking to rest or starting from rest is no foot down. */
function footDown(
  world: RideWorld,
  state: RideState,
  s: Situation,
  h: Happening,
  at: { tick: number; distanceM: number },
  events: RideEvent[],
): void {
  if (h.braking) {
    if (h.speedMps <= 0) s.startingUp = true;
    return;
  }
  if (h.speedMps >= FOOT_DOWN_MPS || h.speedMps > state.speedMps) return;
  // From rest, legs that are not yet asked to push, or only begin to, are no failure.
  const rising = h.pressureRatio - state.pressureRatio > LEGS_SETTLED;
  if (s.startingUp && (rising || h.pressureRatio < LEGS_SETTLED)) return;
  events.push({ kind: 'foot-down', ...at });
  s.phase = 'foot-down';
  s.phaseLeftS = FOOT_DOWN_S;
  s.speedMps = 0;
  const last = world.machine.sprocketCount - 1;
  h.chain.sprocketIndex = Math.min(last, h.chain.sprocketIndex + EASIER_AFTER_FOOT_DOWN);
  h.chain.rear = null;
  h.chain.front = null;
  h.chain.queue = [];
  h.chain.chainOn = true;
}

/** Waiting times end; after a foot down the rider is pushed off, at a line the legs must do it. */
function getGoing(
  world: RideWorld,
  state: RideState,
  s: Situation,
  at: { tick: number; distanceM: number },
  events: RideEvent[],
): void {
  if (state.phase === 'overrun') {
    if (s.speedMps > 0) return;
    s.phase = 'standing';
    s.phaseLeftS = OVERRUN_STANDING_S;
  } else if (s.phaseLeftS <= 0) {
    if (state.phase === 'foot-down') {
      s.speedMps = PUSH_OFF_MPS;
      s.pushOffJ = (world.machine.effectiveMassKg * PUSH_OFF_MPS * PUSH_OFF_MPS) / 2;
      events.push({ kind: 'pushed-off', ...at });
    } else s.startingUp = true;
    s.phase = 'riding';
  }
}

function crossing(
  world: RideWorld,
  state: RideState,
  h: Happening,
  at: { tick: number; distanceM: number },
  events: RideEvent[],
): number {
  if (!h.gear.crossed || !h.chain.chainOn) return 0;
  const crossedS = state.crossedS + (h.cadenceRpm > 0 ? world.tickS : 0);
  if (crossedS > CROSSED_GRACE_S && state.crossedS <= CROSSED_GRACE_S)
    events.push({ kind: 'chain-crossed', ...at });
  return crossedS;
}

function reserve(
  world: RideWorld,
  state: RideState,
  h: Happening,
  at: { tick: number; distanceM: number },
  events: RideEvent[],
): boolean {
  if (!state.spent && h.reserveJ <= 0) {
    events.push({ kind: 'reserve-empty', ...at });
    return true;
  }
  if (state.spent && h.reserveJ >= RESERVE_BACK * world.machine.rider.reserveJ) {
    events.push({ kind: 'reserve-back', ...at });
    return false;
  }
  return state.spent;
}

/**
 * Books every joule of the tick. What the brakes (or the ground under a foot) take is what is missing where
 * a speed was set rather than reached; everything else is force times way.
 */
function bookEnergy(
  world: RideWorld,
  state: RideState,
  h: Happening,
  s: Situation,
  distanceM: number,
): EnergyLedger {
  const { ledger } = state;
  const { machine, course } = world;
  const workInJ = (h.driveN / h.gear.efficiency) * h.stepM;
  const kineticJ = (machine.effectiveMassKg * s.speedMps * s.speedMps) / 2;
  const rest = h.speedMps <= 0 || s.speedMps !== h.speedMps;
  const climbedNowJ =
    machine.totalMassKg *
    GRAVITY *
    (sampleAt(course.heightM, distanceM) - sampleAt(course.heightM, state.distanceM));
  const airJ = h.airN * h.stepM;
  const rollingJ = h.rollingN * h.stepM;
  const bearingsJ = h.bearingsN * h.stepM;
  const drivetrainJ = workInJ - h.driveN * h.stepM;
  const balanceJ =
    ledger.kineticJ +
    workInJ +
    s.pushOffJ -
    kineticJ -
    climbedNowJ -
    airJ -
    rollingJ -
    bearingsJ -
    drivetrainJ;
  return {
    workInJ: ledger.workInJ + workInJ,
    pushOffJ: ledger.pushOffJ + s.pushOffJ,
    kineticJ,
    climbedJ: ledger.climbedJ + climbedNowJ,
    airJ: ledger.airJ + airJ,
    rollingJ: ledger.rollingJ + rollingJ,
    bearingsJ: ledger.bearingsJ + bearingsJ,
    drivetrainJ: ledger.drivetrainJ + drivetrainJ,
    brakesJ: ledger.brakesJ + (rest ? balanceJ : h.brakeN * h.stepM),
  };
}
