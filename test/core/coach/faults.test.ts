/**
 * One fault moves one mark. The faulty rides are the reference ride with a single habit spoilt; what else moves
 * with it by nature is stated where it does.
 */
import { describe, expect, test } from 'vitest';
import type { MarkName } from '../../../src/core/coach/types.ts';
import { MARK_NAMES } from '../../../src/core/coach/types.ts';
import { knownBestRide } from '../../../src/core/planner/known.ts';
import { scriptDriver } from '../../../src/core/planner/script.ts';
import { gearAt } from '../../../src/core/model/machine.ts';
import type { Controller } from '../../../src/core/ride/run.ts';
import type { RideCommand, RideState } from '../../../src/core/ride/types.ts';
import { type Ground, groundOf, LEVELS, PAIRS } from './riding.ts';

const level = (id: string) => LEVELS.find((one) => one.id === id)!;
const grounds = PAIRS.map(({ bikeId, riderId }) => groundOf(level('straight-chain'), bikeId, riderId));
/** This rider's usual gears have crossed twins, which those of a new rider on the same bike have not. */
const roadBike = groundOf(level('one-pitch-announced'), 'road-2x11', 'adult-weekly');

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
      expect(lost.easing).toBeLessThan(15);
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
  // Going over to the twin and back are shifts of their own.
  expect(lost.economy).toBeLessThan(30);
});

/** The reference, with a click harder and back again on every quiet stretch, eased like everything else. */
function fidgety(ground: Ground): Controller {
  const driver = reference(ground);
  let script: { atTick: number; command: RideCommand }[] = [];
  let quietSince = 0;
  return (state) => {
    const due = script.filter((one) => one.atTick === state.tick).map((one) => one.command);
    script = script.filter((one) => one.atTick > state.tick);
    if (script.length > 0 || due.length > 0) return due;
    const wanted = driver(state);
    if (wanted.length > 0 || state.phase !== 'riding' || state.braking || state.pressure !== 'steady')
      quietSince = state.tick;
    const { cadenceLowRpm, cadenceHighRpm } = ground.world.machine.rider;
    const quick = state.cadenceRpm > (cadenceLowRpm + cadenceHighRpm) / 2;
    const [there, back] = quick ? (['harder', 'easier'] as const) : (['easier', 'harder'] as const);
    const next = state.sprocketIndex + (quick ? -1 : 1);
    const room = next >= 0 && next < ground.world.machine.sprocketCount && nearestPitchM(ground, state) > 60;
    if (state.tick - quietSince > 240 && room && calm(state)) {
      quietSince = state.tick;
      const shift = (direction: 'easier' | 'harder'): RideCommand => ({
        kind: 'shift',
        derailleur: 'rear',
        direction,
        steps: 1,
      });
      const at = (s: number): number => state.tick + Math.round(s * 120);
      script = [
        { atTick: at(0.3), command: shift(there) },
        { atTick: at(0.8), command: shift(back) },
        { atTick: at(1.9), command: { kind: 'pressure', pressure: 'steady' } },
      ];
      return [{ kind: 'pressure', pressure: 'ease' }];
    }
    return wanted;
  };
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

/** The reference; whenever it rests in a gear with a crossed twin on the other ring, the twin is ridden instead. */
function crossing(ground: Ground): Controller {
  const { machine } = ground.world;
  const driver = reference(ground);
  const twinOf = (state: RideState) => {
    const gear = gearAt(machine, state.ringIndex, state.sprocketIndex);
    return machine.gears.find(
      (other) =>
        other.ringIndex !== gear.ringIndex &&
        other.crossed &&
        Math.abs(other.developmentM / gear.developmentM - 1) < 0.09,
    );
  };
  let script: { atTick: number; command: RideCommand }[] = [];
  return (state) => {
    const due = script.filter((one) => one.atTick === state.tick).map((one) => one.command);
    script = script.filter((one) => one.atTick > state.tick);
    if (due.length > 0 || script.length > 0) return due;
    const open = nearestPitchM(ground, state) > 50 && intoPitchM(ground, state) === null;
    const { cadenceLowRpm, cadenceHighRpm } = machine.rider;
    const inBand = state.cadenceRpm > cadenceLowRpm && state.cadenceRpm < cadenceHighRpm;
    if (open && inBand && gearAt(machine, state.ringIndex, state.sprocketIndex).crossed) return [];
    const twin = open && inBand && calm(state) && state.phase === 'riding' ? twinOf(state) : undefined;
    if (twin === undefined) return driver(state);
    script = changeTo(state, twin.ringIndex, twin.sprocketIndex);
    return [{ kind: 'pressure', pressure: 'ease' }];
  };
}

/** Eased lever pushes that lead to a gear, with ticks. */
function changeTo(
  state: RideState,
  ring: number,
  sprocket: number,
): { atTick: number; command: RideCommand }[] {
  const at = (s: number): number => state.tick + Math.round(s * 120);
  const rear = sprocket - state.sprocketIndex;
  const pushes: RideCommand[] = [
    { kind: 'shift', derailleur: 'front', direction: ring > state.ringIndex ? 'harder' : 'easier', steps: 1 },
    ...Array.from(
      { length: Math.abs(rear) },
      (): RideCommand => ({
        kind: 'shift',
        derailleur: 'rear',
        direction: rear > 0 ? 'easier' : 'harder',
        steps: 1,
      }),
    ),
  ];
  return [
    ...pushes.map((command) => ({ atTick: at(0.4), command })),
    { atTick: at(2.2), command: { kind: 'pressure', pressure: 'steady' } as const },
  ];
}

function calm(state: RideState): boolean {
  return state.rear === null && state.front === null && state.queue.length === 0 && state.speedMps > 4;
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
