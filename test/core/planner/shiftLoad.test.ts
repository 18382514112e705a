/**
 * What leans on the chain when a shift begins is worked out twice, from the plan's tables and from a moment of a ride:
 * where the grid has a point, both must ask the same price for it.
 */
import { expect, test } from 'vitest';
import { courseOfLevel } from '../../../src/core/level/build.ts';
import { bikeById, riderById } from '../../../src/core/model/presets.ts';
import { placeOf } from '../../../src/core/model/transmission.ts';
import { shiftCost } from '../../../src/core/planner/costs.ts';
import { shiftLoad } from '../../../src/core/planner/plan.ts';
import { manoeuvreCost } from '../../../src/core/planner/realised.ts';
import { emptyPlace, prepareTables, USUAL_GRID, visitPlace } from '../../../src/core/planner/tables.ts';
import { buildRideWorld } from '../../../src/core/ride/world.ts';
import { LEVELS } from '../coach/riding.ts';

/** Every so many stages and speeds of the grid are looked at. */
const EVERY_STAGE = 9;
const EVERY_SPEED = 7;

test.for(['trekking-3x8', 'town-hub-7', 'trekking-1x10-crank', 'town-hub-7-wheel'])(
  'a ride on %s pays for the load of a shift what the plan expects',
  (bikeId) => {
    let dear = 0;
    for (const level of LEVELS.slice(0, 4)) {
      const world = buildRideWorld(courseOfLevel(level), bikeById(bikeId)!, riderById('adult-weekly')!);
      const tables = prepareTables(world, USUAL_GRID);
      const place = emptyPlace(tables);
      const { stepM } = USUAL_GRID;
      for (let stage = 0; (stage + 1) * stepM < world.course.lengthM; stage += EVERY_STAGE) {
        visitPlace(world, tables, stage, place);
        for (let gear = 0; gear < tables.gears; gear += 1)
          for (let i = 0; i < tables.speeds; i += EVERY_SPEED) {
            const speedMps = tables.speedMps[i]!;
            const at = gear * tables.speeds + i;
            const load = shiftLoad(tables, place, place.resistingN[i]!, gear, at, speedMps);
            const ridden = manoeuvreCost(
              world,
              {
                distanceM: (stage + 0.5) * stepM,
                speedMps,
                cadenceRpm: speedMps * tables.rpmPerMps[gear]!,
                ...placeOf(world.machine.gears[gear]!),
              },
              { rearSteps: 1, ringSteps: 0 },
            );
            expect(ridden).toBeCloseTo(shiftCost(1, 0, load), 9);
            if (ridden > shiftCost(1, 0, 0)) dear += 1;
          }
      }
    }
    // Loads too light to cost anything would compare nothing.
    expect(dear).toBeGreaterThan(500);
  },
);
