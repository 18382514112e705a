/**
 * "Have I got the right gears?" The gears of a bike side by side, where a road would ask for one more, and
 * what other cassettes or rings would change, each computed by riding the reference on that very road.
 */
import type { Course } from '../course/types.ts';
import { capacityTeeth, wheelCircumferenceM } from '../model/gears.ts';
import { cadenceAtRpm, gearAt, steadySpeedMps } from '../model/machine.ts';
import { COMMON_CASSETTES, COMMON_RINGS } from '../model/parts.ts';
import { rollOutM } from '../model/rollout.ts';
import type { Bike, Gear, Machine, Rider } from '../model/types.ts';
import { policyDriver } from '../planner/driver.ts';
import { planRoad } from '../planner/plan.ts';
import { rideThrough } from '../ride/run.ts';
import type { TraceSample } from '../ride/trace.ts';
import { buildRideWorld } from '../ride/world.ts';
import type { RideWorld } from '../ride/types.ts';
import { pedallingSamples } from './cadence.ts';
import { countManoeuvres } from './shifts.ts';

/** Two gears nearer than this are as good as one (share of development). */
const OVERLAP = 0.04;
const SAMPLE_S = 0.1;
/** Stretches nearer than this are told as one (m). */
const JOIN_M = 15;

/** One row of the gear chart, longest development last. */
export interface GearRow {
  readonly gear: Gear;
  /** Another gear that is as good as this one, or null. */
  readonly twin: { readonly ringTeeth: number; readonly sprocketTeeth: number } | null;
  /** Step from the gear before (share, 0.1 is 10 %), null for the first. */
  readonly stepRatio: number | null;
}

/** A stretch of road where the bike has no gear left. */
export interface ShortStretch {
  readonly fromM: number;
  readonly toM: number;
  readonly seconds: number;
  /** Slowest legs in it, or fastest where the highest gear runs out (rpm). */
  readonly extremeRpm: number;
  readonly steepestRatio: number;
}

/** How a bike suits a rider on a road. */
export interface GearOutcome {
  readonly chainringsTeeth: readonly number[];
  readonly sprocketsTeeth: readonly number[];
  readonly capacityTeeth: number;
  /** Share of pedalling time in the cadence band, 0 to 1, on the reference ride. */
  readonly shareInBand: number;
  /** Lowest cadence on the reference ride, and where. */
  readonly lowestCadenceRpm: number;
  readonly lowestAtM: number;
  /** Cadence that would be left if the steepest 50 m went on for ever, in the lowest gear. */
  readonly steadyLowestRpm: number;
  readonly shifts: number;
  readonly shiftsPerKm: number;
  readonly finishedS: number;
  readonly belowBand: readonly ShortStretch[];
  readonly aboveBand: readonly ShortStretch[];
  readonly lowestDevelopmentM: number;
  readonly highestDevelopmentM: number;
  /** Biggest step between neighbouring sprockets (share). */
  readonly biggestStepRatio: number;
  readonly rollOutM: number;
}

/** What a candidate trades, against the rider's own bike. */
export type TradeOff =
  | 'easier-lowest'
  | 'harder-highest'
  | 'loses-highest'
  | 'bigger-steps'
  | 'smaller-steps'
  | 'more-shifts'
  | 'more-capacity';

/** A bike with other parts, computed on the same road. */
export interface GearCandidate {
  readonly changed: 'cassette' | 'rings' | 'both';
  readonly outcome: GearOutcome;
  readonly tradeOffs: readonly TradeOff[];
}

/** The gear chart of a bike. */
export function gearChart(machine: Machine): GearRow[] {
  const sorted = [...machine.gears].sort((a, b) => a.developmentM - b.developmentM);
  return sorted.map((gear, i) => {
    const twin = sorted.find(
      (other) =>
        other.ringIndex !== gear.ringIndex && Math.abs(other.developmentM / gear.developmentM - 1) < OVERLAP,
    );
    const before = sorted[i - 1];
    return {
      gear,
      twin: twin === undefined ? null : { ringTeeth: twin.ringTeeth, sprocketTeeth: twin.sprocketTeeth },
      stepRatio: before === undefined ? null : gear.developmentM / before.developmentM - 1,
    };
  });
}

