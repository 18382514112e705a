/**
 * "Have I got the right gears?" Where a road would ask for a gear more than a bike has, whether its rider gets up at
 * all, and what other cassettes or rings would change, each found by riding the plan over that very road.
 */
import type { Course, Stretch } from '../course/types.ts';
import { greatestWindow } from '../math/numbers.ts';
import { type PassedLimit, passedLimits } from '../model/gearLimits.ts';
import { possibleParts, type TradeOff, tradeOffs } from '../model/gearParts.ts';
import { capacityTeeth } from '../model/gears.ts';
import { OVERLAP } from '../model/gearStairs.ts';
import { gearOf, highestGear, lowestGear, samePlace } from '../model/transmission.ts';
import { WALKING_MPS } from '../model/steady.ts';
import type { Bike, GearParts, Machine, Rider } from '../model/types.ts';
import { policyDriver } from '../planner/driver.ts';
import { planRoad } from '../planner/plan.ts';
import { brakeForLine } from '../ride/pilot.ts';
import { rideThrough } from '../ride/run.ts';
import { TICKS_PER_S } from '../ride/clock.ts';
import { countEvents, type RideTrace, SAMPLE_S, type TraceSample } from '../ride/trace.ts';
import type { RideWorld } from '../ride/types.ts';
import { buildRideWorld } from '../ride/world.ts';
import { pedallingSamples } from './cadence.ts';
import { steadyClimb } from './gearSteady.ts';
import { countManoeuvres } from './shifts.ts';

export type { GearParts } from '../model/types.ts';

/** Stretches nearer than this are told as one (m). */
const JOIN_M = 15;
/** The hardest minute, in samples. */
const MINUTE_SAMPLES = 600;
/** Seconds slower than walking that make a walker. */
const WALKED_AT_LEAST_S = 5;
/** A ride is drawn with at most so many points. */
const MOST_POINTS = 200;

/** A stretch of road where the bike has no gear left. */
export interface ShortStretch extends Stretch {
  readonly seconds: number;
  /** Mean of the legs in it (rpm), seconds on foot counted as none. */
  readonly meanRpm: number;
  readonly steepestRatio: number;
}

/** A place of a ride, to be drawn. */
export type RidePoint = Readonly<ReturnType<typeof pointsOf>[number]>;

/** How a bike suits a rider on a road. */
export type GearOutcome = Readonly<ReturnType<typeof gearOutcome>>;

/** A bike with other parts, computed on the same road. */
export interface GearCandidate {
  readonly changed: 'cassette' | 'rings' | 'both';
  readonly outcome: GearOutcome;
  readonly tradeOffs: readonly TradeOff[];
  readonly limits: readonly PassedLimit[];
}

/** The gears of a bike, longest development last. */
export function gearChart(machine: Machine) {
  const sorted = [...machine.gears].sort((a, b) => a.developmentM - b.developmentM);
  return sorted.map((gear, i) => {
    const twin = sorted.find(
      (other) =>
        other.ringIndex !== gear.ringIndex && Math.abs(other.developmentM / gear.developmentM - 1) < OVERLAP,
    );
    const before = sorted[i - 1];
    return {
      gear,
      /** Another gear that is as good as this one, or null. */
      twin: twin === undefined ? null : { ringTeeth: twin.ringTeeth, sprocketTeeth: twin.sprocketTeeth },
      /** Step from the gear before (share, 0.1 is 10 %), null for the first. */
      stepRatio: before === undefined ? null : gear.developmentM / before.developmentM - 1,
    };
  });
}

/** Gears that differ: a pair of twins counts once. */
export function differentGears(rows: ReturnType<typeof gearChart>): number {
  return rows.filter(({ gear, twin }) => twin === null || gear.ringTeeth < twin.ringTeeth).length;
}

