/**
 * Six rides people really rode, read where they lie beside the repository: four road rides recorded second by second
 * (scikit-learn MOOC, Inria, CC BY 4.0) and two from test data of open libraries (MIT). They are no part of the
 * repository; without them the checks that need them are skipped and say so.
 */
import { existsSync, readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import type { Course } from '../../src/core/course/types.ts';
import { heightLagS } from '../../src/core/recorded/lateHeights.ts';
import { literalCourse } from '../core/ride/worlds.ts';

export const FOLDER = fileURLToPath(new URL('../../../shared/data/rides/', import.meta.url));
const FOUR = `${FOLDER}rides_road_4x.csv`;
const SINGLE = ['ride_hills_27km', 'ride_rolling_67km'] as const;
export const REASON = 'the open rides are not beside the repository (../shared/data/rides)';
export const RIDES_HERE = existsSync(FOUR) && SINGLE.every((name) => existsSync(`${FOLDER}${name}.csv`));

/** A second of a ride. */
export interface Second {
  readonly timeS: number;
  readonly speedMps: number;
  readonly gradientPercent: number;
  /** 0 while coasting. */
  readonly cadenceRpm: number;
  readonly powerW: number;
}

/** A climb of at least 4 %, found in a ride. */
export interface OpenPitch {
  readonly ride: string;
  readonly wayM: number;
  /** Seconds of the ride it lies in, from its foot to its end. */
  readonly from: number;
  readonly to: number;
  /** Mean power on it over mean power on the flat parts of the same ride. */
  readonly powerRatio: number;
  /** Mean cadence of the pedalled seconds around its foot, and the least of five pedalled seconds in a row. */
  readonly footRpm: number;
  readonly leastRpm: number;
  readonly slowestMps: number;
}

function rows(file: string): number[][] {
  const [, ...lines] = readFileSync(file, 'utf8').trim().split('\n');
  return lines.map((line) => line.split(',').map(Number));
}

/** All rides by name. */
export function openRides(): ReadonlyMap<string, readonly Second[]> {
  const out = new Map<string, Second[]>();
  for (const [ride, timeS, speedMps, , gradientPercent, cadenceRpm, powerW] of rows(FOUR)) {
    const name = `road_${ride}`;
    const seconds = out.get(name) ?? [];
    seconds.push({ timeS, speedMps, gradientPercent, cadenceRpm, powerW } as Second);
    out.set(name, seconds);
  }
  for (const name of SINGLE)
    out.set(
      name,
      rows(`${FOLDER}${name}.csv`).map(
        ([timeS, , speedMps, , , gradientPercent, cadenceRpm, powerW]) =>
          ({ timeS, speedMps, gradientPercent, cadenceRpm, powerW }) as Second,
      ),
    );
  return out;
}

export function mean(values: readonly number[]): number {
  return values.reduce((sum, value) => sum + value, 0) / values.length;
}

/** The value below which a share of the others lies. */
export function quantile(values: readonly number[], share: number): number {
  const sorted = [...values].sort((a, b) => a - b);
  return sorted[Math.min(sorted.length - 1, Math.floor(share * sorted.length))] ?? NaN;
}

/** Gradients (%) without the spikes of single seconds (one says 981 %): medians of so many seconds on either side. */
export function smoothGradients(seconds: readonly Second[], sideS = 3): readonly number[] {
  return seconds.map((_, i) =>
    quantile(
      seconds.slice(Math.max(0, i - sideS), i + sideS + 1).map((s) => s.gradientPercent),
      0.5,
    ),
  );
}

/** How many seconds the recorded gradients lag behind the hill the legs met; every one of these rides has power to tell. */
export function gradientLagS(seconds: readonly Second[]): number {
  const gradients = smoothGradients(seconds);
  const lagS = heightLagS(
    seconds.map(({ timeS, speedMps, powerW }, i) => ({
      timeS,
      speedMps,
      powerW,
      slopeRatio: (gradients[i] ?? 0) / 100,
    })),
  );
  if (lagS === null) throw new Error('power does not tell when the gradients came');
  return lagS;
}

/** The same ride with its gradients where the legs met them. */
export function withGradientsInTime(seconds: readonly Second[]): readonly Second[] {
  return withGradientsMoved(seconds, -gradientLagS(seconds));
}

/** The same ride as if its heights came so much later (s): what is climbed is written down over the way ridden by then. */
export function withGradientsMoved(seconds: readonly Second[], laterS: number): readonly Second[] {
  return seconds.map((second, i) => {
    const from = seconds[i - laterS];
    if (from === undefined || second.speedMps <= 0) return second;
    return { ...second, gradientPercent: (from.gradientPercent * from.speedMps) / second.speedMps };
  });
}

/** Mean power and crank torque of the pedalled seconds on the flat (within 1 %). */
export function flatLegs(seconds: readonly Second[]): { readonly powerW: number; readonly torqueNm: number } {
  const flat = seconds.filter(
    (s) => Math.abs(s.gradientPercent) < 1 && s.cadenceRpm > 0 && s.powerW > 0 && s.speedMps > 2,
  );
  return {
    powerW: mean(flat.map((s) => s.powerW)),
    torqueNm: mean(flat.map((s) => torqueNm(s))),
  };
}

/** Mean crank torque of a pedalled second (N m). */
export function torqueNm(second: Second): number {
  return (second.powerW * 30) / (second.cadenceRpm * Math.PI);
}

/** Pitches of a ride: from 4 % until it falls under 3 %, at least 60 m and 8 s, ridden without a stop. */
export function openPitches(ride: string, seconds: readonly Second[]): readonly OpenPitch[] {
  const gradients = smoothGradients(seconds);
  const flat = flatLegs(seconds);
  const out: OpenPitch[] = [];
  for (let from = 0; from < seconds.length; from += 1) {
    if ((gradients[from] ?? 0) < 4) continue;
    let to = from;
    while (to < seconds.length && (gradients[to] ?? 0) >= 3) to += 1;
    const on = seconds.slice(from, to);
    const wayM = on.reduce((sum, s) => sum + s.speedMps, 0);
    const slowestMps = Math.min(...on.map((s) => s.speedMps));
    const foot = seconds.slice(Math.max(0, from - 3), from + 3).filter((s) => s.cadenceRpm > 0);
    const unbroken = (seconds[to - 1]?.timeS ?? 0) - (on[0]?.timeS ?? 0) < on.length + 2;
    if (wayM >= 60 && on.length >= 8 && slowestMps > 0.5 && foot.length > 0 && unbroken) {
      out.push({
        ride,
        wayM,
        from,
        to,
        powerRatio: mean(on.map((s) => s.powerW)) / flat.powerW,
        footRpm: mean(foot.map((s) => s.cadenceRpm)),
        leastRpm: leastOfFive(on),
        slowestMps,
      });
    }
    from = to;
  }
  return out;
}

/** The least mean cadence of five seconds in a row that are all pedalled (rpm). */
function leastOfFive(seconds: readonly Second[]): number {
  let least = Infinity;
  for (let i = 0; i + 5 <= seconds.length; i += 1) {
    const part = seconds.slice(i, i + 5);
    if (part.every((s) => s.cadenceRpm > 0)) least = Math.min(least, mean(part.map((s) => s.cadenceRpm)));
  }
  return least;
}

/** The road of a pitch as recorded, with the seconds before it, as a course; the foot lies `footM` from its start. */
export function roadOfPitch(
  seconds: readonly Second[],
  pitch: OpenPitch,
  beforeS: number,
): { readonly course: Course; readonly footM: number } {
  // A road is slower to turn than a recorder: means of fifteen seconds, as single ones make climbs look too strong.
  const gradients = smoothGradients(seconds, 7);
  const slopes: number[] = [];
  let wayM = 0;
  let footM = 0;
  for (let i = Math.max(0, pitch.from - beforeS); i < Math.min(seconds.length, pitch.to + 5); i += 1) {
    if (i === pitch.from) footM = wayM;
    wayM += seconds[i]?.speedMps ?? 0;
    while (slopes.length <= wayM) slopes.push((gradients[i] ?? 0) / 100);
  }
  return { course: literalCourse(slopes.length - 1, (m) => slopes[m] ?? 0), footM };
}

/** A change to an easier gear seen in a ride: development steady, then falling, then steady again. */
export interface OpenShift {
  /** Seconds between the last in the old gear and the first in the new one; a reading a second blurs it by two. */
  readonly tookS: number;
  /** Mean crank torque meanwhile over that on the flat. */
  readonly load: number;
}

/** Changes to an easier gear while the pedals turn all along, by 5 to 40 % and within ten seconds. */
export function openEasierShifts(seconds: readonly Second[]): readonly OpenShift[] {
  const flat = flatLegs(seconds);
  const developmentM = seconds.map((s) => (s.cadenceRpm > 30 ? (60 * s.speedMps) / s.cadenceRpm : NaN));
  const out: OpenShift[] = [];
  let plateau = NaN;
  let lastOn = -1;
  for (let i = 0; i + 3 <= seconds.length; i += 1) {
    const three = developmentM.slice(i, i + 3);
    const level = mean(three);
    if (!three.every((d) => Math.abs(d / level - 1) < 0.02)) continue;
    const between = seconds.slice(lastOn + 1, i);
    const ratio = level / plateau;
    const pedalled = seconds
      .slice(Math.max(0, lastOn), i + 1)
      .every((s) => s.cadenceRpm > 30 && s.powerW > 0);
    if (ratio < 0.95 && ratio > 0.6 && between.length > 0 && between.length <= 10 && pedalled)
      out.push({ tookS: between.length + 1, load: mean(between.map(torqueNm)) / flat.torqueNm });
    plateau = level;
    lastOn = i + 2;
  }
  return out;
}
