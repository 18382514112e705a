/**
 * Decides which tracks of a file make the road: its only one, all of them end to end, or the longest. A person
 * may decide otherwise. The points themselves are not judged here.
 */
import { distanceM, globePoint } from './globe.ts';
import { indexOfLargest } from './lists.ts';
import {
  emptyColumns,
  type GpxFile,
  type GpxTrack,
  type PointColumns,
  refused,
  roadNote,
  type RoadQuestion,
} from './types.ts';

/** What a person has decided; what is left out is decided by the rules of the house. */
export interface RoadAnswers {
  /** All tracks end to end, or the one with this number, counted from 1. */
  readonly tracks?: 'join' | number;
  /** Holes: ridden in a straight line, or only the longest part without one. */
  readonly holes?: 'straight' | 'longest-part';
  /** What unit the heights of the file are in. */
  readonly heights?: HeightUnit;
}

/** Units heights are written in where the file says nothing. */
export type HeightUnit = 'metres' | 'feet';

/** Tracks that follow one another this closely were one ride (m). */
const FOLLOWS_WITHIN_M = 200;

/** The points to make a road of, or why there are none: of the tracks, or of the routes where there is no track. */
export function choosePoints(file: GpxFile, answers: RoadAnswers) {
  const filled = file.tracks.map(flatten).filter(({ points }) => points.latDeg.length > 0);
  const tracks = filled.filter(({ kind }) => kind === 'track');
  const candidates = (tracks.length > 0 ? tracks : filled).map(({ points }) => points);
  const [first] = candidates;
  if (first === undefined) return nothingIn(file);
  if (candidates.length === 1) return { ok: true, points: first, questions: [] } as const;
  const taken = answers.tracks ?? defaultFor(candidates);
  const numbers = candidates.map((_, i) => `${i + 1}`);
  if (taken !== 'join' && !numbers.includes(`${taken}`))
    return refused('no-such-track', { track: taken, trackCount: candidates.length });
  const question: RoadQuestion = {
    ...roadNote('tracks', 'several-tracks', { trackCount: candidates.length }),
    options: ['join', ...numbers],
    taken: `${taken}`,
  };
  const points = taken === 'join' ? concatenated(candidates) : (candidates[taken - 1] ?? first);
  return { ok: true, points, questions: answers.tracks === undefined ? [question] : [] } as const;
}

function nothingIn(file: GpxFile): ReturnType<typeof refused> {
  if (file.unreadablePoints > 0) return refused('no-readable-points', { pointCount: file.pointCount });
  if (file.waypointCount > 0) return refused('only-waypoints', { waypointCount: file.waypointCount });
  return refused('no-points');
}

/** Joined if they follow one another in place and time, else the longest one. */
function defaultFor(candidates: readonly PointColumns[]): 'join' | number {
  const follows = candidates.every((next, i) => {
    const before = candidates[i - 1];
    if (before === undefined) return true;
    if (distanceM(placeAt(before, before.latDeg.length - 1), placeAt(next, 0)) > FOLLOWS_WITHIN_M)
      return false;
    // Two devices on one ride, or two riders: what was ridden at the same time was not ridden one after the other.
    return !(lastTimeS(before) > firstTimeS(next));
  });
  if (follows) return 'join';
  return indexOfLargest(candidates.map(roughLengthM)) + 1;
}

function firstTimeS({ timeS }: PointColumns): number {
  return timeS.find((time) => !Number.isNaN(time)) ?? Number.NaN;
}

function lastTimeS({ timeS }: PointColumns): number {
  return timeS.findLast((time) => !Number.isNaN(time)) ?? Number.NaN;
}

function roughLengthM(points: PointColumns): number {
  let sumM = 0;
  for (let i = 1; i < points.latDeg.length; i += 1)
    sumM += distanceM(placeAt(points, i - 1), placeAt(points, i));
  return sumM;
}

function placeAt(points: PointColumns, index: number) {
  return globePoint(points.latDeg[index] ?? 0, points.lonDeg[index] ?? 0);
}

function flatten({ kind, segments }: GpxTrack) {
  return { kind, points: concatenated(segments) };
}

function concatenated(parts: readonly PointColumns[]): PointColumns {
  const [only] = parts;
  if (parts.length === 1 && only !== undefined) return only;
  const all = emptyColumns();
  for (const key of Object.keys(all) as (keyof PointColumns)[])
    for (const part of parts) for (const value of part[key]) all[key].push(value);
  return all;
}
