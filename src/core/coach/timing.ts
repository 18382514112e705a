/**
 * How a ride took a pitch beside the best ride: how late it was, by what the hill did to the legs and where the gear was
 * changed, and how early. Both are what a credit loses (0 to 1); what becomes of them is `foresight.ts`.
 */
import type { Pitch } from '../course/types.ts';
import { clamp, lerp } from '../math/numbers.ts';
import type { RideTrace } from '../ride/trace.ts';
import type { RideWorld } from '../ride/types.ts';
import { type AskedPitch, ASKS_FROM_M, firstBefore, readyAt, shiftsFor, withoutShifts } from './asked.ts';
import { coastedBefore, lowestBand, overloadBetween, speedAt, spinBefore, worstCadence } from './onPitch.ts';
import { SHORT_RISE_M } from './shifts.ts';
import type { PitchReport, ShiftReport } from './types.ts';

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

/** One ride on one pitch, beside the best ride. */
export interface Taken {
  readonly world: RideWorld;
  readonly trace: RideTrace;
  readonly reference: RideTrace;
  readonly pitch: Pitch;
  readonly index: number;
  readonly best: AskedPitch;
  readonly overloadM: number;
  readonly worstCadenceRpm: number;
  readonly made: readonly ShiftReport[];
  /** Where half as many steps as the best ride makes were begun (m along the road); null without any. */
  readonly readyAtM: number | null;
  /** So much before the best ride, negative behind it; 0 where one of the two made no shift (m). */
  readonly earlyM: number;
}

/** Looks at a pitch of a ride once, for everything that is said of it. */
export function takenBy(
  world: RideWorld,
  trace: RideTrace,
  reference: RideTrace,
  index: number,
  best: AskedPitch,
): Taken {
  const pitch = world.course.pitches[index] as Pitch;
  const made = shiftsFor(world, trace, pitch, best.toM);
  const readyAtM = readyAt(made, Math.ceil(best.made.length / 2));
  return {
    world,
    trace,
    reference,
    pitch,
    index,
    best,
    overloadM: overloadBetween(trace.samples, best.fromM, best.toM),
    worstCadenceRpm: worstCadence(trace.samples, pitch.footM, best.toM),
    made,
    readyAtM,
    // Who came in an easy gear made nothing too early; what it costs is seen in the spinning.
    earlyM: best.readyAtM === null || readyAtM === null ? 0 : best.readyAtM - readyAtM,
  };
}

/** What being late loses: by the strain on the legs, or by the place of the shifts as far as the legs felt it. */
export function lateOf(taken: Taken): number {
  if (isDugIn(taken)) return 0;
  const strained = (taken.overloadM - taken.best.overloadM) / spanOf(taken);
  const felt = clamp((strained - STRAIN_FREE) / STRAIN_FELT, 0, 1);
  return Math.max(lateness(strained), behind(taken) * felt);
}

/** Whether somebody dug in over a rise so short that the legs stayed near the band. */
function isDugIn({ trace, pitch, best, worstCadenceRpm }: Taken): boolean {
  const lowRpm = lowestBand(trace.samples, pitch.footM, best.toM);
  return pitch.endM - pitch.footM <= SHORT_RISE_M && worstCadenceRpm >= lowRpm - DUG_IN_RPM;
}

/** What never shifting would have cost beyond the best ride (load × metres): in its gear, or in the gear one came in. */
function spanOf({ world, trace, index, best, overloadM }: Taken): number {
  const span = Math.max(best.overloadNoneM - best.overloadM, ASKS_FROM_M);
  const before = trace.beforePitch[index];
  if (span >= SPAN_OF_OWN_M || before === undefined || overloadM - best.overloadM <= STRAIN_FREE * span)
    return span;
  const none = overloadBetween(withoutShifts(world, before, best.toM), best.fromM, best.toM);
  return Math.max(span, Math.min(SPAN_OF_OWN_M, none - best.overloadM));
}

/** What strained legs lose of a credit (0 to 1), from their strain over that of never shifting. */
function lateness(strained: number): number {
  return strained <= STRAIN_MOST
    ? LATE_MOST * Math.max(0, (strained - STRAIN_FREE) / (STRAIN_MOST - STRAIN_FREE))
    : Math.min(1, lerp(LATE_MOST, 1, (strained - STRAIN_MOST) / (1 - STRAIN_MOST)));
}

/** How far behind the best ride the shifts were (0 to 1). Who is ready before the foot is not late, however early it was. */
function behind({ pitch, readyAtM, earlyM }: Taken): number {
  const behindM = readyAtM === null ? 0 : Math.min(-earlyM, readyAtM - (pitch.footM - READY_BEFORE_M));
  return clamp((behindM - BEHIND_FREE_M) / BEHIND_ALL_M, 0, 1);
}

/** What being early loses, and by which of its ways most. Who must stop before the hill cannot shift for it too early. */
export function earlyOf(taken: Taken): readonly [earlyBy: PitchReport['earlyBy'], early: number] {
  const { world, trace, pitch, best, made, earlyM } = taken;
  const far = clamp((earlyM - EARLY_FREE_M) / EARLY_ALL_M, 0, 1);
  const spun = spinBefore(world, trace.samples, pitch, firstBefore(made, pitch)) - best.spinM;
  const coasted = coastedBefore(world, trace.samples, pitch) - best.coasted;
  const ways = [
    ['shifts', best.afterStop ? 0 : far * Math.sqrt(far) * clamp((spun - FELT_FREE_M) / FELT_ALL_M, 0, 1)],
    ['spun', best.afterStop ? 0 : clamp((spun - SPIN_FREE_M) / SPIN_ALL_M, 0, 1)],
    ['slow', slowed(taken)],
    ['coasted', clamp((coasted - COAST_FREE) / (COAST_ALL - COAST_FREE), 0, 1)],
  ] as const;
  return ways.reduce((most, way) => (way[1] > most[1] ? way : most));
}

/** How much slower than the best ride one came to the foot, from free (0) to all lost (1). */
function slowed({ trace, reference, pitch }: Taken): number {
  const slowness =
    speedAt(trace.samples, pitch.footM) / Math.max(0.5, speedAt(reference.samples, pitch.footM));
  return clamp((SLOWED_FREE - slowness) / (SLOWED_FREE - SLOWED_ALL), 0, 1);
}
