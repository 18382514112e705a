/**
 * Keeps things in the database and its second copy (`twice.ts`) and, while that does not work, in memory; what waits there
 * is brought over as soon as there is room. What a database has lost is brought back from the second copy when it is
 * opened. It knows stores and keys; what a ride or a level is, others know.
 */
import { type Connection, createConnection } from './connection.ts';
import { type StoreAccess, type MemoryAccess, memoryAccess } from './access.ts';
import { Fault } from './faults.ts';
import type { OpenerOptions } from './opener.ts';
import { type PlaceOutcome, placeAll } from './place.ts';
import { COPIED_STORES, isCopied, type CopyPlace, type SecondCopy } from './secondCopy.ts';
import { decideMerge } from './mergePolicy.ts';
import { keyOf } from './shapes.ts';
import { changeTwice, type Deleted, type Plan, writeTwice } from './twice.ts';
import type { StoredPiece, ProblemCode, StoreName } from './types.ts';

export const STORES: readonly StoreName[] = ['rides', 'results', 'levels', 'settings', 'records'];

/** What each store holds, by key, as it was read. */
export type Contents = Readonly<Record<StoreName, ReadonlyMap<string, unknown>>>;

/** Answer to writing: `code` is null where database and second copy have it, else all of it is in memory. */
export interface Written {
  readonly outcomes: readonly PlaceOutcome[];
  readonly code: ProblemCode | null;
}

/** The vault. No method rejects. */
export interface Vault {
  /** Opens the database and brings back what only the second copy has, then these pieces. */
  open(pieces: readonly StoredPiece[]): Promise<Written>;
  write(pieces: readonly StoredPiece[]): Promise<Written>;
  /** Puts and removes what `plan` answers, in one transaction with what it looks at; null where it answers null. */
  change(plan: Plan): Promise<Written | null>;
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
  /** Runs something while nothing is written or removed; what is asked meanwhile comes after it. */
  alone<T>(work: () => Promise<T>): Promise<T>;
  /** Empties memory and lets go of the database; what was asked before is not done any more. */
  letGo(): void;
  /** Another tab has deleted everything: what waits in memory goes, and what was asked before is not done. */
  deletedElsewhere(): void;
  readonly connection: Connection;
}

/** What the vault is made of. */
interface Inside {
  readonly connection: Connection;
  readonly memory: MemoryAccess;
  readonly fault: () => ProblemCode | null;
  readonly note: (code: ProblemCode | null) => void;
  readonly bringOver: () => Promise<void>;
  /** Empties memory; what was asked before is not done any more. */
  readonly forget: () => void;
  /** The same, because another tab has deleted everything. */
  readonly deleted: () => void;
  /** Whether everything was deleted since this was called. */
  readonly watch: () => Deleted;
  /** The code of what went wrong, after a look whether the disk is full. */
  readonly codeOf: (error: unknown) => Promise<ProblemCode>;
  /** Runs something over the database; null after noting why it failed. */
  readonly attempt: <T>(
    mode: 'readonly' | 'readwrite',
    work: (access: StoreAccess) => Promise<T>,
  ) => Promise<T | null>;
}

type Options = Omit<OpenerOptions, 'onLate' | 'onDeleted'> & { readonly secondCopy: SecondCopy };

