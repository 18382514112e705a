/**
 * The pitches of one road as a group took them: who of all was caught, how the timing was shared out, and
 * where the first easier shifts lay against the reference. Needs only the digests that every record has.
 */
import { type GroupRide, personOf, type TimingShares } from './groupRide.ts';
import type { RoadReference } from '../records/remark.ts';
import { type Spread, spreadOf } from './spread.ts';
import { readyBeforeFootM, takenOf } from './taken.ts';

/** Below this credit a pitch has caught its rider (%); the same limit as for "too late" in a debrief. */
export const CAUGHT_BELOW_PERCENT = 70;

/** One pitch. Places are null where no ride was ridden again. */
export interface GroupPitch {
  readonly index: number;
  readonly footM: number | null;
  readonly endM: number | null;
  readonly steepestRatio: number | null;
  /** Rides for which it asked something, and different riders among them. */
  readonly rides: number;
  readonly riders: number;
  /** Different riders it caught at least once, and rides. */
  readonly caughtRiders: number;
  readonly caughtRides: number;
  /** Rides. */
  readonly timing: TimingShares;
  /** Different riders who took it so at least once. */
  readonly earlyRiders: number;
  readonly lateRiders: number;
  readonly eitherRiders: number;
  readonly credit: Spread | null;
  /** Metres before the foot of the first easier shift; rides without one are counted beside. */
  readonly firstShiftBeforeFootM: Spread | null;
  readonly withoutShift: number;
  readonly referenceFirstShiftBeforeFootM: number | null;
  /**
   * Metres before the foot at which the gear for it was in, shifts finished; only of rides that were ridden again. Who
   * never had it counts at the end of the way, and is counted beside.
   */
  readonly readyBeforeFootM: Spread | null;
  readonly neverReady: number;
  readonly referenceReadyBeforeFootM: number | null;
}

/** Pictures of all pitches of a road. */
export function pitchPictures(rides: readonly GroupRide[], reference: RoadReference | null): GroupPitch[] {
  const count = rides.reduce((most, ride) => Math.max(most, ride.record.pitches.length), 0);
  return Array.from({ length: count }, (_, index) => pitchPicture(rides, index, reference));
}

/** The pitch that caught most riders; of equals the one with more rides, then the lower credit, then the first. */
export function caughtPitch(pitches: readonly GroupPitch[]): number | null {
  const caught = pitches.filter((pitch) => pitch.caughtRiders > 0);
  const [worst] = [...caught].sort(
    (a, b) =>
      b.caughtRiders - a.caughtRiders ||
      b.caughtRides - a.caughtRides ||
      (a.credit?.middle ?? 0) - (b.credit?.middle ?? 0) ||
      a.index - b.index,
  );
  return worst?.index ?? null;
}

function pitchPicture(
  rides: readonly GroupRide[],
  index: number,
  reference: RoadReference | null,
): GroupPitch {
  const riders = new Set<string>();
  const caughtRiders = new Set<string>();
  const early = new Set<string>();
  const late = new Set<string>();
  const credits: number[] = [];
  const firstShifts: number[] = [];
  const timing = { tooEarly: 0, aboutRight: 0, tooLate: 0 };
  let caughtRides = 0;
  const asked = rides.flatMap((ride) => {
    const pitch = ride.record.pitches[index];
    return pitch === undefined || pitch.creditPercent === null ? [] : [{ ...ride, pitch }];
  });
  for (const { record, pitch } of asked) {
    const credit = pitch.creditPercent ?? 0;
    const taken = takenOf(pitch, CAUGHT_BELOW_PERCENT) ?? 'aboutRight';
    const person = personOf(record);
    riders.add(person);
    credits.push(credit);
    if (pitch.firstShiftBeforeFootM !== null) firstShifts.push(pitch.firstShiftBeforeFootM);
    timing[taken] += 1;
    if (taken === 'tooEarly') early.add(person);
    if (taken === 'tooLate') late.add(person);
    if (credit < CAUGHT_BELOW_PERCENT) {
      caughtRides += 1;
      caughtRiders.add(person);
    }
  }
  const place = reference?.pitches[index];
  return {
    index,
    footM: place?.footM ?? null,
    endM: place?.endM ?? null,
    steepestRatio: place?.steepestRatio ?? null,
    rides: credits.length,
    riders: riders.size,
    caughtRiders: caughtRiders.size,
    caughtRides,
    timing,
    earlyRiders: early.size,
    lateRiders: late.size,
    eitherRiders: new Set([...early, ...late]).size,
    credit: spreadOf(credits),
    firstShiftBeforeFootM: spreadOf(firstShifts),
    withoutShift: credits.length - firstShifts.length,
    referenceFirstShiftBeforeFootM: place?.firstShiftBeforeFootM ?? null,
    ...readiness(asked, index, reference),
  };
}

/** Where the gear for a pitch was in. */
function readiness(
  rides: readonly GroupRide[],
  index: number,
  best: RoadReference | null,
): Pick<GroupPitch, 'readyBeforeFootM' | 'neverReady' | 'referenceReadyBeforeFootM'> {
  const places = rides.flatMap(({ line, reference }) =>
    line === null || reference === null
      ? []
      : [{ at: readyBeforeFootM(line, reference, index), pitch: reference.pitches[index] }],
  );
  const end = (pitch: RoadReference['pitches'][number] | undefined): number =>
    (pitch?.footM ?? 0) - (pitch?.endM ?? 0);
  return {
    readyBeforeFootM: spreadOf(places.map(({ at, pitch }) => at ?? end(pitch))),
    neverReady: places.filter(({ at }) => at === null).length,
    referenceReadyBeforeFootM: best === null ? null : readyBeforeFootM(best.line, best, index),
  };
}
