/**
 * Riding by ear: says what comes into a place that screen readers speak, and tells the tone of the cadence to
 * whoever makes sounds. What is said, when, and how high the tone is comes from the coach.
 */
import { type EarCue, earCues, hintsByEar, toneHz } from '../../core/coach/byEar.ts';
import type { NextStep } from '../../core/coach/guide.ts';
import type { RideFrame, RideWorld } from '../../core/ride/types.ts';
import type { Format } from '../../words/format.ts';
import { earWords, hudWords } from './words.ts';

/** What riding by ear needs. */
interface GuidanceOptions {
  readonly world: RideWorld;
  /** What the guide says now, where hints may be given; else null. */
  readonly hint: (frame: RideFrame) => NextStep | null;
  readonly format: Format;
  /** Read aloud when it changes. */
  readonly place: HTMLElement;
  /** Gets a frequency (Hz), 0 for silence. */
  readonly tone: (hz: number) => void;
}

/** Follows a ride. */
export interface SpokenGuidance {
  frame(frame: RideFrame): void;
  /** Says something else. */
  tell(text: string): void;
  /** Silence. */
  stop(): void;
}

/** Hints are looked for this often (s of ride time). */
const EVERY_S = 0.25;

/** Makes it for one ride. */
export function createGuidance({ world, hint, format, place, tone }: GuidanceOptions): SpokenGuidance {
  const cues = earCues(world.course);
  const hints = hintsByEar(hint);
  let said = 0;
  let askedAtS = Number.NEGATIVE_INFINITY;
  const say = (text: string): void => {
    // A new element is read aloud even where the words are the same again.
    const line = document.createElement('p');
    line.textContent = text;
    place.replaceChildren(line);
  };
  const sound = (hz: number): void => {
    // The same number that is heard, for those who listen by program.
    if (place.dataset['toneHz'] !== String(hz)) place.dataset['toneHz'] = String(hz);
    tone(hz);
  };
  return {
    frame(frame) {
      let latest: EarCue | null = null;
      for (let cue = cues[said]; cue !== undefined && cue.atM <= frame.distanceM; cue = cues[said]) {
        latest = cue;
        said += 1;
      }
      if (latest !== null) say(sentence(latest, format));
      if (Math.abs(frame.timeS - askedAtS) >= EVERY_S) {
        askedAtS = frame.timeS;
        const step = hints(frame);
        if (step !== null) say(earWords.hint(hudWords.step(step, step.second)));
      }
      sound(Math.round(toneHz(frame)));
    },
    tell: say,
    stop: () => sound(0),
  };
}

function sentence({ code, inM, slopeRatio, lengthM }: EarCue, format: Format): string {
  const tens = (m: number): string => format.distance(Math.round(m / 10) * 10);
  return earWords[code](tens(inM), format.percent(slopeRatio), tens(lengthM));
}
