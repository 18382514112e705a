/**
 * Riding by ear: says what comes into a place that screen readers speak, and tells the tone of the cadence to
 * whoever makes sounds. What is said, when, and how high the tone is comes from the coach.
 */
import { type EarCue, earCues, hintsByEar, toneBesideHint } from '../../core/coach/byEar.ts';
import type { NextStep } from '../../core/coach/guide.ts';
import type { Push } from '../../core/model/transmission.ts';
import type { RideFrame, RideWorld } from '../../core/ride/types.ts';
import type { Format } from '../../words/format.ts';
import { words } from '../../words/words.ts';
import { moveText } from './aids.ts';

const tell = words('hud');

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

/** Said whatever else is being said. */
const MUST_BE_HEARD: ReadonlySet<EarCue['code']> = new Set(['pitch-ahead', 'stop-ahead', 'stop-soon']);
/** Hints are looked for this often (s of ride time). */
const EVERY_S = 0.25;

/** Within so much of the start it is said that the ride has begun (m). */
const BEGINNING_M = 100;
/** What would be told within so much of the beginning is told with it (m). */
const NEAR_M = 40;
/** A voice needs about so long for a sentence, and for each word of it (s). */
const SENTENCE_S = 0.5;
const WORD_S = 0.3;

export function createGuidance({ world, hint, format, place, tone }: GuidanceOptions) {
  const cues = earCues(world.course);
  const hints = hintsByEar(hint);
  let said = 0;
  let begun = false;
  let nowS = 0;
  let speaksUntilS = Number.NEGATIVE_INFINITY;
  let askedAtS = Number.NEGATIVE_INFINITY;
  let told: Parameters<typeof toneBesideHint>[0] = null;
  const say = (text: string): void => {
    // A new element is read aloud even where the words are the same again.
    const paragraph = document.createElement('p');
    paragraph.textContent = text;
    place.replaceChildren(paragraph);
    speaksUntilS = nowS + SENTENCE_S + WORD_S * text.split(' ').length;
  };
  /** One voice: what can wait no longer is said at once, what is only good to know not into something else. */
  const sayIfQuiet = (text: string): void => {
    if (nowS >= speaksUntilS) say(text);
  };
  const sound = (hz: number): void => {
    // The same number that is heard, for those who listen by program.
    if (place.dataset['toneHz'] !== String(hz)) place.dataset['toneHz'] = String(hz);
    tone(hz);
  };
  const cueOf = (frame: RideFrame): EarCue | null => {
    let latest: EarCue | null = null;
    for (let cue = cues[said]; cue !== undefined && cue.atM <= frame.distanceM; cue = cues[said]) {
      latest = cue;
      said += 1;
    }
    return latest;
  };
  /** A ride that goes on, or whose settings were changed, begins in the middle of the road. */
  const begin = ({ distanceM }: RideFrame): void => {
    const passed = cues.findIndex(({ atM }) => atM > distanceM);
    said = passed < 0 ? cues.length : passed;
    if (distanceM >= BEGINNING_M) return;
    const first = cues.findIndex(({ code, atM, inM }) => code.endsWith('-ahead') && atM + inM > distanceM);
    const ahead = cues[first];
    if (ahead === undefined) return say(beginning(tell('ear-nothing')));
    const isNear = ahead.atM <= distanceM + NEAR_M;
    if (isNear) said = Math.max(said, first + 1);
    // Further away it is told again, with how steep and how long.
    const code = ahead.code === 'pitch-ahead' && !isNear ? 'pitch-soon' : ahead.code;
    say(beginning(sentence({ ...ahead, code, inM: ahead.atM + ahead.inM - distanceM }, format)));
  };
  return {
    frame(frame: RideFrame): void {
      nowS = frame.timeS;
      if (!begun) {
        begun = true;
        begin(frame);
      }
      const cue = cueOf(frame);
      if (Math.abs(nowS - askedAtS) >= EVERY_S) {
        askedAtS = nowS;
        const step = hints(frame);
        if (step !== null) {
          told = { makes: step.makes, atS: nowS };
          say(hintText(step, step.second));
        }
      }
      // Where the hands have something to do before the pitch, that is what is said, and soon.
      const isTold = cue?.code === 'pitch-soon' && hint(frame) !== null;
      if (cue !== null && !isTold) (MUST_BE_HEARD.has(cue.code) ? say : sayIfQuiet)(sentence(cue, format));
      sound(Math.round(toneBesideHint(told, frame)));
    },
    /** Says something else at once. */
    tell: say,
    /** Says something where nothing else is being said. */
    mention: sayIfQuiet,
    stop: (): void => sound(0),
  };
}
export type SpokenGuidance = ReturnType<typeof createGuidance>;

const beginning = (ahead: string): string => `${tell('ear-begin')} ${ahead}`;

function hintText(first: Push, then: Push | null): string {
  const move = moveText('ear-move', first);
  return then === null
    ? tell('ear-hint', { move })
    : tell('ear-hint-then', { first: move, second: moveText('ear-move', then) });
}

function sentence({ code, inM, slopeRatio, lengthM }: EarCue, format: Format): string {
  return tell(`ear-${code}`, {
    distance: round(inM, format),
    slope: format.percent(slopeRatio),
    length: round(lengthM, format),
  });
}

/** Long numbers take a voice long: "350 ft" and not "361 ft". */
function round(distanceM: number, { unitM, distance }: Format): string {
  const units = distanceM / unitM;
  const step = units >= 200 ? 50 : 10;
  return distance(Math.round(units / step) * step * unitM);
}
