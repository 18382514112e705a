/**
 * From points to a clean trail: places that cannot be are dropped, points on one spot and the scatter of a rest
 * are merged, holes are found. Distances come out along the trail; heights are handed on as they are.
 */
import type { RoadAnswers } from './choose.ts';
import { distanceM, type GlobePoint, globePoint } from './globe.ts';
import { indexOfLargest, median } from './lists.ts';
import { findStops, meanPlace } from './stops.ts';
import { type PointColumns, type RoadNote, roadNote, type RoadQuestion, type RoadStretch } from './types.ts';

/** Points nearer than this to the one before are the same place (m). */
const SAME_PLACE_M = 0.5;
/** A gap longer than this is asked about (m)… */
const HOLE_M = 200;
/** …unless the whole file is that sparse: then only gaps of several usual steps are holes. */
const HOLE_STEPS = 5;
/** A place is impossible if the line jumps there and back within a few points: faster than anybody rides (m, m/s)… */
const FAST_JUMP_M = 50;
const IMPOSSIBLE_MPS = 40;
/** …or, where no times tell, this far (m). */
const JUMP_M = 300;
const JUMP_STEPS = 12;
const JUMP_POINTS = 5;

/** Points along the way that was recorded; unknown heights, times, cadences and powers are NaN. */
export interface Trail {
  readonly lengthM: number;
  readonly atM: readonly number[];
  readonly heightM: readonly number[];
  readonly timeS: readonly number[];
  readonly cadenceRpm: readonly number[];
  readonly powerW: readonly number[];
  /** Stretches without points, straight from one to the next. */
  readonly holes: readonly RoadStretch[];
  /** Usual distance between points (m). */
  readonly medianStepM: number;
  /** Steps that places are written in, where they were rounded to a few decimals (m); 0 where they were not. */
  readonly placeStepM: number;
  readonly questions: readonly RoadQuestion[];
  readonly notes: readonly RoadNote[];
}

export function cleanTrail(points: PointColumns, answers: RoadAnswers): Trail {
  const places = points.latDeg.map((latDeg, i) => globePoint(latDeg, points.lonDeg[i] ?? 0));
  const steps = places.slice(1).map((place, i) => distanceM(places[i] as GlobePoint, place));
  const usualM = median(steps.filter((stepM) => stepM >= SAME_PLACE_M));
  const possible = possiblePoints(places, points.timeS, usualM);
  const dropped = places.length - possible.length;
  const { spots, stopCount, stoppedS } = spotsOf(places, points, possible);
  const merged = mergePlaces(spots);
  const holeM = Math.max(HOLE_M, HOLE_STEPS * usualM);
  const holes = findHoles(merged.atM, holeM);
  const cut = answers.holes === 'longest-part' ? longestPart(merged, holes) : merged;
  return {
    ...cut,
    lengthM: cut.atM.at(-1) ?? 0,
    holes: cut === merged ? holes : [],
    medianStepM: usualM,
    placeStepM: roundedToM(points),
    questions: holes.length > 0 && answers.holes === undefined ? [holeQuestion(holes)] : [],
    notes: [
      ...(dropped === 0 ? [] : [roadNote('points', 'impossible-points', { pointCount: dropped })]),
      ...(stopCount === 0 ? [] : [roadNote('points', 'stops', { stopCount, stoppedS })]),
    ],
  };
}

/** Decimals of a degree that places can be rounded to so that it matters, and what a step of the last one is (m). */
const ROUNDED = [
  { perDeg: 1_000, stepM: 111 },
  { perDeg: 10_000, stepM: 11 },
] as const;
/** Degrees that are whole steps but for what a decimal fraction loses as a number. */
const ROUNDED_WITHIN = 1e-6;

/** The steps that all places are written in (m), 0 where they are finer than anybody minds. */
function roundedToM({ latDeg, lonDeg }: PointColumns): number {
  const isWhole = (deg: number, perDeg: number): boolean =>
    Math.abs(deg * perDeg - Math.round(deg * perDeg)) < ROUNDED_WITHIN;
  const found = ROUNDED.find(({ perDeg }) =>
    latDeg.every((lat, i) => isWhole(lat, perDeg) && isWhole(lonDeg[i] ?? 0, perDeg)),
  );
  return found?.stepM ?? 0;
}

/** Indices of the points that are left after jumps out and back are taken away. */
function possiblePoints(places: readonly GlobePoint[], timeS: readonly number[], usualM: number): number[] {
  const jumpM = Math.max(JUMP_M, JUMP_STEPS * usualM);
  const kept: number[] = [];
  let i = firstPossible(places, jumpM);
  while (i < places.length) {
    const before = kept.at(-1);
    const back = before === undefined ? i : whereItReturns(places, timeS, before, i, jumpM);
    // A jump that the file ends with leads nowhere.
    if (back === places.length) break;
    kept.push(back);
    i = back + 1;
  }
  return kept;
}

/** A few points far from all the rest, before the first fix was good, are not where the road begins. */
function firstPossible(places: readonly GlobePoint[], jumpM: number): number {
  for (let i = Math.min(3, places.length - 4); i >= 1; i -= 1) {
    if (distanceM(places[i - 1] as GlobePoint, places[i] as GlobePoint) > jumpM) return i;
  }
  return 0;
}

