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
import type { RiddenTurn } from '../../pages/clinic/session.ts';
import type { SavedRound } from '../../pages/clinic/types.ts';
import type { Shape, Storage } from '../../storage/index.ts';

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
} as const;

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

const plans = shape<ClinicPlan>(PLAN_SCHEMA, (value) => {
  const parsed = parsePlan(value);
  return parsed.ok ? parsed.plan : null;
});
const rounds = shape<SavedRound>(1, readRound);
const records = shape<RideRecord>(RECORD_SCHEMA, (value) => parseRecord(value).record);
const finished = shape<FinishedTurn>(1, readFinished);

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
}

/** The shelf. What is put answers whether it is in the database. */
export interface ClinicShelf {
  load(): Promise<ShelfContents>;
  putPlan(plan: ClinicPlan): Promise<boolean>;
  putRound(saved: SavedRound): Promise<boolean>;
  putRecord(record: RideRecord): Promise<boolean>;
  putFinished(turn: FinishedTurn): Promise<boolean>;
  dropPlan(planId: string): Promise<boolean>;
  dropRecords(recordIds: readonly string[]): Promise<boolean>;
  dropFinished(planId: string): Promise<boolean>;
  dropRound(planId: string): Promise<boolean>;
}

/** The same shelf for somebody who may lose it: from then on nothing is put or dropped any more. */
export function whileOwned(shelf: ClinicShelf, isOwned: () => boolean): ClinicShelf {
  const only = async (work: () => Promise<boolean>): Promise<boolean> => isOwned() && work();
  return {
    load: () => shelf.load(),
    putPlan: (plan) => only(() => shelf.putPlan(plan)),
    putRound: (saved) => only(() => shelf.putRound(saved)),
    putRecord: (record) => only(() => shelf.putRecord(record)),
    putFinished: (turn) => only(() => shelf.putFinished(turn)),
    dropPlan: (planId) => only(() => shelf.dropPlan(planId)),
    dropRecords: (recordIds) => only(() => shelf.dropRecords(recordIds)),
    dropFinished: (planId) => only(() => shelf.dropFinished(planId)),
    dropRound: (planId) => only(() => shelf.dropRound(planId)),
  };
}

/** The shelf in a storage. */
export function createClinicShelf(storage: Storage): ClinicShelf {
  const put = async (kind: string, id: string, schema: number, data: unknown): Promise<boolean> =>
    (await storage.putRecord({ kind, id, schema, data })).saved;
  const drop = async (kind: string, ids: readonly string[]): Promise<boolean> =>
    (await storage.deleteRecords(kind, ids)) === null;
  const all = async <T>(kind: string, of: Shape<T>): Promise<readonly T[]> =>
    (await storage.listRecords(kind, of)).map(({ data }) => data);
  return {
    async load() {
      return {
        plans: await all(KINDS.plan, plans),
        rounds: await all(KINDS.round, rounds),
        records: (await all(KINDS.record, records)).toSorted((a, b) => a.seq - b.seq),
        finished: await all(KINDS.finished, finished),
      };
    },
    putPlan: (plan) => put(KINDS.plan, plan.id, plans.schema, plan),
    putRound: (saved) => put(KINDS.round, saved.plan.id, rounds.schema, saved),
    putRecord: (record) => put(KINDS.record, record.id, records.schema, record),
    putFinished: (turn) => put(KINDS.finished, turn.planId, finished.schema, turn),
    dropPlan: (planId) => drop(KINDS.plan, [planId]),
    dropRecords: (recordIds) => drop(KINDS.record, recordIds),
    dropFinished: (planId) => drop(KINDS.finished, [planId]),
    dropRound: (planId) => drop(KINDS.round, [planId]),
  };
}