/** Makes a vault; `onChange` is called when `fault` may have changed, `onDeleted` when another tab deletes everything. */
export function createVault(options: Options, onChange: () => void, onDeleted: () => void): Vault {
  const inside = createInside(options, onChange, onDeleted);
  const { connection, memory, fault } = inside;
  const { secondCopy } = options;
  const inLine = line();
  return {
    connection,
    fault,
    deletedElsewhere: inside.deleted,
    alone: inLine,
    letGo() {
      inside.forget();
      connection.close();
      inside.note(null);
    },
    async open(small) {
      const { missing, single } = await compare(inside, secondCopy);
      const pieces = [...(await secondCopy.pieces(missing)), ...small];
      const written = await inLine(() =>
        orMemory(
          inside,
          inside.watch(),
          () => connection.run('readwrite', (access) => placeAll(access, pieces)),
          () => placeAll(memory, pieces),
        ),
      );
      // Kept before there was a second copy. Nobody waits for it, and a save need not wait for all of it.
      for (const one of single) void inLine(() => copyFromDatabase(inside, secondCopy, one));
      return written;
    },
    write(pieces) {
      const isDeleted = inside.watch();
      return inLine(() =>
        orMemory(
          inside,
          isDeleted,
          () => writeTwice(connection, secondCopy, pieces, isDeleted),
          () => placeAll(memory, pieces),
        ),
      );
    },
    change(plan) {
      const isDeleted = inside.watch();
      return inLine(async () => {
        const { outcomes, code } = await orMemory(
          inside,
          isDeleted,
          () => changeTwice(inside, secondCopy, plan, isDeleted),
          async () => {
            const planned = await plan(memory, false);
            for (const { store, key } of planned?.drop ?? []) await memory.remove(store, key);
            return planned === null ? null : placeAll(memory, planned.pieces);
          },
        );
        return outcomes === null ? null : { outcomes, code };
      });
    },
    remove: (store, keys) => inLine(() => removeTwice(inside, secondCopy, store, keys)),
    ...readings(inside),
  };
}

/** What is kept, what waits in memory included. */
function readings({ attempt, memory }: Inside): Pick<Vault, 'readAll' | 'readEverything' | 'readOne'> {
  return {
    async readAll(store) {
      const kept = await attempt('readonly', (access) => access.entries(store));
      return withWaiting(memory, store, kept ?? []);
    },
    async readEverything() {
      const kept = await attempt('readonly', (access) => entriesOf(access));
      const contents: Partial<Record<StoreName, ReadonlyMap<string, unknown>>> = {};
      for (const store of STORES) contents[store] = await withWaiting(memory, store, kept?.get(store) ?? []);
      return { contents: contents as Contents, complete: kept !== null };
    },
    async readOne(store, key) {
      const kept = await attempt('readonly', async (access) => ({ value: await access.get(store, key) }));
      const waiting = await memory.get(store, key);
      return waiting === undefined ? kept?.value : later(store, kept?.value, waiting);
    },
  };
}

/** Tries `work`; what did not work is in memory afterwards. What was asked before a deletion does not come after it. */
async function orMemory<T extends readonly PlaceOutcome[] | null>(
  inside: Inside,
  isDeleted: Deleted,
  work: () => Promise<T>,
  inMemory: () => Promise<T>,
): Promise<{ readonly outcomes: T | readonly PlaceOutcome[]; readonly code: ProblemCode | null }> {
  try {
    const outcomes = await work();
    await inside.bringOver();
    return { outcomes: isDeleted() ? ['deleted'] : outcomes, code: null };
  } catch (error) {
    const code = await inside.codeOf(error);
    if (isDeleted()) return { outcomes: ['deleted'], code };
    const outcomes = await inMemory();
    inside.note(code);
    return { outcomes, code };
  }
}

async function removeTwice(
  { memory, attempt, fault }: Inside,
  secondCopy: SecondCopy,
  store: StoreName,
  keys: (all: readonly string[]) => readonly string[],
): Promise<ProblemCode | null> {
  const removeFrom = async (access: StoreAccess, chosen: readonly string[]): Promise<true> => {
    for (const key of chosen) await access.remove(store, key);
    return true;
  };
  await removeFrom(memory, keys(await memory.keys(store)));
  const chosen = keys((await attempt('readonly', (access) => access.keys(store))) ?? []);
  // The copy first: what is removed must not come back from it.
  for (const key of chosen)
    if (!(await secondCopy.remove({ store, key }))) return fault() ?? 'connection-lost';
  return (await attempt('readwrite', (access) => removeFrom(access, chosen))) === null ? fault() : null;
}

/** One thing after the other, so that a copy is never made of what is just being removed. */
function line(): <T>(work: () => Promise<T>) => Promise<T> {
  let last: Promise<unknown> = Promise.resolve();
  return (work) => {
    const mine = last.then(work);
    last = mine.catch(() => undefined);
    return mine;
  };
}

