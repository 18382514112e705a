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
import type { Shape } from './ladder.ts';
import {
  isOfSession,
  keyFromOthers,
  keysOfFinished,
  RECORD_KINDS,
  noteOf,
  recordOf,
  type RiddenOnce,
  roundOf,
  type Said,
  RECORD_SHAPES,
} from './sessionShapes.ts';
import type { NewRecord, RecordChange, RecordsNow, Storage } from './types.ts';

/** More damage than anybody reads is not kept. */
const MOST_DAMAGED = 1_000;

/** Where it lies; under the id of the session only if that is this very turn. */
async function withoutFinished(
  now: RecordsNow,
  turn: RiddenOnce,
): Promise<NonNullable<RecordChange['drop']>> {
  const [own, older] = keysOfFinished(turn);
  const there = await now.data(RECORD_KINDS.finished, older, RECORD_SHAPES.finished);
  const ids = there !== null && keysOfFinished(there)[0] === own ? [own, older] : [own];
  return ids.map((id) => ({ kind: RECORD_KINDS.finished, id }));
}

/** What was kept. */
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

/** The sessions of the tab that owns them. What changes them answers whether that is in the database; each change is done whole or not at all. */
export interface OwnedSessions {
  /** Everything at one moment; from then on this tab is the one that may change it. */
  load(): Promise<KeptSessions>;
  /** False once another tab has loaded: nothing is changed any more. */
  readonly isOwned: () => boolean;
  putPlan(plan: ClinicPlan): Promise<boolean>;
  dropPlan(planId: string): Promise<boolean>;
  putRound(saved: SavedRound): Promise<boolean>;
  putFinished(turn: FinishedTurn): Promise<boolean>;
  dropFinished(turn: FinishedTurn): Promise<boolean>;
  /** A finished turn becomes a record, and its round moves on. */
  keepRide(record: RideRecord, moved: SavedRound): Promise<boolean>;
  /** A ride is no longer in its round; it is noted that its record is to go. */
  undoRide(recordId: string, moved: SavedRound): Promise<boolean>;
  /** A ride counts for another rider under a new record; it is noted that the old one is to go. */
  giveRide(record: RideRecord, oldId: string, moved: SavedRound): Promise<boolean>;
  /** The record of a ride that was undone. */
  dropRide(recordId: string): Promise<boolean>;
  /** Everything of a session, with the rides of all devices. */
  dropSession(planId: string): Promise<boolean>;
}

/** What is kept of one session on all devices. */
export interface CarriedSession {
  readonly set: RecordSet;
  readonly heard: readonly Heard[];
}

export const NOTHING_CARRIED: CarriedSession = { set: EMPTY_SET, heard: [] };

/** What goes from device to device; any tab may add to it. */
export interface CarriedSessions {
  /** `own` are those of the records that were ridden on this device. */
  load(planId: string): Promise<CarriedSession & { readonly own: ReadonlySet<RideRecord> }>;
  /** Keeps what is new in `after`; true once all of it is in the database. */
  keep(planId: string, before: CarriedSession, after: CarriedSession): Promise<boolean>;
  /** Removes everything of the session: rides of all devices, and what they said. */
  drop(planId: string): Promise<boolean>;
}

/** A tab that may lose the sessions to another. */
interface SessionOwner {
  /** Of this tab alone. */
  readonly token: string;
  readonly isOwned: () => boolean;
  /** Tells the other tabs that this one has taken over. */
  readonly tell: () => void;
  /** Calls back when another tab says that it has taken over. */
  readonly onTold: (look: () => void) => void;
  /** It was seen that another tab has taken over. */
  readonly lose: () => void;
}

/** All records with what tells those of this device. */
async function loadRecords(storage: Storage) {
  const kept = await storage.listRecords(RECORD_KINDS.record, RECORD_SHAPES.record);
  const notes = await storage.listRecords(RECORD_KINDS.own, RECORD_SHAPES.own);
  const markedHere = new Map(notes.map(({ id, data }) => [id, data.checksum]));
  const own = new Set(kept.flatMap(({ id, data }) => (markedHere.get(id) === data.checksum ? [data] : [])));
  return { kept, own };
}

