/**
 * How many ticks a second the ride step makes, bare and with everything a headless ride keeps. One round
 * is a stretch of `TICKS` ticks, so steps a second are rounds a second times that; they are printed too.
 */
import { bench, describe } from 'vitest';
import { courseOfLevel } from '../../src/core/level/build.ts';
import { NAMED_HABITS, virtualRider } from '../../src/core/virtual/riders.ts';
import { startRide } from '../../src/core/ride/run.ts';
import { stepRide } from '../../src/core/ride/step.ts';
import type { RideCommand } from '../../src/core/ride/types.ts';
import { startState } from '../../src/core/ride/world.ts';
import { BUNDLED, EASIER, HARDER, worldOn } from '../core/ride/worlds.ts';

const TICKS = 6000;
const level = BUNDLED.find((bundled) => bundled.level.id === 'rolling-road') ?? BUNDLED[0];
if (level === undefined) throw new Error('there are no bundled levels');
const world = worldOn(courseOfLevel(level.level));
const nothing: readonly RideCommand[] = [];

function bare(): void {
  let state = startState(world);
  for (let i = 0; i < TICKS; i += 1) state = stepRide(world, state, nothing).state;
}

function shifting(): void {
  let state = startState(world);
  for (let i = 0; i < TICKS; i += 1)
    state = stepRide(world, state, i % 240 === 0 ? [i % 480 === 0 ? EASIER : HARDER] : nothing).state;
}

function recorded(): void {
  const ride = startRide(world);
  const controller = virtualRider(world, NAMED_HABITS.early, 1);
  for (let i = 0; i < TICKS; i += 1) ride.step(controller(ride.state()));
}

/** Says steps a second of the best of five rounds, since the table of the runner counts rounds. */
function report(name: string, round: () => void): void {
  const times = Array.from({ length: 6 }, () => {
    const from = performance.now();
    round();
    return performance.now() - from;
  });
  const best = Math.min(...times.slice(1));
  process.stdout.write(`${name}: ${((TICKS / best) * 1000).toExponential(2)} steps a second\n`);
}

report('stepRide', bare);
report('stepRide with a shift every 2 s', shifting);
report('a virtual rider with recording and trace', recorded);

describe(`rounds of ${TICKS} ticks`, () => {
  bench('stepRide', bare);
  bench('stepRide with a shift every 2 s', shifting);
  bench('a virtual rider with recording and trace', recorded);
});
