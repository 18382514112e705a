/**
 * The owner of a club's own store on this device: whether a person here agreed to it, how far it has come, when it is
 * asked. Nothing is sent to anybody before that; then rides of a session go there and those of others come from there.
 */
import type {
  StoreAddress,
  StoreOffer,
  StoreProblem,
  StoreSent,
  StoreStanding,
} from '../../core/transfer/clubStore.ts';
import type { HandOver, ReadFile } from '../../core/transfer/rideFile.ts';
import {
  type Agreement,
  type AgreementStore,
  databaseUrl,
  type Fetch,
  fetchRides,
  OLD_ADDRESS,
  piecesOf,
  PROGRESS,
  progressFor,
  sendPieces,
  sentSoFar,
  type SharedProgress,
  testStore,
} from '../../storage/shared/index.ts';
import type { ClubStore } from '../../features/handover/services.ts';
import type { Storage } from '../../storage/index.ts';
import { recordOf } from '../../storage/ladder.ts';
import { Listeners } from '../../state/listeners.ts';

interface SharedOptions {
  readonly storage: Storage;
  readonly agreement: AgreementStore;
  readonly fetch: Fetch;
  readonly sleep: (ms: number) => Promise<void>;
  /** Milliseconds since 1970. */
  readonly now: () => number;
}

/** One session, as it meets the store. */
export interface SharedJob {
  readonly planId: string;
  /** Everything that is to be there, also rides of other devices that were collected here. */
  readonly handOver: () => HandOver;
  /** Takes in what others have put there; false where it could not be kept. */
  readonly take: (read: ReadFile) => Promise<boolean>;
}

const ID = 'one';

export async function openSharedDesk(options: SharedOptions): Promise<SharedDesk> {
  const { storage, agreement } = options;
  const progress = (await storage.listRecords(PROGRESS))[0]?.data ?? null;
  // It may have come with a file, so it counts for nothing but the question.
  const before = (await storage.listRecords(OLD_ADDRESS))[0]?.data ?? null;
  const offer: StoreOffer | null =
    before === null || agreement.read() !== null ? null : { address: before, from: 'before' };
  return new SharedDesk(options, offer, progress);
}

export class SharedDesk implements ClubStore {
  readonly #options: SharedOptions;
  readonly #listeners = new Listeners();
  #offer: StoreOffer | null;
  #progress: SharedProgress | null;
  readonly #states = new Map<string, StoreStanding>();
  readonly #jobs = new Map<string, { readonly job: SharedJob; readonly inPassing: boolean }>();
  #running: Promise<void> | null = null;
  /** Ends a pause between two tries. */
  #wake: () => void = () => undefined;

  constructor(options: SharedOptions, offer: StoreOffer | null, progress: SharedProgress | null) {
    this.#options = options;
    this.#offer = offer;
    this.#progress = progress;
  }

  agreed(): Agreement | null {
    return this.#options.agreement.read();
  }

  offered(): StoreOffer | null {
    return this.#offer;
  }

