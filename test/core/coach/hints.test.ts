/**
 * Help on the road: a rider who only does what the hint says rides well, and the marks shown on the way are those
 * of the debrief wherever that needs no reference ride.
 */
import { describe, expect, test } from 'vitest';
import { countLive, liveMarks, NOTHING_COUNTED } from '../../../src/core/coach/live.ts';
import { nextStep } from '../../../src/core/coach/nextStep.ts';
import { frameOf } from '../../../src/core/ride/frame.ts';
import { brakeForLine } from '../../../src/core/ride/pilot.ts';
import { type Controller, rideThrough } from '../../../src/core/ride/run.ts';
import { NAMED_HABITS, virtualRider } from '../../../src/core/virtual/riders.ts';
import type { RideCommand } from '../../../src/core/ride/types.ts';
import { type Ground, groundOf, LEVELS, PAIRS } from './riding.ts';

/** Eases, pushes half a second later what the hint says, and lets go when the chain has moved. */
function obeys({ world, reference }: Ground): Controller {
  const brake = brakeForLine(world);
  let pushTick = -1;
  let push: RideCommand | null = null;
  return (state) => {
    const commands: RideCommand[] = [...brake(state)];
    const moving = state.rear !== null || state.front !== null || state.queue.length > 0;
    if (push !== null) {
      if (state.tick === pushTick) commands.push(push);
      if (state.tick > pushTick && !moving) {
        push = null;
        commands.push({ kind: 'pressure', pressure: 'steady' });
      }
      return commands;
    }
    if (moving || state.phase !== 'riding' || state.braking || state.tick % 30 !== 0) return commands;
    const hint = nextStep(world.machine, reference, frameOf(world, state));
    if (hint === null || hint.inM > 0) return commands;
    const { derailleur, direction } = hint;
    push = { kind: 'shift', derailleur, direction, steps: 1 };
    pushTick = state.tick + 60;
    return [...commands, { kind: 'pressure', pressure: 'ease' }];
  };
}

const hinting = LEVELS.filter((level) => level.aids.nextStep).flatMap((level) =>
  PAIRS.filter(({ riderId }) => (level.audience === 'children') === (riderId === 'child-9')).map(
    (pair) => [level.id, pair.bikeId, pair.riderId] as const,
  ),
);

describe('the hint for the next step', () => {
  test.each(hinting)('obeying it passes %s on %s with %s, and beats being late', (id, bikeId, riderId) => {
    const ground = groundOf(LEVELS.find((level) => level.id === id)!, bikeId, riderId);
    const report = ground.follow(obeys(ground));
    expect(report.total).toBeGreaterThanOrEqual(ground.level.passMark);
    expect(report.total).toBeGreaterThan(ground.named('late').total);
  });

  test('says nothing on the reference ride itself but what it does next', () => {
    const ground = groundOf(LEVELS.find(({ id }) => id === 'one-pitch-announced')!, 'town-1x9', 'adult-new');
    const { machine } = ground.world;
    const [first] = ground.reference.events.filter((event) => event.kind === 'shift-done');
    if (first?.kind !== 'shift-done') throw new Error('the reference ride shifts nowhere');
    const before = ground.reference.samples.findLast(({ distanceM }) => distanceM < first.startedAtM - 30)!;
    const rider = { ...before, pressure: 'steady', chainOn: true } as const;
    const hint = nextStep(machine, ground.reference, rider);
    expect(hint).toMatchObject({ derailleur: first.derailleur, direction: first.direction });
    expect(hint?.inM).toBeGreaterThan(0);
    expect(before.distanceM + (hint?.inM ?? 0)).toBeLessThanOrEqual(first.startedAtM + 10);
    const off = nextStep(machine, ground.reference, { ...rider, chainOn: false });
    expect(off, 'a chain that is off goes back on first').toBeNull();
  });
});

describe('marks on the way', () => {
  test.each(['never', 'late', 'late-easing', 'early'] as const)(
    'after a ride of the %s rider they are those of the debrief',
    (name) => {
      const ground = groundOf(LEVELS.find(({ id }) => id === 'straight-chain')!, 'road-2x11', 'adult-new');
      const { world } = ground;
      const ride = rideThrough(world, virtualRider(world, NAMED_HABITS[name], 1));
      // In pieces, as on the road.
      let count = NOTHING_COUNTED;
      for (const share of [0.2, 0.21, 0.7, 1]) {
        const { samples, events, beforePitch } = ride.trace;
        const part = {
          samples: samples.slice(0, Math.floor(samples.length * share)),
          events: events.slice(0, Math.floor(events.length * share)),
          beforePitch,
        };
        count = countLive(world, part, count);
      }
      const shown = liveMarks(world, count);
      const { marks } = ground.judge(ride.trace);
      expect(shown.easing === null).toBe(marks.easing.value === null);
      if (marks.easing.value !== null) expect(shown.easing).toBeCloseTo(marks.easing.value, 9);
      if (marks.chainLine.value !== null) expect(shown.chainLine).toBeCloseTo(marks.chainLine.value, 9);
      // The debrief forgives what the reference could not do better either.
      expect(shown.cadence).toBeLessThanOrEqual((marks.cadence.value ?? 0) + 1e-9);
      expect(shown.cadence).toBeGreaterThan(0);
    },
  );
});
