/**
 * What is said first: whether the gears of the bike are enough for the road, and which parts would help. Codes and
 * numbers; sentences are made of them in `answerText.tsx`. All of it goes by the steady figure of the steepest 50 m,
 * the same that stands in the table.
 */
import { type GearTold } from '../../core/model/transmission.ts';
import { shifterPlaces } from '../../core/model/shifters.ts';
import {
  asksFirst,
  type GearCandidate,
  type GearOutcome,
  type ShortStretch,
  sortCandidates,
} from '../../core/coach/gearCheck.ts';

/** Stretches shorter than this are a moment at a stop line or in a shift, not a gear that is missing (s). */
const SHORTEST_TOLD_S = 1.5;
/** A gain in cadence smaller than this is not worth a sentence (rpm). */
const LEAST_GAIN_RPM = 2;

/** A gear as its two tooth counts, or as one of a hub. */
export type TeethPair = GearTold;

type Parts = Pick<GearOutcome, 'chainringsTeeth' | 'sprocketsTeeth' | 'hub'>;

/** The easiest gear of a bike. */
export function lowestTeeth(of: Parts): TeethPair {
  const teeth = { ringTeeth: of.chainringsTeeth[0] ?? 0, sprocketTeeth: of.sprocketsTeeth.at(-1) ?? 0 };
  const [, gears = 1] = shifterPlaces(of);
  return of.hub === undefined ? teeth : { ...teeth, hub: { number: 1, of: gears, ratio: 1 } };
}

/** The hardest gear of a bike. */
export function highestTeeth(of: Parts): TeethPair {
  const teeth = { ringTeeth: of.chainringsTeeth.at(-1) ?? 0, sprocketTeeth: of.sprocketsTeeth[0] ?? 0 };
  const [, gears = 1] = shifterPlaces(of);
  return of.hub === undefined ? teeth : { ...teeth, hub: { number: gears, of: gears, ratio: 1 } };
}

/** Stretches worth telling. */
export function toldStretches(stretches: readonly ShortStretch[]): ShortStretch[] {
  return stretches.filter(({ seconds }) => seconds >= SHORTEST_TOLD_S);
}

/** Whether the lowest gear keeps the legs in their band on the steepest 50 m, and nobody has to walk. */
export function isEnough({ mustWalk, steady }: Pick<GearOutcome, 'mustWalk' | 'steady'>): boolean {
  return !mustWalk && Math.round(steady.cadenceRpm) >= Math.round(steady.bandLowRpm);
}

/** Parts that help, against the own bike. */
interface Help {
  /** The best of the list that is easier and still not enough. */
  readonly mild: GearCandidate | null;
  /** The one that is enough with the fewest changes and the least chain to take up. */
  readonly reaches: GearCandidate | null;
}

/** Finds parts that help; both null where nothing is missing. Parts the derailleurs may not take come last. */
export function findHelp(own: GearOutcome, candidates: readonly GearCandidate[]): Help {
  if (isEnough(own)) return { mild: null, reaches: null };
  const helping = sortCandidates(candidates).filter(
    ({ outcome: { steady } }) => steady.cadenceRpm >= own.steady.cadenceRpm + LEAST_GAIN_RPM,
  );
  const [reaches = null] = helping
    .filter(({ outcome }) => isEnough(outcome))
    .toSorted(
      (a, b) =>
        Number(asksFirst(a)) - Number(asksFirst(b)) ||
        parts(a) - parts(b) ||
        a.outcome.capacityTeeth - b.outcome.capacityTeeth,
    );
  const mild = helping.find((one) => !asksFirst(one) && parts(one) === 1 && !isEnough(one.outcome));
  return { mild: mild ?? null, reaches };
}

function parts({ changed }: GearCandidate): number {
  return changed === 'both' ? 2 : 1;
}
