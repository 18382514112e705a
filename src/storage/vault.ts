/**
 * Keeps things in the database and its second copy (`twice.ts`) and, while that does not work, in memory; what waits there
 * is brought over as soon as there is room. What a database has lost is brought back from the second copy when it is
 * opened. It knows stores and keys; what a ride or a level is, others know.
 */
import { type MemoryAccess, memoryAccess, type Mode, type StoreAccess } from './access.ts';
import { type Connection, createConnection } from './connection.ts';
import type { Environment } from './environment.ts';
import { Fault } from './faults.ts';
import { inTurn } from './inTurn.ts';
import { decideMerge, type PlaceOutcome, placeAll } from './place.ts';
import {
  COPIED_STORES,
  type CopyPlace,
  createSecondCopy,
  isCopied,
  placeName,
  type SecondCopy,
} from './secondCopy.ts';
import { keyOf, type StoreName, STORES } from './shapes.ts';
import { type StoreChange, changeTwice, type Deleted, type Plan } from './twice.ts';
import type { ProblemCode, StoredPiece } from './types.ts';

/** What each store holds, by key, as it was read. */
export type Contents = Readonly<Record<StoreName, ReadonlyMap<string, unknown>>>;

/** Answer to writing: `code` is null where database and second copy have it, else all of it is in memory. */
export interface Written {
  readonly outcomes: readonly PlaceOutcome[];
  readonly code: ProblemCode | null;
}

/** What a person should hear of. */
interface VaultListeners {
  /** `fault` may have changed. */
  readonly onChange: () => void;
  /** Another tab deletes everything. */
  readonly onDeleted: () => void;
}

/** No method rejects. */
export class Vault {
  readonly connection: Connection;
  readonly memory: MemoryAccess = memoryAccess();
  readonly secondCopy: SecondCopy;
  readonly #listeners: VaultListeners;
  /** One thing after the other, so that a copy is never made of what is just being removed. */
  readonly #oneByOne = inTurn();
  #fault: ProblemCode | null = null;
  #deletions = 0;

  constructor(environment: Environment, listeners: VaultListeners) {
    this.#listeners = listeners;
    this.secondCopy = createSecondCopy(environment.caches, environment.timeoutMs);
    this.connection = createConnection({
      ...environment,
      onLate: () => void this.#bringOver(),
      onDeleted: () => this.deletedElsewhere(),
    });
  }

