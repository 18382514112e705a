/**
 * What is still missing from which device. Devices count their records from 1 without gaps and say how far
 * they have counted whenever they hand something over, so a missing ride can be named by its number.
 */
import { groupBy, type RecordSet } from './merge.ts';
import { MOST_COUNTED } from './record.ts';

/** A device has said how far it has counted; `atMs` is when that was heard, by the listener's clock. */
export interface Heard {
  readonly deviceId: string;
  readonly lastSeq: number;
  readonly atMs: number;
}

/** For every device and number the first time it was said, and for every device the last time anything was. */
export function mergeHeard(all: readonly Heard[]): readonly Heard[] {
  const first = new Map<string, Heard>();
  const last = new Map<string, Heard>();
  for (const item of all) {
    const key = `${item.deviceId} ${item.lastSeq}`;
    const known = first.get(key);
    if (known === undefined || item.atMs < known.atMs) first.set(key, item);
    const latest = last.get(item.deviceId);
    if (latest === undefined || item.atMs > latest.atMs) last.set(item.deviceId, item);
  }
  return [...new Set([...first.values(), ...last.values()])];
}

/** One device as seen from the coach's. */
export type DeviceStatus = Readonly<ReturnType<typeof statusOf>>;

const MOST_RANGES = 100;

/** Every device that was heard of or has handed something over; by name. A number beyond what can be counted is not believed. */
export function deviceStatus(set: RecordSet, heard: readonly Heard[]): DeviceStatus[] {
  const handed = groupBy(set.records, ({ deviceId }) => deviceId);
  const said = groupBy(heard, ({ deviceId }) => deviceId);
  const ids = [...new Set([...handed.keys(), ...said.keys()])].sort();
  return ids.map((id) => statusOf(id, new Set(handed.get(id)?.map(({ seq }) => seq)), said.get(id) ?? []));
}

function statusOf(deviceId: string, seqs: ReadonlySet<number>, heard: readonly Heard[]) {
  let lastSeq = 0;
  for (const seq of seqs) lastSeq = Math.max(lastSeq, seq);
  for (const { lastSeq: claimed } of heard)
    if (Number.isInteger(claimed) && claimed <= MOST_COUNTED) lastSeq = Math.max(lastSeq, claimed);
  const missing: (readonly [number, number])[] = [];
  let from = 1;
  let count = 0;
  const close = (to: number): void => {
    if (to < from) return;
    count += to - from + 1;
    if (missing.length < MOST_RANGES) missing.push([from, to]);
  };
  for (const seq of [...seqs].sort((a, b) => a - b)) {
    close(seq - 1);
    from = seq + 1;
  }
  close(lastSeq);
  const first = missing[0]?.[0];
  const told = heard.filter((item) => first !== undefined && item.lastSeq >= first).map((item) => item.atMs);
  const times = heard.map((item) => item.atMs);
  return {
    deviceId,
    have: seqs.size,
    /** Highest number known to exist. */
    lastSeq,
    /** Numbers that are missing, as closed ranges in order; at most so many as are shown. */
    missing,
    missingCount: count,
    /** When it was first heard of the longest missing one; null where that was never said, only shown by a gap. */
    missingSinceMs: told.length === 0 ? null : told.reduce((a, b) => Math.min(a, b)),
    lastHeardMs: times.length === 0 ? null : times.reduce((a, b) => Math.max(a, b)),
  };
}
