/**
 * What goes into the picture of a group: rides as records, with a line and a reference where they were
 * ridden again, and who counts as one person.
 */
import type { RideRecord } from '../records/record.ts';
import type { RoadReference } from '../records/remark.ts';
import type { RideLine } from '../records/rideLine.ts';

/** One ride of the group. Line and reference are there where it was ridden again. */
export interface GroupRide {
  readonly record: RideRecord;
  readonly line: RideLine | null;
  readonly reference: RoadReference | null;
}

/** How many pitches were taken how. */
export interface TimingShares {
  readonly tooEarly: number;
  readonly aboutRight: number;
  readonly tooLate: number;
}

/** Two devices may have given the same nickname to two people. */
export function personOf(record: RideRecord): string {
  return `${record.deviceId} ${record.nickname}`;
}
