/**
 * The next thing a rider's hands should do, for a hint on the road: what the reference ride does at this place or
 * soon, told for the gear the rider is in now. Plain comparison of places; it plans nothing.
 */
import { gearAt } from '../model/machine.ts';
import type { Machine } from '../model/types.ts';
import type { RideTrace, TraceSample } from '../ride/trace.ts';
import type { RideFrame } from '../ride/types.ts';

/** A hint. */
export interface NextStep {
  readonly derailleur: 'front' | 'rear';
  readonly direction: 'easier' | 'harder';
  /** Pushes of the lever. */
  readonly steps: number;
  /** How far ahead (m); 0 means now. */
  readonly inM: number;
}

/** Hints are given this much earlier than the reference acts, for reading and reacting (s). */
const REACTION_S = 1.2;
/** Nothing further ahead than this is told (m). */
const LOOK_M = 60;
/** Gears nearer to each other than this share are as good as the same. */
const SAME_GEAR = 0.06;
/** Farther from the wanted gear than this, another sprocket alone will not do. */
const NEEDS_RING = 0.13;
/** Legs this far below the band want an easier gear whatever the reference did (rpm). */
const DRAGGING_RPM = 10;

type Rider = Pick<
  RideFrame,
  | 'distanceM'
  | 'speedMps'
  | 'cadenceRpm'
  | 'bandLowRpm'
  | 'ringIndex'
  | 'sprocketIndex'
  | 'pressure'
  | 'chainOn'
>;

/**
 * The hint for a rider at a place, or null where nothing is to be done within 60 m. A chain that has come off is put
 * back first; no gear is hinted at meanwhile.
 *
 * @param reference - trace of the reference ride on the same road and bike
 */
export function nextStep(machine: Machine, reference: RideTrace, rider: Rider): NextStep | null {
  const { samples } = reference;
  if (samples.length === 0 || !rider.chainOn) return null;
  const leadM = rider.speedMps * REACTION_S;
  const here = sampleIndexAt(samples, rider.distanceM + leadM);
  const now = stepTowards(machine, rider, samples[here] as TraceSample);
  if (isDragging(rider) && now?.direction !== 'easier') return easierNow(machine, rider);
  if (now !== null) return { ...wholeStep(machine, rider, samples, here, now), inM: 0 };
  for (let i = here + 1; i < samples.length; i += 1) {
    const ahead = samples[i] as TraceSample;
    const inM = ahead.distanceM - rider.distanceM - leadM;
    if (inM > LOOK_M) return null;
    const step = stepTowards(machine, rider, ahead);
    if (step !== null) return { ...wholeStep(machine, rider, samples, i, step), inM };
  }
  return null;
}

function isDragging({ pressure, cadenceRpm, bandLowRpm, speedMps }: Rider): boolean {
  return pressure !== 'coast' && speedMps > 1 && cadenceRpm < bandLowRpm - DRAGGING_RPM;
}

function easierNow(machine: Machine, rider: Rider): NextStep | null {
  if (rider.sprocketIndex < machine.sprocketCount - 1)
    return { derailleur: 'rear', direction: 'easier', steps: 1, inM: 0 };
  return rider.ringIndex > 0 ? { derailleur: 'front', direction: 'easier', steps: 1, inM: 0 } : null;
}

/** A manoeuvre of several movements is told as one: its end is where the reference stays for a second. */
function wholeStep(
  machine: Machine,
  rider: Rider,
  samples: readonly TraceSample[],
  from: number,
  first: Omit<NextStep, 'inM'>,
): Omit<NextStep, 'inM'> {
  const later = samples[Math.min(samples.length - 1, from + 20)] as TraceSample;
  const whole = stepTowards(machine, rider, later);
  return whole?.direction === first.direction && whole.derailleur === first.derailleur ? whole : first;
}

/** What would bring the rider's gear to that of a sample; null where it is as good already. */
function stepTowards(machine: Machine, rider: Rider, sample: TraceSample): Omit<NextStep, 'inM'> | null {
  const own = gearAt(machine, rider.ringIndex, rider.sprocketIndex).developmentM;
  const wanted = sample.developmentM;
  if (Math.abs(wanted / own - 1) < SAME_GEAR) return null;
  const direction = wanted < own ? 'easier' : 'harder';
  const sprocket = nearestSprocket(machine, rider.ringIndex, wanted);
  const reached = gearAt(machine, rider.ringIndex, sprocket).developmentM;
  const front = sample.ringIndex !== rider.ringIndex && Math.abs(reached / wanted - 1) > NEEDS_RING;
  if (front)
    return {
      derailleur: 'front',
      direction: sample.ringIndex < rider.ringIndex ? 'easier' : 'harder',
      steps: Math.abs(sample.ringIndex - rider.ringIndex),
    };
  const steps = Math.abs(sprocket - rider.sprocketIndex);
  return steps === 0 ? null : { derailleur: 'rear', direction, steps };
}

function nearestSprocket(machine: Machine, ringIndex: number, developmentM: number): number {
  let best = 0;
  let least = Number.POSITIVE_INFINITY;
  for (let i = 0; i < machine.sprocketCount; i += 1) {
    const apart = Math.abs(gearAt(machine, ringIndex, i).developmentM - developmentM);
    if (apart < least) [best, least] = [i, apart];
  }
  return best;
}

/** Index of the last sample that is not beyond a place. */
function sampleIndexAt(samples: readonly TraceSample[], distanceM: number): number {
  let low = 0;
  let high = samples.length - 1;
  while (low < high) {
    const middle = (low + high + 1) >> 1;
    if ((samples[middle] as TraceSample).distanceM <= distanceM) low = middle;
    else high = middle - 1;
  }
  return low;
}
