/**
 * The cadence mark and the chain line mark: both are shares of pedalling time.
 */
import { clamp } from '../math/numbers.ts';
import { gearAt } from '../model/machine.ts';
import { CROSSED_GRACE_S } from '../ride/happenings.ts';
import type { RideTrace, TraceSample } from '../ride/trace.ts';
import type { RideWorld } from '../ride/types.ts';
import { leftAlone } from './shifts.ts';
import type { Mark, Reason } from './types.ts';

/** Outside the band credit falls to 0 over this many rpm. */
const FADE_RPM = 15;
const NOT_AT_START_S = 3;
const NOT_AFTER_STOP_S = 2;
const SAMPLE_S = 0.1;
/** Shorter than this is not worth a sentence (s). */
const WORTH_TELLING_S = 1.5;

/** Samples that count: pedalling, not at the start, not just after standing still. */
export function pedallingSamples(trace: RideTrace): TraceSample[] {
  let standingAtS = Number.NEGATIVE_INFINITY;
  return trace.samples.filter((sample) => {
    standingAtS = standingSinceS(sample, standingAtS);
    return countsForMarks(sample, standingAtS);
  });
}

/** Last time at which a rider was held or nearly stood (s), after this sample. */
export function standingSinceS(sample: TraceSample, beforeS: number): number {
  return sample.held || sample.speedMps < 0.5 ? sample.timeS : beforeS;
}

/** Whether a sample counts for marks: pedalling, not at the start, not just after standing still. */
export function countsForMarks(sample: TraceSample, standingAtS: number): boolean {
  return (
    sample.pedalling &&
    !sample.held &&
    sample.timeS >= NOT_AT_START_S &&
    sample.timeS - standingAtS > NOT_AFTER_STOP_S
  );
}

/** Credit of a cadence: 1 in the band; 1 also where the bike has no gear that would help. */
export function cadenceCredit(world: RideWorld, sample: TraceSample): number {
  const belowRpm = sample.bandLowRpm - sample.cadenceRpm;
  const aboveRpm = sample.cadenceRpm - sample.bandHighRpm;
  if (belowRpm > 0 && !hasEasier(world, sample)) return 1;
  if (aboveRpm > 0 && !hasHarder(world, sample)) return 1;
  return clamp(1 - Math.max(belowRpm, aboveRpm, 0) / FADE_RPM, 0, 1);
}

/** The cadence mark: mean credit over what the reference earns on the same road, at most 100. */
export function cadenceMark(world: RideWorld, trace: RideTrace, reference: RideTrace, weight: number): Mark {
  const own = meanCredit(world, trace);
  const best = meanCredit(world, reference);
  if (own === null) return { value: null, weight, reasons: [] };
  const value = 100 * Math.min(1, own / Math.max(best ?? 1, 0.01));
  return { value, weight, reasons: cadenceReasons(world, trace) };
}

/**
 * The chain line mark: share of pedalling time not crossed beyond the grace. One ring has none, and neither
 * has a ride that left all levers alone where they were needed: its chain line was not chosen.
 */
export function chainLineMark(
  world: RideWorld,
  trace: RideTrace,
  reference: RideTrace,
  weight: number,
): Mark {
  if (world.machine.ringCount < 2 || leftAlone(trace, reference)) return { value: null, weight, reasons: [] };
  const samples = pedallingSamples(trace);
  if (samples.length === 0) return { value: null, weight, reasons: [] };
  const crossed = samples.filter((sample) => sample.crossedS > CROSSED_GRACE_S);
  const stretches = stretchesOf(samples, (sample) => sample.crossedS > CROSSED_GRACE_S);
  const reasons: Reason[] = stretches.map((stretch) => ({
    code: 'crossed',
    fromM: stretch.fromM,
    toM: stretch.toM,
    amount: stretch.seconds,
  }));
  reasons.sort((a, b) => b.amount - a.amount);
  return { value: 100 * (1 - crossed.length / samples.length), weight, reasons };
}

function meanCredit(world: RideWorld, trace: RideTrace): number | null {
  const samples = pedallingSamples(trace);
  if (samples.length === 0) return null;
  return samples.reduce((sum, sample) => sum + cadenceCredit(world, sample), 0) / samples.length;
}

function cadenceReasons(world: RideWorld, trace: RideTrace): Reason[] {
  const samples = pedallingSamples(trace);
  const outside = (below: boolean): Reason[] =>
    stretchesOf(
      samples,
      (s) =>
        (below ? s.cadenceRpm < s.bandLowRpm : s.cadenceRpm > s.bandHighRpm) && cadenceCredit(world, s) < 1,
    )
      .filter((stretch) => stretch.seconds >= WORTH_TELLING_S)
      .map((stretch) => ({
        code: below ? ('below-band' as const) : ('above-band' as const),
        fromM: stretch.fromM,
        toM: stretch.toM,
        amount: stretch.seconds,
        worstRpm: (below ? Math.min : Math.max)(...stretch.samples.map((s) => s.cadenceRpm)),
      }));
  return [...outside(true), ...outside(false)].sort((a, b) => b.amount - a.amount);
}

interface SampleStretch {
  readonly fromM: number;
  readonly toM: number;
  readonly seconds: number;
  readonly samples: readonly TraceSample[];
}

/** Unbroken runs of samples for which something holds. */
function stretchesOf(samples: readonly TraceSample[], holds: (s: TraceSample) => boolean): SampleStretch[] {
  const runs: TraceSample[][] = [];
  let open: TraceSample[] | null = null;
  for (const sample of samples) {
    if (!holds(sample)) open = null;
    else if (open === null) {
      open = [sample];
      runs.push(open);
    } else open.push(sample);
  }
  return runs.map((run) => ({
    fromM: (run[0] as TraceSample).distanceM,
    toM: (run.at(-1) as TraceSample).distanceM,
    seconds: run.length * SAMPLE_S,
    samples: run,
  }));
}

/** The bike has no easier gear than this one. */
function hasEasier(world: RideWorld, sample: TraceSample): boolean {
  return gearAt(world.machine, 0, world.machine.sprocketCount - 1).developmentM < sample.developmentM - 1e-9;
}

function hasHarder(world: RideWorld, sample: TraceSample): boolean {
  return gearAt(world.machine, world.machine.ringCount - 1, 0).developmentM > sample.developmentM + 1e-9;
}
