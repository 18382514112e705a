/**
 * One ride of a group session as it is handed from device to device: written once, by one device, never
 * changed. Numbers are rounded when a record is made, so that it reads the same after any journey. How
 * records are put together is `merge.ts`; whether a ride is what it says is `remark.ts`.
 */
import * as z from 'zod/mini';
import { MARK_NAMES, type PitchReport, type RideReport } from '../../coach/types.ts';
import { fingerprintShape, idShape, seedShape, type Unchanging } from '../../level/schema.ts';
import { hashJson } from '../../math/hash.ts';
import { MOST_TICKS, type Recording } from '../../ride/recording.ts';
import { MOST_ATTEMPTS, MOST_RIDES } from '../plan.ts';
import { cleanText } from '../texts.ts';

export const RECORD_SCHEMA = 1;
export const VERSION_CHARACTERS = 40;
/** Rides that one device can count, and how high it can say it has counted. */
export const MOST_COUNTED = 1_000_000;

/** Names that devices give: of themselves and of their rides. */
export const recordIdShape = z.string().check(z.regex(/^[A-Za-z0-9][A-Za-z0-9._:-]{0,79}$/));
const plain = (most: number) => z.string().check(z.maxLength(most * 2));
const tenth = (low: number, high: number) =>
  z.number().check(
    z.gte(low),
    z.lte(high),
    z.refine((value) => Math.round(value * 10) / 10 === value),
  );
const mark = z.nullable(tenth(0, 100));

/** How one pitch went, short enough to travel. */
const pitchSchema = z.strictObject({
  /** Credit in percent; null where the pitch asked nothing. */
  creditPercent: z.nullable(z.int().check(z.gte(0), z.lte(100))),
  timing: z.enum(['too-early', 'about-right', 'too-late']),
  /** Metres before the foot of the first easier shift, to a tenth; negative beyond it, null without one. */
  firstShiftBeforeFootM: z.nullable(tenth(-20_000, 20_000)),
  /** Gear steps easier made before the foot. */
  stepsBeforeFoot: z.int().check(z.gte(0), z.lte(100)),
});

/** One ride as it comes in; its recording has a door of its own. */
export const recordSchema = z.strictObject({
  schema: z.literal(RECORD_SCHEMA),
  id: recordIdShape,
  planId: recordIdShape,
  deviceId: recordIdShape,
  /** Counts the records of a device from 1, without gaps. */
  seq: z.int().check(z.gte(1), z.lte(MOST_COUNTED)),
  nickname: plain(30),
  attempt: z.int().check(z.gte(1), z.lte(MOST_ATTEMPTS)),
  rideIndex: z.int().check(z.gte(0), z.lt(MOST_RIDES)),
  levelId: idShape,
  levelHash: fingerprintShape,
  seed: seedShape,
  bikeId: plain(60),
  riderId: plain(60),
  total: tenth(0, 100),
  /** To a tenth of a point; null where there was nothing to judge. */
  marks: z.strictObject({ cadence: mark, foresight: mark, easing: mark, chainLine: mark, economy: mark }),
  /** In riding order, one for each pitch the ride went over. */
  pitches: z.array(pitchSchema).check(z.maxLength(400)),
  ticks: z.int().check(z.gte(0), z.lte(MOST_TICKS)),
  /** Version of the rules that rode and judged, usually `RULES_VERSION`. */
  version: plain(VERSION_CHARACTERS),
  /** Fingerprint of the recording, also where the recording itself stays behind. */
  recordingHash: z.nullable(fingerprintShape),
  recording: z.unknown(),
  /** Fingerprint of everything but itself and the recording. */
  checksum: fingerprintShape,
});

export type PitchDigest = Unchanging<z.infer<typeof pitchSchema>>;

export interface RideRecord extends Unchanging<Omit<z.infer<typeof recordSchema>, 'recording'>> {
  readonly recording: Recording | null;
}

type RecordMarks = RideRecord['marks'];

/** What the shell knows of a ride that was just finished. */
interface RecordInput
  extends Pick<
    RideRecord,
    'id' | 'planId' | 'deviceId' | 'seq' | 'nickname' | 'attempt' | 'rideIndex' | 'version'
  > {
  readonly recording: Recording;
  readonly report: Pick<RideReport, 'total' | 'marks' | 'pitches'>;
}

/** The usual id of a record: one device counts its own rides, so nobody else can give the same. */
export function usualRecordId(deviceId: string, seq: number): string {
  return `${deviceId}.${seq}`;
}

export function makeRecord(input: RecordInput): RideRecord {
  const { recording, report } = input;
  return sealRecord({
    schema: RECORD_SCHEMA,
    // One by one: whatever else a caller has would make a record that no door lets in.
    id: input.id,
    planId: input.planId,
    deviceId: input.deviceId,
    seq: input.seq,
    nickname: input.nickname,
    attempt: input.attempt,
    rideIndex: input.rideIndex,
    levelId: recording.levelId,
    levelHash: recording.levelHash,
    seed: recording.seed,
    bikeId: cleanText(recording.bike.id, 60),
    riderId: cleanText(recording.rider.id, 60),
    total: tenths(report.total),
    marks: marksOf(report),
    pitches: report.pitches.map(digestOf),
    ticks: recording.ticks,
    version: cleanText(input.version, VERSION_CHARACTERS),
    recordingHash: hashJson(recording),
    recording,
  });
}

export function marksOf(report: Pick<RideReport, 'marks'>): RecordMarks {
  const rounded = MARK_NAMES.map((name) => {
    const { value } = report.marks[name];
    return [name, value === null ? null : tenths(value)];
  });
  return Object.fromEntries(rounded) as RecordMarks;
}

/** A pitch of a report as it stands in a record. */
export function digestOf(pitch: PitchReport): PitchDigest {
  const { firstShiftBeforeFootM } = pitch;
  return {
    creditPercent: pitch.asked || pitch.footDown ? Math.round(pitch.credit * 100) : null,
    timing: pitch.timing,
    firstShiftBeforeFootM: firstShiftBeforeFootM === null ? null : tenths(firstShiftBeforeFootM),
    stepsBeforeFoot: pitch.stepsBeforeFoot,
  };
}

/** Rounded as in records: to a tenth, never -0. */
export function tenths(value: number): number {
  return Math.round(value * 10) / 10 + 0;
}

/** Puts the checksum on a record, in place of one it may have. */
export function sealRecord(record: Omit<RideRecord, 'checksum'>): RideRecord {
  return { ...record, checksum: checksumOf(record) };
}

/** Fingerprint over canonical JSON of all that makes the ride, without the recording itself. */
export function checksumOf(record: Omit<RideRecord, 'checksum'>): string {
  // What is undefined does not count in canonical JSON.
  return hashJson({ ...record, recording: undefined, checksum: undefined });
}

/** True if two sets of marks are the same to the tenth. */
export function sameMarks(a: RecordMarks, b: RecordMarks): boolean {
  return MARK_NAMES.every((name) => a[name] === b[name]);
}
