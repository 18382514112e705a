/** All levels with every kind of bike and the best rides that come with the game, for the scripts that measure with them. */
import { judgeRide } from '../../src/core/coach/judge.ts';
import { suitsBike } from '../../src/core/coach/ladder.ts';
import type { RideReport } from '../../src/core/coach/types.ts';
import { courseOfLevel } from '../../src/core/level/build.ts';
import type { Level } from '../../src/core/level/schema.ts';
import { bikeById, riderById } from '../../src/core/model/presets.ts';
import { planRoad } from '../../src/core/planner/plan.ts';
import { knownBestRide } from '../../src/core/planner/known.ts';
import { rideScript, scriptOfPolicy } from '../../src/core/planner/reference.ts';
import type { Manoeuvre } from '../../src/core/planner/script.ts';
import type { RideTrace } from '../../src/core/ride/trace.ts';
import type { RideWorld } from '../../src/core/ride/types.ts';
import { buildRideWorld } from '../../src/core/ride/world.ts';
import { ALL_LEVELS } from '../core/coach/riding.ts';

const PAIRS = [
  ['kids-20-1x7', 'child-9'],
  ['road-2x11', 'adult-new'],
  ['trekking-3x8', 'adult-weekly'],
  ['gravel-1x12', 'adult-strong'],
  ['kids-20-hub-3', 'child-9'],
  ['town-hub-3', 'adult-new'],
  ['town-hub-7', 'adult-new'],
  ['trekking-hub-8-crank', 'adult-new'],
  ['trekking-1x10-crank', 'adult-new'],
  ['town-hub-7-wheel', 'adult-new'],
] as const;

/** Levels that ask something: those of the ladder, and those about one kind of bike. */
const ON_THE_LADDER = ALL_LEVELS.filter(({ rung, needs }) => rung > 0 || needs !== undefined);

/** A road on a bike with its best ride. */
export interface Cell {
  readonly name: string;
  readonly level: Level;
  readonly world: RideWorld;
  readonly script: readonly Manoeuvre[];
  readonly reference: RideTrace;
  readonly judge: (trace: RideTrace) => RideReport;
}

/** All cells whose level's name holds the first word and whose bike's holds the second; `all`, or no word, is every one. */
export function* cells(args: readonly string[]): Generator<Cell> {
  const [part = 'all', bikes = 'all'] = args.filter((word) => !word.startsWith('-'));
  for (const level of ON_THE_LADDER.filter(({ id }) => part === 'all' || id.includes(part)))
    for (const [bikeId, riderId] of PAIRS.filter(([id]) => bikes === 'all' || id.includes(bikes))) {
      const bike = bikeById(bikeId);
      const rider = riderById(riderId);
      if (bike === undefined || rider === undefined) throw new Error(`no ${bikeId} or ${riderId}`);
      if (!suitsBike(level, bike)) continue;
      const world = buildRideWorld(courseOfLevel(level), bike, rider);
      const script = knownBestRide(world) ?? scriptOfPolicy(world, planRoad(world));
      const reference = rideScript(world, script).trace;
      const { weights, passMark } = level;
      yield {
        name: `${level.id} ${bikeId}`,
        level,
        world,
        script,
        reference,
        judge: (trace) => judgeRide({ world, trace, reference, weights, passMark, level }),
      };
    }
}