function createInside(options: Options, onChange: () => void, onDeleted: () => void): Inside {
  const memory = memoryAccess();
  let fault: ProblemCode | null = null;
  const note = (code: ProblemCode | null): void => {
    fault = code;
    onChange();
  };
  let deletions = 0;
  const watch = (): Deleted => {
    const before = deletions;
    return () => deletions !== before;
  };
  // What somebody deletes in one tab must not come back from another.
  const forget = (): void => {
    deletions += 1;
    memory.empty();
  };
  const deleted = (): void => {
    forget();
    onDeleted();
  };
  const connection = createConnection({ ...options, onLate: () => void bringOver(), onDeleted: deleted });
  const codeOf = (error: unknown): Promise<ProblemCode> =>
    codeAfterLook(options.secondCopy, error, fault === 'disk-full');
  /** Brings over what waits, one by one: a big thing that does not fit must not hold up the others. */
  const bringOver = async (): Promise<void> => {
    let left: ProblemCode | null = null;
    const isDeleted = watch();
    for (const { store, key, value } of memory.all()) {
      try {
        await writeTwice(connection, options.secondCopy, [{ store, key, value, mine: false }], isDeleted);
        memory.release(store, key, value);
      } catch (error) {
        left = await codeOf(error);
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
    forget,
    deleted,
    watch,
    codeOf,
    fault: () => fault,
    async attempt(mode, work) {
      try {
        const result = await connection.run(mode, work);
        if (memory.all().length === 0) note(null);
        // The database is back. A full disk does not stop reading and is not tried again here.
        else if (fault !== 'disk-full') await bringOver();
        return result;
      } catch (error) {
        note(await codeOf(error));
        return null;
      }
    },
  };
}

/** A browser on a full disk may say any of these. */
const DISGUISES: readonly ProblemCode[] = ['corrupt', 'connection-lost', 'hangs'];

/** The code of what went wrong; whether the disk is full is looked at where a browser may call it something else. */
async function codeAfterLook(secondCopy: SecondCopy, error: unknown, wasFull: boolean): Promise<ProblemCode> {
  const code = error instanceof Fault ? error.code : 'connection-lost';
  if (!DISGUISES.includes(code)) return code;
  const hasRoom = await secondCopy.hasRoom(0);
  return hasRoom === false || (hasRoom === null && wasFull) ? 'disk-full' : code;
}

/** What only the second copy has, and what only the database has. A database that cannot be asked has nothing. */
async function compare(
  inside: Inside,
  secondCopy: SecondCopy,
): Promise<{ readonly missing: readonly CopyPlace[]; readonly single: readonly CopyPlace[] }> {
  const kept = await inside.attempt('readonly', async (access) => {
    const places: CopyPlace[] = [];
    for (const store of COPIED_STORES)
      for (const key of await access.keys(store)) if (isCopied({ store, key })) places.push({ store, key });
    return places;
  });
  const copied = await secondCopy.places();
  if (copied === null) return { missing: [], single: [] };
  const without = (all: readonly CopyPlace[], others: readonly CopyPlace[]): readonly CopyPlace[] => {
    const names = new Set(others.map(({ store, key }) => `${store} ${key}`));
    return all.filter(({ store, key }) => !names.has(`${store} ${key}`));
  };
  return { missing: without(copied, kept ?? []), single: without(kept ?? [], copied) };
}

async function copyFromDatabase(inside: Inside, secondCopy: SecondCopy, place: CopyPlace): Promise<void> {
  const value = await inside.attempt('readonly', (access) => access.get(place.store, place.key));
  if (value !== undefined && value !== null) await secondCopy.put(place, value);
}

async function entriesOf(
  access: StoreAccess,
): Promise<ReadonlyMap<StoreName, readonly (readonly [string, unknown])[]>> {
  const all = new Map<StoreName, readonly (readonly [string, unknown])[]>();
  for (const store of STORES) all.set(store, await access.entries(store));
  return all;
}

/** What was read from a store, and what waits in memory for it. */
async function withWaiting(
  memory: StoreAccess,
  store: StoreName,
  kept: readonly (readonly [string, unknown])[],
): Promise<ReadonlyMap<string, unknown>> {
  const all = new Map(kept);
  for (const [key, value] of await memory.entries(store)) all.set(key, later(store, all.get(key), value));
  return all;
}

/** What is there, or what waits in memory if that would take its place. */
function later(store: StoreName, kept: unknown, waiting: unknown): unknown {
  const decision = decideMerge({ store, key: keyOf(store, waiting), value: waiting, mine: false }, kept);
  return decision.kind === 'put' ? decision.value : kept;
}
