/** The same skill on other seeds of the same level comes out the same: the marks judge the rider, not the road. */
import { describe, expect, test } from 'vitest';
import { isSeeded } from '../../../src/core/course/pieces.ts';
import { habitsForSkill } from '../../../src/core/virtual/riders.ts';
import { checkLevel } from '../../../src/core/level/generate.ts';
import { groundOf, LEVELS, PAIRS } from './riding.ts';

const SEEDS = Array.from({ length: 4 }, (_, i) => 100 + i * 37);
const bySeed = LEVELS.filter(({ pieces }) => isSeeded(pieces));
const levels = [...bySeed, checkLevel(1, 'everyone'), checkLevel(1, 'children')];
const skills = [0.2, 0.6, 1];

/** Mean total of a few rides of one skill, so that chance in the rider does not look like chance in the road. */
function meanTotal(level: (typeof levels)[number], seed: number, skill: number): number {
  const { bikeId, riderId } = PAIRS[0];
  const ground = groundOf(level, bikeId, riderId, seed);
  const rides = [1, 2, 3].map((rider) => ground.ride(habitsForSkill(skill), rider).total);
  return rides.reduce((sum, total) => sum + total, 0) / rides.length;
}

describe.each(levels.flatMap((level) => skills.map((skill) => [level.id, skill, level] as const)))(
  '%s ridden with skill %d on four seeds',
  (_, skill, level) => {
    const totals = SEEDS.map((seed) => meanTotal(level, seed, skill));

    test('totals lie within 10 points of their mean, with a standard deviation of 5 at most', () => {
      const mean = totals.reduce((sum, total) => sum + total, 0) / totals.length;
      const variance = totals.reduce((sum, total) => sum + (total - mean) ** 2, 0) / totals.length;
      expect(Math.max(...totals.map((total) => Math.abs(total - mean)))).toBeLessThanOrEqual(10);
      expect(Math.sqrt(variance)).toBeLessThanOrEqual(5);
    });
  },
);

test('there are levels with a seed to be looked at', () => {
  expect(bySeed.length).toBeGreaterThan(0);
});
