/**
 * Shifts of a ride as a coach counts them: single chain movements for easing, and manoeuvres (movements
 * that belong together) for economy.
 */
import { clamp } from '../math/numbers.ts';
import { loadsChain } from '../model/motor.ts';
import { CLEAN_LOAD, HEAVY_LOAD } from '../model/shift.ts';
import { TICKS_PER_S } from '../ride/clock.ts';
import { beganTick, doneShifts, type RideTrace, type ShiftDone, UNDONE_WITHIN_S } from '../ride/trace.ts';
import type { RideWorld } from '../ride/types.ts';
import type { Mark, Reason, ShiftReport } from './types.ts';

/** Movements nearer than this belong to one manoeuvre. */
const SAME_MANOEUVRE_S = 1;
const UNDONE_COSTS = 5;
/** A front shift counts as this many rear ones for easing. */
export const FRONT_SHARE = 2;
const FREE_AT_LEAST = 4;
const FREE_SHARE_OF_REFERENCE = 1.5;
/** Three steps easier and three harder for a hill that cannot be ridden over are never restless, whatever the best ride's legs made of it. */
const FREE_PER_HILL = 6;
/** A rise so short that the legs stay near the band is dug in over, and well ridden (m; common practice, no source). */
export const SHORT_RISE_M = 32;

/** All chain movements of a ride, in order. */
export function shiftsOf(trace: RideTrace): ShiftReport[] {
  return doneShifts(trace).map(({ kind: _, tick, ...movement }) => ({
    ...movement,
    timeS: tick / TICKS_PER_S,
    kind: movement.load <= CLEAN_LOAD ? 'clean' : movement.load >= HEAVY_LOAD ? 'heavy' : 'fair',
  }));
}

/** Manoeuvres: runs of movements with less than a second between them that do not turn back. */
export function countManoeuvres(trace: RideTrace): number {
  let count = 0;
  let last: ShiftDone | undefined;
  for (const event of doneShifts(trace)) {
    const together =
      last !== undefined &&
      beganTick(event) - last.tick < SAME_MANOEUVRE_S * TICKS_PER_S &&
      (event.derailleur !== last.derailleur || event.direction === last.direction);
    if (!together) count += 1;
    last = event;
  }
  return count;
}

/** A shift asked for while the legs rest comes late and with the first push: it earns so much of its credit (ours). */
const WAITED_CREDIT = 0.4;

/** Credit of one shift by its load: 1 when clean, 0 when heavy. */
export function easingCredit({ load, waited }: Pick<ShiftDone, 'load' | 'waited'>): number {
  const credit = clamp((HEAVY_LOAD - load) / (HEAVY_LOAD - CLEAN_LOAD), 0, 1);
  return waited === true ? WAITED_CREDIT * credit : credit;
}

/** From this share of a shift's load on it was the motor that had not let go (ours). */
const MOTOR_SHARE = 0.25;

/** Whether a shift was no clean one because a crank motor still pulled. */
export function motorPulled({ load, motorLoad = 0 }: Pick<ShiftDone, 'load' | 'motorLoad'>): boolean {
  return load > CLEAN_LOAD && motorLoad >= MOTOR_SHARE * load;
}

/**
 * The heavy shifts of a ride that a crank motor made heavy, if it did most of them; else null. Without a heavy one those
 * a hub held back speak, as long as the battery gave anything, and without these the ones that were not quite clean.
 */
export function motorToBlame(
  { machine }: Pick<RideWorld, 'machine'>,
  trace: Pick<RideTrace, 'events'>,
): { readonly heavy: number } | null {
  if (!loadsChain(machine.bike)) return null;
  const done = doneShifts(trace);
  const heavy = done.filter(({ load }) => load >= HEAVY_LOAD);
  const byMotor = heavy.filter(motorPulled).length;
  if (heavy.length > 0) return 2 * byMotor > heavy.length ? { heavy: byMotor } : null;
  const emptyTick = trace.events.find(({ kind }) => kind === 'battery-empty')?.tick ?? Infinity;
  const held = trace.events.filter((event) => event.kind === 'shift-hung' && event.hub === true);
  const fair = done.filter(({ load }) => load > CLEAN_LOAD);
  const pulled =
    held.length > 0 ? held.filter(({ tick }) => tick < emptyTick).length : fair.filter(motorPulled).length;
  return 2 * pulled > (held.length > 0 ? held.length : fair.length) ? { heavy: 0 } : null;
}

