/**
 * A hand-over as bytes: texts that repeat stand once in a table, numbers are whole tenths, recordings stay
 * behind. Checksums are worked out again at the other end; that nothing changed on the way is proved by the
 * frames, and a record's own fingerprint of its recording travels along.
 */
import { MARK_NAMES } from '../coach/types.ts';
import { ByteReader, ByteWriter } from './bytes.ts';
import {
  type PitchDigest,
  RECORD_SCHEMA,
  type RideRecord,
  sealRecord,
  usualRecordId,
} from '../group/records/record.ts';
import { parseRecord } from '../group/records/recordFile.ts';
import type { HandOver } from './rideFile.ts';

const FORMAT = 1;
const TIMINGS = ['too-early', 'about-right', 'too-late'] as const;

export function recordsToBytes(handOver: HandOver): Uint8Array {
  const out = new ByteWriter();
  const { texts, indexOf } = textTable(handOver);
  out.whole(FORMAT);
  out.whole(texts.length);
  for (const text of texts) out.text(text);
  out.whole(indexOf(handOver.planId));
  out.whole(indexOf(handOver.deviceId));
  out.whole(handOver.lastSeq);
  out.whole(handOver.withdrawn.length);
  for (const id of handOver.withdrawn) out.text(id);
  out.whole(handOver.records.length);
  for (const record of handOver.records) writeRecord(out, record, indexOf);
  return out.done();
}

/** What was handed over; null where the bytes are none of ours or a record in them is no record. */
export function recordsFromBytes(bytes: Uint8Array): HandOver | null {
  const from = new ByteReader(bytes);
  if (from.whole() !== FORMAT) return null;
  const texts = list(from, () => from.text());
  const text = (): string => texts[from.whole()] ?? '';
  const planId = text();
  const deviceId = text();
  const lastSeq = from.whole();
  const withdrawn = list(from, () => from.text());
  const records = list(from, () => readRecord(from, text));
  if (!from.finished) return null;
  // A crafted packet could hold anything; only what passes the ordinary door is let in.
  const good = records.flatMap((record) => parseRecord(record).record ?? []);
  return good.length === records.length ? { planId, deviceId, lastSeq, withdrawn, records: good } : null;
}

function textTable({ planId, deviceId, records }: HandOver) {
  const places = new Map<string, number>();
  const add = (text: string): void => {
    if (!places.has(text)) places.set(text, places.size);
  };
  for (const text of [planId, deviceId]) add(text);
  for (const record of records) for (const text of textsOf(record)) add(text);
  return { texts: [...places.keys()], indexOf: (text: string): number => places.get(text) ?? 0 };
}

function textsOf(record: RideRecord): readonly string[] {
  const { planId, deviceId, nickname, levelId, levelHash, bikeId, riderId, version } = record;
  return [planId, deviceId, nickname, levelId, levelHash, bikeId, riderId, version];
}

function writeRecord(out: ByteWriter, record: RideRecord, indexOf: (text: string) => number): void {
  for (const text of textsOf(record)) out.whole(indexOf(text));
  out.text(record.id === usualRecordId(record.deviceId, record.seq) ? '' : record.id);
  out.whole(record.seq);
  out.whole(record.attempt);
  out.whole(record.rideIndex);
  out.whole(record.seed);
  out.whole(Math.round(record.total * 10));
  for (const name of MARK_NAMES) out.whole(orNull(record.marks[name], 10));
  out.whole(record.pitches.length);
  for (const pitch of record.pitches) writePitch(out, pitch);
  out.whole(record.ticks);
  out.whole(record.recordingHash === null ? 0 : 1);
  if (record.recordingHash !== null) out.fingerprint(record.recordingHash);
}

function readRecord(from: ByteReader, text: () => string): RideRecord {
  const [planId, deviceId, nickname, levelId] = [text(), text(), text(), text()];
  const [levelHash, bikeId, riderId, version] = [text(), text(), text(), text()];
  const id = from.text();
  const seq = from.whole();
  const attempt = from.whole();
  const rideIndex = from.whole();
  const seed = from.whole();
  const total = from.whole() / 10;
  const mark = (): number | null => fromOrNull(from.whole(), 10);
  const marks = { cadence: mark(), foresight: mark(), easing: mark(), chainLine: mark(), economy: mark() };
  const pitches = list(from, () => readPitch(from));
  const ticks = from.whole();
  const recordingHash = from.whole() === 0 ? null : from.fingerprint();
  return sealRecord({
    schema: RECORD_SCHEMA,
    id: id === '' ? usualRecordId(deviceId, seq) : id,
    planId,
    deviceId,
    seq,
    nickname,
    attempt,
    rideIndex,
    levelId,
    levelHash,
    seed,
    bikeId,
    riderId,
    total,
    marks,
    pitches,
    ticks,
    version,
    recordingHash,
    recording: null,
  });
}

/** Timing and whether there was a shift share a number with the steps. */
function writePitch(out: ByteWriter, pitch: PitchDigest): void {
  const first = pitch.firstShiftBeforeFootM;
  out.whole(orNull(pitch.creditPercent, 1));
  out.whole((pitch.stepsBeforeFoot * 3 + TIMINGS.indexOf(pitch.timing)) * 2 + (first === null ? 0 : 1));
  if (first !== null) out.signed(Math.round(first * 10));
}

function readPitch(from: ByteReader): PitchDigest {
  const creditPercent = fromOrNull(from.whole(), 1);
  const packed = from.whole();
  const both = Math.floor(packed / 2);
  const firstShiftBeforeFootM = packed % 2 === 0 ? null : from.signed() / 10;
  const timing = TIMINGS[both % 3] ?? 'about-right';
  return { creditPercent, timing, firstShiftBeforeFootM, stepsBeforeFoot: Math.floor(both / 3) };
}

function orNull(value: number | null, parts: number): number {
  return value === null ? 0 : Math.round(value * parts) + 1;
}

function fromOrNull(value: number, parts: number): number | null {
  return value === 0 ? null : (value - 1) / parts;
}

function list<T>(from: ByteReader, read: () => T): T[] {
  const count = from.count();
  const items: T[] = [];
  for (let i = 0; i < count && !from.failed; i += 1) items.push(read());
  return items;
}