/** The sessions in a storage, for the tab that owns them. */
export function createOwnedSessions(storage: Storage, owner: SessionOwner): OwnedSessions {
  const token = recordOf('owner', RECORD_KINDS.owner, owner.token);
  /** Who stood in the database when our token could not be written over it; as long as they stand there, nobody else came. */
  let notReplaced: { readonly by: string | null } | null = null;
  const change = async (
    work: (now: RecordsNow) => Promise<RecordChange> | RecordChange,
  ): Promise<boolean> => {
    if (!owner.isOwned()) return false;
    const answer = await storage.changeRecords(async (now) => {
      const there = await now.data(RECORD_KINDS.owner, RECORD_KINDS.owner, RECORD_SHAPES.owner);
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
  const drop = (kind: string, id: string): Promise<boolean> => change(() => ({ drop: [{ kind, id }] }));
  const all = async <T>(kind: string, of: Shape<T>): Promise<readonly T[]> =>
    (await storage.listRecords(kind, of)).map(({ data }) => data);
  return {
    isOwned: owner.isOwned,
    async load() {
      let before: typeof notReplaced = null;
      const answer = await storage.changeRecords(async (now) => {
        if (now.inDatabase)
          before = { by: await now.data(RECORD_KINDS.owner, RECORD_KINDS.owner, RECORD_SHAPES.owner) };
        return { put: [token] };
      });
      notReplaced = answer?.saved === true ? null : before;
      owner.tell();
      // From here on no other tab changes anything.
      const { kept, own } = await loadRecords(storage);
      return {
        plans: await all(RECORD_KINDS.plan, RECORD_SHAPES.plan),
        rounds: await all(RECORD_KINDS.round, RECORD_SHAPES.round),
        records: kept.map(({ data }) => data).toSorted((a, b) => a.seq - b.seq),
        own,
        finished: await all(RECORD_KINDS.finished, RECORD_SHAPES.finished),
        undone: (await storage.listRecords(RECORD_KINDS.undone, RECORD_SHAPES.undone)).map(({ id }) => id),
      };
    },
    putPlan: (plan) => put(recordOf('plan', plan.id, plan)),
    dropPlan: (planId) => drop(RECORD_KINDS.plan, planId),
    putRound: (saved) => put(roundOf(saved)),
    putFinished: (turn) => put(recordOf('finished', keysOfFinished(turn)[0], turn)),
    dropFinished: (turn) => change(async (now) => ({ drop: await withoutFinished(now, turn) })),
    keepRide: (record, moved) =>
      change(async (now) => ({
        put: [recordOf('record', record.id, record), noteOf(record), roundOf(moved)],
        drop: await withoutFinished(now, record),
      })),
    undoRide: (recordId, moved) => put(roundOf(moved), recordOf('undone', recordId, moved.plan.id)),
    giveRide: (record, oldId, moved) =>
      put(
        recordOf('record', record.id, record),
        noteOf(record),
        roundOf(moved),
        recordOf('undone', oldId, moved.plan.id),
      ),
    dropRide: (recordId) =>
      change(() => ({
        drop: [RECORD_KINDS.record, RECORD_KINDS.own, RECORD_KINDS.undone].map((kind) => ({
          kind,
          id: recordId,
        })),
      })),
    dropSession: (planId) =>
      change(async (now) => ({ drop: (await now.all()).filter((one) => isOfSession(one, planId)) })),
  };
}

/** What is carried between devices, in a storage. */
export function createCarriedSessions(storage: Storage): CarriedSessions {
  return {
    async load(planId) {
      const { kept, own } = await loadRecords(storage);
      const ours = kept.map(({ data }) => data).filter((record) => record.planId === planId);
      const all = (await storage.listRecords(RECORD_KINDS.said, RECORD_SHAPES.said)).find(
        ({ id }) => id === planId,
      )?.data;
      const { heard = [], withdrawn = [], damaged = [] } = all ?? {};
      return { set: mergeSets({ records: ours, withdrawn, damaged }), heard, own };
    },
    async keep(planId, before, after) {
      const known = new Set(before.set.records);
      const rides = after.set.records
        .filter((record) => !known.has(record))
        .map((data) => recordOf('record', keyFromOthers(data), data));
      const answer = await storage.changeRecords(async (now) => {
        // What another tab has noted meanwhile stays.
        const there = await now.data(RECORD_KINDS.said, planId, RECORD_SHAPES.said);
        const { withdrawn, damaged } = mergeSets({ ...EMPTY_SET, ...there, records: [] }, after.set);
        const heard = mergeHeard([...(there?.heard ?? []), ...after.heard]);
        const data: Said = { heard, withdrawn, damaged: damaged.slice(0, MOST_DAMAGED) };
        return { put: [...rides, recordOf('said', planId, data)] };
      });
      return answer?.saved === true;
    },
    async drop(planId) {
      const { kept } = await loadRecords(storage);
      const keys = kept.filter(({ data }) => data.planId === planId).map(({ id }) => id);
      // What was said goes last: should this break off, there is still something to delete.
      const ridesGone = await storage.deleteRecords(RECORD_KINDS.record, keys);
      const notesGone = await storage.deleteRecords(RECORD_KINDS.own, keys);
      const saidGone = await storage.deleteRecords(RECORD_KINDS.said, [planId]);
      return ridesGone === null && notesGone === null && saidGone === null;
    },
  };
}
