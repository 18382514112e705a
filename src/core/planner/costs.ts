/**
 * What a good ride avoids, in one currency. The weights trade spinning against grinding and early against
 * late: they are a coaching decision of ours, explained in MODEL.md, not a law of nature.
 */

import type { Course } from '../course/types.ts';
import { sampleAt } from '../math/numbers.ts';
import { UNDONE_WITHIN_S } from '../ride/trace.ts';

/** Cost of a second one rpm below the band, and one rpm above it (spinning up before a hill is a small fault). */
const BELOW_BAND_PER_RPM_S = 1 / 12;
const ABOVE_BAND_PER_RPM_S = 1 / 45;
/** Legs above this spin out of control: each rpm·s costs this much more. */
const SPIN_OUT_ABOVE_BAND_RPM = 30;
const SPIN_OUT_PER_RPM_S = 1 / 6;
/** A second on a crossed chain, and a second at all. */
export const CROSSED_PER_S = 1;
export const TIME_PER_S = 0.1;
/** A shift, each further sprocket of it, and a ring change on top. */
const SHIFT = 0.25;
const FURTHER_STEP = 0.05;
const FRONT_SHIFT = 0.5;
/** Load of the road on the pedals in the moment of shifting, over steady effort there, above which it costs; doubled in front. */
export const SHIFT_LOAD_FROM = 1.15;
export const SHIFT_LOAD = 1.6;
/** A second of load on the legs beyond what the band can carry: this makes the plan shift before the hill leans on them. */
export const OVERLOAD_PER_S = 0.7;
/** A second of effort above steady, for each further share of steady: pressing and standing are paid for. */
export const PRESS_PER_S = 0.6;
/** A shift that the next one undoes: at once, or within so far (m) on the same road, slopes so near to each other (rise over run). */
const UNDONE = 1;
export const TURN_ROUND_M = 25;
const OTHER_ROAD = 0.02;
/** A foot on the ground. */
export const FOOT_DOWN = 8;

/** Cost per second of turning the legs at a cadence (rpm) against a band. */
export function cadenceCostPerS(rpm: number, lowRpm: number, highRpm: number): number {
  if (rpm < lowRpm) return (lowRpm - rpm) * BELOW_BAND_PER_RPM_S;
  if (rpm <= highRpm) return 0;
  const wild = Math.max(0, rpm - highRpm - SPIN_OUT_ABOVE_BAND_RPM);
  return (rpm - highRpm) * ABOVE_BAND_PER_RPM_S + wild * SPIN_OUT_PER_RPM_S;
}

/** Cost per second of what the legs carry beyond the band's load, and of pressing (pressure 1 is steady). */
export function effortCostPerS(overload: number, pressureRatio: number): number {
  return (
    (overload > 0 ? overload * OVERLOAD_PER_S : 0) +
    (pressureRatio > 1 ? (pressureRatio - 1) * PRESS_PER_S : 0)
  );
}

/** Part of a shift's cost that only its steps decide. */
export function stepsCost(rearSteps: number, ringSteps: number): number {
  return SHIFT + (Math.abs(rearSteps) + Math.abs(ringSteps) - 1) * FURTHER_STEP;
}

/** Part of a shift's cost that only its load decides. */
export function heavyCost(loadRatio: number): number {
  return Math.max(0, loadRatio - SHIFT_LOAD_FROM) * SHIFT_LOAD;
}

/** Cost of moving the chain by so many rear sprockets and rings at a load. */
export function shiftCost(rearSteps: number, ringSteps: number, loadRatio: number): number {
  if (rearSteps === 0 && ringSteps === 0) return 0;
  return sumOfShift(stepsCost(rearSteps, ringSteps), heavyCost(loadRatio), ringSteps !== 0);
}

/** The same from its two parts, for whoever has them already; what only the load decides counts twice in front. */
export function sumOfShift(steps: number, heavy: number, front: boolean): number {
  return steps + heavy + (front ? FRONT_SHIFT + heavy : 0);
}

/** How the rear alone was moved last: by how many sprockets or gears of a hub, where that began (m), and how long ago it ended (s). */
interface RearMove {
  readonly steps: number;
  readonly atM: number;
  readonly agoS: number;
}

/**
 * Cost of moving the rear by so many steps at a place, after a move before: undone at once is fidgeting, and where the
 * road has not changed it is little better soon after. A ring change explains whatever is done behind; its steps count
 * as none.
 */
export function undoneCost(course: Course, before: RearMove, steps: number, atM: number): number {
  if (before.steps * steps >= 0) return 0;
  const soon = atM - before.atM < TURN_ROUND_M && isSameRoad(course, before.atM, atM);
  return soon || before.agoS <= UNDONE_WITHIN_S ? UNDONE : 0;
}

/** Whether the road is about as steep at two places (m), the first one first, and nobody must stop between them. */
export function isSameRoad({ slopeRatio, stopLinesM }: Course, fromM: number, toM: number): boolean {
  if (stopLinesM.some((lineM) => lineM > fromM && lineM <= toM)) return false;
  return Math.abs(sampleAt(slopeRatio, fromM) - sampleAt(slopeRatio, toM)) < OTHER_ROAD;
}
