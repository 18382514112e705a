/**
 * Keeping what came from other devices: their rides beside those of this one, and in one piece per session what
 * they have said, what they took back and what arrived damaged. Everything comes back through a door.
 */
import * as z from 'zod/mini';
import { EMPTY_SET, mergeSets, type RecordSet } from '../core/group/records/merge.ts';
import { type Heard, mergeHeard } from '../core/group/records/missing.ts';
import { RECORD_SCHEMA, type RideRecord } from '../core/group/records/record.ts';
import { type DamagedPiece, parseRecord } from '../core/group/records/recordFile.ts';
import { hashJson } from '../core/math/hash.ts';
import type { Shape } from './ladder.ts';
import type { Storage } from './types.ts';

/** The same kind the clinic keeps its own rides under, so that its pictures and reports see them all. */
const RECORD = 'clinic-record';
const SAID = 'clinic-said';
const SAID_SCHEMA = 1;
/** More damage than anybody reads is not kept. */
const MOST_DAMAGED = 1_000;

/** What is kept of one session. */
export interface ShelfOfPlan {
  readonly set: RecordSet;
  readonly heard: readonly Heard[];
}

export const NOTHING_KEPT: ShelfOfPlan = { set: EMPTY_SET, heard: [] };

/** The shelf. */
export interface HandoverShelf {
  load(planId: string): Promise<ShelfOfPlan>;
  /** Keeps what is new in `after`; true once all of it is in the database. */
  keep(planId: string, before: ShelfOfPlan, after: ShelfOfPlan): Promise<boolean>;
  /** Removes everything of the session: rides of all devices, and what they said. */
  drop(planId: string): Promise<boolean>;
}

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

const records: Shape<RideRecord> = {
  schema: RECORD_SCHEMA,
  steps: [],
  read: (value) => parseRecord(value).record,
};
const said: Shape<Said> = {
  schema: SAID_SCHEMA,
  steps: [],
  read: (value) => saidSchema.safeParse(value).data ?? null,
};

/** The shelf in a storage. */
export function createHandoverShelf(storage: Storage): HandoverShelf {
  return {
    async load(planId) {
      const rides = await storage.listRecords(RECORD, records);
      const ours = rides.map(({ data }) => data).filter((record) => record.planId === planId);
      const all = (await storage.listRecords(SAID, said)).find(({ id }) => id === planId)?.data;
      const { heard = [], withdrawn = [], damaged = [] } = all ?? {};
      return { set: mergeSets({ records: ours, withdrawn, damaged }), heard };
    },
    async keep(planId, before, after) {
      const known = new Set(before.set.records);
      const rides = after.set.records
        .filter((record) => !known.has(record))
        .map((data) => ({ kind: RECORD, id: keyOf(data), schema: RECORD_SCHEMA, data }));
      const answer = await storage.changeRecords(async (now) => {
        // What another tab has noted meanwhile stays.
        const there = await now.data(SAID, planId, said);
        const { withdrawn, damaged } = mergeSets({ ...EMPTY_SET, ...there, records: [] }, after.set);
        const heard = mergeHeard([...(there?.heard ?? []), ...after.heard]);
        const data: Said = { heard, withdrawn, damaged: damaged.slice(0, MOST_DAMAGED) };
        return { put: [...rides, { kind: SAID, id: planId, schema: SAID_SCHEMA, data }] };
      });
      return answer?.saved === true;
    },
    async drop(planId) {
      const rides = await storage.listRecords(RECORD, records);
      const keys = rides.filter(({ data }) => data.planId === planId).map(({ id }) => id);
      // What was said goes last: should this break off, there is still something to delete.
      const ridesGone = await storage.deleteRecords(RECORD, keys);
      const saidGone = await storage.deleteRecords(SAID, [planId]);
      return ridesGone === null && saidGone === null;
    },
  };
}

/**
 * Under its content, because a stranger's id may hold signs a key may not, and two different rides under one id must
 * both be kept. The same ride with its recording takes the place of the one without.
 */
function keyOf({ id, checksum }: RideRecord): string {
  return `from-${hashJson([id, checksum])}`;
}
