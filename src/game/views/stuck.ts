/** When a chain that should move is seen to hang. */
import type { RideFrame } from '../../core/ride/types.ts';

/** A movement slower than this share of its free pace chatters between two wheels. */
const CHATTERS_BELOW_RATE = 0.6;

export function isStuck({ shift, chainOn }: RideFrame): boolean {
  return chainOn && shift !== null && !shift.hub && shift.rate < CHATTERS_BELOW_RATE;
}
