/**
 * Keeping group sessions: plans, rounds, rides that are still to be marked, the rides of this device and of others, and
 * what devices said of them. Everything comes back through its door; what a session does is not known here.
 */
import * as z from 'zod/mini';
import { type ClinicPlan, parsePlan, PLAN_SCHEMA } from '../core/group/plan.ts';
import { EMPTY_SET, mergeSets, type RecordSet } from '../core/group/records/merge.ts';
import { type Heard, mergeHeard } from '../core/group/records/missing.ts';
import { RECORD_SCHEMA, type RideRecord } from '../core/group/records/record.ts';
import { type DamagedPiece, parseRecord } from '../core/group/records/recordFile.ts';
import { type FinishedTurn, readFinished, readRound, type SavedRound } from '../core/group/savedRound.ts';
import { hashJson } from '../core/math/hash.ts';
import type { Shape } from './ladder.ts';
import { OWN_RIDE } from './sharedKept.ts';
import type { KeptRecord, NewRecord, RecordChange, RecordsNow, Storage } from './types.ts';

const KINDS = {
  plan: 'clinic-plan',
  round: 'clinic-round',
  /** Rides of all devices, so that pictures and reports see them all. */
  record: 'clinic-record',
  finished: 'clinic-finished',
  undone: 'clinic-undone',
  said: 'clinic-said',
  own: OWN_RIDE,
} as const;
/** Kind and id of the token of the tab that may change all this. */
const OWNER = 'clinic-owner';
/** Kinds of which one stands there for a session, under its id. */
const OF_SESSION: readonly string[] = [KINDS.round, KINDS.said];
/** Kinds whose data name their session; there may be several. */
const IN_SESSION: readonly string[] = [KINDS.record, KINDS.own, KINDS.finished];
/** More damage than anybody reads is not kept. */
const MOST_DAMAGED = 1_000;

const shortText = z.string().check(z.maxLength(200));
const saidSchema = z.strictObject({
  heard: z.array(
    z.strictObject({
      deviceId: shortText,
      lastSeq: z.int().check(z.gte(0)),
      atMs: z.number().check(z.gte(0)),
    }),
  ),
  withdrawn: z.array(shortText),
  damaged: z.array(
    z.strictObject({
      code: z.enum([
        'not-json',
        'not-a-record',
        'newer-version',
        'dirty-text',
        'checksum',
        'recording',
        'file-head',
        'too-long',
      ]),
      fingerprint: shortText,
      path: shortText,
      recordId: z.nullable(shortText),
      deviceId: z.nullable(shortText),
      seq: z.nullable(z.int()),
    }),
  ),
});

interface Said {
  readonly heard: readonly Heard[];
  readonly withdrawn: readonly string[];
  readonly damaged: readonly DamagedPiece[];
}

const shape = <T>(schema: number, read: (value: unknown) => T | null): Shape<T> => ({
  schema,
  steps: [],
  read,
});

const text = shape<string>(1, (value) => (typeof value === 'string' ? value : null));
const plans = shape<ClinicPlan>(PLAN_SCHEMA, (value) => {
  const parsed = parsePlan(value);
  return parsed.ok ? parsed.plan : null;
});
const rounds = shape<SavedRound>(1, readRound);
const records = shape<RideRecord>(RECORD_SCHEMA, (value) => parseRecord(value).record);
const finished = shape<FinishedTurn>(1, readFinished);
/** A note beside a ride that was marked here. It goes into no copy: a ride from a file is looked at like any other. */
interface OwnRide {
  readonly planId: string;
  readonly checksum: string;
}
const ownSchema = z.strictObject({ planId: shortText, checksum: shortText });
const ownRides = shape<OwnRide>(1, (value) => ownSchema.safeParse(value).data ?? null);
const said = shape<Said>(1, (value) => saidSchema.safeParse(value).data ?? null);

const recordOf = (kind: string, id: string, schema: number, data: unknown): NewRecord => ({
  kind,
  id,
  schema,
  data,
});
const planOf = (plan: ClinicPlan): NewRecord => recordOf(KINDS.plan, plan.id, plans.schema, plan);
const roundOf = (saved: SavedRound): NewRecord => recordOf(KINDS.round, saved.plan.id, rounds.schema, saved);

const noteOf = ({ id, planId, checksum }: RideRecord): NewRecord => {
  const note: OwnRide = { planId, checksum };
  return recordOf(KINDS.own, id, ownRides.schema, note);
};

function isOfSession({ kind, id, data }: KeptRecord, planId: string): boolean {
  if (OF_SESSION.includes(kind)) return id === planId;
  if (kind === KINDS.undone) return data === planId;
  if (!IN_SESSION.includes(kind) || typeof data !== 'object' || data === null) return false;
  return 'planId' in data && data.planId === planId;
}

/**
 * Every finished turn under a key of its own: two tabs can each come to the end of one in the same moment, and the
 * second must not take the place of the first before that is marked. Older ones lie under the id of their session.
 */
function keysOfFinished(turn: RiddenOnce): readonly [string, string] {
  const { planId, nickname, rideIndex, attempt, recording } = turn;
  return [`turn-${hashJson([planId, nickname, rideIndex, attempt, recording])}`, planId];
}

type RiddenOnce = Pick<RideRecord, 'planId' | 'nickname' | 'rideIndex' | 'attempt' | 'recording'>;

