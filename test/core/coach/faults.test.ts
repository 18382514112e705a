/**
 * One fault moves one mark. The faulty rides are the reference ride with a single habit spoilt; what else moves
 * with it by nature is stated where it does.
 */
import { describe, expect, test } from 'vitest';
import type { MarkName } from '../../../src/core/coach/types.ts';
import { MARK_NAMES } from '../../../src/core/coach/types.ts';
import { knownBestRide } from '../../../src/core/planner/known.ts';
import { type Manoeuvre, scriptDriver } from '../../../src/core/planner/script.ts';
import { gearAt } from '../../../src/core/model/machine.ts';
import type { Controller } from '../../../src/core/ride/run.ts';
import type { RideCommand, RideState } from '../../../src/core/ride/types.ts';
import { type Ground, groundOf, LEVELS, PAIRS } from './riding.ts';

const level = (id: string) => LEVELS.find((one) => one.id === id)!;
const grounds = PAIRS.map(({ bikeId, riderId }) => groundOf(level('straight-chain'), bikeId, riderId));
/** This rider's usual gears have crossed twins, which those of a new rider on the same bike have not. */
const roadBike = groundOf(level('straight-chain'), 'road-2x11', 'adult-weekly');

/** How much each mark lost against the reference; marks that neither ride has count as nothing lost. */
function losses(ground: Ground, spoilt: Controller): Record<MarkName, number> {
  const best = ground.named('reference').marks;
  const { marks } = ground.follow(spoilt);
  const lost = (name: MarkName): number =>
    (best[name].value ?? 0) - (marks[name].value ?? best[name].value ?? 0);
  return Object.fromEntries(MARK_NAMES.map((name) => [name, lost(name)])) as Record<MarkName, number>;
}

/** Far enough for the legs to have felt it (m). */
const LATE_INTO_PITCH_M = 40;

const isShift = (command: RideCommand): boolean => command.kind === 'shift';
const reference = ({ world }: Ground): Controller => scriptDriver(world, knownBestRide(world) ?? []);

describe.each(grounds.map((ground) => [ground.world.machine.bike.id, ground] as const))(
  'on %s',
  (_, ground) => {
    test('never easing costs 40 or more in easing and less than 10 anywhere else', () => {
      const driver = reference(ground);
      const lost = losses(ground, (state) => driver(state).filter((command) => command.kind !== 'pressure'));
      expect(lost.easing).toBeGreaterThanOrEqual(40);
      for (const name of MARK_NAMES) if (name !== 'easing') expect(lost[name], name).toBeLessThan(10);
    });

    test('fidgeting costs economy, and less than 10 anywhere else', () => {
      const lost = losses(ground, fidgety(ground));
      expect(lost.economy).toBeGreaterThanOrEqual(30);
      for (const name of MARK_NAMES) if (name !== 'economy') expect(lost[name], name).toBeLessThan(10);
    });

    test('looking only at what is under the wheel costs foresight most', () => {
      // The legs slow down where the gear comes late, so cadence moves too: that is what being late is.
      const lost = losses(ground, late(ground));
      expect(lost.foresight).toBeGreaterThanOrEqual(30);
      for (const name of ['chainLine', 'economy'] as const) expect(lost[name], name).toBeLessThan(10);
      // Even eased, a chain is loaded where the legs already turn slowly.
      expect(lost.easing).toBeLessThan(20);
      expect(lost.cadence).toBeLessThan(lost.foresight);
    });

    test('always one gear earns nothing in easing and economy and costs foresight and cadence', () => {
      const best = ground.named('reference').marks;
      const { marks } = ground.follow(() => []);
      expect([marks.easing.value, marks.economy.value]).toEqual([0, 0]);
      expect(marks.chainLine.value ?? 0).toBe(0);
      expect((best.foresight.value ?? 0) - (marks.foresight.value ?? 0)).toBeGreaterThanOrEqual(40);
      expect((best.cadence.value ?? 0) - (marks.cadence.value ?? 0)).toBeGreaterThanOrEqual(30);
    });
  },
);

test('on two rings a chain that is crossed where a straight twin was ridden costs the chain line, and no other mark of riding', () => {
  const lost = losses(roadBike, crossing(roadBike));
  expect(lost.chainLine).toBeGreaterThanOrEqual(10);
  for (const name of ['cadence', 'foresight', 'easing'] as const) expect(lost[name], name).toBeLessThan(10);
  // Going over to the twin and back is shifting too.
  expect(lost.economy).toBeLessThan(45);
});

