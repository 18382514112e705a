/**
 * Virtual riders: people of graded skill made of a few habits, with seeded chance. They ride levels in
 * tests, on the command line and for honest figures; the player never meets them.
 */
import { clamp, sampleAt } from '../math/numbers.ts';
import { between, deriveSeed, type Random, seededRandom } from '../math/random.ts';
import { bandLowRpm, midBandRpm } from '../model/legs.ts';
import { crankTorqueFor } from '../model/drivetrain.ts';
import { leftForLegsN } from '../model/motor.ts';
import { climbingForceN } from '../model/load.ts';
import { cadenceAtRpm } from '../model/machine.ts';
import { gearOf, pushed, roomFor } from '../model/transmission.ts';
import { hasHub } from '../model/shifters.ts';
import { roadLoadRatio } from '../ride/load.ts';
import { shiftCommands } from '../ride/levers.ts';
import { brakeForLine, brakingDistanceM, mayShiftStanding, softFeet, waitForMotorS } from '../ride/pilot.ts';
import type { Controller } from '../ride/run.ts';
import { TICKS_PER_S } from '../ride/clock.ts';
import { isShifting } from '../ride/step.ts';
import type { RideCommand, RideState, RideWorld, ShiftDirection } from '../ride/types.ts';

/** What makes a virtual rider: one who pushes a lever when the legs ask for it, and nothing more. */
const PLAIN_HABITS = {
  /** Never touches a lever if false. */
  shifts: true,
  /** How far ahead the road is taken into account (m); 0 waits for the legs. */
  lookAheadM: 0,
  /** Time from noticing to acting (s). */
  reactionS: 0.5,
  /** How far the cadence leaves the band before a rider without foresight does something (rpm). */
  slackRpm: 10,
  /** Chance that the pedals are eased for a shift. */
  easingShare: 0,
  /** Needless shifts there and back, per minute. */
  fidgetsPerMinute: 0,
  /** Changes rings before the chain gets crossed. */
  minds: false,
  /** Sprockets such a rider moves at one go where the road asks for it; 1 clicks one by one. */
  sweepSteps: 1,
  /** Rises shorter than this are left to momentum (m). */
  rideOverM: 0,
};
export type Habits = Readonly<typeof PLAIN_HABITS>;

const habits = (part: Partial<Habits>): Habits => ({ ...PLAIN_HABITS, ...part });

/** The named riders of the command line. */
export const NAMED_HABITS = {
  never: habits({ shifts: false }),
  late: habits({ slackRpm: 14, reactionS: 0.6 }),
  'late-easing': habits({ slackRpm: 14, reactionS: 0.6, easingShare: 1 }),
  early: habits({
    lookAheadM: 26,
    slackRpm: 2,
    reactionS: 0.25,
    easingShare: 1,
    minds: true,
    sweepSteps: 3,
    rideOverM: 30,
  }),
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
    sweepSteps: s > 0.75 ? 3 : s > 0.4 ? 2 : 1,
    rideOverM: 30 * s,
  });
}

/** Load ahead, in the present gear, for which a rider with foresight gets ready; lower, and the gear may go back up. */
const READY_LOAD = 1.9;
const STAY_READY_LOAD = 1.1;
/** Above the band, but not further, such a rider lets the legs spin up before a hill (rpm). */
const SPIN_ROOM_RPM = 8;
/** Riders who sweep do not chase every click harder: they let the legs spin so long per further sprocket (s). */
const SPIN_WAIT_S = 1;
/** A gear suits a start if it brings the legs into the band at this share of the usual speed. */
const START_SPEED_SHARE = 0.5;
/** So far above the band the legs follow for the few metres before a stop line (rpm). */
const LINE_SPIN_RPM = 20;
/** Nobody lets up when the pedals hardly turn: the bike would stop (rpm). */
const STALLS_BELOW_RPM = 50;
/** On a climb everybody stands up below the first cadence, and sits down again above the second (rpm). */
const STANDS_BELOW_RPM = 55;
const SITS_ABOVE_RPM = 64;
const CLIMB_RATIO = 0.02;
const EASE_BEFORE_S = 0.28;
const SETTLE_S = 0.35;

interface Mind {
  readonly world: RideWorld;
  readonly habits: Habits;
  readonly random: Random;
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
  const mind: Mind = {
    world,
    habits: habitsOfRider,
    random: seededRandom(deriveSeed(seed, 'virtual rider')),
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
    const braking = brake(state);
    const thinks = mind.act !== null || state.tick % 6 === 0 || !state.chainOn;
    // Nine ticks of ten bring nothing but the brake.
    if (!thinks && state.phase === 'riding') return braking;
    const commands: RideCommand[] = [...braking];
    if (mayShiftStanding(world, state)) return [...commands, ...standingShift(world, state, habitsOfRider)];
    if (state.phase !== 'riding') return commands;
    if (!state.chainOn) return [...commands, ...liftChain(world, state)];
    if (mind.act === null && state.tick % 6 === 0) push(world, state, commands);
    if (mind.act !== null) finishShift(state, mind, commands);
    else if (habitsOfRider.shifts && state.tick >= mind.restUntilTick && state.tick % 6 === 0)
      consider(mind, state, commands);
    return commands;
  };
}

