/**
 * The journal of a ride: what was ridden so far, kept while it is ridden, so that a crash, an empty battery or a
 * closed tab costs two seconds at most. One record says what is ridden, others hold the recording piece by piece;
 * whether a ride is still being ridden somewhere is told by a lock that ends with its tab.
 */
import { setupOfJob } from '../../core/ride/job.ts';
import { TICKS_PER_S } from '../../core/ride/clock.ts';
import { PHYSICS_VERSION, type RideSetup } from '../../core/ride/recording.ts';
import type { LiveRide } from '../../core/ride/run.ts';
import { HEADS, type JournalHead, type JournalPart, PARTS, unfinishedRide } from './journalShapes.ts';
import type { UnfinishedRide } from '../../state/unfinished.ts';
import type { Storage } from '../../storage/index.ts';
import { recordOf } from '../../storage/ladder.ts';

/**
 * Ticks of the ride after which it is written again: a second of riding, so that it surely lies in the database
 * before two seconds have gone by. Shifts are written at once.
 */
export const JOURNAL_TICKS = TICKS_PER_S;
/** A piece is written anew until it holds so many commands; then the next one begins. Keeps every write short. */
const COMMANDS_IN_PART = 200;
/** The database rests so long between two pieces (ms), however fast somebody shifts or a test rides. */
const REST_MS = 250;
/** Without locks: a journal written so lately (ms) may belong to another tab that is still riding. */
const STILL_RIDDEN_MS = 15_000;

/** What is ridden; of a ride that goes on some pieces are there already. */
export type JournalOf = Pick<UnfinishedRide, 'rest' | 'level' | 'turn' | 'partCount'> &
  Pick<RideSetup, 'bike' | 'rider' | 'autoEase'>;

const lockName = (id: string): string => `before-the-hill.ride.${id}`;

/** Holds a lock until told otherwise; without locks, or where they are forbidden, everybody may ride. */
function holdLock(id: string): () => void {
  const locks = navigator.locks as LockManager | undefined;
  let letGo = (): void => undefined;
  const held = new Promise<void>((resolve) => {
    letGo = resolve;
  });
  locks?.request(lockName(id), () => held).catch(() => undefined);
  return letGo;
}

/**
 * The journal of one ride that begins or goes on; nothing is written before the first seconds have been ridden. Nothing
 * here throws or keeps a picture waiting.
 */
export class Journal {
  readonly id: string;
  readonly #head: JournalHead;
  readonly #storage: () => Promise<Storage>;
  readonly #letGo: () => void;
  #headWritten: Promise<boolean> | null = null;
  /** Commands and fingerprints that lie in full pieces, and the piece that is being filled. */
  #from = { commands: 0, checkpoints: 0 };
  #index: number;
  #partWritten = false;
  #writtenTick = 0;
  readonly #restMs: number;
  #writtenAtMs = Number.NEGATIVE_INFINITY;
  #shifted = false;
  #closed = false;
  #scheduled = false;
  #waiting = 0;
  #writing: Promise<boolean> = Promise.resolve(true);

  /** @param storage asked with every write, because it may come later than the ride */
  constructor(id: string, what: JournalOf, storage: () => Promise<Storage>, restMs = REST_MS) {
    this.#restMs = restMs;
    const { level, rest, turn, bike, rider, autoEase, partCount } = what;
    this.id = id;
    this.#storage = storage;
    this.#index = partCount;
    this.#letGo = holdLock(id);
    const setup = setupOfJob({ level, seed: level.seed, bike, rider, autoEase });
    this.#head = { rest, level, turn, physicsVersion: PHYSICS_VERSION, setup };
    // Before the pedals turn, so that the first seconds have one thing less to wait for.
    this.#writeHead().catch(() => undefined);
  }

