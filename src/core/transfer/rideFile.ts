/**
 * A file of rides: one line of JSON per record under a head that says whose they are and how far that device
 * has counted. Lines, because a file that was cut off or has one wrong character then loses one ride and not
 * all. Lists and single records in plain JSON are read as well.
 */
import * as z from 'zod/mini';
import { hashJson } from '../math/hash.ts';
import { fingerprintShape } from '../level/schema.ts';
import { LIMITS } from '../math/limits.ts';
import { jsonOf } from '../math/measure.ts';
import type { Heard } from '../group/records/missing.ts';
import { MOST_COUNTED, recordIdShape, type RideRecord } from '../group/records/record.ts';
import {
  type DamagedPiece,
  fingerprintText,
  guessed,
  parseRecord,
  parseRecordText,
  type ReadRecord,
} from '../group/records/recordFile.ts';
import { mergeSets, type RecordSet, setOf } from '../group/records/merge.ts';

export interface HandOver {
  readonly planId: string;
  readonly deviceId: string;
  readonly lastSeq: number;
  readonly withdrawn: readonly string[];
  readonly records: readonly RideRecord[];
}

/** What was read. `heard` lacks the time, which the reader's clock gives. */
export interface ReadFile {
  readonly set: RecordSet;
  readonly heard: readonly Omit<Heard, 'atMs'>[];
}

const FILE_KIND = 'clinic-rides';
const FILE_SCHEMA = 1;
const LINE_END = /\r\n|\n|\r/g;

const headSchema = z.strictObject({
  kind: z.literal(FILE_KIND),
  schema: z.literal(FILE_SCHEMA),
  planId: recordIdShape,
  deviceId: recordIdShape,
  lastSeq: z.int().check(z.gte(0), z.lte(MOST_COUNTED)),
  withdrawn: z.array(recordIdShape).check(z.maxLength(LIMITS.rideFile.withdrawn.most)),
  checksum: fingerprintShape,
});

export function writeRideFile(handOver: HandOver): string {
  const { planId, deviceId, lastSeq, withdrawn, records } = handOver;
  const said = { kind: FILE_KIND, schema: FILE_SCHEMA, planId, deviceId, lastSeq, withdrawn };
  const head = { ...said, checksum: hashJson(said) };
  return `${[head, ...records].map((item) => JSON.stringify(item)).join('\n')}\n`;
}

/** One thing in a file and how far into the text it was found (0 to 1). */
export interface RideFilePart {
  readonly share: number;
  readonly read: readonly ReadRecord[];
  readonly heard: readonly Omit<Heard, 'atMs'>[];
  readonly withdrawn: readonly string[];
}

/** Whether a text is more than a file of rides can be; nothing of it is read then. */
export function isTooMuch(text: string): boolean {
  if (text.length > LIMITS.rideFile.characters.most) return true;
  let lines = 0;
  const ends = text.matchAll(LINE_END);
  while (lines <= LIMITS.rideFile.lines.most && ends.next().done !== true) lines += 1;
  return lines > LIMITS.rideFile.lines.most;
}

/** Reads a file of rides in any of its forms. Never throws; what is no good is named in the set. */
export function readRideFile(text: string): ReadFile {
  return joinParts([...ridesIn(text)]);
}

/** What came piece by piece, as one. */
export function joinParts(parts: readonly RideFilePart[]): ReadFile {
  const read = parts.flatMap((part) => part.read);
  const withdrawn = parts.flatMap((part) => part.withdrawn);
  return { set: setOf(read, withdrawn), heard: parts.flatMap((part) => part.heard) };
}

/** What several files hold, as one. */
export function joinFiles(files: readonly ReadFile[]): ReadFile {
  return { set: mergeSets(...files.map(({ set }) => set)), heard: files.flatMap(({ heard }) => heard) };
}

/** The same piece by piece, for those who want to pause between. Of too much nothing is read. */
export function* ridesIn(text: string): Generator<RideFilePart> {
  const bare = isTooMuch(text) ? null : text.replace(/^\uFEFF/, '');
  const whole = bare === null ? null : wholeOf(bare);
  if (bare === null || (whole?.length ?? 0) > LIMITS.rideFile.lines.most) {
    yield partOf(1, { record: null, damaged: { ...guessed(text), code: 'too-long' } });
    return;
  }
  if (whole !== null) {
    for (const [i, item] of whole.entries()) yield partOf((i + 1) / whole.length, parseRecord(item));
    return;
  }
  let at = 0;
  for (const line of bare.split(LINE_END)) {
    at += line.length + 1;
    if (line.trim() === '') continue;
    const share = Math.min(1, at / bare.length);
    const head = line.length < 1_000_000 && line.includes(FILE_KIND) ? readHead(line) : null;
    if (head === null) yield partOf(share, parseRecordText(line));
    else if ('code' in head) yield partOf(share, { record: null, damaged: head });
    else {
      const heard = [{ deviceId: head.deviceId, lastSeq: head.lastSeq }];
      yield { share, read: [], heard, withdrawn: head.withdrawn };
    }
  }
}

function partOf(share: number, read: ReadRecord): RideFilePart {
  return { share, read: [read], heard: [], withdrawn: [] };
}

/** A list of records, or one record over several lines; null where it is not JSON as a whole. */
function wholeOf(text: string): readonly unknown[] | null {
  const value = jsonOf(text);
  if (Array.isArray(value)) return value as readonly unknown[];
  return value !== null && typeof value === 'object' && 'id' in value ? [value] : null;
}

/** The head; a damaged piece where the line wants to be one and is not; null where it is something else. */
function readHead(line: string): z.infer<typeof headSchema> | DamagedPiece | null {
  const value = jsonOf(line);
  if (value === undefined && !line.startsWith('{"kind"')) return null;
  if (value !== null && typeof value === 'object' && 'id' in value) return null;
  const parsed = headSchema.safeParse(value);
  if (parsed.success) {
    const { checksum, ...said } = parsed.data;
    if (hashJson(said) === checksum) return parsed.data;
  }
  const named = parseRecordText(line).damaged;
  return {
    code: 'file-head',
    fingerprint: fingerprintText(line),
    path: '',
    recordId: null,
    deviceId: named?.deviceId ?? null,
    seq: null,
  };
}
