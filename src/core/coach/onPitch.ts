/**
 * What a ride shows around one pitch: strain, spinning, rest, speed, gears and cadence over a stretch of its samples.
 * Measures only; what of it is early, late or good is decided in `foresight.ts`.
 */
import type { Pitch } from '../course/types.ts';
import { firstFrom, lerp } from '../math/numbers.ts';
import { STANDING_FORCE } from '../model/legs.ts';
import type { TraceSample } from '../ride/trace.ts';
import type { RideWorld } from '../ride/types.ts';
import { IDLE_PRESSURE, restsAllowed } from './cadence.ts';
import { APPROACH_M } from './pitchLimits.ts';

/** Legs that spin are looked at over so much road before the foot at least, and freewheeling over so much (m, ours). */
const SPIN_M = 60;
const COAST_M = 60;
/** A gear shorter than this was only passed through (samples of 0.1 s). */
const HELD_SAMPLES = 12;
/** Pressing is so much more than steady; what standing carries grows with it. Written out, as 1.6 − 1 has other last bits. */
const PRESS_OVER_STEADY = 0.6;

/** Overload of a ride over a stretch: what the road asks beyond what the band carries, over the way (load × metres). */
export function overloadBetween(samples: readonly TraceSample[], fromM: number, toM: number): number {
  let sum = 0;
  for (let i = Math.max(1, indexFrom(samples, fromM)); i < samples.length; i += 1) {
    const a = samples[i - 1] as TraceSample;
    const b = samples[i] as TraceSample;
    if (a.distanceM >= toM) break;
    const wayM = b.distanceM - a.distanceM;
    if (b.distanceM <= fromM || wayM <= 0) continue;
    const start = Math.max(a.distanceM, fromM);
    const end = Math.min(b.distanceM, toM);
    const share = ((start + end) / 2 - a.distanceM) / wayM;
    sum += lerp(strain(a), strain(b), share) * (end - start);
  }
  return sum;
}

/** Overload of a moment; who stands carries a little more. */
function strain(sample: TraceSample): number {
  if (sample.overloadRatio <= 0 || sample.pressureRatio <= 1) return sample.overloadRatio;
  const standing = Math.min(1, (sample.pressureRatio - 1) / PRESS_OVER_STEADY) * STANDING_FORCE;
  return Math.max(0, sample.overloadRatio - standing * (sample.loadRatio - sample.overloadRatio));
}

/** Whether a gear was more than passed through, as between two rings. */
function isHeld(samples: readonly TraceSample[], at: number): boolean {
  const { developmentM } = samples[at] as TraceSample;
  let count = 1;
  for (let i = at - 1; samples[i]?.developmentM === developmentM && count < HELD_SAMPLES; i -= 1) count += 1;
  for (let i = at + 1; samples[i]?.developmentM === developmentM && count < HELD_SAMPLES; i += 1) count += 1;
  return count >= HELD_SAMPLES;
}

/** Hardest gear up to the foot and easiest gear after it was last used (m a turn). */
function gearsUsed(
  approach: readonly TraceSample[],
  pitch: Pitch,
): { readonly hardestM: number; readonly easiestM: number } {
  let hardestM = 0;
  let easiestM = Number.POSITIVE_INFINITY;
  for (const { distanceM, developmentM } of approach.filter((_, i) => isHeld(approach, i))) {
    if (distanceM <= pitch.footM && developmentM >= hardestM) {
      hardestM = developmentM;
      easiestM = developmentM;
    }
    easiestM = Math.min(easiestM, developmentM);
  }
  return hardestM === 0 ? { hardestM: 1, easiestM: 1 } : { hardestM, easiestM };
}

/**
 * Spinning before the foot, coasting included: how far the cranks would run above the band (share × metres), over
 * the last metres or since the first easier shift, whichever is longer.
 */
