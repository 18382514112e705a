/**
 * The picture of a group, made for talking: what all rides over a road have in common, how its pitches were taken, how
 * first and last attempts compare. It holds no names, no devices, no ids and no single ride. Works from marks alone;
 * rides that were ridden again add cadence and gear along the road.
 */
import { chancePoints } from '../../coach/progress.ts';
import { pitchPictures } from './groupPitches.ts';
import { type GroupRide, personOf, type TimingShares } from './groupRide.ts';
import { groupBy } from '../records/merge.ts';
import type { RideRecord } from '../records/record.ts';
import type { RoadReference } from '../records/remark.ts';
import { verdictOf } from './verdict.ts';
import { binned, spreadOf, spreadSeries } from './spread.ts';

/** All rides over one road. */
export type RoadPicture = Readonly<ReturnType<typeof roadPicture>>;
/** What the lines of all rides over the road have in common. */
export type GroupLines = NonNullable<ReturnType<typeof stripOf>>;
/** First against last attempts of riders who rode something more than once. */
export type AttemptPicture = Readonly<ReturnType<typeof attemptPicture>>;
/** The whole picture. */
export type GroupPicture = Readonly<ReturnType<typeof groupPicture>>;

/** The picture of some rides; their order does not matter. */
export function groupPicture(rides: readonly GroupRide[]) {
  const attemptsOf = attemptsByTurns(rides);
  const roads = groupBy(rides, ({ record }) => `${record.levelHash} ${record.seed}`);
  const pictures = [...roads]
    .sort(([a, own], [b, other]) => other.length - own.length || (a < b ? -1 : 1))
    .map(([, road]) => roadPicture(road, attemptsOf));
  return {
    rides: rides.length,
    riders: countRiders(rides),
    timing: sumTiming(pictures.map((road) => road.timing)),
    attempts: attemptPicture(rides),
    /** Most ridden first. */
    roads: pictures,
  };
}

function roadPicture(
  rides: readonly GroupRide[],
  attemptsOf: (rides: readonly GroupRide[]) => AttemptPicture,
) {
  const { levelId, levelHash, seed } = (rides[0] as GroupRide).record;
  const references = referencesOf(rides);
  const pitches = pitchPictures(rides, references[0] ?? null);
  return {
    levelId: rides.reduce((id, ride) => (ride.record.levelId < id ? ride.record.levelId : id), levelId),
    levelHash,
    seed,
    rides: rides.length,
    riders: countRiders(rides),
    totals: spreadOf(rides.map((ride) => ride.record.total)),
    timing: sumTiming(pitches.map((pitch) => pitch.timing)),
    pitches,
    verdict: verdictOf(pitches),
    /** First against last attempts at the rides of the plan that led over this road. */
    attempts: attemptsOf(rides),
    strip: stripOf(rides, references),
  };
}

function stripOf(rides: readonly GroupRide[], references: readonly RoadReference[]) {
  const first = references[0];
  const lines = rides.flatMap((ride) => (ride.line === null ? [] : [ride.line]));
  if (first === undefined || lines.length === 0) return null;
  const places = first.line.cadenceRpm.length;
  return {
    lengthM: first.lengthM,
    stepM: first.line.stepM,
    cadenceRpm: spreadSeries(
      lines.map((line) => line.cadenceRpm),
      places,
    ),
    /** In sixteenths of a metre. */
    development: spreadSeries(
      lines.map((line) => line.development),
      places,
    ),
    /** One for each bike and rider that was ridden, most ridden first. */
    references,
  };
}

function referencesOf(rides: readonly GroupRide[]): RoadReference[] {
  const counts = new Map<string, { reference: RoadReference; count: number }>();
  for (const { reference } of rides) {
    if (reference === null) continue;
    const key = `${reference.bikeId} ${reference.riderId}`;
    const known = counts.get(key);
    if (known === undefined) counts.set(key, { reference, count: 1 });
    else known.count += 1;
  }
  return [...counts]
    .sort(([a, own], [b, other]) => other.count - own.count || (a < b ? -1 : 1))
    .map(([, { reference }]) => reference);
}

/**
 * Attempts at all rides of a plan that a road belongs to. Where every attempt has a road of its own, the first and the
 * last lie on two of them, and many roads share one answer.
 */
function attemptsByTurns(all: readonly GroupRide[]): (rides: readonly GroupRide[]) => AttemptPicture {
  const known = new Map<string, AttemptPicture>();
  return (rides) => {
    const turns = new Set(rides.map(({ record }) => turnKey(record)));
    const key = [...turns].sort().join('\n');
    const picture = known.get(key) ?? attemptPicture(all.filter(({ record }) => turns.has(turnKey(record))));
    known.set(key, picture);
    return picture;
  };
}

function attemptPicture(rides: readonly GroupRide[]) {
  const byTurn = new Map<string, { first: RideRecord; last: RideRecord }>();
  for (const { record } of rides) {
    const key = `${personOf(record)} ${turnKey(record)}`;
    const known = byTurn.get(key);
    if (known === undefined) byTurn.set(key, { first: record, last: record });
    else if (record.attempt < known.first.attempt) known.first = record;
    else if (record.attempt > known.last.attempt) known.last = record;
  }
  const pairs = [...byTurn.values()].filter(({ first, last }) => first.attempt < last.attempt);
  const firsts = pairs.map(({ first }) => first.total);
  const lasts = pairs.map(({ last }) => last.total);
  const changes = pairs.map(({ first, last }) => last.total - first.total);
  const chance = chancePoints(1, 1);
  const better = changes.filter((change) => change >= chance).length;
  const worse = changes.filter((change) => change <= -chance).length;
  return {
    /** Pairs of a first and a last attempt, and different riders among them. */
    pairs: pairs.length,
    riders: new Set(pairs.map(({ first }) => personOf(first))).size,
    first: spreadOf(firsts),
    last: spreadOf(lasts),
    /** Counts of totals in tens of points: 0 to 9, 10 to 19, … 90 to 100. */
    firstBins: binned(firsts, 10, 10),
    lastBins: binned(lasts, 10, 10),
    change: spreadOf(changes),
    /** Pairs whose change is more than chance makes, and the rest. */
    better,
    worse,
    withinChance: pairs.length - better - worse,
    /** A smaller change is within what chance makes (points of the total). */
    chance,
  };
}

/** One of the rides of a plan. */
function turnKey(record: RideRecord): string {
  return `${record.planId} ${record.rideIndex}`;
}

/** Adds up counts of timing. */
function sumTiming(list: readonly TimingShares[]): TimingShares {
  let [tooEarly, aboutRight, tooLate] = [0, 0, 0];
  for (const timing of list) {
    tooEarly += timing.tooEarly;
    aboutRight += timing.aboutRight;
    tooLate += timing.tooLate;
  }
  return { tooEarly, aboutRight, tooLate };
}

function countRiders(rides: readonly GroupRide[]): number {
  return new Set(rides.map(({ record }) => personOf(record))).size;
}
