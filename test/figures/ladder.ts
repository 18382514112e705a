/**
 * Which skill each rung of the levels needs, on four bikes: the least skill of which half the rides pass, and the steepest
 * rise of the total between neighbouring skills. Prints tables.
 * `npx tsx test/figures/ladder.ts`.
 */
import { habitsForSkill } from '../../src/core/virtual/riders.ts';
import { FOUR_PAIRS as FOUR, groundOf, LEVELS, spearman } from '../core/coach/riding.ts';

const SKILLS = Array.from({ length: 20 }, (_, i) => (i + 1) / 20);
const RIDES = 5;
/** Skills so far apart are neighbours. */
const APART = 3;

const ladder = [...LEVELS].sort((a, b) => a.rung - b.rung);
const needed = new Map<string, number[]>();
for (const level of ladder) {
  const cells = FOUR.map(({ bikeId, riderId }) => {
    const ground = groundOf(level, bikeId, riderId);
    const rides = SKILLS.map((skill) =>
      Array.from({ length: RIDES }, (_, k) => ground.ride(habitsForSkill(skill), k + 1)),
    );
    const shares = rides.map((list) => list.filter(({ passed }) => passed).length / RIDES);
    const means = rides.map((list) => list.reduce((sum, { total }) => sum + total, 0) / RIDES);
    const least = shares.findIndex((share, i) => share >= 0.5 && shares.slice(i).every((s) => s >= 0.4));
    const jump = Math.max(...means.slice(APART).map((one, i) => one - (means[i] ?? 0)));
    return { needs: SKILLS[least] ?? 1.05, jump };
  });
  needed.set(
    level.id,
    cells.map(({ needs }) => needs),
  );
  console.log(
    `| ${level.rung} | ${level.audience} | ${level.id} | ${level.teaches} | ${level.passMark} | ${cells.map(({ needs, jump }) => `${needs.toFixed(2)} (${jump.toFixed(0)})`).join(' | ')} |`,
  );
}
for (const audience of ['everyone', 'children'] as const) {
  const rows = ladder.filter((level) => level.audience === audience && level.rung > 0);
  FOUR.forEach(({ bikeId }, i) =>
    console.log(
      audience,
      bikeId,
      spearman(
        rows.map(({ rung }) => rung),
        rows.map(({ id }) => needed.get(id)![i]!),
      ).toFixed(2),
    ),
  );
}
