/**
 * How riders fare who do all that the hints say, on every level that gives hints, with four bikes: marks, shifts
 * beside the best ride's, remarks about crossed and stuck chains, and hints that turn round. By hand:
 * `npx tsx test/figures/hints.ts [LEVELS]`, as `advice.ts` has them.
 */
import { countManoeuvres, shiftsOf } from '../../src/core/coach/shifts.ts';
import { isSameRoad, TURN_ROUND_M } from '../../src/core/planner/costs.ts';
import { rideThrough } from '../../src/core/ride/run.ts';
import { obeys, type Told } from '../core/coach/obeys.ts';
import { cells } from './cells.ts';

const REMARKED = [
  'chain-crossed',
  'shift-hung',
  'shift-refused',
  'shift-waiting',
  'chain-dropped',
  'foot-down',
];

for (const { name, level, world, reference, judge } of cells(process.argv.slice(2))) {
  if (!level.aids.nextStep) continue;
  for (const reactionS of [0.5, 1]) {
    const told: Told[] = [];
    const { trace } = rideThrough(world, obeys(world, reference, { reactionS, told }));
    const { total, marks } = judge(trace);
    const remarks = trace.events.map(({ kind }) => kind).filter((kind) => REMARKED.includes(kind));
    const turned = told.filter(({ atM, timeS, step }, i) => {
      const before = told[i - 1];
      if (before === undefined || before.step.makes === step.makes) return false;
      const [fromM, toM] = [before.atM + before.step.inM, atM + step.inM];
      const near = toM - fromM < TURN_ROUND_M || (step.inM === 0 && timeS - before.timeS < 3);
      return near && isSameRoad(world.course, fromM, toM);
    });
    const values = Object.values(marks).map(({ value }) => value?.toFixed(0) ?? '-');
    console.log(
      `${total >= 90 ? '  ' : '! '}${name} ${reactionS} s: ${total.toFixed(0)} (${values.join(' ')}) shifts ${shiftsOf(trace).length} of ${shiftsOf(reference).length}, manoeuvres ${countManoeuvres(trace)} of ${countManoeuvres(reference)}, turned ${turned.length} ${remarks.join(' ')}`,
    );
    if (process.argv.includes('-v'))
      for (const { atM, step, gear } of told)
        console.log(
          `    ${atM.toFixed(0)} m in ${gear.join('/')}: ${step.makes} ${step.derailleur} ${step.direction} ${step.steps}${step.second === null ? '' : ` then ${step.second.direction} ${step.second.steps}`} in ${step.inM.toFixed(0)}`,
        );
  }
}
