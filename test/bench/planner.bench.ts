/** How long a plan takes: one kilometre, 22 gears, the usual grid, one processor. Nothing fails on speed. */
import { bench, describe } from 'vitest';
import { buildCourse } from '../../src/core/course/build.ts';
import { bikeById, riderById } from '../../src/core/model/presets.ts';
import { planRoad } from '../../src/core/planner/plan.ts';
import { USUAL_GRID } from '../../src/core/planner/tables.ts';
import { buildRideWorld } from '../../src/core/ride/world.ts';
import { PLAIN } from '../core/ride/worlds.ts';

const course = buildCourse({
  ...PLAIN,
  pieces: [{ kind: 'rollers', lengthM: 1000, waveM: 220, steepestRatio: 0.07 }],
});
const world = buildRideWorld(course, bikeById('road-2x11')!, riderById('adult-weekly')!);

describe(`planning 1 km, ${world.machine.gears.length} gears, ${USUAL_GRID.stepM} m × ${USUAL_GRID.speedStepMps} m/s`, () => {
  bench('planRoad', () => {
    planRoad(world);
  });
});
