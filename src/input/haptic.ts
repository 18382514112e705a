/**
 * A short shake for the hand, where the device can. What deserves one is decided here; that it also is seen
 * and heard is the business of others.
 */
import { HEAVY_LOAD } from '../core/model/shift.ts';
import type { RideEvent } from '../core/ride/types.ts';

/** Pattern of an event (ms on, off, on …), or null for most of them. Pure. */
export function shakeFor(event: RideEvent): readonly number[] | null {
  if (event.kind === 'shift-done' && event.load >= HEAVY_LOAD) return [45];
  if (event.kind === 'shift-hung') return [25, 40, 25];
  if (event.kind === 'chain-dropped') return [60, 50, 60];
  return null;
}

/** Shakes once for the first event that deserves it. Does nothing where there is nothing to shake. */
export function shake(events: readonly RideEvent[]): void {
  for (const event of events) {
    const pattern = shakeFor(event);
    if (pattern === null) continue;
    try {
      navigator.vibrate?.([...pattern]);
    } catch {
      // A browser that forbids shaking takes nothing away from the ride.
    }
    return;
  }
}
