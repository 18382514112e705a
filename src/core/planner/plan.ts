/**
 * The best gear for every place, speed and gear: dynamic programming backwards from the end of the road,
 * over distance × speed × gear, interpolated in speed. The answer is a policy that can be asked from any
 * state; `driver.ts` rides it through the real step.
 */
import { FOOT_DOWN_S, PUSH_OFF_MPS } from '../ride/happenings.ts';
import type { RideWorld } from '../ride/types.ts';
import {
  cadenceCostPerS,
  CROSSED_PER_S,
  FOOT_DOWN,
  heavyCost,
  effortCostPerS,
  stepsCost,
  sumOfShift,
  TIME_PER_S,
} from './costs.ts';
import type { Move } from '../model/transmission.ts';
import { makePolicy, type Policy, shiftLoad } from './policy.ts';
import {
  emptyPlace,
  type Grid,
  interpolate,
  interpolateBent,
  type PlannedPlace,
  prepareTables,
  SLOWEST_MPS,
  speedIndex,
  type Tables,
  USUAL_GRID,
  visitPlace,
} from './tables.ts';

/** Time step of a start from rest (s), and the cost at which a gear counts as too hard to start in. */
const RESTART_TICK_S = 0.05;
const STUCK_COST = 60;

export type { Advice, Policy } from './policy.ts';

/** Works something out to its end that is usually worked out in steps. */
export function atOnce<T>(steps: Generator<number, T>): T {
  for (;;) {
    const next = steps.next();
    if (next.done === true) return next.value;
  }
}

/** Runs the whole plan at once. */
export function planRoad(world: RideWorld, grid: Grid = USUAL_GRID): Policy {
  return atOnce(planInSteps(world, grid));
}

/** The same, yielding the share done (0 to 1) now and then, so that a worker can report and be stopped. */
export function* planInSteps(world: RideWorld, grid: Grid = USUAL_GRID): Generator<number, Policy> {
  const tables = prepareTables(world, grid);
  const place = emptyPlace(tables);
  const stages = Math.ceil(world.course.lengthM / grid.stepM);
  const size = tables.gears * tables.speeds;
  const stay = new Float32Array((stages + 1) * size);
  const best = new Float32Array(size);
  const eased = new Float32Array(size);
  const heavy = new Float64Array(tables.speeds);
  for (let stage = stages - 1; stage >= 0; stage -= 1) {
    visitPlace(world, tables, stage, place);
    const here = stay.subarray(stage * size, (stage + 1) * size);
    const costs = place.restartM === null ? rideStage : restartStage;
    for (let g = 0; g < tables.gears; g += 1) costs(world, tables, place, best, here, g);
    bestWithShift(tables, place, here, eased, best, heavy);
    if (stage % 64 === 0) yield 1 - stage / stages;
  }
  return makePolicy(world, tables, stages, stay);
}

/** Writes into `out` what a stage costs in gear `g` from every speed, with what is best `after` it. */
type StageCosts = (
  world: RideWorld,
  tables: Tables,
  place: PlannedPlace,
  after: Float32Array,
  out: Float32Array,
  g: number,
) => void;

const rideStage: StageCosts = (world, tables, place, after, out, g) => {
  const { stepM, speedStepMps } = tables.grid;
  const { fastestMps } = tables;
  const { resistingN } = place;
  const row = g * tables.speeds;
  const perMass = 1 / world.machine.effectiveMassKg;
  const highRpm = tables.highest[g] === 1 ? Number.POSITIVE_INFINITY : world.machine.rider.cadenceHighRpm;
  const always = TIME_PER_S + (tables.crossed[g] === 1 ? CROSSED_PER_S : 0);
  const slowestSquare = SLOWEST_MPS * SLOWEST_MPS;
  const capIndex = Math.floor(speedIndex(tables, place.capMps));
  for (let i = 0; i < tables.speeds; i += 1) {
    const from = i < capIndex ? i : capIndex;
    const speed = tables.speedMps[from] as number;
    const first = ((place.driveN[row + from] as number) - (resistingN[from] as number)) * perMass;
    const guess = speed * speed + 2 * first * stepM;
    const there = guess > slowestSquare ? (Math.sqrt(guess) - SLOWEST_MPS) / speedStepMps : 0;
    const index = there > tables.speeds - 1 ? tables.speeds - 1 : there;
    const second = (interpolate(place.driveN, row, index) - interpolate(resistingN, 0, index)) * perMass;
    const square = speed * speed + (first + second) * stepM;
    if (square <= slowestSquare) {
      const restart = interpolate(after, row, speedIndex(tables, PUSH_OFF_MPS));
      out[row + i] = FOOT_DOWN + FOOT_DOWN_S * TIME_PER_S + restart;
      continue;
    }
    const free = Math.sqrt(square);
    const end = free > place.capAfterMps ? place.capAfterMps : free > fastestMps ? fastestMps : free;
    const mean = (speed + end) / 2;
    const seconds = stepM / mean;
    const next = interpolateBent(after, row, speedIndex(tables, end), tables.speeds - 1);
    const braking = free > place.capAfterMps || i > from;
    const at = speedIndex(tables, mean);
    const loadPerN = tables.loadPerN[g] as number;
    let hereN = interpolate(resistingN, 0, at);
    let leadN = interpolate(place.leadN, 0, at);
    if (tables.leftN !== null) {
      hereN = tables.leftN(hereN, g, mean);
      leadN = tables.leftN(leadN, g, mean);
    }
    const here = loadPerN * hereN - place.comfort;
    const lead = loadPerN * leadN - interpolate(place.leadComfort, 0, at);
    const rpm = mean * (tables.rpmPerMps[g] as number);
    const perSecond = braking
      ? TIME_PER_S
      : always +
        cadenceCostPerS(rpm, place.bandLowRpm, highRpm) +
        effortCostPerS(here > lead ? here : lead, 1);
    out[row + i] = perSecond * seconds + next;
  }
};

