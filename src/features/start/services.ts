/** What the start page asks of the app. */
import type { ToldOutcome } from '../../state/outcome.ts';
import type { UnfinishedRide } from '../../state/unfinished.ts';

export interface StartServices {
  /** Keeps what was ridden of a ride that broke off. */
  keepUnfinished(ride: UnfinishedRide): Promise<ToldOutcome>;
  /** Forgets a ride that broke off. */
  letUnfinishedGo(ride: UnfinishedRide): Promise<void>;
  /** Loads the newer version that waits on this device. */
  loadNewer(): void;
}
