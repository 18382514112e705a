/**
 * The one voice of a ride: what a rider's hands should do next, now or soon. Follows the manoeuvres of the best ride,
 * told for the gear the rider is in; only whose legs have nearly stopped is helped out of turn. It holds its word: a
 * hint is not turned round within 25 m or 3 s unless the road is another one there. Cues that name a gear are left to
 * it wherever it speaks.
 */
import { cadenceAtRpm } from '../model/machine.ts';
import { afterMovement, gearOf, placeOf, type Push, pushed, stepsBetween } from '../model/transmission.ts';
import { hasHub } from '../model/shifters.ts';
import type { GearPlace, Machine } from '../model/types.ts';
import { isSameRoad, TURN_ROUND_M } from '../planner/costs.ts';
import { TICKS_PER_S } from '../ride/clock.ts';
import { beganTick, doneShifts, type RideTrace, type TraceSample } from '../ride/trace.ts';
import type { Derailleur, RideFrame, RideWorld, ShiftDirection } from '../ride/types.ts';

/** A hint: a move, for a ring change often with one at the back that belongs to it. */
export interface NextStep extends Push {
  readonly second: Push | null;
  /** What comes of both: an easier or a harder gear. */
  readonly makes: ShiftDirection;
  /** How far ahead (m); 0 means now. */
  readonly inM: number;
}

export interface Guide {
  /** True as soon as the best ride is known. */
  knows(): boolean;
  /** The hint of this moment, or null. Asked with every frame; it thinks anew four times a second. */
  hint(frame: RideFrame): NextStep | null;
}

/** Hints are renewed this often (s of ride time). */
const EVERY_S = 0.25;
/** Hints are given this much earlier than the best ride acts, for reading and reacting (s). */
const REACTION_S = 1.2;
/** Nothing further ahead than this is told (m). */
const LOOK_M = 60;
/** Gears nearer to each other than this share are as good as the same. */
const SAME_GEAR = 0.04;
/** Movements with less between them belong together (s). */
const TOGETHER_S = 0.4;
/** Legs this far below the band and the best ride's want an easier gear whatever the best ride did (rpm). */
const DRAGGING_RPM = 12;
/** A word is held for so long (s), or as far as the best ride is not to turn round, unless the road becomes another. */
const HELD_S = 3;

/** A gear of the best ride, and where it begins to go there. */
interface Target extends GearPlace {
  readonly atM: number;
}

/** What was said last, and where it was to be done. */
interface Said {
  readonly makes: ShiftDirection;
  readonly target: Target | null;
  readonly doneAtM: number;
  readonly saidAtS: number;
}

/** A hint, and the gear of the best ride it leads to; none where it only helps. */
interface Wish {
  readonly step: NextStep;
  readonly target: Target | null;
}

/** The guide of one ride; `reference` answers null as long as the best ride is not known. */
export function createGuide(world: RideWorld, reference: () => RideTrace | null): Guide {
  let plan: { readonly of: RideTrace; readonly targets: readonly Target[] } | null = null;
  let said: Said | null = null;
  let thoughtAtS = Number.NEGATIVE_INFINITY;
  let now: NextStep | null = null;

  const think = (frame: RideFrame, best: RideTrace): NextStep | null => {
    if (plan?.of !== best) plan = { of: best, targets: targetsOf(best) };
    const wish = wishOf(world, plan.targets, best.samples, frame);
    if (wish === null) return null;
    const doneAtM = frame.distanceM + wish.step.inM;
    if (said !== null && turnsRound(world, said, wish, doneAtM, frame.timeS)) return null;
    said = { makes: wish.step.makes, target: wish.target, doneAtM, saidAtS: frame.timeS };
    return wish.step;
  };

  return {
    knows: () => reference() !== null,
    hint(frame) {
      const best = reference();
      const mayShift = frame.phase === 'riding' || (frame.phase === 'standing' && hasHub(world.machine.bike));
      const idle = mayShift && !frame.braking && frame.chainOn;
      if (best === null || !idle || frame.shift !== null || frame.waitingShifts > 0) {
        // Whoever has just shifted is told at once what is left to do.
        thoughtAtS = Number.NEGATIVE_INFINITY;
        return null;
      }
      if (Math.abs(frame.timeS - thoughtAtS) < EVERY_S) return now;
      thoughtAtS = frame.timeS;
      now = think(frame, best);
      return now;
    },
  };
}

/** The gears of a ride in order, each with the place where its first movement began. */
function targetsOf(trace: RideTrace): readonly Target[] {
  const first = trace.samples[0];
  if (first === undefined) return [];
  const targets: Target[] = [{ atM: Number.NEGATIVE_INFINITY, ...placeOf(first) }];
  let lastTick = Number.NEGATIVE_INFINITY;
  for (const event of doneShifts(trace)) {
    const before = targets.at(-1) as Target;
    const moved = afterMovement(before, event);
    const together = beganTick(event) - lastTick < TOGETHER_S * TICKS_PER_S;
    if (together && targets.length > 1)
      targets[targets.length - 1] = { ...moved, atM: Math.min(before.atM, event.startedAtM) };
    else targets.push({ ...moved, atM: event.startedAtM });
    lastTick = event.tick;
  }
  return targets;
}

