/**
 * How a motor helps, by the text of EN 15194 and by the balance of power: only while one pedals, gone at 25 km/h, off
 * within two metres of the last push, with help from rest up to 6 km/h; and what it does to a chain that is shifted.
 */
import { describe, expect, it } from 'vitest';
import { worldFingerprint } from '../../../src/core/planner/known.ts';
import { CLEAN_LOAD, HEAVY_LOAD } from '../../../src/core/model/shift.ts';
import { helpN, leftForLegsN, MOTOR_EFFICIENCY, RATED_W } from '../../../src/core/model/motor.ts';
import { earlierBike } from '../../../src/core/model/presets.ts';
import { wheelForceN } from '../../../src/core/model/drivetrain.ts';
import { totalForceN, roadLoad } from '../../../src/core/model/load.ts';
import { gearOf } from '../../../src/core/model/transmission.ts';
import { isUnhelped } from '../../../src/core/ride/load.ts';
import { hashState, parseRecording, readBike } from '../../../src/core/ride/recording.ts';
import { replayRecording, rideThrough } from '../../../src/core/ride/run.ts';
import { setupOfJob } from '../../../src/core/ride/job.ts';
import { stepRide } from '../../../src/core/ride/step.ts';
import type { Bike } from '../../../src/core/model/types.ts';
import type { RideCommand, RideEvent, RideState } from '../../../src/core/ride/types.ts';
import { startState } from '../../../src/core/ride/world.ts';
import { NAMED_HABITS, virtualRider } from '../../../src/core/virtual/riders.ts';
import { bike, BUNDLED, literalCourse, rider, worldOn } from './worlds.ts';

const CRANK = 'trekking-1x10-crank';
const HUB_CRANK = 'trekking-hub-8-crank';
const WHEEL = 'town-hub-7-wheel';
const MOTORS = [CRANK, HUB_CRANK, WHEEL];
const flat = literalCourse(6000, 0);

type World = ReturnType<typeof worldOn>;

/** Rides so many ticks with commands at their ticks, and keeps every state. */
function follow(
  world: World,
  from: RideState,
  commands: readonly (readonly [tick: number, command: RideCommand])[],
  ticks: number,
): { readonly states: RideState[]; readonly last: RideState; readonly events: RideEvent[] } {
  const states: RideState[] = [from];
  const events: RideEvent[] = [];
  for (let i = 0; i < ticks; i += 1) {
    const due = commands.filter(([tick]) => tick === i).map(([, command]) => command);
    const result = stepRide(world, states.at(-1) as RideState, due);
    states.push(result.state);
    events.push(...result.events);
  }
  return { states, last: states.at(-1) as RideState, events };
}

const to = (pressure: 'coast' | 'ease' | 'steady' | 'press'): RideCommand => ({ kind: 'pressure', pressure });
const EASIER: RideCommand = { kind: 'shift', derailleur: 'rear', direction: 'easier', steps: 1 };
const torqueNm = ({ motor }: RideState): number => motor?.torqueNm ?? Number.NaN;
const withMotor = (id: string, part: Partial<NonNullable<Bike['motor']>>): Bike => {
  const one = bike(id);
  return { ...one, motor: { ...(one.motor as NonNullable<Bike['motor']>), ...part } };
};

