/** Small sentences of a session: a plan in a line, one line about a ride. */
import type { ClinicPlan, PlanRide } from '../../core/group/plan.ts';
import { CAUGHT_BELOW_PERCENT } from '../../core/group/picture/groupPitches.ts';
import type { PitchDigest, RideRecord } from '../../core/group/records/record.ts';
import type { Level } from '../../core/level/schema.ts';
import type { Format } from '../../words/format.ts';
import { bikeName } from '../../words/common.ts';
import { checkTitle } from '../../words/group.ts';
import { words } from '../../words/words.ts';

const say = words('clinic');

/** A first shift so far before the foot was begun in time (m; the best rides of the bundled levels begin at 23 m and more). */
const BEGUN_IN_TIME_M = 20;

/** Title of a ride of a plan; null where its level is not here. */
export function rideTitle(ride: PlanRide, levels: readonly Level[]): string | null {
  if (ride.kind === 'own') return ride.level.title;
  if (ride.kind === 'check') return checkTitle(ride);
  return levels.find((level) => level.id === ride.levelId)?.title ?? null;
}

/** "Two attempts each · Road". */
export function planFacts(plan: ClinicPlan): string {
  const bike = plan.bike === 'own' ? say('facts-ownBike') : bikeName(plan.bike);
  return say('facts', { count: plan.attempts, bike });
}

/** One line about a ride: its worst pitch, or that there is none. */
export function rideRemark(record: RideRecord, format: Format): string {
  const asked = record.pitches.flatMap((pitch, i) =>
    pitch.creditPercent === null ? [] : [{ pitch, credit: pitch.creditPercent, number: i + 1 }],
  );
  const [worst] = asked.toSorted((a, b) => a.credit - b.credit);
  if (worst === undefined) return say('remark-none');
  if (worst.credit >= CAUGHT_BELOW_PERCENT) return say('remark-fine', { count: asked.length });
  return remarkOfPitch(worst.pitch, worst.number, format);
}

function remarkOfPitch(digest: PitchDigest, pitch: number, format: Format): string {
  const at = digest.firstShiftBeforeFootM;
  const distance = format.distance(Math.abs(at ?? 0));
  switch (digest.timing) {
    case 'too-early':
      return at === null || at <= 0
        ? say('remark-earlyNoPlace', { pitch })
        : say('remark-early', { pitch, distance });
    case 'too-late':
      if (at === null) return say('remark-never', { pitch });
      if (at < 0) return say('remark-lateAfter', { pitch, distance });
      // Begun in good time and late all the same: the rest of the shifts came too late, or never.
      return at < BEGUN_IN_TIME_M
        ? say('remark-lateBefore', { pitch, distance })
        : say('remark-notFinished', { pitch });
    case 'about-right':
      return say('remark-gear', { pitch });
  }
}
