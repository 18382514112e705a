/**
 * Every joule is accounted for: what the legs put in is what speed, height, air, rolling, bearings,
 * drivetrain and brakes took, on every bundled level and bike; the named riders take turns.
 */
import { describe, expect, it } from 'vitest';
import { courseOfLevel } from '../../../src/core/level/build.ts';
import { GRAVITY } from '../../../src/core/model/load.ts';
import { BIKES, MATCHING_RIDER } from '../../../src/core/model/presets.ts';
import { NAMED_HABITS, type NamedRider, virtualRider } from '../../../src/core/virtual/riders.ts';
import type { EnergyLedger } from '../../../src/core/ride/types.ts';
import { BUNDLED, COAST, EASE, handRide, literalCourse, rideBare, worldOn } from './worlds.ts';

const names = Object.keys(NAMED_HABITS) as NamedRider[];

/** What came in without being accounted for, as a share of what came in. */
function missingShare(l: EnergyLedger): number {
  const inJ = l.workInJ + l.motorInJ + l.pushOffJ;
  const outJ = l.kineticJ + l.climbedJ + l.airJ + l.rollingJ + l.bearingsJ + l.drivetrainJ + l.brakesJ;
  return (inJ - outJ) / inJ;
}

describe.each(BUNDLED.map(({ level }, place) => [level.id, level, place] as const))(
  'energy on %s',
  (_id, level, place) => {
    const course = courseOfLevel(level);
    const riders = BIKES.map(
      (bike, i) => [bike.id, names[(place + i) % names.length] as NamedRider] as const,
    );
    it.each(riders)('%s with the rider %s loses no joule (0.1 %)', (bikeId, name) => {
      const world = worldOn(course, bikeId, MATCHING_RIDER[bikeId] ?? 'adult-new');
      const { last } = rideBare(world, virtualRider(world, NAMED_HABITS[name], 7));
      const { ledger, speedMps, phase, distanceM } = last;
      expect([name, phase]).toEqual([name, 'finished']);
      expect(Math.abs(missingShare(ledger))).toBeLessThan(0.001);
      // Two entries again from outside the ledger: height from the road, speed from the state.
      expect(ledger.kineticJ).toBeCloseTo((world.machine.effectiveMassKg * speedMps ** 2) / 2, 6);
      const heightM = course.heightM[Math.min(Math.floor(distanceM), course.lengthM)] ?? 0;
      const climbedJ = world.machine.totalMassKg * GRAVITY * heightM;
      expect(Math.abs(ledger.climbedJ - climbedJ)).toBeLessThan(1);
      for (const key of ['airJ', 'rollingJ', 'bearingsJ', 'drivetrainJ'] as const)
        expect([key, ledger[key] > 0]).toEqual([key, true]);
    });
  },
);

describe('single entries', () => {
  it('without brakes, stops and falls the brakes take nothing', () => {
    const world = worldOn(literalCourse(800, 0.02));
    const ride = handRide(world);
    ride.until((r) => r.state.phase === 'finished', 300);
    expect(ride.state.ledger.brakesJ).toBe(0);
    expect(Math.abs(missingShare(ride.state.ledger))).toBeLessThan(0.001);
  });

  it('coasting costs the legs nothing', () => {
    const world = worldOn(literalCourse(400, -0.05));
    const ride = handRide(world);
    ride.go(2, COAST);
    const before = ride.state.ledger.workInJ;
    ride.go(10);
    expect(ride.state.ledger.workInJ).toBe(before);
  });

  it('work is torque times angle: the ledger agrees with torque and cadence summed from outside', () => {
    const world = worldOn(literalCourse(800, 0.01));
    const ride = handRide(world);
    let workJ = 0;
    for (let i = 0; i < 120 * 40; i += 1) {
      ride.go(1 / 120, ...(i === 1200 ? [EASE] : []));
      workJ += (ride.state.crankTorqueNm * ride.state.cadenceRpm * Math.PI) / 30 / 120;
    }
    expect(Math.abs(ride.state.ledger.workInJ / workJ - 1)).toBeLessThan(0.001);
  });
});
