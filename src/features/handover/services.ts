/** What the pages that carry things between devices ask of their owners. Plain data and promises. */
import type { ClinicPlan } from '../../core/group/plan.ts';
import type { HandOver, ReadFile } from '../../core/transfer/rideFile.ts';
import type {
  StoreAddress,
  StoreOffer,
  StoreProblem,
  StoreSent,
  StoreStanding,
} from '../../core/transfer/clubStore.ts';
import type { RecordSet } from '../../core/group/records/merge.ts';
import type { Heard } from '../../core/group/records/missing.ts';
import type { Remark } from '../../core/group/records/remark.ts';

/** Reads a long text of rides away from the page, tells how far it is (0 to 1), and can be stopped: null then. */
export type ReadRidesAway = (
  text: string,
  onShare: (share: number) => void,
  signal: AbortSignal,
) => Promise<ReadFile | null>;

/** What is carried in one session. */
interface SessionCarry {
  collected(): Collected;
  handOver(deviceId: string): HandOver;
  take(read: ReadFile): Promise<boolean>;
  subscribe(listener: () => void): () => void;
}

/** A club's own store; nothing is sent before somebody on this device agreed to it. */
export interface ClubStore {
  /** What was agreed to on this device, or null. */
  agreed(): { readonly address: StoreAddress; readonly atMs: number } | null;
  /** An address to ask about. */
  offered(): StoreOffer | null;
  sent(): StoreSent;
  /** How a session stands, or the one that stands worst; null where the store was not asked yet. */
  state(planId?: string): StoreStanding | null;
  subscribe(listener: () => void): () => void;
  /** Settings that came by code are asked about. */
  offer(address: StoreAddress, from: 'code'): void;
  /** What is offered is turned down; what was agreed to stays. */
  turnDown(): Promise<void>;
  /** `this-page`: it holds, and will be forgotten with the page. */
  agree(address: StoreAddress): Promise<'kept' | 'this-page' | 'bad-address'>;
  stop(): Promise<void>;
  /** Asks the agreed store whether it would take rides; null where it would. */
  test(): Promise<StoreProblem | null>;
}

/** The owners, fetched when they are first wanted. */
export interface CarryServices {
  readonly session: (plan: ClinicPlan) => Promise<SessionCarry>;
  readonly store: () => Promise<ClubStore>;
  /**
   * Sends what is new in a session and takes what others have put there; without one, in the newest sessions.
   * `inPassing`: nobody asked for it.
   */
  readonly sync: (planId: string | null, inPassing: boolean) => Promise<void>;
  readonly readRides: ReadRidesAway;
}

/** What the coach's device has of a session, and what was found out about it. */
export interface Collected {
  readonly set: RecordSet;
  readonly heard: readonly Heard[];
  /** What came of riding them again, as far as that has been done. */
  readonly remarks: readonly Remark[];
  /** Rides that are still to be ridden again. */
  readonly toCheck: number;
}