/**
 * The easing mark: mean credit, front shifts double. Without a shift there is nothing to judge, but none where the
 * best ride shifted is nothing earned.
 */
export function easingMark(trace: RideTrace, reference: RideTrace, weight: number): Mark {
  let credit = 0;
  let weights = 0;
  const reasons: Reason[] = [];
  for (const event of doneShifts(trace)) {
    const share = event.derailleur === 'front' ? FRONT_SHARE : 1;
    const earned = easingCredit(event);
    credit += share * earned;
    weights += share;
    if (event.waited === true)
      reasons.push({ code: 'waited-shift', fromM: event.startedAtM, amount: event.load });
    else if (earned < 0.5)
      reasons.push({
        code: 'heavy-shift',
        fromM: event.startedAtM,
        amount: event.load,
        derailleur: event.derailleur,
        direction: event.direction,
        ...(event.hub === true ? { hub: event.hub } : {}),
        ...(motorPulled(event) ? { motor: true as const } : {}),
      });
  }
  reasons.sort((a, b) => b.amount - a.amount);
  if (weights === 0) return { value: leftAlone(trace, reference) ? 0 : null, weight, reasons };
  return { value: (100 * credit) / weights, weight, reasons };
}

/** True if a ride left all levers alone on a road where the reference ride needed them. */
export function leftAlone(trace: RideTrace, reference: RideTrace): boolean {
  return doneShifts(trace).length === 0 && doneShifts(reference).length > 0;
}

/** Sprockets and rings moved through, one by one: clicking three times is as good as one sweep of three. */
function countSteps(trace: RideTrace): number {
  return doneShifts(trace).length;
}

/**
 * The economy mark: free up to 1.5 × the best ride's steps, at least four and six for each hill, then down to 0 at three
 * times that; undone shifts cost 5 each. Who left all levers alone where they were needed has not been thrifty and gets nothing.
 */
export function economyMark(world: RideWorld, trace: RideTrace, reference: RideTrace, weight: number): Mark {
  if (leftAlone(trace, reference)) return { value: 0, weight, reasons: [] };
  const count = countSteps(trace);
  const needed = countSteps(reference);
  const hills = world.course.pitches.filter(({ footM, endM }) => endM - footM > SHORT_RISE_M).length;
  const free = Math.max(FREE_AT_LEAST, FREE_PER_HILL * hills, FREE_SHARE_OF_REFERENCE * needed);
  const undone = undoneShifts(trace);
  const value = clamp(50 * (3 - count / free), 0, 100) - UNDONE_COSTS * undone.length;
  const reasons: Reason[] = undone.map((event) => ({
    code: 'undone',
    fromM: event.startedAtM,
    amount: 1,
  }));
  if (count > free) reasons.unshift({ code: 'many-shifts', amount: count, needed });
  return { value: Math.max(0, value), weight, reasons };
}

/** Movements that the same derailleur takes back within two seconds, unless a ring change explains it. */
function undoneShifts(trace: RideTrace): ShiftDone[] {
  const done = doneShifts(trace);
  const fronts = done.filter((event) => event.derailleur === 'front');
  return done.filter((event, i) => {
    const compensates = fronts.some(
      (front) => front !== event && Math.abs(front.tick - event.tick) <= UNDONE_WITHIN_S * TICKS_PER_S,
    );
    if (compensates) return false;
    const back = done.slice(i + 1).find((later) => later.derailleur === event.derailleur);
    return (
      back !== undefined &&
      back.direction !== event.direction &&
      back.tick - event.tick <= UNDONE_WITHIN_S * TICKS_PER_S
    );
  });
}
