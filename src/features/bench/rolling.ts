/** The part of a ride in which the bike rolls: starting off is slow on every road and says nothing about it. Pure. */
import type { TraceSample } from '../../core/ride/trace.ts';

/** After a standstill a start takes about so long (s). */
const START_S = 6;
/** Slower than this is standing or pushing off (m/s). */
const STANDING_MPS = 1;

/** Whether a sample belongs to that part, one for each. */
export function isRolling(samples: readonly TraceSample[]): readonly boolean[] {
  let startedS = 0;
  return samples.map((one) => {
    if (one.speedMps < STANDING_MPS) startedS = one.timeS;
    return one.pedalling && one.cadenceRpm > 0 && one.timeS - startedS >= START_S;
  });
}

/** The samples of that part. */
export function rolling(samples: readonly TraceSample[]): readonly TraceSample[] {
  const rolls = isRolling(samples);
  return samples.filter((_, index) => rolls[index]);
}