/** The first point from `i` on that can follow point `before`: `i` itself, or the one where a jump is back. */
function whereItReturns(
  places: readonly GlobePoint[],
  timeS: readonly number[],
  before: number,
  i: number,
  jumpM: number,
): number {
  const from = places[before] as GlobePoint;
  const outM = distanceM(from, places[i] as GlobePoint);
  const tookS = (timeS[i] ?? Number.NaN) - (timeS[before] ?? Number.NaN);
  const isJump = tookS > 0 ? outM > FAST_JUMP_M && outM / tookS > IMPOSSIBLE_MPS : outM > jumpM;
  if (!isJump) return i;
  const limit = Math.min(places.length, i + 1 + JUMP_POINTS);
  for (let j = i + 1; j < limit; j += 1) {
    if (distanceM(from, places[j] as GlobePoint) < outM / 3) return j;
  }
  return limit === places.length && places.length - i <= 3 && places.length > 10 ? places.length : i;
}

/** What was recorded at each place of the line. */
const RECORDED = ['heightM', 'timeS', 'cadenceRpm', 'powerW'] as const;

/** A place on the line with what was recorded there. */
interface Spot extends Readonly<Record<(typeof RECORDED)[number], number>> {
  readonly place: GlobePoint;
}

/** The places of the line in order; wherever somebody stood is one place, with the time of arrival. */
function spotsOf(places: readonly GlobePoint[], points: PointColumns, indices: readonly number[]) {
  const left = indices.map((i) => places[i] as GlobePoint);
  const timeS = indices.map((i) => points.timeS[i] ?? Number.NaN);
  const heightM = indices.map((i) => points.heightM[i] ?? Number.NaN);
  const stops = findStops(left, timeS);
  const spots: Spot[] = [];
  let stoppedS = 0;
  let k = 0;
  for (let i = 0; i < left.length; i += 1) {
    const stop = stops[k];
    const at = {
      timeS: timeS[i] as number,
      cadenceRpm: points.cadenceRpm[indices[i] as number] ?? Number.NaN,
      powerW: points.powerW[indices[i] as number] ?? Number.NaN,
    };
    if (stop === undefined || i < stop.from) {
      spots.push({ place: left[i] as GlobePoint, heightM: heightM[i] as number, ...at });
      continue;
    }
    const known = heightM.slice(stop.from, stop.to + 1).filter((height) => !Number.isNaN(height));
    const place = meanPlace(left, stop.from, stop.to);
    spots.push({ place, heightM: known.length === 0 ? Number.NaN : median(known), ...at });
    stoppedS += (timeS[stop.to] as number) - at.timeS;
    i = stop.to;
    k += 1;
  }
  // Without times nobody knows how long.
  return { spots, stopCount: stops.length, stoppedS: Number.isNaN(stoppedS) ? 0 : stoppedS };
}

type Merged = Pick<Trail, 'atM' | (typeof RECORDED)[number]>;

/** Points on one spot become one, with the mean of their heights and the time of arrival. */
function mergePlaces(spots: readonly Spot[]): Merged {
  const merged: Record<keyof Merged, number[]> = {
    atM: [],
    heightM: [],
    timeS: [],
    cadenceRpm: [],
    powerW: [],
  };
  const { atM, heightM } = merged;
  let last: GlobePoint | null = null;
  let heights = { sumM: 0, count: 0 };
  for (const spot of spots) {
    const stepM = last === null ? Number.POSITIVE_INFINITY : distanceM(last, spot.place);
    const known = Number.isNaN(spot.heightM) ? { sumM: 0, count: 0 } : { sumM: spot.heightM, count: 1 };
    if (stepM < SAME_PLACE_M) {
      heights = { sumM: heights.sumM + known.sumM, count: heights.count + known.count };
      heightM[heightM.length - 1] = heights.sumM / heights.count;
      continue;
    }
    atM.push(last === null ? 0 : (atM.at(-1) ?? 0) + stepM);
    for (const name of RECORDED) merged[name].push(spot[name]);
    heights = known;
    last = spot.place;
  }
  return merged;
}

function findHoles(atM: readonly number[], holeM: number): RoadStretch[] {
  const holes: RoadStretch[] = [];
  for (let i = 1; i < atM.length; i += 1) {
    const fromM = atM[i - 1] as number;
    const toM = atM[i] as number;
    if (toM - fromM > holeM) holes.push({ fromM, toM });
  }
  return holes;
}

function longestPart(all: Merged, holes: readonly RoadStretch[]): Merged {
  if (holes.length === 0) return all;
  const starts = [0, ...holes.map((hole) => hole.toM)];
  const ends = [...holes.map((hole) => hole.fromM), all.atM.at(-1) ?? 0];
  const lengths = starts.map((startM, i) => (ends[i] ?? startM) - startM);
  const best = indexOfLargest(lengths);
  const first = all.atM.indexOf(starts[best] ?? 0);
  const last = all.atM.indexOf(ends[best] ?? 0);
  const part = (column: readonly number[]): number[] => column.slice(first, last + 1);
  const startM = all.atM[first] ?? 0;
  return {
    atM: part(all.atM).map((atM) => atM - startM),
    heightM: part(all.heightM),
    timeS: part(all.timeS),
    cadenceRpm: part(all.cadenceRpm),
    powerW: part(all.powerW),
  };
}

function holeQuestion(holes: readonly RoadStretch[]): RoadQuestion {
  const longest = holes.reduce((a, b) => (b.toM - b.fromM > a.toM - a.fromM ? b : a));
  const longestM = Math.round(longest.toM - longest.fromM);
  const atM = Math.round(longest.fromM);
  return {
    ...roadNote('holes', 'holes', { holeCount: holes.length, longestM, atM }),
    options: ['straight', 'longest-part'],
    taken: 'straight',
  };
}
