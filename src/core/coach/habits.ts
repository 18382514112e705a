/**
 * How somebody rides all along, beside the best ride: the gear away from hills and stop lines, and where time was left. A
 * fault of one hill and a habit of the whole ride can cost the same points on that hill; this tells them apart.
 */
import type { Course } from '../course/types.ts';
import { TICKS_PER_S } from '../ride/clock.ts';
import { beganTick, doneShifts, type RideTrace, SAMPLE_S, type TraceSample } from '../ride/trace.ts';
import { IDLE_PRESSURE } from './cadence.ts';
import type { RidingHabits } from './types.ts';

/**
 * Hills and stop lines begin to be got ready for so far before their foot, and are over so far behind their end (m). Who
 * is late or shifts too little is in too hard a gear only from the foot on and until the best ride is back; who is early
 * is in too easy a gear long before the foot.
 */
const AWAY_FOR_HARD = { approachM: 60, afterM: 80 };
const AWAY_FOR_EASY = { approachM: 140, afterM: 15 };
/** On less road than this no habit can be seen (m). */
const ENOUGH_M = 25;
/** Softer than this is pedalling softly (pressure, 1 is steady; easing is 0.4). */
const SOFT_PRESSURE = 0.8;
/** Softness so near to a movement of the chain belongs to the shift (s). */
const AROUND_SHIFT_S = 1;

/** Habits of a ride beside those of the best one. */
export function habitsOf(course: Course, trace: RideTrace, reference: RideTrace): RidingHabits {
  const own = softness(trace);
  const best = softness(reference);
  return {
    harderBy: Math.max(1, gearAwayFromHills(course, trace, reference, AWAY_FOR_HARD)),
    easierBy: Math.min(1, gearAwayFromHills(course, trace, reference, AWAY_FOR_EASY)),
    restedS: Math.max(0, own.restedS - best.restedS),
    softS: Math.max(0, own.softS - best.softS),
    shiftingS: Math.max(0, own.shiftingS - best.shiftingS),
  };
}

/** Mean of the gear over the best ride's, where both pedal and neither hill nor stop line is near; 1 where that is nowhere. */
function gearAwayFromHills(
  course: Course,
  trace: RideTrace,
  reference: RideTrace,
  { approachM, afterM }: typeof AWAY_FOR_HARD,
): number {
  const best = gearByMetre(reference);
  const stops = course.stopLinesM.map((atM) => ({ footM: atM, endM: atM }));
  const tasks = [...course.pitches, ...stops];
  let sum = 0;
  let metres = 0;
  gearByMetre(trace).forEach((developmentM, m) => {
    const other = best[m];
    const near = tasks.some(({ footM, endM }) => m > footM - approachM && m < endM + afterM);
    if (near || other === undefined) return;
    sum += developmentM / other;
    metres += 1;
  });
  return metres < ENOUGH_M ? 1 : sum / metres;
}

/** Development of each metre that was pedalled (m a turn); holes elsewhere. */
function gearByMetre(trace: RideTrace): number[] {
  const gears: number[] = [];
  for (const { distanceM, developmentM, pedalling } of trace.samples)
    if (pedalling) gears[Math.floor(distanceM)] = developmentM;
  return gears;
}

/** Seconds of legs that rest, that push softly, and that are soft for a shift. */
function softness(trace: RideTrace): Pick<RidingHabits, 'restedS' | 'softS' | 'shiftingS'> {
  const shifting = shiftTimes(trace);
  const seconds = (holds: (sample: TraceSample) => boolean): number =>
    SAMPLE_S *
    trace.samples.filter((sample) => !sample.held && sample.speedMps > 0.5 && holds(sample)).length;
  const inShift = ({ timeS }: TraceSample): boolean =>
    shifting.some(({ fromS, toS }) => timeS > fromS - AROUND_SHIFT_S && timeS < toS + AROUND_SHIFT_S);
  const soft = (sample: TraceSample): boolean => sample.pressureRatio < SOFT_PRESSURE;
  const rests = (sample: TraceSample): boolean => sample.pressureRatio < IDLE_PRESSURE;
  return {
    restedS: seconds((sample) => rests(sample) && !inShift(sample)),
    softS: seconds((sample) => soft(sample) && !rests(sample) && !inShift(sample)),
    shiftingS: seconds((sample) => soft(sample) && inShift(sample)),
  };
}

function shiftTimes(trace: RideTrace): { readonly fromS: number; readonly toS: number }[] {
  return doneShifts(trace).map((shift) => ({
    fromS: beganTick(shift) / TICKS_PER_S,
    toS: shift.tick / TICKS_PER_S,
  }));
}
