/** Check rides of bikes with a hub or a motor: passed by good riders, by nobody without skill, and skill shows. */
import { describe, expect, test } from 'vitest';
import { groundOf } from '../../../src/core/coach/ground.ts';
import { checkLevel } from '../../../src/core/level/generate.ts';
import {
  habitsForSkill,
  NAMED_HABITS,
  type NamedRider,
  virtualRider,
} from '../../../src/core/virtual/riders.ts';
import { type Controller, rideThrough } from '../../../src/core/ride/run.ts';
import { PASS_NOWHERE } from './motorHabits.ts';
import { CHECK_GROUPS_APART, mean, NAMES } from './riding.ts';

const SEED = 4_711;

describe.each(CHECK_GROUPS_APART.filter(({ audience }) => audience === 'everyone'))(
  'the check ride of a $needs',
  ({ bike, rider, audience, needs }) => {
    const ground = groundOf(checkLevel(SEED, audience, 'alone', needs), bike, rider);
    const { world } = ground;
    const ride = (controller: Controller) => ground.judge(rideThrough(world, controller).trace);

    test('is passed by its best ride and by who looks ahead, and by nobody without skill', () => {
      expect(ground.judge(ground.reference).passed).toBe(true);
      const [never = 0, , lateEasing = 0, early = 0] = NAMES.slice(0, 4).map(
        (name) => ride(virtualRider(world, NAMED_HABITS[name as NamedRider], 1)).total,
      );
      expect(early).toBeGreaterThan(80);
      expect([never < lateEasing + 1, lateEasing < early - 20]).toEqual([true, true]);
      const passed = Object.entries(PASS_NOWHERE).filter(([, who]) => ride(who(world)).passed);
      expect(passed).toEqual([]);
    });

    test('tells skill apart', () => {
      const [low = 0, high = 0] = [0.1, 0.9].map((skill) =>
        mean([1, 2, 3].map((seed) => ride(virtualRider(world, habitsForSkill(skill), seed)).total)),
      );
      expect(high).toBeGreaterThan(low + 15);
    });
  },
);
