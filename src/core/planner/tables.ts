/**
 * What the planner looks up: per gear and speed (once per ride) and per place (once per stage). Typed
 * arrays throughout, because these numbers are read some ten million times per kilometre.
 */
import { sampleAt } from '../math/numbers.ts';
import { crankTorqueFor, wheelForceN } from '../model/drivetrain.ts';
import { bandLowRpm, comfortLoad, crankTorqueNm, EASE_EFFORT, slopeEffort } from '../model/legs.ts';
import { airForceN, bearingForceN, climbingForceN, rollingForceN } from '../model/load.ts';
import { cadenceAtRpm } from '../model/machine.ts';
import { LEAD_S } from '../ride/load.ts';
import { AIM_BEFORE_LINE_M, brakingSpeedMps } from '../ride/pilot.ts';
import { FASTEST_MPS } from '../ride/step.ts';
import type { Gear, Machine } from '../model/types.ts';
import type { RideWorld } from '../ride/types.ts';
import { possibleMoves } from '../model/transmission.ts';
import { hasHub } from '../model/shifters.ts';
import { helpN, leftForLegsN } from '../model/motor.ts';

/** Size of the grid: way along the road (m) and speed (m/s) between two of its points. */
export interface Grid {
  readonly stepM: number;
  readonly speedStepMps: number;
}

/** The usual grid: 3 m by 0.25 m/s. */
export const USUAL_GRID: Grid = { stepM: 3, speedStepMps: 0.25 };

export const SLOWEST_MPS = 0.25;
/** A rider eases for a shift for so long (s). */
const EASED_S = 0.6;
/** Cranks slower than this hardly move a chain. */
const SLOWEST_SHIFT_RPM = 25;
/** Way that a shift takes at the speed of a rider about to brake (m). */
const SHIFT_WAY_M = 6;

/** All that does not depend on the place, gears and speeds still empty. Tables of two run over `gear * speeds + speedIndex`. */
function emptyTables(machine: Machine, grid: Grid) {
  // Whole steps, so that the speed at which riders brake by themselves is on the grid or just within.
  const speeds = Math.ceil((FASTEST_MPS - SLOWEST_MPS) / grid.speedStepMps) + 1;
  const gears = machine.gears.length;
  return {
    speeds,
    gears,
    grid,
    speedMps: Float64Array.from({ length: speeds }, (_, i) => SLOWEST_MPS + i * grid.speedStepMps),
    /** The last of them: nobody plans to ride faster (m/s). */
    fastestMps: SLOWEST_MPS + (speeds - 1) * grid.speedStepMps,
    rpmPerMps: new Float64Array(gears),
    /** Road load on the pedals over reference torque, per newton of resistance. */
    loadPerN: new Float64Array(gears),
    crossed: new Uint8Array(gears),
    /** 1 for the gear above which the bike has no more. */
    highest: new Uint8Array(gears),
    /** 1 where cranks are too slow to shift. */
    tooSlow: new Uint8Array(gears * speeds),
    /** What eased legs give at the cranks (N m), on any slope. */
    easedNm: new Float64Array(gears * speeds),
    /** Gears in the hub: they change at rest, too. */
    hub: hasHub(machine.bike),
    moves: possibleMoves(machine),
    /** What a motor leaves to the legs of a resistance in a gear at a speed (N); null without one. The battery is taken for full. */
    leftN: motorShare(machine),
  };
}
export type Tables = Readonly<ReturnType<typeof emptyTables>>;

export function prepareTables({ machine }: RideWorld, grid: Grid): Tables {
  const tables = emptyTables(machine, grid);
  const longest = machine.gears.reduce((most, gear) => Math.max(most, gear.developmentM), 0);
  machine.gears.forEach((gear, g) => {
    tables.rpmPerMps[g] = cadenceAtRpm(1, gear.developmentM);
    tables.loadPerN[g] = crankTorqueFor(1, gear, machine.referenceTorqueNm);
    tables.crossed[g] = gear.crossed ? 1 : 0;
    tables.highest[g] = gear.developmentM === longest ? 1 : 0;
    for (let i = 0; i < tables.speeds; i += 1) fillSpeed(machine, tables, g, i);
  });
  return tables;
}

function motorShare(
  machine: Machine,
): ((resistingN: number, gear: number, speedMps: number) => number) | null {
  if (machine.bike.motor === undefined) return null;
  return (resisting, g, speedMps) => leftForLegsN(machine, machine.gears[g] as Gear, resisting, speedMps);
}

function fillSpeed(machine: Machine, tables: Tables, g: number, i: number): void {
  const rpm = (tables.rpmPerMps[g] as number) * (tables.speedMps[i] as number);
  const at = g * tables.speeds + i;
  tables.tooSlow[at] = rpm < SLOWEST_SHIFT_RPM && !tables.hub ? 1 : 0;
  tables.easedNm[at] = crankTorqueNm(machine, EASE_EFFORT, rpm);
}

