/**
 * Puts what somebody really rode on a road beside the reference ride over the same road: the place where the two
 * differ most in cadence while climbing. Codes and numbers; the sentence is found by the shells.
 */
import type { RecordedSample } from '../gpx/recorded.ts';
import { mean } from '../math/numbers.ts';
import { placeOf, samePlace } from '../model/transmission.ts';
import type { GearPlace } from '../model/types.ts';
import type { TraceSample } from '../ride/trace.ts';

/** Means of both rides over one stretch. */
type RecordedComparison = NonNullable<ReturnType<typeof compareWindow>>;

/** Length over which the two are compared (m). */
const WINDOW_M = 100;
const STEP_M = 50;
/** A stretch counts as climbing from here on (rise over run). */
const CLIMB_RATIO = 0.02;

/**
 * Compares, or answers null where the two rides share no stretch.
 * @param heightM height at a distance from the start of both rides (m)
 */
export function compareRecorded(
  recorded: readonly RecordedSample[],
  reference: readonly TraceSample[],
  heightM: (distanceM: number) => number,
): RecordedComparison | null {
  const endM = Math.min(recorded.at(-1)?.distanceM ?? 0, reference.at(-1)?.distanceM ?? 0);
  const windows: RecordedComparison[] = [];
  for (let fromM = recorded[0]?.distanceM ?? 0; fromM + WINDOW_M <= endM; fromM += STEP_M) {
    const one = compareWindow(recorded, reference, fromM, heightM);
    if (one !== null) windows.push(one);
  }
  const climbing = windows.filter((one) => one.slopeRatio >= CLIMB_RATIO);
  return largest(climbing.length > 0 ? climbing : windows);
}

/** How long both rides took for the road they share (s), and what road that is (m from the start); null where there is none. */
export function timesOfBoth(recorded: readonly RecordedSample[], reference: readonly TraceSample[]) {
  const fromM = Math.max(recorded[0]?.distanceM ?? 0, reference[0]?.distanceM ?? 0);
  const toM = Math.min(recorded.at(-1)?.distanceM ?? 0, reference.at(-1)?.distanceM ?? 0);
  const took = (samples: readonly Pick<TraceSample, 'distanceM' | 'timeS'>[]): number => {
    const shared = samples.filter(({ distanceM }) => distanceM >= fromM && distanceM <= toM);
    return (shared.at(-1)?.timeS ?? 0) - (shared[0]?.timeS ?? 0);
  };
  const [recordedS, referenceS] = [took(recorded), took(reference)];
  return recordedS > 0 && referenceS > 0 ? { fromM, toM, recordedS, referenceS } : null;
}

function compareWindow(
  recorded: readonly RecordedSample[],
  reference: readonly TraceSample[],
  fromM: number,
  heightM: (distanceM: number) => number,
) {
  const toM = fromM + WINDOW_M;
  const within = (one: { readonly distanceM: number }): boolean =>
    one.distanceM >= fromM && one.distanceM < toM;
  const mine = recorded.filter(within);
  const best = reference.filter(within);
  const turning = best.filter((one) => one.pedalling);
  const gear = usualGear(turning);
  if (mine.length === 0 || gear === null) return null;
  const cadences = mine.flatMap(({ cadenceRpm }) =>
    cadenceRpm !== null && cadenceRpm > 0 ? [cadenceRpm] : [],
  );
  return {
    fromM,
    toM,
    /** Mean slope of the stretch (rise over run). */
    slopeRatio: (heightM(toM) - heightM(fromM)) / WINDOW_M,
    recordedSpeedMps: mean(mine.map((one) => one.speedMps)),
    /** Null where no cadence was recorded. */
    recordedCadenceRpm: cadences.length === 0 ? null : mean(cadences),
    referenceSpeedMps: mean(best.map((one) => one.speedMps)),
    referenceCadenceRpm: mean(turning.map((one) => one.cadenceRpm)),
    /** The gear the reference ride was in for most of the stretch. */
    gear,
  };
}

function usualGear(samples: readonly TraceSample[]): GearPlace | null {
  const counts: { count: number; readonly place: GearPlace }[] = [];
  for (const sample of samples) {
    const known = counts.find(({ place }) => samePlace(place, sample));
    if (known === undefined) counts.push({ count: 1, place: placeOf(sample) });
    else known.count += 1;
  }
  let most: { readonly count: number; readonly place: GearPlace } | null = null;
  for (const one of counts) if (most === null || one.count > most.count) most = one;
  return most?.place ?? null;
}

/** By cadence where both are known, else by slope. */
function largest(windows: readonly RecordedComparison[]): RecordedComparison | null {
  const counted = windows.filter((one) => one.recordedCadenceRpm !== null);
  const worth = (one: RecordedComparison): number =>
    counted.length > 0
      ? Math.abs((one.recordedCadenceRpm ?? one.referenceCadenceRpm) - one.referenceCadenceRpm)
      : one.slopeRatio;
  return windows.reduce<RecordedComparison | null>(
    (best, one) => (best === null || worth(one) > worth(best) ? one : best),
    null,
  );
}
