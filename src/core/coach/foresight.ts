/**
 * Foresight, pitch by pitch: what the hill did to the legs, against what would have happened if nobody had
 * shifted and if the reference had taken over, both from the player's own state 30 m before the foot.
 */
import { clamp, lerp } from '../math/numbers.ts';
import type { Pitch } from '../course/types.ts';
import { policyDriver } from '../planner/driver.ts';
import { OVERLOAD_FROM } from '../planner/costs.ts';
import type { Policy } from '../planner/plan.ts';
import { copyOfState } from '../ride/draft.ts';
import { type Controller, rideThrough } from '../ride/run.ts';
import { type RideTrace, type TraceSample } from '../ride/trace.ts';
import type { RideCommand, RideState, RideWorld } from '../ride/types.ts';
import { shiftsOf } from './shifts.ts';
import type { Mark, PitchReport, Reason, ShiftReport, Timing } from './types.ts';

/** A pitch is judged at most so far beyond its foot (m). */
const JUDGED_M = 80;
/** Pitches that ask less than this are left out (load × metres). */
const ASKS_FROM_M = 5;
/** Credit from which a pitch counts as taken about right (ours). */
const ABOUT_RIGHT_CREDIT = 0.7;
/** Spinning before the foot counts from this far above the band, and as too early from so many rpm·s (ours). */
const SPIN_MARGIN_RPM = 12;
const SPIN_BEFORE_M = 90;
const TOO_EARLY_RPM_S = 25;
/** A counterfactual that has not got through after this long stops counting (s). */
const LONGEST_WHAT_IF_S = 120;
const NO_COMMANDS: readonly RideCommand[] = [];

/** Reports on all pitches the ride went over. */
export function judgePitches(world: RideWorld, trace: RideTrace, policy: Policy): PitchReport[] {
  return world.course.pitches.flatMap((pitch, index) => {
    const before = trace.beforePitch[index];
    return before === undefined ? [] : [judgePitch(world, trace, policy, pitch, index, before)];
  });
}

/** The foresight mark: mean credit of the pitches that asked something. */
export function foresightMark(pitches: readonly PitchReport[], weight: number): Mark {
  const asked = pitches.filter((pitch) => pitch.asked);
  if (asked.length === 0) return { value: null, weight, reasons: [] };
  const value = (100 * asked.reduce((sum, pitch) => sum + pitch.credit, 0)) / asked.length;
  const reasons: Reason[] = asked
    .filter((pitch) => pitch.credit < 0.95)
    .map((pitch) => ({
      code: pitch.footDown ? ('foot-down-pitch' as const) : ('overloaded-pitch' as const),
      pitch: pitch.index,
      fromM: pitch.footM,
      amount: 1 - pitch.credit,
    }));
  reasons.sort((a, b) => b.amount - a.amount);
  return { value, weight, reasons };
}

/** Leg overload of a ride over a stretch: ∫ max(0, load − 1.3) dx (load × metres). */
function overloadM(samples: readonly TraceSample[], fromM: number, toM: number): number {
  let sum = 0;
  for (let i = Math.max(1, indexFrom(samples, fromM)); i < samples.length; i += 1) {
    const a = samples[i - 1] as TraceSample;
    const b = samples[i] as TraceSample;
    if (a.distanceM >= toM) break;
    const wayM = b.distanceM - a.distanceM;
    if (b.distanceM <= fromM || wayM <= 0) continue;
    const start = Math.max(a.distanceM, fromM);
    const end = Math.min(b.distanceM, toM);
    const load = lerp(a.loadRatio, b.loadRatio, ((start + end) / 2 - a.distanceM) / wayM);
    sum += Math.max(0, load - OVERLOAD_FROM) * (end - start);
  }
  return sum;
}

function judgePitch(
  world: RideWorld,
  trace: RideTrace,
  policy: Policy,
  pitch: Pitch,
  index: number,
  before: RideState,
): PitchReport {
  const fromM = before.distanceM;
  const toM = Math.min(pitch.endM, pitch.footM + JUDGED_M);
  const { best, none } = whatIfs(world, before, policy, toM);
  const own = overloadM(trace.samples, fromM, toM);
  const overloadNoneM = overloadM(none, fromM, toM);
  const overloadReferenceM = overloadM(best.samples, fromM, toM);
  const span = overloadNoneM - overloadReferenceM;
  const footDown = trace.events.some(
    (event) => event.kind === 'foot-down' && event.distanceM >= fromM && event.distanceM <= pitch.endM + 5,
  );
  const asked = span >= ASKS_FROM_M;
  const credit = footDown ? 0 : asked ? clamp(1 - (own - overloadReferenceM) / span, 0, 1) : 1;
  const made = easierShifts(shiftsOf(trace), fromM, toM);
  const bestMade = easierShifts(shiftsOf(best), fromM, toM);
  return {
    index,
    footM: pitch.footM,
    endM: pitch.endM,
    steepestRatio: pitch.steepestRatio,
    asked,
    credit,
    timing: timingOf(trace, best, pitch, credit, asked),
    overloadM: own,
    overloadNoneM,
    overloadReferenceM,
    stepsNeeded: bestMade.length,
    referenceStepsBeforeFoot: bestMade.filter((shift) => shift.startedAtM < pitch.footM).length,
    stepsMade: made.length,
    stepsBeforeFoot: made.filter((shift) => shift.startedAtM < pitch.footM).length,
    firstShiftBeforeFootM: firstBefore(made, pitch),
    referenceFirstShiftBeforeFootM: firstBefore(bestMade, pitch),
    worstCadenceRpm: worstCadence(trace.samples, pitch.footM, toM),
    referenceWorstCadenceRpm: worstCadence(best.samples, pitch.footM, toM),
    footDown,
  };
}

