/**
 * A lever held longer moves further: one sprocket at once, a second and a third while it stays down. Pure;
 * times come from the caller. Only the easier side of the rear lever sweeps, as on a real one.
 */

/** Time between two steps of a held lever (ms). */
const SWEEP_STEP_MS = 350;
/** Sprockets of one push, the first included. */
const SWEEP_MOST_STEPS = 3;

/** A lever that is down: since when, and how many steps it has given. */
export interface Sweep {
  readonly source: string;
  readonly sinceMs: number;
  readonly stepsGiven: number;
}

/** The lever goes down; its first step is given at once by the caller. */
export function beginSweep(source: string, nowMs: number): Sweep {
  return { source, sinceMs: nowMs, stepsGiven: 1 };
}

/** Steps that have become due by now, and the sweep after giving them. */
export function sweepDue(sweep: Sweep, nowMs: number): { sweep: Sweep; steps: number } {
  const reached = 1 + Math.floor(Math.max(0, nowMs - sweep.sinceMs) / SWEEP_STEP_MS);
  const stepsGiven = Math.min(SWEEP_MOST_STEPS, Math.max(sweep.stepsGiven, reached));
  return { sweep: { ...sweep, stepsGiven }, steps: stepsGiven - sweep.stepsGiven };
}
