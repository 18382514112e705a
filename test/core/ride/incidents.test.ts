/**
 * Things that stop a rider or hold one back: a foot on the ground, stop lines, brakes, an empty reserve.
 */
import { describe, expect, it } from 'vitest';
import { hashState } from '../../../src/core/ride/recording.ts';
import { brakeForLine } from '../../../src/core/ride/pilot.ts';
import { rideThrough } from '../../../src/core/ride/run.ts';
import { stepRide } from '../../../src/core/ride/step.ts';
import { startState } from '../../../src/core/ride/world.ts';
import { COAST, EASE, eventsOf, handRide, literalCourse, PRESS, STEADY, worldOn } from './worlds.ts';

describe('foot down', () => {
  it('coasting up 10 % ends with a foot on the ground, 3 s, two sprockets easier, a push of 1.2 m/s', () => {
    const world = worldOn(literalCourse(3000, 0.1));
    const ride = handRide(world, startState(world, { speedMps: 4, ringIndex: 0, sprocketIndex: 3 }));
    ride.until((r) => r.state.phase === 'foot-down', 20, COAST);
    const downAtTick = ride.state.tick;
    expect([ride.state.speedMps, ride.state.sprocketIndex]).toEqual([0, 5]);
    ride.until((r) => r.state.phase === 'riding', 5, STEADY);
    expect(Math.abs((ride.state.tick - downAtTick) / 120 - 3)).toBeLessThan(0.02);
    expect(ride.state.speedMps).toBe(1.2);
    expect(eventsOf(ride.events, 'pushed-off')).toHaveLength(1);
  });

  it('too hard a gear bogs down on 12 % until the foot goes down', () => {
    const world = worldOn(literalCourse(3000, 0.12));
    const ride = handRide(world, startState(world, { speedMps: 6, ringIndex: 1, sprocketIndex: 2 }));
    ride.until((r) => r.state.phase === 'foot-down', 60, STEADY);
    expect(eventsOf(ride.events, 'foot-down')).toHaveLength(1);
  });

  it('in the gear of the flat a new rider keeps crawling up 9 %, which the weight of the body holds, and stops on 11 %', () => {
    for (const [slope, stops] of [
      [0.09, false],
      [0.11, true],
    ] as const) {
      const world = worldOn(literalCourse(3000, slope), 'road-2x11', 'adult-new');
      const gear = startState(worldOn(literalCourse(100, 0), 'road-2x11', 'adult-new'));
      const { ringIndex, sprocketIndex } = gear;
      const ride = handRide(world, startState(world, { speedMps: 5, ringIndex, sprocketIndex }));
      ride.go(30, STEADY);
      expect([slope, eventsOf(ride.events, 'foot-down').length > 0]).toEqual([slope, stops]);
    }
  });

  it('the lowest gear climbs the same 12 % without', () => {
    const world = worldOn(literalCourse(300, 0.12));
    const ride = handRide(world, startState(world, { speedMps: 4, ringIndex: 0, sprocketIndex: 10 }));
    ride.until((r) => r.state.phase === 'finished', 300, STEADY);
    expect(eventsOf(ride.events, 'foot-down')).toHaveLength(0);
  });

  it('standing on a slope never rolls backwards', () => {
    const world = worldOn(literalCourse(3000, 0.15));
    const ride = handRide(world, startState(world, { speedMps: 2, ringIndex: 1, sprocketIndex: 0 }));
    let farthestM = 0;
    for (let i = 0; i < 2400; i += 1) {
      ride.go(1 / 120);
      expect(ride.state.distanceM).toBeGreaterThanOrEqual(farthestM);
      farthestM = ride.state.distanceM;
    }
    expect(eventsOf(ride.events, 'foot-down').length).toBeGreaterThan(1);
  });
});

