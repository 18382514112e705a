/**
 * What is kept of group sessions: in which kinds of records and under which keys it lies, and the door through which each
 * comes back. When it is written, and by which tab, is `sessions.ts`.
 */
import * as z from 'zod/mini';
import { type ClinicPlan, parsePlan, PLAN_SCHEMA } from '../core/group/plan.ts';
import type { Heard } from '../core/group/records/missing.ts';
import { RECORD_SCHEMA, type RideRecord } from '../core/group/records/record.ts';
import { type DamagedPiece, parseRecord } from '../core/group/records/recordFile.ts';
import { type FinishedTurn, readFinished, readRound, type SavedRound } from '../core/group/savedRound.ts';
import { hashJson } from '../core/math/hash.ts';
import type { Shape } from './ladder.ts';
import { OWN_RIDE } from './sharedKept.ts';
import type { KeptRecord, NewRecord } from './types.ts';

/** What is kept of sessions, by the kind of its records. */
export const RECORD_KINDS = {
  plan: 'clinic-plan',
  round: 'clinic-round',
  /** Rides of all devices, so that pictures and reports see them all. */
  record: 'clinic-record',
  finished: 'clinic-finished',
  undone: 'clinic-undone',
  said: 'clinic-said',
  own: OWN_RIDE,
  /** The token of the tab that may change all this; there is one, under its kind. */
  owner: 'clinic-owner',
} as const;
/** Kinds of which one stands there for a session, under its id. */
const OF_SESSION: readonly string[] = [RECORD_KINDS.round, RECORD_KINDS.said];
/** Kinds whose data name their session; there may be several. */
const IN_SESSION: readonly string[] = [RECORD_KINDS.record, RECORD_KINDS.own, RECORD_KINDS.finished];

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
export interface Said {
  readonly heard: readonly Heard[];
  readonly withdrawn: readonly string[];
  readonly damaged: readonly DamagedPiece[];
}

const shape = <T>(schema: number, read: (value: unknown) => T | null): Shape<T> => ({
  schema,
  steps: [],
  read,
});

/** A note beside a ride that was marked here. It goes into no copy: a ride from a file is looked at like any other. */
interface OwnRide {
  readonly planId: string;
  readonly checksum: string;
}
const ownSchema = z.strictObject({ planId: shortText, checksum: shortText });

const text = shape<string>(1, (value) => (typeof value === 'string' ? value : null));

/** The door of each kind. */
export const RECORD_SHAPES = {
  plan: shape<ClinicPlan>(PLAN_SCHEMA, (value) => {
    const parsed = parsePlan(value);
    return parsed.ok ? parsed.plan : null;
  }),
  round: shape<SavedRound>(1, readRound),
  record: shape<RideRecord>(RECORD_SCHEMA, (value) => parseRecord(value).record),
  finished: shape<FinishedTurn>(1, readFinished),
  /** The id of a ride, with that of its session. */
  undone: text,
  owner: text,
  own: shape<OwnRide>(1, (value) => ownSchema.safeParse(value).data ?? null),
  said: shape<Said>(1, (value) => saidSchema.safeParse(value).data ?? null),
};

/** As it is kept. */
export const recordOf = (kind: keyof typeof RECORD_KINDS, id: string, data: unknown): NewRecord => ({
  kind: RECORD_KINDS[kind],
  id,
  schema: RECORD_SHAPES[kind].schema,
  data,
});
export const roundOf = (saved: SavedRound): NewRecord => recordOf('round', saved.plan.id, saved);

/** That a ride was marked here. */
export const noteOf = ({ id, planId, checksum }: RideRecord): NewRecord => {
  const note: OwnRide = { planId, checksum };
  return recordOf('own', id, note);
};

/** Whether a record goes when a session is deleted. */
export function isOfSession({ kind, id, data }: KeptRecord, planId: string): boolean {
  if (OF_SESSION.includes(kind)) return id === planId;
  if (kind === RECORD_KINDS.undone) return data === planId;
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
