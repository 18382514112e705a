/**
 * What has been read so far, from codes, links, pasted text and files, in any order and as often as one likes;
 * and what it turned out to be. Plain functions over plain data.
 */
import {
  type DamagedFrame,
  EMPTY_BOX,
  type FrameBox,
  messageState,
  takeFrame,
} from '../../core/transfer/frames.ts';
import { unpack } from '../../core/transfer/pack.ts';
import {
  type ClinicPlan,
  type ParsePlanResult,
  parsePlanText,
  type PlanRide,
} from '../../core/group/plan.ts';
import { cleanText } from '../../core/group/texts.ts';
import type { HandOver, ReadFile } from '../../core/transfer/rideFile.ts';
import { LIMITS } from '../../core/math/limits.ts';
import { isTooMuch, readRideFile } from '../../core/transfer/rideFile.ts';
import type { Problem } from '../../core/level/problems.ts';
import { inflate } from '../../ui/packing.ts';
import { framesIn, looksLikeFrames } from './message.ts';

/** What a text turned out to be. */
export type Arrival =
  | { readonly kind: 'plan'; readonly plan: ClinicPlan }
  | { readonly kind: 'plan-problems'; readonly problems: readonly Problem[] }
  | { readonly kind: 'rides'; readonly read: ReadFile }
  | {
      readonly kind: 'unreadable';
      readonly code: 'not-a-packet' | 'newer-version' | 'damaged' | 'nothing' | 'too-big';
    };

/** Reads a text of rides; null where somebody stopped it. */
type ReadRides = (text: string) => ReadFile | Promise<ReadFile | null>;

/** Everything read so far. */
export interface ReadSoFar {
  readonly box: FrameBox;
  /** Messages that have been opened, by id. */
  readonly opened: readonly string[];
}

export const NOTHING_READ: ReadSoFar = { box: EMPTY_BOX, opened: [] };

/** One message that is not complete yet. */
interface Open {
  readonly id: string;
  readonly count: number;
  readonly missing: readonly number[];
}

/** Takes in a text; answers with the reading after it and all that has become complete by it. */
export async function readText(
  before: ReadSoFar,
  text: string,
  readRides: ReadRides = readRideFile,
): Promise<{ readonly reading: ReadSoFar; readonly arrivals: readonly Arrival[] }> {
  if (isTooMuch(text)) return { reading: before, arrivals: [{ kind: 'unreadable', code: 'too-big' }] };
  if (!looksLikeFrames(text)) {
    const arrival = await readFile(text, readRides);
    return { reading: before, arrivals: arrival === null ? [] : [arrival] };
  }
  if (text.length > LIMITS.link.characters.most)
    return { reading: before, arrivals: [{ kind: 'unreadable', code: 'too-big' }] };
  const box = framesIn(text).reduce(takeFrame, before.box);
  const arrivals: Arrival[] = [];
  const opened = [...before.opened];
  for (const message of box.messages) {
    if (opened.includes(message.id)) continue;
    const state = messageState(message);
    if (state.kind === 'missing') continue;
    opened.push(message.id);
    arrivals.push(
      state.kind === 'complete' ? await openPacket(state.bytes) : { kind: 'unreadable', code: 'damaged' },
    );
  }
  return { reading: { box, opened }, arrivals };
}

/** Messages that still lack frames. */
export function openMessages({ box, opened }: ReadSoFar): Open[] {
  return box.messages.flatMap((message) => {
    const state = opened.includes(message.id) ? null : messageState(message);
    return state?.kind === 'missing' ? [{ id: message.id, count: state.count, missing: state.missing }] : [];
  });
}

/** Damaged frames for which no good one has come. */
export function openDamage({ box, opened }: ReadSoFar): DamagedFrame[] {
  return box.damaged.filter(({ code, messageId, number }) => {
    if (messageId === null || number === null || code !== 'checksum') return true;
    const parts = box.messages.find((message) => message.id === messageId)?.parts;
    return !opened.includes(messageId) && (parts === undefined || parts[number - 1] === null);
  });
}

/** The text of a file: a plan, or rides line by line; null where reading them was stopped. */
async function readFile(text: string, readRides: ReadRides): Promise<Arrival | null> {
  if (text.trim() === '') return { kind: 'unreadable', code: 'nothing' };
  if (looksLikePlan(text)) return ofPlan(parsePlanText(text));
  const read = await readRides(text);
  if (read === null) return null;
  const found = read.set.records.length + read.heard.length > 0;
  // Only what wants to be rides is named as damaged rides; any other text is simply the wrong file.
  const wants = /"(recordingHash|deviceId|clinic-rides)"/.test(text);
  return found || wants ? { kind: 'rides', read } : { kind: 'unreadable', code: 'not-a-packet' };
}

function looksLikePlan(text: string): boolean {
  const start = text.slice(0, 200_000);
  return /^[\uFEFF\s]*\{/.test(start) && start.includes('"rides"') && !start.includes('"deviceId"');
}

async function openPacket(bytes: Uint8Array): Promise<Arrival> {
  const packet = await unpack(bytes, inflate);
  switch (packet.kind) {
    case 'plan':
      return ofPlan(packet.result);
    case 'records':
      return { kind: 'rides', read: asRead(packet.handOver) };
    case 'unreadable':
      return packet;
  }
}

function ofPlan(result: ParsePlanResult): Arrival {
  if (!result.ok) return { kind: 'plan-problems', problems: result.problems };
  return { kind: 'plan', plan: { ...result.plan, rides: result.plan.rides.map(plainRide) } };
}

/** A level's own door lets any signs into its title; on a tablet that joins they must not turn a line round. */
function plainRide(ride: PlanRide): PlanRide {
  if (ride.kind !== 'own') return ride;
  const { level } = ride;
  const title = cleanText(level.title, 80) || level.id;
  const sentence = cleanText(level.sentence, 240) || title;
  return { kind: 'own', level: { ...level, title, sentence } };
}

function asRead({ deviceId, lastSeq, withdrawn, records }: HandOver): ReadFile {
  return { set: { records, damaged: [], withdrawn }, heard: [{ deviceId, lastSeq }] };
}
