/**
 * Keeping group sessions: plans, rounds, records of rides and a ride that is still to be marked, each with the door
 * it comes back through. What a session does is not known here.
 */
import { readNickname } from '../../core/group/nicknames.ts';
import { type ClinicPlan, parsePlan, PLAN_SCHEMA } from '../../core/group/plan.ts';
import { RECORD_SCHEMA, type RideRecord } from '../../core/group/records/record.ts';
import { parseRecord } from '../../core/group/records/recordFile.ts';
import { parseRound } from '../../core/group/roundFile.ts';
import { parseLevel } from '../../core/level/parse.ts';
import type { Level } from '../../core/level/schema.ts';
import { riderById } from '../../core/model/presets.ts';
import { parseRecording, type Recording } from '../../core/ride/recording.ts';
import type { RiddenTurn } from '../../features/clinic/session.ts';
import type { SavedRound } from '../../features/clinic/services.ts';
import type { KeptRecord, NewRecord, RecordChange, RecordsNow, Shape, Storage } from '../../storage/index.ts';
import type { Ownership } from '../device/tabLock.ts';

/** A ride that came to its end and has no record yet. */
export interface FinishedTurn extends RiddenTurn {
  readonly level: Level;
  readonly recording: Recording;
}

const KINDS = {
  plan: 'clinic-plan',
  round: 'clinic-round',
  record: 'clinic-record',
  finished: 'clinic-finished',
  undone: 'clinic-undone',
} as const;
/** Kind and id of the token of the tab that may change all this. */
const OWNER = 'clinic-owner';
/** Kinds of which one stands there for a session, under its id. */
const OF_SESSION: readonly string[] = [KINDS.round, KINDS.finished, 'clinic-said'];

const ID = /^[a-z0-9][a-z0-9-]{0,59}$/;

type Fields = Readonly<Record<string, unknown>>;

