/**
 * Virtual riders: people of graded skill made of a few habits, with seeded chance. They ride levels in
 * tests, on the command line and for honest figures; the player never meets them.
 */
import { clamp, PI, sampleAt } from '../math/numbers.ts';
import { between, deriveSeed, type Random, seededRandom } from '../math/random.ts';
import { bandLowRpm } from '../model/legs.ts';
import { climbingForceN } from '../model/load.ts';
import { cadenceAtRpm, gearAt } from '../model/machine.ts';
import { roadLoadRatio } from './frame.ts';
import { brakeForLine } from './pilot.ts';
import type { Controller } from './run.ts';
import type { RideCommand, RideState, RideWorld, ShiftDirection } from './types.ts';

/** What makes a virtual rider. */
export interface Habits {
  /** Never touches a lever if false. */
  readonly shifts: boolean;
  /** How far ahead the road is taken into account (m); 0 waits for the legs. */
  readonly lookAheadM: number;
  /** Time from noticing to acting (s). */
  readonly reactionS: number;
  /** How far the cadence leaves the band before a rider without foresight does something (rpm). */
  readonly slackRpm: number;
  /** Chance that the pedals are eased for a shift. */
  readonly easingShare: number;
  /** Needless shifts there and back, per minute. */
  readonly fidgetsPerMinute: number;
  /** Changes rings before the chain gets crossed. */
  readonly minds: boolean;
}

/** The named riders of the command line. */
export const NAMED_HABITS = {
  never: habits({ shifts: false }),
  late: habits({ slackRpm: 14, reactionS: 0.6 }),
  'late-easing': habits({ slackRpm: 14, reactionS: 0.6, easingShare: 1 }),
  early: habits({ lookAheadM: 26, slackRpm: 2, reactionS: 0.25, easingShare: 1, minds: true }),
} as const satisfies Record<string, Habits>;

export type NamedRider = keyof typeof NAMED_HABITS;

/** Habits for a skill from 0 (waits, pushes through, fidgets) to 1 (looks, eases, leaves well alone). */
export function habitsForSkill(skill: number): Habits {
  const s = clamp(skill, 0, 1);
  return habits({
    lookAheadM: 26 * s,
    slackRpm: 18 - 16 * s,
    reactionS: 0.9 - 0.65 * s,
    easingShare: s,
    fidgetsPerMinute: 3 * (1 - s),
    minds: s > 0.5,
  });
}

function habits(part: Partial<Habits>): Habits {
  return {
    shifts: true,
    lookAheadM: 0,
    reactionS: 0.5,
    slackRpm: 10,
    easingShare: 0,
    fidgetsPerMinute: 0,
    minds: false,
    ...part,
  };
}

/** Load ahead, in the present gear, for which a rider with foresight gets ready; lower, and the gear may go back up. */
const READY_LOAD = 1.9;
const STAY_READY_LOAD = 1.5;
/** Above the band, but not further, such a rider lets the legs spin up before a hill (rpm). */
const SPIN_ROOM_RPM = 8;
const EASE_BEFORE_S = 0.28;
const SETTLE_S = 0.35;

interface Mind {
  wish: ShiftDirection | null;
  wishSinceTick: number;
  /** Shift planned for a tick, after easing. */
  actTick: number;
  act: RideCommand[] | null;
  easing: boolean;
  restUntilTick: number;
  undo: ShiftDirection | null;
}

/** A controller with these habits. Deterministic for a seed. */
export function virtualRider(world: RideWorld, habitsOfRider: Habits, seed: number): Controller {
  const random = seededRandom(deriveSeed(seed, 'virtual rider'));
  const mind: Mind = {
    wish: null,
    wishSinceTick: 0,
    actTick: -1,
    act: null,
    easing: false,
    restUntilTick: 0,
    undo: null,
  };
  const brake = brakeForLine(world);
  return (state) => {
    const commands: RideCommand[] = [...brake(state)];
    if (state.phase !== 'riding') return commands;
    if (!state.chainOn) return [...commands, ...liftChain(state)];
    if (mind.act !== null) finishShift(state, mind, commands);
    else if (habitsOfRider.shifts && state.tick >= mind.restUntilTick && state.tick % 6 === 0)
      consider(world, state, habitsOfRider, mind, random, commands);
    return commands;
  };
}

/** Eases and lifts a dropped chain back on. */
function liftChain(state: RideState): RideCommand[] {
  if (state.pressure !== 'ease') return [{ kind: 'pressure', pressure: 'ease' }];
  if (state.front !== null || state.queue.length > 0) return [];
  const direction = state.ringIndex === 0 ? 'harder' : 'easier';
  return [{ kind: 'shift', derailleur: 'front', direction, steps: 1 }];
}

function finishShift(state: RideState, mind: Mind, commands: RideCommand[]): void {
  if (state.tick === mind.actTick) commands.push(...(mind.act ?? []));
  const busy = state.rear !== null || state.front !== null || state.queue.length > 0;
  if (state.tick <= mind.actTick + 2 || busy) return;
  if (mind.easing) commands.push({ kind: 'pressure', pressure: 'steady' });
  mind.act = null;
  mind.easing = false;
  mind.restUntilTick = state.tick + Math.round(SETTLE_S * 120);
}