/** What the road is like in the middle of a stage, to be filled stage by stage. Arrays run over the speeds, or over `gear * speeds + speedIndex`. */
export function emptyPlace({ speeds, gears }: Tables) {
  return {
    resistingN: new Float64Array(speeds),
    /** The same where the rider will be in two seconds, and what the band carries there (load). */
    leadN: new Float64Array(speeds),
    leadComfort: new Float64Array(speeds),
    /** What the band carries here (load). */
    comfort: 0,
    /** Effort of steady legs on this slope. */
    effort: 1,
    /** What steady legs give here at the wheel, and at the cranks over reference torque. */
    driveN: new Float64Array(gears * speeds),
    torqueRatio: new Float64Array(gears * speeds),
    /** Speed left after easing through a shift, in grid units. */
    easedIndex: new Float64Array(gears * speeds),
    bandLowRpm: 0,
    /** Fastest speed at the stage's start and end from which one can still stop at the next line (m/s). */
    capMps: 0,
    capAfterMps: 0,
    /** Faster than this there is no time left for a shift before the brakes (m/s). */
    shiftCapMps: 0,
    /** Way from rest before a stop line in this stage to the stage's end (m); null without a line. */
    restartM: null as number | null,
  };
}
export type PlannedPlace = ReturnType<typeof emptyPlace>;

/** Fills `place` for a stage. */
export function visitPlace(world: RideWorld, tables: Tables, stage: number, place: PlannedPlace): void {
  const { machine, course } = world;
  const { fastestMps } = tables;
  const { stepM } = tables.grid;
  const fromM = stage * stepM;
  const toM = fromM + stepM;
  const middleM = fromM + stepM / 2;
  const slope = sampleAt(course.slopeRatio, middleM);
  place.bandLowRpm = bandLowRpm(machine.rider, slope);
  place.effort = slopeEffort(slope);
  place.comfort = comfortLoad(machine, slope);
  for (let i = 0; i < tables.speeds; i += 1) {
    const speed = tables.speedMps[i] as number;
    const leadM = middleM + LEAD_S * speed;
    place.resistingN[i] = resistingN(world, middleM, speed);
    place.leadN[i] = resistingN(world, leadM, speed);
    place.leadComfort[i] = comfortLoad(machine, sampleAt(course.slopeRatio, leadM));
  }
  fillDrive(world, tables, slope, place);
  const stopAt = course.stopLinesM.find((lineM) => lineM > fromM);
  const stops = stopAt !== undefined && stopAt <= toM;
  place.restartM = stops ? toM - stopAt + AIM_BEFORE_LINE_M : null;
  place.capMps = stopAt === undefined ? fastestMps : brakingSpeedMps(stopAt - fromM);
  place.capAfterMps = stopAt === undefined || stops ? fastestMps : brakingSpeedMps(stopAt - toM);
  place.shiftCapMps = stopAt === undefined ? fastestMps : brakingSpeedMps(stopAt - fromM - SHIFT_WAY_M);
}

function resistingN(world: RideWorld, placeM: number, speedMps: number): number {
  const { machine, course } = world;
  const slope = sampleAt(course.slopeRatio, placeM);
  const crr = machine.bike.rollingCoefficient * sampleAt(course.rollingFactor, placeM);
  return (
    climbingForceN(machine.totalMassKg, slope) +
    rollingForceN(machine.totalMassKg, slope, crr) +
    airForceN(speedMps, sampleAt(course.windMps, placeM), machine.bike.cdaM2) +
    bearingForceN(speedMps)
  );
}

/** What steady legs give on this slope in every gear at every speed, and what easing through a shift takes away. */
function fillDrive({ machine }: RideWorld, tables: Tables, slope: number, place: PlannedPlace): void {
  const { speeds } = tables;
  for (let g = 0; g < tables.gears; g += 1) {
    const gear = machine.gears[g] as (typeof machine.gears)[number];
    const perNm = wheelForceN(1, gear);
    for (let i = 0; i < speeds; i += 1) {
      const at = g * speeds + i;
      const rpm = (tables.rpmPerMps[g] as number) * (tables.speedMps[i] as number);
      const torqueNm = crankTorqueNm(machine, 1, rpm, slope);
      const helpedN = helpN(machine, gear, torqueNm, tables.speedMps[i] as number);
      place.driveN[at] = torqueNm * perNm + helpedN;
      place.torqueRatio[at] = torqueNm / machine.referenceTorqueNm;
      // Soft feet let the motor go as well.
      const lostMps =
        (((torqueNm - (tables.easedNm[at] as number)) * perNm + helpedN) * EASED_S) / machine.effectiveMassKg;
      const left = i - lostMps / tables.grid.speedStepMps;
      place.easedIndex[at] = left > 0 ? left : 0;
    }
  }
}

/** Place of a speed on the grid, fractional, held at the ends. */
export function speedIndex(tables: Tables, speedMps: number): number {
  const index = (speedMps - SLOWEST_MPS) / tables.grid.speedStepMps;
  const last = tables.speeds - 1;
  return index < 0 ? 0 : index > last ? last : index;
}

/** Linear in speed between two entries of a row. */
export function interpolate(table: Float32Array | Float64Array, row: number, index: number): number {
  const i = Math.floor(index);
  const a = table[row + i] as number;
  const t = index - i;
  return t === 0 ? a : a + ((table[row + i + 1] as number) - a) * t;
}

/**
 * Between two entries of a row along a curve: a straight line would hold a value that bends upwards too high, and
 * in a plan of hundreds of stages that adds up. Where the bend changes its sign the line is kept.
 */
export function interpolateBent(table: Float32Array, row: number, index: number, last: number): number {
  const i = Math.floor(index);
  const t = index - i;
  const b = table[row + i] as number;
  if (t === 0) return b;
  const c = table[row + i + 1] as number;
  const straight = b + (c - b) * t;
  if (i === 0 || i + 2 > last) return straight;
  const low = (table[row + i - 1] as number) - 2 * b + c;
  const high = b - 2 * c + (table[row + i + 2] as number);
  if (low * high <= 0) return straight;
  const bend = Math.abs(low) < Math.abs(high) ? low : high;
  return straight - (t * (1 - t) * bend) / 2;
}