  sent(): StoreSent {
    const agreed = this.agreed();
    return agreed === null
      ? { rides: 0, atMs: null }
      : sentSoFar(progressFor(agreed.address, this.#progress));
  }

  state(planId?: string): StoreStanding | null {
    if (planId !== undefined) return this.#states.get(planId) ?? null;
    const all = [...this.#states.values()];
    const worst = all.find(({ problem }) => problem !== null) ?? all.find(({ phase }) => phase !== 'done');
    return (
      worst ?? all.reduce<StoreStanding | null>((sum, one) => (sum === null ? one : together(sum, one)), null)
    );
  }

  subscribe(listener: () => void): () => void {
    return this.#listeners.add(listener);
  }

  /** A file or a code named an address: it is shown until this page is left, and nothing else. */
  offer(address: StoreAddress, from: 'file' | 'code'): void {
    const agreed = this.agreed()?.address;
    // A code is shown by somebody here and may name a new store; a file may lie about for years.
    if (agreed !== undefined && (from === 'file' || sameAddress(agreed, address))) return;
    this.#offer = { address, from };
    this.#tell();
  }

  async agree(address: StoreAddress): ReturnType<ClubStore['agree']> {
    const { agreement, storage, now } = this.#options;
    if (databaseUrl(address) === null) return 'bad-address';
    const kept = agreement.keep({ schema: 1, address, atMs: now() });
    this.#offer = null;
    this.#forget();
    await storage.deleteRecords(OLD_ADDRESS.kind, [ID]);
    return kept ? 'kept' : 'this-page';
  }

  async turnDown(): Promise<void> {
    this.#offer = null;
    this.#tell();
    await this.#options.storage.deleteRecords(OLD_ADDRESS.kind, [ID]);
  }

  async stop(): Promise<void> {
    this.#options.agreement.keep(null);
    this.#forget();
    await this.turnDown();
  }

  async test(): Promise<StoreProblem | null> {
    const agreed = this.agreed();
    return agreed === null ? 'bad-address' : testStore(agreed.address, this.#options.fetch);
  }

  /** Looks anew: another tab may have agreed or stopped. */
  look(): void {
    if (this.agreed() === null) this.#forget();
    else this.#tell();
  }

  /**
   * Puts the rides of a session there, then takes what others have put there; over when all that was asked for is done.
   * Who waits for the store to come back tries again at once, unless this was only `inPassing`; then what the store
   * has refused is not offered again either.
   */
  sync(job: SharedJob, inPassing = false): Promise<void> {
    const wanted = this.#jobs.get(job.planId)?.inPassing === false;
    this.#jobs.set(job.planId, { job, inPassing: inPassing && !wanted });
    if (this.#running !== null) {
      if (!inPassing) this.#wake();
      return this.#running;
    }
    this.#running = this.#workOff().finally(() => {
      this.#running = null;
    });
    return this.#running;
  }

  async #workOff(): Promise<void> {
    for (;;) {
      const to = this.agreed();
      const [next] = this.#jobs.values();
      if (next === undefined || to === null) break;
      this.#jobs.delete(next.job.planId);
      await this.#once(to.address, next.job, next.inPassing);
    }
    this.#jobs.clear();
  }

  /** Whether this very address is still agreed to. */
  #goesTo(address: StoreAddress): boolean {
    const agreed = this.agreed();
    return agreed !== null && sameAddress(agreed.address, address);
  }

  async #once(to: StoreAddress, { planId, handOver, take }: SharedJob, inPassing: boolean): Promise<void> {
    const { now } = this.#options;
    // Asked at the last moment: between two questions somebody may have stopped it, here or in another tab.
    const fetch: Fetch = async (url, init) => {
      if (!this.#goesTo(to)) throw new Error('nobody agrees any more');
      return this.#options.fetch(url, init);
    };
    const before = progressFor(to, this.#progress);
    const met = new Set(before.met);
    const pieces = piecesOf(handOver()).filter(({ id }) => !met.has(id));
    let last: StoreStanding | null = null;
    const sent = await sendPieces(to, pieces, this.#progress, {
      fetch,
      sleep: (ms) => this.#pause(ms),
      now,
      inPassing,
      stopped: () => !this.#goesTo(to),
      onState: (state, reached) => {
        if (!this.#goesTo(to)) return;
        last = state;
        void this.#keep(reached);
        // Whether all is well is known once the store has been read as well.
        if (state.phase !== 'done') this.#show(planId, state);
      },
    });
    if (!this.#goesTo(to)) return this.#forget();
    const { read, progress, problem } = await fetchRides(to, planId, sent, fetch);
    // What could not be kept here is asked for again the next time.
    if (this.#goesTo(to) && (isEmpty(read) || (await take(read)))) await this.#keep(progress);
    if (last === null || !this.#goesTo(to)) return undefined;
    const state = last as StoreStanding;
    return this.#show(planId, { ...state, problem: problem ?? state.problem });
  }

  #pause(ms: number): Promise<void> {
    const woken = new Promise<void>((resolve) => {
      this.#wake = resolve;
    });
    return Promise.race([this.#options.sleep(ms), woken]);
  }

  async #keep(progress: SharedProgress): Promise<void> {
    if (progress === this.#progress) return;
    this.#progress = progress;
    await this.#options.storage.putRecord(recordOf(PROGRESS, ID, progress));
  }

  #forget(): void {
    this.#states.clear();
    this.#tell();
  }

  #show(planId: string, state: StoreStanding): void {
    const before = this.#states.get(planId);
    if (JSON.stringify(before) === JSON.stringify(state)) return;
    this.#states.set(planId, state);
    this.#tell();
  }

  #tell(): void {
    this.#listeners.tell();
  }
}

function sameAddress(a: StoreAddress, b: StoreAddress): boolean {
  return a.url === b.url && a.database === b.database && a.name === b.name && a.password === b.password;
}

function together(a: StoreStanding, b: StoreStanding): StoreStanding {
  return { ...a, there: a.there + b.there, left: a.left + b.left };
}

function isEmpty({ set, heard }: ReadFile): boolean {
  return set.records.length + set.damaged.length + set.withdrawn.length + heard.length === 0;
}
