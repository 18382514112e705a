/**
 * Writes the tables of `src/core/coach/MARKS.md` anew: cheats and good riders, marks of the named riders, Spearman of
 * skill and total, spread over seeds. Takes some minutes. Run with `npx tsx test/figures/marks.ts
 * [exploits] [riders] [skill] [seeds]`, all without a name.
 */
import { readFileSync, writeFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { isSeeded } from '../../src/core/course/pieces.ts';
import { MARK_NAMES, type RideReport } from '../../src/core/coach/types.ts';
import { checkLevel } from '../../src/core/level/generate.ts';
import { knownBestRide } from '../../src/core/planner/known.ts';
import type { RideWorld } from '../../src/core/ride/types.ts';
import { habitsForSkill, NAMED_HABITS, virtualRider } from '../../src/core/virtual/riders.ts';
import { CHEATS, GOOD, LATECOMERS, type Rides, shifted } from '../core/coach/exploits.ts';
import { POPULATION, SKILLS, totalsOn } from '../core/coach/population.ts';
import { plannedWithBandSet } from '../core/coach/taste.ts';
import { FOUR_PAIRS as FOUR, groundOf, LEVELS, mean, NAMES, PAIRS, spearman } from '../core/coach/riding.ts';

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
  const last = `| mean of all levels | ${all.map((sums) => spearman(SKILLS, sums).toFixed(2)).join(' | ')} |`;
  return [head, ...rows, last].join('\n');
}

function seedTable(): string {
  const levels = [
    ...LEVELS.filter(({ pieces }) => isSeeded(pieces)),
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
        return mean(rides);
      });
      const middle = mean(totals);
      const deviation = Math.sqrt(mean(totals.map((total) => (total - middle) ** 2)));
      return `| ${level.id} | ${skill} | ${Math.min(...totals).toFixed(1)} to ${Math.max(...totals).toFixed(1)} | ${deviation.toFixed(1)} |`;
    }),
  );
  return [head, ...rows].join('\n');
}

/** Riders of `exploits.ts` on every level and four bikes: highest, mean and lowest total, and where they pass. */
function exploitTable(): string {
  const grounds = LEVELS.flatMap((level) =>
    FOUR.map(({ bikeId, riderId }) => {
      const ground = groundOf(level, bikeId, riderId);
      return { ground, script: knownBestRide(ground.world) ?? [] };
    }),
  );
  const good = {
    ...GOOD,
    'early by habit': (world: RideWorld) => virtualRider(world, NAMED_HABITS.early, 1),
    'looking 45 m ahead': (world: RideWorld) =>
      virtualRider(world, { ...NAMED_HABITS.early, lookAheadM: 45 }, 1),
  };
  const doses = Object.fromEntries(
    [10, 20, 40, -20, -40, -60].map((byM): [string, Rides] => [
      `the best ride, ${Math.abs(byM)} m too ${byM > 0 ? 'late' : 'early'}`,
      (world, script) => shifted(world, script, byM),
    ]),
  );
  const rowOf = (kind: string, name: string, reports: readonly RideReport[]): string => {
    const totals = reports.map(({ total }) => total);
    const passed = reports.filter((report) => report.passed).length;
    return `| ${kind} | ${name} | ${whole(Math.min(...totals))} | ${whole(mean(totals))} | ${whole(Math.max(...totals))} | ${passed} |`;
  };
  const rowsOf = (kind: string, riders: Readonly<Record<string, Rides>>): string[] =>
    Object.entries(riders).map(([name, rides]) =>
      rowOf(
        kind,
        name,
        grounds.map(({ ground, script }) => ground.follow(rides(ground.world, script))),
      ),
    );
  return [
    `| kind | rider | lowest total | mean | highest | passes of ${grounds.length} |\n|---|---|---|---|---|---|`,
    ...rowsOf('must not pass, nor get above 60', CHEATS),
    ...rowsOf('must not pass', LATECOMERS),
    ...rowsOf('good, at least 80', good),
    rowOf(
      'good, at least 80',
      'planned for 10 rpm less, band set so',
      grounds.map(({ ground }) => plannedWithBandSet(ground.level, ground.world, -10)),
    ),
    ...rowsOf('dose', doses),
  ].join('\n');
}

const tables: Readonly<Record<string, () => string>> = {
  exploits: exploitTable,
  riders: ridersTable,
  skill: skillTable,
  seeds: seedTable,
};
let text = readFileSync(file, 'utf8');
const asked = process.argv.slice(2);
for (const [name, make] of Object.entries(tables)) {
  if (asked.length > 0 && !asked.includes(name)) continue;
  const from = `<!-- ${name} -->`;
  const to = `<!-- end of ${name} -->`;
  const start = text.indexOf(from) + from.length;
  text = `${text.slice(0, start)}\n\n${make()}\n\n${text.slice(text.indexOf(to))}`;
  console.log(`${name} written`);
}
writeFileSync(file, text);
console.log(`${POPULATION} riders, ${LEVELS.length} levels.`);
