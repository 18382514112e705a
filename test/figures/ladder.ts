/**
 * Whether the levels are a ladder, on four bikes: the least skill from which half of the rides pass, the steepest rise of
 * the total between neighbouring skills, and how many rides a slow learner spends on each rung. Prints tables.
 * `npx tsx test/figures/ladder.ts [rides of each skill]`.
 */
import type { Level } from '../../src/core/level/schema.ts';
import { habitsForSkill } from '../../src/core/virtual/riders.ts';
import { FOUR_PAIRS as FOUR, groundOf, LEVELS, mean, spearman } from '../core/coach/riding.ts';

const SKILLS = Array.from({ length: 20 }, (_, i) => (i + 1) / 20);
const RIDES = Number(process.argv[2] ?? 8);
/** Skills so far apart are neighbours. */
const APART = 3;
/** Passing by chance below does not count, and failing by chance above neither. */
const STAYS = 0.4;
/** Slow learners: what they begin with, and what a ride adds. */
const LEARNERS = 20;
const BEGIN = 0.25;
const LEARNS = 0.01;
const GIVES_UP = 60;

interface Rung {
  readonly level: Level;
  readonly needs: number[];
  readonly jumps: number[];
}

const rungs: Rung[] = [...LEVELS]
  .sort((a, b) => a.rung - b.rung)
  .map((level) => {
    const cells = FOUR.map(({ bikeId, riderId }) => {
      const ground = groundOf(level, bikeId, riderId);
      const rides = SKILLS.map((skill) =>
        Array.from({ length: RIDES }, (_, k) => ground.ride(habitsForSkill(skill), k + 1)),
      );
      const shares = rides.map((list) => list.filter(({ passed }) => passed).length / RIDES);
      const means = rides.map((list) => mean(list.map(({ total }) => total)));
      const least = shares.findIndex((share, i) => share >= 0.5 && shares.slice(i).every((s) => s >= STAYS));
      const jump = Math.max(...means.slice(APART).map((one, i) => one - (means[i] ?? 0)));
      return { needs: SKILLS[least] ?? 1.05, jump };
    });
    return { level, needs: cells.map(({ needs }) => needs), jumps: cells.map(({ jump }) => jump) };
  });

/** Rides that slow learners spend on each rung of a row, on one bike: the mean of all, and the most of any. */
function ridesOf(row: readonly Rung[], pair: (typeof FOUR)[number]): { mean: number; most: number }[] {
  const spent = row.map((): number[] => []);
  for (let who = 0; who < LEARNERS; who += 1) {
    let skill = BEGIN;
    row.forEach(({ level }, i) => {
      const ground = groundOf(level, pair.bikeId, pair.riderId);
      let rides = 1;
      while (rides < GIVES_UP && !ground.ride(habitsForSkill(skill), 1000 * who + rides).passed) {
        skill = Math.min(1, skill + LEARNS);
        rides += 1;
      }
      spent[i]!.push(rides);
    });
  }
  return spent.map((list) => ({ mean: mean(list), most: Math.max(...list) }));
}

const head = FOUR.map(({ bikeId }) => bikeId).join(' | ');
for (const audience of ['everyone', 'children'] as const) {
  const row = rungs.filter(({ level }) => level.audience === audience && level.rung > 0);
  const learners = FOUR.map((pair) => ridesOf(row, pair));
  console.log(`\n| rung | ${audience} | teaches | pass mark | ${head} |\n|---|---|---|---|---|---|---|---|`);
  row.forEach(({ level, needs, jumps }, i) => {
    const cells = needs.map((need, b) => {
      const rides = learners[b]![i]!;
      return `${need > 1 ? '–' : need.toFixed(2)} (${jumps[b]!.toFixed(0)}) ${rides.mean.toFixed(1)}, ${rides.most}`;
    });
    console.log(
      `| ${level.rung} | ${level.id} | ${level.teaches} | ${level.passMark} | ${cells.join(' | ')} |`,
    );
  });
  FOUR.forEach(({ bikeId }, b) => {
    const rank = spearman(
      row.map(({ level }) => level.rung),
      row.map(({ needs }) => needs[b]!),
    );
    const means = learners[b]!.map((rides) => rides.mean);
    const over = means.filter((rides) => rides > 8).length;
    console.log(
      `${audience} ${bikeId}: Spearman ${rank.toFixed(2)}; rides a rung: mean at most ${Math.max(...means).toFixed(1)}, ${over} rungs above 8`,
    );
  });
}
const jumps = rungs.flatMap((rung) => rung.jumps);
console.log(`Rises above 35 points: ${jumps.filter((jump) => jump > 35).length} of ${jumps.length} cells.`);
