/**
 * What goes into the picture of a group: which rides count, as records with a line and a reference where they were
 * ridden again, and who counts as one person. Riding again and setting apart is `records/remark.ts`.
 */
import { countsAsItCame } from '../records/apart.ts';
import type { RideRecord } from '../records/record.ts';
import type { Remark, RoadReference } from '../records/remark.ts';
import type { RideLine } from '../records/rideLine.ts';

/** One ride of the group. Line and reference are there where it was ridden again. */
export interface GroupRide {
  readonly record: RideRecord;
  readonly line: RideLine | null;
  readonly reference: RoadReference | null;
}

/** What a ride gives to the picture: its line, only its marks, or nothing. */
export function groupRideOf(remark: Remark): GroupRide | null {
  const { record } = remark;
  if (remark.kind === 'same') return { record, line: remark.line, reference: remark.reference };
  // Marks that came without their ride, or from a road that is not here, are still somebody's marks.
  return countsAsItCame(remark.code) ? { record, line: null, reference: null } : null;
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
