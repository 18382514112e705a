/**
 * A ride on a real road, second by second: how far, how fast, how quickly the legs turned, how hard they pushed and how steep it was. Made of
 * a road that was read from a file; a second between points that lie too far apart is left out, never made up.
 */
import { timedPoints } from '../gpx/lists.ts';
import type { Road } from '../gpx/road.ts';

export interface RoadSecond {
  /** Whole seconds since the start; jumps where nothing was recorded. */
  readonly timeS: number;
  readonly distanceM: number;
  readonly speedMps: number;
  /** 0 while the legs rest, null where it was not recorded. */
  readonly cadenceRpm: number | null;
  /** Power at the pedals, null where it was not recorded (W). */
  readonly powerW: number | null;
  /** Rise over run of the road here. */
  readonly slopeRatio: number;
}

/** Points further apart than this are not joined (s). */
const LONGEST_STEP_S = 3;

interface TimedPoint extends Pick<RoadSecond, 'timeS' | 'cadenceRpm' | 'powerW'> {
  readonly atM: number;
}

/** The seconds of a ride, or null where the file does not say when it was ridden. */
export function secondsOf(road: Pick<Road, 'recorded' | 'profile'>): RoadSecond[] | null {
  const points = ridePoints(road.recorded);
  const first = points?.[0];
  if (points === null || first === undefined || points.length < 3) return null;
  const seconds: Omit<RoadSecond, 'speedMps'>[] = [];
  let k = 0;
  const lastS = (points.at(-1) as TimedPoint).timeS;
  for (let timeS = Math.ceil(first.timeS); timeS <= lastS; timeS += 1) {
    while (k + 2 < points.length && (points[k + 1] as TimedPoint).timeS <= timeS) k += 1;
    const a = points[k] as TimedPoint;
    const b = points[k + 1] as TimedPoint;
    const spanS = b.timeS - a.timeS;
    if (spanS > LONGEST_STEP_S) {
      timeS = Math.max(timeS, Math.floor(b.timeS) - 1);
      continue;
    }
    const t = (timeS - a.timeS) / spanS;
    const distanceM = a.atM + (b.atM - a.atM) * t;
    const { cadenceRpm, powerW } = t < 0.5 ? a : b;
    seconds.push({ timeS, distanceM, cadenceRpm, powerW, slopeRatio: slopeAt(road.profile, distanceM) });
  }
  return withSpeeds(seconds);
}

export function follows(before: RoadSecond | undefined, after: RoadSecond | undefined): boolean {
  return before !== undefined && after !== undefined && after.timeS - before.timeS === 1;
}

/** Speeds over a second on either side, as positions of single seconds scatter. */
function withSpeeds(seconds: readonly Omit<RoadSecond, 'speedMps'>[]): RoadSecond[] {
  return seconds.map((second, i) => {
    const before = seconds[i - 1];
    const after = seconds[i + 1];
    const from = before !== undefined && second.timeS - before.timeS === 1 ? before : second;
    const to = after !== undefined && after.timeS - second.timeS === 1 ? after : second;
    const spanS = to.timeS - from.timeS;
    return { ...second, speedMps: spanS === 0 ? 0 : (to.distanceM - from.distanceM) / spanS };
  });
}

function ridePoints({ atM, timeS, cadenceRpm, powerW }: Road['recorded']): TimedPoint[] | null {
  const timed = timedPoints(timeS);
  if (timed === null) return null;
  return timed.map((i) => {
    const known = (column: readonly number[]): number | null => {
      const value = column[i] ?? Number.NaN;
      return Number.isNaN(value) ? null : value;
    };
    return {
      timeS: timeS[i] as number,
      atM: atM[i] ?? 0,
      cadenceRpm: known(cadenceRpm),
      powerW: known(powerW),
    };
  });
}

function slopeAt({ stepM, slopesRatio }: Road['profile'], distanceM: number): number {
  const at = Math.min(Math.max(0, distanceM / stepM), slopesRatio.length - 1);
  const i = Math.min(Math.floor(at), slopesRatio.length - 2);
  const a = slopesRatio[Math.max(0, i)] ?? 0;
  const b = slopesRatio[i + 1] ?? a;
  return a + (b - a) * (at - Math.max(0, i));
}
