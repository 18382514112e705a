/**
 * Is the fixed step fine enough? It is held against half the step and, on rides without shifts, against
 * an adaptive solver from outside that knows neither the step nor the core's formulas: the equation of
 * motion is written out once more here, with sines and arc tangents.
 */
import { Solver } from 'odex';
import { describe, expect, it } from 'vitest';
import type { Course } from '../../../src/core/course/types.ts';
import { courseOfLevel } from '../../../src/core/level/build.ts';
import { BIKES, MATCHING_RIDER } from '../../../src/core/model/presets.ts';
import type { Bike, Rider } from '../../../src/core/model/types.ts';
import { brakeForLine } from '../../../src/core/ride/pilot.ts';
import { commandsByTick } from '../../../src/core/ride/recording.ts';
import { NAMED_HABITS, virtualRider } from '../../../src/core/virtual/riders.ts';
import type { RideState, RideWorld, TimedCommand } from '../../../src/core/ride/types.ts';
import { startState } from '../../../src/core/ride/world.ts';
import { BUNDLED, eventsOf, handRide, literalCourse, rideBare, worldOn } from './worlds.ts';

const TICK_S = 1 / 120;

/** Time at which the finish is crossed, between two ticks (s). */
function finishS(
  world: RideWorld,
  controller: (state: RideState) => readonly TimedCommand['command'][],
): number {
  const { before, last } = rideBare(world, controller);
  expect(last.phase).toBe('finished');
  const share = (world.course.lengthM - before.distanceM) / (last.distanceM - before.distanceM);
  return (before.tick + share) * world.tickS;
}

describe('half the tick', () => {
  /** Every third bike, beginning with another one on each level: each level rides on all kinds, each bike on many roads. */
  const bikesOf = (place: number): (readonly [string, string])[] =>
    BIKES.filter((_, i) => i % 3 === place % 3).map(
      ({ id }) => [id, MATCHING_RIDER[id] ?? 'adult-new'] as const,
    );

  it.each(BUNDLED.map(({ level }, place) => [level.id, level, place] as const))(
    'changes no finish time on %s by 0.1 %, on every third bike, without shifts',
    (_id, level, place) => {
      const course = courseOfLevel(level);
      for (const [bikeId, riderId] of bikesOf(place)) {
        const times = [TICK_S, TICK_S / 2].map((tickS) => {
          const world = worldOn(course, bikeId, riderId, { tickS });
          return finishS(world, brakeForLine(world));
        });
        expect([bikeId, Math.abs((times[1] ?? 0) / (times[0] ?? 1) - 1) < 0.001]).toEqual([bikeId, true]);
      }
    },
  );

  it.each(
    BUNDLED.filter(({ level }) => level.stopLinesM.length === 0).map(
      ({ level }, place) => [level.id, level, place] as const,
    ),
  )(
    'changes no finish time on %s by 0.1 % when the same shifts are made at the same times',
    (_id, level, place) => {
      const course = courseOfLevel(level);
      for (const [bikeId, riderId] of bikesOf(place)) {
        const whole = worldOn(course, bikeId, riderId);
        const log: TimedCommand[] = [];
        const shifting = virtualRider(whole, NAMED_HABITS.early, 3);
        const wholeS = finishS(whole, (state) => {
          const commands = shifting(state);
          for (const command of commands) log.push({ tick: state.tick, command });
          return commands;
        });
        const half = worldOn(course, bikeId, riderId, { tickS: TICK_S / 2 });
        const at = commandsByTick(log.map(({ tick, command }) => ({ tick: tick * 2, command })));
        const halfS = finishS(half, (state) => at(state.tick));
        expect(log.length).toBeGreaterThan(0);
        expect([bikeId, Math.abs(halfS / wholeS - 1) < 0.001]).toEqual([bikeId, true]);
      }
    },
  );
});

function between(table: Float64Array, x: number): number {
  const i = Math.min(Math.max(Math.floor(x), 0), table.length - 2);
  const a = table[i] ?? 0;
  return a + ((table[i + 1] ?? 0) - a) * (x - i);
}

