/** Small sentences of a session: a rider's name, a plan in a line, one line about a ride. Words are handed in. */
import { readNickname } from '../../core/group/nicknames.ts';
import type { ClinicPlan, PlanRide } from '../../core/group/plan.ts';
import { CAUGHT_BELOW_PERCENT } from '../../core/group/picture/groupPitches.ts';
import type { PitchDigest, RideRecord } from '../../core/group/records/record.ts';
import type { Level } from '../../core/level/schema.ts';
import type { Format } from '../../words/format.ts';
import type { ClinicWords } from './words.ts';
import { bikeName } from '../../words/common.ts';

/** A first shift so far before the foot was begun in time (m; the best rides of the bundled levels begin at 23 m and more). */
const BEGUN_IN_TIME_M = 20;

/** A nickname as people say it: "Red fox", or what the rider chose. */
export function nameOf(nickname: string, words: ClinicWords): string {
  const name = readNickname(nickname);
  if (name === null) return nickname;
  return name.kind === 'own'
    ? name.text
    : words.listed(words.colours[name.colour], words.animals[name.animal]);
}

/** Title of a ride of a plan; null where its level is not here. */
export function rideTitle(ride: PlanRide, levels: readonly Level[], words: ClinicWords): string | null {
  if (ride.kind === 'own') return ride.level.title;
  if (ride.kind === 'check')
    return ride.audience === 'children' ? words.form.checkChildren : words.form.check;
  return levels.find((level) => level.id === ride.levelId)?.title ?? null;
}

/** "Two attempts each · Road". */
export function planFacts(plan: ClinicPlan, words: ClinicWords): string {
  const bike = plan.bike === 'own' ? words.facts.ownBike : bikeName(plan.bike);
  return `${words.facts.attempts(plan.attempts)} · ${bike}`;
}

/** A day as people of a place write it. */
export function dayOf(atMs: number): string {
  return new Date(atMs).toLocaleDateString(undefined, { day: 'numeric', month: 'long' });
}

/** One line about a ride: its worst pitch, or that there is none. */
export function rideRemark(record: RideRecord, words: ClinicWords, format: Format): string {
  const asked = record.pitches.flatMap((pitch, i) =>
    pitch.creditPercent === null ? [] : [{ pitch, credit: pitch.creditPercent, number: i + 1 }],
  );
  const [worst] = asked.toSorted((a, b) => a.credit - b.credit);
  if (worst === undefined) return words.remark.none;
  if (worst.credit >= CAUGHT_BELOW_PERCENT) return words.remark.fine(asked.length);
  return remarkOfPitch(worst.pitch, worst.number, words, format);
}

function remarkOfPitch(pitch: PitchDigest, number: number, words: ClinicWords, format: Format): string {
  const { remark } = words;
  const at = pitch.firstShiftBeforeFootM;
  const metres = format.distance(Math.abs(at ?? 0));
  switch (pitch.timing) {
    case 'too-early':
      return at === null || at <= 0 ? remark.earlyNoPlace(number) : remark.early(number, metres);
    case 'too-late':
      if (at === null) return remark.never(number);
      if (at < 0) return remark.lateAfter(number, metres);
      // Begun in good time and late all the same: the rest of the shifts came too late, or never.
      return at < BEGUN_IN_TIME_M ? remark.lateBefore(number, metres) : remark.notFinished(number);
    case 'about-right':
      return remark.gear(number);
  }
}
