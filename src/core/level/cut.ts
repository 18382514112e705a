/**
 * A level that is a part of another one: from a place on, for trying it without riding all the way to it, or between
 * two places, for a leg of a relay. The road there is the same; nothing of it is saved.
 */
import { LIMITS } from '../math/limits.ts';
import { clamp } from '../math/numbers.ts';
import { courseOfLevel } from './build.ts';
import { placedOnPart } from './part.ts';
import { type Level, SHORTEST_LEVEL_M, STEEPEST_RATIO, STOP_SPACING_M } from './schema.ts';

/** The level from a place on (m); the level itself where that is its start. Things that lie before it are left out. */
export function levelFrom(level: Level, fromM: number): Level {
  return levelBetween(level, fromM, courseOfLevel(level).lengthM);
}

/** The level between two places (m); the level itself where that is all of it. At least `SHORTEST_LEVEL_M` is left. */
export function levelBetween(level: Level, fromM: number, toM: number): Level {
  const course = courseOfLevel(level);
  const startM = clamp(Math.round(fromM), 0, Math.max(0, course.lengthM - SHORTEST_LEVEL_M));
  const endM = clamp(Math.round(toM), startM + SHORTEST_LEVEL_M, course.lengthM);
  if (startM === 0 && endM >= course.lengthM) return level;
  const leftM = endM - startM;
  const stepM = Math.ceil(leftM / (LIMITS.level.heights.most - 1));
  const heightsM = [0];
  for (let atM = stepM; atM <= leftM; atM += stepM) {
    const before = heightsM.at(-1) as number;
    const rise = (course.heightM[startM + atM] as number) - (course.heightM[startM + atM - stepM] as number);
    // Heights grow along the ground and slopes along the map, so 20 % stays below this limit but for rounding.
    heightsM.push(before + clamp(rise, -STEEPEST_RATIO * stepM, STEEPEST_RATIO * stepM));
  }
  const placed = placedOnPart(level, startM, (heightsM.length - 1) * stepM);
  const hasRoom = (atM: number): boolean => atM >= STOP_SPACING_M && atM <= leftM - STOP_SPACING_M;
  return {
    ...level,
    pieces: [{ kind: 'recorded', stepM, heightsM }],
    ...placed,
    stopLinesM: placed.stopLinesM.filter(hasRoom),
  };
}
