/**
 * Cuts a level out of an imported road. It holds heights and distances only: no place, no time, no name that
 * was in the file. Title and sentence are what the person at the level bench wrote.
 */
import { OWN_LEVEL } from '../level/own.ts';
import { type ParseResult, parseLevel } from '../level/parse.ts';
import { LEVEL_SCHEMA, type Level, LONGEST_LEVEL_M, STEEPEST_RATIO } from '../level/schema.ts';
import type { Road } from './road.ts';
import { ascentM } from './smooth.ts';
import { refused, type RoadStretch } from './types.ts';

/** What a person chose for the level. Anything of a level may be set besides the road itself. */
export interface LevelWishes extends RoadStretch, Partial<Omit<Level, 'pieces' | 'schema'>> {
  readonly title: string;
  readonly sentence: string;
}

/** Below this a level would not take the heights (m from the start). */
const LOWEST_M = -500;
const MM = 1_000;

/** A level of the stretch between two distances, or problems to show at the bench. */
export function levelFromRoad(road: Road, wishes: LevelWishes): ParseResult {
  const { fromM, toM, ...own } = wishes;
  const { stepM } = road.profile;
  const heightsM = levelHeights(road.profile, { fromM, toM });
  if (heightsM === null) return refused('backwards', {}, 'pieces[0]');
  return parseLevel({
    schema: LEVEL_SCHEMA,
    id: idFrom(own.title),
    ...OWN_LEVEL,
    ...own,
    pieces: [{ kind: 'recorded', stepM, heightsM }],
  });
}

/** Heights every `stepM` metres, of a road or of what is shown of it. */
interface Heights {
  readonly stepM: number;
  readonly heightsM: ArrayLike<number>;
}

/** What a stretch comes to as a level: climbed (m) and steepest (rise over run), with the limits of a level. */
export function levelFigures(
  road: Heights,
  stretch: RoadStretch,
): { ascentM: number; steepestRatio: number } {
  const heightsM = levelHeights(road, stretch) ?? [];
  const steepestM = heightsM.reduce(
    (most, heightM, i) => (i === 0 ? 0 : Math.max(most, heightM - (heightsM[i - 1] as number))),
    0,
  );
  return { ascentM: ascentM(heightsM), steepestRatio: steepestM / road.stepM };
}

/** Heights of a stretch as a level holds them; null where it ends before it begins. */
function levelHeights(road: Heights, { fromM, toM }: RoadStretch): number[] | null {
  const { stepM } = road;
  const last = road.heightsM.length - 1;
  const from = Math.max(0, Math.min(last, Math.round(fromM / stepM)));
  const to = Math.max(0, Math.min(last, Math.round(toM / stepM), from + LONGEST_LEVEL_M / stepM));
  return to > from ? limitedHeights(road, from, to) : null;
}

/**
 * Heights relative to the start, in whole millimetres, no step steeper than a level may be. Where the road falls
 * more than 500 m they are relative to its lowest place instead; only their steps count for a ride.
 */
function limitedHeights({ heightsM, stepM }: Heights, from: number, to: number): number[] {
  const limit = Math.round(STEEPEST_RATIO * stepM * MM);
  const heights = [0];
  // What rounding leaves over is carried on, so that it does not add up; what the limit cuts off is not.
  let leftOver = 0;
  for (let i = from + 1; i <= to; i += 1) {
    const rise = ((heightsM[i] as number) - (heightsM[i - 1] as number)) * MM + leftOver;
    const step = Math.max(-limit, Math.min(limit, Math.round(rise)));
    leftOver = Math.abs(rise) > limit ? 0 : rise - step;
    heights.push((heights.at(-1) as number) + step);
  }
  const lowest = heights.reduce((a, b) => Math.min(a, b), 0);
  const baseMm = lowest < LOWEST_M * MM ? lowest : 0;
  return heights.map((height) => (height - baseMm) / MM);
}

/** A title as an id: small letters, digits and dashes. */
function idFrom(title: string): string {
  const plain = title
    .normalize('NFD')
    .toLowerCase()
    .replace(/[^a-z0-9]+/g, ' ')
    .trim()
    .replace(/ /g, '-')
    .slice(0, 60)
    .replace(/-+$/, '');
  return plain === '' ? 'recorded-road' : plain;
}
