/**
 * What the rider of the file did on a stretch, for comparison with a ride in the game: speed, and cadence where it
 * was recorded. Kept apart from the level on purpose; a level never carries it.
 */
import { GRID_M } from './grid.ts';
import { timedPoints } from './lists.ts';
import type { Road } from './road.ts';
import type { RoadStretch } from './types.ts';

/** One sample; distances count from the start of the stretch. */
export interface RecordedSample {
  readonly distanceM: number;
  /** Seconds since the start of the stretch. */
  readonly timeS: number;
  /** Mean speed since the sample before, stops included (m/s). */
  readonly speedMps: number;
  /** Null where no cadence was recorded. */
  readonly cadenceRpm: number | null;
}

/** Samples every 10 m, or null if the file does not say when it was ridden (or its times are in disorder). */
export function recordedRide(road: Pick<Road, 'recorded'>, stretch: RoadStretch): RecordedSample[] | null {
  const { atM, timeS, cadenceRpm } = road.recorded;
  const timed = timedPoints(timeS);
  const first = timed?.[0];
  const last = timed?.at(-1);
  if (timed === null || first === undefined || last === undefined) return null;
  const startM = Math.max(stretch.fromM, atM[first] as number);
  const endM = Math.min(stretch.toM, atM[last] as number);
  const samples: RecordedSample[] = [];
  let k = 0;
  let startS = 0;
  for (let x = startM; x <= endM; x += GRID_M) {
    while (k + 2 < timed.length && (atM[timed[k + 1] as number] as number) < x) k += 1;
    const [a, b] = [timed[k] as number, timed[Math.min(k + 1, timed.length - 1)] as number];
    const spanM = (atM[b] as number) - (atM[a] as number);
    const t = spanM > 0 ? (x - (atM[a] as number)) / spanM : 0;
    const atS = (timeS[a] as number) + ((timeS[b] as number) - (timeS[a] as number)) * t;
    if (samples.length === 0) startS = atS;
    const before = samples.at(-1);
    const cadence = (t < 0.5 ? cadenceRpm[a] : cadenceRpm[b]) ?? Number.NaN;
    samples.push({
      distanceM: x - stretch.fromM,
      timeS: atS - startS,
      speedMps: before === undefined ? 0 : GRID_M / (atS - startS - before.timeS),
      cadenceRpm: Number.isNaN(cadence) ? null : cadence,
    });
  }
  const second = samples[1];
  const [head, ...rest] = samples;
  if (head === undefined || second === undefined) return null;
  return [{ ...head, speedMps: second.speedMps }, ...rest];
}
