/**
 * A file of rides: one line of JSON per record under a head that says whose they are and how far that device
 * has counted. Lines, because a file that was cut off or has one wrong character then loses one ride and not
 * all. Lists and single records in plain JSON are read as well.
 */
import * as z from 'zod/mini';
import { hashJson } from '../math/hash.ts';
import { LIMITS } from '../math/limits.ts';
import type { Heard } from '../group/records/missing.ts';
import type { RideRecord } from '../group/records/record.ts';
import {
  type DamagedPiece,
  fingerprintText,
  parseRecord,
  parseRecordText,
  type ReadRecord,
} from '../group/records/recordFile.ts';
import { type RecordSet, setOf } from '../group/records/merge.ts';

/** What a device hands over. */
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
const idText = z.string().check(z.regex(/^[A-Za-z0-9][A-Za-z0-9._:-]{0,79}$/));

const headSchema = z.strictObject({
  kind: z.literal(FILE_KIND),
  schema: z.literal(FILE_SCHEMA),
  planId: idText,
  deviceId: idText,
  lastSeq: z.int().check(z.gte(0), z.lte(1_000_000)),
  withdrawn: z.array(idText).check(z.maxLength(LIMITS.rideFile.withdrawn.most)),
  checksum: z.string().check(z.regex(/^[0-9a-f]{16}$/)),
});

/** Writes the file. */
export function writeRideFile(handOver: HandOver): string {
  const { planId, deviceId, lastSeq, withdrawn, records } = handOver;
  const said = { kind: FILE_KIND, schema: FILE_SCHEMA, planId, deviceId, lastSeq, withdrawn };
  const head = { ...said, checksum: hashJson(said) };
  return `${[head, ...records].map((item) => JSON.stringify(item)).join('\n')}\n`;
}

/** Reads a file of rides in any of its forms. Never throws; what is no good is named in the set. */
export function readRideFile(text: string): ReadFile {
  const bare = text.replace(/^\uFEFF/, '');
  const whole = readWhole(bare);
  if (whole !== null) return { set: setOf(whole), heard: [] };
  const read: ReadRecord[] = [];
  const heard: Omit<Heard, 'atMs'>[] = [];
  const withdrawn: string[] = [];
  for (const line of bare.split(/\r\n|\n|\r/)) {
    if (line.trim() === '') continue;
    const head = line.length < 1_000_000 && line.includes(FILE_KIND) ? readHead(line) : null;
    if (head === null) read.push(parseRecordText(line));
    else if ('code' in head) read.push({ record: null, damaged: head });
    else {
      heard.push({ deviceId: head.deviceId, lastSeq: head.lastSeq });
      withdrawn.push(...head.withdrawn);
    }
  }
  return { set: setOf(read, withdrawn), heard };
}

/** A list of records, or one record over several lines; null where it is not JSON as a whole. */
function readWhole(text: string): ReadRecord[] | null {
  try {
    const value = JSON.parse(text) as unknown;
    if (Array.isArray(value)) return value.map((item) => parseRecord(item));
    return value !== null && typeof value === 'object' && 'id' in value ? [parseRecord(value, text)] : null;
  } catch {
    return null;
  }
}

/** The head; a damaged piece where the line wants to be one and is not; null where it is something else. */
function readHead(line: string): z.infer<typeof headSchema> | DamagedPiece | null {
  let value: unknown = null;
  try {
    value = JSON.parse(line);
  } catch {
    if (!line.startsWith('{"kind"')) return null;
  }
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