/** Way, speed and reserve of a rider who stays steady in one gear: the equation of motion, from scratch. */
function motion(world: RideWorld, state: RideState): (t: number, y: number[]) => number[] {
  const { machine, course } = world;
  const { bike, rider } = machine;
  const ring = bike.chainringsTeeth[state.ringIndex] ?? 0;
  const sprocket = bike.sprocketsTeeth[state.sprocketIndex] ?? 1;
  const radiusM = (bike.beadSeatMm + 2 * bike.tyreWidthMm) / 2000;
  const development = (2 * Math.PI * radiusM * ring) / sprocket;
  const massKg = bike.massKg + rider.massKg;
  const effectiveKg = massKg + bike.wheelInertiaKgM2 / radiusM ** 2;
  const efficiency = machine.gears.find(
    (gear) => gear.ringTeeth === ring && gear.sprocketTeeth === sprocket,
  )?.efficiency;
  return (_t, [x = 0, v = 0, reserveJ = 0]) => {
    const slope = between(course.slopeRatio, x);
    const omega = (2 * Math.PI * v) / development;
    const powerW = omega * steadyTorqueNm(rider, bike, omega, slope, reserveJ / rider.reserveJ);
    const driveN = (powerW / v) * (efficiency ?? 0);
    const angle = Math.atan(slope);
    const wind = v + between(course.windMps, x);
    const crr = bike.rollingCoefficient * between(course.rollingFactor, x);
    const loadN =
      0.5 * 1.225 * bike.cdaM2 * wind * Math.abs(wind) +
      massKg * 9.80665 * (Math.sin(angle) + crr * Math.cos(angle)) +
      0.091 +
      0.0087 * v;
    const spare = rider.criticalPowerW - powerW;
    const refillW = spare < 0 ? spare : spare * (1 - reserveJ / rider.reserveJ);
    return [v, (driveN - loadN) / effectiveKg, refillW];
  };
}

/** Steady legs as MODEL.md tells them, in radians a second instead of turns a minute. */
function steadyTorqueNm(rider: Rider, bike: Bike, omega: number, slope: number, reserve: number): number {
  const radS = (rpm: number): number => (rpm / 30) * Math.PI;
  const mid = radS((rider.cadenceLowRpm + rider.cadenceHighRpm) / 2);
  // Half of the speed at which nothing is left is where power peaks; the line goes through steady power at mid band.
  const zero = radS(150);
  const stillNm = (rider.steadyPowerW * zero) / (mid * (zero - mid));
  const climb = Math.max(0, slope);
  const willing = 1 + Math.min(0.56, 7 * climb);
  const bandLow = radS(rider.cadenceLowRpm - Math.min(15, 1.5 * 100 * climb));
  const weightNm = ((2 / Math.PI) * rider.massKg * 9.80665 * bike.crankLengthMm) / 1000;
  const forced = Math.max(0, weightNm - stillNm) * Math.max(0, 1 - omega / bandLow) ** 2;
  const torque = Math.min(weightNm, (willing * stillNm * Math.max(0, zero - omega)) / zero + forced);
  const surplusW = torque * omega - rider.criticalPowerW;
  if (surplusW <= 0 || reserve >= 0.3) return torque;
  return (rider.criticalPowerW + surplusW * (reserve / 0.3)) / omega;
}

/** Rides without shifts until the finish, step and solver side by side. */
function compare(world: RideWorld, from: RideState) {
  const seconds: { x: number; v: number }[] = [];
  const ride = handRide(world, from);
  while (ride.state.phase !== 'finished') {
    if (ride.state.tick % 120 === 0) seconds.push({ x: ride.state.distanceM, v: ride.state.speedMps });
    ride.go(TICK_S);
    if (ride.state.tick > 120 * 1200) throw new Error('the ride does not end');
  }
  expect(eventsOf(ride.events, 'foot-down')).toHaveLength(0);
  const solver = new Solver(3);
  solver.absoluteTolerance = 1e-8;
  solver.relativeTolerance = 1e-8;
  solver.denseOutput = true;
  // The road has a kink every metre; a long step would jump over a pitch.
  solver.maxStepSize = 0.25;
  solver.maxSteps = 1_000_000;
  const theirs: { x: number; v: number }[] = [];
  let finish: number | null = null;
  const onGrid = solver.grid(1, (_t, [x = 0, v = 0]) => {
    theirs.push({ x, v });
    return undefined;
  });
  solver.solve(
    motion(world, from),
    0,
    [from.distanceM, from.speedMps, from.reserveJ],
    seconds.length + 5,
    (n, t0, t, y, dense) => {
      onGrid(n, t0, t, y, dense);
      if ((y[0] ?? 0) < world.course.lengthM) return undefined;
      finish = crossing(dense, t0, t, world.course.lengthM);
      return false;
    },
  );
  return { seconds, theirs, finish, ownFinishS: ride.state.tick * TICK_S };
}

