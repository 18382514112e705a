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

const GROUPS = [
  { bike: 'kids-20-1x7', rider: 'child-9', audience: 'children' },
  { bike: 'road-2x11', rider: 'adult-new', audience: 'everyone' },
  { bike: 'gravel-1x12', rider: 'adult-strong', audience: 'everyone' },
] as const;
const RIDERS_PER_GROUP = 100;
const FIRST_SEED = 4_711;
const SECOND_SEED = 98_765;

const random = seededRandom(20_261);
const skills = GROUPS.map(() => Array.from({ length: RIDERS_PER_GROUP }, () => random()));

/** Totals of all riders of a group on one seed; chance in the riders' habits differs between the two rides. */
function totalsOf(group: (typeof GROUPS)[number], seed: number, groupIndex: number): number[] {
  const { world, judge } = groundOf(checkLevel(seed, group.audience), group.bike, group.rider);
  return skills[groupIndex]!.map((skill, i) => {
    const { trace } = rideThrough(world, virtualRider(world, habitsForSkill(skill), seed + i));
    return judge(trace).total;
  });
}

const first = GROUPS.map((group, i) => totalsOf(group, FIRST_SEED, i));
const second = GROUPS.map((group, i) => totalsOf(group, SECOND_SEED, i));

describe('300 virtual riders on two fresh check rides', () => {
  test('test and retest correlate at 0.9 or more', () => {
    expect(correlation(first.flat(), second.flat())).toBeGreaterThanOrEqual(0.9);
  });

  test('the two roads are equally hard: means differ by less than 3 points', () => {
    expect(Math.abs(mean(first.flat()) - mean(second.flat()))).toBeLessThan(3);
  });

  test.each(GROUPS.map((group, i) => [group.bike, i] as const))(
    'on %s both hold as well, and skill shows',
    (_, i) => {
      expect(correlation(first[i]!, second[i]!)).toBeGreaterThanOrEqual(0.88);
      expect(Math.abs(mean(first[i]!) - mean(second[i]!))).toBeLessThan(4);
      expect(correlation(skills[i]!, first[i]!)).toBeGreaterThanOrEqual(0.85);
    },
  );
});

function mean(list: readonly number[]): number {
  return list.reduce((sum, value) => sum + value, 0) / list.length;
}

/** Pearson's product-moment correlation. */
function correlation(a: readonly number[], b: readonly number[]): number {
  const meanA = mean(a);
  const meanB = mean(b);
  let ab = 0;
  let aa = 0;
  let bb = 0;
  a.forEach((value, i) => {
    ab += (value - meanA) * (b[i]! - meanB);
    aa += (value - meanA) ** 2;
    bb += (b[i]! - meanB) ** 2;
  });
  return ab / Math.sqrt(aa * bb);
}
