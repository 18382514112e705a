/**
 * `plan`: the reference ride, the best one the planner finds for this level, bike and rider, with its shifts,
 * its marks and the time the planning took.
 */
import { performance } from 'node:perf_hooks';
import { courseOfLevel } from '../../core/level/build.ts';
import { policyDriver } from '../../core/planner/driver.ts';
import { planRoad } from '../../core/planner/plan.ts';
import { gearAt } from '../../core/model/machine.ts';
import { buildRideWorld } from '../../core/ride/world.ts';
import { needed } from '../args.ts';
import { bikeFrom, levelFromFile, riderFrom } from '../choose.ts';
import { rideHeadless } from '../headless.ts';
import { markLine, markRide, markSentence } from '../marking.ts';
import { fixed } from '../print.ts';
import type { Verb } from '../verb.ts';
import { report } from './ride.ts';

export const plan: Verb = {
  usage: '--level FILE --bike ID --rider ID',
  summary: 'plans the reference ride and prints its shifts and marks',
  flags: { level: 'text', bike: 'text', rider: 'text' },
  takesFiles: false,
  run(args) {
    const level = levelFromFile(needed(args, 'level', 'the file of a level'));
    const world = buildRideWorld(courseOfLevel(level), bikeFrom(args), riderFrom(args));
    const startedMs = performance.now();
    const policy = planRoad(world);
    const planningMs = performance.now() - startedMs;
    const { ride, summary } = rideHeadless(world, policyDriver(world, policy), null);
    const marks = markLine(markRide(world, level, ride.trace, policy));
    const { startRingIndex, startSprocketIndex } = world;
    const { ringTeeth, sprocketTeeth } = gearAt(world.machine, startRingIndex, startSprocketIndex);
    return {
      json: {
        levelId: level.id,
        bikeId: world.machine.bike.id,
        riderId: world.machine.rider.id,
        lengthM: world.course.lengthM,
        planningMs,
        grid: policy.grid,
        startGear: { ringTeeth, sprocketTeeth },
        ...summary,
        ...marks,
      },
      text: `${report(summary, world)}\n${markSentence(marks)}\nPlanned in ${fixed(planningMs, 0)} ms.`,
    };
  },
};