function consider(
  world: RideWorld,
  state: RideState,
  h: Habits,
  mind: Mind,
  random: Random,
  commands: RideCommand[],
): void {
  const fidget = random() < (h.fidgetsPerMinute / 60) * 0.05;
  if (state.pressure !== 'steady') commands.push({ kind: 'pressure', pressure: 'steady' });
  if (mind.undo !== null) {
    plan(world, state, h, mind, random, mind.undo, commands);
    mind.undo = null;
    return;
  }
  const wish = wishOf(world, state, h);
  if (wish === null && fidget) {
    const direction: ShiftDirection = random() < 0.5 ? 'easier' : 'harder';
    plan(world, state, h, mind, random, direction, commands);
    mind.undo = direction === 'easier' ? 'harder' : 'easier';
    return;
  }
  if (wish !== mind.wish) {
    mind.wish = wish;
    mind.wishSinceTick = state.tick;
  }
  const patience = Math.round(h.reactionS * between(random, 0.8, 1.2) * 120);
  if (wish !== null && state.tick - mind.wishSinceTick >= patience)
    plan(world, state, h, mind, random, wish, commands);
}

/** Which way the rider would like to go, or null for staying. */
function wishOf(world: RideWorld, state: RideState, h: Habits): ShiftDirection | null {
  if (state.startingUp || state.speedMps < 1 || state.braking) return null;
  const { rider } = world.machine;
  const gear = gearAt(world.machine, state.ringIndex, state.sprocketIndex);
  const rpm = cadenceAtRpm(state.speedMps, gear.developmentM);
  const low = bandLowRpm(rider, sampleAt(world.course.slopeRatio, state.distanceM));
  if (rpm < low - h.slackRpm) return 'easier';
  const ahead = h.lookAheadM > 0 ? loadAhead(world, state, h.lookAheadM) : 0;
  if (ahead > READY_LOAD && rpm < rider.cadenceHighRpm + SPIN_ROOM_RPM) return 'easier';
  const patienceRpm = Math.max(3, h.slackRpm * 0.8);
  if (rpm > rider.cadenceHighRpm + patienceRpm && ahead < STAY_READY_LOAD) return 'harder';
  return null;
}

/** Load in the present gear on the steepest of the road ahead that can be seen. */
function loadAhead(world: RideWorld, state: RideState, lookAheadM: number): number {
  const { machine, course } = world;
  const here = sampleAt(course.slopeRatio, state.distanceM);
  const reach = Math.min(lookAheadM, sampleAt(course.sightM, state.distanceM));
  const stop = course.stopLinesM[state.nextStopIndex];
  let steepest = here;
  for (let ahead = 4; ahead <= reach; ahead += 4) {
    if (stop !== undefined && state.distanceM + ahead > stop) break;
    steepest = Math.max(steepest, sampleAt(course.slopeRatio, state.distanceM + ahead));
  }
  const gear = gearAt(machine, state.ringIndex, state.sprocketIndex);
  const moreN = climbingForceN(machine.totalMassKg, steepest) - climbingForceN(machine.totalMassKg, here);
  const more = (moreN * gear.developmentM) / (2 * PI * gear.efficiency * machine.referenceTorqueNm);
  return roadLoadRatio(world, state) + more;
}

function plan(
  world: RideWorld,
  state: RideState,
  h: Habits,
  mind: Mind,
  random: Random,
  direction: ShiftDirection,
  commands: RideCommand[],
): void {
  const act = shiftCommands(world, state, direction, h.minds);
  if (act.length === 0) {
    mind.restUntilTick = state.tick + 60;
    return;
  }
  mind.wish = null;
  mind.act = act;
  mind.easing = random() < h.easingShare;
  mind.actTick = state.tick + 1 + (mind.easing ? Math.round(EASE_BEFORE_S * 120) : 0);
  if (mind.easing) commands.push({ kind: 'pressure', pressure: 'ease' });
}

/** The lever pushes for one step easier or harder; those who mind the chain line change rings in good time. */
export function shiftCommands(
  world: RideWorld,
  state: RideState,
  direction: ShiftDirection,
  minds: boolean,
): RideCommand[] {
  const { machine } = world;
  const step = direction === 'easier' ? 1 : -1;
  const next = state.sprocketIndex + step;
  const inside = next >= 0 && next < machine.sprocketCount;
  const rear: RideCommand = { kind: 'shift', derailleur: 'rear', direction, steps: 1 };
  if (inside && !(minds && gearAt(machine, state.ringIndex, next).crossed)) return [rear];
  const ring = state.ringIndex - step;
  if (ring < 0 || ring >= machine.ringCount) return inside ? [rear] : [];
  const front: RideCommand = { kind: 'shift', derailleur: 'front', direction, steps: 1 };
  return [front, ...compensation(world, state, ring, direction, minds)];
}

/** Sprockets to move the other way, so that a ring change is one small step and not a big one. */
function compensation(
  world: RideWorld,
  state: RideState,
  ring: number,
  direction: ShiftDirection,
  minds: boolean,
): RideCommand[] {
  if (!minds) return [];
  const { machine } = world;
  const now = gearAt(machine, state.ringIndex, state.sprocketIndex).developmentM;
  const wanted = direction === 'easier' ? now * 0.9 : now * 1.1;
  const back = direction === 'easier' ? -1 : 1;
  let best = 0;
  let bestMiss = Number.POSITIVE_INFINITY;
  for (let count = 0; count <= 3; count += 1) {
    const sprocket = state.sprocketIndex + back * count;
    if (sprocket < 0 || sprocket >= machine.sprocketCount) break;
    const miss = Math.abs(gearAt(machine, ring, sprocket).developmentM - wanted);
    if (miss < bestMiss) {
      bestMiss = miss;
      best = count;
    }
  }
  const other: ShiftDirection = direction === 'easier' ? 'harder' : 'easier';
  if (best === 0) return [];
  if (other === 'easier') return [{ kind: 'shift', derailleur: 'rear', direction: other, steps: best }];
  return Array.from({ length: best }, () => ({
    kind: 'shift' as const,
    derailleur: 'rear' as const,
    direction: other,
    steps: 1,
  }));
}
