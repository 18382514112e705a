/**
 * The owner of a club's own store on this device: where it is, how far it has come, when it is asked. Off until an
 * address is given; then rides of a session go there and those of others come from there.
 */
import type { HandOver, ReadFile } from './core/transfer/rideFile.ts';
import {
  ADDRESS_SHAPE,
  type Fetch,
  fetchRides,
  piecesOf,
  PROGRESS_SHAPE,
  sendPieces,
  type SharedAddress,
  type SharedProblem,
  type SharedProgress,
  type SharedState,
  testStore,
} from './storage/shared/index.ts';
import type { Storage } from './storage/index.ts';

/** What the desk is given. */
export interface SharedOptions {
  readonly storage: Storage;
  readonly fetch: Fetch;
  /** Waits; rejects when `stop` is called. */
  readonly sleep: (ms: number) => Promise<void>;
}

/** The desk. */
export interface SharedDesk {
  address(): SharedAddress | null;
  state(): SharedState | null;
  subscribe(listener: () => void): () => void;
  /** Keeps another address, or turns it off with null. */
  setAddress(address: SharedAddress | null): Promise<boolean>;
  test(address: SharedAddress): Promise<SharedProblem | null>;
  /**
   * Puts these rides there, then gives what others have put there to `take`. While one is under way another call
   * only says that there is more to do.
   */
  sync(handOver: () => HandOver, take: (read: ReadFile) => Promise<boolean>): Promise<void>;
}

const ADDRESS = 'clinic-store';
const PROGRESS = 'clinic-store-progress';
const ID = 'one';

/** Opens the desk on what was kept. */
export async function openSharedDesk(options: SharedOptions): Promise<SharedDesk> {
  const { storage } = options;
  const address = (await storage.listRecords(ADDRESS, ADDRESS_SHAPE))[0]?.data ?? null;
  const progress = (await storage.listRecords(PROGRESS, PROGRESS_SHAPE))[0]?.data ?? null;
  return new Desk(options, address, progress);
}

class Desk implements SharedDesk {
  readonly #options: SharedOptions;
  readonly #listeners = new Set<() => void>();
  #address: SharedAddress | null;
  #progress: SharedProgress | null;
  #state: SharedState | null = null;
  #running = false;
  #again = false;

  constructor(options: SharedOptions, address: SharedAddress | null, progress: SharedProgress | null) {
    this.#options = options;
    this.#address = address;
    this.#progress = progress;
  }

  address(): SharedAddress | null {
    return this.#address;
  }

  state(): SharedState | null {
    return this.#state;
  }

  subscribe(listener: () => void): () => void {
    this.#listeners.add(listener);
    return () => this.#listeners.delete(listener);
  }

  async setAddress(next: SharedAddress | null): Promise<boolean> {
    const { storage } = this.#options;
    this.#address = next;
    this.#show(null);
    if (next === null) return (await storage.deleteRecords(ADDRESS)) === null;
    return (await storage.putRecord({ kind: ADDRESS, id: ID, schema: 1, data: next })).saved;
  }

  test(address: SharedAddress): Promise<SharedProblem | null> {
    return testStore(address, this.#options.fetch);
  }

  async sync(handOver: () => HandOver, take: (read: ReadFile) => Promise<boolean>): Promise<void> {
    this.#again = true;
    if (this.#running) return;
    this.#running = true;
    try {
      while (this.#again && this.#address !== null) {
        this.#again = false;
        await this.#once(this.#address, handOver(), take);
      }
    } finally {
      this.#running = false;
    }
  }

  async #once(
    to: SharedAddress,
    handOver: HandOver,
    take: (read: ReadFile) => Promise<boolean>,
  ): Promise<void> {
    const { fetch, sleep } = this.#options;
    const sent = await sendPieces(to, piecesOf(handOver), this.#progress, {
      fetch,
      sleep,
      stopped: () => this.#address !== to,
      onState: (state, reached) => {
        if (this.#address === to) this.#show(state);
        void this.#keep(reached);
      },
    });
    if (this.#address !== to) return;
    const { read, progress, problem } = await fetchRides(to, handOver.planId, sent, fetch);
    // What could not be kept here is asked for again the next time.
    if (await take(read)) await this.#keep(progress);
    if (problem !== null && this.#state !== null) this.#show({ ...this.#state, problem });
  }

  async #keep(progress: SharedProgress): Promise<void> {
    if (progress === this.#progress) return;
    this.#progress = progress;
    await this.#options.storage.putRecord({ kind: PROGRESS, id: ID, schema: 1, data: progress });
  }

  #show(state: SharedState | null): void {
    this.#state = state;
    for (const listener of this.#listeners) listener();
  }
}
