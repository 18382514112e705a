/**
 * Rides the rides of a group again, each once: the answers are kept, for the list of rides that count nowhere and for the
 * group picture, in which all are laid over each other. Rides of this device are only drawn; their marks were made here.
 */
import { type GroupPicture, groupPicture } from '../core/group/picture/group.ts';
import { groupRideOf } from '../core/group/picture/groupRide.ts';
import type { ClinicPlan } from '../core/group/plan.ts';
import type { RideRecord } from '../core/group/records/record.ts';
import { createRemarker, type Remark, type Remarker } from '../core/group/records/remark.ts';
import { levelOfRide } from '../core/group/turn.ts';
import type { Level } from '../core/level/schema.ts';
import type { Method } from './rpc.ts';

/** Rides of one session. */
interface RidesOfPlan {
  readonly plan: ClinicPlan;
  /** Levels that come with the game. */
  readonly levels: readonly Level[];
  readonly rides: readonly RideOfPlan[];
}

/** One ride, and whether it was ridden on this device. */
export interface RideOfPlan {
  readonly record: RideRecord;
  readonly own: boolean;
}

export interface GroupCount {
  readonly picture: GroupPicture;
  /** Checksums of rides that were left out, because they did not come out as their marks say. */
  readonly apart: readonly string[];
}

/** Rides between two pauses. */
const RIDES_AT_ONCE = 4;

/** A service that keeps what it found of the session it was asked about last. */
export function createVerifier() {
  let planId: string | null = null;
  let remarker: Remarker | null = null;
  const found = new Map<string, Remark>();

  const remarkerFor = ({ plan, levels }: RidesOfPlan): Remarker => {
    if (remarker !== null && planId === plan.id) return remarker;
    planId = plan.id;
    found.clear();
    remarker = createRemarker((record) => {
      const ride = plan.rides[record.rideIndex];
      const byId = (id: string): Level | undefined => levels.find((level) => level.id === id);
      return ride === undefined ? undefined : (levelOfRide(ride, record.seed, byId) ?? undefined);
    });
    return remarker;
  };
  const remark = (marker: Remarker, { record, own }: RideOfPlan): Remark => {
    const { id, checksum, total } = record;
    const key = JSON.stringify([id, checksum, total, record.recording !== null, own]);
    const answer = found.get(key) ?? marker.remark(record, own);
    // A level that is not here now may be here later.
    if (answer.kind === 'same' || answer.code !== 'unknown-level') found.set(key, answer);
    return answer;
  };

  /** What came of each ride, in their order. */
  const verify: Method<RidesOfPlan, never, readonly Remark[]> = async (asked, call) => {
    const remarks: Remark[] = [];
    for (const [i, ride] of asked.rides.entries()) {
      if (i % RIDES_AT_ONCE === 0) await call.pause();
      // Somebody may have asked about another session meanwhile.
      remarks.push(remark(remarkerFor(asked), ride));
    }
    return remarks;
  };
  const picture: Method<RidesOfPlan, never, GroupCount> = async (asked, call) => {
    const rides = (await verify(asked, call)).map((one) => ({ ...one.record, ride: groupRideOf(one) }));
    return {
      picture: groupPicture(rides.flatMap(({ ride }) => ride ?? [])),
      apart: rides.filter(({ ride }) => ride === null).map(({ checksum }) => checksum),
    };
  };
  return { verify, picture };
}
export type Verifier = ReturnType<typeof createVerifier>;
