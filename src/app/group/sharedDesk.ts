/**
 * The owner of a club's own store on this device: whether a person here agreed to it, how far it has come, when it is
 * asked. Nothing is sent to anybody before that; then rides of a session go there and those of others come from there.
 */
import type { HandOver, ReadFile } from '../../core/transfer/rideFile.ts';
import {
  ADDRESS_SHAPE,
  type Agreement,
  type AgreementStore,
  databaseUrl,
  type Fetch,
  fetchRides,
  type Offer,
  OLD_ADDRESS,
  piecesOf,
  PROGRESS,
  PROGRESS_SHAPE,
  progressFor,
  sendPieces,
  type SentSoFar,
  sentSoFar,
  type SharedAddress,
  type SharedProblem,
  type SharedProgress,
  type SharedState,
  testStore,
} from '../../storage/shared/index.ts';
import type { Storage } from '../../storage/index.ts';

/** What the desk is given. */
interface SharedOptions {
  readonly storage: Storage;
  readonly agreement: AgreementStore;
  readonly fetch: Fetch;
  /** Waits; rejects when `stop` is called. */
  readonly sleep: (ms: number) => Promise<void>;
  /** Milliseconds since 1970. */
  readonly now: () => number;
}

/** The desk. */
export interface SharedDesk {
  /** What a person on this device agreed to, or null. */
  agreed(): Agreement | null;
  /** An address to ask about, or null; nothing is sent there. */
  offered(): Offer | null;
  /** What has gone to the agreed store so far. */
  sent(): SentSoFar;
  state(): SharedState | null;
  subscribe(listener: () => void): () => void;
  /** A file named an address: it is shown until this page is left, and nothing else. */
  offer(address: SharedAddress): void;
  /** A person on this device agreed to just this address. `this-page`: it will be forgotten with this page. */
  agree(address: SharedAddress): Promise<'kept' | 'this-page' | 'bad-address'>;
  /** Nothing is sent any more, and what was offered is forgotten. */
  stop(): Promise<void>;
  /** Asks the agreed store whether it would take rides; null where it would. */
  test(): Promise<SharedProblem | null>;
  /**
   * Puts these rides there, then gives what others have put there to `take`. While one is under way another call
   * only says that there is more to do.
   */
  sync(handOver: () => HandOver, take: (read: ReadFile) => Promise<boolean>): Promise<void>;
  /** Looks anew: another tab may have agreed or stopped. */
  look(): void;
}

const ID = 'one';

/** Opens the desk on what was kept. */
export async function openSharedDesk(options: SharedOptions): Promise<SharedDesk> {
  const { storage, agreement } = options;
  const progress = (await storage.listRecords(PROGRESS, PROGRESS_SHAPE))[0]?.data ?? null;
  // It may have come with a file, so it counts for nothing but the question.
  const before = (await storage.listRecords(OLD_ADDRESS, ADDRESS_SHAPE))[0]?.data ?? null;
  const offer: Offer | null =
    before === null || agreement.read() !== null ? null : { address: before, from: 'before' };
  return new Desk(options, offer, progress);
}

class Desk implements SharedDesk {
  readonly #options: SharedOptions;
  readonly #listeners = new Set<() => void>();
  #offer: Offer | null;
  #progress: SharedProgress | null;
  #state: SharedState | null = null;
  #running = false;
  #again = false;

  constructor(options: SharedOptions, offer: Offer | null, progress: SharedProgress | null) {
    this.#options = options;
    this.#offer = offer;
    this.#progress = progress;
  }

  agreed(): Agreement | null {
    return this.#options.agreement.read();
  }

  offered(): Offer | null {
    return this.#offer;
  }

  sent(): SentSoFar {
    const agreed = this.agreed();
    return agreed === null
      ? { rides: 0, atMs: null }
      : sentSoFar(progressFor(agreed.address, this.#progress));
  }

  state(): SharedState | null {
    return this.#state;
  }

  subscribe(listener: () => void): () => void {
    this.#listeners.add(listener);
    return () => this.#listeners.delete(listener);
  }

  offer(address: SharedAddress): void {
    if (this.agreed() !== null) return;
    this.#offer = { address, from: 'file' };
    this.#show(null);
  }

  async agree(address: SharedAddress): ReturnType<SharedDesk['agree']> {
    const { agreement, storage, now } = this.#options;
    if (databaseUrl(address) === null) return 'bad-address';
    const kept = agreement.keep({ schema: 1, address, atMs: now() });
    this.#offer = null;
    this.#show(null);
    await storage.deleteRecords(OLD_ADDRESS);
    return kept ? 'kept' : 'this-page';
  }

  async stop(): Promise<void> {
    const { agreement, storage } = this.#options;
    agreement.keep(null);
    this.#offer = null;
    this.#show(null);
    await storage.deleteRecords(OLD_ADDRESS);
  }

  async test(): Promise<SharedProblem | null> {
    const agreed = this.agreed();
    return agreed === null ? 'bad-address' : testStore(agreed.address, this.#options.fetch);
  }

  look(): void {
    this.#show(this.agreed() === null ? null : this.#state);
  }

  async sync(handOver: () => HandOver, take: (read: ReadFile) => Promise<boolean>): Promise<void> {
    this.#again = true;
    if (this.#running) return;
    this.#running = true;
    try {
      for (let to = this.agreed(); this.#again && to !== null; to = this.agreed()) {
        this.#again = false;
        await this.#once(to.address, handOver(), take);
      }
    } finally {
      this.#running = false;
    }
  }

  /** Whether this very address is still agreed to. */
  #goesTo(address: SharedAddress): boolean {
    return JSON.stringify(this.agreed()?.address) === JSON.stringify(address);
  }

  async #once(
    to: SharedAddress,
    handOver: HandOver,
    take: (read: ReadFile) => Promise<boolean>,
  ): Promise<void> {
    const { sleep, now } = this.#options;
    // Asked at the last moment: between two questions somebody may have stopped it, here or in another tab.
    const fetch: Fetch = async (url, init) => {
      if (!this.#goesTo(to)) throw new Error('nobody agrees any more');
      return this.#options.fetch(url, init);
    };
    const sent = await sendPieces(to, piecesOf(handOver), this.#progress, {
      fetch,
      sleep,
      now,
      stopped: () => !this.#goesTo(to),
      onState: (state, reached) => {
        if (!this.#goesTo(to)) return;
        void this.#keep(reached);
        this.#show(state);
      },
    });
    if (!this.#goesTo(to)) return this.#show(null);
    const { read, progress, problem } = await fetchRides(to, handOver.planId, sent, fetch);
    // What could not be kept here is asked for again the next time.
    if ((await take(read)) && this.#goesTo(to)) await this.#keep(progress);
    if (problem !== null && this.#state !== null) this.#show({ ...this.#state, problem });
  }

  async #keep(progress: SharedProgress): Promise<void> {
    if (progress === this.#progress) return;
    this.#progress = progress;
    await this.#options.storage.putRecord({ kind: PROGRESS, id: ID, schema: 2, data: progress });
  }

  #show(state: SharedState | null): void {
    this.#state = state;
    for (const listener of this.#listeners) listener();
  }
}
