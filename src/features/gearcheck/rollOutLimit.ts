/** A limit of roll-out chosen from rule books or typed by a club, and the hardest gear that keeps it. */
import { developmentM, wheelCircumferenceM } from '../../core/model/gears.ts';
import { ROLL_OUT_LIMITS, withinRollOut } from '../../core/model/rollout.ts';
import type { Bike } from '../../core/model/types.ts';
import type { TeethPair } from './answer.ts';

/** Limits a club may type (m). */
const SHORTEST_M = 2;
const LONGEST_M = 12;

/** The limit in metres for `none`, `own` or the id of a limit; null where there is none, or none that can be read. */
export function limitOf(choice: string, typed: string): number | null {
  if (choice === 'own') return readMetres(typed);
  return ROLL_OUT_LIMITS.find(({ id }) => id === choice)?.limitM ?? null;
}

/** Metres with a decimal point or comma. */
function readMetres(typed: string): number | null {
  const match = /^\s*(\d{1,2}(?:[.,]\d{1,3})?)\s*m?\s*$/.exec(typed);
  if (match === null) return null;
  const metres = Number((match[1] as string).replace(',', '.'));
  return metres >= SHORTEST_M && metres <= LONGEST_M ? metres : null;
}

/** The hardest gear of a bike that keeps a limit, or null. */
export function hardestWithin(bike: Bike, limitM: number): TeethPair | null {
  const circumferenceM = wheelCircumferenceM(bike);
  const reach = ({ ringTeeth, sprocketTeeth }: TeethPair): number =>
    developmentM(circumferenceM, ringTeeth, sprocketTeeth);
  return bike.chainringsTeeth
    .flatMap((ringTeeth) => bike.sprocketsTeeth.map((sprocketTeeth) => ({ ringTeeth, sprocketTeeth })))
    .filter((gear) => withinRollOut(reach(gear), limitM))
    .reduce<TeethPair | null>(
      (best, gear) => (best === null || reach(gear) > reach(best) ? gear : best),
      null,
    );
}
