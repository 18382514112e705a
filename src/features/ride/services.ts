/** What the page of a ride asks of the app. */
import type { ToldOutcome } from '../../state/outcome.ts';
import type { UnfinishedRide } from '../../state/unfinished.ts';

export interface RideServices {
  /** Keeps what was ridden of a ride that broke off. */
  keepUnfinished(ride: UnfinishedRide): Promise<ToldOutcome>;
  /** Offers a report of what went wrong as a file; it holds no person. */
  saveReport(): void;
}