/** Waiting at a line with a hub, whoever looks ahead takes a gear to start in. */
function standingShift(world: RideWorld, state: RideState, h: Habits): RideCommand[] {
  if (!h.shifts || h.lookAheadM <= 0 || state.queue.length > 0 || state.tick % 30 !== 0) return [];
  const { developmentM } = gearOf(world.machine, state);
  return readyForLine(world, 0, developmentM) === null ? [] : shiftCommands(world, state, 'easier', false);
}

/** Sits and pedals, or stands up where the pedals hardly turn. */
function push(world: RideWorld, state: RideState, commands: RideCommand[]): void {
  const climbs = sampleAt(world.course.slopeRatio, state.distanceM) > CLIMB_RATIO;
  const turnsRpm = state.pressure === 'press' ? SITS_ABOVE_RPM : STANDS_BELOW_RPM;
  const pressure = climbs && state.cadenceRpm > 0 && state.cadenceRpm < turnsRpm ? 'press' : 'steady';
  if (state.pressure !== pressure) commands.push({ kind: 'pressure', pressure });
}

/** Eases and lifts a dropped chain back on. */
function liftChain({ machine }: RideWorld, state: RideState): RideCommand[] {
  if (state.pressure !== 'ease') return [{ kind: 'pressure', pressure: 'ease' }];
  if (state.front !== null || state.queue.length > 0) return [];
  const direction = roomFor(machine, state, 'front', 'easier') === 0 ? 'harder' : 'easier';
  return [{ kind: 'shift', derailleur: 'front', direction, steps: 1 }];
}

function finishShift(state: RideState, mind: Mind, commands: RideCommand[]): void {
  if (state.tick === mind.actTick) commands.push(...(mind.act ?? []));
  if (state.tick <= mind.actTick + 2 || isShifting(state)) return;
  if (mind.easing) commands.push({ kind: 'pressure', pressure: 'steady' });
  mind.act = null;
  mind.easing = false;
  mind.restUntilTick = state.tick + Math.round(SETTLE_S * TICKS_PER_S);
}

function consider(mind: Mind, state: RideState, commands: RideCommand[]): void {
  const { world, habits: h, random } = mind;
  const fidget = random() < (h.fidgetsPerMinute / 60) * 0.05;
  if (mind.undo !== null) {
    plan(mind, state, mind.undo, commands);
    mind.undo = null;
    return;
  }
  const wish = wishOf(world, state, h);
  if (wish === null && fidget) {
    const direction: ShiftDirection = random() < 0.5 ? 'easier' : 'harder';
    plan(mind, state, direction, commands);
    mind.undo = direction === 'easier' ? 'harder' : 'easier';
    return;
  }
  if (wish !== mind.wish) {
    mind.wish = wish;
    mind.wishSinceTick = state.tick;
  }
  const waitS = h.reactionS + (wish === 'harder' ? SPIN_WAIT_S * (h.sweepSteps - 1) : 0);
  const patience = Math.round(waitS * between(random, 0.8, 1.2) * TICKS_PER_S);
  if (wish !== null && state.tick - mind.wishSinceTick >= patience) plan(mind, state, wish, commands);
}

/** Which way the rider would like to go, or null for staying. */
function wishOf(world: RideWorld, state: RideState, h: Habits): ShiftDirection | null {
  if (state.startingUp || state.speedMps < 1 || state.braking) return null;
  const { rider } = world.machine;
  const gear = gearOf(world.machine, state);
  const rpm = cadenceAtRpm(state.speedMps, gear.developmentM);
  const low = bandLowRpm(rider, sampleAt(world.course.slopeRatio, state.distanceM));
  if (rpm < low - h.slackRpm) return 'easier';
  if (nearLine(world, state, h)) return readyForLine(world, rpm, gear.developmentM);
  const ahead = h.lookAheadM > 0 ? loadAhead(world, state, h) : 0;
  if (ahead > READY_LOAD && rpm < rider.cadenceHighRpm + SPIN_ROOM_RPM) return 'easier';
  const patienceRpm = Math.max(3, h.slackRpm * 0.8);
  if (rpm > rider.cadenceHighRpm + patienceRpm && ahead < STAY_READY_LOAD) return 'harder';
  return null;
}

