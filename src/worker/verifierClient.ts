/**
 * The page's side of riding a group's rides again: a worker of its own, so that marking a ride that was just finished
 * never waits for it. Where there is no worker this thread does it, with pauses.
 */
import type { ClinicPlan } from '../core/group/plan.ts';
import type { RideRecord } from '../core/group/records/record.ts';
import type { Remark } from '../core/group/records/remark.ts';
import type { Level } from '../core/level/schema.ts';
import { connect } from './asking.ts';
import type { Workplace } from './line.ts';
import type { GroupCount, RideOfPlan, Verifier } from './verifier.ts';

/** Verifies over bundled levels and those of a plan; nothing is loaded before the first question. */
export function createGroupVerifier(workplace: Workplace<Verifier>, levels: readonly Level[]) {
  const worker = connect<Verifier>({ ...workplace, afterSilence: 'nobody' });
  let counting: AbortController | null = null;
  return {
    /** What came of rides of other devices, in their order. */
    verify: (plan: ClinicPlan, records: readonly RideRecord[]): Promise<readonly Remark[]> =>
      worker.ask('verify', { plan, levels, rides: records.map((record) => ({ record, own: false })) }),
    /** Lays rides over each other. A newer question takes the place of an older one, which rejects. */
    picture(plan: ClinicPlan, rides: readonly RideOfPlan[]): Promise<GroupCount> {
      counting?.abort();
      counting = new AbortController();
      return worker.ask('picture', { plan, levels, rides }, { signal: counting.signal });
    },
  };
}
/** Rides the rides of groups again, each once. Both reject where nobody can do it. */
export type GroupVerifier = ReturnType<typeof createGroupVerifier>;
