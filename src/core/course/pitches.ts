/**
 * Finds the pitches of a road: the places a rider has to prepare for, on made and on recorded roads alike. What the
 * legs met before is compared with what they will meet: every three points more since the road was last as gentle
 * make a pitch, whether the road stands up at a corner or over a hundred metres.
 */
import type { Pitch } from './types.ts';

/** So many points of slope more, and at least so steep in all (ours: half a gear or so on any bike). */
const RISE_AT_LEAST = 0.03;
const STEEP_FROM = 0.035;
/**
 * A pitch is as steep as it becomes within this way, its foot is looked for so far back, and what the legs met before is
 * the mean of so much road (m). A shorter dip is no rest: at 5 m/s a bike's own speed lifts it by v²/2g = 1.27 m, which is
 * three points over 40 m, and heights that were measured wander as much.
 */
const WITHIN_M = 40;
/** Where the road has become this gentle the pitch is over. */
const NO_PITCH_BELOW = 0.02;
const SHORTEST_M = 6;

interface Foot {
  readonly footM: number;
  /** Halfway between the slope before and the slope of the pitch. */
  readonly level: number;
  readonly steepestRatio: number;
}

/** All pitches in riding order, from a slope table sampled every metre. */
export function findPitches(slopeRatio: ArrayLike<number>): Pitch[] {
  const feet: Foot[] = [];
  let before = slopeRatio[0] ?? 0;
  // The sum over the last metres, not beyond the last top.
  let fromM = 0;
  let sum = before;
  for (let i = 1; i < slopeRatio.length; i += 1) {
    const here = slopeRatio[i] as number;
    sum += here;
    if (i - fromM > WITHIN_M) {
      sum -= slopeRatio[fromM] as number;
      fromM += 1;
    }
    before = Math.min(before, sum / (i - fromM + 1));
    if (here < STEEP_FROM || here - before < RISE_AT_LEAST) continue;
    const steepestRatio = steepestWithin(slopeRatio, i);
    // Before a descent's end legs rest; how steeply it fell does not matter to them.
    const level = (Math.max(0, before) + steepestRatio) / 2;
    const footM = footBefore(slopeRatio, i, level);
    if (feet.at(-1)?.footM !== footM) feet.push({ footM, level, steepestRatio });
    // From here on only what is steeper still is news.
    before = steepestRatio;
    while (i + 1 < slopeRatio.length && (slopeRatio[i] as number) < steepestRatio) i += 1;
    fromM = i;
    sum = slopeRatio[i] as number;
  }
  return feet.map((foot, k) => endPitch(slopeRatio, foot, feet[k + 1]?.footM ?? slopeRatio.length - 1));
}

function steepestWithin(slopeRatio: ArrayLike<number>, fromM: number): number {
  let steepest = slopeRatio[fromM] as number;
  for (let i = fromM; i <= Math.min(fromM + WITHIN_M, slopeRatio.length - 1); i += 1)
    steepest = Math.max(steepest, slopeRatio[i] as number);
  return steepest;
}

/** First metre from which the road stays at least as steep as `level`, looking back from and on from a place. */
function footBefore(slopeRatio: ArrayLike<number>, atM: number, level: number): number {
  let footM = atM;
  const backToM = Math.max(0, atM - WITHIN_M);
  while (footM > backToM && (slopeRatio[footM - 1] as number) >= level) footM -= 1;
  while (footM < atM + WITHIN_M && (slopeRatio[footM] as number) < level) footM += 1;
  return footM;
}

function endPitch(slopeRatio: ArrayLike<number>, foot: Foot, limitM: number): Pitch {
  const stopBelow = Math.max(NO_PITCH_BELOW, foot.level);
  let endM = foot.footM;
  let steepestRatio = foot.steepestRatio;
  while (endM < limitM && (endM < foot.footM + SHORTEST_M || (slopeRatio[endM] as number) >= stopBelow)) {
    steepestRatio = Math.max(steepestRatio, slopeRatio[endM] as number);
    endM += 1;
  }
  return { footM: foot.footM, endM, steepestRatio };
}
