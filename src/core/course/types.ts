/**
 * What a road is: samples every metre along the ground, plus the places where a rider must stop.
 * Made by `buildCourse` from pieces; nothing here knows bikes or riders.
 */

/** A road sampled every metre; all arrays have `lengthM + 1` entries. */
export interface Course {
  readonly lengthM: number;
  readonly heightM: Float64Array;
  /** Rise over run, 0.08 is 8 %. */
  readonly slopeRatio: Float64Array;
  /** Wind along the road, head wind positive (m/s). */
  readonly windMps: Float64Array;
  /** Multiplies the bike's own rolling coefficient; 1 on asphalt. */
  readonly rollingFactor: Float64Array;
  /** How far ahead the road can be seen (m). */
  readonly sightM: Float64Array;
  readonly stopLinesM: readonly number[];
  readonly pitches: readonly Pitch[];
}

/** A steeper stretch: 3 points or more above the gentlest 40 m since the last one, and 3.5 % or more (see `pitches.ts`). */
export interface Pitch {
  /** Where the steep part begins and ends (m along the road). */
  readonly footM: number;
  readonly endM: number;
  /** Steepest slope in it (rise over run). */
  readonly steepestRatio: number;
}

/** Things that lie over a stretch of the finished road. */
export interface Stretch {
  readonly fromM: number;
  readonly toM: number;
}
