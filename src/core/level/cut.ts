/**
 * A level that is a part of another one: from a place on, for trying it without riding all the way to it; between two
 * places, for a leg of a relay; or without a stretch that cannot be ridden. The road there is the same.
 */
import { LIMITS } from '../math/limits.ts';
import { clamp } from '../math/numbers.ts';
import { courseOfLevel } from './build.ts';
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

/**
 * The level without the stretch (m from the start), or null where too little road would be left or the road is not one
 * recorded piece. Stop lines, winds and all else that lies on the part that stays goes with it.
 */
export function trimmed(level: Level, fromM: number, toM: number): Level | null {
  const [piece] = level.pieces;
  if (piece?.kind !== 'recorded' || level.pieces.length !== 1) return null;
  const { stepM, heightsM } = piece;
  const last = heightsM.length - 1;
  const before = Math.min(last, Math.max(0, Math.floor(fromM / stepM)));
  const after = Math.min(last, Math.ceil(toM / stepM));
  const [first, end] = before >= last - after ? [0, before] : [after, last];
  if ((end - first) * stepM < SHORTEST_LEVEL_M) return null;
  const base = heightsM[first] ?? 0;
  // Millimetres, as recorded heights are kept.
  const left = heightsM.slice(first, end + 1).map((height) => Math.round((height - base) * 1000) / 1000);
  return {
    ...level,
    pieces: [{ kind: 'recorded', stepM, heightsM: left }],
    ...placedOnPart(level, first * stepM, (end - first) * stepM),
  };
}

/** The lists of things that lie on a road. */
type Placed = Pick<Level, 'stopLinesM' | 'winds' | 'surfaces' | 'hidden' | 'cues' | 'company'>;

/** Everything on the part of so many metres from `startM` on; what reaches beyond it is cut off at its ends. */
function placedOnPart(level: Level, startM: number, lengthM: number): Placed {
  const isOn = (atM: number): boolean => atM >= startM && atM <= startM + lengthM;
  const moved = <P extends { readonly atM: number }>(list: readonly P[]): P[] =>
    list.filter(({ atM }) => isOn(atM)).map((one) => ({ ...one, atM: one.atM - startM }));
  const clipped = <S extends { readonly fromM: number; readonly toM: number }>(list: readonly S[]): S[] =>
    list
      .map((one) => ({
        ...one,
        fromM: Math.max(0, one.fromM - startM),
        toM: Math.min(lengthM, one.toM - startM),
      }))
      .filter((one) => one.toM > one.fromM);
  return {
    stopLinesM: level.stopLinesM.filter(isOn).map((atM) => atM - startM),
    winds: clipped(level.winds),
    surfaces: clipped(level.surfaces),
    hidden: clipped(level.hidden),
    cues: moved(level.cues),
    ...(level.company === undefined ? {} : { company: moved(level.company) }),
  };
}
