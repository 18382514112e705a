/**
 * Roll-out: how far a race bike for young riders may travel in one turn of the cranks. Rules change by
 * federation and year, so the limits here carry both and are a help, not the rule; a club gives its own.
 */
import type { Bike } from './types.ts';
import { developmentM, wheelCircumferenceM } from './gears.ts';

/** A limit from a rule book, with who set it and when it held. */
export interface RollOutLimit {
  readonly id: string;
  /** Whose rule it was. */
  readonly body: 'world-federation' | 'national-federation';
  readonly group: 'juniors' | 'under-16' | 'under-14' | 'under-12';
  readonly limitM: number;
  /** Year of the rule book the figure was read in, where known. */
  readonly ruleYear?: number;
  /** Last day it held, where known. */
  readonly until?: string;
  /** Year in which it was relaxed, where known; the newer figure is not here. */
  readonly relaxedInYear?: number;
}

/**
 * Limits read in rule books. The world federation has had none for juniors since its last one ended; the
 * national ones are those of one federation in 2023.
 */
export const ROLL_OUT_LIMITS: readonly RollOutLimit[] = [
  { id: 'juniors-2022', body: 'world-federation', group: 'juniors', limitM: 7.93, until: '2022-12-31' },
  national('under-16', 6.93),
  national('under-14', 6.45),
  national('under-12', 6.05),
];

function national(group: RollOutLimit['group'], limitM: number): RollOutLimit {
  return {
    id: `${group}-2023`,
    body: 'national-federation',
    group,
    limitM,
    ruleYear: 2023,
    relaxedInYear: 2025,
  };
}

/** Roll-out of the biggest gear of a bike (m), which is the one that is measured: one turn of the cranks, its development. */
export function biggestRollOutM(bike: Bike): number {
  return developmentM(
    wheelCircumferenceM(bike),
    Math.max(...bike.chainringsTeeth),
    Math.min(...bike.sprocketsTeeth),
  );
}

/** True if a roll-out keeps a limit (both m); the limit may be any a club gives. */
export function withinRollOut(rollOut: number, limitM: number): boolean {
  return rollOut <= limitM;
}