describe.each(MOTORS)('the motor of %s (EN 15194)', (id) => {
  const world = worldOn(flat, id, 'adult-new');
  const rolling = (kmh: number): RideState => startState(world, { speedMps: kmh / 3.6 });

  it('helps while one pedals, comes in late, and never with more than 250 W', () => {
    const { states } = follow(world, rolling(17), [], 360);
    expect(torqueNm(states[12] as RideState)).toBeLessThan(0.5 * torqueNm(states[240] as RideState));
    expect(torqueNm(states[240] as RideState)).toBeGreaterThan(3);
    const pressing = follow(
      worldOn(literalCourse(900, 0.08), id, 'adult-strong'),
      rolling(14),
      [[0, to('press')]],
      240,
    );
    const given = pressing.states.slice(1).map((state, i) => {
      const before = pressing.states[i] as RideState;
      return (state.ledger.motorInJ - before.ledger.motorInJ) * 120;
    });
    expect(Math.max(...given)).toBeLessThanOrEqual(RATED_W * 1.001);
    expect(Math.max(...given)).toBeGreaterThan(RATED_W * 0.6);
  });

  it('gives nothing at 25 km/h and above, however hard one pushes, and less and less from 22 on', () => {
    const at = (kmh: number): number => {
      const gear = gearOf(world.machine, rolling(kmh));
      return helpN(world.machine, gear, 30, kmh / 3.6);
    };
    expect(at(25)).toBe(0);
    expect(at(30)).toBe(0);
    expect(at(24.5)).toBeLessThan(at(23.5));
    expect(at(23.5)).toBeLessThan(at(21.9));
    const downhill = worldOn(literalCourse(900, -0.03), id, 'adult-new');
    const fast = follow(downhill, { ...startState(downhill, { speedMps: 23 / 3.6 }) }, [], 600);
    for (const state of fast.states) if (state.speedMps * 3.6 >= 25.1) expect(torqueNm(state)).toBe(0);
    expect(fast.last.speedMps * 3.6).toBeGreaterThan(25.1);
  });

  it('is off within two metres of the last push on the pedals (five with switches at the brakes), and runs on for a moment before that', () => {
    const { states } = follow(world, rolling(20), [[240, to('coast')]], 480);
    const stopped = states.findIndex((state, i) => i > 240 && state.cadenceRpm === 0);
    const justAfter = states[stopped + 2] as RideState;
    expect(torqueNm(justAfter)).toBeGreaterThan(0);
    const from = (states[stopped] as RideState).distanceM;
    const withinM = world.machine.bike.motor?.brakeSwitches === true ? 5 : 2;
    for (const state of states.slice(stopped))
      if (state.distanceM - from > withinM) expect(torqueNm(state)).toBe(0);
  });

  it('helps from rest up to 6 km/h, and not while one only stands there', () => {
    const line = literalCourse(600, 0, { stopLinesM: [300] });
    const waiting: RideState = {
      ...startState(worldOn(line, id, 'adult-new'), { distanceM: 299, speedMps: 0 }),
      phase: 'standing',
      phaseLeftS: 1,
      nextStopIndex: 1,
      pressureRatio: 0,
    };
    const { states } = follow(worldOn(line, id, 'adult-new'), waiting, [], 700);
    for (const state of states) if (state.phase === 'standing') expect(torqueNm(state)).toBe(0);
    const metres = states.findIndex(({ distanceM }) => distanceM > 301);
    const without = follow(
      worldOn(line, withMotor(id, { helpRatio: 0 }), 'adult-new'),
      waiting,
      [],
      600,
    ).states;
    expect(metres).toBeLessThan(without.findIndex(({ distanceM }) => distanceM > 301));
    expect(metres).toBeGreaterThan(0);
  });

  it('takes of a force on the wheel what it gives: the balance of power at any speed below 25 km/h', () => {
    const { machine } = world;
    for (const kmh of [8, 14, 20, 23, 24.9, 25, 28])
      for (const slope of [0.01, 0.04, 0.08]) {
        const speedMps = kmh / 3.6;
        const gear = gearOf(machine, rolling(kmh));
        const { bike: b, totalMassKg } = machine;
        const roadN = totalForceN(roadLoad(speedMps, slope, 0, totalMassKg, b.cdaM2, b.rollingCoefficient));
        const legsN = leftForLegsN(machine, gear, roadN, speedMps);
        const crankNm = legsN / wheelForceN(1, gear);
        if (crankNm < 0.7 * machine.referenceTorqueNm) continue;
        const sumW = (legsN + helpN(machine, gear, crankNm, speedMps)) * speedMps;
        expect(sumW / (roadN * speedMps)).toBeCloseTo(1, 9);
        if (kmh >= 25) expect(legsN).toBe(roadN);
      }
  });

  it('books every joule, its own and what the chain and the battery lose (0.1 %)', () => {
    const hills = worldOn(
      literalCourse(1200, (m) => (m % 300 < 150 ? 0.04 : -0.02), { stopLinesM: [620] }),
      id,
      'adult-new',
    );
    const { ledger: l, motor } = rideThrough(hills, virtualRider(hills, NAMED_HABITS.early, 4)).state();
    const inJ = l.workInJ + l.motorInJ + l.pushOffJ;
    const outJ = l.kineticJ + l.climbedJ + l.airJ + l.rollingJ + l.bearingsJ + l.drivetrainJ + l.brakesJ;
    expect(Math.abs(inJ - outJ) / inJ).toBeLessThan(0.001);
    expect(l.motorInJ).toBeGreaterThan(0.2 * l.workInJ);
    const usedJ = (hills.machine.bike.motor?.batteryWh ?? 0) * 3600 - (motor?.chargeJ ?? 0);
    expect(usedJ * MOTOR_EFFICIENCY).toBeCloseTo(l.motorInJ, 3);
  });

  it('stops when its battery is empty, says so once, and leaves the legs the whole road', () => {
    const small = worldOn(literalCourse(900, 0.03), withMotor(id, { batteryWh: 1 }), 'adult-new');
    const { last, events } = follow(small, startState(small, { speedMps: 4.5 }), [], 120 * 60);
    expect(events.filter(({ kind }) => kind === 'battery-empty')).toHaveLength(1);
    expect([torqueNm(last), isUnhelped(last)]).toEqual([0, true]);
  });

  it('is kept in a recording, which comes out the same when it is ridden again', () => {
    const level = BUNDLED[0]!.level;
    const job = { level, seed: level.seed, bike: bike(id), rider: rider('adult-new'), autoEase: false };
    const short = worldOn(literalCourse(300, 0.04), id, 'adult-new');
    const ride = rideThrough(short, virtualRider(short, NAMED_HABITS.early, 3));
    const read = parseRecording(JSON.parse(JSON.stringify(ride.recording(setupOfJob(job)))));
    expect(read.ok && read.recording.bike).toEqual(bike(id));
    expect(read.ok && replayRecording(short, read.recording).same).toBe(true);
  });
});

