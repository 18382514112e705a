/**
 * What is allowed in a level but will surprise its rider: slopes this machine cannot hold, stop lines where nobody
 * can start again, roads that stay hidden, chance that spoils a place. Only parsed levels come here.
 */
import { isSeeded, pieceLengthM } from '../course/pieces.ts';
import type { Course, Stretch } from '../course/types.ts';
import { BIGGEST_SEED } from '../math/random.ts';
import { cadenceAtRpm, type EvenRoad, steadyQuestion, steadySpeedMps } from '../model/machine.ts';
import { powerToRideW, settledRide, WALKING_MPS } from '../model/steady.ts';
import { gearValues } from '../model/transmission.ts';
import type { Gear, Machine } from '../model/types.ts';
import { courseOfLevel } from './build.ts';
import { levelLengthM } from './parse.ts';
import type { Problem } from './problems.ts';
import type { Level } from './schema.ts';

export type WarningCode =
  | 'cannot-climb'
  | 'cannot-hold-cadence'
  | 'stop-uphill'
  | 'stop-downhill'
  | 'hidden-long'
  | 'hidden-pitch'
  | 'seed-unused'
  | 'seed-moves-stop';

/** A warning names a place like `pieces[2]` and a stretch of road. */
export interface LevelWarning extends Problem, Stretch {
  readonly code: WarningCode;
  readonly values: Readonly<Record<string, number>>;
}

function warning(
  path: string,
  code: WarningCode,
  fromM: number,
  toM: number,
  values: LevelWarning['values'],
): LevelWarning {
  return { about: 'level', path, code, fromM, toM, values };
}

/** A cadence below this grinds (rpm). */
const HELD_RPM = 60;
/** Shorter rises are ridden over with momentum (m). */
const SUSTAINED_M = 30;
/** Standing starts: up to this slope they are a lesson, beyond it a struggle; downhill the bike rolls off. */
const STEEP_START_RATIO = 0.05;
const STEEP_STOP_RATIO = -0.06;
const START_M = 12;
/** A rider who sees a pitch this near can still ease and shift before it (m, at about 25 km/h). */
const NEEDED_SIGHT_M = 20;
/** A wall worth hiding from nobody (rise over run). */
const WALL_RATIO = 0.06;
/** Other seeds that are tried. */
const OTHER_SEEDS = 4;

/** Warnings for this rider on this bike, in the order of the road. */
export function lintLevel(level: Level, machine: Machine): LevelWarning[] {
  const course = courseOfLevel(level);
  return [
    ...lintSlopes(level, course, machine),
    ...lintStopLines(level, course),
    ...lintHidden(level, course),
    ...lintSeeds(level),
  ].sort((a, b) => a.fromM - b.fromM);
}

/** One warning a piece: its worst stretch in the lowest gear. */
function lintSlopes(level: Level, course: Course, machine: Machine): LevelWarning[] {
  const lowest = machine.gears.reduce((a, b) => (b.developmentM < a.developmentM ? b : a));
  let fromM = 0;
  return level.pieces.flatMap((piece, index) => {
    const startM = fromM;
    fromM += pieceLengthM(piece);
    const atM = steepestFrom(course, startM, fromM);
    const found = atM === null ? null : slopeWarning(course, machine, lowest, { atM, startM, endM: fromM });
    return found === null ? [] : [{ ...found, path: `pieces[${index}]` }];
  });
}

/** Where the steepest sustained stretch inside a piece begins, or null if the piece is short. */
function steepestFrom(course: Course, startM: number, endM: number): number | null {
  if (endM - startM < SUSTAINED_M) return null;
  let best = startM;
  for (let atM = startM; atM + SUSTAINED_M <= endM; atM += 1)
    if (riseM(course, atM, SUSTAINED_M) > riseM(course, best, SUSTAINED_M)) best = atM;
  return best;
}

function riseM(course: Course, fromM: number, lengthM: number): number {
  const toM = Math.min(course.lengthM, fromM + lengthM);
  return (course.heightM[toM] as number) - (course.heightM[fromM] as number);
}

/** The steepest place of a piece, and where the piece begins and ends (m). */
interface SteepPlace {
  readonly atM: number;
  readonly startM: number;
  readonly endM: number;
}

function slopeWarning(course: Course, machine: Machine, gear: Gear, place: SteepPlace): LevelWarning | null {
  const { atM } = place;
  const question = steadyQuestion(machine, gear, evenRoad(course, atM));
  const { slopeRatio } = question;
  // Whether the legs alone hold it; walking is asked with the help of a motor.
  const leftForLegsN = (forceN: number): number => forceN;
  const speedMps = steadySpeedMps(machine.rider.steadyPowerW, { ...question, leftForLegsN });
  const cadenceRpm = cadenceAtRpm(speedMps, gear.developmentM);
  if (cadenceRpm >= HELD_RPM) return null;
  const values = { atM, slopeRatio, cadenceRpm, heldRpm: HELD_RPM, ...gearValues(gear) };
  const walked = isWalked(course, machine, gear, atM);
  if (!walked) return warning('', 'cannot-hold-cadence', atM, atM + SUSTAINED_M, values);
  return walkWarning(course, machine, gear, place, values);
}

