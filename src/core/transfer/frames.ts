/**
 * Any bytes as a short sequence of text frames, each small enough for one QR code that a camera reads, and
 * back again in any order. A frame names its message, its number and how many there are, and is checked on
 * its own; the whole message is checked once more. Drawing and reading codes is left to others.
 */
import { createHasher } from '../math/hash.ts';
import { LIMITS } from '../math/limits.ts';
import { fromBase41, toBase41 } from './base41.ts';

/** Longest frame (characters, all of one byte). */
const FRAME_CHARACTERS = LIMITS.code.characters.most;
/** Format mark and version; what follows is 16 digits of message, three of number, three of count. */
const FORMAT = 'B1';
const HEAD = FORMAT.length + 16 + 3 + 3;
const TAIL = 8;
/** Bytes in one frame: three characters for two. */
const FRAME_BYTES = ((FRAME_CHARACTERS - HEAD - TAIL) / 3) * 2;

/** What is wrong with a frame. Numbers count from 1; they are null where they cannot be read. */
export interface DamagedFrame {
  /** `contradicts`: sound, but its message has already said something else under this number. */
  readonly code: 'not-a-frame' | 'newer-version' | 'checksum' | 'contradicts' | 'too-many-messages';
  readonly messageId: string | null;
  readonly number: number | null;
}

/** One message as far as it has come. `parts[i]` is the text of frame `i + 1`, null while missing. */
interface PartialMessage {
  readonly id: string;
  readonly parts: readonly (string | null)[];
}

/** Everything seen so far. Plain data. */
export interface FrameBox {
  readonly messages: readonly PartialMessage[];
  readonly damaged: readonly DamagedFrame[];
}

export const EMPTY_BOX: FrameBox = { messages: [], damaged: [] };

/** Frames of a message, the first one first; null where it would take more than 999. */
export function toFrames(bytes: Uint8Array): string[] | null {
  const count = Math.max(1, Math.ceil(bytes.length / FRAME_BYTES));
  if (count > LIMITS.code.frames.most) return null;
  const id = messageId(bytes);
  return Array.from({ length: count }, (_, i) => {
    const part = toBase41(bytes.subarray(i * FRAME_BYTES, (i + 1) * FRAME_BYTES));
    const body = FORMAT + id + threeDigits(i + 1) + threeDigits(count) + part;
    return body + check(body);
  });
}

/** Takes in one frame; the very same box where it says nothing new. */
export function takeFrame(box: FrameBox, text: string): FrameBox {
  const frame = readFrame(text);
  if ('code' in frame) return note(box, frame);
  const known = box.messages.find((message) => message.id === frame.id);
  if (known === undefined) {
    if (box.messages.length >= LIMITS.code.messages.most)
      return note(box, { code: 'too-many-messages', messageId: frame.id, number: frame.number });
    const parts = Array.from({ length: frame.count }, (_, i) => (i + 1 === frame.number ? frame.part : null));
    return { ...box, messages: [...box.messages, { id: frame.id, parts }] };
  }
  const before = known.parts[frame.number - 1];
  if (before === frame.part && known.parts.length === frame.count) return box;
  if (known.parts.length !== frame.count || (before !== null && before !== undefined))
    return note(box, { code: 'contradicts', messageId: frame.id, number: frame.number });
  const parts = known.parts.map((part, i) => (i + 1 === frame.number ? frame.part : part));
  return {
    ...box,
    messages: box.messages.map((message) => (message === known ? { id: frame.id, parts } : message)),
  };
}

/** What has become of a message. Missing frames are named by number, from 1. */
type MessageState =
  | { readonly kind: 'missing'; readonly count: number; readonly missing: readonly number[] }
  | { readonly kind: 'complete'; readonly bytes: Uint8Array }
  /** All frames are there and each is sound, but together they are not what was sent. */
  | { readonly kind: 'damaged' };

/** Looks whether a message is complete. */
export function messageState(message: PartialMessage): MessageState {
  const missing = message.parts.flatMap((part, i) => (part === null ? [i + 1] : []));
  if (missing.length > 0) return { kind: 'missing', count: message.parts.length, missing };
  const pieces = message.parts.map((part) => fromBase41(part ?? ''));
  const bytes = new Uint8Array(pieces.reduce((sum, piece) => sum + (piece?.length ?? 0), 0));
  let at = 0;
  for (const piece of pieces) {
    if (piece === null) return { kind: 'damaged' };
    bytes.set(piece, at);
    at += piece.length;
  }
  return messageId(bytes) === message.id ? { kind: 'complete', bytes } : { kind: 'damaged' };
}

interface Frame {
  readonly id: string;
  readonly number: number;
  readonly count: number;
  readonly part: string;
}

function readFrame(text: string): Frame | DamagedFrame {
  const match = /^B(\d)([0-9A-F]{16})(\d{3})(\d{3})/.exec(text.slice(0, HEAD));
  const nothing = { messageId: null, number: null };
  if (match === null || text.length > FRAME_CHARACTERS || text.length < HEAD + TAIL)
    return { code: 'not-a-frame', ...nothing };
  const id = match[2] as string;
  const number = Number(match[3]);
  const count = Number(match[4]);
  const named = { messageId: id, number: number === 0 ? null : number };
  const body = text.slice(0, -TAIL);
  if (check(body) !== text.slice(-TAIL)) return { code: 'checksum', ...named };
  if (`B${match[1]}` !== FORMAT) return { code: 'newer-version', ...named };
  const part = body.slice(HEAD);
  if (number < 1 || number > count || fromBase41(part) === null) return { code: 'not-a-frame', ...nothing };
  return { id, number, count, part };
}

/** Remembers a damaged frame once; a camera sees the same one many times a second. */
function note(box: FrameBox, frame: DamagedFrame): FrameBox {
  const known = box.damaged.some(
    (other) =>
      other.code === frame.code && other.messageId === frame.messageId && other.number === frame.number,
  );
  if (known || box.damaged.length >= LIMITS.code.damaged.most) return box;
  return { ...box, damaged: [...box.damaged, frame] };
}

function messageId(bytes: Uint8Array): string {
  const hasher = createHasher();
  for (const byte of bytes) hasher.text(String.fromCharCode(byte));
  hasher.number(bytes.length);
  return hasher.digest().toUpperCase();
}

function check(body: string): string {
  const hasher = createHasher();
  hasher.text(body);
  return hasher.digest().slice(0, TAIL).toUpperCase();
}

function threeDigits(value: number): string {
  return String(value).padStart(3, '0');
}