  /** Opens the database and brings back what only the second copy has, then these pieces. */
  async open(small: readonly StoredPiece[]): Promise<Written> {
    const { missing, single } = await this.#compare();
    const pieces = [...(await this.secondCopy.pieces(missing)), ...small];
    const written = await this.#oneByOne(() =>
      this.#orMemory(
        this.#watch(),
        () => this.connection.run('readwrite', (access) => placeAll(access, pieces)),
        () => placeAll(this.memory, pieces),
      ),
    );
    // Kept before there was a second copy. Nobody waits for it, and a save need not wait for all of it.
    for (const one of single) void this.#oneByOne(() => this.#copyFromDatabase(one));
    return written;
  }

  /** Puts and removes; what a plan answers in one transaction with what it looks at, and nothing where it answers null. */
  change(wished: StoreChange): Promise<Written>;
  change(wished: Plan): Promise<Written | null>;
  change(wished: StoreChange | Plan): Promise<Written | null> {
    const isDeleted = this.#watch();
    return this.#oneByOne(async () => {
      const { outcomes, code } = await this.#orMemory(
        isDeleted,
        () => changeTwice(this, wished, isDeleted),
        async () => {
          const planned = typeof wished === 'function' ? await wished(this.memory, false) : wished;
          if (planned === null) return null;
          for (const { store, key } of planned.drop ?? []) await this.memory.remove(store, key);
          return placeAll(this.memory, planned.pieces ?? []);
        },
      );
      return outcomes === null ? null : { outcomes, code };
    });
  }

  /** All values of a store by key, those in memory included. */
  async readAll(store: StoreName): Promise<ReadonlyMap<string, unknown>> {
    return this.#withWaiting(
      store,
      (await this.#attempt('readonly', (access) => access.entries(store))) ?? [],
    );
  }

  /** All of all stores at one moment; `complete` is false where the database did not answer. */
  async readEverything(): Promise<{ readonly contents: Contents; readonly complete: boolean }> {
    const kept = await this.#attempt('readonly', async (access) => {
      const all = new Map<StoreName, readonly (readonly [string, unknown])[]>();
      for (const store of STORES) all.set(store, await access.entries(store));
      return all;
    });
    const contents: Partial<Record<StoreName, ReadonlyMap<string, unknown>>> = {};
    for (const store of STORES) contents[store] = await this.#withWaiting(store, kept?.get(store) ?? []);
    return { contents: contents as Contents, complete: kept !== null };
  }

  /** One value, or undefined. */
  async readOne(store: StoreName, key: string): Promise<unknown> {
    const kept = await this.#attempt('readonly', async (access) => ({ value: await access.get(store, key) }));
    const waiting = await this.memory.get(store, key);
    return waiting === undefined ? kept?.value : later(store, kept?.value, waiting);
  }

  /** Why something waits in memory or the last use failed; null when all is well. */
  fault(): ProblemCode | null {
    return this.#fault;
  }

  /** Runs something while nothing is written or removed; what is asked meanwhile comes after it. */
  alone<T>(work: () => Promise<T>): Promise<T> {
    return this.#oneByOne(work);
  }

  /** Empties memory and lets go of the database; what was asked before is not done any more. */
  letGo(): void {
    this.#forget();
    this.connection.close();
    this.#note(null);
  }

  /** Another tab has deleted everything: what waits in memory goes, and what was asked before is not done. */
  deletedElsewhere(): void {
    this.#forget();
    this.#listeners.onDeleted();
  }

  /** What somebody deletes in one tab must not come back from another. */
  #forget(): void {
    this.#deletions += 1;
    this.memory.empty();
  }

  #note(code: ProblemCode | null): void {
    this.#fault = code;
    this.#listeners.onChange();
  }

  /** Whether everything was deleted since this was called. */
  #watch(): Deleted {
    const before = this.#deletions;
    return () => this.#deletions !== before;
  }

  /** Tries `work`; what did not work is in memory afterwards. What was asked before a deletion does not come after it. */
  async #orMemory<T extends readonly PlaceOutcome[] | null>(
    isDeleted: Deleted,
    work: () => Promise<T>,
    inMemory: () => Promise<T>,
  ): Promise<{ readonly outcomes: T | readonly PlaceOutcome[]; readonly code: ProblemCode | null }> {
    try {
      const outcomes = await work();
      await this.#bringOver();
      return { outcomes: isDeleted() ? ['deleted'] : outcomes, code: null };
    } catch (error) {
      const code = await this.#codeOf(error);
      if (isDeleted()) return { outcomes: ['deleted'], code };
      const outcomes = await inMemory();
      this.#note(code);
      return { outcomes, code };
    }
  }

  /** Brings over what waits, one by one: a big thing that does not fit must not hold up the others. */
  async #bringOver(): Promise<void> {
    let left: ProblemCode | null = null;
    const isDeleted = this.#watch();
    for (const { store, key, value } of this.memory.all()) {
      try {
        await changeTwice(this, { pieces: [{ store, key, value, mine: false }] }, isDeleted);
        this.memory.release(store, key, value);
      } catch (error) {
        left = await this.#codeOf(error);
        if (left !== 'disk-full') break;
      }
    }
    this.#note(left);
  }

  /** Runs something over the database; null after noting why it failed. */
  async #attempt<T>(mode: Mode, work: (access: StoreAccess) => Promise<T>): Promise<T | null> {
    try {
      const result = await this.connection.run(mode, work);
      if (this.memory.all().length === 0) this.#note(null);
      // The database is back. A full disk does not stop reading and is not tried again here.
      else if (this.#fault !== 'disk-full') await this.#bringOver();
      return result;
    } catch (error) {
      this.#note(await this.#codeOf(error));
      return null;
    }
  }

  /** The code of what went wrong; whether the disk is full is looked at where a browser may call it something else. */
  async #codeOf(error: unknown): Promise<ProblemCode> {
    const wasFull = this.#fault === 'disk-full';
    const code = error instanceof Fault ? error.code : 'connection-lost';
    if (!DISGUISES.includes(code)) return code;
    const hasRoom = await this.secondCopy.hasRoom(0);
    return hasRoom === false || (hasRoom === null && wasFull) ? 'disk-full' : code;
  }

  /** What only the second copy has, and what only the database has. A database that cannot be asked has nothing. */
  async #compare(): Promise<{
    readonly missing: readonly CopyPlace[];
    readonly single: readonly CopyPlace[];
  }> {
    const kept = await this.#attempt('readonly', async (access) => {
      const places: CopyPlace[] = [];
      for (const store of COPIED_STORES)
        for (const key of await access.keys(store)) if (isCopied({ store, key })) places.push({ store, key });
      return places;
    });
    const copied = await this.secondCopy.places();
    if (copied === null) return { missing: [], single: [] };
    const without = (all: readonly CopyPlace[], others: readonly CopyPlace[]): readonly CopyPlace[] => {
      const names = new Set(others.map(placeName));
      return all.filter((place) => !names.has(placeName(place)));
    };
    return { missing: without(copied, kept ?? []), single: without(kept ?? [], copied) };
  }

  async #copyFromDatabase(place: CopyPlace): Promise<void> {
    const value = await this.#attempt('readonly', (access) => access.get(place.store, place.key));
    if (value !== undefined && value !== null) await this.secondCopy.put(place, value);
  }

  /** What was read from a store, and what waits in memory for it. */
  async #withWaiting(
    store: StoreName,
    kept: readonly (readonly [string, unknown])[],
  ): Promise<ReadonlyMap<string, unknown>> {
    const all = new Map(kept);
    for (const [key, value] of await this.memory.entries(store))
      all.set(key, later(store, all.get(key), value));
    return all;
  }
}

/** A browser on a full disk may say any of these. */
const DISGUISES: readonly ProblemCode[] = ['corrupt', 'connection-lost', 'hangs'];

/** What is there, or what waits in memory if that would take its place. */
function later(store: StoreName, kept: unknown, waiting: unknown): unknown {
  const decision = decideMerge({ store, key: keyOf(store, waiting), value: waiting, mine: false }, kept);
  return decision.kind === 'put' ? decision.value : kept;
}
