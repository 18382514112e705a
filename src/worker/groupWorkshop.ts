/**
 * Rides the rides of a group again: to check them, or to count their picture, in which all are laid over each other.
 * Knows no worker and no clock; where answers go and how to pause is handed in. Of pictures only the newest is counted.
 */
import { type GroupPicture, groupPicture } from '../core/group/picture/group.ts';
import type { GroupRide } from '../core/group/picture/groupRide.ts';
import type { ClinicPlan } from '../core/group/plan.ts';
import { type RideRecord, RULES_VERSION } from '../core/group/records/record.ts';
import { createRemarker, type Remark, type Remarker } from '../core/group/records/remark.ts';
import { levelOfRide } from '../core/group/turn.ts';
import type { Level } from '../core/level/schema.ts';

/** What is to be counted. */
export interface GroupJob {
  readonly plan: ClinicPlan;
  /** Levels that come with the game. */
  readonly levels: readonly Level[];
  readonly records: readonly RideRecord[];
}

/** What was counted. */
export interface GroupCount {
  readonly picture: GroupPicture;
  /** Checksums of rides that were left out, because they did not come out as their marks say. */
  readonly apart: readonly string[];
}

export interface GroupQuestion extends GroupJob {
  readonly kind: 'count' | 'check';
  readonly id: number;
}

export type GroupAnswer =
  /** A sign that somebody is at work. */
  | { readonly kind: 'working'; readonly id: number }
  | { readonly kind: 'counted'; readonly id: number; readonly count: GroupCount }
  /** What came of each ride that was to be checked, in their order. */
  | { readonly kind: 'checked'; readonly id: number; readonly remarks: readonly Remark[] }
  | { readonly kind: 'failed'; readonly id: number; readonly reason: string };

/** Rides between two pauses. */
const RIDES_AT_ONCE = 4;

/** Opens a workshop; `pause` ends when messages that came in meanwhile have been received. */
export function openGroupWorkshop(
  post: (answer: GroupAnswer) => void,
  pause: () => Promise<void>,
): (question: GroupQuestion) => void {
  let newest = 0;
  let remarker: Remarker | null = null;
  let key = '';
  // Every message brings copies; marks are remembered for the ones that were seen first.
  const seen = new Map<string, RideRecord>();

  const remarkerFor = ({ plan, levels }: GroupJob): Remarker => {
    if (remarker !== null && key === plan.id) return remarker;
    key = plan.id;
    seen.clear();
    remarker = createRemarker((record) => {
      const ride = plan.rides[record.rideIndex];
      const found = (id: string): Level | undefined => levels.find((level) => level.id === id);
      return ride === undefined ? undefined : (levelOfRide(ride, record.seed, found) ?? undefined);
    }, RULES_VERSION);
    return remarker;
  };

  const count = async (question: GroupQuestion): Promise<GroupAnswer | null> => {
    const marker = remarkerFor(question);
    const rides: GroupRide[] = [];
    const apart: string[] = [];
    for (const [i, record] of question.records.entries()) {
      if (i % RIDES_AT_ONCE === 0) await pause();
      if (newest !== question.id) return null;
      post({ kind: 'working', id: question.id });
      const known = seen.get(record.checksum) ?? record;
      seen.set(record.checksum, known);
      const ride = rideOf(marker.remark(known));
      if (ride === null) apart.push(record.checksum);
      else rides.push(ride);
    }
    return { kind: 'counted', id: question.id, count: { picture: groupPicture(rides), apart } };
  };

  const check = async (question: GroupQuestion): Promise<GroupAnswer> => {
    const marker = remarkerFor(question);
    const remarks: Remark[] = [];
    for (const record of question.records) {
      await pause();
      post({ kind: 'working', id: question.id });
      remarks.push(marker.remark(record));
    }
    return { kind: 'checked', id: question.id, remarks };
  };

  return (question) => {
    const { id, kind } = question;
    if (kind === 'count') newest = id;
    (kind === 'check' ? check(question) : count(question)).then(
      (answer) => answer !== null && post(answer),
      (error: unknown) => post({ kind: 'failed', id, reason: String(error) }),
    );
  };
}

/** What a ride gives to the picture: its line, only its marks, or nothing. */
function rideOf(remark: Remark): GroupRide | null {
  const { record } = remark;
  if (remark.kind === 'same') return { record, line: remark.line, reference: remark.reference };
  // Marks that came without their ride, or from a road that is not here, are still somebody's marks.
  if (remark.code !== 'no-recording' && remark.code !== 'unknown-level') return null;
  return { record, line: null, reference: null };
}
