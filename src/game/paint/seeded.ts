/**
 * A small repeatable stream of numbers for scenery: the same seed always grows the same trees.
 * Only for pictures; anything that touches the ride takes its chance from the core.
 */
import { seededRandom } from '../../core/math/random.ts';

/** Numbers from 0 to below 1, the same for the same seed (any integer), and others than a road grows from it. */
export function seededStream(seed: number): () => number {
  return seededRandom(seed ^ 0x9e3779b9);
}
