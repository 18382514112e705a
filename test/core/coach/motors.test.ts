/**
 * Bikes with a motor: named riders keep their order, who knows nothing of it passes nowhere, and each habit that it punishes
 * is told. The levels about motors here; all levels, and hubs with them, in `test/figures/hubsAndMotors.ts`.
 */
import { describe, expect, it } from 'vitest';
import { suitsBike } from '../../../src/core/coach/ladder.ts';
import { bikeById } from '../../../src/core/model/presets.ts';
import { knownBestRide } from '../../../src/core/planner/known.ts';
import { HABITS, PASS_NOWHERE } from './motorHabits.ts';
import { ALL_LEVELS, type Ground, groundOf, MOTOR_PAIRS, NAMES } from './riding.ts';

const cells = ALL_LEVELS.filter(({ needs }) => needs === 'motor' || needs === 'crank-motor').flatMap(
  (level) =>
    MOTOR_PAIRS.filter(({ bikeId }) => suitsBike(level, bikeById(bikeId)!)).map(({ bikeId, riderId }) => ({
      name: `${level.id} ${bikeId}`,
      ground: (): Ground => groundOf(level, bikeId, riderId),
    })),
);
/** Rides that lost less are not told of a fault (points). */
const LOST_AT_LEAST = 5;

describe.each(cells)('$name', ({ ground }) => {
  it('is passed by its best ride, and named riders keep their order', () => {
    const totals = NAMES.map((name) => ground().named(name).total);
    expect(ground().named('reference').passed).toBe(true);
    // Without the lever and late under load are both far from a pass.
    totals.forEach((total, i) => {
      if (i > 0) expect(total, NAMES[i]).toBeGreaterThan((totals[i - 1] ?? 0) - 2);
    });
    expect(totals[3]).toBeGreaterThan((totals[2] ?? 0) + 1);
  });

  it('is passed by nobody of no skill', () => {
    const passed = Object.entries(PASS_NOWHERE).filter(
      ([, rider]) => ground().follow(rider(ground().world)).passed,
    );
    expect(passed.map(([who]) => who)).toEqual([]);
  });
});

describe('a habit that costs marks on a bike with a motor', () => {
  const told = HABITS.flatMap(({ habit, rider, isNamedBy }) =>
    cells.flatMap(({ ground }) => {
      const { world } = ground();
      const controller = rider(world, knownBestRide(world)!, 1);
      if (controller === null) return [];
      const { total, verdict } = ground().follow(controller);
      return total > 100 - LOST_AT_LEAST ? [] : [{ habit, right: isNamedBy(verdict.change, world) }];
    }),
  );

  it('is named in at least nine of ten rides', () => {
    expect(told.length).toBeGreaterThan(15);
    expect(told.filter(({ right }) => right).length).toBeGreaterThanOrEqual(0.9 * told.length);
  });
});
