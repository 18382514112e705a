/**
 * Keeping group sessions: plans, rounds, rides that are still to be marked, the rides of this device and of others, and
 * what devices said of them. One tab owns them at a time. How each lies there is `sessionShapes.ts`; what a session does
 * is not known here.
 */
import type { ClinicPlan } from '../core/group/plan.ts';
import { EMPTY_SET, mergeSets, type RecordSet } from '../core/group/records/merge.ts';
import { type Heard, mergeHeard } from '../core/group/records/missing.ts';
import type { RideRecord } from '../core/group/records/record.ts';
import type { FinishedTurn, SavedRound } from '../core/group/savedRound.ts';
import { type RecordKind, recordOf } from './ladder.ts';
import {
  isOfSession,
  keyFromOthers,
  keysOfFinished,
  SESSION_KINDS,
  noteOf,
  type RiddenOnce,
  roundOf,
  type Said,
} from './sessionShapes.ts';
import type { Storage } from './index.ts';
import type { NewRecord, RecordChange, RecordsNow } from './types.ts';

/** More damage than anybody reads is not kept. */
const MOST_DAMAGED = 1_000;

/** Where it lies; under the id of the session only if that is this very turn. */
async function withoutFinished(
  now: RecordsNow,
  turn: RiddenOnce,
): Promise<NonNullable<RecordChange['drop']>> {
  const [own, older] = keysOfFinished(turn);
  const there = await now.data(SESSION_KINDS.finished, older);
  const ids = there !== null && keysOfFinished(there)[0] === own ? [own, older] : [own];
  return ids.map((id) => ({ kind: SESSION_KINDS.finished.kind, id }));
}

export interface KeptSessions {
  readonly plans: readonly ClinicPlan[];
  readonly rounds: readonly SavedRound[];
  /** In the order they were ridden on each device. */
  readonly records: readonly RideRecord[];
  /** Those of the records that were ridden and marked on this device. */
  readonly own: ReadonlySet<RideRecord>;
  readonly finished: readonly FinishedTurn[];
  /** Ids of rides that were taken back and are not yet gone. */
  readonly undone: readonly string[];
}

/** What is kept of one session on all devices. */
export interface CarriedSession {
  readonly set: RecordSet;
  readonly heard: readonly Heard[];
}

export const NOTHING_CARRIED: CarriedSession = { set: EMPTY_SET, heard: [] };

/** A tab that may lose the sessions to another. */
export interface SessionOwner {
  /** Of this tab alone. */
  readonly token: string;
  readonly isOwned: () => boolean;
  /** Tells the other tabs that this one has taken over. */
  readonly tell: () => void;
  /** Calls back when another tab says that it has taken over. It may be late, and this one have taken over since. */
  readonly onTold: (look: () => void) => void;
  /** It was seen that another tab has taken over. */
  readonly lose: () => void;
}

/** All records with what tells those of this device. */
async function loadRecords(storage: Storage) {
  const kept = await storage.listRecords(SESSION_KINDS.record);
  const notes = await storage.listRecords(SESSION_KINDS.own);
  const markedHere = new Map(notes.map(({ id, data }) => [id, data.checksum]));
  const own = new Set(kept.flatMap(({ id, data }) => (markedHere.get(id) === data.checksum ? [data] : [])));
  return { kept, own };
}

async function readSessions(storage: Storage): Promise<KeptSessions> {
  const all = async <T>(of: RecordKind<T>): Promise<readonly T[]> =>
    (await storage.listRecords(of)).map(({ data }) => data);
  const { kept, own } = await loadRecords(storage);
  return {
    plans: await all(SESSION_KINDS.plan),
    rounds: await all(SESSION_KINDS.round),
    records: kept.map(({ data }) => data).toSorted((a, b) => a.seq - b.seq),
    own,
    finished: await all(SESSION_KINDS.finished),
    undone: (await storage.listRecords(SESSION_KINDS.undone)).map(({ id }) => id),
  };
}

/** Everything of a session goes. */
const allOf =
  (planId: string) =>
  async (now: RecordsNow): Promise<RecordChange> => ({
    drop: (await now.all()).filter((one) => isOfSession(one, planId)),
  });

