/**
 * Plans and hand-overs as small packets of bytes: one byte of kind, one of format, then what `packPlan.ts` or
 * `packRecords.ts` made, deflated where that helps. Deflating itself is handed in, because every host has its
 * own; it may answer later.
 */
import type { ClinicPlan, ParsePlanResult } from '../group/plan.ts';
import { LIMITS } from '../math/limits.ts';
import { planFromBytes, planToBytes } from './packPlan.ts';
import { recordsFromBytes, recordsToBytes } from './packRecords.ts';
import type { HandOver } from './rideFile.ts';

/** Raw deflate. */
export type Deflate = (bytes: Uint8Array) => Uint8Array | Promise<Uint8Array>;
/** Raw inflate that gives up (throws or rejects) rather than making more than `mostBytes`. */
export type Inflate = (bytes: Uint8Array, mostBytes: number) => Uint8Array | Promise<Uint8Array>;

const PLAN = 0x50;
const RECORDS = 0x52;
const PLAIN = 0x01;
const DEFLATED = 0x02;
const MOST_BYTES = LIMITS.code.unpackedBytes.most;

type Unpacked =
  | { readonly kind: 'plan'; readonly result: ParsePlanResult }
  /** Records without their recordings, each to be parsed like any other. */
  | { readonly kind: 'records'; readonly handOver: HandOver }
  | { readonly kind: 'unreadable'; readonly code: 'not-a-packet' | 'newer-version' | 'damaged' };

export async function packPlan(plan: ClinicPlan, deflate: Deflate): Promise<Uint8Array> {
  return seal(PLAN, planToBytes(plan), deflate);
}

/** Packs records; their recordings stay behind. */
export async function packRecords(handOver: HandOver, deflate: Deflate): Promise<Uint8Array> {
  return seal(RECORDS, recordsToBytes(handOver), deflate);
}

/** Unpacks either. Never throws. */
export async function unpack(packet: Uint8Array, inflate: Inflate): Promise<Unpacked> {
  const [kind, format] = packet;
  if ((kind !== PLAN && kind !== RECORDS) || format === undefined)
    return { kind: 'unreadable', code: 'not-a-packet' };
  if (format !== PLAIN && format !== DEFLATED) return { kind: 'unreadable', code: 'newer-version' };
  const body = await open(packet.subarray(2), format, inflate);
  const result = body !== null && kind === PLAN ? planFromBytes(body) : null;
  if (result !== null) return { kind: 'plan', result };
  const handOver = body !== null && kind === RECORDS ? recordsFromBytes(body) : null;
  return handOver === null ? { kind: 'unreadable', code: 'damaged' } : { kind: 'records', handOver };
}

async function seal(kind: number, body: Uint8Array, deflate: Deflate): Promise<Uint8Array> {
  const small = await deflate(body);
  const shorter = small.length < body.length;
  const kept = shorter ? small : body;
  const packet = new Uint8Array(kept.length + 2);
  packet[0] = kind;
  packet[1] = shorter ? DEFLATED : PLAIN;
  packet.set(kept, 2);
  return packet;
}

async function open(body: Uint8Array, format: number, inflate: Inflate): Promise<Uint8Array | null> {
  if (format === PLAIN) return body.length > MOST_BYTES ? null : body;
  try {
    const bytes = await inflate(body, MOST_BYTES);
    return bytes.length > MOST_BYTES ? null : bytes;
  } catch {
    return null;
  }
}
