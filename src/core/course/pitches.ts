/**
 * Finds the pitches of a road: the places a rider has to prepare for. Rules of our own, made so that a
 * pitch's foot is where the two slopes would meet if the join were sharp.
 */
import type { Pitch } from './types.ts';

const RISE_AT_LEAST = 0.03;
const STEEP_FROM = 0.035;
const WITHIN_M = 25;
const NO_PITCH_BELOW = 0.02;

/** All pitches in riding order, from a slope table sampled every metre. */
export function findPitches(slopeRatio: ArrayLike<number>): Pitch[] {
  const feet: { footM: number; level: number; steepestRatio: number }[] = [];
  for (let i = 1; i < slopeRatio.length; i += 1) {
    if (!risesTo(slopeRatio, i)) continue;
    const foot = describeFoot(slopeRatio, i);
    if (feet.at(-1)?.footM !== foot.footM) feet.push(foot);
    while (i + 1 < slopeRatio.length && risesTo(slopeRatio, i + 1)) i += 1;
  }
  return feet.map((foot, k) => endPitch(slopeRatio, foot, feet[k + 1]?.footM ?? slopeRatio.length - 1));
}

/** True where the road has become a pitch: 3 points steeper than somewhere in the last 25 m, and 3.5 % or more. */
function risesTo(slopeRatio: ArrayLike<number>, i: number): boolean {
  const here = slopeRatio[i] as number;
  return here >= STEEP_FROM && here - extreme(slopeRatio, i - WITHIN_M, i, Math.min) >= RISE_AT_LEAST;
}

function describeFoot(slopeRatio: ArrayLike<number>, i: number) {
  const base = extreme(slopeRatio, i - WITHIN_M, i, Math.min);
  const steepestRatio = extreme(slopeRatio, i, i + WITHIN_M, Math.max);
  const level = (base + steepestRatio) / 2;
  let footM = Math.max(0, i - WITHIN_M);
  while (footM < i + WITHIN_M && (slopeRatio[footM] as number) < level) footM += 1;
  return { footM, level, steepestRatio };
}

function endPitch(
  slopeRatio: ArrayLike<number>,
  foot: { footM: number; level: number; steepestRatio: number },
  limitM: number,
): Pitch {
  const stopBelow = Math.max(NO_PITCH_BELOW, foot.level);
  let endM = foot.footM;
  let steepestRatio = foot.steepestRatio;
  while (endM < limitM && (endM < foot.footM + 6 || (slopeRatio[endM] as number) >= stopBelow)) {
    steepestRatio = Math.max(steepestRatio, slopeRatio[endM] as number);
    endM += 1;
  }
  return { footM: foot.footM, endM, steepestRatio };
}

function extreme(
  table: ArrayLike<number>,
  from: number,
  to: number,
  pick: (a: number, b: number) => number,
): number {
  const first = Math.max(0, from);
  let value = table[first] as number;
  for (let i = first + 1; i <= Math.min(to, table.length - 1); i += 1)
    value = pick(value, table[i] as number);
  return value;
}