/** The sessions in a storage, for the tab that owns them. */
export function createOwnedSessions(storage: Storage, owner: SessionOwner) {
  const token = recordOf(SESSION_KINDS.owner, SESSION_KINDS.owner.kind, owner.token);
  /** Who stood in the database when our token could not be written over it; as long as they stand there, nobody else came. */
  let notReplaced: { readonly by: string | null } | null = null;
  const change = async (
    work: (now: RecordsNow) => Promise<RecordChange> | RecordChange,
  ): Promise<boolean> => {
    if (!owner.isOwned()) return false;
    const answer = await storage.changeRecords(async (now) => {
      const there = await now.data(SESSION_KINDS.owner, SESSION_KINDS.owner.kind);
      if (there !== owner.token && now.inDatabase && notReplaced?.by === there) {
        const wished = await work(now);
        return { ...wished, put: [token, ...(wished.put ?? [])] };
      }
      // None in the database: everything was deleted. None in memory: nobody else can be there.
      const isOurs = there === owner.token || (there === null && !now.inDatabase);
      return isOurs ? work(now) : null;
    });
    if (answer === null) owner.lose();
    if (answer?.saved === true) notReplaced = null;
    return answer?.saved === true;
  };
  // Changes nothing, and sees who is the owner.
  owner.onTold(() => void change(() => ({})));
  const put = (...records: readonly NewRecord[]): Promise<boolean> => change(() => ({ put: records }));
  const drop = (id: string, ...kinds: readonly { readonly kind: string }[]): Promise<boolean> =>
    change(() => ({ drop: kinds.map(({ kind }) => ({ kind, id })) }));
  return {
    /** False once another tab has loaded: nothing is changed any more. */
    isOwned: owner.isOwned,
    /** Everything at one moment; from then on this tab is the one that may change it. */
    async load(): Promise<KeptSessions> {
      let before: typeof notReplaced = null;
      const answer = await storage.changeRecords(async (now) => {
        if (now.inDatabase) before = { by: await now.data(SESSION_KINDS.owner, SESSION_KINDS.owner.kind) };
        return { put: [token] };
      });
      notReplaced = answer?.saved === true ? null : before;
      owner.tell();
      // From here on no other tab changes anything.
      return readSessions(storage);
    },
    putPlan: (plan: ClinicPlan): Promise<boolean> => put(recordOf(SESSION_KINDS.plan, plan.id, plan)),
    dropPlan: (planId: string): Promise<boolean> => drop(planId, SESSION_KINDS.plan),
    putRound: (saved: SavedRound): Promise<boolean> => put(roundOf(saved)),
    putFinished: (turn: FinishedTurn): Promise<boolean> =>
      put(recordOf(SESSION_KINDS.finished, keysOfFinished(turn)[0], turn)),
    dropFinished: (turn: FinishedTurn): Promise<boolean> =>
      change(async (now) => ({ drop: await withoutFinished(now, turn) })),
    /** A finished turn becomes a record, and its round moves on. */
    keepRide: (record: RideRecord, moved: SavedRound): Promise<boolean> =>
      change(async (now) => ({
        put: [recordOf(SESSION_KINDS.record, record.id, record), noteOf(record), roundOf(moved)],
        drop: await withoutFinished(now, record),
      })),
    /** A ride is no longer in its round; it is noted that its record is to go. */
    undoRide: (recordId: string, moved: SavedRound): Promise<boolean> =>
      put(roundOf(moved), recordOf(SESSION_KINDS.undone, recordId, moved.plan.id)),
    /** A ride counts for another rider under a new record; it is noted that the old one is to go. */
    giveRide: (record: RideRecord, oldId: string, moved: SavedRound): Promise<boolean> =>
      put(
        recordOf(SESSION_KINDS.record, record.id, record),
        noteOf(record),
        roundOf(moved),
        recordOf(SESSION_KINDS.undone, oldId, moved.plan.id),
      ),
    /** The record of a ride that was undone. */
    dropRide: (recordId: string): Promise<boolean> =>
      drop(recordId, SESSION_KINDS.record, SESSION_KINDS.own, SESSION_KINDS.undone),
    /** Everything of a session, with the rides of all devices. */
    dropSession: (planId: string): Promise<boolean> => change(allOf(planId)),
  };
}
/** The sessions of the tab that owns them. What changes them answers whether that is in the database; each change is done whole or not at all. */
export type OwnedSessions = ReturnType<typeof createOwnedSessions>;

/** What is carried between devices, in a storage. */
export function createCarriedSessions(storage: Storage) {
  return {
    /** `own` are those of the records that were ridden on this device. */
    async load(planId: string): Promise<CarriedSession & { readonly own: ReadonlySet<RideRecord> }> {
      const { kept, own } = await loadRecords(storage);
      const ours = kept.map(({ data }) => data).filter((record) => record.planId === planId);
      const all = (await storage.listRecords(SESSION_KINDS.said)).find(({ id }) => id === planId)?.data;
      const { heard = [], withdrawn = [], damaged = [] } = all ?? {};
      return { set: mergeSets({ records: ours, withdrawn, damaged }), heard, own };
    },
    /** Keeps what is new in `after`; true once all of it is in the database. */
    async keep(planId: string, before: CarriedSession, after: CarriedSession): Promise<boolean> {
      const known = new Set(before.set.records);
      const rides = after.set.records
        .filter((record) => !known.has(record))
        .map((data) => recordOf(SESSION_KINDS.record, keyFromOthers(data), data));
      const answer = await storage.changeRecords(async (now) => {
        // What another tab has noted meanwhile stays.
        const there = await now.data(SESSION_KINDS.said, planId);
        const { withdrawn, damaged } = mergeSets({ ...EMPTY_SET, ...there, records: [] }, after.set);
        const heard = mergeHeard([...(there?.heard ?? []), ...after.heard]);
        const data: Said = { heard, withdrawn, damaged: damaged.slice(0, MOST_DAMAGED) };
        return { put: [...rides, recordOf(SESSION_KINDS.said, planId, data)] };
      });
      return answer?.saved === true;
    },
    /** Removes everything of the session: rides of all devices, and what they said. */
    async drop(planId: string): Promise<boolean> {
      return (await storage.changeRecords(allOf(planId)))?.saved === true;
    },
  };
}
/** What goes from device to device; any tab may add to it. */
export type CarriedSessions = ReturnType<typeof createCarriedSessions>;
