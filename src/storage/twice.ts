/**
 * Writing into the database and its second copy as one: what is called kept lies in both, and what goes is gone from the
 * copy first. Fails as a whole; what then waits in memory, and when it is tried again, is the vault's.
 */
import type { MemoryAccess, StoreAccess } from './access.ts';
import type { Connection } from './connection.ts';
import { Fault } from './faults.ts';
import { type PlaceOutcome, placeAll } from './place.ts';
import { type CopyPlace, isCopied, placeName, type SecondCopy } from './secondCopy.ts';
import type { StoredPiece } from './types.ts';

/** What is put and removed in one step. */
export interface StoreChange {
  readonly pieces?: readonly StoredPiece[];
  readonly drop?: readonly CopyPlace[];
}

/** A change that depends on what is there, null for none. It is asked twice, and may be asked more often. */
export type Plan = (access: StoreAccess, inDatabase: boolean) => Promise<StoreChange | null>;

/** Whether everything was deleted since this was asked for. */
export type Deleted = () => boolean;

/** Where things are kept, and what is kept of them besides. */
interface Places {
  readonly connection: Connection;
  readonly memory: MemoryAccess;
  readonly secondCopy: SecondCopy;
}

/**
 * Looks what is planned, and does it if that is still so: copies of what goes, database, copies of what comes. A change
 * that is no plan needs no look.
 * @throws Fault
 */
export async function changeTwice(
  { connection, memory, secondCopy }: Places,
  wished: StoreChange | Plan,
  isDeleted: Deleted,
): Promise<readonly PlaceOutcome[] | null> {
  const plan: Plan = typeof wished === 'function' ? wished : () => Promise.resolve(wished);
  const planned =
    typeof wished === 'function' ? await connection.run('readonly', (access) => plan(access, true)) : wished;
  if (planned === null) return null;
  const dropped = new Set<string>();
  const dropCopies = async (places: readonly CopyPlace[] = []): Promise<void> => {
    for (const place of places) {
      const name = placeName(place);
      if (!dropped.has(name) && !(await secondCopy.remove(place))) throw new Fault('connection-lost');
      dropped.add(name);
    }
  };
  await dropCopies(planned.drop);
  await makeSure(secondCopy, planned.pieces ?? []);
  const done = await connection.run('readwrite', async (access) => {
    const now = isDeleted() ? {} : await plan(access, true);
    if (now === null) return null;
    const { pieces = [], drop = [] } = now;
    for (const { store, key } of drop) await access.remove(store, key);
    const outcomes = await placeAll(access, pieces);
    const values: [CopyPlace, unknown][] = [];
    for (const one of pieces.filter(isCopied)) values.push([one, await access.get(one.store, one.key)]);
    return { outcomes, drop, values };
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