describe('switches at the brakes', () => {
  it('turn a motor off at once, while without them it may run on', () => {
    for (const brakeSwitches of [true, false]) {
      const world = worldOn(flat, withMotor(CRANK, { brakeSwitches }), 'adult-new');
      const from = startState(world, { speedMps: 5 });
      const { states } = follow(world, from, [[240, { kind: 'brake', on: true }]], 250);
      expect(torqueNm(states[242] as RideState) === 0).toBe(brakeSwitches);
    }
  });
});

describe('a shift with a motor', () => {
  const climb = literalCourse(1500, 0.05);
  const shiftOn = (id: string, commands: readonly (readonly [number, RideCommand])[]) => {
    const world = worldOn(climb, id, 'adult-new');
    const from = startState(world, { speedMps: 4.6, ringIndex: 0, sprocketIndex: id === WHEEL ? 5 : 6 });
    return follow(world, from, commands, 720);
  };
  const done = (events: readonly RideEvent[]) => events.find((event) => event.kind === 'shift-done');

  it('made while pushing on is heavier and slower than anywhere else when the motor is at the crank', () => {
    const pushed = done(shiftOn(CRANK, [[240, EASIER]]).events);
    const bare = worldOn(climb, { ...withMotor(CRANK, { helpRatio: 0 }) }, 'adult-new');
    const from = startState(bare, { speedMps: 4.6, ringIndex: 0, sprocketIndex: 6 });
    const alone = done(follow(bare, from, [[240, EASIER]], 720).events);
    expect(pushed?.load).toBeGreaterThan(1.5 * (alone?.load ?? 9));
    expect(pushed?.durationS).toBeGreaterThan(alone?.durationS ?? 9);
    expect(pushed?.load).toBeGreaterThan(HEAVY_LOAD);
    expect(pushed?.motorLoad).toBeGreaterThan(0.3 * (pushed?.load ?? 9));
    expect(alone?.motorLoad).toBeUndefined();
  });

  it('is clean where soft feet give the motor time to let go, and not where the lever is too quick', () => {
    const load = (leadTicks: number): number =>
      done(
        shiftOn(CRANK, [
          [240 - leadTicks, to('ease')],
          [240, EASIER],
        ]).events,
      )?.load ?? 9;
    expect(load(84)).toBeLessThanOrEqual(CLEAN_LOAD);
    expect(load(24)).toBeGreaterThan(CLEAN_LOAD);
    expect(load(0)).toBeGreaterThan(load(24));
  });

  it('does not happen in a hub that a crank motor pulls on, and does when the feet let go', () => {
    const held = shiftOn(HUB_CRANK, [[240, EASIER]]);
    expect(done(held.events)).toBeUndefined();
    expect(held.events.some(({ kind }) => kind === 'shift-hung')).toBe(true);
    const load = (coastTick: number): number =>
      done(
        shiftOn(HUB_CRANK, [
          [coastTick, to('coast')],
          [240, EASIER],
        ]).events,
      )?.load ?? 9;
    expect(load(200)).toBeLessThanOrEqual(CLEAN_LOAD);
    // While the motor lets go the gear slips in with a knock.
    expect(load(300)).toBeGreaterThanOrEqual(HEAVY_LOAD);
  });

  it('knows nothing of a motor in the wheel: that one leaves the chain alone', () => {
    const shift = done(
      shiftOn(WHEEL, [
        [240, to('coast')],
        [270, EASIER],
      ]).events,
    );
    expect(shift).toBeDefined();
    expect(shift && 'motorLoad' in shift).toBe(false);
  });
});