/** Rides the plan with this bike over this road and reports; bikes are compared, so no best ride is searched for. */
export function gearOutcome(course: Course, bike: Bike, rider: Rider): GearOutcome {
  const world = buildRideWorld(course, bike, rider);
  const { trace } = rideThrough(world, policyDriver(world, planRoad(world)));
  const samples = pedallingSamples(trace);
  const inBand = samples.filter((s) => s.cadenceRpm >= s.bandLowRpm && s.cadenceRpm <= s.bandHighRpm);
  const lowest = samples.reduce<TraceSample | null>(
    (least, s) => (least === null || s.cadenceRpm < least.cadenceRpm ? s : least),
    null,
  );
  const low = gearAt(world.machine, 0, world.machine.sprocketCount - 1);
  const high = gearAt(world.machine, world.machine.ringCount - 1, 0);
  const shifts = countManoeuvres(trace);
  return {
    chainringsTeeth: bike.chainringsTeeth,
    sprocketsTeeth: bike.sprocketsTeeth,
    capacityTeeth: capacityTeeth(bike),
    shareInBand: samples.length === 0 ? 0 : inBand.length / samples.length,
    lowestCadenceRpm: lowest?.cadenceRpm ?? 0,
    lowestAtM: lowest?.distanceM ?? 0,
    steadyLowestRpm: steadyLowestRpm(world, low),
    shifts,
    shiftsPerKm: (1000 * shifts) / course.lengthM,
    finishedS: trace.samples.at(-1)?.timeS ?? 0,
    belowBand: stretches(course, samples, (s) => s.cadenceRpm < s.bandLowRpm && same(s, low), Math.min),
    aboveBand: stretches(course, samples, (s) => s.cadenceRpm > s.bandHighRpm && same(s, high), Math.max),
    lowestDevelopmentM: low.developmentM,
    highestDevelopmentM: high.developmentM,
    biggestStepRatio: biggestStep(bike.sprocketsTeeth),
    rollOutM: rollOutM(wheelCircumferenceM(bike), high.ringTeeth, high.sprocketTeeth),
  };
}

/**
 * Other parts for this bike: cassettes with as many sprockets, ring sets with as many rings, and both
 * together where both are easier. A generator, because each one takes a plan of its own.
 */
export function* gearCandidates(course: Course, bike: Bike, rider: Rider): Generator<GearCandidate> {
  const own = gearOutcome(course, bike, rider);
  for (const { chainringsTeeth, sprocketsTeeth } of possibleParts(bike)) {
    const outcome = gearOutcome(course, { ...bike, chainringsTeeth, sprocketsTeeth }, rider);
    const rings = !equal(chainringsTeeth, bike.chainringsTeeth);
    const cassette = !equal(sprocketsTeeth, bike.sprocketsTeeth);
    yield {
      changed: rings && cassette ? 'both' : rings ? 'rings' : 'cassette',
      outcome,
      tradeOffs: tradeOffs(own, outcome),
    };
  }
}

/** Best first: more time in the band, then quicker legs on the worst place, then fewer changes. */
export function sortCandidates(candidates: readonly GearCandidate[]): GearCandidate[] {
  const worth = ({ outcome, changed }: GearCandidate): number =>
    outcome.shareInBand * 100 +
    Math.min(60, outcome.lowestCadenceRpm) * 0.6 +
    Math.min(60, outcome.steadyLowestRpm) * 0.4 -
    outcome.shiftsPerKm * 0.5 -
    (changed === 'both' ? 4 : 0);
  return [...candidates].sort((a, b) => worth(b) - worth(a));
}

/** How many parts are tried at most beside the bike's own. */
const MOST_RING_SETS = 4;

function possibleParts(bike: Bike): Pick<Bike, 'chainringsTeeth' | 'sprocketsTeeth'>[] {
  const cassettes = COMMON_CASSETTES.filter(
    (teeth) => teeth.length === bike.sprocketsTeeth.length && !equal(teeth, bike.sprocketsTeeth),
  );
  const smallest = bike.chainringsTeeth[0] as number;
  const rings = COMMON_RINGS.filter(
    (teeth) => teeth.length === bike.chainringsTeeth.length && !equal(teeth, bike.chainringsTeeth),
  )
    .sort((a, b) => Math.abs((a[0] as number) - smallest) - Math.abs((b[0] as number) - smallest))
    .slice(0, MOST_RING_SETS);
  const easiest = [...cassettes]
    .sort((a, b) => (b.at(-1) as number) - (a.at(-1) as number))
    .filter((teeth) => (teeth.at(-1) as number) > (bike.sprocketsTeeth.at(-1) as number))
    .slice(0, 2);
  const easierRings = rings.filter((teeth) => (teeth[0] as number) < smallest);
  return [
    ...cassettes.map((sprocketsTeeth) => ({ chainringsTeeth: bike.chainringsTeeth, sprocketsTeeth })),
    ...rings.map((chainringsTeeth) => ({ chainringsTeeth, sprocketsTeeth: bike.sprocketsTeeth })),
    ...easierRings
      .slice(0, 2)
      .flatMap((chainringsTeeth) => easiest.map((sprocketsTeeth) => ({ chainringsTeeth, sprocketsTeeth }))),
  ];
}

