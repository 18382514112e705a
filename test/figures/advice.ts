/**
 * Which headline riders with exactly one fault get: the confusion table, over all levels and four bikes. By hand:
 * `npx tsx test/figures/advice.ts [LEVELS]`. LEVELS is a part of level names, or
 * `all`. A line for each wrong headline with `-v`.
 */
import type { RideReport } from '../../src/core/coach/types.ts';
import { rideThrough } from '../../src/core/ride/run.ts';
import { ONE_FAULTS } from '../core/coach/oneFault.ts';
import { cells } from './cells.ts';

/** Rides that lost less are left out (points). */
const LOST_AT_LEAST = 5;

const chatty = process.argv.includes('-v');
const table = new Map<string, Map<string, number>>();
const right = new Map<string, readonly [hits: number, all: number]>();

for (const { name, world, script, judge } of cells(process.argv.slice(2)))
  for (const { fault, named, doses, rider } of ONE_FAULTS)
    for (const dose of doses) {
      const controller = rider(world, script, dose);
      if (controller === null) continue;
      const marked = judge(rideThrough(world, controller).trace);
      if (marked.total > 100 - LOST_AT_LEAST) continue;
      const { code } = marked.verdict.change;
      const row = table.get(fault) ?? new Map<string, number>();
      table.set(fault, row.set(code, (row.get(code) ?? 0) + 1));
      const hit = named.includes(code);
      const [hits, all] = right.get(fault) ?? [0, 0];
      right.set(fault, [hits + (hit ? 1 : 0), all + 1]);
      if (!hit && chatty) console.log(`${fault} ${dose} ${name} ${told(marked)}`);
    }

/** Marks, losses and the causes in one line. */
function told({ total, marks, pace, verdict, pitches }: RideReport): string {
  const values = Object.entries(marks).map(([name, { value }]) => `${name} ${value?.toFixed(0) ?? '-'}`);
  const asked = pitches.filter((pitch) => pitch.asked && pitch.credit < 0.8);
  const each = asked.map(
    (p) =>
      `[${p.index + 1}: ${p.credit.toFixed(2)} late ${p.late.toFixed(2)} early ${p.early.toFixed(2)} at ${p.earlyM.toFixed(0)} gear ${p.gearRatio.toFixed(2)} eased ${p.easedShare.toFixed(2)} pressed ${p.pressed.toFixed(2)} ${p.stepsMade}/${p.referenceSteps}]`,
  );
  return `${total.toFixed(0)} ${verdict.change.code}: ${values.join(' ')} pace ${pace.ratio.toFixed(2)} ${each.join(' ')}`;
}

let hitsOfAll = 0;
let ridesOfAll = 0;
for (const [fault, [hits, all]] of right) {
  const row = [...(table.get(fault) ?? [])].toSorted((a, b) => b[1] - a[1]);
  console.log(
    `${fault}: ${hits} of ${all} (${((100 * hits) / all).toFixed(0)} %)  ${row.map(([code, n]) => `${code} ${n}`).join(', ')}`,
  );
  hitsOfAll += hits;
  ridesOfAll += all;
}
console.log(`all: ${hitsOfAll} of ${ridesOfAll} (${((100 * hitsOfAll) / ridesOfAll).toFixed(1)} %)`);
