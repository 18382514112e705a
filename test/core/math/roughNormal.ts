/** Noise and luck for what tests and measurements make up; the game itself draws nothing of the kind. */
import type { Random } from '../../../src/core/math/random.ts';

/**
 * Roughly normal with mean 0 and standard deviation 1: the sum of twelve uniforms less six (range ±6).
 * Chosen because it needs only additions.
 */
export function roughNormal(random: Random): number {
  let sum = -6;
  for (let i = 0; i < 12; i += 1) sum += random();
  return sum;
}
