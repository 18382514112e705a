/** What the steepest part of a road comes to in a gear, if it went on for ever. */
import { greatestWindow } from '../math/numbers.ts';
import { settledRide } from '../model/steady.ts';
import type { Gear } from '../model/types.ts';
import type { RideWorld } from '../ride/types.ts';

/** So long a stretch of the road, the steepest there is, is what steady figures are worked out for (m). */
export const STEEPEST_MEAN_M = 50;

/** Works the steepest 50 m of the road out, with nothing left in reserve and no wind. */
export function steadyClimb(world: RideWorld, low: Gear) {
  const { machine, course } = world;
  const width = Math.min(STEEPEST_MEAN_M, course.slopeRatio.length);
  const at = greatestWindow(course.slopeRatio, width).from;
  const slopeRatio = meanOf(course.slopeRatio, at);
  const rollingFactor = meanOf(course.rollingFactor, at);
  // With the mean slope of them (rise over run).
  return { slopeRatio, ...settledRide(machine, low, { slopeRatio, windMps: 0, rollingFactor }) };
}

function meanOf(values: ArrayLike<number>, from: number): number {
  const width = Math.min(STEEPEST_MEAN_M, values.length);
  let sum = 0;
  for (let i = from; i < from + width; i += 1) sum += values[i] as number;
  return sum / width;
}
