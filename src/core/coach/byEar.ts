/**
 * A ride for those who do not look: what is said of the road before it comes, and a tone that tells where the
 * cadence is against the band. Places, codes and frequencies only; sentences and sound are made elsewhere.
 */
import type { Course } from '../course/types.ts';
import { numbersOfPlace } from '../model/transmission.ts';
import type { RideFrame } from '../ride/types.ts';
import type { NextStep } from './guide.ts';

/** Something to say at a place. */
export interface EarCue {
  readonly atM: number;
  readonly code:
    | 'pitch-ahead'
    | 'pitch-soon'
    | 'pitch-now'
    | 'pitch-over'
    | 'stop-ahead'
    | 'stop-soon'
    | 'downhill';
  /** How far ahead it is when it is said (m). */
  readonly inM: number;
  /** Steepest slope of a pitch or descent (rise over run), else 0. */
  readonly slopeRatio: number;
  /** Length of the pitch (m), else 0. */
  readonly lengthM: number;
}

/** Early enough to be heard, understood and acted on at 25 km/h (m). */
const FIRST_M = 110;
const SOON_M = 40;
const STOP_SOON_M = 40;
/** Steeper down than this is told of. */
const DOWNHILL_RATIO = -0.03;

/** Everything that is said of a road, in the order of its places. */
export function earCues(course: Course): readonly EarCue[] {
  const cues: EarCue[] = [];
  const add = (code: EarCue['code'], placeM: number, inM: number, slopeRatio = 0, lengthM = 0): void => {
    const before = Math.min(inM, placeM);
    cues.push({ atM: placeM - before, code, inM: before, slopeRatio, lengthM });
  };
  for (const { footM, endM, steepestRatio } of course.pitches) {
    add('pitch-ahead', footM, FIRST_M, steepestRatio, endM - footM);
    add('pitch-soon', footM, SOON_M, steepestRatio, endM - footM);
    add('pitch-now', footM, 0, steepestRatio, endM - footM);
    add('pitch-over', endM, 0);
  }
  for (const lineM of course.stopLinesM) {
    add('stop-ahead', lineM, FIRST_M);
    add('stop-soon', lineM, STOP_SOON_M);
  }
  for (const { atM, slopeRatio } of descents(course)) add('downhill', atM, 0, slopeRatio);
  return cues.toSorted((a, b) => a.atM - b.atM);
}

/** Where the road begins to go down, with how steep it gets. */
function descents(course: Course): { readonly atM: number; readonly slopeRatio: number }[] {
  const found: { atM: number; slopeRatio: number }[] = [];
  let inside = false;
  for (let m = 0; m < course.slopeRatio.length; m += 1) {
    const slopeRatio = course.slopeRatio[m] as number;
    if (slopeRatio > DOWNHILL_RATIO) inside = false;
    else if (!inside) {
      inside = true;
      found.push({ atM: m, slopeRatio });
    } else {
      const last = found.at(-1);
      if (last !== undefined && slopeRatio < last.slopeRatio) last.slopeRatio = slopeRatio;
    }
  }
  return found;
}

/** Below the band the tone is under this frequency, above it over twice this frequency (Hz). */
const TONE_HZ = 330;

/**
 * Frequency of the tone (Hz): under 330 for legs below the band, the slower the lower; over 660 above the band,
 * the faster the higher; 0, which is silence, inside it and while nobody pedals.
 */
function toneHz(
  frame: Pick<RideFrame, 'cadenceRpm' | 'bandLowRpm' | 'bandHighRpm' | 'pressure' | 'braking' | 'phase'>,
): number {
  const { cadenceRpm, bandLowRpm, bandHighRpm, pressure, braking, phase } = frame;
  if (phase !== 'riding' || braking || pressure === 'coast') return 0;
  if (cadenceRpm < bandLowRpm) return Math.max(TONE_HZ / 3, (TONE_HZ * cadenceRpm) / bandLowRpm);
  if (cadenceRpm > bandHighRpm) return Math.min(TONE_HZ * 4, (2 * TONE_HZ * cadenceRpm) / bandHighRpm);
  return 0;
}

/** What a hint asked for holds this long against the tone (s): an easier gear before a hill spins until the hill is there. */
const HINT_HOLDS_S = 5;

/**
 * The tone beside the hints, so that the two never ask for opposite gears: who was told to shift easier does not hear
 * that the legs spin, and the other way round, until the road has answered.
 *
 * @param told - what the last hint made, and when (s of ride time); null before the first
 */
export function toneBesideHint(
  told: { readonly makes: NextStep['makes']; readonly atS: number } | null,
  frame: RideFrame,
): number {
  const hz = toneHz(frame);
  if (told === null || frame.timeS - told.atS > HINT_HOLDS_S) return hz;
  const asksFor = hz > TONE_HZ ? 'harder' : 'easier';
  return asksFor === told.makes ? hz : 0;
}

/** A hint nobody acted on is given once more after this long (s): long enough to have been spoken and obeyed. */
const AGAIN_S = 5;
/** Hints are told this much before the time to act (s): so long a screen reader and its voice need until they are heard. */
const SPEAKING_S = 2.3;

/**
 * Hints for the ear: each is given in time to be spoken before the hands must act, again in the next gear if that is
 * not enough, and once more after a while if nothing was done.
 *
 * @param hint - what the guide of the ride says now
 */
export function hintsByEar(
  hint: (frame: RideFrame) => NextStep | null,
): (frame: RideFrame) => NextStep | null {
  let saidIn = '';
  let timesSaid = 0;
  let saidAtS = Number.NEGATIVE_INFINITY;
  let dueAtS = Number.NEGATIVE_INFINITY;
  return (frame) => {
    const step = hint(frame);
    if (step === null || step.inM > frame.speedMps * SPEAKING_S) {
      // That hill is over; the next one in the same gear is another matter.
      if (frame.timeS - dueAtS > AGAIN_S) saidIn = '';
      return null;
    }
    dueAtS = frame.timeS;
    const gear = `${numbersOfPlace(frame).join(' ')} ${step.makes}`;
    const isSame = gear === saidIn;
    if (isSame && (timesSaid > 1 || frame.timeS - saidAtS < AGAIN_S)) return null;
    timesSaid = isSame ? timesSaid + 1 : 1;
    saidIn = gear;
    saidAtS = frame.timeS;
    return step;
  };
}