  /** Once; again only where it could not be written. */
  async #writeHead(): Promise<boolean> {
    const head = recordOf(HEADS, this.id, this.#head);
    this.#headWritten ??= this.#storage().then(async (storage) => (await storage.putRecord(head)).saved);
    const mine = this.#headWritten;
    const saved = await mine.catch(() => false);
    if (!saved && this.#headWritten === mine) this.#headWritten = null;
    return saved;
  }

  /** Comes when it has begun, or cannot, but no later than after so long (ms): from then on a ride is kept as it is ridden. */
  async begun(limitMs: number): Promise<void> {
    const late = new Promise((resolve) => setTimeout(resolve, limitMs));
    await Promise.race([this.#headWritten?.catch(() => false), late]);
  }

  /** Pieces there are or may be. */
  partCount(): number {
    return this.#index + 1;
  }

  /** The ride went on; called with every picture. `shifted` where a lever was pushed. */
  note(ride: LiveRide, shifted: boolean): void {
    this.#shifted ||= shifted;
    if (this.#closed || this.#scheduled || this.#waiting > 0) return;
    const ridden = ride.now.tick - this.#writtenTick;
    if (ridden < (this.#shifted ? 1 : JOURNAL_TICKS)) return;
    if (performance.now() - this.#writtenAtMs < this.#restMs) return;
    this.#scheduled = true;
    // After this picture, so that none waits for it.
    setTimeout(() => {
      this.#scheduled = false;
      void this.flush(ride);
    }, 0);
  }

  /** The ride was built anew from its recording and goes on: everything is written once more. */
  goOn(): void {
    this.#writing = this.#writing.then((kept) => {
      if (this.#partWritten) this.#index += 1;
      this.#partWritten = false;
      this.#from = { commands: 0, checkpoints: 0 };
      this.#writtenTick = 0;
      return kept;
    });
  }

  /** Writes what is not written yet; true once it is in the database. */
  flush(ride: LiveRide): Promise<boolean> {
    this.#waiting += 1;
    this.#writing = this.#writing.then(async (before) => {
      try {
        if (this.#closed || ride.now.tick === this.#writtenTick) return before;
        return await this.#write(ride);
      } catch {
        // The storage could not be fetched, or the tab is going; the next piece tries again.
        return false;
      } finally {
        this.#waiting -= 1;
        this.#writtenAtMs = performance.now();
      }
    });
    return this.#writing;
  }

  async #write(ride: LiveRide): Promise<boolean> {
    this.#shifted = false;
    this.#writtenTick = ride.now.tick;
    const from = this.#from;
    const part = ride.recordedSince(from.commands, from.checkpoints);
    const storage = await this.#storage();
    const headSaved = await this.#writeHead();
    const data: JournalPart = { of: this.id, index: this.#index, from, ...part };
    const record = recordOf(PARTS, `${this.id}-${this.#index}`, data);
    const { saved } = await storage.putRecord(record);
    this.#partWritten ||= saved;
    if (saved && part.commands.length >= COMMANDS_IN_PART) {
      this.#index += 1;
      this.#partWritten = false;
      this.#from = {
        commands: from.commands + part.commands.length,
        checkpoints: from.checkpoints + part.checkpoints.length,
      };
    }
    return saved && headSaved;
  }

  /** The ride is kept elsewhere, or nobody wants it any more. */
  async drop(): Promise<void> {
    this.#closed = true;
    await this.#writing;
    await this.#headWritten?.catch(() => false);
    try {
      await dropJournal(await this.#storage(), this.id, this.partCount());
    } catch {
      // Where the storage could not be fetched nothing was written.
    }
    this.#letGo();
  }

  /** Nobody rides it here any more; it stays. */
  close(): void {
    this.#closed = true;
    // Where nothing was ridden there is nothing to go on from.
    const last = this.#writtenTick > 0 || this.#index > 0 ? this.#writing : this.drop();
    void last.then(this.#letGo, this.#letGo);
  }
}

/** Removes a journal: the head first, so that half of it is never offered. */
export async function dropJournal(storage: Storage, id: string, partCount: number): Promise<void> {
  await storage.deleteRecords(HEADS.kind, [id]);
  // One more may have been begun while somebody looked.
  const ids = Array.from({ length: partCount + 2 }, (_, index) => `${id}-${index}`);
  await storage.deleteRecords(PARTS.kind, ids);
}

/** Journals that were begun and in which nothing was written: the ride ended before it began. */
export async function listEmpty(storage: Storage): Promise<readonly Pick<UnfinishedRide, 'id' | 'atMs'>[]> {
  const known = await storage.listRecords(HEADS);
  const pieces = known.length === 0 ? [] : await storage.listRecords(PARTS);
  return known
    .filter(({ id }) => !pieces.some(({ data }) => data.of === id))
    .map(({ id, savedAtMs }) => ({ id, atMs: savedAtMs }));
}

/** All rides that broke off or are still being ridden somewhere, the last one first. */
export async function readJournals(storage: Storage): Promise<readonly UnfinishedRide[]> {
  const known = await storage.listRecords(HEADS);
  if (known.length === 0) return [];
  const pieces = await storage.listRecords(PARTS);
  return known
    .flatMap(({ id, savedAtMs, data }) => {
      const own = pieces.filter((one) => one.data.of === id);
      const atMs = Math.max(savedAtMs, ...own.map((one) => one.savedAtMs));
      const sorted = own.map((one) => one.data).toSorted((a, b) => a.index - b.index);
      return unfinishedRide(id, atMs, data, sorted) ?? [];
    })
    .toSorted((a, b) => b.atMs - a.atMs);
}

/** Whether nobody rides it now; `onFree` is called when somebody does and stops. */
export async function isFree(
  { id, atMs }: Pick<UnfinishedRide, 'id' | 'atMs'>,
  nowMs: number,
  onFree: (() => void) | null,
): Promise<boolean> {
  const locks = navigator.locks as LockManager | undefined;
  const lately = nowMs - atMs < STILL_RIDDEN_MS;
  if (locks === undefined) return !lately;
  try {
    const free = await locks.request(lockName(id), { ifAvailable: true }, (lock) => lock !== null);
    if (!free && onFree !== null) void locks.request(lockName(id), onFree).catch(() => undefined);
    return free;
  } catch {
    return !lately;
  }
}