function tradeOffs(own: GearOutcome, other: GearOutcome): TradeOff[] {
  const list: TradeOff[] = [];
  if (other.lowestDevelopmentM < own.lowestDevelopmentM * 0.98) list.push('easier-lowest');
  if (other.highestDevelopmentM > own.highestDevelopmentM * 1.02) list.push('harder-highest');
  if (other.highestDevelopmentM < own.highestDevelopmentM * 0.98) list.push('loses-highest');
  if (other.biggestStepRatio > own.biggestStepRatio + 0.02) list.push('bigger-steps');
  if (other.biggestStepRatio < own.biggestStepRatio - 0.02) list.push('smaller-steps');
  if (other.shifts > own.shifts * 1.25 + 1) list.push('more-shifts');
  if (other.capacityTeeth > own.capacityTeeth) list.push('more-capacity');
  return list;
}

/** So long a stretch of the road, the steepest there is, is what a steady lowest cadence is worked out for (m). */
export const STEEPEST_MEAN_M = 50;

/** Cadence in the lowest gear at steady power on the mean of the steepest 50 m (rpm). */
function steadyLowestRpm(world: RideWorld, low: Gear): number {
  const { machine, course } = world;
  const speedMps = steadySpeedMps({
    powerW: machine.rider.steadyPowerW,
    slopeRatio: steepestMean(course.slopeRatio, STEEPEST_MEAN_M),
    windMps: 0,
    massKg: machine.totalMassKg,
    cdaM2: machine.bike.cdaM2,
    rollingCoefficient: machine.bike.rollingCoefficient,
    efficiency: low.efficiency,
    airDensityKgM3: world.airDensityKgM3,
    bearings: true,
  });
  return cadenceAtRpm(speedMps, low.developmentM);
}

function steepestMean(slopeRatio: ArrayLike<number>, windowM: number): number {
  const width = Math.min(windowM, slopeRatio.length);
  let sum = 0;
  for (let i = 0; i < width; i += 1) sum += slopeRatio[i] as number;
  let most = sum;
  for (let i = width; i < slopeRatio.length; i += 1) {
    sum += (slopeRatio[i] as number) - (slopeRatio[i - width] as number);
    most = Math.max(most, sum);
  }
  return most / width;
}

function stretches(
  course: Course,
  samples: readonly TraceSample[],
  holds: (s: TraceSample) => boolean,
  pick: (a: number, b: number) => number,
): ShortStretch[] {
  const list: ShortStretch[] = [];
  for (const s of samples) {
    if (!holds(s)) continue;
    const slope = course.slopeRatio[Math.round(s.distanceM)] ?? 0;
    const last = list.at(-1);
    if (last === undefined || s.distanceM - last.toM > JOIN_M)
      list.push({
        fromM: s.distanceM,
        toM: s.distanceM,
        seconds: SAMPLE_S,
        extremeRpm: s.cadenceRpm,
        steepestRatio: slope,
      });
    else
      list[list.length - 1] = {
        fromM: last.fromM,
        toM: s.distanceM,
        seconds: last.seconds + SAMPLE_S,
        extremeRpm: pick(last.extremeRpm, s.cadenceRpm),
        steepestRatio: Math.max(last.steepestRatio, slope),
      };
  }
  return list;
}

function biggestStep(teeth: readonly number[]): number {
  return teeth.reduce((most, n, i) => (i === 0 ? most : Math.max(most, n / (teeth[i - 1] as number) - 1)), 0);
}

function same(sample: TraceSample, gear: Gear): boolean {
  return sample.ringIndex === gear.ringIndex && sample.sprocketIndex === gear.sprocketIndex;
}

function equal(a: readonly number[], b: readonly number[]): boolean {
  return a.length === b.length && a.every((n, i) => n === b[i]);
}