/** True where a rider with foresight gets ready for a stop line. */
function nearLine(world: RideWorld, state: RideState, h: Habits): boolean {
  const lineM = world.course.stopLinesM[state.nextStopIndex];
  if (lineM === undefined || h.lookAheadM <= 0) return false;
  return lineM - state.distanceM <= brakingDistanceM(state.speedMps) + h.lookAheadM;
}

/** Before a line: down to a gear to start in, as far as the legs can follow, and no harder again. */
function readyForLine(world: RideWorld, rpm: number, developmentM: number): 'easier' | null {
  const { rider } = world.machine;
  const startRpm = cadenceAtRpm(world.startSpeedMps * START_SPEED_SHARE, developmentM);
  return startRpm < rider.cadenceLowRpm && rpm < rider.cadenceHighRpm + LINE_SPIN_RPM ? 'easier' : null;
}

/** Load in the present gear on the steepest of the road ahead that can be seen; short rises count by their mean. */
function loadAhead(world: RideWorld, state: RideState, h: Habits): number {
  const { machine, course } = world;
  const here = sampleAt(course.slopeRatio, state.distanceM);
  const sight = sampleAt(course.sightM, state.distanceM);
  const stop = course.stopLinesM[state.nextStopIndex];
  let steepest = here;
  for (let ahead = 4; ahead <= Math.min(h.lookAheadM, sight); ahead += 4) {
    const fromM = state.distanceM + ahead;
    if (stop !== undefined && fromM > stop) break;
    const overM = Math.max(1, Math.min(h.rideOverM, sight - ahead));
    const rise = sampleAt(course.heightM, fromM + overM) - sampleAt(course.heightM, fromM);
    steepest = Math.max(steepest, rise / overM);
  }
  const gear = gearOf(machine, state);
  const moreN = climbingForceN(machine.totalMassKg, steepest) - climbingForceN(machine.totalMassKg, here);
  const ownN = leftForLegsN(machine, gear, moreN, state.speedMps);
  return roadLoadRatio(world, state) + crankTorqueFor(ownN, gear, machine.referenceTorqueNm);
}

function plan(mind: Mind, state: RideState, direction: ShiftDirection, commands: RideCommand[]): void {
  const { world, habits: h, random } = mind;
  const rpm = cadenceAtRpm(state.speedMps, gearOf(world.machine, state).developmentM);
  // With the pedals nearly still nobody thinks of the chain line: just easier.
  const minds = h.minds && (direction === 'harder' || rpm > STALLS_BELOW_RPM);
  const act = shiftCommands(world, state, direction, minds, stepsAtOnce(world, state, h, direction));
  if (act.length === 0) {
    mind.restUntilTick = state.tick + 60;
    return;
  }
  mind.wish = null;
  mind.act = act;
  // Drawn in any case, so that the dice fall alike for riders who differ in one habit.
  const eases = random() < h.easingShare;
  mind.easing = eases && (rpm > STALLS_BELOW_RPM || hasHub(world.machine.bike));
  mind.actTick =
    state.tick + 1 + (mind.easing ? Math.round((EASE_BEFORE_S + waitForMotorS(world)) * TICKS_PER_S) : 0);
  if (mind.easing) commands.push({ kind: 'pressure', pressure: softFeet(world, state) });
}

/**
 * How many sprockets to move at one go: as many as the habit allows while the legs would still have room,
 * and while the road ahead or the cadence still asks for more.
 */
function stepsAtOnce(world: RideWorld, state: RideState, h: Habits, direction: ShiftDirection): number {
  const { machine } = world;
  const { rider } = machine;
  if (direction === 'easier' && nearLine(world, state, h)) return h.sweepSteps;
  const now = gearOf(machine, state).developmentM;
  const ahead = h.lookAheadM > 0 ? loadAhead(world, state, h) : 0;
  let steps = 1;
  while (steps < h.sweepSteps) {
    const one = pushed(machine, state, { derailleur: 'rear', direction, steps });
    const further = pushed(machine, state, { derailleur: 'rear', direction, steps: steps + 1 });
    if (one === null || further === null) break;
    const { developmentM } = gearOf(machine, one);
    const rpm = cadenceAtRpm(state.speedMps, developmentM);
    const rpmFurther = cadenceAtRpm(state.speedMps, gearOf(machine, further).developmentM);
    const more =
      direction === 'harder'
        ? rpm > rider.cadenceHighRpm && rpmFurther > midBandRpm(rider)
        : rpmFurther < rider.cadenceHighRpm + SPIN_ROOM_RPM &&
          (rpm < midBandRpm(rider) || (ahead * developmentM) / now > READY_LOAD);
    if (!more) break;
    steps += 1;
  }
  return steps;
}
