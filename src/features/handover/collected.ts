/** What the coach's device has of a session, as the page that shows it is given it. */
import type { RecordSet } from '../../core/group/records/merge.ts';
import type { Heard } from '../../core/group/records/missing.ts';
import type { Remark } from '../../core/group/records/remark.ts';

/** What has been collected and found out. */
export interface Collected {
  readonly set: RecordSet;
  readonly heard: readonly Heard[];
  /** What came of riding them again, as far as that has been done. */
  readonly remarks: readonly Remark[];
  /** Rides that are still to be ridden again. */
  readonly toCheck: number;
}
