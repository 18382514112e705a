/** The trace of a ride: the same whenever and however often it is asked for. */
import { describe, expect, it } from 'vitest';
import { bandLowRpm } from '../../../src/core/model/legs.ts';
import { gearAt } from '../../../src/core/model/machine.ts';
import { overloadRatio, roadLoadRatio } from '../../../src/core/ride/load.ts';
import { NAMED_HABITS, virtualRider } from '../../../src/core/virtual/riders.ts';
import { startRide } from '../../../src/core/ride/run.ts';
import { SAMPLE_TICKS } from '../../../src/core/ride/trace.ts';
import { bike, literalCourse, worldOn } from './worlds.ts';

const world = worldOn(
  literalCourse(900, (m) => (m > 300 && m < 500 ? 0.06 : 0)),
  bike('road-2x11'),
);

function ride(askEveryTicks: number | null, ticks: number) {
  const live = startRide(world);
  const hands = virtualRider(world, NAMED_HABITS.late, 1);
  for (let i = 0; i < ticks; i += 1) {
    live.step(hands(live.now));
    if (askEveryTicks !== null && i % askEveryTicks === 0)
      expect(live.trace.samples.length).toBeGreaterThan(0);
  }
  return live;
}

describe('the trace of a ride', () => {
  it('is the same asked for at the end or all along, over several blocks', () => {
    const ticks = SAMPLE_TICKS * 1500;
    const seldom = ride(null, ticks).trace;
    const often = ride(7, ticks).trace;
    expect(seldom.samples.length).toBeGreaterThan(1100);
    expect(often).toEqual(seldom);
  });

  it('holds what the states held', () => {
    const live = startRide(world);
    const hands = virtualRider(world, NAMED_HABITS.late, 1);
    for (let i = 0; i < SAMPLE_TICKS * 300; i += 1) live.step(hands(live.now));
    const { now } = live;
    const gear = gearAt(world.machine, now.ringIndex, now.sprocketIndex);
    expect(live.trace.samples.at(-1)).toEqual({
      timeS: now.tick * world.tickS,
      distanceM: now.distanceM,
      speedMps: now.speedMps,
      cadenceRpm: now.cadenceRpm,
      bandLowRpm: bandLowRpm(world.machine.rider, world.course.slopeRatio[Math.round(now.distanceM)] ?? 0),
      bandHighRpm: world.machine.rider.cadenceHighRpm,
      pressureRatio: now.pressureRatio,
      torqueRatio: now.crankTorqueNm / world.machine.referenceTorqueNm,
      loadRatio: roadLoadRatio(world, now),
      overloadRatio: overloadRatio(world, now),
      ringIndex: now.ringIndex,
      sprocketIndex: now.sprocketIndex,
      developmentM: gear.developmentM,
      crossedS: now.crossedS,
      pedalling: true,
      held: false,
    });
  });
});
