/**
 * A level that begins somewhere along another one, for trying a place without riding all the way to it. The road
 * behind that place is the same; nothing of it is saved.
 */
import { clamp } from '../math/numbers.ts';
import { courseOfLevel } from './build.ts';
import { placedOnPart } from './part.ts';
import { type Level, STEEPEST_RATIO } from './schema.ts';

/** A level takes so many recorded heights in one piece. */
const MOST_HEIGHTS = 5_000;
/** At least so much of the road is left to ride (m). */
const LEAST_LEFT_M = 100;
/** Before the first line a rider needs room to come to a stop (m). */
const ROOM_BEFORE_LINE_M = 40;

/** The level from a place on (m); the level itself where that is its start. Things that lie before it are left out. */
export function levelFrom(level: Level, fromM: number): Level {
  const course = courseOfLevel(level);
  const startM = clamp(Math.round(fromM), 0, Math.max(0, course.lengthM - LEAST_LEFT_M));
  if (startM === 0) return level;
  const leftM = course.lengthM - startM;
  const stepM = Math.ceil(leftM / (MOST_HEIGHTS - 1));
  const heightsM = [0];
  for (let atM = stepM; atM <= leftM; atM += stepM) {
    const before = heightsM.at(-1) as number;
    const rise = (course.heightM[startM + atM] as number) - (course.heightM[startM + atM - stepM] as number);
    // Heights grow along the ground and slopes along the map, so 20 % stays below this limit but for rounding.
    heightsM.push(before + clamp(rise, -STEEPEST_RATIO * stepM, STEEPEST_RATIO * stepM));
  }
  const lengthM = (heightsM.length - 1) * stepM;
  const placed = placedOnPart(level, startM, lengthM);
  return {
    ...level,
    pieces: [{ kind: 'recorded', stepM, heightsM }],
    ...placed,
    stopLinesM: placed.stopLinesM.filter((atM) => atM >= ROOM_BEFORE_LINE_M),
  };
}
