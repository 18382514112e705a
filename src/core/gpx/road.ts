/**
 * From the points of a GPX file to a road that can become a level: cleaned, sampled every 10 m, smoothed, and with
 * an honest word about how far it can be trusted. The level itself is made in `level.ts`.
 */
import { believableCadence } from './cadence.ts';
import { choosePoints, type RoadAnswers } from './choose.ts';
import { cleanHeights, GRID_M, resample } from './grid.ts';
import { feetQuestion, inMetres } from './feet.ts';
import { type JudgedHeights, judgeHeights } from './heights.ts';
import { type Trail, cleanTrail } from './trail.ts';
import { qualityOf } from './quality.ts';
import { ascentM, fittedSlopes, type HalfWidthM, halfWidthFor, heightsOf, slopeNoisePerM } from './smooth.ts';
import { type GpxFile, refused, type RoadNote, roadNote, type RoadQuestion } from './types.ts';
import type { Problem } from '../level/problems.ts';
import { SHORTEST_LEVEL_M, STEEPEST_RATIO } from '../level/schema.ts';

/** Longer than any ride; beyond it a file is a mistake (m). */
const LONGEST_ROAD_M = 1_000_000;

/** A road sampled every `stepM` metres; lists have one entry per sample. */
interface RoadProfile {
  readonly stepM: number;
  /** Smoothed heights (m); their steps are the smoothed slopes. */
  readonly heightsM: readonly number[];
  /** Smoothed slopes at the samples (rise over run), not yet limited. */
  readonly slopesRatio: readonly number[];
  /** Heights before smoothing (m), to show how far they can be trusted. */
  readonly rawHeightsM: readonly number[];
}

/** A road as it was recorded. Contains no place and no wall-clock time. */
export type Road = Readonly<ReturnType<typeof makeRoad>>;

/** A road, or why nothing can be made of the file. */
type ImportResult =
  | { readonly ok: true; readonly road: Road }
  | { readonly ok: false; readonly problems: readonly Problem[] };

/** Makes a road. Questions come with what was done in the meantime; call again with answers to change that. */
export function importRoad(file: GpxFile, answers: RoadAnswers = {}): ImportResult {
  const made = roadOf(file, answers);
  // What is left of a damaged file makes no road: then the damage is the reason.
  const { damage } = file;
  return made.ok || damage === null ? made : refused(damage.code, { line: damage.line });
}

function roadOf(file: GpxFile, answers: RoadAnswers): ImportResult {
  const chosen = choosePoints(file, answers);
  if (!chosen.ok) return chosen;
  const trail = inMetres(cleanTrail(chosen.points, answers), answers.heights);
  if (trail.lengthM < SHORTEST_LEVEL_M) return tooShort(trail.lengthM);
  if (trail.lengthM > LONGEST_ROAD_M) return refused('too-long', { lengthM: trail.lengthM });
  const heights = judgeHeights(trail);
  if (heights.knownCount < 2)
    return file.unreadableHeights > 0
      ? refused('no-readable-elevation', { pointCount: file.unreadableHeights }, 'elevation')
      : refused('no-elevation', {}, 'elevation');
  const road = makeRoad(file, trail, heights, chosen.questions);
  const perhapsFeet = answers.heights === undefined ? feetQuestion(road) : [];
  return { ok: true, road: { ...road, questions: [...road.questions, ...perhapsFeet] } };
}

function tooShort(lengthM: number): ImportResult {
  if (lengthM < 1) return refused('no-length');
  return refused('too-short', { lengthM, leastM: SHORTEST_LEVEL_M });
}

