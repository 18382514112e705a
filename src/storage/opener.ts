/**
 * Gets hold of the database: opening that hangs is given up and adopted if it succeeds late, and a connection
 * that was lost or that another tab asked back is opened anew when it is next wanted. What is done with it
 * is decided by others.
 */
import { type IDBPDatabase, openDB } from 'idb';
import { ALL_STORES } from './access.ts';
import type { Environment } from './environment.ts';
import { Fault, faultWhileOpening, inTime } from './faults.ts';

export const DATABASE_NAME = 'before-the-hill';
/** Rises only when a store is added; shapes of records climb their own ladders. */
const DATABASE_VERSION = 1;

export interface OpenerOptions extends Pick<Environment, 'indexedDB' | 'timeoutMs'> {
  /** Opening succeeded after it had been given up. */
  readonly onLate: () => void;
  /** Another tab deletes the database. */
  readonly onDeleted: () => void;
}

interface Attempt {
  readonly answer: Promise<IDBPDatabase>;
  isBlocked: boolean;
  givenUp: boolean;
}

/** Makes an opener; nothing is opened before the first use. */
export function createOpener({ indexedDB, timeoutMs, onLate, onDeleted }: OpenerOptions) {
  let open: IDBPDatabase | null = null;
  let waiting: Attempt | null = null;

  const adopt = (database: IDBPDatabase): void => {
    const forget = (): void => {
      if (open === database) open = null;
    };
    database.addEventListener('close', forget);
    database.addEventListener('versionchange', (event) => {
      forget();
      database.close();
      if (event.newVersion === null) onDeleted();
    });
    open = database;
  };

  const begin = (): Attempt => {
    if (indexedDB() === null) throw new Fault('private-window');
    const answer = openDB(DATABASE_NAME, DATABASE_VERSION, {
      upgrade(database) {
        for (const store of ALL_STORES)
          if (!database.objectStoreNames.contains(store)) database.createObjectStore(store);
      },
      blocked() {
        mine.isBlocked = true;
      },
    });
    const mine: Attempt = { answer, isBlocked: false, givenUp: false };
    answer.then(
      (database) => {
        if (waiting !== mine) return database.close();
        waiting = null;
        adopt(database);
        if (mine.givenUp) onLate();
      },
      () => {
        if (waiting === mine) waiting = null;
      },
    );
    return mine;
  };

  return {
    /** The open database. @throws Fault */
    async database(): Promise<IDBPDatabase> {
      if (open !== null) return open;
      try {
        waiting ??= begin();
        const mine = waiting;
        const late = (): Fault => {
          mine.givenUp = true;
          return new Fault(mine.isBlocked ? 'blocked' : 'hangs');
        };
        // Given up once, it is not waited for again: the rider has already been told.
        return mine.givenUp ? await Promise.reject(late()) : await inTime(mine.answer, timeoutMs, late);
      } catch (error) {
        throw faultWhileOpening(error);
      }
    },
    /** Lets go of a connection that does not work; the next use opens another. */
    drop: (): void => {
      open?.close();
      open = null;
    },
    /** Lets go, also of an opening that has not been answered yet. */
    close: (): void => {
      open?.close();
      open = null;
      waiting = null;
    },
  };
}
