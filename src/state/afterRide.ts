/**
 * A ride that is over, and what becomes of it while its debrief is open: worked out, guessed about, kept. Plain
 * data; planning and keeping are done by `main`, which reports here.
 */
import type { RideReport } from '../core/coach/types.ts';
import type { RideTrace } from '../core/ride/trace.ts';
import type { Guess, RideResult } from '../core/coach/results.ts';

/** Whether the ride has been kept. `code` says why not; `main` reports, the words are the page's. */
export type Kept =
  | { readonly state: 'saving' }
  | { readonly state: 'saved' }
  | { readonly state: 'not-saved'; readonly code: string; readonly localBackup: boolean };

/** A finished ride with its debrief. */
export interface AfterRide extends RideResult {
  readonly report: RideReport | null;
  readonly reference: RideTrace | null;
  /** Share of the planning that is done, 0 to 1; `failed` where the marks could not be worked out now. */
  readonly share: number | 'failed' | null;
  readonly same: boolean;
  readonly guess: Guess | null;
  /** Its explanation is unfolded. */
  readonly unfolded: boolean;
  readonly kept: Kept;
}

export function justFinished(result: RideResult): AfterRide {
  return {
    ...result,
    report: null,
    reference: null,
    share: 0,
    same: true,
    guess: null,
    unfolded: false,
    kept: { state: 'saving' },
  };
}
