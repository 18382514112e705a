/**
 * What is said first: whether the gears of the bike are enough for the road, and which parts would help. Codes and
 * numbers; sentences are made of them in `answerText.tsx`.
 */
import type { GearCandidate, GearOutcome, ShortStretch } from '../../core/coach/gearCheck.ts';

/** Stretches shorter than this are a moment at a stop line or in a shift, not a gear that is missing (s). */
const SHORTEST_TOLD_S = 1.5;
/** A gain in cadence smaller than this is not worth a sentence (rpm). */
const LEAST_GAIN_RPM = 2;

/** A gear as its two tooth counts. */
export interface TeethPair {
  readonly ringTeeth: number;
  readonly sprocketTeeth: number;
}

/** The easiest gear of a bike. */
export function lowestGear(of: Pick<GearOutcome, 'chainringsTeeth' | 'sprocketsTeeth'>): TeethPair {
  return { ringTeeth: of.chainringsTeeth[0] ?? 0, sprocketTeeth: of.sprocketsTeeth.at(-1) ?? 0 };
}

/** The hardest gear of a bike. */
export function highestGear(of: Pick<GearOutcome, 'chainringsTeeth' | 'sprocketsTeeth'>): TeethPair {
  return { ringTeeth: of.chainringsTeeth.at(-1) ?? 0, sprocketTeeth: of.sprocketsTeeth[0] ?? 0 };
}

/** Stretches worth telling. */
export function toldStretches(stretches: readonly ShortStretch[]): ShortStretch[] {
  return stretches.filter(({ seconds }) => seconds >= SHORTEST_TOLD_S);
}

/** The stretch with the slowest legs, or null where the lowest gear is enough. */
export function worstBelow(outcome: GearOutcome): ShortStretch | null {
  return toldStretches(outcome.belowBand).reduce<ShortStretch | null>(
    (worst, one) => (worst === null || one.extremeRpm < worst.extremeRpm ? one : worst),
    null,
  );
}

/** Parts that help, against the own bike. */
interface Help {
  /** The best that changes one thing and still does not reach the band. */
  readonly mild: GearCandidate | null;
  /** The one that stays in the band with the fewest changes and the least chain to take up. */
  readonly reaches: GearCandidate | null;
}

/** Finds parts that help on the worst stretch; both null where nothing is missing. */
export function findHelp(own: GearOutcome, candidates: readonly GearCandidate[]): Help {
  const worst = worstBelow(own);
  if (worst === null) return { mild: null, reaches: null };
  const helping = candidates.filter(
    ({ outcome }) =>
      outcome.lowestDevelopmentM < own.lowestDevelopmentM &&
      rpmOn(outcome) >= worst.extremeRpm + LEAST_GAIN_RPM,
  );
  const reaching = helping.filter(({ outcome }) => worstBelow(outcome) === null);
  const [reaches = null] = reaching.toSorted(
    (a, b) => parts(a) - parts(b) || a.outcome.capacityTeeth - b.outcome.capacityTeeth,
  );
  const [mild = null] = helping
    .filter((one) => one.changed === 'cassette' && worstBelow(one.outcome) !== null)
    .toSorted((a, b) => rpmOn(b.outcome) - rpmOn(a.outcome));
  return { mild, reaches };
}

/** Slowest legs in the lowest gear where it is too hard, else on the whole ride (rpm). */
export function rpmOn(outcome: GearOutcome): number {
  return worstBelow(outcome)?.extremeRpm ?? outcome.lowestCadenceRpm;
}

function parts({ changed }: GearCandidate): number {
  return changed === 'both' ? 2 : 1;
}