/**
 * Rides on from the player's own state, legs steady, levers at rest, until the end of the stretch: as the
 * reference would, and without any shift. Until the reference first acts the two are one ride, ridden once.
 */
function whatIfs(
  world: RideWorld,
  before: RideState,
  policy: Policy,
  toM: number,
): { readonly best: RideTrace; readonly none: readonly TraceSample[] } {
  const lastTick = before.tick + LONGEST_WHAT_IF_S * 120;
  const stopWhen = (state: RideState): boolean => state.distanceM >= toM || state.tick >= lastTick;
  const driver = policyDriver(world, policy);
  let parting: RideState | null = null;
  const untilParting: Controller = (state) => {
    const commands = driver(state);
    if (parting === null && commands.length > 0) parting = copyOfState(state);
    return commands;
  };
  const best = rideThrough(world, untilParting, { from: atRest(before), stopWhen }).trace;
  const from = parting as RideState | null;
  if (from === null) return { best, none: best.samples };
  const partedS = from.tick * world.tickS;
  const together = best.samples.filter((sample) => sample.timeS < partedS);
  const alone = rideThrough(world, () => NO_COMMANDS, { from, stopWhen }).trace;
  return { best, none: [...together, ...alone.samples] };
}

function atRest(state: RideState): RideState {
  return { ...state, pressure: 'steady', braking: false, queue: [], rear: null, front: null };
}

/** Index of the first sample at or beyond a place, found by halving: the way ridden never shrinks. */
function indexFrom(samples: readonly TraceSample[], placeM: number): number {
  let low = 0;
  let high = samples.length;
  while (low < high) {
    const middle = (low + high) >> 1;
    if ((samples[middle] as TraceSample).distanceM < placeM) low = middle + 1;
    else high = middle;
  }
  return low;
}

/** Samples from one place to another, both included. */
function samplesBetween(samples: readonly TraceSample[], fromM: number, toM: number): TraceSample[] {
  let end = indexFrom(samples, toM);
  while (end < samples.length && (samples[end] as TraceSample).distanceM <= toM) end += 1;
  return samples.slice(indexFrom(samples, fromM), end);
}

function easierShifts(shifts: readonly ShiftReport[], fromM: number, toM: number): ShiftReport[] {
  return shifts.filter(
    (shift) => shift.direction === 'easier' && shift.startedAtM >= fromM - 20 && shift.startedAtM <= toM,
  );
}

function firstBefore(shifts: readonly ShiftReport[], pitch: Pitch): number | null {
  const first = shifts[0];
  return first === undefined ? null : pitch.footM - first.startedAtM;
}

function worstCadence(samples: readonly TraceSample[], fromM: number, toM: number): number {
  return samplesBetween(samples, fromM, toM).reduce(
    (worst, s) => (s.pedalling ? Math.min(worst, s.cadenceRpm) : worst),
    200,
  );
}

/** Too late if the hill leaned on the legs, too early if they spun long before it came. */
function timingOf(trace: RideTrace, best: RideTrace, pitch: Pitch, credit: number, asked: boolean): Timing {
  if (asked && credit < ABOUT_RIGHT_CREDIT) return 'too-late';
  const spun = spinRpmS(trace, pitch) - spinRpmS(best, pitch);
  return spun > TOO_EARLY_RPM_S ? 'too-early' : 'about-right';
}

function spinRpmS(trace: RideTrace, pitch: Pitch): number {
  const before = samplesBetween(trace.samples, pitch.footM - SPIN_BEFORE_M, pitch.footM);
  return before.reduce((sum, s) => {
    const over = s.cadenceRpm - s.bandHighRpm - SPIN_MARGIN_RPM;
    return s.pedalling && over > 0 ? sum + over * 0.1 : sum;
  }, 0);
}
