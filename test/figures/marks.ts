/**
 * Writes the tables of `src/core/coach/MARKS.md` anew: marks of the named riders, Spearman of skill and total,
 * spread over seeds. Takes some minutes. Run with `npx tsx test/figures/marks.ts`.
 */
import { readFileSync, writeFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { MARK_NAMES, type RideReport } from '../../src/core/coach/types.ts';
import { checkLevel } from '../../src/core/level/generate.ts';
import { realisedCost } from '../../src/core/planner/realised.ts';
import { habitsForSkill } from '../../src/core/virtual/riders.ts';
import { POPULATION, SKILLS, totalsOn } from '../core/coach/population.ts';
import { groundOf, LEVELS, NAMES, PAIRS, spearman } from '../core/coach/riding.ts';

const file = fileURLToPath(new URL('../../src/core/coach/MARKS.md', import.meta.url));
const whole = (value: number | null): string => (value === null ? '–' : value.toFixed(0));
const shown = ({ total, marks }: RideReport): string =>
  `**${whole(total)}** (${MARK_NAMES.map((name) => whole(marks[name].value)).join(' ')})`;

function ridersTable(): string {
  const head = `| level | bike, rider | ${NAMES.join(' | ')} |\n|---|---|${NAMES.map(() => '---|').join('')}`;
  const rows = LEVELS.flatMap((level) =>
    PAIRS.map(({ bikeId, riderId }) => {
      const ground = groundOf(level, bikeId, riderId);
      return `| ${level.id} | ${bikeId}, ${riderId} | ${NAMES.map((name) => shown(ground.named(name))).join(' | ')} |`;
    }),
  );
  return [head, ...rows].join('\n');
}

function skillTable(): string {
  const head = '| level | kids-20-1x7 | road-2x11 | gravel-1x12 |\n|---|---|---|---|';
  const all = PAIRS.map(() => SKILLS.map(() => 0));
  const rows = LEVELS.map((level) => {
    const cells = PAIRS.map((pair, p) => {
      const totals = totalsOn(level, pair);
      totals.forEach((total, i) => {
        all[p]![i]! += total;
      });
      return spearman(SKILLS, totals).toFixed(2);
    });
    return `| ${level.id} | ${cells.join(' | ')} |`;
  });
  const mean = `| mean of all levels | ${all.map((sums) => spearman(SKILLS, sums).toFixed(2)).join(' | ')} |`;
  return [head, ...rows, mean].join('\n');
}

function seedTable(): string {
  const levels = [
    ...LEVELS.filter((level) =>
      level.pieces.some(({ kind }) => kind === 'rollers' || kind === 'random-pitches'),
    ),
    checkLevel(1, 'everyone'),
    checkLevel(1, 'children'),
  ];
  const head =
    '| level | skill | lowest to highest total over 8 seeds | standard deviation |\n|---|---|---|---|';
  const rows = levels.flatMap((level) =>
    [0.2, 0.6, 1].map((skill) => {
      const { bikeId, riderId } = PAIRS[0];
      const totals = Array.from({ length: 8 }, (_, i) => {
        const ground = groundOf(level, bikeId, riderId, 100 + i * 37);
        const rides = [1, 2, 3].map((rider) => ground.ride(habitsForSkill(skill), rider).total);
        return rides.reduce((sum, total) => sum + total, 0) / rides.length;
      });
      const mean = totals.reduce((sum, total) => sum + total, 0) / totals.length;
      const deviation = Math.sqrt(totals.reduce((sum, t) => sum + (t - mean) ** 2, 0) / totals.length);
      return `| ${level.id} | ${skill} | ${Math.min(...totals).toFixed(1)} to ${Math.max(...totals).toFixed(1)} | ${deviation.toFixed(1)} |`;
    }),
  );
  return [head, ...rows].join('\n');
}

function planTable(): string {
  let planned = 0;
  let ridden = 0;
  for (const level of LEVELS)
    for (const { bikeId, riderId } of PAIRS) {
      const { world, policy, reference } = groundOf(level, bikeId, riderId);
      const gear = world.startRingIndex * world.machine.sprocketCount + world.startSprocketIndex;
      planned += policy.costToGo(0, world.startSpeedMps, gear);
      ridden += realisedCost(world, reference);
    }
  return `Planned ${planned.toFixed(0)}, ridden ${ridden.toFixed(0)} (sum of costs over ${LEVELS.length} levels and three pairs).`;
}

const tables: Readonly<Record<string, () => string>> = {
  riders: ridersTable,
  skill: skillTable,
  seeds: seedTable,
  plan: planTable,
};
let text = readFileSync(file, 'utf8');
for (const [name, make] of Object.entries(tables)) {
  const from = `<!-- ${name} -->`;
  const to = `<!-- end of ${name} -->`;
  const start = text.indexOf(from) + from.length;
  text = `${text.slice(0, start)}\n\n${make()}\n\n${text.slice(text.indexOf(to))}`;
  console.log(`${name} written`);
}
writeFileSync(file, text);
console.log(`${POPULATION} riders, ${LEVELS.length} levels.`);
