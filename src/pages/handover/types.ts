/** What the pages that carry things between devices ask of their owners. Plain data and promises. */
import type { ClinicPlan } from '../../core/group/plan.ts';
import type { HandOver, ReadFile } from '../../core/transfer/rideFile.ts';
import type { StoreProblem, StoreStanding } from '../words/shared.ts';
import type { Collected } from './collected.ts';
import type { StoreAddress } from './storePage.tsx';

/** What is carried in one session. */
export interface SessionCarry {
  collected(): Collected;
  handOver(deviceId: string): HandOver;
  take(read: ReadFile): Promise<boolean>;
  subscribe(listener: () => void): () => void;
}

/** A club's own store, off until it is given an address. */
export interface ClubStore {
  address(): StoreAddress | null;
  state(): StoreStanding | null;
  subscribe(listener: () => void): () => void;
  setAddress(address: StoreAddress | null): Promise<boolean>;
  test(address: StoreAddress): Promise<StoreProblem | null>;
}

/** The owners, fetched when they are first wanted. */
export interface CarryServices {
  readonly session: (plan: ClinicPlan) => Promise<SessionCarry>;
  readonly store: () => Promise<ClubStore>;
}
