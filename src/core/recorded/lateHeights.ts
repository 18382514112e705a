/**
 * Heights that come late. A device tells height by air pressure and smooths it, so that a hill is written down seconds
 * after the legs met it. Power, speed and acceleration say when they did: where a ride has them, the lag is found and
 * the heights are moved to where they belong; where it has none, nothing is moved and more is allowed for.
 */
import { cleanHeights } from '../gpx/grid.ts';
import { type Road, smoothProfile } from '../gpx/road.ts';
import { clamp, mean, sampleAt } from '../math/numbers.ts';
import { GRAVITY, roadLoad, totalForceN } from '../model/load.ts';
import type { RoadSecond } from './seconds.ts';

/** What of a second tells when the legs met a hill. */
type LoadedSecond = Pick<RoadSecond, 'timeS' | 'speedMps' | 'powerW' | 'slopeRatio'>;

/** Later than this was never seen (s). */
const LATEST_S = 12;
/** Seconds on either side over which a slope told by power is meant, and an acceleration is taken. */
const MEANT_S = 3;
const ACCELERATED_S = 2;
const LEAST_MPS = 2;
/** Rider, bike and clothes (kg), drag area (m²) and rolling of a road bike: only the moment matters here, not the height. */
const ASSUMED = { massKg: 82, cdaM2: 0.35, rollingCoefficient: 0.005, efficiency: 0.97 };
/** With fewer seconds, or where the hills of legs and file go together less than this, no lag is told. */
const LEAST_SECONDS = 240;
const LEAST_TOGETHER = 0.5;
/** Told from either half of the ride alone, the lag must be the same within so much (s). */
const SAME_LAG_S = 2;

/**
 * How many seconds the heights of a ride lag behind the hills the legs met: the lag at which the recorded slope goes best
 * with the slope that power, speed and acceleration imply (road load after Martin et al. 1998, solved for the slope).
 * Null where there is too little power to tell.
 */
export function heightLagS(seconds: readonly LoadedSecond[]): number | null {
  const implied = impliedSlopes(seconds);
  const whole = bestLag(seconds, implied, 0, seconds.length);
  if (whole === null) return null;
  const half = seconds.length >> 1;
  const halves = [bestLag(seconds, implied, 0, half), bestLag(seconds, implied, half, seconds.length)];
  // A ride whose second half is flat tells by its first; halves that contradict each other tell nothing.
  return halves.every((one) => one === null || Math.abs(one - whole) <= SAME_LAG_S) ? whole : null;
}

/** The lag that fits best to a part of a ride, or null where none is told. */
function bestLag(
  seconds: readonly LoadedSecond[],
  implied: readonly number[],
  from: number,
  to: number,
): number | null {
  let best = { lagS: 0, together: -1 };
  let pairs = 0;
  for (let lagS = 0; lagS <= LATEST_S; lagS += 1) {
    const a: number[] = [];
    const b: number[] = [];
    for (let i = from; i + lagS < to; i += 1) {
      const slope = implied[i] as number;
      const [here, later] = [seconds[i] as LoadedSecond, seconds[i + lagS] as LoadedSecond];
      if (Number.isNaN(slope) || later.timeS - here.timeS !== lagS) continue;
      a.push(slope);
      // What was climbed here is written down over the way that is ridden by then.
      b.push((later.slopeRatio * later.speedMps) / here.speedMps);
    }
    pairs = Math.max(pairs, a.length);
    const together = correlation(a, b);
    if (together > best.together) best = { lagS, together };
  }
  return pairs < LEAST_SECONDS || best.together < LEAST_TOGETHER ? null : best.lagS;
}

/** Slopes that the legs felt, meant over seven seconds; NaN where they did not drive. */
function impliedSlopes(seconds: readonly LoadedSecond[]): number[] {
  const single = seconds.map((second, i) => {
    const before = seconds[i - ACCELERATED_S];
    const after = seconds[i + ACCELERATED_S];
    const { speedMps } = second;
    const powerW = second.powerW ?? 0;
    if (before === undefined || after === undefined || speedMps < LEAST_MPS || powerW <= 0) return Number.NaN;
    if (after.timeS - before.timeS !== 2 * ACCELERATED_S) return Number.NaN;
    const { massKg, cdaM2, rollingCoefficient, efficiency } = ASSUMED;
    const accelerationMps2 = (after.speedMps - before.speedMps) / (2 * ACCELERATED_S);
    const flatN = totalForceN(roadLoad(speedMps, 0, 0, massKg, cdaM2, rollingCoefficient));
    const upN = (efficiency * powerW) / speedMps - flatN - massKg * accelerationMps2;
    return upN / (massKg * GRAVITY);
  });
  return single.map((_, i) => {
    const around = single.slice(Math.max(0, i - MEANT_S), i + MEANT_S + 1);
    return mean(around);
  });
}

/** Pearson's product-moment correlation; −1 where one of the two never changes. */
function correlation(a: readonly number[], b: readonly number[]): number {
  const [meanA, meanB] = [mean(a), mean(b)];
  let ab = 0;
  let aa = 0;
  let bb = 0;
  for (const [i, x] of a.entries()) {
    const [offA, offB] = [x - meanA, (b[i] as number) - meanB];
    ab += offA * offB;
    aa += offA * offA;
    bb += offB * offB;
  }
  return aa * bb > 0 ? ab / Math.sqrt(aa * bb) : -1;
}

/**
 * The road with its heights moved back by a lag: the height of a place is the one written down so many seconds after it
 * was passed. Where nothing was recorded for a while, heights stay as they are.
 */
export function roadInTime(road: Road, seconds: readonly RoadSecond[], lagS: number): Road {
  if (lagS === 0) return road;
  const { stepM, rawHeightsM } = road.profile;
  const raw = Float64Array.from(laterPlacesM(road, seconds, lagS), (placeM) =>
    sampleAt(rawHeightsM, placeM / stepM),
  );
  return { ...road, profile: smoothProfile(raw, cleanHeights(raw).samples, road.halfWidthM) };
}

/** For each sample of the road where the ride was a lag later (m). */
function laterPlacesM(road: Road, seconds: readonly RoadSecond[], lagS: number): number[] {
  const { stepM, rawHeightsM } = road.profile;
  const lastM = (rawHeightsM.length - 1) * stepM;
  let k = 0;
  return rawHeightsM.map((_, sample) => {
    const placeM = sample * stepM;
    while (k + 1 < seconds.length && (seconds[k + 1] as RoadSecond).distanceM <= placeM) k += 1;
    const here = seconds[k];
    const later = seconds[k + lagS];
    if (here === undefined || later === undefined || later.timeS - here.timeS !== lagS) return placeM;
    return clamp(placeM + later.distanceM - here.distanceM, 0, lastM);
  });
}
