/** "Ride it again": a pitch of a real road with the way to it as a level of about 90 seconds. */
import { levelFromRoad } from '../gpx/level.ts';
import type { Road } from '../gpx/road.ts';
import type { ParseResult } from '../level/parse.ts';
import type { Level } from '../level/schema.ts';
import type { RoadPitch } from './rideFigures.ts';
import type { RoadSecond } from './seconds.ts';

/** So long the level takes at the speeds of the ride, and so much of it lies before the foot (s). */
const LEVEL_S = 90;
const BEFORE_S = 40;
/** Shorter than this it would be no road (m). */
const SHORTEST_M = 200;

/** The level; it holds heights and nothing of where or when. */
export function levelOfPitch(
  road: Road,
  seconds: readonly RoadSecond[],
  pitch: Pick<RoadPitch, 'footM' | 'endM'>,
  words: Pick<Level, 'id' | 'title' | 'sentence'>,
): ParseResult {
  const foot = seconds.find(({ distanceM }) => distanceM >= pitch.footM);
  const placeAt = (offsetS: number): number | undefined =>
    foot === undefined
      ? undefined
      : (offsetS < 0
          ? seconds.find(({ timeS }) => timeS >= foot.timeS + offsetS)
          : seconds.findLast(({ timeS }) => timeS <= foot.timeS + offsetS)
        )?.distanceM;
  const fromM = Math.max(0, Math.min(placeAt(-BEFORE_S) ?? 0, pitch.footM - SHORTEST_M / 2));
  const toM = Math.max(placeAt(LEVEL_S - BEFORE_S) ?? 0, pitch.footM + SHORTEST_M / 2, fromM + SHORTEST_M);
  return levelFromRoad(road, { fromM, toM: Math.min(road.lengthM, toM), ...words });
}