function wishOf(
  world: RideWorld,
  targets: readonly Target[],
  samples: readonly TraceSample[],
  frame: RideFrame,
): Wish | null {
  const { machine } = world;
  const reachM = frame.distanceM + frame.speedMps * REACTION_S;
  // A gear that would be ridden for less than that is not worth a lever.
  const lastM = world.course.lengthM - TURN_ROUND_M;
  if (reachM > lastM) return null;
  const at = targets.findLastIndex(({ atM }) => atM <= reachM);
  const target = targets[at];
  const now = target === undefined ? null : stepTo(machine, frame, target);
  if (now?.makes !== 'easier' && isDragging(frame, samples)) {
    const help = easierNow(machine, frame);
    if (help !== null) return { step: help, target: null };
  }
  const isLastGear = servesToTheFinish(world, samples, frame);
  const isWished = ({ makes }: Pick<NextStep, 'makes'>): boolean => makes === 'harder' || !isLastGear;
  if (now !== null && target !== undefined && isWished(now)) return { step: { ...now, inM: 0 }, target };
  for (const ahead of targets.slice(at + 1)) {
    const inM = ahead.atM - reachM;
    if (inM > LOOK_M || ahead.atM > lastM) return null;
    const step = stepTo(machine, frame, ahead);
    if (step !== null && isWished(step)) return { step: { ...step, inM }, target: ahead };
  }
  return null;
}

/**
 * Whether the gear one is in will do for all that is left of the road: there is no pitch on it, and at the speed of the
 * best ride the legs are not below their band for the greater part of it. An easier gear then serves nothing any more.
 */
function servesToTheFinish(
  { course, machine }: RideWorld,
  samples: readonly TraceSample[],
  frame: RideFrame,
): boolean {
  if (frame.crossed || course.pitches.some(({ endM }) => endM > frame.distanceM)) return false;
  const { developmentM } = gearOf(machine, frame);
  let servedM = 0;
  let beforeM = frame.distanceM;
  for (const { distanceM, speedMps, bandLowRpm } of samples) {
    if (distanceM <= beforeM) continue;
    if (cadenceAtRpm(speedMps, developmentM) >= bandLowRpm) servedM += distanceM - beforeM;
    beforeM = distanceM;
  }
  return servedM >= (beforeM - frame.distanceM) / 2;
}

/** Whether a wish takes back what was said a moment ago on the same road. The rest of a ring change does not. */
function turnsRound(world: RideWorld, said: Said, wish: Wish, doneAtM: number, timeS: number): boolean {
  if (wish.step.makes === said.makes || (wish.target !== null && wish.target === said.target)) return false;
  const soon =
    doneAtM - said.doneAtM < TURN_ROUND_M || (wish.step.inM === 0 && timeS - said.saidAtS < HELD_S);
  return soon && isSameRoad(world.course, said.doneAtM, doneAtM);
}

/** Moves from a gear to another, the ring first; null where they are as good as the same. */
function stepTo(
  machine: Machine,
  from: GearPlace & Pick<RideFrame, 'crossed'>,
  to: GearPlace,
): Omit<NextStep, 'inM'> | null {
  const own = gearOf(machine, from).developmentM;
  const wanted = gearOf(machine, to).developmentM;
  if (!from.crossed && Math.abs(wanted / own - 1) < SAME_GEAR) return null;
  const { rearSteps, ringSteps } = stepsBetween(from, to);
  const front = move('front', ringSteps > 0 ? 'harder' : 'easier', Math.abs(ringSteps));
  const rear = move('rear', rearSteps > 0 ? 'easier' : 'harder', Math.abs(rearSteps));
  const first = front ?? rear;
  if (first === null) return null;
  return { ...first, second: front === null ? null : rear, makes: wanted < own ? 'easier' : 'harder' };
}

function move(derailleur: Derailleur, direction: ShiftDirection, steps: number): Push | null {
  return steps === 0 ? null : { derailleur, direction, steps };
}

function isDragging(frame: RideFrame, samples: readonly TraceSample[]): boolean {
  const { pressure, cadenceRpm, bandLowRpm, speedMps } = frame;
  if (pressure === 'coast' || speedMps <= 1 || cadenceRpm >= bandLowRpm - DRAGGING_RPM) return false;
  const best = samples.find(({ distanceM }) => distanceM >= frame.distanceM);
  return best === undefined || cadenceRpm < best.cadenceRpm - DRAGGING_RPM;
}

/** One step easier: at the back unless that crosses the chain or there is none left, else the smaller ring. */
function easierNow(machine: Machine, place: GearPlace): NextStep | null {
  const easier = { direction: 'easier', steps: 1, second: null, makes: 'easier', inM: 0 } as const;
  const behind = pushed(machine, place, { derailleur: 'rear', ...easier });
  const front = pushed(machine, place, { derailleur: 'front', ...easier });
  if (behind !== null && (front === null || !gearOf(machine, behind).crossed))
    return { derailleur: 'rear', ...easier };
  return front === null ? null : { derailleur: 'front', ...easier };
}
