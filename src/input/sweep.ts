/**
 * A lever held longer moves further: one sprocket at once, a second and a third while it stays down. Pure;
 * times come from the caller. Only the easier side of the rear lever sweeps, as on a real one.
 */
import { SWEEP_SPROCKETS } from '../core/model/transmission.ts';

/** Time between two steps of a held lever (ms). */
const SWEEP_STEP_MS = 350;

/**
 * Longest time between two looks that counts as held (ms). Where the page stands still for longer, nobody knows whether
 * the finger is still there: a tap in a busy moment must not become a hold.
 */
const MOST_PER_LOOK_MS = 60;

/** A lever that is down: how long it was seen to be held, when it was looked at, and how many steps it has given. */
export interface Sweep {
  readonly source: string;
  readonly heldMs: number;
  readonly lookedAtMs: number;
  readonly stepsGiven: number;
}

/** The lever goes down; its first step is given at once by the caller. */
export function beginSweep(source: string, nowMs: number): Sweep {
  return { source, heldMs: 0, lookedAtMs: nowMs, stepsGiven: 1 };
}

/** Steps that have become due by now, and the sweep after giving them. */
export function sweepDue(sweep: Sweep, nowMs: number): { sweep: Sweep; steps: number } {
  const sinceLookMs = Math.min(MOST_PER_LOOK_MS, Math.max(0, nowMs - sweep.lookedAtMs));
  const heldMs = sweep.heldMs + sinceLookMs;
  const reached = 1 + Math.floor(heldMs / SWEEP_STEP_MS);
  const stepsGiven = Math.min(SWEEP_SPROCKETS, Math.max(sweep.stepsGiven, reached));
  return {
    sweep: { ...sweep, heldMs, lookedAtMs: nowMs, stepsGiven },
    steps: stepsGiven - sweep.stepsGiven,
  };
}
