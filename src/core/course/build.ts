/**
 * Lays pieces end to end into a `Course` sampled every metre. Joins become parabolic vertical curves, so
 * that the slope is continuous; wind, surface and sight are laid over the finished road.
 */
import { clamp, cosOfSlope } from '../math/numbers.ts';
import { deriveSeed } from '../math/random.ts';
import { findPitches } from './pitches.ts';
import { type Piece, pieceSlopes } from './pieces.ts';
import type { Course, Stretch } from './types.ts';

/** How far a rider sees on an open road (m). */
export const OPEN_SIGHT_M = 250;
/** Length of the vertical curve at a join: shortest and longest that are allowed (m). */
export const SHORTEST_JOIN_M = 6;
export const LONGEST_JOIN_M = 20;

/** What a road is made from. */
interface CoursePlan {
  readonly pieces: readonly Piece[];
  /** Length of the parabolic curve at every join (m), limited to 6 to 20. */
  readonly joinM: number;
  readonly seed: number;
  readonly stopLinesM: readonly number[];
  readonly winds: readonly (Stretch & { readonly windMps: number })[];
  readonly surfaces: readonly (Stretch & { readonly rollingFactor: number })[];
  readonly hidden: readonly (Stretch & { readonly sightM: number })[];
}

/** Builds the road. The same plan gives the same course, bit for bit, in every browser. */
export function buildCourse(plan: CoursePlan): Course {
  const steps = plan.pieces.flatMap((piece, index) =>
    pieceSlopes(piece, deriveSeed(plan.seed, `piece ${index}`)),
  );
  const lengthM = steps.length;
  const slopeRatio = smoothJoins(steps, plan.joinM);
  return {
    lengthM,
    slopeRatio,
    heightM: integrateHeights(slopeRatio),
    windMps: overlay(lengthM, 0, plan.winds, (w) => w.windMps),
    rollingFactor: overlay(lengthM, 1, plan.surfaces, (s) => s.rollingFactor),
    sightM: overlay(lengthM, OPEN_SIGHT_M, plan.hidden, (h) => h.sightM),
    stopLinesM: [...plan.stopLinesM].sort((a, b) => a - b),
    pitches: findPitches(slopeRatio),
  };
}

/**
 * A running mean over the curve length turns every jump of slope into a straight ramp of slope, which is a
 * parabola in height. The ends are held.
 */
function smoothJoins(steps: readonly number[], joinM: number): Float64Array {
  const half = Math.round(clamp(joinM, SHORTEST_JOIN_M, LONGEST_JOIN_M) / 2);
  const n = steps.length;
  const first = steps[0] ?? 0;
  const last = steps[n - 1] ?? 0;
  const slopes = new Float64Array(n + 1);
  for (let i = 0; i <= n; i += 1) {
    let sum = 0;
    for (let j = i - half; j < i + half; j += 1) sum += j < 0 ? first : j >= n ? last : (steps[j] as number);
    slopes[i] = sum / (2 * half);
  }
  return slopes;
}

/** Heights along the road: each metre rises by the mean of s/√(1+s²) over it (Simpson's rule). */
function integrateHeights(slopeRatio: Float64Array): Float64Array {
  const heights = new Float64Array(slopeRatio.length);
  for (let i = 1; i < slopeRatio.length; i += 1) {
    const a = slopeRatio[i - 1] as number;
    const b = slopeRatio[i] as number;
    const rise = riseOf(a) + 4 * riseOf((a + b) / 2) + riseOf(b);
    heights[i] = (heights[i - 1] as number) + rise / 6;
  }
  return heights;
}

function riseOf(slopeRatio: number): number {
  return slopeRatio * cosOfSlope(slopeRatio);
}

function overlay<S extends Stretch>(
  lengthM: number,
  ground: number,
  stretches: readonly S[],
  valueOf: (stretch: S) => number,
): Float64Array {
  const table = new Float64Array(lengthM + 1).fill(ground);
  for (const stretch of stretches) {
    const from = Math.max(0, Math.round(stretch.fromM));
    const to = Math.min(lengthM, Math.round(stretch.toM));
    table.fill(valueOf(stretch), from, to + 1);
  }
  return table;
}
