/**
 * Rides and judges for the tests of marks and plans: one place that puts level, bike, rider, plan and reference
 * together and keeps them, because planning the same road again and again would take most of the time.
 */
import { readdirSync, readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { type MarkingGround, groundOf as layGround } from '../../../src/core/coach/ground.ts';
import type { RideReport } from '../../../src/core/coach/types.ts';
import { parseLevelText } from '../../../src/core/level/parse.ts';
import type { Level } from '../../../src/core/level/schema.ts';
import { type Habits, NAMED_HABITS, virtualRider } from '../../../src/core/virtual/riders.ts';
import { type Controller, rideThrough } from '../../../src/core/ride/run.ts';

/** The pairs that every level is looked at with. */
export const PAIRS = [
  { bikeId: 'kids-20-1x7', riderId: 'child-9' },
  { bikeId: 'road-2x11', riderId: 'adult-new' },
  { bikeId: 'gravel-1x12', riderId: 'adult-strong' },
] as const;

/** The same and the trekking bike, where four are asked for. */
export const FOUR_PAIRS = [...PAIRS, { bikeId: 'trekking-3x8', riderId: 'adult-weekly' }] as const;

/** Who rides check rides, and which of the two. */
export const CHECK_GROUPS = [
  { bike: 'kids-20-1x7', rider: 'child-9', audience: 'children' },
  { bike: 'road-2x11', rider: 'adult-new', audience: 'everyone' },
  { bike: 'gravel-1x12', rider: 'adult-strong', audience: 'everyone' },
] as const;

/** Who rides the check rides of bikes with a hub or a motor. */
export const CHECK_GROUPS_APART = [
  { bike: 'kids-20-hub-3', rider: 'child-9', audience: 'children', needs: 'hub' },
  { bike: 'town-hub-7', rider: 'adult-new', audience: 'everyone', needs: 'hub' },
  { bike: 'trekking-1x10-crank', rider: 'adult-new', audience: 'everyone', needs: 'crank-motor' },
  { bike: 'town-hub-7-wheel', rider: 'adult-new', audience: 'everyone', needs: 'wheel-motor' },
] as const;

/** Names of the named riders, from the worst to the best. */
export const NAMES = ['never', 'late', 'late-easing', 'early', 'reference'] as const;
export type Name = (typeof NAMES)[number];

const folder = fileURLToPath(new URL('../../../levels/', import.meta.url));

/** All bundled levels by id. */
export const ALL_LEVELS: readonly Level[] = readdirSync(folder)
  .filter((name) => name.endsWith('.json') && name !== 'level.schema.json')
  .sort()
  .map((name) => {
    const parsed = parseLevelText(readFileSync(folder + name, 'utf8'));
    if (!parsed.ok) throw new Error(`${name} does not parse`);
    return parsed.level;
  });

/** Those of the ladder; what stands beside it is looked at by tests of its own. */
export const LEVELS: readonly Level[] = ALL_LEVELS.filter(
  ({ rung, needs }) => rung > 0 && needs === undefined,
);

/** The bikes with gears in the hub, with their riders. */
export const HUB_PAIRS = [
  { bikeId: 'kids-20-hub-3', riderId: 'child-9' },
  { bikeId: 'town-hub-3', riderId: 'adult-new' },
  { bikeId: 'town-hub-7', riderId: 'adult-new' },
] as const;

/** The bikes with a motor, with their riders. */
export const MOTOR_PAIRS = [
  { bikeId: 'trekking-hub-8-crank', riderId: 'adult-new' },
  { bikeId: 'trekking-1x10-crank', riderId: 'adult-new' },
  { bikeId: 'town-hub-7-wheel', riderId: 'adult-new' },
] as const;

/** A road, ready to be ridden and judged. */
export interface Ground extends MarkingGround {
  ride(habits: Habits, seed?: number): RideReport;
  follow(controller: Controller): RideReport;
  named(name: Name): RideReport;
}

const grounds = new Map<string, Ground>();

/** Plans a road once. */
export function groundOf(level: Level, bikeId: string, riderId: string, seed: number = level.seed): Ground {
  const key = `${level.id} ${bikeId} ${riderId} ${seed}`;
  const known = grounds.get(key);
  if (known !== undefined) return known;
  const laid = layGround(level, bikeId, riderId, seed);
  const { world, reference, judge } = laid;
  const follow = (controller: Controller): RideReport => judge(rideThrough(world, controller).trace);
  const ride = (habits: Habits, riderSeed = 1): RideReport => follow(virtualRider(world, habits, riderSeed));
  const ground: Ground = {
    ...laid,
    follow,
    ride,
    named: (name) => (name === 'reference' ? judge(reference) : ride(NAMED_HABITS[name])),
  };
  grounds.set(key, ground);
  return ground;
}

/** Spearman's rank correlation, ties sharing their mean rank. */
export function spearman(a: readonly number[], b: readonly number[]): number {
  return pearson(ranks(a), ranks(b));
}

function ranks(list: readonly number[]): number[] {
  const order = list.map((value, i) => ({ value, i })).sort((x, y) => x.value - y.value);
  const result = new Array<number>(list.length).fill(0);
  for (let from = 0; from < order.length; ) {
    let to = from;
    while (to < order.length && order[to]!.value === order[from]!.value) to += 1;
    for (let k = from; k < to; k += 1) result[order[k]!.i] = (from + to - 1) / 2;
    from = to;
  }
  return result;
}

export const mean = (list: readonly number[]): number => list.reduce((sum, x) => sum + x, 0) / list.length;

/** Pearson's product-moment correlation. */
export function pearson(a: readonly number[], b: readonly number[]): number {
  const meanA = mean(a);
  const meanB = mean(b);
  let ab = 0;
  let aa = 0;
  let bb = 0;
  a.forEach((x, i) => {
    ab += (x - meanA) * (b[i]! - meanB);
    aa += (x - meanA) ** 2;
    bb += (b[i]! - meanB) ** 2;
  });
  return ab / Math.sqrt(aa * bb);
}