describe('stop lines', () => {
  const lines = literalCourse(400, 0, { stopLinesM: [100, 250] });

  it('a rider who brakes for it stops within 3 m before each line, waits, and goes on in the gear they stopped in', () => {
    const world = worldOn(lines);
    const brake = brakeForLine(world);
    const gears: string[] = [];
    const ride = rideThrough(world, brake, {
      onTick: (state) => {
        if (state.phase === 'standing' || state.startingUp)
          gears.push(`${state.ringIndex}-${state.sprocketIndex}`);
      },
    });
    const stops = eventsOf(ride.trace.events, 'stopped-at-line');
    expect(stops).toHaveLength(2);
    stops.forEach((stop, i) => {
      const beforeM = (lines.stopLinesM[i] ?? 0) - stop.distanceM;
      expect(beforeM).toBeGreaterThanOrEqual(0);
      expect(beforeM).toBeLessThanOrEqual(3);
    });
    expect(new Set(gears).size).toBe(1);
    expect(eventsOf(ride.trace.events, 'foot-down')).toHaveLength(0);
    expect(ride.state().phase).toBe('finished');
  });

  it('riding through a line is noticed, brakes to rest and costs 4 s', () => {
    const world = worldOn(lines);
    const ride = handRide(world);
    ride.until((r) => r.state.phase === 'overrun', 60);
    expect(eventsOf(ride.events, 'line-missed')).toHaveLength(1);
    ride.until((r) => r.state.phase === 'standing', 10);
    const restTick = ride.state.tick;
    expect(ride.state.speedMps).toBe(0);
    ride.until((r) => r.state.phase === 'riding', 10);
    expect(Math.abs((ride.state.tick - restTick) / 120 - 4)).toBeLessThan(0.02);
    expect(eventsOf(ride.events, 'stopped-at-line')).toHaveLength(0);
  });

  it('stopping by brake elsewhere is no foot down, and the bike gets going again', () => {
    const world = worldOn(literalCourse(500, 0));
    const ride = handRide(world);
    ride.until((r) => r.state.speedMps === 0, 20, COAST, { kind: 'brake', on: true });
    ride.go(1, { kind: 'brake', on: false });
    ride.go(10, STEADY);
    expect(eventsOf(ride.events, 'foot-down')).toHaveLength(0);
    expect(ride.state.speedMps).toBeGreaterThan(3);
  });
});

describe('limits', () => {
  it('riders brake by themselves above 50 km/h', () => {
    const world = worldOn(literalCourse(3000, -0.15));
    const ride = handRide(world);
    ride.go(60, PRESS);
    expect(ride.state.speedMps * 3.6).toBeGreaterThan(50);
    expect(ride.state.speedMps * 3.6).toBeLessThan(53);
  });

  it('pressing empties the reserve; then pressing is only steady until a quarter is back', () => {
    const world = worldOn(literalCourse(60_000, 0.04));
    const ride = handRide(world, startState(world, { ringIndex: 0, sprocketIndex: 5 }));
    ride.until((r) => r.state.spent, 3000, PRESS);
    expect(eventsOf(ride.events, 'reserve-empty')).toHaveLength(1);
    ride.go(3);
    expect(ride.state.pressureRatio).toBeLessThan(1.001);
    ride.until((r) => !r.state.spent, 3000, EASE);
    const quarter = world.machine.rider.reserveJ / 4;
    expect(ride.state.reserveJ).toBeGreaterThanOrEqual(quarter);
    expect(ride.state.reserveJ).toBeLessThan(quarter * 1.01);
    ride.go(2, PRESS);
    expect(ride.state.pressureRatio).toBeGreaterThan(1.5);
  });

  it('after the finish nothing changes any more', () => {
    const world = worldOn(literalCourse(50, 0));
    const ride = handRide(world);
    ride.until((r) => r.state.phase === 'finished', 60);
    const after = stepRide(world, ride.state, [PRESS]);
    expect(after.events).toEqual([]);
    expect(hashState(after.state)).toBe(hashState(ride.state));
  });

  it('legs follow a change of pressure with a lag of 0.18 s: 63 % of the way after it', () => {
    const world = worldOn(literalCourse(500, 0));
    const ride = handRide(world);
    ride.go(0.18, EASE);
    expect(Math.abs(1 - ride.state.pressureRatio - 0.6 * (1 - Math.exp(-1)))).toBeLessThan(0.02);
  });
});
