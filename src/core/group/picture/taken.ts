/**
 * How one ride took one pitch. Too late: the gear of the hill was not in, its shifts not finished, when the hill needed
 * it; too early: it came in so soon that it cost something. The marks of the ride say which; where the gear was in is
 * read from its line.
 */
import { APPROACH_M, JUDGED_M } from '../../coach/pitchLimits.ts';
import type { PitchDigest } from '../records/record.ts';
import type { RoadReference } from '../records/remark.ts';
import type { RideLine } from '../records/rideLine.ts';
import type { TimingShares } from './groupRide.ts';

/** A gear counts as that of the best ride up to so much harder; less than a step of any cassette. */
const SAME_GEAR = 1.05;

/** How a ride took a pitch, by its marks; null where the pitch asked nothing. */
export function takenOf(pitch: PitchDigest, caughtBelowPercent: number): keyof TimingShares | null {
  if (pitch.creditPercent === null) return null;
  if (pitch.timing === 'too-early') return 'tooEarly';
  if (pitch.timing === 'too-late') return 'tooLate';
  // A foot on the ground where the best ride had nothing to do: the gear was too hard all the same.
  return pitch.creditPercent < caughtBelowPercent ? 'tooLate' : 'aboutRight';
}

/**
 * Where a ride had the gear in which the best ride meets the foot (m before the foot, negative beyond it): from there
 * on its shifts were finished. Looked for as far before the foot, and as far beyond it, as a pitch is judged; null where
 * it never had it there.
 */
export function readyBeforeFootM(line: RideLine, reference: RoadReference, index: number): number | null {
  const pitch = reference.pitches[index];
  if (pitch === undefined) return null;
  const { stepM, development } = line;
  const foot = Math.floor(pitch.footM / stepM);
  const gear = (reference.line.development[foot] ?? 0) * SAME_GEAR;
  const isIn = (place: number): boolean => {
    const own = development[place] ?? 0;
    return own > 0 && own <= gear;
  };
  let at = foot;
  if (isIn(foot)) {
    const before = reference.pitches[index - 1]?.endM ?? 0;
    const first = Math.ceil(Math.max(0, before, pitch.footM - APPROACH_M) / stepM);
    while (at > first && isIn(at - 1)) at -= 1;
  } else {
    const last = Math.floor(Math.min(pitch.endM, pitch.footM + JUDGED_M) / stepM);
    while (at <= last && !isIn(at)) at += 1;
    if (at > last) return null;
  }
  return pitch.footM - at * stepM;
}
