/**
 * What goes to a shared store, as documents that are written once: a ride, or what a device has said of itself.
 * The id of a document says its whole content, so "already there" always means "this very thing is there".
 */
import type { StoreSent } from '../../core/transfer/clubStore.ts';
import { hashJson } from '../../core/math/hash.ts';
import type { Heard } from '../../core/group/records/missing.ts';
import type { RideRecord } from '../../core/group/records/record.ts';
import { parseRecord, type ReadRecord } from '../../core/group/records/recordFile.ts';
import { type HandOver, readRideFile, type ReadFile, writeRideFile } from '../../core/transfer/rideFile.ts';
import { setOf } from '../../core/group/records/merge.ts';
import type { SharedPiece, SharedProgress } from '../sharedKept.ts';

const RIDE = 'ride';
const HEAD = 'head';
/** Higher than every character of an id; ends a range of them. */
const LAST = '\ufff0';

/** Documents of a hand-over: its rides, of whichever device, and what this device has said of itself. */
export function piecesOf(handOver: HandOver): SharedPiece[] {
  const { records, planId, deviceId, lastSeq, withdrawn } = handOver;
  const said = { planId, deviceId, lastSeq, withdrawn };
  const head = writeRideFile({ ...said, records: [] }).trimEnd();
  const id = [HEAD, planId, deviceId, lastSeq, hashJson(said)].join(':');
  return [...records.map(pieceOfRecord), { id, body: { head } }];
}

/** A record with its recording is another document than the same record without. */
function pieceOfRecord(record: RideRecord): SharedPiece {
  const { planId, id, checksum, recording } = record;
  const kind = recording === null ? 'marks' : 'whole';
  return { id: [RIDE, planId, id, checksum, kind].join(':'), body: { record } };
}

/** What has gone to the store this progress is about. */
export function sentSoFar({ there, sentAtMs }: SharedProgress): StoreSent {
  return { rides: there.filter(isRide).length, atMs: sentAtMs };
}

/** Ranges of ids that hold everything of a plan. */
export function rangesOf(planId: string): readonly (readonly [string, string])[] {
  return [RIDE, HEAD].map((kind) => [`${kind}:${planId}:`, `${kind}:${planId}:${LAST}`] as const);
}

export function isRide(id: string): boolean {
  return id.startsWith(`${RIDE}:`);
}

export function isOfPlan(id: string, planId: string): boolean {
  return rangesOf(planId).some(([from]) => id.startsWith(from));
}

/** Reads documents; everything goes through the same doors as a file, and what is no good is named. */
export function readDocuments(documents: readonly unknown[], planId: string): ReadFile {
  const read: ReadRecord[] = [];
  const withdrawn: string[] = [];
  const heard: Omit<Heard, 'atMs'>[] = [];
  for (const document of documents) {
    const { record, head } = document as { readonly record?: unknown; readonly head?: unknown };
    if (record !== undefined) read.push(parseRecord(record));
    if (typeof head !== 'string') continue;
    const file = readRideFile(head);
    heard.push(...file.heard);
    withdrawn.push(...file.set.withdrawn);
    read.push(...file.set.damaged.map((damaged) => ({ record: null, damaged })));
  }
  const ours = read.filter(({ record }) => record === null || record.planId === planId);
  return { set: setOf(ours, withdrawn), heard };
}
