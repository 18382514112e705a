/**
 * Puts together what several devices hand over. A set of records only grows; the union of two sets does not
 * depend on order, grouping or repetition. Two different records under one id are both kept, as a conflict;
 * damaged pieces are kept by name.
 */
import { canonicalJson } from '../../math/hash.ts';
import type { RideRecord } from './record.ts';
import type { DamagedPiece, ReadRecord } from './recordFile.ts';

/** Everything that was handed over so far. Plain data, in an order of its own. */
export interface RecordSet {
  /** By id; several under one id are a conflict. */
  readonly records: readonly RideRecord[];
  readonly damaged: readonly DamagedPiece[];
  /** Ids of rides their own device has taken back. */
  readonly withdrawn: readonly string[];
}

/** Records that cannot all be true. */
interface Conflict {
  /** `same-id`: one id, different content. `same-seq`: one place in a device's count, different ids. */
  readonly code: 'same-id' | 'same-seq';
  readonly records: readonly RideRecord[];
}

export const EMPTY_SET: RecordSet = { records: [], damaged: [], withdrawn: [] };

/** A set of what was read, in any order. */
export function setOf(read: readonly ReadRecord[], withdrawn: readonly string[] = []): RecordSet {
  return union({
    records: read.flatMap(({ record }) => (record === null ? [] : [record])),
    damaged: read.flatMap(({ damaged }) => (damaged === null ? [] : [damaged])),
    withdrawn,
  });
}

export function mergeSets(...sets: readonly RecordSet[]): RecordSet {
  return union({
    records: sets.flatMap((set) => set.records),
    damaged: sets.flatMap((set) => set.damaged),
    withdrawn: sets.flatMap((set) => set.withdrawn),
  });
}

/** Tells rides that count from conflicts and from rides that were taken back. */
export function sortOut(set: RecordSet) {
  const byId = groupBy(set.records, (record) => record.id);
  const bySeq = groupBy(set.records, (record) => `${record.deviceId} ${record.seq}`);
  const conflicts: Conflict[] = [];
  const contested = new Set<string>();
  for (const [id, records] of byId)
    if (records.length > 1) {
      conflicts.push({ code: 'same-id', records });
      contested.add(id);
    }
  for (const records of bySeq.values())
    if (new Set(records.map((record) => record.id)).size > 1) {
      conflicts.push({ code: 'same-seq', records });
      for (const record of records) contested.add(record.id);
    }
  const taken = new Set(set.withdrawn);
  const clear = set.records.filter((record) => !contested.has(record.id));
  return {
    /** Rides that count: good, unique and not taken back. */
    rides: clear.filter((record) => !taken.has(record.id)),
    conflicts,
    withdrawn: clear.filter((record) => taken.has(record.id)),
    /** Damaged pieces for which no good copy has come; a piece without a name stays among them. */
    damaged: set.damaged.filter((piece) => !isMadeGood(piece, byId)),
  };
}

/** A good copy of the record has come; of a lost recording, one that carries it. */
function isMadeGood(piece: DamagedPiece, byId: ReadonlyMap<string, readonly RideRecord[]>): boolean {
  const copies = piece.recordId === null ? [] : (byId.get(piece.recordId) ?? []);
  return piece.code === 'recording' ? copies.some((copy) => copy.recording !== null) : copies.length > 0;
}

function union(all: RecordSet): RecordSet {
  const records = new Map<string, RideRecord[]>();
  for (const record of all.records) {
    const key = `${record.id} ${record.checksum}`;
    const known = records.get(key);
    if (known === undefined) records.set(key, [record]);
    else addVariant(known, record);
  }
  const damaged = new Map(all.damaged.map((piece) => [keyOfDamage(piece), piece]));
  return {
    records: [...records.values()].flat().sort(compareRecords),
    damaged: [...damaged].sort(([a], [b]) => compareTexts(a, b)).map(([, piece]) => piece),
    withdrawn: [...new Set(all.withdrawn)].sort(compareTexts),
  };
}

/** The same record twice is one; the copy that carries its recording wins. */
function addVariant(known: RideRecord[], record: RideRecord): void {
  for (let i = 0; i < known.length; i += 1) {
    const other = known[i] as RideRecord;
    if (other === record) return;
    // Equal fingerprints of different contents are next to impossible, but would lose a ride.
    if (contentOf(other) !== contentOf(record)) continue;
    known[i] = better(other, record);
    return;
  }
  known.push(record);
}

function better(a: RideRecord, b: RideRecord): RideRecord {
  if (a.recording === null) return b;
  if (b.recording === null) return a;
  return canonicalJson(a.recording) <= canonicalJson(b.recording) ? a : b;
}

function contentOf(record: RideRecord): string {
  return canonicalJson({ ...record, recording: null });
}

function keyOfDamage(piece: DamagedPiece): string {
  return `${piece.fingerprint} ${piece.code} ${canonicalJson(piece)}`;
}

function compareRecords(a: RideRecord, b: RideRecord): number {
  return (
    compareTexts(a.deviceId, b.deviceId) ||
    a.seq - b.seq ||
    compareTexts(a.id, b.id) ||
    compareTexts(a.checksum, b.checksum) ||
    compareTexts(contentOf(a), contentOf(b))
  );
}

function compareTexts(a: string, b: string): number {
  return a < b ? -1 : a > b ? 1 : 0;
}

/** Things by a key, in the order in which they come. */
export function groupBy<T>(items: readonly T[], keyOf: (item: T) => string): Map<string, T[]> {
  const groups = new Map<string, T[]>();
  for (const item of items) {
    const key = keyOf(item);
    const group = groups.get(key);
    if (group === undefined) groups.set(key, [item]);
    else group.push(item);
  }
  return groups;
}
