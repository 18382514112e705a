/** Force at the wheel and torque at the crank are two sides of one turn: energy in times efficiency is energy out. */
import { describe, expect, it } from 'vitest';
import { crankTorqueFor, wheelForceN } from '../../../src/core/model/drivetrain.ts';
import { buildMachine } from '../../../src/core/model/machine.ts';
import { BIKES, RIDERS } from '../../../src/core/model/presets.ts';
import { prepareTables, USUAL_GRID } from '../../../src/core/planner/tables.ts';
import { FASTEST_MPS } from '../../../src/core/ride/step.ts';
import { buildRideWorld } from '../../../src/core/ride/world.ts';
import { literalCourse } from '../ride/worlds.ts';

const gears = BIKES.flatMap((bike) => buildMachine(bike, RIDERS[0]!).gears);

describe('the drivetrain', () => {
  it('gives out in one turn of the crank what goes in, less what the chain takes', () => {
    for (const gear of gears) {
      const outJ = wheelForceN(40, gear) * gear.developmentM;
      expect(outJ).toBeCloseTo(40 * 2 * Math.PI * gear.efficiency, 9);
    }
  });

  it('asks at the crank for the torque that gives the force, in N m or in another unit', () => {
    for (const gear of gears) {
      expect(wheelForceN(crankTorqueFor(55, gear, 1), gear)).toBeCloseTo(55, 9);
      expect(crankTorqueFor(55, gear, 20) * 20).toBeCloseTo(crankTorqueFor(55, gear, 1), 9);
    }
  });

  it('is planned up to the speed at which riders brake by themselves, in whole steps of the grid', () => {
    const world = buildRideWorld(literalCourse(400, 0), BIKES[0]!, RIDERS[0]!);
    for (const speedStepMps of [USUAL_GRID.speedStepMps, 0.125, 0.5]) {
      const { fastestMps, speedMps } = prepareTables(world, { stepM: 3, speedStepMps });
      expect(fastestMps).toBeGreaterThanOrEqual(FASTEST_MPS);
      expect(fastestMps - FASTEST_MPS).toBeLessThan(speedStepMps);
      expect(speedMps.at(-1)).toBe(fastestMps);
    }
  });
});