describe('bikes of before', () => {
  it('without a motor ride and are known as before there were any', () => {
    const world = worldOn(literalCourse(300, 0.03), 'trekking-3x8', 'adult-weekly');
    const state = rideThrough(world, virtualRider(world, NAMED_HABITS.late, 2)).state();
    // Taken down before motors came.
    expect(hashState(state)).toBe('fa74613a6574a54d');
    expect(worldFingerprint(world)).toBe('0942abe318fabf8d');
  });

  it('and so do those of before motors had a lag of their own', () => {
    // Taken down before they had.
    const then = [
      [CRANK, '9b498a222aec30a2', 'df1c93d30625fdaf'],
      [HUB_CRANK, '1fe10c0e372c5051', '7f365ad743b06989'],
      [WHEEL, 'c657935d8c94fab1', '99df46700ee292f4'],
    ] as const;
    for (const [id, hash, print] of then) {
      const kept = JSON.parse(JSON.stringify(earlierBike(bike(id)))) as unknown;
      const world = worldOn(literalCourse(300, 0.03), readBike(kept)!, 'adult-new');
      const state = rideThrough(world, virtualRider(world, NAMED_HABITS.late, 2)).state();
      expect([hashState(state), worldFingerprint(world)], id).toEqual([hash, print]);
    }
  });

  it('a motor nobody knows is refused', () => {
    expect(readBike(bike(CRANK))).toEqual(bike(CRANK));
    expect(readBike({ ...bike(CRANK), motor: { place: 'seat', helpRatio: 1, batteryWh: 500 } })).toBeNull();
    expect(readBike(withMotor(CRANK, { helpRatio: 90 }))).toBeNull();
  });
});