/**
 * At a line everybody starts again from rest, in the gear they stopped in: followed in short steps of time,
 * because at walking pace everything changes within a metre. The speed of arrival does not matter.
 */
const restartStage: StageCosts = (world, tables, place, after, out, g) => {
  const wayM = place.restartM as number;
  const row = g * tables.speeds;
  let way = 0;
  let speed = 0;
  let cost = 0;
  while (way < wayM && cost < STUCK_COST) {
    const index = speedIndex(tables, speed);
    const netN = interpolate(place.driveN, row, index) - interpolate(place.resistingN, 0, index);
    const rpm = speed * (tables.rpmPerMps[g] as number);
    speed = Math.max(0, speed + (netN / world.machine.effectiveMassKg) * RESTART_TICK_S);
    way += speed * RESTART_TICK_S;
    const cadence = cadenceCostPerS(rpm, place.bandLowRpm, world.machine.rider.cadenceHighRpm);
    cost += (TIME_PER_S + cadence) * RESTART_TICK_S;
  }
  const next = interpolate(after, row, speedIndex(tables, speed));
  out.fill(cost + next, row, row + tables.speeds);
};

/** Cheapest of staying and of every manoeuvre; none while the brakes are on, because the cranks rest. */
function bestWithShift(
  tables: Tables,
  place: PlannedPlace,
  stay: Float32Array,
  eased: Float32Array,
  best: Float32Array,
  heavy: Float64Array,
): void {
  const { speeds, gears } = tables;
  const braked =
    place.shiftCapMps >= tables.fastestMps ? speeds : Math.ceil(speedIndex(tables, place.shiftCapMps));
  // Who waits at a line has no weight on the pedals: a hub changes there for nothing, a chain not at all.
  const waits = place.restartM !== null;
  const firstBraked = waits ? (tables.hub ? speeds : 0) : braked;
  for (let at = 0; at < stay.length; at += 1) {
    best[at] = stay[at] as number;
    eased[at] = interpolateBent(stay, at - (at % speeds), place.easedIndex[at] as number, speeds - 1);
  }
  for (let g = 0; g < gears; g += 1) {
    const row = g * speeds;
    // What all manoeuvres from here have in common is worked out once; cranks too slow to shift cost for ever.
    for (let i = 0; i < firstBraked; i += 1) {
      const at = row + i;
      const speedMps = tables.speedMps[i] as number;
      const load = shiftLoad(tables, place, place.resistingN[i] as number, g, at, speedMps);
      heavy[i] = waits ? 0 : tables.tooSlow[at] === 1 ? Number.POSITIVE_INFINITY : heavyCost(load);
    }
    for (const move of tables.moves[g] as readonly Move[]) {
      const to = move.toGear * speeds;
      const steps = stepsCost(move.rearSteps, move.ringSteps);
      const front = move.ringSteps !== 0;
      // A local: unbundled, what is imported is looked up anew in every turn of the loop.
      const costOfShift = sumOfShift;
      for (let i = 0; i < firstBraked; i += 1) {
        const cost = costOfShift(steps, heavy[i] as number, front) + (eased[to + i] as number);
        if (cost < (best[row + i] as number)) best[row + i] = cost;
      }
    }
  }
}
