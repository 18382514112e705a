/**
 * A ride as a thin line over the road: cadence and gear every few metres, and where the shifts were made.
 * Small enough that ten thousand of them fit in memory; made while a ride is marked, never kept in files.
 */
import { shiftsOf } from '../../coach/shifts.ts';
import type { RideTrace } from '../../ride/trace.ts';

/** Places along a line at most; longer roads get wider steps. */
const MOST_PLACES = 512;
const SHORTEST_STEP_M = 2;
/** Development is kept in sixteenths of a metre, so that a byte holds 15.9 m. */
const DEVELOPMENT_PARTS = 16;
const MOST_SHIFTS = 2_000;

/** One ride. Entry `i` of the series belongs to `i * stepM`. */
export interface RideLine {
  readonly stepM: number;
  /** Whole rpm; 0 where the cranks stood still or the ride never came. */
  readonly cadenceRpm: Uint8Array;
  /** Development of the gear in sixteenths of a metre; 0 where the ride never came. */
  readonly development: Uint8Array;
  /** Where shifts began, in whole metres, in riding order. */
  readonly easierAtM: Uint16Array;
  readonly harderAtM: Uint16Array;
}

/** Metres between two places of the lines over a road of this length. */
function lineStepM(lengthM: number): number {
  return Math.max(SHORTEST_STEP_M, Math.ceil(lengthM / (MOST_PLACES - 1)));
}

export function lineOf(trace: RideTrace, lengthM: number): RideLine {
  const stepM = lineStepM(lengthM);
  const places = Math.floor(lengthM / stepM) + 1;
  const cadenceRpm = new Uint8Array(places);
  const development = new Uint8Array(places);
  const { samples } = trace;
  let at = 0;
  for (let i = 0; i < places; i += 1) {
    while (at < samples.length && (samples[at]?.distanceM ?? 0) < i * stepM) at += 1;
    const sample = samples[at];
    if (sample === undefined) break;
    cadenceRpm[i] = sample.pedalling ? Math.min(255, Math.round(sample.cadenceRpm)) : 0;
    development[i] = Math.min(255, Math.round(sample.developmentM * DEVELOPMENT_PARTS));
  }
  const shifts = shiftsOf(trace).slice(0, MOST_SHIFTS);
  const begun = (direction: 'easier' | 'harder'): Uint16Array =>
    Uint16Array.from(
      shifts.filter((shift) => shift.direction === direction),
      (shift) => Math.max(0, Math.round(shift.startedAtM)),
    );
  return { stepM, cadenceRpm, development, easierAtM: begun('easier'), harderAtM: begun('harder') };
}