function isFields(value: unknown): value is Fields {
  return typeof value === 'object' && value !== null && !Array.isArray(value);
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

const recordOf = (kind: string, id: string, schema: number, data: unknown): NewRecord => ({
  kind,
  id,
  schema,
  data,
});
const planOf = (plan: ClinicPlan): NewRecord => recordOf(KINDS.plan, plan.id, plans.schema, plan);
const roundOf = (saved: SavedRound): NewRecord => recordOf(KINDS.round, saved.plan.id, rounds.schema, saved);

function isOfSession({ kind, id, data }: KeptRecord, planId: string): boolean {
  if (OF_SESSION.includes(kind)) return id === planId;
  if (kind === KINDS.undone) return data === planId;
  return kind === KINDS.record && isFields(data) && data['planId'] === planId;
}

/** Reads a kept session, or null where its parts are not what they were. */
export function readRound(value: unknown): SavedRound | null {
  if (!isFields(value)) return null;
  const { deviceId, startedAtMs, feels } = value;
  const plan = plans.read(value['plan']);
  const round = parseRound(value['round']);
  if (plan === null || round === null || round.planId !== plan.id) return null;
  if (typeof deviceId !== 'string' || !ID.test(deviceId)) return null;
  if (typeof startedAtMs !== 'number' || !isFields(feels)) return null;
  return { plan, deviceId, round, startedAtMs, feels: readFeels(feels) };
}

function readFeels(feels: Fields): SavedRound['feels'] {
  const known = Object.entries(feels).filter(
    (entry): entry is [string, string] =>
      readNickname(entry[0]) !== null && typeof entry[1] === 'string' && riderById(entry[1]) !== undefined,
  );
  return Object.fromEntries(known);
}

/** Whose turn it was is only compared with the round that waits, so its values need no limits here. */
function readFinished(value: unknown): FinishedTurn | null {
  if (!isFields(value)) return null;
  const { planId, nickname, rideIndex, attempt } = value;
  if (typeof planId !== 'string' || typeof nickname !== 'string') return null;
  if (typeof rideIndex !== 'number' || typeof attempt !== 'number') return null;
  const level = parseLevel(value['level']);
  const recording = parseRecording(value['recording']);
  if (!level.ok || !recording.ok) return null;
  return { planId, nickname, rideIndex, attempt, level: level.level, recording: recording.recording };
}

/** What was kept. */
export interface ShelfContents {
  readonly plans: readonly ClinicPlan[];
  readonly rounds: readonly SavedRound[];
  /** In the order they were ridden on each device. */
  readonly records: readonly RideRecord[];
  readonly finished: readonly FinishedTurn[];
  /** Ids of rides that were taken back and are not yet gone. */
  readonly undone: readonly string[];
}

/** The shelf. What changes it answers whether that is in the database; each change is done whole or not at all. */
export interface ClinicShelf {
  /** Everything at one moment; from then on this tab is the one that may change it. */
  load(): Promise<ShelfContents>;
  /** False once another tab has loaded: nothing is changed any more. */
  readonly isOwned: () => boolean;
  putPlan(plan: ClinicPlan): Promise<boolean>;
  dropPlan(planId: string): Promise<boolean>;
  putRound(saved: SavedRound): Promise<boolean>;
  putFinished(turn: FinishedTurn): Promise<boolean>;
  dropFinished(planId: string): Promise<boolean>;
  /** A finished turn becomes a record, and its round moves on. */
  keepRide(record: RideRecord, moved: SavedRound): Promise<boolean>;
  /** A ride is no longer in its round; it is noted that its record is to go. */
  undoRide(recordId: string, moved: SavedRound): Promise<boolean>;
  /** The record of a ride that was undone. */
  dropRide(recordId: string): Promise<boolean>;
  /** Everything of a session, with the rides of all devices. */
  dropSession(planId: string): Promise<boolean>;
}

/** The shelf in a storage, for a tab that may lose it to another. */
export function createClinicShelf(storage: Storage, owner: Omit<Ownership, 'gone'>): ClinicShelf {
  const change = async (
    work: (now: RecordsNow) => Promise<RecordChange> | RecordChange,
  ): Promise<boolean> => {
    if (!owner.isOwned()) return false;
    const answer = await storage.changeRecords(async (now) => {
      const there = await now.data(OWNER, OWNER, text);
      // None in the database: everything was deleted. None in memory: nobody else can be there.
      const isOurs = there === owner.token || (there === null && !now.inDatabase);
      return isOurs ? work(now) : null;
    });
    if (answer === null) owner.lose();
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
      await storage.changeRecords(async () => ({
        put: [recordOf(OWNER, OWNER, text.schema, owner.token)],
      }));
      owner.tell();
      // From here on no other tab changes anything.
      return {
        plans: await all(KINDS.plan, plans),
        rounds: await all(KINDS.round, rounds),
        records: (await all(KINDS.record, records)).toSorted((a, b) => a.seq - b.seq),
        finished: await all(KINDS.finished, finished),
        undone: (await storage.listRecords(KINDS.undone, text)).map(({ id }) => id),
      };
    },
    putPlan: (plan) => put(planOf(plan)),
    dropPlan: (planId) => drop(KINDS.plan, planId),
    putRound: (saved) => put(roundOf(saved)),
    putFinished: (turn) => put(recordOf(KINDS.finished, turn.planId, finished.schema, turn)),
    dropFinished: (planId) => drop(KINDS.finished, planId),
    keepRide: (record, moved) =>
      change(() => ({
        put: [recordOf(KINDS.record, record.id, records.schema, record), roundOf(moved)],
        drop: [{ kind: KINDS.finished, id: record.planId }],
      })),
    undoRide: (recordId, moved) => put(roundOf(moved), recordOf(KINDS.undone, recordId, 1, moved.plan.id)),
    dropRide: (recordId) =>
      change(() => ({ drop: [KINDS.record, KINDS.undone].map((kind) => ({ kind, id: recordId })) })),
    dropSession: (planId) =>
      change(async (now) => ({ drop: (await now.all()).filter((one) => isOfSession(one, planId)) })),
  };
}
