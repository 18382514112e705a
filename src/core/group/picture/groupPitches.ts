/**
 * The pitches of one road as a group took them: how many took each too early or too late, and where the gear for it was
 * in against the reference. Needs only the digests that every record has; that gear is read from lines, where there are
 * any. What there is to say about the road as a whole is `verdict.ts`.
 */
import { ABOUT_RIGHT_CREDIT } from '../../coach/pitchLimits.ts';
import { type GroupRide, personOf } from './groupRide.ts';
import type { RoadReference } from '../records/remark.ts';
import { spreadOf } from './spread.ts';
import { readyBeforeFootM, takenOf } from './taken.ts';

/** Below this credit a pitch has caught its rider (%); the same limit as for "too late" in a debrief. */
export const CAUGHT_BELOW_PERCENT = 100 * ABOUT_RIGHT_CREDIT;

/** One pitch. Places are null where no ride was ridden again. */
export type GroupPitch = Readonly<ReturnType<typeof pitchPicture>>;

export function pitchPictures(rides: readonly GroupRide[], reference: RoadReference | null): GroupPitch[] {
  const count = rides.reduce((most, ride) => Math.max(most, ride.record.pitches.length), 0);
  return Array.from({ length: count }, (_, index) => pitchPicture(rides, index, reference));
}

function pitchPicture(rides: readonly GroupRide[], index: number, reference: RoadReference | null) {
  const riders = new Set<string>();
  const early = new Set<string>();
  const late = new Set<string>();
  const credits: number[] = [];
  const timing = { tooEarly: 0, aboutRight: 0, tooLate: 0 };
  const asked = rides.flatMap((ride) => {
    const pitch = ride.record.pitches[index];
    return pitch === undefined || pitch.creditPercent === null ? [] : [{ ...ride, pitch }];
  });
  for (const { record, pitch } of asked) {
    const taken = takenOf(pitch, CAUGHT_BELOW_PERCENT) ?? 'aboutRight';
    const person = personOf(record);
    riders.add(person);
    credits.push(pitch.creditPercent ?? 0);
    timing[taken] += 1;
    if (taken === 'tooEarly') early.add(person);
    if (taken === 'tooLate') late.add(person);
  }
  const place = reference?.pitches[index];
  return {
    index,
    footM: place?.footM ?? null,
    endM: place?.endM ?? null,
    steepestRatio: place?.steepestRatio ?? null,
    /** Rides for which it asked something, and different riders among them. */
    rides: credits.length,
    riders: riders.size,
    /** Rides. */
    timing,
    /** Different riders who took it so at least once. */
    earlyRiders: early.size,
    lateRiders: late.size,
    eitherRiders: new Set([...early, ...late]).size,
    credit: spreadOf(credits),
    ...readiness(asked, index, reference),
  };
}

/** Where the gear for a pitch was in. */
function readiness(rides: readonly GroupRide[], index: number, best: RoadReference | null) {
  const places = rides.flatMap(({ line, reference }) =>
    line === null || reference === null
      ? []
      : [{ at: readyBeforeFootM(line, reference, index), pitch: reference.pitches[index] }],
  );
  const end = (pitch: RoadReference['pitches'][number] | undefined): number =>
    (pitch?.footM ?? 0) - (pitch?.endM ?? 0);
  return {
    /**
     * Metres before the foot at which the gear for it was in, shifts finished; only of rides that were ridden again. Who
     * never had it counts at the end of the way, and is counted beside.
     */
    readyBeforeFootM: spreadOf(places.map(({ at, pitch }) => at ?? end(pitch))),
    neverReady: places.filter(({ at }) => at === null).length,
    referenceReadyBeforeFootM: best === null ? null : readyBeforeFootM(best.line, best, index),
  };
}
