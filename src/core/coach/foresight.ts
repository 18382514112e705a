/**
 * Foresight, pitch by pitch: what the hill did to the legs against what it did in the best ride, and where the gear
 * was changed against where the best ride changed it. Too late and too early lose alike; every pitch that asked the
 * best ride counts, whatever gear one comes in.
 */
import { clamp, lerp } from '../math/numbers.ts';
import type { Pitch } from '../course/types.ts';
import { copyOfState } from '../ride/draft.ts';
import { rideThrough } from '../ride/run.ts';
import { decisionPlaceM, type RideTrace, type TraceSample } from '../ride/trace.ts';
import { brakeForLine } from '../ride/pilot.ts';
import { TICKS_PER_S } from '../ride/clock.ts';
import type { RideState, RideWorld } from '../ride/types.ts';
import {
  coastedBefore,
  easedShare,
  gearAgainst,
  lowestBand,
  overloadBetween,
  pressedShare,
  speedAt,
  spinBefore,
  worstCadence,
} from './onPitch.ts';
import { ABOUT_RIGHT_CREDIT, APPROACH_M, JUDGED_M } from './pitchLimits.ts';
import { SHORT_RISE_M, shiftsOf } from './shifts.ts';
import type { Mark, PitchReport, Reason, ShiftReport, Timing } from './types.ts';

/** Pitches from which the best ride would have suffered less than this without its shifts are left out (load × metres). */
const ASKS_FROM_M = 5;
/** From here on not even a tendency is told. */
const QUITE_RIGHT_CREDIT = 0.9;
/** Half of the steps made this much before the best ride is free; so much more loses everything (m, ours). */
const EARLY_FREE_M = 12;
const EARLY_ALL_M = 60;
/** Legs that spin before the foot: a share of the band's upper edge times metres, free and all lost (ours). */
const SPIN_FREE_M = 6;
const SPIN_ALL_M = 26;
/** Steps made early lose what their place says only as far as the legs felt them: from so much spinning on, and with so much more fully. */
const FELT_FREE_M = 3;
const FELT_ALL_M = 10;
/**
 * Of what never shifting costs the legs a little is free; three eighths of it lose most of the credit, and what is left goes
 * slowly, so that a little less late is always worth a little (ours).
 */
const STRAIN_FREE = 0.03;
const STRAIN_MOST = 0.405;
const LATE_MOST = 0.6;
/**
 * Half of the steps made by the foot is ready, whenever the best ride was; made so much beyond it they lose all credit, as far as
 * the legs felt it: from the strain that is free on, and with so much more of it fully (m and share, ours).
 */
const READY_BEFORE_M = 5;
const BEHIND_FREE_M = 5;
const BEHIND_ALL_M = 16;
const STRAIN_FELT = 0.25;
/**
 * Who comes in a harder gear than the best ride has more to lose by not shifting; its strain is set beside that, up to so
 * much (load × metres, ours), because a hill that asked the best ride for little asks others for no more than a hill does.
 */
const SPAN_OF_OWN_M = 60;
/** Freewheeling in the last metres before the foot, more than the best ride: free and all lost (share of the way, ours). */
const COAST_FREE = 0.1;
const COAST_ALL = 0.5;
/** Arriving at the foot slower than so much of the best ride's speed is being early, and from that on all lost (ours). */
const SLOWED_FREE = 0.88;
const SLOWED_ALL = 0.6;
/** Legs may fall so far below the band where somebody digs in (rpm, ours). */
const DUG_IN_RPM = 10;
/** A what-if that has not got through after this long stops counting (s). */
const LONGEST_WHAT_IF_S = 120;

/** What the best ride met on a pitch; the same for every ride that is judged. */
interface Asked {
  readonly toM: number;
  readonly asked: boolean;
  readonly overloadNoneM: number;
  readonly overloadM: number;
  /** Where half of its easing was done (m along the road); null where it shifted nothing. */
  readonly readyAtM: number | null;
  /** There is a stop line between the decision and the foot. */
  readonly afterStop: boolean;
  readonly spinM: number;
  readonly coasted: number;
  readonly made: readonly ShiftReport[];
}

const known = new WeakMap<RideTrace, readonly Asked[]>();

