/**
 * Which gear a ride was in, told from speed and cadence alone: the metres of a turn of the cranks must be those of a gear
 * the bike has, and gears are held for a while. Where two gears would fit about as well, or the legs rest, nothing is
 * claimed. Of shifts only what lies between two claimed gears is known.
 */
import { median } from '../gpx/lists.ts';
import { clamp } from '../math/numbers.ts';
import type { Machine } from '../model/types.ts';
import { follows, type RoadSecond } from './seconds.ts';

export type ReadGears = Readonly<ReturnType<typeof readGears>>;

/** Slower is not riding, and slower legs tell no gear. */
export const MOVING_MPS = 1;
const LEAST_RPM = 35;
/** Developments nearer than this are one gear (share). */
const SAME_GEAR = 0.05;
/** …and nearer than this are neighbours. */
const NEIGHBOURS = 0.11;
/** A change of less than this is none (share). */
export const LEAST_CHANGE = 0.06;
/** What a change of gear costs beside a reading that strays by one standard deviation (0.5); and the most a stray costs. */
const CHANGE_COST = 7;
const STRAY_COST = 6;
/** A gear is claimed where every other would be dearer by so much. */
const CLEARLY = 5;
/** How far readings of a second may stray (share); measured in each ride, within these limits. */
const LEAST_STRAY = 0.012;
const MOST_STRAY = 0.08;
/** Between two claimed gears of one change (s). */
const LONGEST_CHANGE_S = 15;
/** Without known teeth every development of a fine ladder is possible. */
const LADDER = { fromM: 1.2, toM: 11.5, step: 1.02 } as const;

/** The developments a bike has (m, ascending), or a ladder of all where its teeth are not known. */
export function possibleDevelopments(machine: Pick<Machine, 'gears'> | null): number[] {
  if (machine !== null) return machine.gears.map((gear) => gear.developmentM).toSorted((a, b) => a - b);
  const all: number[] = [];
  for (let m: number = LADDER.fromM; m <= LADDER.toM; m *= LADDER.step) all.push(m);
  return all;
}

export function readGears(seconds: readonly RoadSecond[], developments: readonly number[]) {
  const measured = seconds.map(measuredM);
  const stray = strayOf(seconds, measured);
  const claims: Claim[] = [];
  for (let from = 0; from < seconds.length; ) {
    let to = from + 1;
    while (to < seconds.length && follows(seconds[to - 1], seconds[to])) to += 1;
    claims.push(...readPart(measured.slice(from, to), developments, stray));
    from = to;
  }
  const moving = seconds.filter(({ speedMps }) => speedMps >= MOVING_MPS).length;
  const developmentM = claims.map(({ gear }) => gear);
  const nearlyM = claims.map(({ nearly }) => nearly);
  return {
    /** The gear of each second as metres of a turn, null where no gear is claimed. */
    developmentM,
    /** The same where two gears next to each other would fit as well: near enough to see a change of several. */
    nearlyM,
    changes: changesIn(seconds, nearlyM),
    /** Share of the moving seconds whose gear was read, 0 to 1. */
    readableShare: moving === 0 ? 0 : developmentM.filter((m) => m !== null).length / moving,
  };
}

/** Metres of a turn in a second; null where the legs do not drive. */
function measuredM({ speedMps, cadenceRpm }: RoadSecond): number | null {
  return cadenceRpm === null || cadenceRpm < LEAST_RPM || speedMps < MOVING_MPS
    ? null
    : (60 * speedMps) / cadenceRpm;
}

/** How far single readings stray from the mean of their neighbours: a standard deviation from the median (share). */
function strayOf(seconds: readonly RoadSecond[], measured: readonly (number | null)[]): number {
  const strays: number[] = [];
  for (let i = 2; i + 2 < measured.length; i += 1) {
    const [a, here, b] = [measured[i - 2] ?? null, measured[i] ?? null, measured[i + 2] ?? null];
    if (a === null || here === null || b === null) continue;
    if ((seconds[i + 2]?.timeS ?? 0) - (seconds[i - 2]?.timeS ?? 0) !== 4) continue;
    strays.push(Math.abs(here / ((a + b) / 2) - 1));
  }
  // Of three readings that stray alike, the middle one strays from the mean of the others by √1.5 of that.
  const typical = median(strays) / 0.6745 / Math.sqrt(1.5);
  return clamp(typical, LEAST_STRAY, MOST_STRAY);
}

interface Claim {
  readonly gear: number | null;
  readonly nearly: number | null;
}

const NOTHING: Claim = { gear: null, nearly: null };

/** Cheapest way through the gears forwards and backwards; claimed is what is clearly cheaper than any other gear. */
function readPart(
  measured: readonly (number | null)[],
  developments: readonly number[],
  stray: number,
): Claim[] {
  const costs = measured.map((m) => developments.map((d) => (m === null ? 0 : strayCost(m / d - 1, stray))));
  const forward = sweep(costs);
  const backward = sweep(costs.toReversed()).toReversed();
  return measured.map((m, t) => {
    if (m === null) return NOTHING;
    const all = developments.map(
      (_, s) => (forward[t]?.[s] ?? 0) + (backward[t]?.[s] ?? 0) - (costs[t]?.[s] ?? 0),
    );
    let best = 0;
    for (let s = 1; s < all.length; s += 1) if ((all[s] as number) < (all[best] as number)) best = s;
    const claimed = developments[best] as number;
    const clearly = (apart: number): boolean =>
      all.every(
        (cost, k) =>
          Math.abs((developments[k] as number) / claimed - 1) <= apart ||
          cost - (all[best] as number) >= CLEARLY,
      );
    if (Math.abs(m / claimed - 1) > 3 * stray || !clearly(NEIGHBOURS)) return NOTHING;
    return { gear: clearly(SAME_GEAR) ? claimed : null, nearly: claimed };
  });
}

function strayCost(off: number, stray: number): number {
  const share = off / stray;
  return Math.min(STRAY_COST, (share * share) / 2);
}

/** Least cost of every gear up to each second. */
function sweep(costs: readonly (readonly number[])[]): number[][] {
  const sums: number[][] = [];
  for (const own of costs) {
    const before = sums.at(-1);
    const cheapest = before === undefined ? 0 : before.reduce((a, b) => Math.min(a, b));
    sums.push(own.map((cost, s) => cost + Math.min(before?.[s] ?? 0, cheapest + CHANGE_COST)));
  }
  return sums;
}

/** Changes between two gears that were both read: half-way between the last place in the old one and the first in the new one, and how far from there the two were read at most (m). */
function changesIn(seconds: readonly RoadSecond[], developmentM: readonly (number | null)[]) {
  const changes: { atM: number; plusMinusM: number }[] = [];
  let last: { readonly second: RoadSecond; readonly m: number } | null = null;
  for (const [i, m] of developmentM.entries()) {
    const second = seconds[i];
    if (m === null || second === undefined) continue;
    if (
      last !== null &&
      Math.abs(m / last.m - 1) > LEAST_CHANGE &&
      second.timeS - last.second.timeS <= LONGEST_CHANGE_S
    )
      changes.push({
        atM: (last.second.distanceM + second.distanceM) / 2,
        plusMinusM: (second.distanceM - last.second.distanceM) / 2,
      });
    last = { second, m };
  }
  return changes;
}
