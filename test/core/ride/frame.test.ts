/** What a screen and a loudspeaker are told of a rider who stands up, and what standing costs. */
import { describe, expect, it } from 'vitest';
import { frameOf } from '../../../src/core/ride/frame.ts';
import { startState } from '../../../src/core/ride/world.ts';
import { EASE, handRide, literalCourse, PRESS, STEADY, worldOn } from './worlds.ts';

describe('standing up', () => {
  const from = { speedMps: 4, ringIndex: 0, sprocketIndex: 8 };

  it.each([
    ['pressing on 6 %', 0.06, PRESS, true],
    ['pressing on the flat', 0, PRESS, false],
    ['pressing downhill', -0.04, PRESS, false],
    ['steady on 6 %', 0.06, STEADY, false],
    ['soft feet on 6 %', 0.06, EASE, false],
  ] as const)('%s', (_name, slope, command, stands) => {
    const world = worldOn(literalCourse(2000, slope));
    const ride = handRide(world, startState(world, from));
    expect(frameOf(world, ride.state).outOfSaddle).toBe(false);
    ride.go(1, command);
    expect(frameOf(world, ride.state).outOfSaddle).toBe(stands);
  });

  it('ends when the legs are steady again, and with a foot on the ground', () => {
    const world = worldOn(literalCourse(2000, 0.18));
    const ride = handRide(world, startState(world, { speedMps: 3, ringIndex: 0, sprocketIndex: 10 }));
    ride.go(1, PRESS);
    expect(frameOf(world, ride.state).outOfSaddle).toBe(true);
    ride.go(1, STEADY);
    expect(frameOf(world, ride.state).outOfSaddle).toBe(false);
    const hard = handRide(world, startState(world, { speedMps: 3, ringIndex: 1, sprocketIndex: 0 }));
    hard.until((r) => r.state.phase === 'foot-down', 30, PRESS);
    expect(frameOf(world, hard.state).outOfSaddle).toBe(false);
  });

  it('costs reserve: half a minute on 6 % takes over twice what sitting takes, and goes faster', () => {
    const world = worldOn(literalCourse(2000, 0.06));
    const after = [STEADY, PRESS].map((command) => {
      const ride = handRide(world, startState(world, from));
      ride.go(30, command);
      return { left: frameOf(world, ride.state).reserveRatio, wayM: ride.state.distanceM };
    });
    const [sitting, standing] = after as [(typeof after)[0], (typeof after)[0]];
    expect(1 - standing.left).toBeGreaterThan(2.5 * (1 - sitting.left));
    expect(standing.wayM).toBeGreaterThan(1.15 * sitting.wayM);
  });
});
