/**
 * Joins journals to the store: every ride writes one, and those that broke off are offered until somebody rides
 * them on, keeps what was ridden, or lets them go.
 */
import type { Journal, JournalOf } from './journal.ts';
import type { Keeping } from '../device/persistence.ts';
import type { Store } from '../../state/createStore.ts';
import type { Kept } from '../../state/afterRide.ts';
import { isSameTurn } from '../../state/groupTurn.ts';
import type { UnfinishedRide } from '../../state/unfinished.ts';
import { newId } from '../../storage/ids.ts';

/** Fetched when it is needed: the first page does without. */
const journals = () => import('./journal.ts');

/** Begins to look as soon as the storage is there. */
export function joinUnfinished(store: Store, keeping: Keeping) {
  const waitedFor = new Set<string>();
  const openHere = new Map<string, Journal>();
  const look = async (): Promise<void> => {
    const storage = await keeping.there;
    const fetched = await journals().catch(() => null);
    // Looked for again when a ride is over, and at the next visit.
    if (fetched === null) return;
    const { dropJournal, isFree, listEmpty, readJournals } = fetched;
    const found = await readJournals(storage);
    const kept = new Set(found.length === 0 ? [] : (await storage.listRides()).map(({ id }) => id));
    const free: UnfinishedRide[] = [];
    for (const ride of found) {
      const onFree = (): void => {
        waitedFor.delete(ride.id);
        void look();
      };
      if (!(await isFree(ride, Date.now(), waitedFor.has(ride.id) ? null : onFree))) waitedFor.add(ride.id);
      // It was kept, and there was no time left to remove its journal.
      else if (kept.has(ride.id)) await dropJournal(storage, ride.id, ride.partCount);
      else free.push(ride);
    }
    store.send({ kind: 'found', found: { unfinished: free } });
    for (const empty of await listEmpty(storage))
      if (await isFree(empty, Date.now(), null)) await dropJournal(storage, empty.id, 0);
  };
  const letGo = async (ride: UnfinishedRide): Promise<void> => {
    const others = store.state().unfinished.filter(({ id }) => id !== ride.id);
    store.send({ kind: 'found', found: { unfinished: others } });
    const mine = openHere.get(ride.id);
    if (mine === undefined)
      await (await journals()).dropJournal(await keeping.there, ride.id, ride.partCount);
    else await mine.drop();
  };
  void look();
  return {
    /** Looks anew for rides that broke off. */
    look,
    letGo,
    /** Everything was deleted in another tab: nothing more is written of what is ridden here until it is over. */
    forget(): void {
      for (const journal of openHere.values()) journal.close();
    },
    /** The journal of a ride that begins, or of one that goes on. */
    begin(
      what: Omit<JournalOf, 'partCount'>,
      goesOn: UnfinishedRide | null,
      journalOf: typeof Journal,
    ): Journal {
      // Whoever rides a turn of a group once more does it in place of the one that broke off.
      if (goesOn === null)
        for (const ride of store.state().unfinished)
          if (ride.turn !== null && what.turn !== null && isSameTurn(ride.turn, what.turn)) void letGo(ride);
      const id = goesOn?.id ?? newId();
      const journal = new journalOf(
        id,
        { ...what, partCount: goesOn?.partCount ?? 0 },
        () => keeping.storage,
      );
      openHere.set(id, journal);
      return journal;
    },
    /** Keeps what was ridden as a ride without marks. */
    async keep(ride: UnfinishedRide): Promise<Kept> {
      const kept = await keeping.keepUnfinished(ride);
      if (kept.state === 'saved') await letGo(ride);
      return kept;
    },
  };
}
export type UnfinishedRides = ReturnType<typeof joinUnfinished>;