/** Rides the plan with this bike over this road and reports; bikes are compared, so no best ride is searched for. */
export function gearOutcome(course: Course, bike: Bike, rider: Rider) {
  const world = buildRideWorld(course, bike, rider);
  const trace = upTheHill(world);
  const onFoot = footSamples(trace);
  const pedalled = new Set(pedallingSamples(trace));
  const counted = trace.samples
    .filter((sample) => pedalled.has(sample) || onFoot.has(sample))
    .map((sample) => (onFoot.has(sample) ? { ...sample, cadenceRpm: 0 } : sample));
  const walkedS = counted.filter((s) => s.speedMps < WALKING_MPS).length * SAMPLE_S;
  const inBand = counted.filter((s) => s.cadenceRpm >= s.bandLowRpm && s.cadenceRpm <= s.bandHighRpm);
  const low = lowestGear(world.machine);
  const high = highestGear(world.machine);
  return {
    chainringsTeeth: bike.chainringsTeeth,
    sprocketsTeeth: bike.sprocketsTeeth,
    /** The gears are in the hub. */
    ...(bike.hub === undefined ? {} : { hub: bike.hub }),
    capacityTeeth: capacityTeeth(bike),
    /** Seconds on foot, or so slow that walking is as quick; and whether that is more than a wobble. */
    walkedS,
    mustWalk: walkedS >= WALKED_AT_LEAST_S,
    hardest: hardestMinute(counted),
    /** Share of the time pedalled or on foot in the cadence band, 0 to 1. */
    shareInBand: counted.length === 0 ? 0 : inBand.length / counted.length,
    /** What the steepest 50 m would come to in the lowest gear if they went on for ever. */
    steady: steadyClimb(world, low),
    shifts: countManoeuvres(trace),
    finishedS: trace.samples.at(-1)?.timeS ?? 0,
    belowBand: stretches(course, counted, (s) => s.cadenceRpm < s.bandLowRpm && samePlace(s, low)),
    aboveBand: stretches(course, counted, (s) => s.cadenceRpm > s.bandHighRpm && samePlace(s, high)),
    lowestDevelopmentM: low.developmentM,
    highestDevelopmentM: high.developmentM,
    biggestStepRatio: biggestStep(bike.sprocketsTeeth),
    differentGears: differentGears(gearChart(world.machine)),
    /** The ride itself, from start to finish. */
    ride: pointsOf(world, trace.samples),
  };
}

/**
 * Other parts for this bike: cassettes with as many sprockets, ring sets with as many rings, and both
 * together where both are easier; or only the parts that were asked for. A generator, because each one takes a
 * plan of its own.
 */
export function* gearCandidates(
  course: Course,
  bike: Bike,
  rider: Rider,
  {
    own = gearOutcome(course, bike, rider),
    asked,
  }: { own?: GearOutcome; asked?: GearParts | undefined } = {},
): Generator<GearCandidate> {
  for (const parts of asked === undefined ? possibleParts(bike) : [asked]) {
    const outcome = gearOutcome(course, { ...bike, ...parts }, rider);
    const rings = parts.chainringsTeeth.join() !== bike.chainringsTeeth.join();
    const cassette = parts.sprocketsTeeth.join() !== bike.sprocketsTeeth.join();
    yield {
      changed: rings && cassette ? 'both' : rings ? 'rings' : 'cassette',
      outcome,
      tradeOffs: tradeOffs(own, outcome),
      limits: passedLimits(bike, parts),
    };
  }
}

/** What bikes are ordered by, in whole numbers as people read them: the smaller, the better. */
export function gearOrder({
  mustWalk,
  hardest,
  steady,
  shareInBand,
}: Pick<GearOutcome, 'mustWalk' | 'hardest' | 'steady' | 'shareInBand'>): readonly number[] {
  return [
    mustWalk ? 1 : 0,
    Math.round(hardest.missingRpm),
    Math.max(0, Math.round(steady.bandLowRpm) - Math.round(steady.cadenceRpm)),
    100 - Math.round(shareInBand * 100),
  ];
}

/** Parts that pass a limit: whoever wants them asks a mechanic first. */
export function asksFirst({ limits }: Pick<GearCandidate, 'limits'>): boolean {
  return limits.length > 0;
}

/**
 * Parts within the limits of the bike's derailleurs, then those to ask about first. In each of the two who rides up comes
 * before who must walk; then the hardest minute; then what the easiest gear is short of on the steepest stretch, which a
 * short hill hides from the minute; then time in the band; then fewer changes.
 */
export function sortCandidates(candidates: readonly GearCandidate[]): GearCandidate[] {
  const keys = new Map(
    candidates.map((one) => [one, [asksFirst(one) ? 1 : 0, ...gearOrder(one.outcome), ...tieOf(one)]]),
  );
  const keysOf = (one: GearCandidate): readonly number[] => keys.get(one) ?? [];
  return [...candidates].sort((a, b) => {
    const other = keysOf(b);
    const at = keysOf(a).findIndex((value, i) => value !== other[i]);
    return at < 0 ? 0 : (keysOf(a)[at] as number) - (other[at] as number);
  });
}

function tieOf({ changed, limits, outcome }: GearCandidate): number[] {
  return [limits.length, changed === 'both' ? 1 : 0, outcome.capacityTeeth];
}

