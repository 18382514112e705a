/**
 * Which other parts are worth a try on a bike, and what they trade against its own, both ways: a harder lowest gear is
 * as much a cost as a lost highest one. Rides nothing.
 */
import { COMMON_CASSETTES, COMMON_RINGS } from './parts.ts';
import type { Bike, GearParts } from './types.ts';

/** What a candidate trades, against the rider's own bike. */
export type TradeOff =
  | 'easier-lowest'
  | 'harder-lowest'
  | 'harder-highest'
  | 'loses-highest'
  | 'bigger-steps'
  | 'smaller-steps'
  | 'more-shifts'
  | 'fewer-shifts'
  | 'more-twins'
  | 'fewer-twins'
  | 'more-capacity'
  | 'less-capacity';

interface Traded extends GearParts {
  readonly lowestDevelopmentM: number;
  readonly highestDevelopmentM: number;
  /** Biggest step between neighbouring sprockets (share). */
  readonly biggestStepRatio: number;
  /** Gears that differ: a pair of twins counts once. */
  readonly differentGears: number;
  readonly shifts: number;
  readonly capacityTeeth: number;
}

/** Ring sets that are tried at most. */
const MOST_RING_SETS = 4;

/** Common parts with as many rings and sprockets: cassettes, ring sets, and the easiest of both together. */
export function possibleParts(bike: Bike): GearParts[] {
  const isOwn = (own: readonly number[], teeth: readonly number[]): boolean => own.join() === teeth.join();
  const cassettes = COMMON_CASSETTES.filter(
    (teeth) => teeth.length === bike.sprocketsTeeth.length && !isOwn(bike.sprocketsTeeth, teeth),
  );
  const smallest = bike.chainringsTeeth[0] as number;
  const rings = COMMON_RINGS.filter(
    (teeth) => teeth.length === bike.chainringsTeeth.length && !isOwn(bike.chainringsTeeth, teeth),
  )
    .toSorted((a, b) => Math.abs((a[0] as number) - smallest) - Math.abs((b[0] as number) - smallest))
    .slice(0, MOST_RING_SETS);
  const easiest = cassettes
    .toSorted((a, b) => (b.at(-1) as number) - (a.at(-1) as number))
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

/** What is gained and lost; nothing is said of differences nobody would feel. */
export function tradeOffs(own: Traded, other: Traded): TradeOff[] {
  const list: TradeOff[] = [];
  const say = (more: boolean, less: boolean, ifMore: TradeOff, ifLess: TradeOff): void => {
    if (more) list.push(ifMore);
    else if (less) list.push(ifLess);
  };
  const low = other.lowestDevelopmentM / own.lowestDevelopmentM;
  const high = other.highestDevelopmentM / own.highestDevelopmentM;
  const steps = other.biggestStepRatio - own.biggestStepRatio;
  const twins = twinsOf(other) - twinsOf(own);
  say(low < 0.98, low > 1.02, 'easier-lowest', 'harder-lowest');
  say(high > 1.02, high < 0.98, 'harder-highest', 'loses-highest');
  say(steps > 0.02, steps < -0.02, 'bigger-steps', 'smaller-steps');
  say(twins > 0, twins < 0, 'more-twins', 'fewer-twins');
  const isMore = (a: Traded, b: Traded): boolean => a.shifts > b.shifts * 1.25 + 1;
  say(isMore(other, own), isMore(own, other), 'more-shifts', 'fewer-shifts');
  const teeth = other.capacityTeeth - own.capacityTeeth;
  say(teeth > 0, teeth < 0, 'more-capacity', 'less-capacity');
  return list;
}

function twinsOf(of: Traded): number {
  return of.chainringsTeeth.length * of.sprocketsTeeth.length - of.differentGears;
}
