/**
 * What is kept of group sessions: in which kinds of records and under which keys it lies, and the door through which each
 * comes back. When it is written, and by which tab, is `sessions.ts`.
 */
import * as z from 'zod/mini';
import { type ClinicPlan, parsePlan, PLAN_SCHEMA } from '../core/group/plan.ts';
import type { RecordSet } from '../core/group/records/merge.ts';
import type { Heard } from '../core/group/records/missing.ts';
import { RECORD_SCHEMA, type RideRecord } from '../core/group/records/record.ts';
import { parseRecord } from '../core/group/records/recordFile.ts';
import { type FinishedTurn, readFinished, readRound, type SavedRound } from '../core/group/savedRound.ts';
import { hashJson } from '../core/math/hash.ts';
import { type RecordKind, recordOf } from './ladder.ts';
import { OWN_RIDE } from './sharedKept.ts';
import type { KeptRecord, NewRecord } from './types.ts';

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

/** What devices said of a session, and what was taken back. */
export type Said = Omit<RecordSet, 'records'> & { readonly heard: readonly Heard[] };

/** A note beside a ride that was marked here. It goes into no copy: a ride from a file is looked at like any other. */
const ownSchema = z.strictObject({ planId: shortText, checksum: shortText });

const readText = (value: unknown): string | null => (typeof value === 'string' ? value : null);

const of = <T>(kind: string, schema: number, read: (value: unknown) => T | null): RecordKind<T> => ({
  kind,
  schema,
  read,
});

/** What is kept of sessions. */
export const SESSION_KINDS = {
  plan: of<ClinicPlan>('clinic-plan', PLAN_SCHEMA, (value) => {
    const parsed = parsePlan(value);
    return parsed.ok ? parsed.plan : null;
  }),
  round: of<SavedRound>('clinic-round', 1, readRound),
  /** Rides of all devices, so that pictures and reports see them all. */
  record: of<RideRecord>('clinic-record', RECORD_SCHEMA, (value) => parseRecord(value).record),
  finished: of<FinishedTurn>('clinic-finished', 1, readFinished),
  /** Under the id of a ride, with that of its session. */
  undone: of('clinic-undone', 1, readText),
  said: of<Said>('clinic-said', 1, (value) => saidSchema.safeParse(value).data ?? null),
  own: of(OWN_RIDE, 1, (value) => ownSchema.safeParse(value).data ?? null),
  /** The token of the tab that may change all this; there is one, under its kind. */
  owner: of('clinic-owner', 1, readText),
};
/** Kinds of which one stands there for a session, under its id. */
const OF_SESSION: readonly string[] = [SESSION_KINDS.round.kind, SESSION_KINDS.said.kind];
/** Kinds whose data name their session; there may be several. */
const IN_SESSION: readonly string[] = [
  SESSION_KINDS.record.kind,
  SESSION_KINDS.own.kind,
  SESSION_KINDS.finished.kind,
];

export const roundOf = (saved: SavedRound): NewRecord => recordOf(SESSION_KINDS.round, saved.plan.id, saved);

/** That a ride was marked here. */
export const noteOf = ({ id, planId, checksum }: RideRecord): NewRecord =>
  recordOf(SESSION_KINDS.own, id, { planId, checksum });

/** Whether a record goes when a session is deleted. */
export function isOfSession({ kind, id, data }: KeptRecord, planId: string): boolean {
  if (OF_SESSION.includes(kind)) return id === planId;
  if (kind === SESSION_KINDS.undone.kind) return data === planId;
  if (!IN_SESSION.includes(kind) || typeof data !== 'object' || data === null) return false;
  return 'planId' in data && data.planId === planId;
}

/**
 * Every finished turn under a key of its own: two tabs can each come to the end of one in the same moment, and the
 * second must not take the place of the first before that is marked. Older ones lie under the id of their session.
 */
export function keysOfFinished(turn: RiddenOnce): readonly [string, string] {
  const { planId, nickname, rideIndex, attempt, recording } = turn;
  return [`turn-${hashJson([planId, nickname, rideIndex, attempt, recording])}`, planId];
}

/** What tells one turn from another. */
export type RiddenOnce = Pick<RideRecord, 'planId' | 'nickname' | 'rideIndex' | 'attempt' | 'recording'>;

/**
 * Under its content, because a stranger's id may hold signs a key may not, and two different rides under one id must
 * both be kept. The same ride with its recording takes the place of the one without.
 */
export function keyFromOthers({ id, checksum }: RideRecord): string {
  return `from-${hashJson([id, checksum])}`;
}
