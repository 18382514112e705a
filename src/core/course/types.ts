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

interface Slope {
  readonly lengthM: number;
  readonly slopeRatio: number;
}

/** Building blocks of a road, laid end to end. */
export type Piece =
  | { readonly kind: 'flat'; readonly lengthM: number }
  | ({ readonly kind: 'climb' } & Slope)
  | ({ readonly kind: 'pitch' } & Slope)
  | ({ readonly kind: 'descent' } & Slope)
  /** Waves of ground; `steepestRatio` is not exceeded, `waveM` is about one up and down. */
  | {
      readonly kind: 'rollers';
      readonly lengthM: number;
      readonly waveM: number;
      readonly steepestRatio: number;
    }
  /**
   * Flat road with pitches whose place and steepness come from the seed; with `beforeM` they follow each other, and every
   * one of them has so much road before it, to a few metres.
   */
  | {
      readonly kind: 'random-pitches';
      readonly lengthM: number;
      readonly pitchCount: number;
      readonly gentlestRatio: number;
      readonly steepestRatio: number;
      readonly beforeM?: number | undefined;
    }
  /** Heights of a recorded road every `stepM` metres, relative to its start. */
  | { readonly kind: 'recorded'; readonly stepM: number; readonly heightsM: readonly number[] };

/** Things that lie over a stretch of the finished road. */
export interface Stretch {
  readonly fromM: number;
  readonly toM: number;
}
