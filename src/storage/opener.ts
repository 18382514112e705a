/**
 * Gets hold of the database: opening that hangs is given up and adopted if it succeeds late, and a connection
 * that was lost or that another tab asked back is opened anew when it is next wanted. What is done with it
 * is decided by others.
 */
import { type IDBPDatabase, wrap } from 'idb';
import { ALL_STORES } from './access.ts';
import { Fault, faultWhileOpening, inTime } from './faults.ts';

export const DATABASE_NAME = 'before-the-hill';
/** Rises only when a store is added; shapes of records climb their own ladders. */
const DATABASE_VERSION = 1;

/** What opening needs, and whom it tells. */
export interface OpenerOptions {
  /** The browser's databases; may throw or be missing. */
  readonly factory: () => IDBFactory | null;
  readonly timeoutMs: number;
  /** Opening succeeded after it had been given up. */
  readonly onLate: () => void;
  /** Another tab deletes the database. */
  readonly onDeleted: () => void;
}

/** Holds at most one open database. */
interface Opener {
  /** The open database. @throws Fault */
  database(): Promise<IDBPDatabase>;
  /** Lets go of a connection that does not work; the next use opens another. */
  readonly drop: () => void;
  /** Lets go, also of an opening that has not been answered yet. */
  readonly close: () => void;
}

interface Attempt {
  readonly answer: Promise<IDBPDatabase>;
  isBlocked(): boolean;
}

/** Makes an opener; nothing is opened before the first use. */
export function createOpener(options: OpenerOptions): Opener {
  let open: IDBPDatabase | null = null;
  let waiting: { readonly attempt: Attempt; givenUp: boolean } | null = null;

  const adopt = (database: IDBPDatabase): void => {
    const forget = (): void => {
      if (open === database) open = null;
    };
    database.addEventListener('close', forget);
    database.addEventListener('versionchange', (event) => {
      forget();
      database.close();
      if (event.newVersion === null) options.onDeleted();
    });
    open = database;
  };

  const begin = (): NonNullable<typeof waiting> => {
    const mine = { attempt: ask(options.factory()), givenUp: false };
    mine.attempt.answer.then(
      (database) => {
        if (waiting !== mine) return database.close();
        waiting = null;
        adopt(database);
        if (mine.givenUp) options.onLate();
      },
      () => {
        if (waiting === mine) waiting = null;
      },
    );
    return mine;
  };

  return {
    async database() {
      if (open !== null) return open;
      try {
        waiting ??= begin();
        const mine = waiting;
        const late = (): Fault => {
          mine.givenUp = true;
          return new Fault(mine.attempt.isBlocked() ? 'blocked' : 'hangs');
        };
        // Given up once, it is not waited for again: the rider has already been told.
        return mine.givenUp
          ? await Promise.reject(late())
          : await inTime(mine.attempt.answer, options.timeoutMs, late);
      } catch (error) {
        throw faultWhileOpening(error);
      }
    },
    drop() {
      open?.close();
      open = null;
    },
    close() {
      open?.close();
      open = null;
      waiting = null;
    },
  };
}

function ask(factory: IDBFactory | null): Attempt {
  if (factory === null) throw new Fault('private-window');
  let blocked = false;
  const request = factory.open(DATABASE_NAME, DATABASE_VERSION);
  request.addEventListener('upgradeneeded', () => {
    for (const shelf of ALL_STORES)
      if (!request.result.objectStoreNames.contains(shelf)) request.result.createObjectStore(shelf);
  });
  request.addEventListener('blocked', () => {
    blocked = true;
  });
  return { answer: wrap(request) as Promise<IDBPDatabase>, isBlocked: () => blocked };
}
