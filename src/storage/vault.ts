/**
 * Writes into the database and, while that does not work, into memory; what waits in memory is brought over as
 * soon as the database takes it. It knows stores and keys; what a ride or a level is, others know.
 */
import { type Connection, createConnection } from './connection.ts';
import { type Desk, type MemoryDesk, memoryDesk } from './desk.ts';
import { Fault } from './faults.ts';
import type { OpenerOptions } from './opener.ts';
import { type Outcome, place, placeAll } from './place.ts';
import { type Piece, settle } from './settle.ts';
import { keyOf } from './shapes.ts';
import type { ProblemCode, StoreName } from './types.ts';

export const STORES: readonly StoreName[] = ['rides', 'results', 'levels', 'settings', 'records'];

/** What each store holds, by key, as it was read. */
export type Contents = Readonly<Record<StoreName, ReadonlyMap<string, unknown>>>;

/** Answer to writing: `code` is null where the database has completed it, else all of it is in memory. */
export interface Written {
  readonly outcomes: readonly Outcome[];
  readonly code: ProblemCode | null;
}

/** The vault. No method rejects. */
export interface Vault {
  write(pieces: readonly Piece[]): Promise<Written>;
  /** Removes for good; null when done. */
  remove(store: StoreName, keys: (all: readonly string[]) => readonly string[]): Promise<ProblemCode | null>;
  /** All values by key, those in memory included. */
  readAll(store: StoreName): Promise<ReadonlyMap<string, unknown>>;
  /** All of all stores at one moment; `complete` is false where the database did not answer. */
  readEverything(): Promise<{ readonly contents: Contents; readonly complete: boolean }>;
  /** One value, or undefined. */
  readOne(store: StoreName, key: string): Promise<unknown>;
  /** Why something waits in memory or the last use failed; null when all is well. */
  fault(): ProblemCode | null;
  /** Empties memory and lets go of the database. */
  letGo(): void;
  readonly connection: Connection;
}

/** Connection and memory, and how the two stand. */
interface Inside {
  readonly connection: Connection;
  readonly memory: MemoryDesk;
  readonly fault: () => ProblemCode | null;
  readonly note: (code: ProblemCode | null) => void;
  readonly bringOver: () => Promise<void>;
  /** Runs something over the database; null after noting why it failed. */
  readonly attempt: <T>(
    mode: 'readonly' | 'readwrite',
    work: (desk: Desk) => Promise<T>,
  ) => Promise<T | null>;
}

/** Makes a vault; `onChange` is called when `fault` may have changed, `onDeleted` when another tab deletes everything. */
export function createVault(
  options: Omit<OpenerOptions, 'onLate' | 'onDeleted'>,
  onChange: () => void,
  onDeleted: () => void,
): Vault {
  const inside = createInside(options, onChange, onDeleted);
  const { connection, memory, attempt, fault } = inside;
  return {
    connection,
    fault,
    letGo() {
      memory.empty();
      connection.close();
      inside.note(null);
    },
    async write(pieces) {
      try {
        const outcomes = await connection.run('readwrite', (desk) => placeAll(desk, pieces));
        await inside.bringOver();
        return { outcomes, code: null };
      } catch (error) {
        const code = codeOf(error);
        const outcomes = await placeAll(memory, pieces);
        inside.note(code);
        return { outcomes, code };
      }
    },
    async remove(store, keys) {
      const removeFrom = async (desk: Desk): Promise<true> => {
        const all = (await desk.entries(store)).map(([key]) => key);
        for (const key of keys(all)) await desk.remove(store, key);
        return true;
      };
      await removeFrom(memory);
      return (await attempt('readwrite', removeFrom)) === null ? fault() : null;
    },
    async readAll(store) {
      const kept = await attempt('readonly', (desk) => desk.entries(store));
      return withWaiting(memory, store, kept ?? []);
    },
    async readEverything() {
      const kept = await attempt('readonly', (desk) => entriesOf(desk));
      const contents: Partial<Record<StoreName, ReadonlyMap<string, unknown>>> = {};
      for (const store of STORES) contents[store] = await withWaiting(memory, store, kept?.get(store) ?? []);
      return { contents: contents as Contents, complete: kept !== null };
    },
    async readOne(store, key) {
      const kept = await attempt('readonly', async (desk) => ({ value: await desk.get(store, key) }));
      const waiting = await memory.get(store, key);
      return waiting === undefined ? kept?.value : later(store, kept?.value, waiting);
    },
  };
}

function createInside(
  options: Omit<OpenerOptions, 'onLate' | 'onDeleted'>,
  onChange: () => void,
  onDeleted: () => void,
): Inside {
  const memory = memoryDesk();
  let fault: ProblemCode | null = null;
  const note = (code: ProblemCode | null): void => {
    fault = code;
    onChange();
  };
  const connection = createConnection({
    ...options,
    onLate: () => void bringOver(),
    // What somebody deletes in one tab must not come back from another.
    onDeleted() {
      memory.empty();
      onDeleted();
    },
  });
  /** Brings over what waits, one by one: a big thing that does not fit must not hold up the others. */
  const bringOver = async (): Promise<void> => {
    let left: ProblemCode | null = null;
    for (const { store, key, value } of memory.all()) {
      try {
        await connection.run('readwrite', (desk) => place(desk, { store, key, value, mine: false }));
        memory.release(store, key, value);
      } catch (error) {
        left = codeOf(error);
        if (left !== 'disk-full') break;
      }
    }
    note(left);
  };
  return {
    connection,
    memory,
    note,
    bringOver,
    fault: () => fault,
    async attempt(mode, work) {
      try {
        const result = await connection.run(mode, work);
        if (memory.all().length === 0) note(null);
        // The database is back. A full disk does not stop reading and is not tried again here.
        else if (fault !== 'disk-full') await bringOver();
        return result;
      } catch (error) {
        note(codeOf(error));
        return null;
      }
    },
  };
}

function codeOf(error: unknown): ProblemCode {
  return error instanceof Fault ? error.code : 'connection-lost';
}

async function entriesOf(
  desk: Desk,
): Promise<ReadonlyMap<StoreName, readonly (readonly [string, unknown])[]>> {
  const all = new Map<StoreName, readonly (readonly [string, unknown])[]>();
  for (const store of STORES) all.set(store, await desk.entries(store));
  return all;
}

/** What was read from a store, and what waits in memory for it. */
async function withWaiting(
  memory: Desk,
  store: StoreName,
  kept: readonly (readonly [string, unknown])[],
): Promise<ReadonlyMap<string, unknown>> {
  const all = new Map(kept);
  for (const [key, value] of await memory.entries(store)) all.set(key, later(store, all.get(key), value));
  return all;
}

/** What is there, or what waits in memory if that would take its place. */
function later(store: StoreName, kept: unknown, waiting: unknown): unknown {
  const settlement = settle({ store, key: keyOf(store, waiting), value: waiting, mine: false }, kept);
  return settlement.kind === 'put' ? settlement.value : kept;
}
