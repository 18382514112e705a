/**
 * The answer of a plan: asked from any place, speed and gear, it tells what is still to come and what to do now.
 * How the numbers behind it are worked out is the business of `plan.ts`.
 */
import type { RideWorld } from '../ride/types.ts';
import { shiftCost } from './costs.ts';
import type { Move } from '../model/transmission.ts';
import {
  emptyPlace,
  type Grid,
  interpolate,
  type PlannedPlace,
  speedIndex,
  type Tables,
  visitPlace,
} from './tables.ts';

/** Advice for one state. */
export interface Advice {
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
export function makePolicy(world: RideWorld, tables: Tables, stages: number, stay: Float32Array): Policy {
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
