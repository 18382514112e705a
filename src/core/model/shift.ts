/**
 * How a chain changes its place: work in crank turns, slowed by load. Deterministic, no dice. No published
 * shift timing was found; what is certain, and tested, is that a shift takes longer at low cadence.
 */

/** Turns of the cranks at rate 1 (ours). */
const REAR_EASIER_TURNS = 0.5;
const REAR_HARDER_TURNS = 0.25;
const FRONT_BIGGER_TURNS = 1;
const FRONT_SMALLER_TURNS = 0.5;
/** Turns needed to lift a dropped chain back on (ours). */
export const RESTORE_TURNS = 1.5;
/** Cadence of legs that turn without a chain while easing (rpm, ours). */
export const FREE_LEGS_RPM = 60;

const FREE_LOAD = 0.6;
const HANGING_LOAD = 1.9;
const HANGING_RATE = 0.06;

/** A shift whose mean load stays at or below this is clean, at or above the heavy one heavy. */
export const CLEAN_LOAD = 0.65;
export const HEAVY_LOAD = 1.05;
/** A front shift finished above this load, from or into a crossed gear, drops the chain (ours). */
export const DROP_LOAD = 1.5;
/** Below this rate for this long a shift is said to hang (ours). */
export const HUNG_RATE = 0.35;
export const HUNG_AFTER_S = 0.5;
/** Sprockets one push of a mechanical lever can sweep towards easier. */
export const SWEEP_SPROCKETS = 3;

/** Speed of the movement at a load (crank torque over reference torque): 1 free, 0.06 under full pressure. */
export function shiftRate(loadRatio: number): number {
  if (loadRatio <= FREE_LOAD) return 1;
  if (loadRatio >= HANGING_LOAD) return HANGING_RATE;
  return 1 - ((1 - HANGING_RATE) * (loadRatio - FREE_LOAD)) / (HANGING_LOAD - FREE_LOAD);
}

/** Crank turns one movement takes when free. `easier` is a bigger sprocket or a smaller ring. */
export function neededTurns(derailleur: 'rear' | 'front', direction: 'easier' | 'harder'): number {
  if (derailleur === 'rear') return direction === 'easier' ? REAR_EASIER_TURNS : REAR_HARDER_TURNS;
  return direction === 'easier' ? FRONT_SMALLER_TURNS : FRONT_BIGGER_TURNS;
}
