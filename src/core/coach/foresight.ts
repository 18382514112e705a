/**
 * Foresight, pitch by pitch: what the hill did to the legs against what it did in the best ride, and where the gear
 * was changed against where the best ride changed it. Too late and too early lose alike (`timing.ts`); every pitch that
 * asked the best ride (`asked.ts`) counts, whatever gear one comes in.
 */
import type { RideTrace } from '../ride/trace.ts';
import type { RideWorld } from '../ride/types.ts';
import { askedOfPitches, firstBefore } from './asked.ts';
import { developmentAt, easedShare, gearAgainst, pressedShare, worstCadence } from './onPitch.ts';
import { ABOUT_RIGHT_CREDIT } from './pitchLimits.ts';
import { earlyOf, lateOf, type Taken, takenBy } from './timing.ts';
import type { Mark, PitchReport, Reason, Timing } from './types.ts';

/** From here on not even a tendency is told. */
const QUITE_RIGHT_CREDIT = 0.9;

/** Reports on all pitches the ride went over. */
export function judgePitches(world: RideWorld, trace: RideTrace, reference: RideTrace): PitchReport[] {
  return askedOfPitches(world, reference).flatMap((best, index) =>
    trace.beforePitch[index] === undefined ? [] : [judgePitch(takenBy(world, trace, reference, index, best))],
  );
}

/** The foresight mark: mean credit of the pitches that asked something. */
export function foresightMark(pitches: readonly PitchReport[], weight: number): Mark {
  const asked = pitches.filter((pitch) => pitch.asked || pitch.footDown);
  if (asked.length === 0) return { value: null, weight, reasons: [] };
  const value = (100 * asked.reduce((sum, pitch) => sum + pitch.credit, 0)) / asked.length;
  const reasons: Reason[] = asked
    .filter((pitch) => pitch.credit < 0.95)
    .map((pitch) => ({
      code: pitch.footDown
        ? ('foot-down-pitch' as const)
        : pitch.early > pitch.late
          ? ('early-pitch' as const)
          : ('overloaded-pitch' as const),
      pitch: pitch.index,
      fromM: pitch.footM,
      amount: 1 - pitch.credit,
    }));
  reasons.sort((a, b) => b.amount - a.amount);
  return { value, weight, reasons };
}

/** The credit of a pitch, why, and what a coach shows of it. */
function judgePitch(taken: Taken): PitchReport {
  const { trace, reference, pitch, index, best, made, overloadM, earlyM } = taken;
  const { toM } = best;
  const late = lateOf(taken);
  const [earlyBy, early] = earlyOf(taken);
  const footDown = putFootDown(taken);
  const credit = footDown ? 0 : best.asked ? 1 - Math.max(late, early) : 1;
  return {
    index,
    footM: pitch.footM,
    endM: pitch.endM,
    steepestRatio: pitch.steepestRatio,
    asked: best.asked,
    credit,
    timing: timingOf(best.asked, credit, ABOUT_RIGHT_CREDIT, early > late),
    tendency: timingOf(best.asked, credit, QUITE_RIGHT_CREDIT, early > late),
    late,
    early,
    earlyBy,
    earlyM,
    pressed: pressedShare(trace.samples, pitch.footM, toM),
    gearRatio: gearAgainst(trace.samples, reference.samples, toM),
    wentHarder: wentHarder(taken),
    easedShare: easedShare(trace.samples, reference.samples, pitch, toM),
    overloadM,
    overloadNoneM: best.overloadNoneM,
    overloadReferenceM: best.overloadM,
    referenceSteps: best.made.length,
    referenceStepsBeforeFoot: best.made.filter((shift) => shift.startedAtM < pitch.footM).length,
    stepsMade: made.length,
    stepsBeforeFoot: made.filter((shift) => shift.startedAtM < pitch.footM).length,
    firstShiftBeforeFootM: firstBefore(made, pitch),
    referenceFirstShiftBeforeFootM: firstBefore(best.made, pitch),
    worstCadenceRpm: worstCadence(trace.samples, pitch.footM, pitch.endM),
    referenceWorstCadenceRpm: worstCadence(reference.samples, pitch.footM, pitch.endM),
    footDown,
  };
}

/** Whether hands took the wrong way: harder on the last metres before the foot, and not once easier there. */
function wentHarder({ trace, reference, pitch, best, made }: Taken): boolean {
  if (made.some(({ startedAtM }) => startedAtM >= best.fromM && startedAtM < pitch.footM)) return false;
  const becameHarder = ({ samples }: RideTrace): boolean =>
    developmentAt(samples, pitch.footM) > developmentAt(samples, best.fromM);
  return becameHarder(trace) && !becameHarder(reference);
}

/** Whether a foot went down on the pitch or just behind it. */
function putFootDown({ trace, pitch, best }: Taken): boolean {
  return trace.events.some(
    ({ kind, distanceM }) => kind === 'foot-down' && distanceM >= best.fromM && distanceM <= pitch.endM + 5,
  );
}

function timingOf(asked: boolean, credit: number, rightFrom: number, tooEarly: boolean): Timing {
  if (!asked || credit >= rightFrom) return 'about-right';
  return tooEarly ? 'too-early' : 'too-late';
}
