/**
 * Transactions that either complete or say why not: a lost connection is opened anew and the work done again,
 * and a transaction that hangs is given up. What is read and written is decided by others.
 */
import type { IDBPDatabase } from 'idb';
import { ALL_STORES, databaseAccess, type Mode, type StoreAccess, type Transaction } from './access.ts';
import { Fault, faultWhileUsing, isFull, isLost, inTime } from './faults.ts';
import { createOpener, type OpenerOptions } from './opener.ts';

/**
 * A transaction may take this many times as long as opening before it counts as hanging; after one that did, no longer
 * than opening, until one ends: whoever waits has to wait for each of them.
 */
const PATIENCE = 5;
/**
 * Waits before the work of a lost connection is tried again. A browser that closed it by force may be busy with
 * that for a moment, and refuses new ones meanwhile (about one time in ten when asked at once, Chromium 156).
 */
const AGAIN_AFTER_MS: readonly number[] = [0, 100, 400];

type Work<T> = (transaction: Transaction) => Promise<T>;

/** Makes a connection; nothing is opened before the first use. */
export function createConnection(options: OpenerOptions) {
  const opener = createOpener(options);
  let wasSilent = false;
  const attempt = async <T>(mode: Mode, work: Work<T>): Promise<T> => {
    const database = await opener.database();
    try {
      const result = await transact(database, mode, work, options.timeoutMs * (wasSilent ? 1 : PATIENCE));
      wasSilent = false;
      return result;
    } catch (error) {
      wasSilent = error instanceof Fault && error.code === 'hangs';
      // A browser closes a database that it could not write to.
      if (error instanceof Fault || isLost(error) || isFull(error)) opener.drop();
      throw error;
    }
  };
  const run = async <T>(mode: Mode, work: Work<T>, waits = AGAIN_AFTER_MS): Promise<T> => {
    try {
      return await attempt(mode, work);
    } catch (error) {
      const [waitMs, ...later] = waits;
      if (waitMs === undefined || !isLost(error)) throw faultWhileUsing(error);
      await new Promise((resolve) => setTimeout(resolve, waitMs));
      return run(mode, work, later);
    }
  };
  return {
    /** Lets go of the database; the next use opens it again. */
    close: opener.close,
    /**
     * Runs `work` in a transaction over all stores and answers after the transaction has completed. `work` may be
     * called several times; what an earlier call wrote is then undone.
     * @throws Fault
     */
    run: <T>(mode: Mode, work: (access: StoreAccess) => Promise<T>): Promise<T> =>
      run(mode, (transaction) => work(databaseAccess(transaction))),
    /** Empties the whole database. @throws Fault */
    clear: (): Promise<void> =>
      run('readwrite', async (transaction) => {
        for (const store of ALL_STORES)
          await (transaction as Transaction<'readwrite'>).objectStore(store).clear();
      }),
  };
}
export type Connection = ReturnType<typeof createConnection>;

/** One transaction, which completes, fails or is aborted when it takes too long. */
function transact<T>(database: IDBPDatabase, mode: Mode, work: Work<T>, limitMs: number): Promise<T> {
  // `strict`: completed means on the disk, not in a buffer. Browsers that do not know it ignore it.
  const transaction = database.transaction([...ALL_STORES], mode, { durability: 'strict' });
  return inTime(finish(transaction, work), limitMs, () => {
    abort(transaction);
    return new Fault('hangs');
  });
}

/** The transaction's own error says more than that of a request in it, which is only told "aborted". */
async function finish<T>(transaction: Transaction, work: Work<T>): Promise<T> {
  const end = transaction.done.then(
    () => null,
    (error: unknown) => error,
  );
  let result: T;
  try {
    result = await work(transaction);
  } catch (error) {
    abort(transaction);
    const reason = await end;
    throw reason instanceof Error && reason.name !== 'AbortError' ? reason : error;
  }
  const reason = await end;
  if (reason !== null) throw reason;
  return result;
}

function abort(transaction: Transaction): void {
  try {
    transaction.abort();
  } catch {
    // It had ended by itself.
  }
}
