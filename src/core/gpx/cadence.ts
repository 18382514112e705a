/**
 * Cadence that no legs had: a sensor that counts every foot, or one that wrote the same number all along. The first is
 * halved, the second taken for none; both are said.
 */
import { median } from './lists.ts';
import { type RoadNote, roadNote } from './types.ts';

/** Fewer readings of turning legs tell nothing. */
const LEAST_READINGS = 60;
/** Legs that turn faster than this for half of a ride are counted twice (rpm). Ours: racers ride at 80 to 100 (common practice, no source). */
const FASTEST_USUAL_RPM = 125;
/** Legs that turn exactly alike in so much of their time were not measured (share). Ours. */
const ALIKE_SHARE = 0.95;

/** The cadences of a ride as they can be believed (rpm, NaN where unknown), and what was done to them. */
export function believableCadence(cadenceRpm: readonly number[]): {
  readonly cadenceRpm: readonly number[];
  readonly notes: readonly RoadNote[];
} {
  const turning = cadenceRpm.filter((rpm) => rpm > 0);
  const usualRpm = median(turning);
  if (turning.length < LEAST_READINGS) return { cadenceRpm, notes: [] };
  if (turning.filter((rpm) => rpm === usualRpm).length >= ALIKE_SHARE * turning.length)
    return {
      cadenceRpm: cadenceRpm.map(() => Number.NaN),
      notes: [roadNote('cadence', 'cadence-stuck', { rpm: usualRpm })],
    };
  if (usualRpm <= FASTEST_USUAL_RPM) return { cadenceRpm, notes: [] };
  return {
    cadenceRpm: cadenceRpm.map((rpm) => rpm / 2),
    notes: [roadNote('cadence', 'cadence-halved', { rpm: usualRpm })],
  };
}
