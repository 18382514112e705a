/**
 * Rides of other devices are ridden again here, a few at a time. Fetches the planner when the first one comes; the
 * page's own thread does it, so between two rides it lets go.
 */
import type { ClinicPlan } from '../../core/group/plan.ts';
import { type RideRecord, RULES_VERSION } from '../../core/group/records/record.ts';
import type { Remarker } from '../../core/group/records/remark.ts';
import { levelOfRide } from '../../core/group/turn.ts';
import type { Level } from '../../core/level/schema.ts';
import type { Check } from './handoverDesk.ts';

/** A check over bundled levels and those of the plan. */
export function localCheck(levels: readonly Level[]): Check {
  const remarkers = new Map<string, Promise<Remarker>>();
  const remarkerFor = async (plan: ClinicPlan): Promise<Remarker> => {
    const { createRemarker } = await import('../../core/group/records/remark.ts');
    return createRemarker((record) => levelOf(plan, record, levels), RULES_VERSION);
  };
  return async (plan, records) => {
    const remarker = remarkers.get(plan.id) ?? remarkerFor(plan);
    remarkers.set(plan.id, remarker);
    const ready = await remarker;
    const remarks = [];
    for (const record of records) {
      remarks.push(ready.remark(record));
      await new Promise((resolve) => setTimeout(resolve, 0));
    }
    return remarks;
  };
}

/** The level a record was ridden on; a check ride is made again from its seed. */
function levelOf(plan: ClinicPlan, record: RideRecord, levels: readonly Level[]): Level | undefined {
  const ride = plan.rides[record.rideIndex];
  if (ride === undefined) return undefined;
  return levelOfRide(ride, record.seed, (id) => levels.find((level) => level.id === id)) ?? undefined;
}