/** The road at a place, as even as its next 30 m are in the mean. */
function evenRoad(course: Course, atM: number): EvenRoad {
  const lengthM = Math.min(SUSTAINED_M, course.lengthM - atM);
  const riseRatio = lengthM <= 0 ? 0 : riseM(course, atM, lengthM) / lengthM;
  return {
    // Heights count along the road; a slope is rise over run.
    slopeRatio: riseRatio / Math.sqrt(1 - riseRatio * riseRatio),
    windMps: course.windMps[atM] as number,
    rollingFactor: course.rollingFactor[atM] as number,
  };
}

/** Whether walking is as quick as riding there in this gear, or the rider comes to a stop. */
function isWalked(course: Course, machine: Machine, gear: Gear, atM: number): boolean {
  return settledRide(machine, gear, evenRoad(course, atM)).speedMps < WALKING_MPS;
}

/** The whole stretch that is walked, and what riding it would take. */
function walkWarning(
  course: Course,
  machine: Machine,
  gear: Gear,
  { atM, startM, endM }: SteepPlace,
  values: LevelWarning['values'],
): LevelWarning {
  let fromM = atM;
  while (fromM > startM && isWalked(course, machine, gear, fromM - 1)) fromM -= 1;
  let lastM = atM;
  while (lastM + SUSTAINED_M < endM && isWalked(course, machine, gear, lastM + 1)) lastM += 1;
  const toM = Math.min(endM, lastM + SUSTAINED_M);
  const road = evenRoad(course, atM);
  const { neededDevelopmentM, tooSteepForPower } = settledRide(machine, gear, road);
  return warning('', 'cannot-climb', fromM, toM, {
    ...values,
    fromM,
    toM,
    walkS: (toM - fromM) / WALKING_MPS,
    neededPowerW: powerToRideW(machine, gear, road),
    // No gear helps where the power is too small: then none is named.
    neededDevelopmentM: tooSteepForPower ? 0 : neededDevelopmentM,
  });
}

function lintStopLines(level: Level, course: Course): LevelWarning[] {
  return level.stopLinesM.flatMap((atM, index) => {
    const slopeRatio = startSlope(course, atM);
    if (slopeRatio <= STEEP_START_RATIO && slopeRatio >= STEEP_STOP_RATIO) return [];
    const code = slopeRatio > 0 ? 'stop-uphill' : 'stop-downhill';
    return [warning(`stopLinesM[${index}]`, code, atM, atM + START_M, { atM, slopeRatio })];
  });
}

/** Mean slope of the first metres behind a line. */
function startSlope(course: Course, atM: number): number {
  const from = Math.min(course.lengthM - 1, Math.round(atM));
  const to = Math.min(course.lengthM, from + START_M);
  return riseM(course, from, to - from) / (to - from);
}

function lintHidden(level: Level, course: Course): LevelWarning[] {
  return level.hidden.flatMap(({ fromM, toM, sightM }, index) => {
    const path = `hidden[${index}]`;
    const warnings: LevelWarning[] = [];
    const lengthM = toM - fromM;
    const open = course.pitches.find(({ footM, steepestRatio }) => {
      return footM > fromM && footM <= toM && steepestRatio >= WALL_RATIO;
    });
    if (lengthM > 4 * sightM) warnings.push(warning(path, 'hidden-long', fromM, toM, { lengthM, sightM }));
    if (open !== undefined && sightM < NEEDED_SIGHT_M) {
      const { footM, endM, steepestRatio } = open;
      const values = { sightM, neededM: NEEDED_SIGHT_M, steepestRatio, footM };
      warnings.push(warning(path, 'hidden-pitch', footM, endM, values));
    }
    return warnings;
  });
}

/** Chance that is missing where each ride should differ, or that puts a stop line on a wall. */
function lintSeeds(level: Level): LevelWarning[] {
  const seeded = isSeeded(level.pieces);
  if (!seeded && (level.teaches === 'free' || level.teaches === 'check'))
    return [warning('pieces', 'seed-unused', 0, levelLengthM(level), { seed: level.seed })];
  if (!seeded || level.stopLinesM.length === 0) return [];
  const here = new Set(lintStopLines(level, courseOfLevel(level)).map(({ path }) => path));
  for (let more = 1; more <= OTHER_SEEDS; more += 1) {
    const seed = (level.seed + more) % (BIGGEST_SEED + 1);
    const found = lintStopLines(level, courseOfLevel(level, seed)).find(({ path }) => !here.has(path));
    if (found === undefined) continue;
    return [{ ...found, code: 'seed-moves-stop', values: { ...found.values, seed } }];
  }
  return [];
}
