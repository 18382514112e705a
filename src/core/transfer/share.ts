/**
 * A level as a short text for a link or a QR code, and back. Compressing is the shell's business: it gets bytes
 * and gives bytes. The text carries a version and a check sum, and every fault in it a code.
 */
import { createHasher } from '../math/hash.ts';
import { LIMITS } from '../math/limits.ts';
import { isFields, jsonOf } from '../math/measure.ts';
import { bytesFromText, textFromBytes } from './base64.ts';
import { BARE_ROAD } from '../level/own.ts';
import { type ParseResult, parseLevel } from '../level/parse.ts';
import type { Problem } from '../level/problems.ts';
import type { Level } from '../level/schema.ts';

/** Version of the text; another one comes when its shape changes. */
const SHARE_VERSION = 1;
/** How the bytes in a text are packed. */
type Packing = 'plain' | 'deflated';

const LETTER: Readonly<Record<Packing, string>> = { plain: 'p', deflated: 'd' };
const SHAPE = /^(\d{1,4})([a-z])([0-9a-f]{16})([A-Za-z0-9_-]*)$/;

/** What can be wrong with a shared level, before it is read as one. */
export type LinkCode =
  | 'too-big'
  | 'not-json'
  | 'not-shared'
  | 'newer-version'
  | 'damaged'
  | 'unknown-packing'
  | 'not-packed';

/** A level as compact JSON, one byte a character: parts with their usual value left out, heights as millimetre steps. */
export function levelToBytes(level: Level): Uint8Array<ArrayBuffer> {
  const json = JSON.stringify({ ...withoutUsual(level), pieces: level.pieces.map(compactPiece) });
  const ascii = json.replace(
    /[\u007f-\uffff]/g,
    (c) => `\\u${c.charCodeAt(0).toString(16).padStart(4, '0')}`,
  );
  return Uint8Array.from(ascii, (c) => c.charCodeAt(0));
}

/** The level in unpacked bytes, or problems. */
export function levelFromBytes(bytes: Uint8Array): ParseResult {
  if (bytes.length > LIMITS.link.unpackedBytes.most) return fault('too-big');
  const parts: string[] = [];
  for (let i = 0; i < bytes.length; i += 4_096)
    parts.push(String.fromCharCode(...bytes.subarray(i, i + 4_096)));
  const value = jsonOf(parts.join(''));
  if (value === undefined) return fault('not-json');
  return parseLevel(restored(value));
}

/** Bytes, packed or not, as a text of letters, digits, dashes and underscores. */
export function packBytes(bytes: Uint8Array, packing: Packing): string {
  const body = `${LETTER[packing]}${textFromBytes(bytes)}`;
  return `${SHARE_VERSION}${body[0]}${checkSum(SHARE_VERSION, body)}${body.slice(1)}`;
}

/** The bytes of such a text, or why there are none; spaces and line breaks that mail programs add do not matter. */
export function unpackText(text: string) {
  if (text.length > LIMITS.link.levelCharacters.most) return fault('too-big');
  const found = SHAPE.exec(text.replace(/\s+/g, ''));
  if (found === null) return fault('not-shared');
  const [, version = '', letter = '', sum = '', body = ''] = found;
  if (Number(version) > SHARE_VERSION)
    return fault('newer-version', { version: Number(version), readsUpTo: SHARE_VERSION });
  const packing = (Object.keys(LETTER) as Packing[]).find((name) => LETTER[name] === letter);
  const bytes = bytesFromText(body);
  if (bytes === null || checkSum(Number(version), `${letter}${body}`) !== sum) return fault('damaged');
  if (packing === undefined || Number(version) < 1) return fault('unknown-packing');
  return { ok: true, packing, bytes } as const;
}

function checkSum(version: number, text: string): string {
  const hasher = createHasher();
  hasher.number(version);
  hasher.text(text);
  return hasher.digest();
}

function withoutUsual(level: Level): Record<string, unknown> {
  const usual = new Map(Object.entries(BARE_ROAD).map(([key, value]) => [key, JSON.stringify(value)]));
  return Object.fromEntries(
    Object.entries(level).filter(([key, value]) => JSON.stringify(value) !== usual.get(key)),
  );
}

/** Recorded heights that are whole millimetres become steps, which are short numbers; other pieces stay. */
function compactPiece(piece: Level['pieces'][number]): unknown {
  if (piece.kind !== 'recorded') return piece;
  const mm = piece.heightsM.map((height) => Math.round(height * 1_000));
  if (mm.some((height, i) => height / 1_000 !== piece.heightsM[i] || Object.is(piece.heightsM[i], -0)))
    return piece;
  const steps = mm.map((height, i) => height - (mm[i - 1] ?? 0));
  return { kind: piece.kind, stepM: piece.stepM, risesMm: steps };
}

/** Undoes `compactPiece` wherever something looks like it; all else is left for the parser to judge. */
function restored(value: unknown): unknown {
  if (!isFields(value) || !Array.isArray(value['pieces'])) return value;
  return { ...value, pieces: value['pieces'].map(restoredPiece) };
}

function restoredPiece(piece: unknown): unknown {
  if (!isFields(piece)) return piece;
  const { risesMm, ...rest } = piece;
  if (!Array.isArray(risesMm) || 'heightsM' in rest || !risesMm.every(Number.isSafeInteger)) return piece;
  let sumMm = 0;
  return { ...rest, heightsM: (risesMm as number[]).map((rise) => (sumMm += rise) / 1_000) };
}

/** A link that cannot be read as one problem. */
export function fault(code: LinkCode, values: Problem['values'] = {}) {
  return { ok: false, problems: [{ about: 'link', path: '', code, values }] } as const;
}
