/**
 * A good rider of another taste who has said so: the band set lower or higher, the plan made for it, and the marks given
 * against the best ride of such legs.
 */
import { judgeRide } from '../../../src/core/coach/judge.ts';
import type { RideReport } from '../../../src/core/coach/types.ts';
import type { Level } from '../../../src/core/level/schema.ts';
import { improveInSteps } from '../../../src/core/planner/improve.ts';
import { atOnce, planRoad } from '../../../src/core/planner/plan.ts';
import { rideScript, scriptOfPolicy } from '../../../src/core/planner/reference.ts';
import type { RideWorld } from '../../../src/core/ride/types.ts';
import { withTaste } from './oneFault.ts';

/** Tries of the search for the best ride of such legs: fewer than the game spends, for there are many roads. */
const TRIES = 200;

/** The plan of legs that like so many rpm more (negative: less), ridden and judged with the band set so. */
export function plannedWithBandSet(level: Level, world: RideWorld, rpm: number): RideReport {
  const other = withTaste(world, rpm);
  const plan = scriptOfPolicy(other, planRoad(other));
  const reference = rideScript(other, atOnce(improveInSteps(other, plan, { tries: TRIES, seed: 1 }))).trace;
  const { weights, passMark } = level;
  const { trace } = rideScript(other, plan);
  return judgeRide({ world: other, trace, reference, weights, passMark, level });
}
