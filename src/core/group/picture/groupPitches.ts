/**
 * The pitches of one road as a group took them: who of all was caught, how the timing was shared out, and
 * where the first easier shifts lay against the reference. Needs only the digests that every record has.
 */
import { type GroupRide, personOf, type TimingShares } from './groupRide.ts';
import type { PitchDigest } from '../records/record.ts';
import type { RoadReference } from '../records/remark.ts';
import { type Spread, spreadOf } from './spread.ts';

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
  readonly timing: TimingShares;
  readonly credit: Spread | null;
  /** Metres before the foot of the first easier shift; rides without one are counted beside. */
  readonly firstShiftBeforeFootM: Spread | null;
  readonly withoutShift: number;
  readonly referenceFirstShiftBeforeFootM: number | null;
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
  const credits: number[] = [];
  const firstShifts: number[] = [];
  const timing = { tooEarly: 0, aboutRight: 0, tooLate: 0 };
  let caughtRides = 0;
  for (const { record } of rides) {
    const pitch = record.pitches[index];
    if (pitch === undefined || pitch.creditPercent === null) continue;
    const person = personOf(record);
    riders.add(person);
    credits.push(pitch.creditPercent);
    if (pitch.firstShiftBeforeFootM !== null) firstShifts.push(pitch.firstShiftBeforeFootM);
    countTiming(timing, pitch);
    if (pitch.creditPercent < CAUGHT_BELOW_PERCENT) {
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
    credit: spreadOf(credits),
    firstShiftBeforeFootM: spreadOf(firstShifts),
    withoutShift: credits.length - firstShifts.length,
    referenceFirstShiftBeforeFootM: place?.firstShiftBeforeFootM ?? null,
  };
}

function countTiming(
  timing: { tooEarly: number; aboutRight: number; tooLate: number },
  pitch: PitchDigest,
): void {
  if (pitch.timing === 'too-early') timing.tooEarly += 1;
  else if (pitch.timing === 'too-late') timing.tooLate += 1;
  else timing.aboutRight += 1;
}
