/**
 * Deletes everything of ours on this device and looks whether it is gone. What is in memory is emptied by the
 * caller.
 */
import { deleteDB } from 'idb';
import type { Connection } from './connection.ts';
import type { Environment } from './environment.ts';
import { Fault, faultWhileOpening, inTime } from './faults.ts';
import { DATABASE_NAME } from './opener.ts';
import { ERASED_KEY, OWN_PREFIX } from './localBackup.ts';
import { STORES } from './shapes.ts';
import type { DeleteAnswer, ProblemCode } from './types.ts';

/** Deletes the database, our names in the simple store and our caches, and verifies each. */
export async function erase(places: Environment, connection: Connection): Promise<DeleteAnswer> {
  const cachesInTime = (): Promise<void> =>
    inTime(eraseCaches(places.caches()), places.timeoutMs, () => new Fault('hangs'));
  // First as well: a tab that opens meanwhile would put the copies into a new database.
  await codeOf(() => eraseSimpleStore(places.localStorage()));
  await codeOf(cachesInTime);
  const problems = {
    database: await codeOf(() => eraseDatabase(places, connection)),
    'small-copy': await codeOf(() => eraseSimpleStore(places.localStorage())),
    caches: await codeOf(cachesInTime),
  };
  const left = (['database', 'small-copy', 'caches'] as const).filter((place) => problems[place] !== null);
  const code = left.map((place) => problems[place])[0] ?? null;
  return code === null ? { deleted: true } : { deleted: false, code, left };
}

async function eraseDatabase(places: Environment, connection: Connection): Promise<void> {
  const factory = places.indexedDB();
  // Where there is no database there is nothing in it.
  if (factory === null) return;
  // Emptied first, so that nothing is left to read even where another tab delays the deletion. A database that cannot
  // be opened, or is of a newer version, is still deleted.
  await connection.clear().catch(() => undefined);
  connection.close();
  let blocked = false;
  const gone = deleteDB(DATABASE_NAME, {
    blocked() {
      blocked = true;
    },
  });
  await inTime(gone, places.timeoutMs, () => new Fault(blocked ? 'blocked' : 'hangs'));
  // Some browsers cannot list their databases; there the answer to the deletion has to do.
  const names = await factory.databases?.();
  // Another tab may have opened a new one at once, which is no harm as long as nothing is in it.
  if (names?.some(({ name }) => name === DATABASE_NAME) === true && !(await isEmpty(connection)))
    throw new Fault('connection-lost');
}

function isEmpty(connection: Connection): Promise<boolean> {
  return connection.run('readonly', async (access) => {
    for (const store of STORES) if ((await access.entries(store)).length > 0) return false;
    return true;
  });
}

function eraseSimpleStore(store: globalThis.Storage | null): Promise<void> {
  if (store === null) return Promise.resolve();
  const ours = (): string[] =>
    Array.from({ length: store.length }, (_, i) => store.key(i) ?? '').filter((key) =>
      key.startsWith(OWN_PREFIX),
    );
  for (const key of ours()) store.removeItem(key);
  try {
    store.setItem(ERASED_KEY, '1');
    store.removeItem(ERASED_KEY);
  } catch {
    // Where nothing can be put, other tabs hear it from the database alone.
  }
  return ours().length === 0 ? Promise.resolve() : Promise.reject(new Fault('connection-lost'));
}

async function eraseCaches(caches: CacheStorage | null): Promise<void> {
  if (caches === null) return;
  const ours = async (): Promise<string[]> =>
    (await caches.keys()).filter((name) => name.startsWith(OWN_PREFIX));
  for (const name of await ours()) await caches.delete(name);
  // Another tab may have opened one anew, which is no harm as long as nothing is in it.
  for (const name of await ours())
    if ((await (await caches.open(name)).keys()).length > 0) throw new Fault('connection-lost');
}

/**
 * The code of what went wrong, or null. A place that the browser does not give at all holds nothing of ours: the
 * same browser would not have taken it either.
 */
async function codeOf(work: () => Promise<void>): Promise<ProblemCode | null> {
  try {
    await work();
    return null;
  } catch (error) {
    const { code } = faultWhileOpening(error);
    return code === 'private-window' ? null : code;
  }
}