/** Reports on all pitches the ride went over. */
export function judgePitches(world: RideWorld, trace: RideTrace, reference: RideTrace): PitchReport[] {
  let asked = known.get(reference);
  if (asked === undefined) {
    asked = world.course.pitches.map((pitch, index) => askedOf(world, reference, pitch, index));
    known.set(reference, asked);
  }
  return world.course.pitches.flatMap((pitch, index) =>
    trace.beforePitch[index] === undefined
      ? []
      : [judgePitch(world, trace, reference, pitch, index, (asked as readonly Asked[])[index] as Asked)],
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

function askedOf(world: RideWorld, reference: RideTrace, pitch: Pitch, index: number): Asked {
  const toM = Math.min(pitch.endM, pitch.footM + JUDGED_M);
  const fromM = decisionPlaceM(world.course, pitch);
  const before = reference.beforePitch[index];
  const overloadM = overloadBetween(reference.samples, fromM, toM);
  const made = shiftsFor(world, reference, pitch, toM);
  const none = before === undefined ? [] : withoutShifts(world, before, toM);
  const overloadNoneM = overloadBetween(none, fromM, toM);
  return {
    toM,
    asked: overloadNoneM - overloadM >= ASKS_FROM_M,
    overloadNoneM,
    overloadM,
    readyAtM: readyAt(made, Math.ceil(made.length / 2)),
    afterStop: world.course.stopLinesM.some((lineM) => lineM > fromM && lineM <= pitch.footM),
    spinM: spinBefore(world, reference.samples, pitch, firstBefore(made, pitch)),
    coasted: coastedBefore(world, reference.samples, pitch),
    made,
  };
}

function judgePitch(
  world: RideWorld,
  trace: RideTrace,
  reference: RideTrace,
  pitch: Pitch,
  index: number,
  best: Asked,
): PitchReport {
  const { toM } = best;
  const fromM = decisionPlaceM(world.course, pitch);
  const own = overloadBetween(trace.samples, fromM, toM);
  const footDown = trace.events.some(
    (event) => event.kind === 'foot-down' && event.distanceM >= fromM && event.distanceM <= pitch.endM + 5,
  );
  const worstCadenceRpm = worstCadence(trace.samples, pitch.footM, toM);
  const lowRpm = lowestBand(trace.samples, pitch.footM, toM);
  const dugIn = pitch.endM - pitch.footM <= SHORT_RISE_M && worstCadenceRpm >= lowRpm - DUG_IN_RPM;
  const strained = (own - best.overloadM) / spanOf(world, trace, best, own, fromM, index);
  const made = shiftsFor(world, trace, pitch, toM);
  const readyAtM = readyAt(made, Math.ceil(best.made.length / 2));
  // Who came in an easy gear made nothing too early; what it costs is seen in the spinning.
  const earlyM = best.readyAtM === null || readyAtM === null ? 0 : best.readyAtM - readyAtM;
  // Who is ready before the foot is not late, however early the best ride was.
  const behindM = readyAtM === null ? 0 : Math.min(-earlyM, readyAtM - (pitch.footM - READY_BEFORE_M));
  const behind = clamp((behindM - BEHIND_FREE_M) / BEHIND_ALL_M, 0, 1);
  const late = dugIn
    ? 0
    : Math.max(lateness(strained), behind * clamp((strained - STRAIN_FREE) / STRAIN_FELT, 0, 1));
  const far = clamp((earlyM - EARLY_FREE_M) / EARLY_ALL_M, 0, 1);
  const spun = spinBefore(world, trace.samples, pitch, firstBefore(made, pitch)) - best.spinM;
  const slowness =
    speedAt(trace.samples, pitch.footM) / Math.max(0.5, speedAt(reference.samples, pitch.footM));
  const slowed = clamp((SLOWED_FREE - slowness) / (SLOWED_FREE - SLOWED_ALL), 0, 1);
  const coasted = coastedBefore(world, trace.samples, pitch) - best.coasted;
  // Who must stop before the hill cannot shift for it too early.
  const ways = [
    ['shifts', best.afterStop ? 0 : far * Math.sqrt(far) * clamp((spun - FELT_FREE_M) / FELT_ALL_M, 0, 1)],
    ['spun', best.afterStop ? 0 : clamp((spun - SPIN_FREE_M) / SPIN_ALL_M, 0, 1)],
    ['slow', slowed],
    ['coasted', clamp((coasted - COAST_FREE) / (COAST_ALL - COAST_FREE), 0, 1)],
  ] as const;
  const [earlyBy, early] = ways.reduce((most, way) => (way[1] > most[1] ? way : most));
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
    easedShare: easedShare(trace.samples, reference.samples, pitch, toM),
    overloadM: own,
    overloadNoneM: best.overloadNoneM,
    overloadReferenceM: best.overloadM,
    stepsNeeded: best.made.length,
    referenceStepsBeforeFoot: best.made.filter((shift) => shift.startedAtM < pitch.footM).length,
    stepsMade: made.length,
    stepsBeforeFoot: made.filter((shift) => shift.startedAtM < pitch.footM).length,
    firstShiftBeforeFootM: firstBefore(made, pitch),
    referenceFirstShiftBeforeFootM: firstBefore(best.made, pitch),
    worstCadenceRpm,
    referenceWorstCadenceRpm: worstCadence(reference.samples, pitch.footM, toM),
    footDown,
  };
}

/** What never shifting would have cost beyond the best ride (load × metres): in its gear, or in the gear one came in. */
function spanOf(
  world: RideWorld,
  trace: RideTrace,
  best: Asked,
  own: number,
  fromM: number,
  index: number,
): number {
  const span = Math.max(best.overloadNoneM - best.overloadM, ASKS_FROM_M);
  const before = trace.beforePitch[index];
  if (span >= SPAN_OF_OWN_M || before === undefined || own - best.overloadM <= STRAIN_FREE * span)
    return span;
  const none = overloadBetween(withoutShifts(world, before, best.toM), fromM, best.toM);
  return Math.max(span, Math.min(SPAN_OF_OWN_M, none - best.overloadM));
}

/** What strained legs lose of a credit (0 to 1), from their strain over that of never shifting. */
function lateness(strained: number): number {
  return strained <= STRAIN_MOST
    ? LATE_MOST * Math.max(0, (strained - STRAIN_FREE) / (STRAIN_MOST - STRAIN_FREE))
    : Math.min(1, lerp(LATE_MOST, 1, (strained - STRAIN_MOST) / (1 - STRAIN_MOST)));
}

/** Rides on from a state with steady legs and levers at rest. */
function withoutShifts(world: RideWorld, before: RideState, toM: number): readonly TraceSample[] {
  const lastTick = before.tick + LONGEST_WHAT_IF_S * TICKS_PER_S;
  const from = {
    ...copyOfState(before),
    pressure: 'steady' as const,
    braking: false,
    queue: [],
    rear: null,
    front: null,
  };
  const stopWhen = (state: RideState): boolean => state.distanceM >= toM || state.tick >= lastTick;
  return rideThrough(world, brakeForLine(world), { from, stopWhen }).trace.samples;
}

/** Where so many of the easier shifts for a pitch had been begun (m along the road), or all where there are fewer; null without any. */
function readyAt(made: readonly ShiftReport[], count: number): number | null {
  return made[Math.min(made.length, count) - 1]?.startedAtM ?? null;
}

/** The easier shifts made for a pitch: on the way to it, after the pitch before, and on its judged stretch. */
function shiftsFor(world: RideWorld, trace: RideTrace, pitch: Pitch, toM: number): ShiftReport[] {
  const before = world.course.pitches.findLast(({ endM }) => endM <= pitch.footM);
  const fromM = Math.max(pitch.footM - APPROACH_M, before?.endM ?? 0);
  return shiftsOf(trace).filter(
    ({ direction, startedAtM }) => direction === 'easier' && startedAtM >= fromM && startedAtM <= toM,
  );
}

function firstBefore(shifts: readonly ShiftReport[], pitch: Pitch): number | null {
  const first = shifts[0];
  return first === undefined ? null : pitch.footM - first.startedAtM;
}

function timingOf(asked: boolean, credit: number, rightFrom: number, tooEarly: boolean): Timing {
  if (!asked || credit >= rightFrom) return 'about-right';
  return tooEarly ? 'too-early' : 'too-late';
}
