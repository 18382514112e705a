/**
 * Bikes with a hub or a motor on all levels: whether named riders keep their order, whether riders with no skill fail,
 * and whether the habits that such bikes punish are named. Prints tables; the first word is a part of a level's name or
 * `all`. By hand: `npx tsx test/figures/hubsAndMotors.ts [LEVELS]`.
 */
import type { RideReport } from '../../src/core/coach/types.ts';
import { type Controller, rideThrough } from '../../src/core/ride/run.ts';
import { NAMED_HABITS, virtualRider } from '../../src/core/virtual/riders.ts';
import { HABITS, PASS_NOWHERE } from '../core/coach/motorHabits.ts';
import { HUB_PAIRS, mean, MOTOR_PAIRS, NAMES } from '../core/coach/riding.ts';
import { cells } from './cells.ts';

/** Rides that lost less are not told of a fault (points). */
const LOST_AT_LEAST = 5;
/** Riders by habit differ from seed to seed. */
const SEEDS = [1, 2, 3];
/** Totals this near to each other are no order (points). */
const SAME = 0.5;

const BIKES: readonly string[] = [...HUB_PAIRS, ...MOTOR_PAIRS].map(({ bikeId }) => bikeId);
const [levels = 'all'] = process.argv.slice(2);

interface Told {
  readonly habit: string;
  readonly bikeId: string;
  readonly cost: boolean;
  readonly named: boolean;
  readonly code: string;
}
const totals = new Map<string, Map<string, string>>();
const passes = new Map<string, RideReport[]>();
const told: Told[] = [];
const outOfOrder: string[] = [];
const whole = (value: number): string => value.toFixed(0);

for (const { name, level, world, script, reference, judge } of cells([levels])) {
  const bikeId = name.split(' ')[1] ?? '';
  if (!BIKES.includes(bikeId)) continue;
  const ride = (rider: Controller): RideReport => judge(rideThrough(world, rider).trace);
  const named = NAMES.map((who) =>
    who === 'reference' ? judge(reference) : ride(virtualRider(world, NAMED_HABITS[who], 1)),
  );
  const row = totals.get(level.id) ?? new Map<string, string>();
  totals.set(level.id, row.set(bikeId, named.map(({ total }) => whole(total)).join(' ')));
  named.forEach(({ total }, i) => {
    const before = named[i - 1]?.total ?? 0;
    if (total < before - SAME)
      outOfOrder.push(`${name}: ${NAMES[i]} ${total.toFixed(1)} below ${NAMES[i - 1]} ${before.toFixed(1)}`);
  });
  if (named.at(-1)?.passed !== true) outOfOrder.push(`${name}: not passed by the best ride`);
  for (const [who, rider] of Object.entries(PASS_NOWHERE))
    passes.set(who, [...(passes.get(who) ?? []), ride(rider(world))]);
  for (const { habit, rider, isNamedBy, varies } of HABITS)
    for (const seed of varies === true ? SEEDS : SEEDS.slice(0, 1)) {
      const controller = rider(world, script, seed);
      if (controller === null) continue;
      const { total, verdict } = ride(controller);
      const { code } = verdict.change;
      told.push({
        habit,
        bikeId,
        cost: total <= 100 - LOST_AT_LEAST,
        named: isNamedBy(verdict.change, world),
        code,
      });
    }
}

console.log(`| level | ${BIKES.join(' | ')} |\n|---|${BIKES.map(() => '---|').join('')}`);
for (const [id, row] of totals) console.log(`| ${id} | ${BIKES.map((b) => row.get(b) ?? '–').join(' | ')} |`);
console.log(`\nOut of order by more than ${SAME}: ${outOfOrder.length}`, outOfOrder.join('\n'));

console.log('\n| rider | lowest total | mean | highest | passes |\n|---|---|---|---|---|');
for (const [who, reports] of passes) {
  const all = reports.map(({ total }) => total);
  const passed = reports.filter((report) => report.passed).length;
  console.log(
    `| ${who} | ${whole(Math.min(...all))} | ${whole(mean(all))} | ${whole(Math.max(...all))} | ${passed} of ${all.length} |`,
  );
}

const heads = [...BIKES, 'all'];
console.log(
  `\n| habit | ${heads.join(' | ')} | told otherwise |\n|---|${heads.map(() => '---|').join('')}---|`,
);
for (const { habit } of HABITS) {
  const costly = told.filter((one) => one.habit === habit && one.cost);
  const shares = heads.map((bikeId) => {
    const mine = costly.filter((one) => bikeId === 'all' || one.bikeId === bikeId);
    return mine.length === 0 ? '–' : `${mine.filter(({ named }) => named).length} of ${mine.length}`;
  });
  const others = new Map<string, number>();
  for (const { code } of costly.filter(({ named }) => !named)) others.set(code, (others.get(code) ?? 0) + 1);
  const rides = told.filter((one) => one.habit === habit).length;
  const other = [...others].map(([code, n]) => `${code} ${n}`).join(', ');
  console.log(`| ${habit} (costs on ${costly.length} of ${rides}) | ${shares.join(' | ')} | ${other} |`);
}
