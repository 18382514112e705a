/**
 * What is allowed in a level but will surprise its rider: slopes this machine cannot hold, stop lines where nobody
 * can start again, roads that stay hidden, chance that spoils a place. Only parsed levels come here.
 */
import { pieceLengthM } from '../course/build.ts';
import type { Course } from '../course/types.ts';
import { crankTorqueFor } from '../model/drivetrain.ts';
import { AIR_DENSITY_KG_M3, roadLoad, totalForceN } from '../model/load.ts';
import { cadenceAtRpm, steadySpeedMps } from '../model/machine.ts';
import type { Gear, Machine } from '../model/types.ts';
import { courseOfLevel } from './build.ts';
import type { Problem } from './problems.ts';
import type { Level } from './schema.ts';

/** A warning names a place like `pieces[2]`, a stretch of road, and its numbers with units. */
export interface LevelWarning extends Problem {
  readonly fromM: number;
  readonly toM: number;
  readonly values: Readonly<Record<string, number>>;
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
    const warning = atM === null ? null : slopeWarning(course, machine, lowest, atM);
    return warning === null ? [] : [{ ...warning, path: `pieces[${index}]` }];
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

function slopeWarning(course: Course, machine: Machine, gear: Gear, atM: number): LevelWarning | null {
  const riseRatio = riseM(course, atM, SUSTAINED_M) / SUSTAINED_M;
  // Heights count along the road; a slope is rise over run.
  const slopeRatio = riseRatio / Math.sqrt(1 - riseRatio * riseRatio);
  const windMps = course.windMps[atM] as number;
  const { bike, rider } = machine;
  const rollingCoefficient = bike.rollingCoefficient * (course.rollingFactor[atM] as number);
  const road = {
    slopeRatio,
    windMps,
    massKg: machine.totalMassKg,
    cdaM2: bike.cdaM2,
    rollingCoefficient,
    efficiency: gear.efficiency,
    airDensityKgM3: AIR_DENSITY_KG_M3,
    bearings: true,
  };
  const speedMps = steadySpeedMps({ ...road, powerW: rider.steadyPowerW });
  const cadenceRpm = cadenceAtRpm(speedMps, gear.developmentM);
  if (cadenceRpm >= HELD_RPM) return null;
  const slopePercent = slopeRatio * 100;
  const standing = roadLoad(0, slopeRatio, windMps, road.massKg, road.cdaM2, rollingCoefficient);
  const neededNm = crankTorqueFor(totalForceN(standing), gear);
  const cannot = neededNm >= machine.standstillTorqueNm;
  const where = `the ${slopePercent.toFixed(0)} % pitch at ${atM} m`;
  const lowGear = `the lowest gear (${gear.ringTeeth} × ${gear.sprocketTeeth})`;
  return {
    path: '',
    code: cannot ? 'cannot-climb' : 'cannot-hold-cadence',
    sentence: cannot
      ? `This rider comes to a stop on ${where}, even in ${lowGear}.`
      : `This rider cannot hold ${HELD_RPM} rpm on ${where} in ${lowGear}; ${Math.round(cadenceRpm)} rpm are left.`,
    fromM: atM,
    toM: atM + SUSTAINED_M,
    values: {
      slopeRatio,
      cadenceRpm,
      heldRpm: HELD_RPM,
      ringTeeth: gear.ringTeeth,
      sprocketTeeth: gear.sprocketTeeth,
    },
  };
}

function lintStopLines(level: Level, course: Course): LevelWarning[] {
  return level.stopLinesM.flatMap((atM, index) => {
    const slopeRatio = startSlope(course, atM);
    if (slopeRatio <= STEEP_START_RATIO && slopeRatio >= STEEP_STOP_RATIO) return [];
    const percent = Math.abs(slopeRatio * 100).toFixed(0);
    const uphill = slopeRatio > 0;
    return [
      {
        path: `stopLinesM[${index}]`,
        code: uphill ? 'stop-uphill' : 'stop-downhill',
        sentence: uphill
          ? `The stop line at ${Math.round(atM)} m lies on ${percent} % uphill: starting again there is a struggle.`
          : `The stop line at ${Math.round(atM)} m lies on ${percent} % downhill: nothing is learned from starting there.`,
        fromM: atM,
        toM: atM + START_M,
        values: { atM, slopeRatio },
      },
    ];
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
    if (lengthM > 4 * sightM)
      warnings.push({
        path,
        code: 'hidden-long',
        sentence: `The road stays hidden for ${Math.round(lengthM)} m with ${Math.round(sightM)} m of sight: that is riding blind, not looking ahead.`,
        fromM,
        toM,
        values: { lengthM, sightM },
      });
    if (open !== undefined && sightM < NEEDED_SIGHT_M)
      warnings.push({
        path,
        code: 'hidden-pitch',
        sentence: `The ${(open.steepestRatio * 100).toFixed(0)} % pitch at ${open.footM} m is seen only ${Math.round(sightM)} m before; nobody can shift in time.`,
        fromM: open.footM,
        toM: open.endM,
        values: { sightM, neededM: NEEDED_SIGHT_M, steepestRatio: open.steepestRatio, footM: open.footM },
      });
    return warnings;
  });
}

/** Chance that is missing where each ride should differ, or that puts a stop line on a wall. */
function lintSeeds(level: Level): LevelWarning[] {
  const seeded = level.pieces.some(({ kind }) => kind === 'rollers' || kind === 'random-pitches');
  const whole = { fromM: 0, toM: level.pieces.reduce((sum, piece) => sum + pieceLengthM(piece), 0) };
  if (!seeded && (level.teaches === 'free' || level.teaches === 'check'))
    return [
      {
        path: 'pieces',
        code: 'seed-unused',
        sentence:
          'Every ride of this level meets the same road, so it cannot show what was learned. Add rollers or random pitches.',
        ...whole,
        values: { seed: level.seed },
      },
    ];
  if (!seeded || level.stopLinesM.length === 0) return [];
  const here = new Set(lintStopLines(level, courseOfLevel(level)).map(({ path }) => path));
  for (let more = 1; more <= OTHER_SEEDS; more += 1) {
    const seed = (level.seed + more) % 4_294_967_296;
    const found = lintStopLines(level, courseOfLevel(level, seed)).find(({ path }) => !here.has(path));
    if (found === undefined) continue;
    const sentence = `With another seed (${seed}) this stop line comes to lie on ${Math.abs((found.values['slopeRatio'] ?? 0) * 100).toFixed(0)} %.`;
    return [{ ...found, code: 'seed-moves-stop', sentence, values: { ...found.values, seed } }];
  }
  return [];
}
