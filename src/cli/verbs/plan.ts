/**
 * `plan`: the reference ride, the best one the planner finds for this level, bike and rider, with its shifts,
 * its marks and the time the planning took.
 */
import { performance } from 'node:perf_hooks';
import { groundOfJob } from '../../core/coach/ground.ts';
import { policyDriver } from '../../core/planner/driver.ts';
import { gearOf, gearValues } from '../../core/model/transmission.ts';
import { startPlace } from '../../core/ride/world.ts';
import { needed } from '../common/args.ts';
import { bikeFrom, levelFromFile, riderFrom } from '../common/choose.ts';
import { rideHeadless } from '../common/headless.ts';
import { fixed, markLine, markSentence } from '../common/print.ts';
import type { Verb } from '../common/verb.ts';
import { report } from './ride.ts';

export const plan: Verb = {
  usage: '--level FILE --bike ID --rider ID',
  summary: 'plans the reference ride and prints its shifts and marks',
  flags: { level: 'text', bike: 'text', rider: 'text' },
  takesFiles: false,
  run(args) {
    const level = levelFromFile(needed(args, 'level', 'the file of a level'));
    const job = { level, seed: level.seed, bike: bikeFrom(args), rider: riderFrom(args), autoEase: false };
    const startedMs = performance.now();
    const ground = groundOfJob(job);
    const planningMs = performance.now() - startedMs;
    const { world, policy } = ground;
    const { ride, summary } = rideHeadless(world, policyDriver(world, policy), null);
    const marks = markLine(ground.judge(ride.trace));
    return {
      json: {
        levelId: level.id,
        bikeId: world.machine.bike.id,
        riderId: world.machine.rider.id,
        lengthM: world.course.lengthM,
        planningMs,
        grid: policy.grid,
        startGear: gearValues(gearOf(world.machine, startPlace(world))),
        ...summary,
        ...marks,
      },
      text: `${report(summary, world)}\n${markSentence(marks)}\nPlanned in ${fixed(planningMs, 0)} ms.`,
    };
  },
};