/** Where it lies; under the id of the session only if that is this very turn. */
async function withoutFinished(
  now: RecordsNow,
  turn: RiddenOnce,
): Promise<NonNullable<RecordChange['drop']>> {
  const [own, older] = keysOfFinished(turn);
  const there = await now.data(KINDS.finished, older, finished);
  const ids = there !== null && keysOfFinished(there)[0] === own ? [own, older] : [own];
  return ids.map((id) => ({ kind: KINDS.finished, id }));
}

/**
 * Under its content, because a stranger's id may hold signs a key may not, and two different rides under one id must
 * both be kept. The same ride with its recording takes the place of the one without.
 */
function keyFromOthers({ id, checksum }: RideRecord): string {
  return `from-${hashJson([id, checksum])}`;
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
  const kept = await storage.listRecords(KINDS.record, records);
  const notes = await storage.listRecords(KINDS.own, ownRides);
  const markedHere = new Map(notes.map(({ id, data }) => [id, data.checksum]));
  const own = new Set(kept.flatMap(({ id, data }) => (markedHere.get(id) === data.checksum ? [data] : [])));
  return { kept, own };
}

/** The sessions in a storage, for the tab that owns them. */
export function createOwnedSessions(storage: Storage, owner: SessionOwner): OwnedSessions {
  const token = recordOf(OWNER, OWNER, text.schema, owner.token);
  /** Who stood in the database when our token could not be written over it; as long as they stand there, nobody else came. */
  let notReplaced: { readonly by: string | null } | null = null;
  const change = async (
    work: (now: RecordsNow) => Promise<RecordChange> | RecordChange,
  ): Promise<boolean> => {
    if (!owner.isOwned()) return false;
    const answer = await storage.changeRecords(async (now) => {
      const there = await now.data(OWNER, OWNER, text);
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
        if (now.inDatabase) before = { by: await now.data(OWNER, OWNER, text) };
        return { put: [token] };
      });
      notReplaced = answer?.saved === true ? null : before;
      owner.tell();
      // From here on no other tab changes anything.
      const { kept, own } = await loadRecords(storage);
      return {
        plans: await all(KINDS.plan, plans),
        rounds: await all(KINDS.round, rounds),
        records: kept.map(({ data }) => data).toSorted((a, b) => a.seq - b.seq),
        own,
        finished: await all(KINDS.finished, finished),
        undone: (await storage.listRecords(KINDS.undone, text)).map(({ id }) => id),
      };
    },
    putPlan: (plan) => put(planOf(plan)),
    dropPlan: (planId) => drop(KINDS.plan, planId),
    putRound: (saved) => put(roundOf(saved)),
    putFinished: (turn) => put(recordOf(KINDS.finished, keysOfFinished(turn)[0], finished.schema, turn)),
    dropFinished: (turn) => change(async (now) => ({ drop: await withoutFinished(now, turn) })),
    keepRide: (record, moved) =>
      change(async (now) => ({
        put: [recordOf(KINDS.record, record.id, records.schema, record), noteOf(record), roundOf(moved)],
        drop: await withoutFinished(now, record),
      })),
    undoRide: (recordId, moved) => put(roundOf(moved), recordOf(KINDS.undone, recordId, 1, moved.plan.id)),
    giveRide: (record, oldId, moved) =>
      put(
        recordOf(KINDS.record, record.id, records.schema, record),
        noteOf(record),
        roundOf(moved),
        recordOf(KINDS.undone, oldId, 1, moved.plan.id),
      ),
    dropRide: (recordId) =>
      change(() => ({
        drop: [KINDS.record, KINDS.own, KINDS.undone].map((kind) => ({ kind, id: recordId })),
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
      const all = (await storage.listRecords(KINDS.said, said)).find(({ id }) => id === planId)?.data;
      const { heard = [], withdrawn = [], damaged = [] } = all ?? {};
      return { set: mergeSets({ records: ours, withdrawn, damaged }), heard, own };
    },
    async keep(planId, before, after) {
      const known = new Set(before.set.records);
      const rides = after.set.records
        .filter((record) => !known.has(record))
        .map((data) => recordOf(KINDS.record, keyFromOthers(data), records.schema, data));
      const answer = await storage.changeRecords(async (now) => {
        // What another tab has noted meanwhile stays.
        const there = await now.data(KINDS.said, planId, said);
        const { withdrawn, damaged } = mergeSets({ ...EMPTY_SET, ...there, records: [] }, after.set);
        const heard = mergeHeard([...(there?.heard ?? []), ...after.heard]);
        const data: Said = { heard, withdrawn, damaged: damaged.slice(0, MOST_DAMAGED) };
        return { put: [...rides, recordOf(KINDS.said, planId, said.schema, data)] };
      });
      return answer?.saved === true;
    },
    async drop(planId) {
      const { kept } = await loadRecords(storage);
      const keys = kept.filter(({ data }) => data.planId === planId).map(({ id }) => id);
      // What was said goes last: should this break off, there is still something to delete.
      const ridesGone = await storage.deleteRecords(KINDS.record, keys);
      const notesGone = await storage.deleteRecords(KINDS.own, keys);
      const saidGone = await storage.deleteRecords(KINDS.said, [planId]);
      return ridesGone === null && notesGone === null && saidGone === null;
    },
  };
}
