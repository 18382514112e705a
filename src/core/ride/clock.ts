/**
 * The fixed tick, and real time as its guest: how many ticks are due when a frame arrives. Nothing here reads a
 * clock; shells pass raw time stamps in. What happens in a tick is `step.ts`.
 */

/** Ticks in a second, and the length of one (s). */
export const TICKS_PER_S = 120;
export const TICK_S = 1 / TICKS_PER_S;

/** A pause longer than this is dropped, not simulated (s). */
const LONGEST_FRAME_S = 0.25;

/** Plain data between two frames. */
interface RideClock {
  /** Raw time of the last frame (ms), null before the first. */
  readonly lastMs: number | null;
  /** Real time not yet turned into ticks (s). */
  readonly carryS: number;
}

/** A clock that has seen no frame yet. */
export const FRESH_CLOCK: RideClock = { lastMs: null, carryS: 0 };

/** Ticks due at `nowMs`; `pace` slows or speeds the ride (1 is real time). A frame can hold no tick. */
export function ticksDue(clock: RideClock, nowMs: number, pace = 1): { clock: RideClock; ticks: number } {
  if (clock.lastMs === null) return { clock: { lastMs: nowMs, carryS: 0 }, ticks: 0 };
  const passedS = Math.max(0, (nowMs - clock.lastMs) / 1000);
  const dueS = clock.carryS + Math.min(passedS, LONGEST_FRAME_S) * pace;
  const ticks = Math.floor(dueS / TICK_S);
  return { clock: { lastMs: nowMs, carryS: dueS - ticks * TICK_S }, ticks };
}
