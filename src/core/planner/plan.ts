/**
 * The best gear for every place, speed and gear: dynamic programming backwards from the end of the road,
 * over distance × speed × gear, interpolated in speed. The answer is a policy, asked from any place, speed and gear: it
 * tells what is still to come and what to do now. `driver.ts` rides it through the real step.
 */
import { FOOT_DOWN_S, PUSH_OFF_MPS } from '../ride/happenings.ts';
import type { RideWorld } from '../ride/types.ts';
import {
  cadenceCostPerS,
  CROSSED_PER_S,
  FOOT_DOWN,
  heavyCost,
  effortCostPerS,
  shiftCost,
  stepsCost,
  sumOfShift,
  TIME_PER_S,
} from './costs.ts';
import type { Move } from '../model/transmission.ts';
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

interface Advice {
  /** Manoeuvre to make now, or null for staying. */
  readonly move: Move | null;
  /** What it saves against staying. */
  readonly saving: number;
}

/** The policy: what is best from anywhere. */
export interface Policy {
  readonly grid: Grid;
  /** Cost still to come from a state that stays in its gear for now. */
  costToGo(distanceM: number, speedMps: number, gear: number): number;
  advise(distanceM: number, speedMps: number, gear: number): Advice;
}

/** What leans on the chain when a shift begins, over steady effort there: the road, or legs pushing off from low cadence. */
export function shiftLoad(
  tables: Tables,
  place: PlannedPlace,
  resistingN: number,
  gear: number,
  at: number,
  speedMps: number,
): number {
  const ownN = tables.leftN === null ? resistingN : tables.leftN(resistingN, gear, speedMps);
  const road = (tables.loadPerN[gear] as number) * ownN;
  const legs = place.torqueRatio[at] as number;
  return (road > legs ? road : legs) / place.effort;
}

/** Makes the policy of a finished plan; `stay` holds the cost of staying for every stage, gear and speed. */
function makePolicy(world: RideWorld, tables: Tables, stages: number, stay: Float32Array): Policy {
  const size = tables.gears * tables.speeds;
  const { stepM } = tables.grid;
  const place = emptyPlace(tables);
  // Somebody who rides asks many times in one stage.
  let visited = -1;
  const visit = (stage: number): void => {
    if (stage !== visited) visitPlace(world, tables, stage, place);
    visited = stage;
  };
  // Kept between the calls, because a question looks from one spot at many gears.
  const spot = { row: 0, share: 0, last: false, index: 0 };
  const standAt = (distanceM: number): void => {
    const along = Math.min(stages, Math.max(0, distanceM / stepM));
    const stage = Math.floor(along);
    spot.row = stage * size;
    spot.share = along - stage;
    spot.last = stage >= stages;
  };
  const costIn = (gear: number): number => {
    const row = spot.row + gear * tables.speeds;
    const a = interpolate(stay, row, spot.index);
    if (spot.last) return a;
    const b = interpolate(stay, row + size, spot.index);
    return a + (b - a) * spot.share;
  };
  return {
    grid: tables.grid,
    costToGo(distanceM, speedMps, gear) {
      standAt(distanceM);
      spot.index = speedIndex(tables, speedMps);
      return costIn(gear);
    },
    advise(distanceM, speedMps, gear) {
      const index = speedIndex(tables, speedMps);
      const nearest = gear * tables.speeds + Math.round(index);
      standAt(distanceM);
      spot.index = index;
      const staying = costIn(gear);
      if (tables.tooSlow[nearest] === 1) return { move: null, saving: 0 };
      visit(Math.min(stages - 1, Math.max(0, Math.floor(distanceM / stepM))));
      spot.index = interpolate(place.easedIndex, gear * tables.speeds, index);
      const waits = tables.hub && place.restartM !== null && speedMps === 0;
      const load = waits
        ? 0
        : shiftLoad(tables, place, interpolate(place.resistingN, 0, index), gear, nearest, speedMps);
      let move: Move | null = null;
      let least = staying;
      for (const candidate of tables.moves[gear] ?? []) {
        const cost = shiftCost(candidate.rearSteps, candidate.ringSteps, load) + costIn(candidate.toGear);
        if (cost < least) {
          least = cost;
          move = candidate;
        }
      }
      return { move, saving: staying - least };
    },
  };
}

/** Works something out to its end that is usually worked out in steps. */
export function atOnce<T>(steps: Generator<number, T>): T {
  for (;;) {
    const next = steps.next();
    if (next.done === true) return next.value;
  }
}

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
