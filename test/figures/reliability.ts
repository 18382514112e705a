/**
 * How well check rides tell riders of nearly the same skill apart, and which change they can see: retest within narrow
 * bands of skill, smallest change seen, false alarms. Prints tables; takes some minutes.
 * `npx tsx test/figures/reliability.ts [part of a bike's name] [riders a bike]`.
 */
import { chancePoints, RIDES_A_SIDE } from '../../src/core/coach/progress.ts';
import { groundOf, type MarkingGround } from '../../src/core/coach/ground.ts';
import { checkLevel } from '../../src/core/level/generate.ts';
import { seededRandom } from '../../src/core/math/random.ts';
import { roughNormal } from '../core/math/roughNormal.ts';
import { rideThrough } from '../../src/core/ride/run.ts';
import { habitsForSkill, virtualRider } from '../../src/core/virtual/riders.ts';
import { CHECK_GROUPS, CHECK_GROUPS_APART, mean, pearson } from '../core/coach/riding.ts';

const RIDERS = Number(process.argv[3] ?? 300);
/** Every rider rides each once, three on each day. */
const ROADS = 2 * RIDES_A_SIDE;
/** Skill is not the same every day (standard deviation; ours, no source). */
const DAY_SPREAD = 0.03;
/** A virtual rider of skill 0 looks nowhere at all and is another kind of rider (15 points where 0.01 has 59). */
const LEAST = 0.01;
const BAND = 0.3;
/** Two-sided 5 % and 80 % power: 1.96 + 0.84 standard errors (normal distribution). */
const SEEN_AT = 2.8;

/** What one rider came to on two days. */
interface Visits {
  readonly skill: number;
  readonly first: readonly number[];
  readonly second: readonly number[];
}

const GROUPS = [...CHECK_GROUPS, ...CHECK_GROUPS_APART];

function visitsOf(group: (typeof GROUPS)[number], groupIndex: number): Visits[] {
  const roads = Array.from({ length: ROADS }, (_, i): MarkingGround => {
    const needs = 'needs' in group ? group.needs : undefined;
    return groundOf(checkLevel(7_001 + 613 * i, group.audience, 'alone', needs), group.bike, group.rider);
  });
  const random = seededRandom(40_961 + groupIndex);
  return Array.from({ length: RIDERS }, (_, who) => {
    const skill = random();
    const left = [...roads];
    const day = (): number[] => {
      const today = Math.min(1, Math.max(LEAST, skill + DAY_SPREAD * roughNormal(random)));
      return Array.from({ length: RIDES_A_SIDE }, (__, k) => {
        const [road] = left.splice(Math.floor(random() * left.length), 1);
        const { world, judge } = road!;
        return judge(rideThrough(world, virtualRider(world, habitsForSkill(today), 1000 * who + k)).trace)
          .total;
      });
    };
    return { skill, first: day(), second: day() };
  });
}

/** Means of so many rides of each day. */
const sides = (visits: readonly Visits[], rides: number): readonly [number[], number[]] => [
  visits.map(({ first }) => mean(first.slice(0, rides))),
  visits.map(({ second }) => mean(second.slice(0, rides))),
];

console.log(`Day spread ${DAY_SPREAD} of skill, ${RIDERS} riders a bike, ${ROADS} roads.`);
GROUPS.forEach((group, i) => {
  if (!group.bike.includes(process.argv[2] ?? '')) return;
  const visits = visitsOf(group, i);
  console.log(
    `\n${group.bike}\n| skill | riders | r, 3 + 3 rides | r, single | mean | smallest change seen with 2 + 2 | false alarms 1 + 1 | 2 + 2 | 3 + 3 |`,
  );
  for (let low = 0; low <= 1 - BAND + 1e-9; low += 0.1) {
    row(
      `${low.toFixed(1)} to ${(low + BAND).toFixed(1)}`,
      visits.filter(({ skill }) => skill >= low && skill < low + BAND),
    );
  }
  row('all', visits);
});

function row(name: string, visits: readonly Visits[]): void {
  const r = (rides: number): string => pearson(...sides(visits, rides)).toFixed(2);
  const [before, after] = sides(visits, 2);
  const spread = Math.sqrt(mean(before.map((one, k) => (one - (after[k] ?? 0)) ** 2)));
  const alarms = (rides: number): string => {
    const [a, b] = sides(visits, rides);
    const limit = chancePoints(rides, rides);
    return `${((100 * a.filter((one, k) => Math.abs(one - (b[k] ?? 0)) >= limit).length) / a.length).toFixed(1)} %`;
  };
  console.log(
    `| ${name} | ${visits.length} | ${r(3)} | ${r(1)} | ${mean(before).toFixed(0)} | ${(SEEN_AT * spread).toFixed(1)} | ${alarms(1)} | ${alarms(2)} | ${alarms(3)} |`,
  );
}
