/** What the pages that carry things between devices ask of their owners. Plain data and promises. */
import type { ClinicPlan } from '../../core/group/plan.ts';
import type { HandOver, ReadFile } from '../../core/transfer/rideFile.ts';
import type { StoreProblem, StoreSent, StoreStanding } from './storeWords.ts';
import type { Collected } from './collected.ts';
import type { StoreAddress, StoreAgreed, StoreOffer } from './storePage.tsx';

/** Reads a long text of rides away from the page, tells how far it is (0 to 1), and can be stopped: null then. */
export type ReadRidesAway = (
  text: string,
  onShare: (share: number) => void,
  signal: AbortSignal,
) => Promise<ReadFile | null>;

/** What is carried in one session. */
export interface SessionCarry {
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
  state(): StoreStanding | null;
  subscribe(listener: () => void): () => void;
  agree(address: StoreAddress): Promise<StoreAgreed>;
  stop(): Promise<void>;
  /** Asks the agreed store whether it would take rides; null where it would. */
  test(): Promise<StoreProblem | null>;
}

/** The owners, fetched when they are first wanted. */
export interface CarryServices {
  readonly session: (plan: ClinicPlan) => Promise<SessionCarry>;
  readonly store: () => Promise<ClubStore>;
  readonly readRides: ReadRidesAway;
}