/** When the way reaches the end, inside one step of the solver. */
function crossing(
  dense: ((component: number, t: number) => number) | undefined,
  from: number,
  to: number,
  lengthM: number,
): number {
  let low = from;
  let high = to;
  for (let i = 0; i < 50; i += 1) {
    const middle = (low + high) / 2;
    if ((dense?.(0, middle) ?? 0) < lengthM) low = middle;
    else high = middle;
  }
  return high;
}

describe('an adaptive solver from outside (odex, tolerance 1e-8) on rides without shifts', () => {
  const rolling = literalCourse(1500, (x) => 0.04 * Math.sin((2 * Math.PI * x) / 300));
  const windy: Course = {
    ...literalCourse(900, (x) => (x > 300 && x < 500 ? 0.03 : 0)),
    windMps: new Float64Array(901).fill(3).fill(-4, 600),
    rollingFactor: new Float64Array(901).fill(1).fill(2.5, 100, 250),
  };
  const level = (id: string): Course => {
    const found = BUNDLED.find((bundled) => bundled.level.id === id);
    if (found === undefined) throw new Error(`no level ${id}`);
    return courseOfLevel(found.level);
  };
  it.each([
    ['the road bike on waves of 4 %', 'road-2x11', 'adult-weekly', rolling, 0, 4],
    ['the trekking bike on waves of 4 %', 'trekking-3x8', 'adult-weekly', rolling, 1, 4],
    ['the child on a gentle climb', 'kids-20-1x7', 'child-9', literalCourse(500, 0.02), 0, 6],
    ['the strong rider through wind and gravel', 'gravel-1x12', 'adult-strong', windy, 0, 6],
    ['the town bike up 8 % from a fast start', 'town-1x9', 'adult-new', literalCourse(400, 0.08), 0, 8],
    ['a climb that eats the reserve', 'road-2x11', 'adult-new', literalCourse(1400, 0.06), 0, 9],
    [
      'too hard a gear up 6 %, forced below the band',
      'road-2x11',
      'adult-new',
      literalCourse(400, 0.06),
      0,
      3,
    ],
    ['the road bike over one bundled pitch', 'road-2x11', 'adult-weekly', level('one-pitch-announced'), 0, 8],
    ['the road bike on the bundled rolling road', 'road-2x11', 'adult-weekly', level('rolling-road'), 0, 6],
  ] as const)('%s: time and speeds agree within 0.1 %', (_name, bikeId, riderId, course, ring, sprocket) => {
    const world = worldOn(course, bikeId, riderId);
    const from = startState(world, { ringIndex: ring, sprocketIndex: sprocket });
    const { seconds, theirs, finish, ownFinishS } = compare(world, from);
    expect(seconds.length).toBeGreaterThan(50);
    expect(theirs.length).toBeGreaterThanOrEqual(seconds.length - 1);
    seconds.forEach((own, i) => {
      const other = theirs[i];
      if (other === undefined) return;
      expect(Math.abs(own.v / other.v - 1)).toBeLessThan(0.001);
      expect(Math.abs(own.x - other.x)).toBeLessThan(0.001 * Math.max(own.x, 50));
    });
    // The step finishes with the first whole tick behind the line.
    expect(finish).not.toBeNull();
    expect(Math.abs(ownFinishS / (finish ?? 0) - 1)).toBeLessThan(0.001);
  });
});