/** The best ride, with a click away and back again on every quiet stretch, eased like everything else. */
function fidgety({ world }: Ground): Controller {
  const script = [...(knownBestRide(world) ?? [])];
  const { pitches, lengthM } = world.course;
  const quiet = (atM: number): boolean =>
    pitches.every(({ footM, endM }) => atM < footM - 80 || atM > endM + 20) &&
    script.every((one) => Math.abs(one.atM - atM) > 15);
  const start = { ringIndex: world.startRingIndex, sprocketIndex: world.startSprocketIndex };
  const clicks: Manoeuvre[] = [];
  for (let atM = 40; atM < lengthM - 40; atM += 35) {
    if (!quiet(atM)) continue;
    const gear = script.findLast((one) => one.atM < atM) ?? start;
    const sprocketIndex = gear.sprocketIndex > 0 ? gear.sprocketIndex - 1 : gear.sprocketIndex + 1;
    clicks.push({ ...gear, atM, sprocketIndex }, { ...gear, atM: atM + 5 });
  }
  return scriptDriver(
    world,
    [...script, ...clicks].toSorted((x, y) => x.atM - y.atM),
  );
}

/** The reference's shifts before a pitch and at its foot, held back until the pitch is well under the wheels. */
function late(ground: Ground): Controller {
  const driver = reference(ground);
  let held: RideCommand[] = [];
  let script: { atTick: number; command: RideCommand }[] = [];
  return (state) => {
    const due = script.filter((one) => one.atTick === state.tick).map((one) => one.command);
    script = script.filter((one) => one.atTick > state.tick);
    if (due.length > 0 || script.length > 0) return due;
    const into = intoPitchM(ground, state);
    const before = nearestPitchM(ground, state) < 40 || (into !== null && into < LATE_INTO_PITCH_M);
    if (!before && held.length > 0) {
      const at = (seconds: number): number => state.tick + Math.round(seconds * 120);
      script = [
        ...held.map((command) => ({ atTick: at(0.45), command })),
        { atTick: at(0.9 + 0.6 * held.length), command: { kind: 'pressure', pressure: 'steady' } },
      ];
      held = [];
      return [{ kind: 'pressure', pressure: 'ease' }];
    }
    const wanted = driver(state);
    if (!before) return wanted;
    if (held.length === 0) held = wanted.filter(isShift);
    return wanted.filter((command) => command.kind === 'brake');
  };
}

/** The best ride; wherever away from pitches its gear has a crossed twin on the other ring, the twin is ridden instead. */
function crossing({ world }: Ground): Controller {
  const { machine } = world;
  const twinOf = ({ ringIndex, sprocketIndex }: Pick<Manoeuvre, 'ringIndex' | 'sprocketIndex'>) => {
    const gear = gearAt(machine, ringIndex, sprocketIndex);
    return machine.gears.find(
      (other) =>
        other.ringIndex !== ringIndex &&
        other.crossed &&
        Math.abs(other.developmentM / gear.developmentM - 1) < 0.09,
    );
  };
  const first = { atM: 10, ringIndex: world.startRingIndex, sprocketIndex: world.startSprocketIndex };
  const { pitches } = world.course;
  const script = [first, ...(knownBestRide(world) ?? [])].map((one) => {
    if (pitches.some(({ footM, endM }) => one.atM > footM - 110 && one.atM < endM)) return one;
    const { ringIndex, sprocketIndex } = twinOf(one) ?? one;
    return { ...one, ringIndex, sprocketIndex };
  });
  return scriptDriver(world, script);
}

/** Metres to the next foot, a large number where none is left. */
function nearestPitchM(ground: Ground, state: RideState): number {
  const next = ground.world.course.pitches.find((pitch) => pitch.footM > state.distanceM);
  return next === undefined ? 1e6 : next.footM - state.distanceM;
}

/** Metres beyond the foot of the pitch the rider is on, or null. */
function intoPitchM(ground: Ground, state: RideState): number | null {
  const on = ground.world.course.pitches.find(
    (pitch) => pitch.footM <= state.distanceM && state.distanceM < pitch.endM,
  );
  return on === undefined ? null : state.distanceM - on.footM;
}