export function spinBefore(
  world: RideWorld,
  samples: readonly TraceSample[],
  pitch: Pitch,
  firstShiftM: number | null,
): number {
  const lineM = world.course.stopLinesM.findLast((m) => m <= pitch.footM) ?? 0;
  const fromM = Math.max(
    pitch.footM - APPROACH_M,
    lineM,
    Math.min(pitch.footM - SPIN_M, pitch.footM - (firstShiftM ?? 0)),
  );
  const before = samplesBetween(samples, fromM, pitch.footM);
  let sum = 0;
  for (let i = 1; i < before.length; i += 1) {
    const a = before[i - 1] as TraceSample;
    const b = before[i] as TraceSample;
    const rpm = (60 * b.speedMps) / b.developmentM;
    const over = rpm / b.bandHighRpm - 1;
    if (over > 0) sum += over * (b.distanceM - a.distanceM);
  }
  return sum;
}

/** Share of the last way before the foot on which the legs rested, brakes not counted. */
export function coastedBefore(world: RideWorld, samples: readonly TraceSample[], pitch: Pitch): number {
  const before = samplesBetween(samples, pitch.footM - COAST_M, pitch.footM).filter(
    (s) => !s.held && !restsAllowed(world, s.distanceM),
  );
  return before.length === 0
    ? 0
    : before.filter((s) => s.pressureRatio < IDLE_PRESSURE).length / before.length;
}

/** Speed at a place (m/s). */
export function speedAt(samples: readonly TraceSample[], placeM: number): number {
  return samples[Math.min(samples.length - 1, indexFrom(samples, placeM))]?.speedMps ?? 0;
}

/** Share of the way on a pitch that was pressed. */
export function pressedShare(samples: readonly TraceSample[], fromM: number, toM: number): number {
  const on = samplesBetween(samples, fromM, toM);
  return on.length === 0 ? 0 : on.filter((s) => s.pressureRatio > 1.15).length / on.length;
}

/** Development at a place (m a turn). */
export function developmentAt(samples: readonly TraceSample[], placeM: number): number {
  return samples[Math.min(samples.length - 1, indexFrom(samples, placeM))]?.developmentM ?? 0;
}

/** Development at the end of the judged stretch over that of the best ride there: above 1 is harder. */
export function gearAgainst(
  samples: readonly TraceSample[],
  reference: readonly TraceSample[],
  atM: number,
): number {
  const own = samples[Math.min(samples.length - 1, indexFrom(samples, atM))];
  const best = reference[Math.min(reference.length - 1, indexFrom(reference, atM))];
  return own === undefined || best === undefined ? 1 : own.developmentM / best.developmentM;
}

/** How much of the best ride's easing (in ratio) was made: 1 all of it, 0 none. */
export function easedShare(
  samples: readonly TraceSample[],
  reference: readonly TraceSample[],
  pitch: Pitch,
  toM: number,
): number {
  const eased = (ride: readonly TraceSample[]): number => {
    const { hardestM, easiestM } = gearsUsed(samplesBetween(ride, pitch.footM - APPROACH_M, toM), pitch);
    return hardestM / easiestM;
  };
  const best = eased(reference);
  return best <= 1.02 ? 1 : (eased(samples) - 1) / (best - 1);
}

/** Index of the first sample at or beyond a place: the way ridden never shrinks. */
function indexFrom(samples: readonly TraceSample[], placeM: number): number {
  return firstFrom(samples.length, (i) => (samples[i] as TraceSample).distanceM, placeM);
}

/** Samples from one place to another, both included. */
function samplesBetween(samples: readonly TraceSample[], fromM: number, toM: number): TraceSample[] {
  let end = indexFrom(samples, toM);
  while (end < samples.length && (samples[end] as TraceSample).distanceM <= toM) end += 1;
  return samples.slice(indexFrom(samples, fromM), end);
}

/** The slowest pedalled cadence between two places (rpm); 200 where nobody pedalled. */
export function worstCadence(samples: readonly TraceSample[], fromM: number, toM: number): number {
  return samplesBetween(samples, fromM, toM).reduce(
    (worst, s) => (s.pedalling ? Math.min(worst, s.cadenceRpm) : worst),
    200,
  );
}

/** The lowest that the band's lower edge comes to between two places (rpm). */
export function lowestBand(samples: readonly TraceSample[], fromM: number, toM: number): number {
  return samplesBetween(samples, fromM, toM).reduce((low, s) => Math.min(low, s.bandLowRpm), 200);
}
