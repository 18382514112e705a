/**
 * The door for records: a value or a line of text → a record, or a damaged piece that keeps a name: what is
 * wrong, and whose it probably was. Nothing is repaired and nothing is thrown away silently.
 */
import { createHasher, hashJson } from '../../math/hash.ts';
import { LIMITS } from '../../math/limits.ts';
import { isFields, isTooDeep } from '../../math/measure.ts';
import { parseRecording, type Recording } from '../../ride/recording.ts';
import { readNickname } from '../nicknames.ts';
import {
  checksumOf,
  MOST_COUNTED,
  RECORD_SCHEMA,
  recordSchema,
  type RideRecord,
  VERSION_CHARACTERS,
} from './record.ts';
import { cleanText, isCleanText } from '../texts.ts';

type DamageCode =
  /** Not readable as JSON: cut off, or characters changed. */
  | 'not-json'
  /** Readable, but no record: something is missing, too much or out of range. */
  | 'not-a-record'
  /** Written by a newer version; kept as it is. */
  | 'newer-version'
  /** A text with invisible or direction-changing characters, which no record of ours has. */
  | 'dirty-text'
  /** Readable, but not what was written. */
  | 'checksum'
  /** The marks are good, the recording is not; the record is kept without it. */
  | 'recording'
  /** A file's first line, which says whose rides it holds. */
  | 'file-head'
  /** Far longer than any ride. */
  | 'too-long';

/** A piece that could not be taken. The parts that name it may be wrong themselves. */
export interface DamagedPiece {
  readonly code: DamageCode;
  /** Fingerprint of the piece as it came, so that the same piece twice is one. */
  readonly fingerprint: string;
  /** Where in a record it is wrong, like `marks.cadence`, empty where unknown. */
  readonly path: string;
  readonly recordId: string | null;
  readonly deviceId: string | null;
  readonly seq: number | null;
}

/** A record, a damaged piece, or both: a good record whose recording is lost. */
export interface ReadRecord {
  readonly record: RideRecord | null;
  readonly damaged: DamagedPiece | null;
}

export function parseRecordText(text: string): ReadRecord {
  if (text.length > LIMITS.rideFile.lineCharacters.most)
    return { record: null, damaged: { ...guessed(text), code: 'too-long' } };
  let value: unknown;
  try {
    value = JSON.parse(text);
  } catch {
    return { record: null, damaged: { ...guessed(text), code: 'not-json' } };
  }
  return parseRecord(value, text);
}

/** Reads a value; `text` is what it was read from, if it was. */
export function parseRecord(value: unknown, text?: string): ReadRecord {
  const bad = (code: DamageCode, path = ''): ReadRecord => ({
    record: null,
    damaged: { ...named(value, text), code, path },
  });
  if (isTooDeep(value, LIMITS.rideFile.deep.most)) return bad('not-a-record');
  if (schemaOf(value) > RECORD_SCHEMA) return bad('newer-version', 'schema');
  const parsed = recordSchema.safeParse(value);
  if (!parsed.success) return bad('not-a-record', pathOf(parsed.error.issues[0]?.path ?? []));
  const { recording: came, ...content } = parsed.data;
  const dirty = dirtyText(content);
  if (dirty !== null) return bad('dirty-text', dirty);
  const bare: RideRecord = { ...content, recording: null };
  if (checksumOf(bare) !== content.checksum) return bad('checksum');
  if (came === null) return { record: bare, damaged: null };
  const recording = goodRecording(came, content.recordingHash);
  if (recording === null)
    return { record: bare, damaged: { ...named(value, text), code: 'recording', path: 'recording' } };
  return { record: { ...bare, recording }, damaged: null };
}

/** Fingerprint of a text as it came. */
export function fingerprintText(text: string): string {
  const hasher = createHasher();
  hasher.text(text);
  return hasher.digest();
}

function goodRecording(value: unknown, expectedHash: string | null): Recording | null {
  const parsed = parseRecording(value);
  return parsed.ok && hashJson(parsed.recording) === expectedHash ? parsed.recording : null;
}

function dirtyText(record: Omit<RideRecord, 'recording'>): string | null {
  if (readNickname(record.nickname) === null) return 'nickname';
  if (!isCleanText(record.bikeId, 60)) return 'bikeId';
  if (!isCleanText(record.riderId, 60)) return 'riderId';
  return isCleanText(record.version, VERSION_CHARACTERS) ? null : 'version';
}

function schemaOf(value: unknown): number {
  return isFields(value) && typeof value['schema'] === 'number' ? value['schema'] : 0;
}

function pathOf(path: readonly PropertyKey[]): string {
  return path.slice(0, 6).map(String).join('.').slice(0, 80);
}

/** A damaged piece with as much of a name as can be read. */
function named(value: unknown, text: string | undefined): DamagedPiece {
  const part = (key: string): unknown => (isFields(value) && Object.hasOwn(value, key) ? value[key] : null);
  const seq = part('seq');
  return {
    code: 'not-a-record',
    fingerprint: text === undefined ? fingerprintValue(value) : fingerprintText(text),
    path: '',
    recordId: shortText(part('id')),
    deviceId: shortText(part('deviceId')),
    seq: typeof seq === 'number' && Number.isInteger(seq) && seq >= 1 && seq <= MOST_COUNTED ? seq : null,
  };
}

/** A name for text that is not read: the parts are looked for where they are usually written. */
export function guessed(text: string): DamagedPiece {
  const head = text.slice(0, 2_000);
  const seq = /"seq":(\d{1,6})[,}]/.exec(head)?.[1];
  return {
    code: 'not-json',
    // Of a huge text the beginning is name enough.
    fingerprint: fingerprintText(text.slice(0, LIMITS.rideFile.lineCharacters.most)),
    path: '',
    recordId: shortText(/"id":"([^"\\]{1,80})"/.exec(head)?.[1]),
    deviceId: shortText(/"deviceId":"([^"\\]{1,80})"/.exec(head)?.[1]),
    seq: seq === undefined || Number(seq) < 1 ? null : Number(seq),
  };
}

function shortText(value: unknown): string | null {
  if (typeof value !== 'string') return null;
  const clean = cleanText(value, 80);
  return clean === '' ? null : clean;
}

function fingerprintValue(value: unknown): string {
  try {
    return hashJson(value);
  } catch {
    // Nested deeper than can be walked through; all such values share one name.
    return fingerprintText('nested too deep');
  }
}
