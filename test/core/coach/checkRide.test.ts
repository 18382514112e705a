/**
 * Check rides measure the rider and not the road: the same virtual rider on two fresh seeds comes out nearly
 * the same, and better riders come out better.
 */
import { describe, expect, test } from 'vitest';
import { groundOf } from '../../../src/core/coach/ground.ts';
import { checkLevel } from '../../../src/core/level/generate.ts';
import { seededRandom } from '../../../src/core/math/random.ts';
import { habitsForSkill, virtualRider } from '../../../src/core/virtual/riders.ts';
import { rideThrough } from '../../../src/core/ride/run.ts';
import { CHECK_GROUPS, mean, pearson } from './riding.ts';

const RIDERS_PER_GROUP = 40;
const FIRST_SEED = 4_711;
const SECOND_SEED = 98_765;

const random = seededRandom(20_261);
const skills = CHECK_GROUPS.map(() => Array.from({ length: RIDERS_PER_GROUP }, () => random()));

/** Totals of all riders of a group on one seed; chance in the riders' habits differs between the two rides. */
function totalsOf(group: (typeof CHECK_GROUPS)[number], seed: number, groupIndex: number): number[] {
  const { world, judge } = groundOf(checkLevel(seed, group.audience), group.bike, group.rider);
  return skills[groupIndex]!.map((skill, i) => {
    const { trace } = rideThrough(world, virtualRider(world, habitsForSkill(skill), seed + i));
    return judge(trace).total;
  });
}

const first = CHECK_GROUPS.map((group, i) => totalsOf(group, FIRST_SEED, i));
const second = CHECK_GROUPS.map((group, i) => totalsOf(group, SECOND_SEED, i));

describe('120 virtual riders on two fresh check rides', () => {
  test('test and retest correlate at 0.9 or more', () => {
    expect(pearson(first.flat(), second.flat())).toBeGreaterThanOrEqual(0.9);
  });

  test('the two roads are equally hard: means differ by less than 3 points', () => {
    expect(Math.abs(mean(first.flat()) - mean(second.flat()))).toBeLessThan(3);
  });

  test.each(CHECK_GROUPS.map((group, i) => [group.bike, i] as const))(
    'on %s both hold as well, and skill shows',
    (_, i) => {
      expect(pearson(first[i]!, second[i]!)).toBeGreaterThanOrEqual(0.88);
      expect(Math.abs(mean(first[i]!) - mean(second[i]!))).toBeLessThan(4);
      expect(pearson(skills[i]!, first[i]!)).toBeGreaterThanOrEqual(0.85);
    },
  );
});
