/**
 * The cadence mark and the chain line mark: both are shares of pedalling time.
 */
import { clamp } from '../math/numbers.ts';
import { highestGear, lowestGear } from '../model/transmission.ts';
import { hasHub, shiftsInFront } from '../model/shifters.ts';
import { CROSSED_GRACE_S } from '../ride/happenings.ts';
import { type RideTrace, SAMPLE_S, type TraceSample } from '../ride/trace.ts';
import type { RideWorld } from '../ride/types.ts';
import { leftAlone } from './shifts.ts';
import type { Mark, Reason } from './types.ts';

/** Outside the band credit falls to 0 over so many rpm: slow legs strain, fast ones only hurry. */
const FADE_BELOW_RPM = 15;
const FADE_ABOVE_RPM = 25;
const NOT_AT_START_S = 3;
const NOT_AFTER_STOP_S = 2;
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
  return clamp(1 - Math.max(belowRpm / FADE_BELOW_RPM, aboveRpm / FADE_ABOVE_RPM, 0), 0, 1);
}

/**
 * The cadence mark: credit metre by metre, over what the best ride earns on the same road, at most 100. Metres and
 * not seconds, so that hanging about earns nothing; coasting where the best ride pedals is no cadence at all, but
 * downhill legs may rest.
 */
export function cadenceMark(world: RideWorld, trace: RideTrace, reference: RideTrace, weight: number): Mark {
  const own = creditByMetre(world, trace);
  const best = creditByMetre(world, reference);
  const coasted: number[] = [];
  let earned = 0;
  let possible = 0;
  best.forEach((credit, m) => {
    if (credit === undefined) return;
    const ridden = own[m];
    if (ridden === undefined && restsAllowed(world, m)) return;
    if (ridden === undefined && credit > 0) coasted.push(m);
    possible += credit;
    earned += Math.min(credit, ridden ?? 0);
  });
  if (own.length === 0 || possible === 0) return { value: null, weight, reasons: [] };
  const reasons = [...cadenceReasons(world, trace), ...coastedReasons(world, trace, coasted)];
  return {
    value: (100 * earned) / possible,
    weight,
    reasons: reasons.sort((a, b) => b.amount - a.amount),
  };
}

/** A metre that cost credit: how much, why, and the gear over the best ride's there (above 1 is harder). */
export interface LegLoss {
  readonly atM: number;
  readonly lost: number;
  readonly why: 'below-band' | 'above-band' | 'coasted';
  readonly gearRatio: number;
}

/** Metre by metre what the cadence mark lost, and why. */
export function legLosses(world: RideWorld, trace: RideTrace, reference: RideTrace): LegLoss[] {
  const own = creditByMetre(world, trace);
  const best = creditByMetre(world, reference);
  const ridden = lastByMetre(trace);
  const bestRidden = lastByMetre(reference);
  const losses: LegLoss[] = [];
  best.forEach((credit, m) => {
    if (credit === undefined || (own[m] === undefined && restsAllowed(world, m))) return;
    const lost = credit - Math.min(credit, own[m] ?? 0);
    const sample = ridden[m] ?? ridden[m - 1];
    const other = bestRidden[m] ?? bestRidden[m - 1];
    if (lost <= 0 || sample === undefined || other === undefined) return;
    const rests = own[m] === undefined || !sample.pedalling || sample.pressureRatio < IDLE_PRESSURE;
    const slow = sample.cadenceRpm < (sample.bandLowRpm + sample.bandHighRpm) / 2;
    const why = rests ? 'coasted' : slow ? 'below-band' : 'above-band';
    losses.push({ atM: m, lost, why, gearRatio: sample.developmentM / other.developmentM });
  });
  return losses;
}

/** The last sample of each metre; holes where a metre has none. */
function lastByMetre(trace: RideTrace): (TraceSample | undefined)[] {
  const metres: (TraceSample | undefined)[] = [];
  for (const sample of trace.samples) metres[Math.floor(sample.distanceM)] = sample;
  return metres;
}

/** Stretches that were coasted where the best ride pedals, with their seconds. */
function coastedReasons(world: RideWorld, trace: RideTrace, metres: readonly number[]): Reason[] {
  const inHub = hasHub(world.machine.bike) ? { hub: true as const } : {};
  const coasted = new Set(metres);
  const samples = trace.samples.filter((s) => !s.pedalling && !s.held && s.timeS >= NOT_AT_START_S);
  return stretchesOf(samples, (s) => coasted.has(Math.floor(s.distanceM)))
    .filter((stretch) => stretch.seconds >= WORTH_TELLING_S)
    .map(({ fromM, toM, seconds }) => ({ code: 'coasted' as const, fromM, toM, amount: seconds, ...inHub }));
}