/** The ride of the plan; where it puts a foot down, the one in the lowest gear all the way, if that gets up. */
function upTheHill(world: RideWorld): RideTrace {
  const { trace } = rideThrough(world, policyDriver(world, planRoad(world)));
  if (countEvents(trace, 'foot-down') === 0) return trace;
  const low = { ...world, startRingIndex: 0, startSprocketIndex: world.machine.sprocketCount - 1 };
  const crawled = rideThrough(low, brakeForLine(low)).trace;
  return countEvents(crawled, 'foot-down') === 0 && crawled.events.at(-1)?.kind === 'finished'
    ? crawled
    : trace;
}

/** Samples between a foot down and the push that ends it. */
function footSamples(trace: RideTrace): ReadonlySet<TraceSample> {
  const spans: { readonly fromTick: number; toTick: number }[] = [];
  for (const event of trace.events) {
    const last = spans.at(-1);
    if (event.kind === 'foot-down') spans.push({ fromTick: event.tick, toTick: Number.POSITIVE_INFINITY });
    else if (event.kind === 'pushed-off' && last !== undefined)
      last.toTick = Math.min(last.toTick, event.tick);
  }
  const found = new Set<TraceSample>();
  let k = 0;
  for (const sample of trace.samples) {
    const tick = sample.timeS * TICKS_PER_S;
    while (k < spans.length && tick > (spans[k] as { toTick: number }).toTick) k += 1;
    if (k < spans.length && tick >= (spans[k] as { fromTick: number }).fromTick) found.add(sample);
  }
  return found;
}

/** The minute of pedalling (or walking) in which the legs were furthest below their band. */
function hardestMinute(samples: readonly TraceSample[]) {
  const missing = samples.map(({ bandLowRpm, cadenceRpm }) => Math.max(0, bandLowRpm - cadenceRpm));
  const width = Math.min(MINUTE_SAMPLES, samples.length);
  const best = greatestWindow(missing, width, 1e-9);
  const minute = samples.slice(best.from, best.from + width);
  const turns = minute.reduce((a, { cadenceRpm }) => a + cadenceRpm, 0);
  return {
    fromM: minute[0]?.distanceM ?? 0,
    toM: minute.at(-1)?.distanceM ?? 0,
    /** Mean cadence in it, seconds on foot counted as none, and how far it was below the band in the mean (rpm). */
    meanRpm: width === 0 ? 0 : turns / width,
    missingRpm: width === 0 ? 0 : Math.max(0, best.sum) / width,
  };
}

function pointsOf(world: RideWorld, samples: readonly TraceSample[]) {
  const stepM = world.course.lengthM / MOST_POINTS;
  let drawn = 0;
  return samples.flatMap((sample) => {
    const { distanceM, timeS, cadenceRpm, bandLowRpm, pedalling } = sample;
    if (distanceM < drawn * stepM) return [];
    drawn += 1;
    const { ringTeeth, sprocketTeeth } = gearOf(world.machine, sample);
    // None where the legs rested.
    const turning = pedalling && cadenceRpm > 0 ? cadenceRpm : null;
    return [{ distanceM, timeS, cadenceRpm: turning, bandLowRpm, ringTeeth, sprocketTeeth }];
  });
}

function stretches(
  course: Course,
  samples: readonly TraceSample[],
  holds: (s: TraceSample) => boolean,
): ShortStretch[] {
  const list: (ShortStretch & { turns: number })[] = [];
  for (const s of samples) {
    if (!holds(s)) continue;
    const slope = course.slopeRatio[Math.round(s.distanceM)] ?? 0;
    const last = list.at(-1);
    const joined = last !== undefined && s.distanceM - last.toM <= JOIN_M ? last : null;
    const seconds = (joined?.seconds ?? 0) + SAMPLE_S;
    const turns = (joined?.turns ?? 0) + s.cadenceRpm * SAMPLE_S;
    if (joined !== null) list.pop();
    list.push({
      fromM: joined?.fromM ?? s.distanceM,
      toM: s.distanceM,
      seconds,
      turns,
      meanRpm: turns / seconds,
      steepestRatio: Math.max(joined?.steepestRatio ?? slope, slope),
    });
  }
  return list.map(({ turns: _, ...stretch }) => stretch);
}

function biggestStep(teeth: readonly number[]): number {
  return teeth.reduce((most, n, i) => (i === 0 ? most : Math.max(most, n / (teeth[i - 1] as number) - 1)), 0);
}
