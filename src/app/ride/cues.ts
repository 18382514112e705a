/** Which cue of a level is said at a place. Pure; the words are found by the caller. */
import type { Level } from '../../core/level/schema.ts';

type Cue = Level['cues'][number];
type CueCode = Extract<Cue, { readonly cue: unknown }>['cue'];

/** A cue stays for this long unless the next one comes (m). */
const CUE_SHOWN_M = 45;

/** Cues that tell the hands what to do; where the guide of the ride speaks, they are left to it. */
const TELLS_HANDS: readonly CueCode[] = [
  'two-easier-now',
  'rest-on-the-way-up',
  'harder-again',
  'small-ring',
  'big-ring',
  'easy-before-stop',
  'ride-over',
  'easier-lever',
  'harder-lever',
];

/** The cues of a level beside the hints of a guide: what would be said twice, or otherwise, is left out. */
export function cuesBesideGuide(cues: readonly Cue[]): readonly Cue[] {
  return cues.filter((cue) => !('cue' in cue) || !TELLS_HANDS.includes(cue.cue));
}

/** The cue to show at `distanceM`, or null. Of several reached ones the last placed one counts. */
export function cueAt(cues: readonly Cue[], distanceM: number): Cue | null {
  let best: Cue | null = null;
  for (const cue of cues) {
    const reached = cue.atM <= distanceM && distanceM < cue.atM + CUE_SHOWN_M;
    if (reached && (best === null || cue.atM >= best.atM)) best = cue;
  }
  return best;
}
