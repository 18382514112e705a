/** Which cue of a level is said at a place. Pure; the words are found by the caller. */
import type { Level } from '../../core/level/schema.ts';

type Cue = Level['cues'][number];

/** A cue stays for this long unless the next one comes (m). */
export const CUE_SHOWN_M = 45;

/** The cue to show at `distanceM`, or null. Of several reached ones the last placed one counts. */
export function cueAt(cues: readonly Cue[], distanceM: number): Cue | null {
  let best: Cue | null = null;
  for (const cue of cues) {
    const reached = cue.atM <= distanceM && distanceM < cue.atM + CUE_SHOWN_M;
    if (reached && (best === null || cue.atM >= best.atM)) best = cue;
  }
  return best;
}
