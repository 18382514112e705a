/**
 * Writing into the database and its second copy as one: what is called kept lies in both, and what goes is gone from the
 * copy first. Fails as a whole; what then waits in memory, and when it is tried again, is the vault's.
 */
import type { MemoryAccess, StoreAccess } from './access.ts';
import type { Connection } from './connection.ts';
import { Fault } from './faults.ts';
import { type PlaceOutcome, placeAll } from './place.ts';
import { type CopyPlace, isCopied, type SecondCopy } from './secondCopy.ts';
import type { StoredPiece } from './types.ts';

/** What is to be put and removed, after a look at what is there. It is asked twice, and may be asked more often. */
export type Plan = (
  access: StoreAccess,
  inDatabase: boolean,
) => Promise<{ readonly pieces: readonly StoredPiece[]; readonly drop: readonly CopyPlace[] } | null>;

/** Whether everything was deleted since this was asked for. */
export type Deleted = () => boolean;

/** Looks what is planned, and does it if that is still so: copies of what goes, database, copies of what comes. @throws Fault */
export async function changeTwice(
  { connection, memory }: { readonly connection: Connection; readonly memory: MemoryAccess },
  secondCopy: SecondCopy,
  plan: Plan,
  isDeleted: Deleted,
): Promise<readonly PlaceOutcome[] | null> {
  const planned = await connection.run('readonly', (access) => plan(access, true));
  if (planned === null) return null;
  const dropped = new Set<string>();
  const dropCopies = async (places: readonly CopyPlace[]): Promise<void> => {
    for (const place of places) {
      const name = `${place.store} ${place.key}`;
      if (!dropped.has(name) && !(await secondCopy.remove(place))) throw new Fault('connection-lost');
      dropped.add(name);
    }
  };
  await dropCopies(planned.drop);
  await makeSure(secondCopy, planned.pieces);
  const done = await connection.run('readwrite', async (access) => {
    const now = isDeleted() ? { pieces: [], drop: [] } : await plan(access, true);
    if (now === null) return null;
    for (const { store, key } of now.drop) await access.remove(store, key);
    const outcomes = await placeAll(access, now.pieces);
    return { outcomes, drop: now.drop, values: await valuesOf(access, now.pieces.filter(isCopied)) };
  });
  if (done === null) return null;
  for (const { store, key } of done.drop) await memory.remove(store, key);
  // Another tab may have put more of what goes.
  await dropCopies(done.drop);
  await copyEach(secondCopy, done.values, isDeleted);
  return done.outcomes;
}

/** A write that breaks off for want of room can cost the whole database at the next start of the browser. @throws Fault */
async function makeSure(secondCopy: SecondCopy, pieces: readonly StoredPiece[]): Promise<void> {
  const bytes = pieces.reduce((sum, { value }) => sum + JSON.stringify(value).length, 0);
  if (pieces.length > 0 && (await secondCopy.hasRoom(bytes)) === false) throw new Fault('disk-full');
}

/** @throws Fault */
async function copyEach(
  secondCopy: SecondCopy,
  values: readonly (readonly [CopyPlace, unknown])[],
  isDeleted: Deleted,
): Promise<void> {
  for (const [place, value] of values) {
    if (value === undefined || isDeleted()) continue;
    if (!(await secondCopy.put(place, value))) throw new Fault('disk-full');
    // Deleted while it was on its way, it must not come back from here.
    if (isDeleted()) await secondCopy.remove(place);
  }
}

/** Database, then second copy. @throws Fault */
export async function writeTwice(
  connection: Connection,
  secondCopy: SecondCopy,
  pieces: readonly StoredPiece[],
  isDeleted: Deleted,
): Promise<readonly PlaceOutcome[]> {
  await makeSure(secondCopy, pieces);
  const { outcomes, values } = await connection.run('readwrite', async (access) => {
    const some = isDeleted() ? [] : pieces;
    return {
      outcomes: await placeAll(access, some),
      values: await valuesOf(access, some.filter(isCopied)),
    };
  });
  await copyEach(secondCopy, values, isDeleted);
  return outcomes;
}

async function valuesOf(
  access: StoreAccess,
  places: readonly CopyPlace[],
): Promise<readonly (readonly [CopyPlace, unknown])[]> {
  const all: (readonly [CopyPlace, unknown])[] = [];
  for (const one of places) all.push([one, await access.get(one.store, one.key)]);
  return all;
}