function makeRoad(file: GpxFile, trail: Trail, heights: JudgedHeights, questions: readonly RoadQuestion[]) {
  const raw = resample(trail.atM, heights.heightM);
  const { samples, bridgedCount, jumpCount } = cleanHeights(raw);
  const bridgedShare = bridgedCount / samples.length;
  const halfWidthM = halfWidthFor(heights.noiseM, bridgedShare);
  const profile = smoothProfile(raw, samples, halfWidthM);
  const { slopesRatio } = profile;
  const { medianStepM, placeStepM } = trail;
  const quality = qualityOf({
    ...heights,
    medianStepM,
    placeStepM,
    placeStepRatio: placeStepM / Math.max(1, medianStepM),
    holeShare: trail.holes.reduce((sumM, hole) => sumM + hole.toM - hole.fromM, 0) / trail.lengthM,
    bridgedShare,
    jumpCount,
    halfWidthM,
    slopeNoiseRatio: heights.noiseM * slopeNoisePerM(halfWidthM),
    pointCount: trail.atM.length,
  });
  const cadence = believableCadence(trail.cadenceRpm);
  const cappedM = slopesRatio.filter((slope) => Math.abs(slope) > STEEPEST_RATIO).length * GRID_M;
  const steepestRatio = slopesRatio.reduce((a, b) => Math.max(a, b), 0);
  const steepestDescentRatio = slopesRatio.reduce((a, b) => Math.min(a, b), 0);
  return {
    /** Length on the map (m). */
    lengthM: trail.lengthM,
    /** Metres climbed between turning points of 3 m or more, before any limit of slope. */
    ascentM: ascentM(profile.heightsM),
    /** Steepest climb and steepest descent after smoothing (rise over run), before any limit. */
    steepestRatio,
    steepestDescentRatio,
    /** Metres on which a level will be flatter than the record, because it is limited to 20 %. */
    cappedM,
    halfWidthM,
    quality,
    problems: [
      ...fileNotes(file),
      ...trail.notes,
      ...heightNotes(heights, file.unreadableHeights),
      ...timeNotes(trail),
      ...cadence.notes,
      ...capNotes(cappedM, Math.max(steepestRatio, -steepestDescentRatio)),
    ],
    questions: [...questions, ...trail.questions],
    profile,
    holes: trail.holes,
    /** Points in the file. */
    points: file.pointCount,
    /** When and how it was ridden, for comparison only; never part of a level. NaN where unknown. */
    recorded: { atM: trail.atM, timeS: trail.timeS, cadenceRpm: cadence.cadenceRpm, powerW: trail.powerW },
  };
}

/** Heights every 10 m, as read and cleaned, as a profile whose slopes are fitted over ± the half width. */
export function smoothProfile(raw: Float64Array, cleaned: Float64Array, halfWidthM: HalfWidthM): RoadProfile {
  const slopes = fittedSlopes(cleaned, halfWidthM);
  return {
    stepM: GRID_M,
    heightsM: Array.from(heightsOf(slopes, cleaned[0] ?? 0)),
    slopesRatio: Array.from(slopes),
    rawHeightsM: Array.from(raw),
  };
}

function fileNotes({ unreadablePoints, unreadableHeights, damage, pointCount }: GpxFile): RoadNote[] {
  const notes: RoadNote[] = [];
  if (damage !== null) notes.push(roadNote('points', 'salvaged', { line: damage.line, pointCount }));
  if (unreadablePoints > 0)
    notes.push(roadNote('points', 'unreadable-points', { pointCount: unreadablePoints }));
  if (unreadableHeights > 0)
    notes.push(roadNote('elevation', 'unreadable-elevations', { pointCount: unreadableHeights }));
  return notes;
}

function heightNotes(
  { spikeCount, zeroCount, unknownCount, missingShare }: JudgedHeights,
  unreadable: number,
): RoadNote[] {
  // Where they are missing for long the quality says so.
  const unwritten = missingShare > 0 ? 0 : unknownCount - unreadable;
  return [
    ...(unwritten <= 0 ? [] : [roadNote('elevation', 'unwritten-elevations', { pointCount: unwritten })]),
    ...(zeroCount === 0 ? [] : [roadNote('elevation', 'zero-elevations', { pointCount: zeroCount })]),
    ...(spikeCount === 0 ? [] : [roadNote('elevation', 'elevation-spikes', { pointCount: spikeCount })]),
  ];
}

function timeNotes({ timeS }: Trail): RoadNote[] {
  const known = timeS.filter((time) => !Number.isNaN(time));
  const backwards = known.filter((time, i) => i > 0 && time < (known[i - 1] as number)).length;
  return backwards === 0 ? [] : [roadNote('time', 'time-backwards', { pointCount: backwards })];
}

function capNotes(cappedM: number, steepestRatio: number): RoadNote[] {
  if (cappedM === 0) return [];
  return [roadNote('elevation', 'capped', { cappedM, steepestRatio, limitRatio: STEEPEST_RATIO })];
}
