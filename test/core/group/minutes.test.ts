/** How long plans take: the time of a road against the best ride over it, whole plans by hand, and shorter ways that fit. */
import { describe, expect, it } from 'vitest';
import { groundOf } from '../../../src/core/coach/ground.ts';
import {
  LONGEST_ROUND_MIN,
  minutesSaid,
  planRideSeconds,
  planSeconds,
  rideSeconds,
  shorterWays,
} from '../../../src/core/group/minutes.ts';
import { READY_PLANS } from '../../../src/core/group/readyPlans.ts';
import { BUNDLED, bike, rider, levelById } from '../ride/worlds.ts';
import { planWith } from './rides.ts';

const find = (id: string) => BUNDLED.find(({ level }) => level.id === id)?.level;

describe('minutes of a plan', () => {
  it.each([
    ['click-before-the-hill', 'kids-24-1x8', 'child-9'],
    ['one-pitch-announced', 'road-2x11', 'adult-weekly'],
  ] as const)('a rider needs about as long as the best ride over %s', (levelId, bikeId, riderId) => {
    const level = levelById(levelId);
    const best = groundOf(level, bikeId, riderId).reference;
    const bestS = best.samples.at(-1)?.timeS ?? 0;
    const seconds = rideSeconds(level, bike(bikeId), rider(riderId));
    expect(bestS).toBeGreaterThan(30);
    expect(Math.abs(seconds / bestS - 1)).toBeLessThan(0.1);
  });

  it('are those of all turns, one after the other on each device', () => {
    expect(planSeconds([100, 50], { riders: 8, attempts: 2 })).toBe(8 * 2 * (150 + 2 * 30));
    expect(planSeconds([100], { riders: 8, attempts: 1, devices: 3 })).toBe(3 * (100 + 30));
    expect([20, 400, 1180, 1500, 3100].map(minutesSaid)).toEqual([1, 7, 20, 25, 50]);
  });

  it('every plan that comes with the game has them, and a level that is not here has none', () => {
    for (const plan of READY_PLANS)
      expect(planRideSeconds(plan, find).every((seconds) => seconds !== null && seconds > 60)).toBe(true);
    expect(planRideSeconds(READY_PLANS[0]!, () => undefined)).toEqual([null]);
  });

  it('with eight riders every plan that comes with the game fits into an hour', () => {
    for (const plan of READY_PLANS) {
      const rideS = planRideSeconds(plan, find).flatMap((one) => one ?? []);
      expect(shorterWays(rideS, 8, plan.attempts), plan.title).toEqual([]);
    }
  });

  it('too many of them come with shorter ways, and nothing is offered where a round fits', () => {
    const levels = ['click-before-the-hill', 'three-little-hills'];
    const plan = planWith({ rides: levels.map((levelId) => ({ kind: 'bundled', levelId })) });
    const rideS = planRideSeconds(plan, find).flatMap((one) => one ?? []);
    expect(planSeconds(rideS, { riders: 24, attempts: 3 })).toBeGreaterThan(5 * 3600);
    const ways = shorterWays(rideS, 24, 3);
    expect(ways.map(({ kind }) => kind)).toEqual(['attempts', 'road', 'devices']);
    for (const way of ways) expect(way.seconds).toBeLessThan(planSeconds(rideS, { riders: 24, attempts: 3 }));
    const devices = ways.find((way) => way.kind === 'devices');
    expect(devices?.seconds).toBeLessThanOrEqual(LONGEST_ROUND_MIN * 60);
    expect(shorterWays(rideS, 2, 1)).toEqual([]);
  });
});
