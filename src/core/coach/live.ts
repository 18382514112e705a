/**
 * Marks while a ride is still going on, for levels that show them: what can be known without the reference ride,
 * which is cadence, easing and chain line so far. The marks of the debrief are worked out by `judge.ts`.
 */
import { CROSSED_GRACE_S } from '../ride/happenings.ts';
import { shiftsInFront } from '../model/shifters.ts';
import type { RideTrace } from '../ride/trace.ts';
import type { RideWorld } from '../ride/types.ts';
import { cadenceCredit, countsForMarks, standingSinceS } from './cadence.ts';
import { easingCredit, FRONT_SHARE } from './shifts.ts';

/** What has been counted of a trace before its first sample. Plain data. */
export const NOTHING_COUNTED = {
  samplesSeen: 0,
  eventsSeen: 0,
  standingAtS: Number.NEGATIVE_INFINITY,
  /** Samples that count, their credit for cadence, and those with the chain crossed. */
  pedalled: 0,
  cadenceCredit: 0,
  crossed: 0,
  /** Shifts by their share, and their credit. */
  shifts: 0,
  easingCredit: 0,
};
export type LiveCount = Readonly<typeof NOTHING_COUNTED>;

/** Counts on from where `before` ended. */
export function countLive(world: RideWorld, trace: RideTrace, before: LiveCount): LiveCount {
  let { standingAtS, pedalled, cadenceCredit: credit, crossed, shifts, easingCredit: eased } = before;
  for (let i = before.samplesSeen; i < trace.samples.length; i += 1) {
    const sample = trace.samples[i];
    if (sample === undefined) break;
    standingAtS = standingSinceS(sample, standingAtS);
    if (!countsForMarks(sample, standingAtS)) continue;
    pedalled += 1;
    credit += cadenceCredit(world, sample);
    if (sample.crossedS > CROSSED_GRACE_S) crossed += 1;
  }
  for (let i = before.eventsSeen; i < trace.events.length; i += 1) {
    const event = trace.events[i];
    if (event?.kind !== 'shift-done') continue;
    const share = event.derailleur === 'front' ? FRONT_SHARE : 1;
    shifts += share;
    eased += share * easingCredit(event);
  }
  return {
    samplesSeen: trace.samples.length,
    eventsSeen: trace.events.length,
    standingAtS,
    pedalled,
    cadenceCredit: credit,
    crossed,
    shifts,
    easingCredit: eased,
  };
}

/** Marks so far, 0 to 100 each; null where there is nothing to judge yet, for the chain line on bikes with one chainring. */
export function liveMarks(world: RideWorld, count: LiveCount) {
  const { pedalled, crossed, shifts } = count;
  return {
    cadence: pedalled === 0 ? null : (100 * count.cadenceCredit) / pedalled,
    easing: shifts === 0 ? null : (100 * count.easingCredit) / shifts,
    chainLine: pedalled === 0 || !shiftsInFront(world.machine.bike) ? null : 100 * (1 - crossed / pedalled),
  };
}