/** Downhill from here on nobody has to pedal. */
const REST_BELOW_RATIO = -0.015;

/** Whether legs may rest at a place (m along the road). */
export function restsAllowed(world: RideWorld, placeM: number): boolean {
  return (world.course.slopeRatio[Math.floor(placeM)] ?? 0) < REST_BELOW_RATIO;
}

/** Legs lighter than this turn the cranks and push nothing (pressure, 1 is steady; easing is 0.4). */
export const IDLE_PRESSURE = 0.25;

/**
 * Mean credit of each metre that was ridden and counts; holes where nobody pedalled. In a metre that was pedalled for
 * half of its time there is half of the credit.
 */
function creditByMetre(world: RideWorld, trace: RideTrace): Credits {
  const known = credited.get(trace);
  if (known?.world === world && known.samples === trace.samples.length) return known.credits;
  const credits = workedOutCredits(world, trace);
  credited.set(trace, { world, samples: trace.samples.length, credits });
  return credits;
}

type Credits = readonly (number | undefined)[];

/** Credits of traces that were asked about before: two marks ask about the ride, and every ride about the best one. */
const credited = new WeakMap<RideTrace, { world: RideWorld; samples: number; credits: Credits }>();

function workedOutCredits(world: RideWorld, trace: RideTrace): Credits {
  const sums: number[] = [];
  const counts: number[] = [];
  const pedalled: boolean[] = [];
  let standingAtS = Number.NEGATIVE_INFINITY;
  for (const sample of trace.samples) {
    standingAtS = standingSinceS(sample, standingAtS);
    const counted = countsForMarks(sample, standingAtS);
    if (!counted && (sample.held || sample.pedalling)) continue;
    const metre = Math.floor(sample.distanceM);
    const pushes = counted && sample.pressureRatio >= IDLE_PRESSURE;
    sums[metre] = (sums[metre] ?? 0) + (pushes ? cadenceCredit(world, sample) : 0);
    counts[metre] = (counts[metre] ?? 0) + 1;
    pedalled[metre] = pedalled[metre] === true || pushes;
  }
  // At speed some metres have no sample of their own; they are like the last one before.
  const credits: (number | undefined)[] = [];
  for (let m = 0; m < sums.length; m += 1) {
    const count = counts[m];
    if (count === undefined) {
      if (counts[m - 1] !== undefined || counts[m - 2] !== undefined) credits[m] = credits[m - 1];
    } else if (pedalled[m] === true) credits[m] = (sums[m] as number) / count;
  }
  return credits;
}

/**
 * The chain line mark: share of pedalling time not crossed beyond the grace. One ring has none; a ride that left all
 * levers alone where they were needed has not kept its chain straight, it has kept it, and gets nothing.
 */
export function chainLineMark(
  world: RideWorld,
  trace: RideTrace,
  reference: RideTrace,
  weight: number,
): Mark {
  if (!shiftsInFront(world.machine.bike)) return { value: null, weight, reasons: [] };
  if (leftAlone(trace, reference)) return { value: 0, weight, reasons: [] };
  const samples = pedallingSamples(trace);
  if (samples.length === 0) return { value: null, weight, reasons: [] };
  const crossed = samples.filter((sample) => sample.crossedS > CROSSED_GRACE_S);
  const stretches = stretchesOf(samples, (sample) => sample.crossedS > CROSSED_GRACE_S);
  const reasons: Reason[] = stretches.map(({ fromM, toM, seconds }) => ({
    code: 'crossed',
    fromM,
    toM,
    amount: seconds,
  }));
  reasons.sort((a, b) => b.amount - a.amount);
  return { value: 100 * (1 - crossed.length / samples.length), weight, reasons };
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

/** Unbroken runs of samples for which something holds. */
function stretchesOf(samples: readonly TraceSample[], holds: (s: TraceSample) => boolean) {
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
  return lowestGear(world.machine).developmentM < sample.developmentM - 1e-9;
}

function hasHarder(world: RideWorld, sample: TraceSample): boolean {
  return highestGear(world.machine).developmentM > sample.developmentM + 1e-9;
}
