/**
 * What the best ride met on each pitch, the same for every ride that is judged: what the hill would have cost without
 * its shifts, where half of them were done, and what it did before the foot. How a ride compares is `timing.ts`.
 */
import type { Pitch } from '../course/types.ts';
import { copyOfState } from '../ride/draft.ts';
import { TICKS_PER_S } from '../ride/clock.ts';
import { brakeForLine } from '../ride/pilot.ts';
import { rideThrough } from '../ride/run.ts';
import { decisionPlaceM, type RideTrace, type TraceSample } from '../ride/trace.ts';
import type { RideState, RideWorld } from '../ride/types.ts';
import { coastedBefore, overloadBetween, spinBefore } from './onPitch.ts';
import { APPROACH_M, JUDGED_M } from './pitchLimits.ts';
import { shiftsOf } from './shifts.ts';
import type { ShiftReport } from './types.ts';

/** Pitches from which the best ride would have suffered less than this without its shifts are left out (load × metres). */
export const ASKS_FROM_M = 5;
/** A what-if that has not got through after this long stops counting (s). */
const LONGEST_WHAT_IF_S = 120;

/** What the best ride met on a pitch; the same for every ride that is judged. */
export type AskedPitch = Readonly<ReturnType<typeof askedOf>>;

/** Kept for each best ride, because many rides are judged against one; found anew where it is asked of on another world. */
const known = new WeakMap<
  RideTrace,
  { readonly world: RideWorld; readonly pitches: readonly AskedPitch[] }
>();

/** What the best ride met on the pitches of a road, in their order. */
export function askedOfPitches(world: RideWorld, reference: RideTrace): readonly AskedPitch[] {
  const kept = known.get(reference);
  if (kept?.world === world) return kept.pitches;
  const pitches = world.course.pitches.map((pitch, index) => askedOf(world, reference, pitch, index));
  known.set(reference, { world, pitches });
  return pitches;
}

function askedOf(world: RideWorld, reference: RideTrace, pitch: Pitch, index: number) {
  const toM = Math.min(pitch.endM, pitch.footM + JUDGED_M);
  const fromM = decisionPlaceM(world.course, pitch);
  const before = reference.beforePitch[index];
  const overloadM = overloadBetween(reference.samples, fromM, toM);
  const made = shiftsFor(world, reference, pitch, toM);
  const none = before === undefined ? [] : withoutShifts(world, before, toM);
  const overloadNoneM = overloadBetween(none, fromM, toM);
  return {
    /** Legs are looked at from here to there (m along the road). */
    fromM,
    toM,
    asked: overloadNoneM - overloadM >= ASKS_FROM_M,
    overloadNoneM,
    overloadM,
    /** Where half of its easing was done (m along the road); null where it shifted nothing. */
    readyAtM: readyAt(made, Math.ceil(made.length / 2)),
    /** There is a stop line between the decision and the foot. */
    afterStop: world.course.stopLinesM.some((lineM) => lineM > fromM && lineM <= pitch.footM),
    spinM: spinBefore(world, reference.samples, pitch, firstBefore(made, pitch)),
    coasted: coastedBefore(world, reference.samples, pitch),
    made,
  };
}

/** Rides on from a state with steady legs and levers at rest. */
export function withoutShifts(world: RideWorld, before: RideState, toM: number): readonly TraceSample[] {
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
export function readyAt(made: readonly ShiftReport[], count: number): number | null {
  return made[Math.min(made.length, count) - 1]?.startedAtM ?? null;
}

/** The easier shifts made for a pitch: on the way to it, after the pitch before, and on its judged stretch. */
export function shiftsFor(world: RideWorld, trace: RideTrace, pitch: Pitch, toM: number): ShiftReport[] {
  const before = world.course.pitches.findLast(({ endM }) => endM <= pitch.footM);
  const fromM = Math.max(pitch.footM - APPROACH_M, before?.endM ?? 0);
  return shiftsOf(trace).filter(
    ({ direction, startedAtM }) => direction === 'easier' && startedAtM >= fromM && startedAtM <= toM,
  );
}

/** How far before the foot the first of these shifts was begun (m); null without any. */
export function firstBefore(shifts: readonly ShiftReport[], pitch: Pitch): number | null {
  const first = shifts[0];
  return first === undefined ? null : pitch.footM - first.startedAtM;
}
