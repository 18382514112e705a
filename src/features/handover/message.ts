/**
 * A plan or results made ready to be carried: frames for codes, one link, one file. All three are made of the same
 * frames or lines, so that one reader takes them all.
 */
import { toFrames } from '../../core/transfer/frames.ts';
import { packPlan, packRecords } from '../../core/transfer/pack.ts';
import type { ClinicPlan } from '../../core/group/plan.ts';
import { type HandOver, writeRideFile } from '../../core/transfer/rideFile.ts';
import { deflate } from '../../ui/packing.ts';
import { hashJson } from '../../core/math/hash.ts';

/** Between the frames in a link; no frame has it. */
const JOINT = '_';
/** What stands behind `#` in links. */
const JOIN = 'join';
const COLLECT = 'collect';

/** Ready to be carried. */
export interface Message {
  readonly frames: readonly string[];
  readonly link: string;
  readonly file: { readonly name: string; readonly text: string };
  /** Bytes of the packed thing, before it is cut into frames. */
  readonly bytes: number;
}

/** A plan; `site` is the address of the game without what stands behind `#`. Null where it is too big. */
export async function messageOfPlan(plan: ClinicPlan, site: string): Promise<Message | null> {
  const file = { name: `${plan.id}.plan.json`, text: `${JSON.stringify(plan)}\n` };
  return messageOf(await packPlan(plan, deflate), `${site}#${JOIN}/`, file);
}

/** Results: marks in codes and link, everything in the file. Null where it takes too many codes. */
export async function messageOfRides(handOver: HandOver, site: string): Promise<Message | null> {
  const name = `${handOver.planId}.${fileName(handOver.deviceId)}.rides.jsonl`;
  const file = { name, text: writeRideFile(handOver) };
  return messageOf(await packRecords(handOver, deflate), `${site}#${COLLECT}/`, file);
}

/** Frames and other lines in a text that came by link, paste, code or file. */
export function framesIn(text: string): string[] {
  // Mail programs break long lines, and some write signs of a link as %2B.
  const whole = unescaped(text);
  const links = whole.split(/[a-z][a-z0-9+.-]*:\/\/[^#\s]*#\/?[a-z]+\/|#\/?(?:join|collect)\//i);
  return links
    .flatMap((link) => link.split(JOINT))
    .map((frame) => frame.replace(/\s+/g, ''))
    .filter((frame) => frame !== '');
}

/** Whether a text holds frames rather than a file's lines. */
export function looksLikeFrames(text: string): boolean {
  const start = unescaped(text.slice(0, 4_000)).trimStart();
  return /^B\d[0-9A-F]{16}/.test(start) || /#\/?(join|collect)\//i.test(start);
}

/** Only signs of one byte; anything longer is no part of a frame. */
function unescaped(text: string): string {
  return text.replace(/%([0-7][0-9a-f])/gi, (_, hex: string) =>
    String.fromCharCode(Number.parseInt(hex, 16)),
  );
}

function messageOf(bytes: Uint8Array, prefix: string, file: Message['file']): Message | null {
  const frames = toFrames(bytes);
  return frames === null ? null : { frames, link: prefix + frames.join(JOINT), file, bytes: bytes.length };
}

function fileName(text: string): string {
  return text.replace(/[^A-Za-z0-9_-]+/g, '-').slice(0, 40);
}

/** Short enough to read out across a field. */
const SHORT = 8;

/** Signs that are not taken for one another. */
const SIGNS = 'ABCDEFGHJKLMNPQRSTUVWXYZ23456789';
const LENGTH = 4;

/**
 * A short name for a device, the same on the tablet itself and on the coach's screen: its id where that is short, else four
 * signs made from all of it.
 */
export function tabletName(deviceId: string): string {
  if (deviceId.length <= SHORT) return deviceId;
  const hash = hashJson(deviceId);
  return Array.from(
    { length: LENGTH },
    (_, i) => SIGNS[Number.parseInt(hash.slice(2 * i, 2 * i + 2), 16) % SIGNS.length],
  ).join('');
}
