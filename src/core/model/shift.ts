/**
 * How a chain changes its place: work in crank turns, slowed by load. Deterministic, no dice. No published
 * shift timing was found; what is certain, and tested, is that a shift takes longer at low cadence.
 */
import { PI } from '../math/numbers.ts';
import { GRAVITY } from './load.ts';
import type { Machine } from './types.ts';

/** Half an inch between two pins (the standard of bicycle chains, ISO 9633). */
const CHAIN_PITCH_M = 0.0127;

/** Turns of the cranks at rate 1 (ours). */
const REAR_EASIER_TURNS = 0.5;
const REAR_HARDER_TURNS = 0.25;
const FRONT_BIGGER_TURNS = 1;
const FRONT_SMALLER_TURNS = 0.5;
/** Turns needed to lift a dropped chain back on (ours). */
export const RESTORE_TURNS = 1.5;
/** Cadence of legs that turn without a chain while easing (rpm, ours). */
export const FREE_LEGS_RPM = 60;

/** Pull of the chain, over the rider's weight, up to which it moves freely, and from which on it barely does (ours). */
const FREE_PULL = 0.3;
const STUCK_PULL = 1.2;
const STUCK_RATE = 0.15;

/** A shift whose mean load stays at or below this is clean, at or above the heavy one heavy. */
export const CLEAN_LOAD = 0.65;
export const HEAVY_LOAD = 1.05;
/** A front shift made under a mean pull above this, from or into a crossed gear, drops the chain (ours). */
export const DROP_PULL = 0.75;
/** A shift is said to hang when the chain has been moving for so long and more pull than this is on it just then (ours). */
export const HUNG_AFTER_S = 1.2;
export const HUNG_PULL = 0.6;

/**
 * Pull on the upper run of the chain over the rider's weight, as a mean of a turn: torque ÷ radius of the ring.
 * Measured in weights because a bike is built for those who ride it: a child's chain is held by a child's derailleur.
 */
export function chainPull(machine: Machine, crankTorqueNm: number, ringTeeth: number): number {
  const radiusM = (ringTeeth * CHAIN_PITCH_M) / (2 * PI);
  return crankTorqueNm / (radiusM * machine.rider.massKg * GRAVITY);
}

/**
 * Share of the mean pull at an angle of the cranks: none when they stand upright, one and a half times with one
 * forward. A parabola over each half turn instead of a sine, so that every browser gives the same bits.
 */
export function pullAtAngle(crankTurns: number): number {
  const halves = crankTurns * 2;
  const u = halves - Math.floor(halves);
  return 6 * u * (1 - u);
}

/** Speed of the movement under a pull: 1 free, 0.15 where it barely moves. */
export function shiftRate(pull: number): number {
  if (pull <= FREE_PULL) return 1;
  if (pull >= STUCK_PULL) return STUCK_RATE;
  return 1 - ((1 - STUCK_RATE) * (pull - FREE_PULL)) / (STUCK_PULL - FREE_PULL);
}

/** A hub takes another gear at once where the load (crank torque over reference torque) is no more than this (ours). */
const HUB_TAKES_LOAD = CLEAN_LOAD;
/** Pushed on harder than this it holds its gear for as long as one pushes (ours). */
const HUB_HOLDS_LOAD = 1.8;
/** In between it slips into the gear, with a knock, where the cranks pass upright after so many turns of waiting (ours). */
const HUB_SLIPS_TURNS = 1;
const HUB_SLIPS_PULL = 0.15;

/**
 * What a hub does with a gear that is asked for: a loaded pawl is held by friction until the load falls (common
 * practice, no source). Standing, coasting and with the pressure off there is none, and it takes at once.
 */
export function hubAnswer(
  load: number,
  waitedTurns: number,
  crankTurns: number,
): 'takes' | 'slips' | 'waits' {
  if (load <= HUB_TAKES_LOAD) return 'takes';
  if (load > HUB_HOLDS_LOAD || waitedTurns < HUB_SLIPS_TURNS) return 'waits';
  return pullAtAngle(crankTurns) < HUB_SLIPS_PULL ? 'slips' : 'waits';
}

/** Crank turns one movement takes when free. `easier` is a bigger sprocket or a smaller ring. */
export function neededTurns(derailleur: 'rear' | 'front', direction: 'easier' | 'harder'): number {
  if (derailleur === 'rear') return direction === 'easier' ? REAR_EASIER_TURNS : REAR_HARDER_TURNS;
  return direction === 'easier' ? FRONT_SMALLER_TURNS : FRONT_BIGGER_TURNS;
}
